#include "core/gas/solubility.hpp"

#include "core/gas/carbon_dioxide.hpp"
#include "core/gas/checks.hpp"

#include <cmath>

namespace spile::gas {

namespace {

constexpr double beerToWater = 0.93;

Result<void> needPartial(Pressure partial)
{
    return needBetween("pressure_bar", inBars(partial), 0, 10);
}

}  // namespace

Result<Density> co2InWater(Temperature t, Pressure partial)
{
    SPILE_TRY(needCelsiusBetween("temperature_c", t, 0, 40));
    SPILE_TRY(needPartial(partial));
    const double hundreds = t.si() / 100;
    const double molesPerLitreAtm =
        std::exp(-58.0931 + 90.5069 / hundreds + 22.2940 * std::log(hundreds));
    return gramsPerLitre(1e3 * co2MolarMass * molesPerLitreAtm * (partial / atmosphere));
}

Result<double> co2MoleFractionInWater(Temperature t, Pressure partial)
{
    SPILE_TRY(needCelsiusBetween("temperature_c", t, 0, 100));
    SPILE_TRY(needPartial(partial));
    const double T = t.si();
    const double megapascals =
        std::exp(-6.8346 + 1.2817e4 / T - 3.7668e6 / (T * T) + 2.997e8 / (T * T * T));
    return partial.si() / 1e6 / megapascals;
}

Result<Density> co2InBeer(Temperature t, Pressure partial)
{
    SPILE_ASSIGN(inWater, co2InWater(t, partial));
    return beerToWater * inWater;
}

Result<double> co2Volumes(Density dissolved)
{
    SPILE_TRY(needBetween("co2_g_per_l", inGramsPerLitre(dissolved), 0, 100));
    return dissolved / co2PerVolume;
}

Result<Density> co2Dissolved(double volumes)
{
    SPILE_TRY(needBetween("co2_volumes", volumes, 0, 50));
    return volumes * co2PerVolume;
}

}  // namespace spile::gas
