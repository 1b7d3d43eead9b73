// The readings of a tasting sheet: the third part of tasting_view_model.cpp.
#include "qml/viewmodels/tasting_view_model.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace spile::viewmodels {

namespace {

// How a reading is stepped, in the unit that is shown.
struct Scale {
    double step, least, most, usual;
    int decimals;
};
// Wider than any beer, narrower than what the records can hold. "Usual" is where a stepper starts
// if this barrel was never measured: common practice, no source.
constexpr Scale gravityScale{0.001, 0.990, 1.200, 1.020, 3};
constexpr Scale phScale{0.01, 2.50, 7.00, 4.40, 2};
constexpr Scale celsiusScale{0.5, -5.0, 40.0, 12.0, 1};
constexpr Scale fahrenheitScale{1.0, 23.0, 104.0, 54.0, 0};

Scale scaleOf(TastingViewModel::Measure measure, Formats::Units units)
{
    switch (measure) {
        case TastingViewModel::Gravity:
            return gravityScale;
        case TastingViewModel::Ph:
            return phScale;
        case TastingViewModel::Temperature:
            return units == Formats::Units::Us ? fahrenheitScale : celsiusScale;
    }
    return gravityScale;
}

double shownTemperature(spile::Temperature temperature, Formats::Units units)
{
    return units == Formats::Units::Us ? inFahrenheit(temperature) : inCelsius(temperature);
}

cellar::Measure coreMeasure(TastingViewModel::Measure measure)
{
    return static_cast<cellar::Measure>(measure);
}

}  // namespace

// In the unit that is shown.
std::optional<double> TastingViewModel::reading(Measure measure) const
{
    switch (measure) {
        case Gravity:
            return content_.reading.specificGravity;
        case Ph:
            return content_.reading.ph;
        case Temperature:
            return content_.reading.temperature
                       ? std::optional(shownTemperature(*content_.reading.temperature,
                                                        context_.formats.units))
                       : std::nullopt;
    }
    return std::nullopt;
}

double TastingViewModel::expectedReading(Measure measure) const
{
    const double usual = scaleOf(measure, context_.formats.units).usual;
    switch (measure) {
        case Gravity:
            return expected_.specificGravity.value_or(usual);
        case Ph:
            return expected_.ph.value_or(usual);
        case Temperature:
            return expected_.temperature
                       ? shownTemperature(*expected_.temperature, context_.formats.units)
                       : usual;
    }
    return usual;
}

void TastingViewModel::tapReading(Measure measure, std::optional<double> value)
{
    if (value && measure == Temperature) {
        value =
            (context_.formats.units == Formats::Units::Us ? fahrenheit(*value) : celsius(*value))
                .si();
    }
    tap([measure = coreMeasure(measure), value](cellar::Cellar& cellar, const SubjectId& sheet) {
        return cellar::tapReading(cellar, sheet, measure, value);
    });
}

void TastingViewModel::stepReading(Measure measure, int count)
{
    if (waiting_ > 0) {
        return;  // the number on the screen is not this tap's yet
    }
    const Scale scale = scaleOf(measure, context_.formats.units);
    const auto now = reading(measure);
    // The first tap shows what is expected; it is an instrument's number, not a judgement.
    const double wanted = now ? *now + count * scale.step : expectedReading(measure);
    const double stepped = std::round(wanted / scale.step) * scale.step;
    tapReading(measure, std::clamp(stepped, scale.least, scale.most));
}

void TastingViewModel::clearReading(Measure measure)
{
    if (reading(measure)) {
        tapReading(measure, std::nullopt);
    }
}

QString TastingViewModel::gravity() const
{
    const auto value = reading(Gravity);
    return value ? context_.formats.gravity(*value) : QString();
}

QString TastingViewModel::ph() const
{
    const auto value = reading(Ph);
    return value ? context_.formats.ph(*value) : QString();
}

QString TastingViewModel::temperature() const
{
    const auto value = reading(Temperature);
    return value ? context_.formats.locale.toString(
                       *value, 'f', scaleOf(Temperature, context_.formats.units).decimals)
                 : QString();
}

QString TastingViewModel::temperatureUnit() const
{
    return context_.formats.units == Formats::Units::Us ? tr("°F") : tr("°C");
}

QStringList TastingViewModel::stepTexts() const
{
    QStringList texts;
    constexpr int big = 10;
    for (const Measure measure : {Gravity, Ph, Temperature}) {
        const Scale scale = scaleOf(measure, context_.formats.units);
        texts << context_.formats.locale.toString(scale.step, 'f', scale.decimals)
              << context_.formats.locale.toString(big * scale.step, 'f', scale.decimals);
    }
    return texts;
}

}  // namespace spile::viewmodels
