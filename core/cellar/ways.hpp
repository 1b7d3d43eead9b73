#pragma once

#include "core/cellar/acts/packing.hpp"
#include "core/cellar/queries.hpp"

/// The ways of beer, edge by edge, for what traces it: from fills into lots, from lots into
/// packages and barrels. What is voided is left out.
///
/// Errors    of every query: those of ledger::Database.
namespace spile::cellar {

/// When a record counts as having happened, among all.
struct WayOrder {
    Instant at;
    DeviceId device;
    std::int64_t seq = 0;
    friend auto operator<=>(const WayOrder&, const WayOrder&) = default;
};

/// What came into a lot: beer, or a finish.
struct WayIn {
    EntryId entry;
    bool finish = false;
    SubjectId from;                 // of beer: a barrel or a lot
    std::optional<EntryId> source;  // of beer: the fill, or the mix of a lot
    std::optional<Volume> volume;   // of beer always
    std::optional<double> alcoholByVolume, specificGravity;
    std::string substance, allergen;
    std::optional<Mass> mass;
    std::optional<SubjectId> person;
    WayOrder order;
};
[[nodiscard]] Result<std::vector<WayIn>> waysInto(ledger::Database& database, const SubjectId& lot);

enum class WayKind : std::uint8_t { Package, Fill, TopUp, Transfer, Discard };
/// What was taken out of a lot.
struct WayOut {
    EntryId entry;
    WayKind kind{};
    SubjectId subject;  // the lot itself, the barrel, or the lot that it went to
    EntryId mix;
    Volume volume;  // with what was lost
    Volume lost;
    WayOrder order;
};
[[nodiscard]] Result<std::vector<WayOut>> waysOutOf(ledger::Database& database,
                                                    const SubjectId& lot);
/// Of what a lot was made when something was taken from it.
struct MixSource {
    EntryId mix, source;
};
[[nodiscard]] Result<std::vector<MixSource>> mixesOf(ledger::Database& database,
                                                     const SubjectId& lot);

/// A fill: the beginning of a beer's stay in a barrel.
struct WayFill {
    EntryId entry;
    SubjectId barrel;
    std::optional<SubjectId> batch;
    std::optional<Volume> volume;
    std::optional<double> alcoholByVolume;
    std::optional<SubjectId> lot;   // that it was filled from,
    std::optional<EntryId> source;  // and its mix
    std::optional<SubjectId> person;
    WayOrder order;
};
[[nodiscard]] Result<std::optional<WayFill>> wayFill(ledger::Database& database,
                                                     const EntryId& entry);
/// A top-up of a barrel.
struct WayTopUp {
    EntryId entry;
    SubjectId barrel;
    std::optional<SubjectId> batch;
    std::string substance;
    Volume volume;
    std::optional<SubjectId> lot;
    std::optional<EntryId> source;
    std::optional<SubjectId> person;
    WayOrder order;
};
/// The top-ups that a transfer out of a barrel names.
[[nodiscard]] Result<std::vector<WayTopUp>> topUpsOf(ledger::Database& database,
                                                     const EntryId& transfer);

/// What is known of a barrel's past at a fill.
struct BarrelPast {
    std::string code, mark, spirit;
    std::optional<std::int64_t> fillNumber;  // of this fill
    std::vector<std::string> beers;          // that it held before, as recorded, the oldest first
    std::optional<Instant> emptied;          // when the stay ended
    std::optional<SubjectId> emptiedBy;
};
[[nodiscard]] Result<BarrelPast> pastOf(ledger::Database& database, const WayFill& fill);
/// What was put into a barrel besides beer for this stay: since it was emptied before, and until
/// `until`.
[[nodiscard]] Result<std::vector<DoseRow>> dosesFor(ledger::Database& database, const WayFill& fill,
                                                    Instant until);

/// The name that the earliest record of that kind gives a subject; empty if there is none.
[[nodiscard]] Result<std::string> nameOf(ledger::Database& database, std::string_view kind,
                                         const SubjectId& subject);

/// Downwards: what comes of a record.
[[nodiscard]] Result<std::vector<EntryId>> fillsOfBatch(ledger::Database& database,
                                                        const SubjectId& batch);
[[nodiscard]] Result<std::vector<EntryId>> topUpsOfBatch(ledger::Database& database,
                                                         const SubjectId& batch);
[[nodiscard]] Result<std::vector<EntryId>> fillsOfBarrel(ledger::Database& database,
                                                         const SubjectId& barrel);
[[nodiscard]] Result<std::vector<EntryId>> finishesOf(ledger::Database& database,
                                                      const std::string& substance);
/// The transfers that beer of a fill or a top-up went into.
[[nodiscard]] Result<std::vector<EntryId>> transfersOf(ledger::Database& database,
                                                       const EntryId& stay);
/// The mixes that a transfer or a finish is part of.
[[nodiscard]] Result<std::vector<EntryId>> mixesWith(ledger::Database& database,
                                                     const EntryId& source);
/// What was taken of a mix.
[[nodiscard]] Result<std::vector<WayOut>> takenOf(ledger::Database& database, const EntryId& mix);
/// The lot that a transfer, a finish or a mix is of; none if it is neither.
[[nodiscard]] Result<std::optional<SubjectId>> lotOf(ledger::Database& database,
                                                     const EntryId& entry);
/// The fill that a top-up went onto: the last before it. None if there was none.
[[nodiscard]] Result<std::optional<EntryId>> stayOfTopUp(ledger::Database& database,
                                                         const EntryId& topUp);

}  // namespace spile::cellar
