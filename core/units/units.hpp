#pragma once

#include "core/units/quantity.hpp"

/// The quantities of the trade. Inside they are SI; these functions are the only edges.
///
/// Each unit has one exact factor, used both ways.
/// Source    NIST SP 811 (2008), Appendix B.8, and NIST Handbook 44 (US gallon = 231 cubic
///           inches, inch = 25.4 mm, avoirdupois pound = 0.453 592 37 kg, all exact); beer barrel
///           of 31 US gallons: 27 CFR 25.11. Factors written from memory, checked in
///           tests/reference/units_test.cpp.
namespace spile::inline units {

using Volume = Quantity<struct VolumeDimension>;          // m3
using Mass = Quantity<struct MassDimension>;              // kg
using Length = Quantity<struct LengthDimension>;          // m
using Pressure = Quantity<struct PressureDimension>;      // Pa
using Temperature = Point<struct TemperatureDimension>;   // K
using Area = Quantity<struct AreaDimension>;              // m2
using Density = Quantity<struct DensityDimension>;        // kg/m3; also what a volume holds
using Duration = Quantity<struct DurationDimension>;      // s
using VolumeFlow = Quantity<struct VolumeFlowDimension>;  // m3/s
using MassFlow = Quantity<struct MassFlowDimension>;      // kg/s
using Force = Quantity<struct ForceDimension>;            // N

namespace factor {
inline constexpr double litre = 1e-3;
inline constexpr double inch = 0.0254;
inline constexpr double usGallon = 231.0 * inch * inch * inch;
inline constexpr double usBeerBarrel = 31.0 * usGallon;
inline constexpr double imperialGallon = 4.54609e-3;
inline constexpr double pound = 0.45359237;
inline constexpr double standardGravity = 9.80665;
inline constexpr double psi = pound * standardGravity / (inch * inch);
inline constexpr double bar = 1e5;
inline constexpr double atmosphere = 101325.0;
inline constexpr double zeroCelsius = 273.15;
inline constexpr double minute = 60.0;
inline constexpr double hour = 3600.0;
inline constexpr double day = 86400.0;
inline constexpr double year = 365.25 * day;  // the Julian year
}  // namespace factor

[[nodiscard]] constexpr Volume cubicMetres(double v) { return Volume::fromSi(v); }
[[nodiscard]] constexpr Volume litres(double v) { return Volume::fromSi(v * factor::litre); }
[[nodiscard]] constexpr Volume millilitres(double v) { return Volume::fromSi(v * 1e-6); }
[[nodiscard]] constexpr Volume usGallons(double v) { return Volume::fromSi(v * factor::usGallon); }
[[nodiscard]] constexpr Volume usBeerBarrels(double v)
{
    return Volume::fromSi(v * factor::usBeerBarrel);
}
[[nodiscard]] constexpr Volume imperialGallons(double v)
{
    return Volume::fromSi(v * factor::imperialGallon);
}
[[nodiscard]] constexpr double inLitres(Volume v) { return v.si() / factor::litre; }
[[nodiscard]] constexpr double inMillilitres(Volume v) { return v.si() / 1e-6; }
[[nodiscard]] constexpr double inUsGallons(Volume v) { return v.si() / factor::usGallon; }
[[nodiscard]] constexpr double inUsBeerBarrels(Volume v) { return v.si() / factor::usBeerBarrel; }
[[nodiscard]] constexpr double inImperialGallons(Volume v)
{
    return v.si() / factor::imperialGallon;
}

[[nodiscard]] constexpr Mass kilograms(double v) { return Mass::fromSi(v); }
[[nodiscard]] constexpr Mass grams(double v) { return Mass::fromSi(v * 1e-3); }
[[nodiscard]] constexpr Mass pounds(double v) { return Mass::fromSi(v * factor::pound); }
[[nodiscard]] constexpr double inKilograms(Mass m) { return m.si(); }
[[nodiscard]] constexpr double inGrams(Mass m) { return m.si() / 1e-3; }
[[nodiscard]] constexpr double inPounds(Mass m) { return m.si() / factor::pound; }

[[nodiscard]] constexpr Length metres(double v) { return Length::fromSi(v); }
[[nodiscard]] constexpr Length millimetres(double v) { return Length::fromSi(v * 1e-3); }
[[nodiscard]] constexpr Length inches(double v) { return Length::fromSi(v * factor::inch); }
[[nodiscard]] constexpr double inMillimetres(Length l) { return l.si() / 1e-3; }
[[nodiscard]] constexpr double inInches(Length l) { return l.si() / factor::inch; }

[[nodiscard]] constexpr Pressure pascals(double v) { return Pressure::fromSi(v); }
[[nodiscard]] constexpr Pressure bars(double v) { return Pressure::fromSi(v * factor::bar); }
[[nodiscard]] constexpr Pressure psi(double v) { return Pressure::fromSi(v * factor::psi); }
[[nodiscard]] constexpr double inBars(Pressure p) { return p.si() / factor::bar; }
[[nodiscard]] constexpr double inPsi(Pressure p) { return p.si() / factor::psi; }

[[nodiscard]] constexpr Temperature kelvins(double v) { return Temperature::fromSi(v); }
[[nodiscard]] constexpr Temperature celsius(double v)
{
    return Temperature::fromSi(v + factor::zeroCelsius);
}
[[nodiscard]] constexpr Temperature fahrenheit(double v)
{
    return Temperature::fromSi((v - 32.0) * 5.0 / 9.0 + factor::zeroCelsius);
}
[[nodiscard]] constexpr double inCelsius(Temperature t) { return t.si() - factor::zeroCelsius; }
[[nodiscard]] constexpr double inFahrenheit(Temperature t)
{
    return (t.si() - factor::zeroCelsius) * 9.0 / 5.0 + 32.0;
}

[[nodiscard]] constexpr Area squareMetres(double v) { return Area::fromSi(v); }
[[nodiscard]] constexpr double inSquareMetres(Area a) { return a.si(); }

[[nodiscard]] constexpr Density kilogramsPerCubicMetre(double v) { return Density::fromSi(v); }
[[nodiscard]] constexpr Density gramsPerLitre(double v) { return Density::fromSi(v); }
[[nodiscard]] constexpr Density milligramsPerLitre(double v) { return Density::fromSi(v * 1e-3); }
[[nodiscard]] constexpr double inKilogramsPerCubicMetre(Density d) { return d.si(); }
[[nodiscard]] constexpr double inGramsPerLitre(Density d) { return d.si(); }
[[nodiscard]] constexpr double inMilligramsPerLitre(Density d) { return d.si() / 1e-3; }

[[nodiscard]] constexpr Duration seconds(double v) { return Duration::fromSi(v); }
[[nodiscard]] constexpr Duration minutes(double v) { return Duration::fromSi(v * factor::minute); }
[[nodiscard]] constexpr Duration hours(double v) { return Duration::fromSi(v * factor::hour); }
[[nodiscard]] constexpr Duration days(double v) { return Duration::fromSi(v * factor::day); }
[[nodiscard]] constexpr double inSeconds(Duration t) { return t.si(); }
[[nodiscard]] constexpr double inMinutes(Duration t) { return t.si() / factor::minute; }
[[nodiscard]] constexpr double inHours(Duration t) { return t.si() / factor::hour; }
[[nodiscard]] constexpr double inDays(Duration t) { return t.si() / factor::day; }

[[nodiscard]] constexpr VolumeFlow cubicMetresPerSecond(double v) { return VolumeFlow::fromSi(v); }
[[nodiscard]] constexpr VolumeFlow litresPerMinute(double v)
{
    return VolumeFlow::fromSi(v * factor::litre / factor::minute);
}
[[nodiscard]] constexpr double inLitresPerMinute(VolumeFlow f)
{
    return f.si() / (factor::litre / factor::minute);
}

[[nodiscard]] constexpr MassFlow kilogramsPerSecond(double v) { return MassFlow::fromSi(v); }
[[nodiscard]] constexpr MassFlow kilogramsPerMinute(double v)
{
    return MassFlow::fromSi(v / factor::minute);
}
[[nodiscard]] constexpr double inKilogramsPerMinute(MassFlow f) { return f.si() * factor::minute; }

[[nodiscard]] constexpr Force newtons(double v) { return Force::fromSi(v); }
[[nodiscard]] constexpr double inNewtons(Force f) { return f.si(); }

}  // namespace spile::inline units
