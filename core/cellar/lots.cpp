#include "core/cellar/lots.hpp"

#include "core/cellar/fact_rows.hpp"
#include "core/cellar/lot_query_text.hpp"
#include "core/cellar/query_text.hpp"
#include "core/cellar/row_values.hpp"

#include <algorithm>
#include <iterator>

namespace spile::cellar {

using ledger::Database;
using ledger::Row;

namespace {

constexpr int own = factColumns;

std::optional<Mass> doseIfAny(const Row& row, int column)
{
    constexpr double kgPerMg = 1e-6;
    return row.isNull(column)
               ? std::nullopt
               : std::optional(kilograms(static_cast<double>(row.integer(column)) * kgPerMg));
}

LotRow readLot(const Row& row)
{
    return {row.id<SubjectId>(0),
            row.text(1),
            instantFromMs(row.integer(2)),
            volumeFromMl(row.integer(3)),
            volumeFromMl(row.integer(4)),
            row.integer(5) != 0,
            row.integer(6)};
}

Result<std::vector<PackageCount>> countsBy(Database& database, std::string_view sql,
                                           const EntryId& entry)
{
    std::vector<PackageCount> counts;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            counts.push_back({row.text(0), volumeFromMl(row.integer(1)), row.integer(2)});
            return Result<void>();
        },
        sql, entry));
    return counts;
}

template <class Key>
Result<std::vector<PackageRow>> packagesBy(Database& database, std::string_view sql, const Key& key)
{
    SPILE_ASSIGN(rows,
                 factsOf<PackageRow>(database, sql, key, [](const Row& row, PackageRow& package) {
                     package.lot = row.id<SubjectId>(own);
                     package.lotCode = row.text(own + 1);
                     package.volume = volumeFromMl(row.integer(own + 2));
                     package.lost = volumeIfAny(row, own + 3);
                     package.alcoholByVolume = scaledIfAny(row, own + 4, 1e4);
                     package.labelStrength = scaledIfAny(row, own + 5, 1e4);
                     package.law = row.text(own + 6);
                     package.co2Volumes = scaledIfAny(row, own + 7, 1e2);
                     package.bestBefore = instantIfAny(row, own + 8);
                     package.whileHeld = row.integer(own + 9) != 0;
                 }));
    for (PackageRow& package : rows) {
        SPILE_ASSIGN(counts, countsBy(database, query_text::packageCounts, package.entry));
        SPILE_ASSIGN(released, countsBy(database, query_text::releasedOf, package.entry));
        package.packages = std::move(counts);
        package.left = package.packages;
        for (const PackageCount& gone : released) {
            for (PackageCount& left : package.left) {
                if (left.package == gone.package && left.content == gone.content) {
                    left.count -= gone.count;
                }
            }
        }
    }
    return rows;
}

template <class Key>
Result<std::vector<ReleaseRow>> releasesBy(Database& database, std::string_view sql, const Key& key)
{
    SPILE_ASSIGN(rows,
                 factsOf<ReleaseRow>(database, sql, key, [](const Row& row, ReleaseRow& release) {
                     release.package = row.idIfAny<EntryId>(own).value_or(EntryId());
                     release.to = row.text(own + 1);
                 }));
    for (ReleaseRow& release : rows) {
        SPILE_ASSIGN(counts, countsBy(database, query_text::releaseCounts, release.entry));
        release.packages = std::move(counts);
    }
    return rows;
}

Result<std::vector<HoldRow>> holdsOf(Database& database, const SubjectId& lot)
{
    return factsOf<HoldRow>(database, query_text::holdsOfLot, lot,
                            [](const Row& row, HoldRow& hold) {
                                hold.reason = row.text(own);
                                hold.cleared = instantIfAny(row, own + 1);
                                hold.outcome = row.text(own + 2);
                            });
}

Result<void> addWaysOut(Database& database, const SubjectId& lot, const char* kind,
                        std::string_view sql, std::vector<WayOutRow>& ways)
{
    SPILE_ASSIGN(found, factsOf<WayOutRow>(database, sql, lot, [&](const Row& row, WayOutRow& way) {
                     way.kind = kind;
                     way.volume = volumeFromMl(row.isNull(own) ? 0 : row.integer(own));
                     way.to = row.text(own + 1);
                 }));
    std::move(found.begin(), found.end(), std::back_inserter(ways));
    return {};
}

Result<void> readIns(Database& database, const SubjectId& lot, LotHistory& history)
{
    SPILE_ASSIGN(transfers,
                 factsOf<TransferRow>(database, query_text::transfersOfLot, lot,
                                      [](const Row& row, TransferRow& transfer) {
                                          transfer.from = row.id<SubjectId>(own);
                                          transfer.fromName = row.text(own + 1);
                                          transfer.fromLot = row.integer(own + 2) != 0;
                                          transfer.beer = row.text(own + 3);
                                          transfer.volume = volumeFromMl(row.integer(own + 4));
                                          transfer.alcoholByVolume = scaledIfAny(row, own + 5, 1e4);
                                          transfer.specificGravity = scaledIfAny(row, own + 6, 1e4);
                                          transfer.method = row.text(own + 7);
                                      }));
    SPILE_ASSIGN(finishes, factsOf<FinishRow>(database, query_text::finishesOfLot, lot,
                                              [](const Row& row, FinishRow& finish) {
                                                  finish.substance = row.text(own);
                                                  finish.mass = doseIfAny(row, own + 1);
                                                  finish.volume = volumeIfAny(row, own + 2);
                                                  finish.alcoholByVolume =
                                                      scaledIfAny(row, own + 3, 1e4);
                                                  finish.allergen = row.text(own + 4);
                                                  finish.until = instantIfAny(row, own + 5);
                                                  finish.takenOut = instantIfAny(row, own + 6);
                                              }));
    history.transfers = std::move(transfers);
    history.finishes = std::move(finishes);
    return {};
}

