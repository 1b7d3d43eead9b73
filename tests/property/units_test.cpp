#include "core/units/units.hpp"

#include "core/units/scaled.hpp"

#include <array>
#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <rapidcheck/gtest.h>

namespace spile {

// From the size of a drop to that of a tank farm, in any unit, with either sign.
static rc::Gen<double> anyAmount()
{
    return rc::gen::map(
        rc::gen::pair(rc::gen::inRange(-12, 13), rc::gen::arbitrary<std::int32_t>()),
        [](const auto& drawn) {
            return std::pow(10.0, drawn.first) * static_cast<double>(drawn.second) / 2147483648.0;
        });
}

static rc::Gen<double> anyDouble()
{
    using Limits = std::numeric_limits<double>;
    return rc::gen::oneOf(
        rc::gen::arbitrary<double>(), anyAmount(),
        rc::gen::element(Limits::quiet_NaN(), Limits::infinity(), -Limits::infinity(), -0.0, 0.5,
                         -0.5, 1.5, 0x1p53, -0x1p53, 0x1p53 + 2.0, 0x1p63, -0x1p63, Limits::max(),
                         Limits::lowest(), Limits::denorm_min(), 0.49999999999999994));
}

struct Conversion {
    const char* name;
    double (*thereAndBack)(double);
};

static constexpr std::array conversions = {
    Conversion{"litres", [](double v) { return inLitres(litres(v)); }},
    Conversion{"millilitres", [](double v) { return inMillilitres(millilitres(v)); }},
    Conversion{"US gallons", [](double v) { return inUsGallons(usGallons(v)); }},
    Conversion{"US beer barrels", [](double v) { return inUsBeerBarrels(usBeerBarrels(v)); }},
    Conversion{"imperial gallons", [](double v) { return inImperialGallons(imperialGallons(v)); }},
    Conversion{"kilograms", [](double v) { return inKilograms(kilograms(v)); }},
    Conversion{"grams", [](double v) { return inGrams(grams(v)); }},
    Conversion{"pounds", [](double v) { return inPounds(pounds(v)); }},
    Conversion{"millimetres", [](double v) { return inMillimetres(millimetres(v)); }},
    Conversion{"inches", [](double v) { return inInches(inches(v)); }},
    Conversion{"bars", [](double v) { return inBars(bars(v)); }},
    Conversion{"psi", [](double v) { return inPsi(psi(v)); }}};

RC_GTEST_PROP(Units, RoundTrip, ())
{
    const double v = *anyAmount();
    for (const Conversion& unit : conversions) {
        RC_LOG() << unit.name;
        RC_ASSERT(std::abs(unit.thereAndBack(v) - v) <= 1e-15 * std::abs(v));
    }
}

// The zero of the kelvin lies far off, so that the error is relative to that distance.
RC_GTEST_PROP(Units, RoundTripTemperatures, ())
{
    const double v = *anyAmount();
    RC_ASSERT(std::abs(inCelsius(celsius(v)) - v) <= 1e-15 * (std::abs(v) + 273.15));
    RC_ASSERT(std::abs(inFahrenheit(fahrenheit(v)) - v) <= 1e-15 * (std::abs(v) + 459.67));
}

RC_GTEST_PROP(Scaled, AnswersEveryDouble, ())
{
    const double v = *anyDouble();
    const auto scaled = toScaled(v, "volume_ml");
    if (!std::isfinite(v)) {
        RC_ASSERT(scaled.error().code == ErrorCode::NotFinite);
    } else if (std::abs(v) > 0x1p53) {
        RC_ASSERT(scaled.error().code == ErrorCode::OutOfRange);
    } else {
        RC_ASSERT(scaled.has_value());
        RC_ASSERT(std::abs(static_cast<double>(*scaled) - v) <= 0.5);
    }
    RC_ASSERT((scaled.has_value() || scaled.error().subject == "volume_ml"));
}

RC_GTEST_PROP(Scaled, RoundsHalvesAwayFromZero, ())
{
    const auto whole = *rc::gen::inRange<std::int64_t>(0, std::int64_t{1} << 50);
    const double half = static_cast<double>(whole) + 0.5;
    RC_ASSERT(toScaled(half, "x") == whole + 1);
    RC_ASSERT(toScaled(-half, "x") == -whole - 1);
}

RC_GTEST_PROP(Scaled, KeepsWhatIsStored, ())
{
    const auto stored = *rc::gen::inRange<std::int64_t>(-1'000'000'000, 1'000'000'000);
    RC_ASSERT(toMl(volumeFromMl(stored)) == stored);
    RC_ASSERT(toGrams(massFromGrams(stored)) == stored);
    RC_ASSERT(toMilliCelsius(temperatureFromMilliCelsius(stored)) == stored);
}

}  // namespace spile
