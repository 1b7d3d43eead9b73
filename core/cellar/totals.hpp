#pragma once

#include "core/cellar/queries.hpp"

/// Sums over a time, for reports. They read whole tables: work for a desk, not for a page.
///
/// Errors    of every query: those of ledger::Database.
namespace spile::cellar {

/// Beer that moved, for the account of a time.
struct Movement {
    enum class Kind : std::uint8_t {
        Packaged,
        LostPacking,
        Released,
        Filled,
        ToppedUp,
        Drawn,
        Transferred,
        Discarded,
    };
    Kind kind{};
    Instant at;
    Volume volume;
    std::optional<double> strength;  // measured, else by the label; of packages and releases
};
/// From `from` on and before `to`, in no order.
[[nodiscard]] Result<std::vector<Movement>> movementsIn(ledger::Database& database, Instant from,
                                                        Instant to);

/// A stay in a barrel that ended.
struct EndedStay {
    EntryId fill;
    SubjectId barrel;
    std::string barrelName, code, beer;
    Instant filled, emptied;
    std::optional<Volume> in;   // at the fill
    Volume toppedUp, drawn;     // until it ended
    std::optional<Volume> out;  // as it was measured; with what was taken before as a part
    Volume heel;
};
/// The stays that ended from `from` on and before `to`, the first ended first.
[[nodiscard]] Result<std::vector<EndedStay>> staysEnded(ledger::Database& database, Instant from,
                                                        Instant to);
/// One of them by its fill; none if it has not ended.
[[nodiscard]] Result<std::optional<EndedStay>> stayEnded(ledger::Database& database,
                                                         const EntryId& fill);

/// What was recorded that something cost, in the house's own money.
struct CostRow : FactRow {
    std::string what;
    double cost = 0;
    std::optional<Volume> forVolume;
    std::optional<std::int64_t> fillsExpected;
};
[[nodiscard]] Result<std::vector<CostRow>> costsOf(ledger::Database& database,
                                                   const SubjectId& subject);
/// How much of a batch went into barrels, and how often a barrel was filled, as recorded.
[[nodiscard]] Result<Volume> filledOf(ledger::Database& database, const SubjectId& batch);
[[nodiscard]] Result<std::int64_t> fillsIn(ledger::Database& database, const SubjectId& barrel);
/// How much beer of a fill went into lots.
[[nodiscard]] Result<Volume> outOf(ledger::Database& database, const EntryId& fill);

}  // namespace spile::cellar
