#include "core/cellar/queries.hpp"

#include "core/cellar/bench_query_text.hpp"
#include "core/cellar/lot_query_text.hpp"
#include "core/cellar/query_text.hpp"
#include "core/cellar/row_values.hpp"
#include "core/cellar/settle_query_text.hpp"
#include "core/cellar/total_query_text.hpp"
#include "core/cellar/way_query_text.hpp"

#include <map>

namespace spile::cellar {

using ledger::Database;
using ledger::Row;

namespace {

BarrelRow readBarrel(const Row& row)
{
    BarrelRow barrel;
    barrel.barrel = row.id<SubjectId>(0);
    barrel.code = row.text(1);
    barrel.mark = row.text(2);
    barrel.spirit = row.text(3);
    barrel.beer = row.text(4);
    barrel.placeId = row.idIfAny<SubjectId>(5);
    barrel.filled = row.integer(6) != 0;
    barrel.size = volumeIfAny(row, 7);
    barrel.volume = volumeIfAny(row, 8);
    barrel.fillNumber = row.integerIfAny(9);
    barrel.filledAt = instantIfAny(row, 10);
    barrel.filledPrecision = precisionOf(row, 11);
    barrel.tastings = row.integer(12);
    barrel.nextStep = row.text(13);
    barrel.due = instantIfAny(row, 14);
    barrel.emptiedAt = instantIfAny(row, 15);
    barrel.lastTasted = instantIfAny(row, 16);
    barrel.verdict = row.text(17);
    barrel.orderKey = row.text(18);
    barrel.dueReason = row.text(19);
    barrel.nextUse = row.text(20);
    barrel.sour = row.integer(21) != 0;
    return barrel;
}

// "Cellar / Rack 2": the names from the outermost place in.
class PlaceNames {
public:
    explicit PlaceNames(Database& database) : database_(database) {}

    Result<std::string> of(const std::optional<SubjectId>& place)
    {
        std::string path;
        std::optional<SubjectId> at = place;
        constexpr int depthMax = 8;  // also ends a loop that two devices may have made
        for (int depth = 0; at && depth < depthMax; ++depth) {
            SPILE_ASSIGN(named, nameOf(*at));
            path.insert(0, path.empty() ? "" : " / ");
            path.insert(0, named.name);
            at = named.parent;
        }
        return path;
    }

private:
    struct Named {
        std::string name;
        std::optional<SubjectId> parent;
    };
    Result<Named> nameOf(const SubjectId& place)
    {
        const auto known = names_.find(place);
        if (known != names_.end()) {
            return known->second;
        }
        SPILE_ASSIGN(found, database_.first(
                                [](const Row& row) {
                                    return Named{row.text(0), row.idIfAny<SubjectId>(1)};
                                },
                                query_text::placeById, place));
        return names_.emplace(place, found.value_or(Named{})).first->second;
    }

    Database& database_;
    std::map<SubjectId, Named> names_;
};

template <class... Values>
Result<std::vector<BarrelRow>> barrelList(Database& database, std::string_view sql,
                                          const Values&... values)
{
    std::vector<BarrelRow> rows;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            rows.push_back(readBarrel(row));
            return Result<void>();
        },
        sql, values...));
    PlaceNames places(database);
    for (BarrelRow& barrel : rows) {
        SPILE_ASSIGN(place, places.of(barrel.placeId));
        barrel.place = place;
    }
    return rows;
}

std::string_view namedQuery(std::string_view kind)
{
    static const std::map<std::string_view, std::string_view> texts = {
        {"person", query_text::namedPeople},
        {"place", query_text::namedPlaces},
        {"target", query_text::namedTargets},
        {"batch", query_text::namedBatches},
        {"device", query_text::namedDevices}};
    return texts.at(kind);
}

}  // namespace

Result<std::vector<BarrelRow>> barrels(Database& database, const AfterBarrel& after, int limit)
{
    return barrelList(database, query_text::barrelsInOrder, after.orderKey, after.barrel, limit);
}

Result<std::vector<BarrelRow>> barrelsDue(Database& database, Instant until, const AfterDue& after,
                                          int limit)
{
    return barrelList(database, query_text::barrelsByDue, toMs(until), toMs(after.due),
                      after.barrel, limit);
}

Result<std::optional<BarrelRow>> barrelById(Database& database, const SubjectId& barrel)
{
    SPILE_ASSIGN(rows, barrelList(database, query_text::barrelById, barrel));
    return rows.empty() ? std::nullopt : std::optional(std::move(rows.front()));
}

Result<std::vector<BarrelRow>> barrelsWithCode(Database& database, const std::string& code)
{
    return barrelList(database, query_text::barrelByCode, code);
}

Result<std::vector<BarrelRow>> barrelsWithCodeBeginning(Database& database,
                                                        const std::string& beginning, int limit)
{
    const std::string past = beginning + '~';  // which comes after all characters of a code
    return barrelList(database, query_text::barrelsByCodeFrom, beginning, past, limit);
}

Result<std::string> nameOfPerson(Database& database, const SubjectId& person)
{
    SPILE_ASSIGN(name, database.first([](const Row& row) { return row.text(0); },
                                      query_text::nameOfPerson, person));
    return name.value_or("");
}

Result<std::vector<NamedRow>> named(Database& database, std::string_view kind,
                                    const SubjectId& after, int limit)
{
    std::vector<NamedRow> rows;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            rows.push_back({row.id<SubjectId>(0), row.text(1)});
            return Result<void>();
        },
        namedQuery(kind), after, limit));
    return rows;
}

namespace {

Result<std::vector<Window>> windowsOf(Database& database, const std::optional<SubjectId>& target)
{
    std::vector<Window> windows;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            windows.push_back(
                {row.text(0), static_cast<int>(row.integer(1)), static_cast<int>(row.integer(2))});
            return Result<void>();
        },
        query_text::windowsOfTarget, target));
    return windows;
}

}  // namespace

Result<std::optional<NamedRow>> batchOfBarrel(Database& database, const SubjectId& barrel)
{
    return database.first(
        [](const Row& row) {
            return NamedRow{row.id<SubjectId>(0), row.text(1)};
        },
        query_text::batchOfBarrel, barrel);
}

Result<std::vector<Window>> windowsOfTarget(Database& database, const SubjectId& target)
{
    return windowsOf(database, target);
}

Result<std::vector<Window>> windowsOfBatch(Database& database, const SubjectId& batch)
{
    SPILE_ASSIGN(target, database.first([](const Row& row) { return row.idIfAny<SubjectId>(2); },
                                        query_text::targetOfBatch, batch));
    return windowsOf(database, target.value_or(std::nullopt));
}

Result<std::vector<Window>> windowsOfBarrel(Database& database, const SubjectId& barrel)
{
    SPILE_ASSIGN(target, database.first([](const Row& row) { return row.idIfAny<SubjectId>(0); },
                                        query_text::targetOfBarrel, barrel));
    return windowsOf(database, target.value_or(std::nullopt));
}

std::vector<std::string_view> listQueries()
{
    std::vector<std::string_view> texts(query_text::all.begin(), query_text::all.end());
    texts.insert(texts.end(), query_text::ofBenches.begin(), query_text::ofBenches.end());
    texts.insert(texts.end(), query_text::ofLots.begin(), query_text::ofLots.end());
    texts.insert(texts.end(), query_text::ofWays.begin(), query_text::ofWays.end());
    texts.insert(texts.end(), query_text::settling.begin(), query_text::settling.end());
    texts.insert(texts.end(), query_text::ofTotals.begin(), query_text::ofTotals.end());
    return texts;
}

}  // namespace spile::cellar
