#include "core/liquor/water.hpp"

#include "core/units/checks.hpp"

namespace spile::liquor {

Result<Density> waterDensity(Temperature temperature)
{
    SPILE_TRY(needCelsiusBetween("temperature_c", temperature, 0, 40));
    // The names are the paper's; a5 is the density at the maximum.
    constexpr double a1 = -3.983035;
    constexpr double a2 = 301.797;
    constexpr double a3 = 522528.9;
    constexpr double a4 = 69.34881;
    constexpr double a5 = 999.974950;
    const double t = inCelsius(temperature);
    return kilogramsPerCubicMetre(a5 * (1 - (t + a1) * (t + a1) * (t + a2) / (a3 * (t + a4))));
}

}  // namespace spile::liquor
