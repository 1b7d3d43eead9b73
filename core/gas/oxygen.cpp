#include "core/gas/oxygen.hpp"

#include "core/gas/carbon_dioxide.hpp"
#include "core/gas/checks.hpp"

#include <cmath>

namespace spile::gas {

Result<Density> oxygenSaturation(Temperature t)
{
    SPILE_TRY(needCelsiusBetween("temperature_c", t, 0, 40));
    const double y = 1 / t.si();
    return milligramsPerLitre(std::exp(
        -139.34411 + y * (1.575701e5 + y * (-6.642308e7 + y * (1.243800e10 - y * 8.621949e11)))));
}

Result<Density> oxygenInAir(Temperature t, Pressure pressure)
{
    SPILE_TRY(needGasTemperature(t));
    SPILE_TRY(needBetween("pressure_bar", inBars(pressure), 0, 10));
    return kilogramsPerCubicMetre(oxygenInDryAir * oxygenMolarMass * pressure.si() /
                                  (gasConstant * t.si()));
}

Result<Density> oxygenTakenUp(Volume headSpace, double exchanged, Volume beer, Temperature t)
{
    SPILE_TRY(needBetween("head_space_l", inLitres(headSpace), 0, 1e4));
    SPILE_TRY(needBetween("exchanged", exchanged, 0, 1));
    SPILE_TRY(needBetween("beer_l", inLitres(beer), 0.1, 1e6));
    SPILE_ASSIGN(inAir, oxygenInAir(t));
    return exchanged * (headSpace / beer) * inAir;
}

}  // namespace spile::gas
