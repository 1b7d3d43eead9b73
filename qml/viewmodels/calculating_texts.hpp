#pragma once

#include "core/plan/calculators/calculator.hpp"
#include "qml/viewmodels/formats.hpp"

#include <QString>

/// What the page of calculators says of numbers and errors.
namespace spile::viewmodels {

/// Return the screen's words for a text of the registry.
[[nodiscard]] QString calculatorText(std::string_view text);

/// An input's number in the unit that it is shown in.
struct InputScale {
    QString unit;  // as it is written on the screen
    double factor = 1;
    double offset = 0;  // SI = shown * factor + offset
    double step = 1;
    int decimals = 0;  // of the step
};
[[nodiscard]] InputScale scaleOf(const plan::CalculatorInput& input, Formats::Units units);
/// The number without its unit; with one decimal more where the step has too few to tell it.
[[nodiscard]] QString readoutOf(double si, const InputScale& scale, const QLocale& locale);
/// The SI value `count` steps on, within the input's range.
[[nodiscard]] double stepped(double si, int count, const plan::CalculatorInput& input,
                             const InputScale& scale);
/// Where a stepper begins if nothing is known.
[[nodiscard]] double beginningOf(const plan::CalculatorInput& input);

/// "10.2 min (9.1 to 12.0)", or its words.
[[nodiscard]] QString answerText(const plan::Answer& answer, const Formats& formats);

/// Whether an error only says that something is still to be filled in.
[[nodiscard]] bool isMissing(const plan::Calculator& calculator, const plan::Given& given,
                             const Error& error);
/// Return what can be done about it, in the words and units of the page's inputs.
[[nodiscard]] QString calculatorErrorText(const plan::Calculator& calculator,
                                          const plan::Given& given, const Error& error,
                                          const Formats& formats);

}  // namespace spile::viewmodels
