#include "core/liquor/strength.hpp"

#include "core/liquor/ethanol_water.hpp"
#include "core/liquor/limits.hpp"
#include "core/liquor/root.hpp"
#include "core/units/checks.hpp"

namespace spile::liquor {

namespace {

constexpr double sixtyFahrenheit = (60.0 - 32.0) / 1.8;  // °C
constexpr DensityCurve curveAt60F(sixtyFahrenheit);
constexpr double ethanolDensityAt60F = curveAt60F.at(1);

}  // namespace

Result<double> usProofByVolume(double alcoholByVolume)
{
    SPILE_ASSIGN(byMass, massFractionByVolume(alcoholByVolume));
    return 200 * byMass * curveAt60F.at(byMass) / ethanolDensityAt60F;
}

Result<double> massFractionOfUsProof(double proof)
{
    SPILE_TRY(needBetween("us_proof", proof, 0, 200));
    const double ethanol = proof / 200 * ethanolDensityAt60F;  // kg in 1 m3
    return rootBetween(0, 1, proof / 200, [&](double p) {
        const ValueAndSlope here = curveAt60F.withSlope(p);
        return ValueAndSlope{p * here.value - ethanol, here.value + p * here.slope};
    });
}

Result<double> alcoholByVolumeOfUsProof(double proof)
{
    SPILE_ASSIGN(byMass, massFractionOfUsProof(proof));
    return volumeFractionByMass(byMass);
}

Result<double> alcoholByVolumeByHydrometer(double reading, Temperature t)
{
    constexpr double glass = 25e-6;  // cubic expansion per °C
    SPILE_TRY(needCelsiusBetween("temperature_c", t, 0, 30));
    SPILE_ASSIGN(marked, massFractionByVolume(reading));
    const double shown = densityAt20(marked) * (1 - glass * (t.si() - celsius(20).si()));
    SPILE_ASSIGN(byMass, massFractionByDensity(kilogramsPerCubicMetre(shown), t));
    return volumeFractionByMass(byMass);
}

Result<double> proofWithSolids(double apparentProof, Density solids)
{
    SPILE_TRY(needBetween("apparent_proof", apparentProof, 80, 100));
    SPILE_TRY(needBetween("solids_g_l", inGramsPerLitre(solids), 0, amountMost));
    constexpr double ignoredMost = 4;  // g/L
    constexpr double hiddenMost = 6;
    constexpr double proofPerSolid = 0.4;  // degrees per g/L
    if (inGramsPerLitre(solids) > hiddenMost) {
        return fail(ErrorCode::Unsupported, "solids_g_l", std::to_string(inGramsPerLitre(solids)),
                    "at most 6; above, distil the sample");
    }
    const bool counts = inGramsPerLitre(solids) >= ignoredMost;
    return apparentProof + (counts ? proofPerSolid * inGramsPerLitre(solids) : 0);
}

Result<Volume> pureAlcohol(Volume at20, double alcoholByVolume)
{
    SPILE_TRY(needBetween("volume_m3", at20.si(), 0, amountMost));
    SPILE_TRY(needBetween("alcohol_by_volume", alcoholByVolume, 0, 1));
    return alcoholByVolume * at20;
}

Result<double> proofGallons(Volume at60F, double proof)
{
    SPILE_TRY(needBetween("volume_m3", at60F.si(), 0, amountMost));
    SPILE_TRY(needBetween("us_proof", proof, 0, 200));
    return inUsGallons(at60F) * proof / 100;
}

}  // namespace spile::liquor
