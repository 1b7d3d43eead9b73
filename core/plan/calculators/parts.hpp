#pragma once

#include "core/plan/calculators/calculator.hpp"
#include "core/units/units.hpp"

#include <algorithm>
#include <array>

/// What the calculators are put together from; for the files of this folder alone.
namespace spile::plan {

/// The calculators by subject, in the order of the list.
[[nodiscard]] std::span<const Calculator> strengthCalculators();
[[nodiscard]] std::span<const Calculator> mixingCalculators();
[[nodiscard]] std::span<const Calculator> gaugingCalculators();
[[nodiscard]] std::span<const Calculator> purgingCalculators();
[[nodiscard]] std::span<const Calculator> roomAirCalculators();
[[nodiscard]] std::span<const Calculator> pushingCalculators();
[[nodiscard]] std::span<const Calculator> carbonatingCalculators();
[[nodiscard]] std::span<const Calculator> lossCalculators();
[[nodiscard]] std::span<const Calculator> explainingCalculators();
[[nodiscard]] std::span<const Calculator> wettingCalculators();
[[nodiscard]] std::span<const Calculator> oxygenCalculators();
[[nodiscard]] std::span<const Calculator> packingCalculators();

using Usual = std::optional<double>;
inline constexpr Usual none = std::nullopt;
inline constexpr double spiritBarrel = 53 * factor::usGallon;  // m3

constexpr CalculatorInput optional(CalculatorInput input)
{
    input.usual.reset();
    input.mayBeLeftOut = true;
    return input;
}

// In m3: litres and gallons.
constexpr CalculatorInput volumeInput(std::string_view name, std::string_view label, Usual usual,
                                      double least, double most)
{
    return {name, label, Measurand::Volume, usual, least, most, "L", "gal", 1, 0.25, {}, false};
}
constexpr CalculatorInput smallVolumeInput(std::string_view name, std::string_view label,
                                           Usual usual, double least, double most)
{
    return {name, label, Measurand::Volume, usual, least, most, "mL", "floz", 10, 0.5, {}, false};
}
// Of a whole barrel: what the formulas of shape take.
constexpr CalculatorInput sizeInput(std::string_view label = "Size of the barrel")
{
    return volumeInput("size", label, spiritBarrel, 1e-3, 5);
}
constexpr CalculatorInput strengthInput(std::string_view name, std::string_view label, Usual usual,
                                        double least = 0, double most = 1)
{
    return {name, label, Measurand::AlcoholByVolume, usual, least, most, "%", "%", 0.1, 0.1,
            {},   false};
}
constexpr CalculatorInput gravityInput(std::string_view name, std::string_view label, Usual usual,
                                       double least = 0.98, double most = 1.2)
{
    return {name, label, Measurand::SpecificGravity, usual, least, most, "", "", 0.001, 0.001,
            {},   false};
}
constexpr CalculatorInput temperatureInput(std::string_view name, std::string_view label,
                                           double usualCelsius, double least, double most)
{
    return {name,
            label,
            Measurand::Temperature,
            usualCelsius + factor::zeroCelsius,
            least + factor::zeroCelsius,
            most + factor::zeroCelsius,
            "C",
            "F",
            0.5,
            1,
            {},
            false};
}
constexpr CalculatorInput massInput(std::string_view name, std::string_view label, Usual usual,
                                    double least, double most)
{
    return {name, label, Measurand::Mass, usual, least, most, "kg", "lb", 0.5, 1, {}, false};
}
constexpr CalculatorInput lengthInput(std::string_view name, std::string_view label, Usual usual,
                                      double least, double most)
{
    return {name, label, Measurand::Length, usual, least, most, "mm", "in", 1, 0.125, {}, false};
}
constexpr CalculatorInput longInput(std::string_view name, std::string_view label, Usual usual,
                                    double least, double most)
{
    return {name, label, Measurand::Length, usual, least, most, "m", "ft", 0.1, 0.5, {}, false};
}
constexpr CalculatorInput pressureInput(std::string_view name, std::string_view label, Usual usual,
                                        double least, double most)
{
    return {name, label, Measurand::Pressure, usual, least, most, "bar", "psi", 0.05, 0.5,
            {},   false};
}
constexpr CalculatorInput shareInput(std::string_view name, std::string_view label, Usual usual,
                                     double least = 0, double most = 1)
{
    return {name, label, Measurand::Share, usual, least, most, "%", "%", 1, 1, {}, false};
}
constexpr CalculatorInput daysInput(std::string_view name, std::string_view label, Usual usual,
                                    double leastDays, double mostDays)
{
    if (usual) {
        usual = *usual * factor::day;
    }
    return {name,
            label,
            Measurand::Duration,
            usual,
            leastDays * factor::day,
            mostDays * factor::day,
            "d",
            "d",
            1,
            1,
            {},
            false};
}
constexpr CalculatorInput countInput(std::string_view name, std::string_view label, Usual usual,
                                     double most)
{
    return {name, label, Measurand::Count, usual, 0, most, "", "", 1, 1, {}, false};
}
constexpr CalculatorInput wordInput(std::string_view name, std::string_view label,
                                    std::span<const std::string_view> words)
{
    return {name, label, Measurand::Count, {}, 0, 0, "", "", 0, 0, words, false};
}
constexpr CalculatorInput plainInput(std::string_view name, std::string_view label,
                                     Measurand measurand, Usual usual, double least, double most,
                                     std::string_view unit, double step)
{
    return {name, label, measurand, usual, least, most, unit, unit, step, step, {}, false};
}

constexpr AnswerSpec volumeAnswer(std::string_view name, std::string_view label, int digits = 4)
{
    return {name, label, Measurand::Volume, "L", "gal", digits};
}
constexpr AnswerSpec smallVolumeAnswer(std::string_view name, std::string_view label)
{
    return {name, label, Measurand::Volume, "mL", "floz", 3};
}
constexpr AnswerSpec strengthAnswer(std::string_view name, std::string_view label, int digits = 4)
{
    return {name, label, Measurand::AlcoholByVolume, "%", "%", digits};
}
constexpr AnswerSpec gravityAnswer(std::string_view name, std::string_view label)
{
    return {name, label, Measurand::SpecificGravity, "", "", 5};
}
constexpr AnswerSpec platoAnswer(std::string_view name, std::string_view label)
{
    return {name, label, Measurand::DegreesPlato, "P", "P", 4};
}
constexpr AnswerSpec massAnswer(std::string_view name, std::string_view label, int digits = 3)
{
    return {name, label, Measurand::Mass, "kg", "lb", digits};
}
constexpr AnswerSpec oxygenAnswer(std::string_view name, std::string_view label)
{
    return {name, label, Measurand::Mass, "mg", "mg", 2};
}
constexpr AnswerSpec lengthAnswer(std::string_view name, std::string_view label)
{
    return {name, label, Measurand::Length, "mm", "in", 4};
}
constexpr AnswerSpec shareAnswer(std::string_view name, std::string_view label, int digits = 3)
{
    return {name, label, Measurand::Share, "%", "%", digits};
}
constexpr AnswerSpec partsAnswer(std::string_view name, std::string_view label)
{
    return {name, label, Measurand::Share, "ppm", "ppm", 2};
}
constexpr AnswerSpec minutesAnswer(std::string_view name, std::string_view label)
{
    return {name, label, Measurand::Duration, "min", "min", 3};
}
constexpr AnswerSpec daysAnswer(std::string_view name, std::string_view label)
{
    return {name, label, Measurand::Duration, "d", "d", 2};
}
constexpr AnswerSpec pressureAnswer(std::string_view name, std::string_view label)
{
    return {name, label, Measurand::Pressure, "bar", "psi", 3};
}
constexpr AnswerSpec countAnswer(std::string_view name, std::string_view label, int digits = 6)
{
    return {name, label, Measurand::Count, "", "", digits};
}
constexpr AnswerSpec wordAnswer(std::string_view name, std::string_view label)
{
    return {name, label, Measurand::Count, "", "", 3};
}

/// The answers of a run, each by the name of its spec.
class AnswerList {
public:
    explicit AnswerList(std::span<const AnswerSpec> specs) : specs_(specs) {}

