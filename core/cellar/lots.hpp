#pragma once

#include "core/cellar/acts/packing.hpp"
#include "core/cellar/queries.hpp"

/// Lots: what came into them, what was done to them, and where it went.
///
/// Errors    of every query: those of ledger::Database.
namespace spile::cellar {

/// A lot as it stands in a list.
struct LotRow {
    SubjectId lot;
    std::string name;
    Instant at;
    Volume in;   // of all that came in
    Volume out;  // of all that was packaged, lost, filled, passed on or discarded
    bool held = false;
    std::int64_t packagings = 0;

    /// What should be left.
    [[nodiscard]] Volume left() const { return in - out; }
};
struct AfterLot {
    Instant at = Instant::max();
    SubjectId lot;
};
/// All lots, the newest first.
[[nodiscard]] Result<std::vector<LotRow>> lots(ledger::Database& database, const AfterLot& after,
                                               int limit);
/// None if the records do not have it.
[[nodiscard]] Result<std::optional<LotRow>> lotById(ledger::Database& database,
                                                    const SubjectId& lot);

struct TransferRow : FactRow {
    SubjectId from;
    std::string fromName;  // the barrel's mark or code, or the lot's name
    bool fromLot = false;
    std::string beer;  // of a barrel's fill
    Volume volume;
    std::optional<double> alcoholByVolume, specificGravity;
    std::string method;
};
struct FinishRow : FactRow {
    std::string substance;
    std::optional<Mass> mass;
    std::optional<Volume> volume;
    std::optional<double> alcoholByVolume;
    std::string allergen;
    std::optional<Instant> until;
    std::optional<Instant> takenOut;
};
struct TreatmentRow : FactRow {
    std::string method;
    std::optional<Temperature> temperature;
    std::optional<Milliseconds> held;
};
struct CarbonationRow : FactRow {
    std::string method;
    double volumes = 0;
    std::optional<Pressure> gauge;
    std::optional<Temperature> temperature;
    std::optional<Mass> sugar;
};
struct PackageRow : FactRow {
    SubjectId lot;
    std::string lotCode;
    std::vector<PackageCount> packages;
    std::vector<PackageCount> left;  // that have not been released
    Volume volume;
    std::optional<Volume> lost;
    std::optional<double> alcoholByVolume, labelStrength;
    std::string law;
    std::optional<double> co2Volumes;
    std::optional<Instant> bestBefore;
    bool whileHeld = false;  // another device held the lot when it was packaged
};
struct ReleaseRow : FactRow {
    EntryId package;
    std::string to;
    std::vector<PackageCount> packages;
};
struct HoldRow : FactRow {
    std::string reason;
    std::optional<Instant> cleared;
    std::string outcome;
};
/// Beer that went out of a lot other than into packages.
struct WayOutRow : FactRow {
    std::string kind;  // "fill", "top_up", "transfer", "discard"
    Volume volume;
    std::string to;  // the barrel, the lot, or why it was discarded
};

/// All of a lot, each list the oldest first.
struct LotHistory {
    std::string name;
    Instant at;
    std::optional<SubjectId> target;
    std::vector<TransferRow> transfers;
    std::vector<FinishRow> finishes;
    std::vector<TreatmentRow> treatments;
    std::vector<CarbonationRow> carbonations;
    std::vector<ReadingRow> readings;
    std::vector<PackageRow> packages;
    std::vector<ReleaseRow> releases;
    std::vector<HoldRow> holds;
    std::vector<WayOutRow> waysOut;

    /// The allergens of all that was put in, each once.
    [[nodiscard]] std::vector<std::string> allergens() const;
    /// That something is held now.
    [[nodiscard]] bool held() const;
};
/// Errors    besides: NotFound for a lot that the records do not have.
[[nodiscard]] Result<LotHistory> lotHistory(ledger::Database& database, const SubjectId& lot);

/// The holds of a lot that wait for a result.
[[nodiscard]] Result<std::vector<HoldRow>> openHoldsOf(ledger::Database& database,
                                                       const SubjectId& lot);
/// The packages that one record says of; none if there is no such record.
[[nodiscard]] Result<std::optional<PackageRow>> packagedBy(ledger::Database& database,
                                                           const EntryId& entry);
/// The same by the code that is printed on them.
[[nodiscard]] Result<std::vector<PackageRow>> packagedAs(ledger::Database& database,
                                                         const std::string& lotCode);

/// To whom those packages were released, the oldest first.
[[nodiscard]] Result<std::vector<ReleaseRow>> releasesOf(ledger::Database& database,
                                                         const EntryId& package);

/// A finish that is to be taken out, over all lots.
struct FinishDue {
    EntryId finish;
    SubjectId lot;
    std::string lotName, substance;
    Instant until;
};
/// Those that are still in, the first due first.
[[nodiscard]] Result<std::vector<FinishDue>> finishesDue(ledger::Database& database, Instant until,
                                                         int limit);

}  // namespace spile::cellar
