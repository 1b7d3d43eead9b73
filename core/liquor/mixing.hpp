#pragma once

#include "core/base/result.hpp"
#include "core/units/units.hpp"

#include <span>

/// Beer and spirit by mass: what is mixed keeps its mass, not its volume. All volumes at 20 °C, all
/// amounts at most amountMost (limits.hpp).
///
/// The density of a liquor with extract is that of its alcohol and that of its extract added over
/// water: 998.2012 (SGalc(A) + SGext(E) - 1), as Tabarié 1830 put it.
///
/// Accuracy  exact by mass; for the addition none is claimed, since ethanol and sugar act on one
///           another (Hackbarth, J. ASBC 67 (2009) 146).
namespace spile::liquor {

/// What a liquor is made of.
struct Liquor {
    Mass water;
    Mass ethanol;
    Mass extract;

    friend constexpr bool operator==(const Liquor&, const Liquor&) = default;
    friend constexpr Liquor operator+(const Liquor& a, const Liquor& b)
    {
        return {a.water + b.water, a.ethanol + b.ethanol, a.extract + b.extract};
    }
    friend constexpr Liquor operator*(double k, const Liquor& a)
    {
        return {k * a.water, k * a.ethanol, k * a.extract};
    }
    [[nodiscard]] constexpr Mass mass() const { return water + ethanol + extract; }
};

/// A liquor as it is measured. `contraction` is what the volumes of its portions lost in mixing; 0
/// where it was not made of portions.
struct Mixed {
    Volume volume;  ///< at 20 °C
    double alcoholByVolume = 0;
    double alcoholByMass = 0;
    double specificGravity = 0;  ///< 20/20
    double realExtract = 0;      ///< °P, grams in 100 g
    Mass mass;
    Volume contraction;
};

/// A volume of beer or spirit, as it goes into a mixture.
struct Portion {
    Volume volume;  ///< at 20 °C
    double alcoholByVolume = 0;
    double realExtract = 0;  ///< °P; 0 for a spirit
};

/// Return the masses in a volume.
///
/// Range     `at20` >= 0; `alcoholByVolume` 0 to 1; `realExtract` 0 to 44 °P, which leaves room for
///           the alcohol.
/// Errors    NotFinite; OutOfRange. `subject` is "volume_m3", "alcohol_by_volume" or
///           "real_extract_p".
/// Accuracy  describe() gives back volume, strength and extract within 1e-12.
[[nodiscard]] Result<Liquor> liquorOf(Volume at20, double alcoholByVolume, double realExtract);
[[nodiscard]] inline Result<Liquor> liquorOf(const Portion& portion)
{
    return liquorOf(portion.volume, portion.alcoholByVolume, portion.realExtract);
}

/// Return volume, strength and gravity of a liquor.
///
/// Errors    NotFinite; OutOfRange if a mass is below 0 ("water_kg", "ethanol_kg", "extract_kg"),
///           all are 0 ("mass_kg") or there is more extract than 44 °P ("real_extract_p").
[[nodiscard]] Result<Mixed> describe(const Liquor& liquor);

/// The same without checks, for inner loops: nothing allocated, 20 to 25 ns (2.5 GHz, -O2).
///
/// Requires  no mass below 0, their sum above 0, at most 44 g of extract in 100 g.
[[nodiscard]] Mixed describeUnchecked(const Liquor& liquor) noexcept;

/// Return the share of the molecules that are ethanol, of those of ethanol and water; the extract,
/// whose molecules are large and few, is left out. Requires ethanol or water above 0.
[[nodiscard]] double ethanolMoleFraction(const Liquor& liquor) noexcept;

/// Return what the portions make together, with the volume lost by contraction (below 0 if gained).
///
/// Shape     one portion or more; a portion may be empty if another is not.
/// Errors    OutOfRange if there are none ("portions"); those of liquorOf() and describe().
/// Accuracy  mass, ethanol and extract are kept within 1e-12 of the whole.
[[nodiscard]] Result<Mixed> mix(std::span<const Portion> portions);

/// Return how much spirit of `spiritByVolume` brings `beer` to `targetByVolume`.
///
/// Range     beer's strength <= target < spirit's strength.
/// Errors    NotFinite; OutOfRange. `subject` is "target_by_volume" if the target is not between.
/// Accuracy  mix() of both gives the target within 1e-12.
/// Limits    arithmetic, not leave: what the law calls the result is another matter.
[[nodiscard]] Result<Volume> spiritToReach(const Portion& beer, double spiritByVolume,
                                           double targetByVolume);

/// Return the strength that beer comes to when it and the spirit held in the wood have fully
/// exchanged: their alcohol spread over both volumes. The wood keeps its share of liquor.
///
/// Range     volumes >= 0, not both 0; strengths 0 to 1.
/// Errors    NotFinite; OutOfRange.
/// Limits    by volume, without contraction (0.02 points of strength at most in such cases).
[[nodiscard]] Result<double> spiritInWood(Volume beer, double beerByVolume, Volume inWood,
                                          double inWoodByVolume);

}  // namespace spile::liquor
