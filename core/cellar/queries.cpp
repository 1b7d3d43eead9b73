#include "core/cellar/queries.hpp"

#include "core/cellar/query_text.hpp"
#include "core/units/scaled.hpp"

#include <algorithm>
#include <array>

namespace spile::cellar {

using ledger::Database;
using ledger::Row;

namespace {

std::optional<Volume> volumeIfAny(const Row& row, int column)
{
    return row.isNull(column) ? std::nullopt : std::optional(volumeFromMl(row.integer(column)));
}

std::optional<Instant> instantIfAny(const Row& row, int column)
{
    return row.isNull(column) ? std::nullopt : std::optional(instantFromMs(row.integer(column)));
}

std::optional<double> scaledIfAny(const Row& row, int column, double scale)
{
    return row.isNull(column) ? std::nullopt
                              : std::optional(static_cast<double>(row.integer(column)) / scale);
}

DatePrecision precisionOf(const Row& row, int column)
{
    return row.isNull(column) ? DatePrecision::Day
                              : static_cast<DatePrecision>(row.integer(column));
}

struct FoundBarrel {
    BarrelRow row;
    std::optional<SubjectId> place;
};

FoundBarrel readBarrel(const Row& row)
{
    FoundBarrel found;
    BarrelRow& barrel = found.row;
    barrel.barrel = row.id<SubjectId>(0);
    barrel.code = row.text(1);
    barrel.mark = row.text(2);
    barrel.spirit = row.text(3);
    barrel.beer = row.text(4);
    found.place = row.idIfAny<SubjectId>(5);
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
    return found;
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
    std::vector<FoundBarrel> found;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            found.push_back(readBarrel(row));
            return Result<void>();
        },
        sql, values...));
    PlaceNames places(database);
    std::vector<BarrelRow> rows;
    for (FoundBarrel& barrel : found) {
        SPILE_ASSIGN(place, places.of(barrel.place));
        barrel.row.place = place;
        rows.push_back(std::move(barrel.row));
    }
    return rows;
}

void readFact(const Row& row, FactRow& fact)
{
    fact.entry = row.id<EntryId>(0);
    fact.at = instantFromMs(row.integer(1));
    fact.person = row.text(2);
    fact.device = row.text(3);
    fact.deviceId = row.id<DeviceId>(4);
    fact.note = row.text(5);
    fact.amended = row.integer(6) != 0;
    fact.twoValues = row.integer(7) != 0;
}

constexpr int factColumns = 8;

// Reads one kind of fact of a barrel; `more` reads the columns that are the kind's own.
template <class Fact, class More>
Result<std::vector<Fact>> facts(Database& database, std::string_view sql, const SubjectId& barrel,
                                More more)
{
    std::vector<Fact> found;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            Fact& fact = found.emplace_back();
            readFact(row, fact);
            more(row, fact);
            return Result<void>();
        },
        sql, barrel));
    return found;
}

Result<void> readScores(Database& database, std::vector<TasteRow>& tastings)
{
    for (TasteRow& taste : tastings) {
        SPILE_TRY(database.each(
            [&](const Row& row) {
                taste.scores[row.text(0)] = row.integerIfAny(1);
                return Result<void>();
            },
            query_text::scoresOf, taste.entry));
        SPILE_TRY(database.each(
            [&](const Row& row) {
                taste.faults[row.text(0)] = row.integer(1);
                return Result<void>();
            },
            query_text::faultsOf, taste.entry));
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

namespace {

void readReading(const Row& row, ReadingRow& reading)
{
    constexpr int own = factColumns;
    reading.specificGravity = scaledIfAny(row, own, 1e4);
    reading.ph = scaledIfAny(row, own + 1, 1e2);
    reading.alcoholByVolume = scaledIfAny(row, own + 2, 1e4);
    if (!row.isNull(own + 3)) {
        reading.temperature = temperatureFromMilliCelsius(row.integer(own + 3));
    }
}

Result<std::vector<OtherRow>> otherFacts(Database& database, const SubjectId& barrel)
{
    using KindQuery = std::pair<const char*, std::string_view>;
    static constexpr std::array<KindQuery, 4> kinds = {
        KindQuery{"check", query_text::checks}, KindQuery{"move", query_text::moves},
        KindQuery{"verdict", query_text::verdictsGiven}, KindQuery{"empty", query_text::emptyings}};
    std::vector<OtherRow> all;
    for (const KindQuery& kind : kinds) {
        SPILE_ASSIGN(some, facts<OtherRow>(database, kind.second, barrel,
                                           [&](const Row& row, OtherRow& other) {
                                               other.kind = kind.first;
                                               other.text = row.text(factColumns);
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
    SPILE_ASSIGN(fills, facts<FillRow>(database, query_text::fills, barrel,
                                       [](const Row& row, FillRow& fill) {
                                           fill.beer = row.text(own);
                                           fill.volume = volumeIfAny(row, own + 1);
                                           fill.precision = precisionOf(row, own + 2);
                                       }));
    SPILE_ASSIGN(gauges, facts<GaugeRow>(database, query_text::gauges, barrel,
                                         [](const Row& row, GaugeRow& gauge) {
                                             gauge.volume = volumeFromMl(row.integer(own));
                                             gauge.method = row.text(own + 1);
                                         }));
    SPILE_ASSIGN(draws, facts<DrawRow>(database, query_text::draws, barrel,
                                       [](const Row& row, DrawRow& draw) {
                                           draw.volume = volumeFromMl(row.integer(own));
                                           draw.method = row.text(own + 1);
                                       }));
    SPILE_ASSIGN(tastings, facts<TasteRow>(database, query_text::tastings, barrel,
                                           [](const Row& row, TasteRow& taste) {
                                               taste.liking = row.integerIfAny(own);
                                           }));
    SPILE_TRY(readScores(database, tastings));
    SPILE_ASSIGN(readings, facts<ReadingRow>(database, query_text::readings, barrel, readReading));
    SPILE_ASSIGN(photos, facts<PhotoRow>(database, query_text::photos, barrel,
                                         [](const Row& row, PhotoRow& photo) {
                                             photo.purpose = row.text(own);
                                         }));
    SPILE_ASSIGN(files, photoFiles(database, photos));
    SPILE_ASSIGN(others, otherFacts(database, barrel));
    history.fills = std::move(fills);
    history.gauges = std::move(gauges);
    history.draws = std::move(draws);
    history.tastings = std::move(tastings);
    history.readings = std::move(readings);
    history.photos = std::move(files);
    history.others = std::move(others);
    return history;
}

Result<std::optional<ReadingRow>> lastReading(Database& database, const SubjectId& barrel)
{
    SPILE_ASSIGN(found, facts<ReadingRow>(database, query_text::lastReading, barrel, readReading));
    return found.empty() ? std::nullopt : std::optional(std::move(found.front()));
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

std::vector<std::string_view> listQueries()
{
    return {query_text::all.begin(), query_text::all.end()};
}

}  // namespace spile::cellar
