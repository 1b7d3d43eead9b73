#include "core/gas/carbonation.hpp"

#include "core/gas/carbon_dioxide.hpp"
#include "core/gas/checks.hpp"
#include "core/gas/solubility.hpp"

#include <algorithm>
#include <cmath>
#include <string>

namespace spile::gas {

namespace {

constexpr double chartLeast = 1;
constexpr double chartMost = 5;

// psi = constant + linear V + squared V^2, V in volumes, at one temperature.
struct Chart {
    double constant, linear;
    static constexpr double squared = -0.0684226;

    explicit Chart(Temperature t)
        : constant(-16.6999 + inFahrenheit(t) * (-0.0101059 + inFahrenheit(t) * 0.00116512)),
          linear(4.24267 + 0.173354 * inFahrenheit(t))
    {
    }
    [[nodiscard]] double psiAt(double volumes) const
    {
        return constant + volumes * (linear + volumes * squared);
    }
};

Result<void> needChartTemperature(Temperature t)
{
    return needCelsiusBetween("temperature_c", t, 0, 30);
}

Result<void> needVolumes(double volumes, std::string_view name = "co2_volumes")
{
    return needBetween(name, volumes, 0, 10);
}

Result<void> needTimeConstant(Duration timeConstant)
{
    return needBetween("time_constant_s", timeConstant.si(), 1, factor::year);
}

}  // namespace

Result<Pressure> kegPressure(double volumes, Temperature t)
{
    SPILE_TRY(needChartTemperature(t));
    SPILE_TRY(needBetween("co2_volumes", volumes, chartLeast, chartMost));
    return psi(Chart(t).psiAt(volumes));
}

Result<double> kegVolumes(Pressure gauge, Temperature t)
{
    SPILE_TRY(needChartTemperature(t));
    const Chart chart(t);
    const Pressure least = psi(chart.psiAt(chartLeast));
    const Pressure most = psi(chart.psiAt(chartMost));
    if (!(gauge >= least && gauge <= most)) {
        return failBetween("gauge_psi", inPsi(gauge), inPsi(least), inPsi(most));
    }
    // The smaller root, in the form that does not cancel.
    const double missing = inPsi(gauge) - chart.constant;
    const double root = std::sqrt(chart.linear * chart.linear + 4 * Chart::squared * missing);
    return 2 * missing / (chart.linear + root);
}

Duration usualTimeConstant(Carbonating how)
{
    switch (how) {
        case Carbonating::Standing:
            return days(3);
        case Carbonating::Shaken:
            return minutes(15);
        case Carbonating::Stone:
            break;
    }
    return hours(2);
}

Result<double> volumesAfter(double first, double last, Duration time, Duration timeConstant)
{
    SPILE_TRY(needVolumes(first));
    SPILE_TRY(needVolumes(last));
    SPILE_TRY(needTime(time));
    SPILE_TRY(needTimeConstant(timeConstant));
    return last + (first - last) * std::exp(-(time / timeConstant));
}

Result<Duration> timeToVolumes(double first, double last, double target, Duration timeConstant)
{
    SPILE_TRY(needVolumes(first));
    SPILE_TRY(needVolumes(last));
    SPILE_TRY(needTimeConstant(timeConstant));
    SPILE_TRY(needBetween("target_volumes", target, std::min(first, last), std::max(first, last)));
    if (target == first) {
        return Duration();
    }
    if (target == last) {
        return fail(ErrorCode::OutOfRange, "target_volumes", std::to_string(target),
                    first < last ? "below the last" : "above the last");
    }
    return (std::log(std::abs(first - last)) - std::log(std::abs(target - last))) * timeConstant;
}

Result<double> residualVolumes(Temperature warmest)
{
    SPILE_TRY(needChartTemperature(warmest));
    const double f = inFahrenheit(warmest);
    return 3.0378 + f * (-0.050062 + f * 0.00026555);
}

Result<bool> isFlatEnough(double volumes, Temperature warmest)
{
    SPILE_TRY(needVolumes(volumes));
    SPILE_ASSIGN(held, residualVolumes(warmest));
    return volumes <= held;
}

double co2PerSugar(Sugar sugar)
{
    constexpr double sucrose = 342.297e-3;  // kg/mol
    constexpr double glucose = 180.156e-3;
    constexpr double water = 18.01528e-3;
    switch (sugar) {
        case Sugar::Sucrose:
            return 4 * co2MolarMass / sucrose;
        case Sugar::Glucose:
            return 2 * co2MolarMass / glucose;
        case Sugar::DextroseMonohydrate:
            break;
    }
    return 2 * co2MolarMass / (glucose + water);
}

Result<Mass> primingSugar(Sugar sugar, Volume beer, double residual, double target)
{
    SPILE_TRY(needBetween("beer_l", inLitres(beer), 0, 1e6));
    SPILE_TRY(needVolumes(target, "target_volumes"));
    SPILE_TRY(needBetween("residual_volumes", residual, 0, target));
    return kilograms((target - residual) * co2PerVolume.si() * beer.si() / co2PerSugar(sugar));
}

Result<Pressure> bottlePressure(double volumes, Temperature t)
{
    SPILE_TRY(needVolumes(volumes));
    SPILE_ASSIGN(atOne, co2InBeer(t, atmosphere));
    return (volumes * co2PerVolume / atOne) * atmosphere - atmosphere;
}

}  // namespace spile::gas