Result<void> readWork(Database& database, const SubjectId& lot, LotHistory& history)
{
    SPILE_ASSIGN(treatments,
                 factsOf<TreatmentRow>(database, query_text::treatmentsOfLot, lot,
                                       [](const Row& row, TreatmentRow& treatment) {
                                           treatment.method = row.text(own);
                                           treatment.temperature = temperatureIfAny(row, own + 1);
                                           if (!row.isNull(own + 2)) {
                                               treatment.held =
                                                   std::chrono::seconds(row.integer(own + 2));
                                           }
                                       }));
    SPILE_ASSIGN(carbonations,
                 factsOf<CarbonationRow>(
                     database, query_text::carbonationsOfLot, lot,
                     [](const Row& row, CarbonationRow& carbonation) {
                         carbonation.method = row.text(own);
                         carbonation.volumes = scaledIfAny(row, own + 1, 1e2).value_or(0);
                         if (!row.isNull(own + 2)) {
                             carbonation.gauge = pascals(static_cast<double>(row.integer(own + 2)));
                         }
                         carbonation.temperature = temperatureIfAny(row, own + 3);
                         carbonation.sugar = doseIfAny(row, own + 4);
                     }));
    SPILE_ASSIGN(readings, readingsOf(database, lot));
    history.treatments = std::move(treatments);
    history.carbonations = std::move(carbonations);
    history.readings = std::move(readings);
    return {};
}

Result<void> readOuts(Database& database, const SubjectId& lot, LotHistory& history)
{
    SPILE_ASSIGN(packages, packagesBy(database, query_text::packagesOfLot, lot));
    SPILE_ASSIGN(releases, releasesBy(database, query_text::releasesOfLot, lot));
    SPILE_ASSIGN(holds, holdsOf(database, lot));
    history.packages = std::move(packages);
    history.releases = std::move(releases);
    history.holds = std::move(holds);
    SPILE_TRY(addWaysOut(database, lot, "fill", query_text::fillsFromLot, history.waysOut));
    SPILE_TRY(addWaysOut(database, lot, "top_up", query_text::topUpsFromLot, history.waysOut));
    SPILE_TRY(addWaysOut(database, lot, "transfer", query_text::transfersFromLot, history.waysOut));
    SPILE_TRY(addWaysOut(database, lot, "discard", query_text::discardsOfLot, history.waysOut));
    std::stable_sort(history.waysOut.begin(), history.waysOut.end(),
                     [](const WayOutRow& a, const WayOutRow& b) { return a.at < b.at; });
    return {};
}

}  // namespace

Result<std::vector<LotRow>> lots(Database& database, const AfterLot& after, int limit)
{
    std::vector<LotRow> rows;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            rows.push_back(readLot(row));
            return Result<void>();
        },
        query_text::lotsByTime, toMs(after.at), after.lot, std::int64_t{limit}));
    return rows;
}

Result<std::optional<LotRow>> lotById(Database& database, const SubjectId& lot)
{
    return database.first(readLot, query_text::lotById, lot);
}

std::vector<std::string> LotHistory::allergens() const
{
    std::vector<std::string> all;
    for (const FinishRow& finish : finishes) {
        if (!finish.allergen.empty() &&
            std::find(all.begin(), all.end(), finish.allergen) == all.end()) {
            all.push_back(finish.allergen);
        }
    }
    return all;
}

bool LotHistory::held() const
{
    return std::any_of(holds.begin(), holds.end(),
                       [](const HoldRow& hold) { return !hold.cleared; });
}

Result<LotHistory> lotHistory(Database& database, const SubjectId& lot)
{
    LotHistory history;
    SPILE_ASSIGN(found, database.first(
                            [&](const Row& row) {
                                history.name = row.text(0);
                                history.at = instantFromMs(row.integer(1));
                                history.target = row.idIfAny<SubjectId>(2);
                                return true;
                            },
                            query_text::lotRegistered, lot));
    if (!found) {
        return fail(ErrorCode::NotFound, "lot", lot.hex(), "one that is registered");
    }
    SPILE_TRY(readIns(database, lot, history));
    SPILE_TRY(readWork(database, lot, history));
    SPILE_TRY(readOuts(database, lot, history));
    return history;
}

Result<std::vector<HoldRow>> openHoldsOf(Database& database, const SubjectId& lot)
{
    SPILE_ASSIGN(holds, holdsOf(database, lot));
    std::erase_if(holds, [](const HoldRow& hold) { return hold.cleared.has_value(); });
    return holds;
}

Result<std::optional<PackageRow>> packagedBy(Database& database, const EntryId& entry)
{
    SPILE_ASSIGN(rows, packagesBy(database, query_text::packageByEntry, entry));
    return rows.empty() ? std::nullopt : std::optional(std::move(rows.front()));
}

Result<std::vector<PackageRow>> packagedAs(Database& database, const std::string& lotCode)
{
    return packagesBy(database, query_text::packagesByCode, lotCode);
}

Result<std::vector<ReleaseRow>> releasesOf(Database& database, const EntryId& package)
{
    return releasesBy(database, query_text::releasesOfPackage, package);
}

Result<std::vector<FinishDue>> finishesDue(Database& database, Instant until, int limit)
{
    std::vector<FinishDue> due;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            due.push_back({row.id<EntryId>(0), row.id<SubjectId>(1), row.text(2), row.text(3),
                           instantFromMs(row.integer(4))});
            return Result<void>();
        },
        query_text::finishesByDue, toMs(until), std::int64_t{limit}));
    return due;
}

}  // namespace spile::cellar
