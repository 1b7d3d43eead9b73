#pragma once

#include "core/base/result.hpp"
#include "core/units/units.hpp"

#include <cstddef>
#include <span>
#include <string_view>

/// What a finished volume becomes: bottles and kegs, the strength on the label, and what the excise
/// is told. Fractions are 0 to 1.
namespace spile::plan {

/// A bottle, can, cask or keg.
struct Package {
    std::string_view name;  ///< "bottle 330 mL"
    Volume content;
};

/// Return the packages of the trade: bottles, cans, casks, kegs, each from small to large.
///
/// Source    common practice; casks of 4 1/2, 9 and 18 imperial gallons.
[[nodiscard]] std::span<const Package> packages();

/// How often a volume fills a package.
struct Packed {
    std::size_t count = 0;
    Volume lost;    ///< in hoses, foam and breakage
    Volume packed;  ///< count packages
    Volume rest;    ///< too little for one more
};

/// Return how many packages of `content` a volume fills after a share of it is lost.
///
/// Range     `volume` 0 to 1e6 m3; `content` at least 1 mL; `lossShare` 0 to 1.
/// Errors    NotFinite; OutOfRange. `subject` is "volume_m3", "content_m3" or "loss_share".
/// Accuracy  what lacks less than a millionth of a package counts as full.
[[nodiscard]] Result<Packed> packInto(Volume volume, Volume content, double lossShare);

/// As many of a package as there is liquor for, up to `countMost`.
struct PackageOrder {
    Volume content;
    std::size_t countMost = 0;
};

/// Fill the orders one after the other, kegs before bottles if they stand so. `counts` gets how
/// many of each; `packed` and `rest` are those of all together.
///
/// Shape     `counts` as long as `orders`; it is left as it was on failure.
/// Errors    as packInto(); OutOfRange if the lengths differ ("counts").
[[nodiscard]] Result<Packed> packOrders(Volume volume, double lossShare,
                                        std::span<const PackageOrder> orders,
                                        std::span<std::size_t> counts);

/// Whose rules the label follows.
enum class LabelLaw : std::uint8_t { UnitedStates, EuropeanUnion };

/// What a measured strength says of a label.
enum class LabelVerdict : std::uint8_t {
    Within,   ///< inside the tolerance, whatever the measurement's error
    Unsure,   ///< inside or outside, depending on it
    Outside,  ///< outside, whatever it is
};

struct LabelCheck {
    double labelled = 0;
    double tolerance = 0;
    double difference = 0;  ///< measured less labelled
    LabelVerdict verdict = LabelVerdict::Unsure;
};

/// Return the strength as a label states it: to the nearest tenth of a per cent by volume.
///
/// Errors    NotFinite; OutOfRange outside 0 to 1.
[[nodiscard]] Result<double> labelStrength(double alcoholByVolume);

/// Return how far a beer's strength may lie from its label.
///
/// Errors    NotFinite; OutOfRange outside 0 to 1.
/// Source    US: 27 CFR 7.65(c), 0.3 points. EU: Regulation (EU) No 1169/2011, Annex XII, beers of
///           not more than 5.5 % 0.5 points, stronger ones 1 point (from memory).
[[nodiscard]] Result<double> labelTolerance(LabelLaw law, double labelled);

/// Compare a measured strength, known to +- `uncertainty`, with the label. In the US a beer
/// labelled 0.5 % or more must have 0.5 %.
///
/// Range     `labelled`, `measured` and `uncertainty` 0 to 1.
/// Errors    NotFinite; OutOfRange.
/// Limits    beer; other rules hold for beer with added fruit (EU, 1.5 points) and for spirits.
[[nodiscard]] Result<LabelCheck> checkLabel(LabelLaw law, double labelled, double measured,
                                            double uncertainty);

/// A finished volume as it is reported.
struct FinishTotals {
    double usBeerBarrels = 0;  ///< of 31 US gallons, 27 CFR 25.11
    Volume pureAlcohol;        ///< at 20 °C
};

/// Errors    NotFinite; OutOfRange.
[[nodiscard]] Result<FinishTotals> finishTotals(Volume at20, double alcoholByVolume);

}  // namespace spile::plan