    Answer& add(std::string_view name, double value)
    {
        Answer answer;
        answer.name = name;
        const auto spec = std::find_if(specs_.begin(), specs_.end(),
                                       [&](const AnswerSpec& s) { return s.name == name; });
        if (spec != specs_.end()) {
            answer.label = spec->label;
            answer.measurand = spec->measurand;
            answer.metricUnit = spec->metricUnit;
            answer.usUnit = spec->usUnit;
            answer.digits = spec->digits;
        }
        answer.value = value;
        return answers_.emplace_back(std::move(answer));
    }
    Answer& add(std::string_view name, double value, double low, double high)
    {
        Answer& answer = add(name, value);
        answer.low = low;
        answer.high = high;
        return answer;
    }
    template <class Spread>
    Answer& addSpread(std::string_view name, const Spread& spread)
    {
        return add(name, spread.median.si(), spread.low.si(), spread.high.si());
    }
    Answer& say(std::string_view name, std::string_view text, bool caution = false)
    {
        Answer& answer = add(name, 0);
        answer.text = text;
        answer.caution = caution;
        return answer;
    }
    [[nodiscard]] std::vector<Answer> done() { return std::move(answers_); }

private:
    std::span<const AnswerSpec> specs_;
    std::vector<Answer> answers_;
};

/// An input that has a usual value or must be given: filledIn() has seen to it.
[[nodiscard]] inline double number(const Given& given, std::string_view name)
{
    return given.number(name).value_or(0);
}
[[nodiscard]] inline Volume volumeOf(const Given& given, std::string_view name = "volume")
{
    return cubicMetres(number(given, name));
}
[[nodiscard]] inline Temperature temperatureOf(const Given& given,
                                               std::string_view name = "temperature")
{
    return kelvins(number(given, name));
}
[[nodiscard]] inline Length lengthOf(const Given& given, std::string_view name)
{
    return metres(number(given, name));
}
[[nodiscard]] inline Duration durationOf(const Given& given, std::string_view name = "time")
{
    return seconds(number(given, name));
}
[[nodiscard]] inline Pressure pressureOf(const Given& given, std::string_view name = "pressure")
{
    return pascals(number(given, name));
}
[[nodiscard]] inline Mass massOf(const Given& given, std::string_view name)
{
    return kilograms(number(given, name));
}

/// How many of these were given.
[[nodiscard]] inline int countGiven(const Given& given,
                                    std::initializer_list<std::string_view> names)
{
    return static_cast<int>(std::count_if(names.begin(), names.end(),
                                          [&](std::string_view name) { return given.has(name); }));
}
/// Errors    Malformed, named after the first of them, unless exactly one was given.
[[nodiscard]] Result<void> needOneOf(const Given& given,
                                     std::initializer_list<std::string_view> names);

/// Return the real extract of a beer by its gravity, 0 where none was given. Over 25 % by volume it
/// is a spirit: its gravity says nothing of extract, and it must be left out.
///
/// Errors    those of liquor::strengthByAlcohol(); Conflict, named after the gravity, for a spirit.
[[nodiscard]] Result<double> realExtractOf(const Given& given, std::string_view abvName,
                                           std::string_view gravityName);

/// The published figures that many calculators rest on.
inline constexpr std::string_view practice = "common practice, no source";
inline constexpr FormulaSource densitySource{"density of water and ethanol",
                                             "OIML R 22 (1975), general formula"};
inline constexpr FormulaSource tabarieSource{"gravity of alcohol and extract together",
                                             "Tabarié (1830)"};
inline constexpr FormulaSource shapeSource{
    "volume of a barrel", "geometry; full volumes: Kepler, Nova stereometria doliorum (1615)"};
inline constexpr FormulaSource sizeSource{"shapes of the usual barrels", practice};

}  // namespace spile::plan
