#include "core/wood/vapour.hpp"

#include "core/units/checks.hpp"

#include <cmath>
#include <numbers>

namespace spile::wood {

namespace {

// Redlich-Kister terms at 25 °C, fitted to the partial pressures of ethanol at 298 K that
// tests/reference/points/wood.csv lists.
constexpr double termA = 1.2067;
constexpr double termB = -0.2561;
constexpr double termC = -0.1008;

constexpr double henryAt25 = 1.9;            // mol/(m3 Pa)
constexpr double henryTemperature = 6400.0;  // K
constexpr double kelvinsAt25 = 298.15;
constexpr double molesOfWater = 55346.0;  // mol/m3

Result<void> needTemperature(Temperature t)
{
    return needCelsiusBetween("temperature_c", t, coldestCelsius, warmestCelsius);
}

double waterSaturation(double celsius) noexcept
{
    return 611.21 * std::exp((18.678 - celsius / 234.5) * celsius / (257.14 + celsius));
}

constexpr double logEthanolSaturation(double kelvin) noexcept
{
    constexpr double logPascalsPerBar = 5.0;
    return (5.37229 + logPascalsPerBar - 1670.409 / (kelvin - 40.191)) * std::numbers::ln10;
}

constexpr double logHenry(double kelvin) noexcept
{
    return henryTemperature * (1.0 / kelvin - 1.0 / kelvinsAt25);
}

// ln of the trace activity coefficient at `kelvin` over that at 25 °C; needs no exponential.
double logActivityShift(double kelvin, double logSaturation) noexcept
{
    constexpr double logSaturationAt25 = logEthanolSaturation(kelvinsAt25);
    return logSaturationAt25 - logSaturation - logHenry(kelvin);
}

struct Logs {
    double ethanol;
    double water;
};

Logs logActivities(double x, double shift) noexcept
{
    const double w = 1.0 - x;
    const double d = x - w;
    const double a = termA + shift;
    return {w * w * (a + termB * (3.0 * x - w) + termC * d * (5.0 * x - w)),
            x * x * (a + termB * (x - 3.0 * w) + termC * d * (x - 5.0 * w))};
}

}  // namespace

Result<Pressure> waterVapourPressure(Temperature t)
{
    SPILE_TRY(needTemperature(t));
    return pascals(waterSaturation(inCelsius(t)));
}

Result<Pressure> ethanolVapourPressure(Temperature t)
{
    SPILE_TRY(needTemperature(t));
    return pascals(std::exp(logEthanolSaturation(t.si())));
}

Result<double> traceEthanolActivity(Temperature t)
{
    SPILE_TRY(needTemperature(t));
    return molesOfWater / henryAt25 * std::exp(-logHenry(t.si()) - logEthanolSaturation(t.si()));
}

Result<ActivityCoefficients> activityCoefficients(double ethanolMoleFraction, Temperature t)
{
    SPILE_TRY(needBetween("ethanol_mole_fraction", ethanolMoleFraction, 0.0, 1.0));
    SPILE_TRY(needTemperature(t));
    const Logs logs =
        logActivities(ethanolMoleFraction, logActivityShift(t.si(), logEthanolSaturation(t.si())));
    return ActivityCoefficients{std::exp(logs.ethanol), std::exp(logs.water)};
}

VapourBasis vapourBasisUnchecked(Temperature t) noexcept
{
    const double logSaturation = logEthanolSaturation(t.si());
    return {waterSaturation(inCelsius(t)), logSaturation, logActivityShift(t.si(), logSaturation)};
}

Result<VapourBasis> vapourBasis(Temperature t)
{
    SPILE_TRY(needTemperature(t));
    return vapourBasisUnchecked(t);
}

VapourPressures vapourPressures(double ethanolMoleFraction, const VapourBasis& basis) noexcept
{
    const Logs logs = logActivities(ethanolMoleFraction, basis.logActivityShift);
    return {ethanolMoleFraction * std::exp(logs.ethanol + basis.logEthanolSaturation),
            (1.0 - ethanolMoleFraction) * std::exp(logs.water)};
}

}  // namespace spile::wood
