#include "core/liquor/ethanol_water.hpp"

#include "core/liquor/limits.hpp"
#include "core/units/checks.hpp"

namespace spile::liquor {

Result<Density> densityByMass(double alcoholByMass, Temperature t)
{
    SPILE_TRY(needBetween("alcohol_by_mass", alcoholByMass, 0, 1));
    SPILE_TRY(needCelsiusBetween("temperature_c", t, -20, 40));
    return kilogramsPerCubicMetre(DensityCurve(inCelsius(t)).at(alcoholByMass));
}

Result<double> massFractionByDensity(Density density, Temperature t)
{
    SPILE_TRY(needCelsiusBetween("temperature_c", t, 0, 40));
    const DensityCurve curve(inCelsius(t));
    const double ofWater = curve.at(0);
    const double ofEthanol = curve.at(1);
    SPILE_TRY(needBetween("density_kg_m3", density.si(), ofEthanol, ofWater));
    const double start = (ofWater - density.si()) / (ofWater - ofEthanol);
    return rootBetween(0, 1, start, [&](double p) {
        const ValueAndSlope here = curve.withSlope(p);
        return ValueAndSlope{here.value - density.si(), here.slope};
    });
}

Result<double> massFractionByVolume(double alcoholByVolume)
{
    SPILE_TRY(needBetween("alcohol_by_volume", alcoholByVolume, 0, 1));
    const double ethanol = alcoholByVolume * ethanolDensityAt20;  // kg in 1 m3 of liquor
    return rootBetween(0, 1, alcoholByVolume, [&](double p) {
        const ValueAndSlope here = densityCurveAt20.withSlope(p);
        return ValueAndSlope{p * here.value - ethanol, here.value + p * here.slope};
    });
}

Result<double> volumeFractionByMass(double alcoholByMass)
{
    SPILE_TRY(needBetween("alcohol_by_mass", alcoholByMass, 0, 1));
    return alcoholByMass * densityAt20(alcoholByMass) / ethanolDensityAt20;
}

Result<Volume> volumeAt20(Volume volume, double alcoholByVolume, Temperature t)
{
    SPILE_TRY(needBetween("volume_m3", volume.si(), 0, amountMost));
    SPILE_ASSIGN(byMass, massFractionByVolume(alcoholByVolume));
    SPILE_ASSIGN(there, densityByMass(byMass, t));
    return (there.si() / densityAt20(byMass)) * volume;
}

}  // namespace spile::liquor
