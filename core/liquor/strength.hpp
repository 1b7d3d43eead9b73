#pragma once

#include "core/base/result.hpp"
#include "core/units/units.hpp"

/// Strength as spirits are sold and taxed. Fractions by volume are 0 to 1 and at 20 °C; amounts 0
/// to amountMost (limits.hpp).
namespace spile::liquor {

/// Return the US proof of a spirit: twice its percentage by volume at 60 °F. Ethanol widens more
/// than water, so that 100 proof is 50.06 % at 20 °C.
///
/// Range     `alcoholByVolume` 0 to 1: 0 to 200 proof.
/// Errors    NotFinite; OutOfRange.
/// Accuracy  a tenth of a degree, as proof is stated, against the US gauging tables.
/// Source    27 CFR 5.1 and 19.1 (proof); densities by OIML R 22 at both temperatures.
[[nodiscard]] Result<double> usProofByVolume(double alcoholByVolume);

/// Return the strength at 20 °C of a spirit of `proof`: the inverse of usProofByVolume(), within
/// 1e-12.
///
/// Range     0 to 200.
/// Errors    NotFinite; OutOfRange. `subject` is "us_proof".
[[nodiscard]] Result<double> alcoholByVolumeOfUsProof(double proof);

/// Return the mass fraction of ethanol in a spirit of `proof`, for its mass goes through any
/// temperature unchanged. Range and errors as above.
[[nodiscard]] Result<double> massFractionOfUsProof(double proof);

/// Return the true strength when a glass alcoholometer marked at 20 °C in fractions by volume reads
/// `reading` in a spirit of temperature `t`.
///
/// Range     `reading` 0 to 1; `t` 0 to 30 °C; the answer must lie in 0 to 1 as well.
/// Errors    NotFinite; OutOfRange.
/// Limits    water and ethanol only: extract makes any reading useless, so never in beer.
/// Source    OIML R 22 densities; glass 25e-6 per °C, ISO 1768:1975.
[[nodiscard]] Result<double> alcoholByVolumeByHydrometer(double reading, Temperature t);

/// Return the proof of a spirit with a little extract, of which it hides some from a hydrometer:
/// 0.4 degrees for each 100 mg in 100 mL are added, from 400 mg on.
///
/// Range     `apparentProof` 80 to 100, for which the rule is given; `solids` 0 to 6 g/L.
/// Errors    NotFinite; OutOfRange; Unsupported over 6 g/L: it has to be distilled.
/// Source    27 CFR 30.32.
[[nodiscard]] Result<double> proofWithSolids(double apparentProof, Density solids);

/// Return the volume of pure alcohol, of 20 °C, in `at20` of liquor.
///
/// Errors    NotFinite; OutOfRange.
[[nodiscard]] Result<Volume> pureAlcohol(Volume at20, double alcoholByVolume);

/// Return the proof gallons, US gallons of 100 proof at 60 °F, in `at60F` of spirit.
///
/// Errors    NotFinite; OutOfRange.
/// Source    27 CFR 19.1, "proof gallon".
[[nodiscard]] Result<double> proofGallons(Volume at60F, double proof);

}  // namespace spile::liquor
