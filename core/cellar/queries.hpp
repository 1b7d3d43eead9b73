#pragma once

#include "core/base/ids.hpp"
#include "core/base/time.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/registering.hpp"
#include "core/cellar/acts/tending.hpp"
#include "core/ledger/database.hpp"
#include "core/ledger/entry.hpp"
#include "core/units/units.hpp"

#include <map>
#include <optional>
#include <string>
#include <vector>

/// What the state says, as plain values. Every list is read by an index, a page at a time, and
/// goes on after the last row of the page before.
///
/// Errors    of every query: those of ledger::Database.
namespace spile::cellar {

/// A barrel as it stands in a list.
struct BarrelRow {
    SubjectId barrel;
    std::string code;
    std::string mark;
    std::string spirit;
    std::string beer;   // of the batch it holds; empty if none or unknown
    std::string place;  // "Cellar / Rack 2"
    std::optional<SubjectId> placeId;
    bool filled = false;
    std::optional<Volume> size;
    std::optional<Volume> volume;  // held now, as far as is known
    std::optional<std::int64_t> fillNumber;
    std::optional<Instant> filledAt;
    DatePrecision filledPrecision = DatePrecision::Day;
    std::optional<Instant> emptiedAt;  // last; by the registration if never since
    std::int64_t tastings = 0;
    std::optional<Instant> lastTasted;
    std::string verdict;  // the latest in this fill; empty if none
    std::string nextStep;
    std::optional<Instant> due;
    std::string dueReason;  // of a tasting whose day an outlook named: acts/foreseeing.hpp
    std::string orderKey;   // its place in barrels(), with its id
    std::string nextUse;    // of an empty barrel, as its emptying said
    bool sour = false;      // it has held sour beer, or is kept for it: its kit is kept apart
};

/// Where a page of a list begins: after the row with these keys.
struct AfterBarrel {
    std::string orderKey;
    SubjectId barrel;
};
[[nodiscard]] inline AfterBarrel afterBarrel(const BarrelRow& row)
{
    return {row.orderKey, row.barrel};
}
struct AfterDue {
    Instant due = Instant::min();
    SubjectId barrel;
};

/// All barrels in the brewers' order (naturalKey): "Rum 3" before "Rum 12", then by code.
[[nodiscard]] Result<std::vector<BarrelRow>> barrels(ledger::Database& database,
                                                     const AfterBarrel& after, int limit);
/// The barrels whose next step is due by `until`, the longest due first.
[[nodiscard]] Result<std::vector<BarrelRow>> barrelsDue(ledger::Database& database, Instant until,
                                                        const AfterDue& after, int limit);
/// The barrel `barrel`; none if the records do not have it.
[[nodiscard]] Result<std::optional<BarrelRow>> barrelById(ledger::Database& database,
                                                          const SubjectId& barrel);
/// The barrels with this code: one, unless two devices gave the same code to two barrels.
[[nodiscard]] Result<std::vector<BarrelRow>> barrelsWithCode(ledger::Database& database,
                                                             const std::string& code);
/// The barrels whose code begins with `beginning`, by their codes; `limit` of them.
[[nodiscard]] Result<std::vector<BarrelRow>> barrelsWithCodeBeginning(ledger::Database& database,
                                                                      const std::string& beginning,
                                                                      int limit);

/// What every fact about a barrel has.
struct FactRow {
    EntryId entry;
    Instant at;
    std::optional<Instant> clock;  // what that was by its device's clock, if that was set right
    std::string person;
    std::string device;
    DeviceId deviceId;
    std::string note;
    bool amended = false;
    bool twoValues = false;
};
struct FillRow : FactRow {
    std::string beer;
    std::optional<Volume> volume;
    DatePrecision precision = DatePrecision::Day;
    std::optional<double> alcoholByVolume, specificGravity;
};
struct GaugeRow : FactRow {
    Volume volume;
    std::string method;
    Bound bound = Bound::None;
};
struct TopUpRow : FactRow {
    std::string what;  // the beer's name, or in words
    Volume volume;
    std::optional<double> alcoholByVolume;
};
/// What was put in that is not beer.
struct DoseRow : FactRow {
    std::string substance;
    std::optional<Volume> volume, drained;
    std::optional<Mass> mass;
    std::optional<double> alcoholByVolume;
};
struct DrawRow : FactRow {
    Volume volume;
    std::string method;
};
struct TasteRow : FactRow {
    std::map<std::string, std::optional<std::int64_t>> scores;  // 1 to 9, none: not judged
    std::map<std::string, std::int64_t> faults;
    std::optional<std::int64_t> liking;
};
struct PhotoRow : FactRow {
    Sha256 hash;
    std::uint64_t bytes = 0;
    std::string purpose;
    bool here = false;  // on this device
};
struct ReadingRow : FactRow {
    std::optional<double> specificGravity, ph, alcoholByVolume;
    std::optional<Temperature> temperature;
    std::optional<Temperature> hydrometerReference, sampleTemperature;  // see NewReading
};
/// A check, a repair, a move, a verdict, an emptying, or a step of a work sheet that was skipped or
/// ended early.
struct OtherRow : FactRow {
    std::string kind;
    std::string text;  // the finding, the place's name, ...; of a step its sheet, outcome, reason
                       // or name, a line each
    std::optional<double> chance = {};  // of a verdict: what the outlook said then, that all was
    std::optional<Instant> best = {};   // inside, 0 to 1, and when that stood highest
};

/// All that happened to a barrel, each list the oldest first.
struct BarrelHistory {
    std::vector<FillRow> fills;
    std::vector<GaugeRow> gauges;
    std::vector<DrawRow> draws;
    std::vector<TopUpRow> topUps;
    std::vector<DoseRow> doses;
    std::vector<TasteRow> tastings;
    std::vector<ReadingRow> readings;
    std::vector<PhotoRow> photos;
    std::vector<OtherRow> others;  // kind by kind
};
[[nodiscard]] Result<BarrelHistory> historyOf(ledger::Database& database, const SubjectId& barrel);
/// What was put into a barrel that is not beer, the oldest first.
[[nodiscard]] Result<std::vector<DoseRow>> dosesOf(ledger::Database& database,
                                                   const SubjectId& barrel);
/// What was measured of a barrel or a lot, the oldest first.
[[nodiscard]] Result<std::vector<ReadingRow>> readingsOf(ledger::Database& database,
                                                         const SubjectId& subject);
/// The latest reading of a barrel, of whichever fill; none if it was never measured.
[[nodiscard]] Result<std::optional<ReadingRow>> lastReading(ledger::Database& database,
                                                            const SubjectId& barrel);

/// What is known of a barrel's measures; all empty for a barrel that the records do not have.
[[nodiscard]] Result<BarrelMeasures> measuresOf(ledger::Database& database,
                                                const SubjectId& barrel);

/// Something with a name: a person, place, target, batch or device.
struct NamedRow {
    SubjectId subject;
    std::string name;
};

/// The air of a place, from that time on.
struct ClimateRow {
    Instant at;
    Temperature temperature = celsius(0);
    double relativeHumidity = 0;
};
/// All that was recorded of a place, or else of the nearest place around it, the oldest first.
[[nodiscard]] Result<std::vector<ClimateRow>> climatesOf(ledger::Database& database,
                                                         const SubjectId& place);
/// The outermost place around it: the room, whose air it has.
[[nodiscard]] Result<NamedRow> roomOf(ledger::Database& database, const SubjectId& place);

/// Those of one kind in the order of their ids. Requires a kind that has names.
[[nodiscard]] Result<std::vector<NamedRow>> named(ledger::Database& database, std::string_view kind,
                                                  const SubjectId& after, int limit);

/// The name of a person; empty if the records do not have them.
[[nodiscard]] Result<std::string> nameOfPerson(ledger::Database& database, const SubjectId& person);

/// The batch that a barrel holds; none if it is empty or nobody said.
[[nodiscard]] Result<std::optional<NamedRow>> batchOfBarrel(ledger::Database& database,
                                                            const SubjectId& barrel);
/// The windows of a target, in their order.
[[nodiscard]] Result<std::vector<Window>> windowsOfTarget(ledger::Database& database,
                                                          const SubjectId& target);
/// The windows of a batch's target, in their order; empty if it has none.
[[nodiscard]] Result<std::vector<Window>> windowsOfBatch(ledger::Database& database,
                                                         const SubjectId& batch);
/// The same of the batch that a barrel holds.
[[nodiscard]] Result<std::vector<Window>> windowsOfBarrel(ledger::Database& database,
                                                          const SubjectId& barrel);

/// The texts of all list queries, for the test that looks at how they are run.
[[nodiscard]] std::vector<std::string_view> listQueries();

}  // namespace spile::cellar
