#pragma once

#include "core/cellar/totals.hpp"

#include <string>
#include <vector>

/// What an authority or a brewer asks for at the end of a time. Times are those of UTC.
namespace spile::trace {

enum class Period : std::uint8_t { Month, Quarter, Year };

/// What moved in one period. Litres of alcohol are volumes of pure alcohol at 20 °C.
struct DutyRow {
    Instant from, to;  // `to` is the first moment after it
    Volume packaged, packagedAlcohol;
    Volume released, releasedAlcohol;
    Volume filled, toppedUp, drawn, transferred, lostPacking, discarded;
    Volume evaporated;             // of the stays that ended: what no record explains
    bool strengthMissing = false;  // of something packaged or released: its alcohol is not counted
};
/// Return the periods from the one that `from` is in to the one before `to`, or that it is in;
/// those in which nothing moved too, at most 1,200.
///
/// Errors    OutOfRange if `to` is not after `from`, or there are more; those of ledger::Database.
/// Limits    a summary to fill in a return with; what is due, and on what, is the authority's to
///           say.
[[nodiscard]] Result<std::vector<DutyRow>> dutySummary(ledger::Database& database, Instant from,
                                                       Instant to, Period period);

/// What a stay lost that no record explains: evaporated, soaked into the wood, leaked. None if its
/// fill or its end was not measured.
[[nodiscard]] std::optional<Volume> unexplainedLoss(const cellar::EndedStay& stay);

/// What one barrel's stay cost a lot.
struct StayCost {
    std::string barrelName, beer;
    Volume into;  // the lot
    std::optional<Volume> evaporated;
    double beerCost = 0, barrelCost = 0;
    double perLitre = 0;  // of what came into the lot
};
struct LotCost {
    SubjectId lot;
    std::string name;
    Volume in, packaged;
    std::vector<StayCost> stays;
    double passedOn = 0;  // the cost of beer that came from other lots
    double own = 0;       // finishes, packages, work: what was recorded of the lot itself
    double whole = 0;
    std::optional<double> perLitre;  // of what was packaged, or of what is there if nothing was
    bool complete = true;            // a cost is recorded for every barrel and beer of it
};
/// Return what a lot cost, in the house's own money.
///
/// A beer's price is what was recorded of its batch, by the volume it paid for, or else by what was
/// filled of it; a barrel's is spread over the fills that were expected of it, or else over those
/// recorded. A stay's cost goes to lots by the volumes that came out of it: what evaporated makes
/// the rest dearer.
///
/// Errors    NotFound; those of ledger::Database.
[[nodiscard]] Result<LotCost> costOfLot(ledger::Database& database, const SubjectId& lot);

}  // namespace spile::trace
