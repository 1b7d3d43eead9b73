// All that happened to a barrel: the facts of queries.hpp.
#include "core/cellar/fact_rows.hpp"
#include "core/cellar/query_text.hpp"
#include "core/cellar/row_values.hpp"

#include <algorithm>
#include <array>
#include <iterator>

namespace spile::cellar {

using ledger::Database;
using ledger::Row;

namespace {

Result<void> readScores(Database& database, const SubjectId& barrel,
                        std::vector<TasteRow>& tastings)
{
    for (TasteRow& taste : tastings) {
        SPILE_TRY(database.each(
            [&](const Row& row) {
                taste.scores[row.text(0)] = row.integerIfAny(1);
                return Result<void>();
            },
            query_text::scoresOf, barrel, taste.entry));
        SPILE_TRY(database.each(
            [&](const Row& row) {
                taste.faults[row.text(0)] = row.integer(1);
                return Result<void>();
            },
            query_text::faultsOf, barrel, taste.entry));
    }
    return {};
}

// One row for each picture of a photo entry.
Result<std::vector<PhotoRow>> photoFiles(Database& database, const std::vector<PhotoRow>& entries)
{
    std::vector<PhotoRow> files;
    for (const PhotoRow& entry : entries) {
        SPILE_TRY(database.each(
            [&](const Row& row) {
                PhotoRow& file = files.emplace_back(entry);
                file.hash = row.id<Sha256>(0);
                file.bytes = static_cast<std::uint64_t>(row.integer(1));
                file.here = row.integer(2) != 0;
                return Result<void>();
            },
            query_text::attachedTo, entry.entry));
    }
    return files;
}

void readReading(const Row& row, ReadingRow& reading)
{
    constexpr int own = factColumns;
    reading.specificGravity = scaledIfAny(row, own, 1e4);
    reading.ph = scaledIfAny(row, own + 1, 1e2);
    reading.alcoholByVolume = scaledIfAny(row, own + 2, 1e4);
    reading.temperature = temperatureIfAny(row, own + 3);
    reading.hydrometerReference = temperatureIfAny(row, own + 4);
    reading.sampleTemperature = temperatureIfAny(row, own + 5);
}

void readOutlook(const Row& row, OtherRow& verdict)
{
    verdict.chance = scaledIfAny(row, factColumns + 1, 1e3);
    verdict.best = instantIfAny(row, factColumns + 2);
}

Result<std::vector<OtherRow>> otherFacts(Database& database, const SubjectId& barrel)
{
    using KindQuery = std::pair<const char*, std::string_view>;
    static constexpr std::array<KindQuery, 6> kinds = {
        KindQuery{"check", query_text::checks},
        KindQuery{"move", query_text::moves},
        KindQuery{"repair", query_text::repairs},
        KindQuery{"sheet_step", query_text::unusualSteps},
        KindQuery{"verdict", query_text::verdictsGiven},
        KindQuery{"empty", query_text::emptyings}};
    std::vector<OtherRow> all;
    for (const KindQuery& kind : kinds) {
        SPILE_ASSIGN(some, factsOf<OtherRow>(database, kind.second, barrel,
                                             [&](const Row& row, OtherRow& other) {
                                                 other.kind = kind.first;
                                                 other.text = row.text(factColumns);
                                                 if (kind.second == query_text::verdictsGiven) {
                                                     readOutlook(row, other);
                                                 }
                                             }));
        std::move(some.begin(), some.end(), std::back_inserter(all));
    }
    return all;
}

}  // namespace

Result<BarrelHistory> historyOf(Database& database, const SubjectId& barrel)
{
    constexpr int own = factColumns;
    BarrelHistory history;
    SPILE_ASSIGN(fills, factsOf<FillRow>(database, query_text::fills, barrel,
                                         [](const Row& row, FillRow& fill) {
                                             fill.beer = row.text(own);
                                             fill.volume = volumeIfAny(row, own + 1);
                                             fill.precision = precisionOf(row, own + 2);
                                             fill.alcoholByVolume = scaledIfAny(row, own + 3, 1e4);
                                             fill.specificGravity = scaledIfAny(row, own + 4, 1e4);
                                         }));
    SPILE_ASSIGN(gauges,
                 factsOf<GaugeRow>(
                     database, query_text::gauges, barrel, [](const Row& row, GaugeRow& gauge) {
                         gauge.volume = volumeFromMl(row.integer(own));
                         gauge.method = row.text(own + 1);
                         gauge.bound = static_cast<Bound>(row.integerIfAny(own + 2).value_or(0));
                     }));
    SPILE_ASSIGN(draws, factsOf<DrawRow>(database, query_text::draws, barrel,
                                         [](const Row& row, DrawRow& draw) {
                                             draw.volume = volumeFromMl(row.integer(own));
                                             draw.method = row.text(own + 1);
                                         }));
    SPILE_ASSIGN(topUps, factsOf<TopUpRow>(database, query_text::topUps, barrel,
                                           [](const Row& row, TopUpRow& topUp) {
                                               topUp.what = row.text(own);
                                               topUp.volume = volumeFromMl(row.integer(own + 1));
                                               topUp.alcoholByVolume =
                                                   scaledIfAny(row, own + 2, 1e4);
                                               if (topUp.what.empty()) {
                                                   topUp.what = row.text(own + 3);
                                               }
                                           }));
    SPILE_ASSIGN(doses, dosesOf(database, barrel));
    SPILE_ASSIGN(tastings, factsOf<TasteRow>(database, query_text::tastings, barrel,
                                             [](const Row& row, TasteRow& taste) {
                                                 taste.liking = row.integerIfAny(own);
                                             }));
    SPILE_TRY(readScores(database, barrel, tastings));
    SPILE_ASSIGN(readings,
                 factsOf<ReadingRow>(database, query_text::readings, barrel, readReading));
    SPILE_ASSIGN(photos, factsOf<PhotoRow>(database, query_text::photos, barrel,
                                           [](const Row& row, PhotoRow& photo) {
                                               photo.purpose = row.text(own);
                                           }));
    SPILE_ASSIGN(files, photoFiles(database, photos));
    SPILE_ASSIGN(others, otherFacts(database, barrel));
    history.fills = std::move(fills);
    history.gauges = std::move(gauges);
    history.draws = std::move(draws);
    history.topUps = std::move(topUps);
    history.doses = std::move(doses);
    history.tastings = std::move(tastings);
    history.readings = std::move(readings);
    history.photos = std::move(files);
    history.others = std::move(others);
    return history;
}

Result<std::vector<DoseRow>> dosesOf(Database& database, const SubjectId& barrel)
{
    constexpr int own = factColumns;
    return factsOf<DoseRow>(database, query_text::doses, barrel, [](const Row& row, DoseRow& dose) {
        dose.substance = row.text(own);
        dose.volume = volumeIfAny(row, own + 1);
        dose.drained = volumeIfAny(row, own + 2);
        dose.mass = massIfAny(row, own + 3);
        dose.alcoholByVolume = scaledIfAny(row, own + 4, 1e4);
    });
}

Result<std::vector<ReadingRow>> readingsOf(Database& database, const SubjectId& subject)
{
    return factsOf<ReadingRow>(database, query_text::readings, subject, readReading);
}

Result<std::optional<ReadingRow>> lastReading(Database& database, const SubjectId& barrel)
{
    SPILE_ASSIGN(found,
                 factsOf<ReadingRow>(database, query_text::lastReading, barrel, readReading));
    return found.empty() ? std::nullopt : std::optional(std::move(found.front()));
}

Result<BarrelMeasures> measuresOf(Database& database, const SubjectId& barrel)
{
    SPILE_ASSIGN(found, database.first(
                            [](const Row& row) {
                                return BarrelMeasures{massIfAny(row, 0),   {},
                                                      volumeIfAny(row, 1), lengthIfAny(row, 2),
                                                      lengthIfAny(row, 3), lengthIfAny(row, 4),
                                                      lengthIfAny(row, 5)};
                            },
                            query_text::measuresOfBarrel, barrel));
    return found.value_or(BarrelMeasures{});
}

namespace {

constexpr int placesDeep = 8;  // also ends a loop that two devices may have made

struct PlaceAround {
    std::string name;
    std::optional<SubjectId> parent;
};

Result<PlaceAround> placeAround(Database& database, const SubjectId& place)
{
    SPILE_ASSIGN(found, database.first(
                            [](const Row& row) {
                                return PlaceAround{row.text(0), row.idIfAny<SubjectId>(1)};
                            },
                            query_text::placeById, place));
    return found.value_or(PlaceAround{});
}

}  // namespace

Result<std::vector<ClimateRow>> climatesOf(Database& database, const SubjectId& place)
{
    std::vector<ClimateRow> rows;
    std::optional<SubjectId> at = place;
    for (int depth = 0; at && rows.empty() && depth < placesDeep; ++depth) {
        SPILE_TRY(database.each(
            [&](const Row& row) {
                constexpr double perThousand = 1e3;
                rows.push_back({instantFromMs(row.integer(0)),
                                temperatureFromMilliCelsius(row.integer(1)),
                                static_cast<double>(row.integer(2)) / perThousand});
                return Result<void>();
            },
            query_text::climates, *at));
        SPILE_ASSIGN(around, placeAround(database, *at));
        at = around.parent;
    }
    return rows;
}

Result<NamedRow> roomOf(Database& database, const SubjectId& place)
{
    NamedRow room{place, {}};
    for (int depth = 0; depth < placesDeep; ++depth) {
        SPILE_ASSIGN(around, placeAround(database, room.subject));
        room.name = around.name;
        if (!around.parent) {
            break;
        }
        room.subject = *around.parent;
    }
    return room;
}

}  // namespace spile::cellar
