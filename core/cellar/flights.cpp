#include "core/cellar/flights.hpp"

#include "core/cellar/query_text.hpp"
#include "core/cellar/vocabulary.hpp"

#include <algorithm>

namespace spile::cellar {

using ledger::Database;
using ledger::Row;

namespace {

struct FoundFlight {
    FlightRow flight;
    std::optional<std::int64_t> clean;
};

FoundFlight readFlight(const Row& row)
{
    FoundFlight found;
    found.flight.flight = row.id<SubjectId>(0);
    found.flight.entry = row.id<EntryId>(1);
    found.flight.name = row.text(2);
    found.flight.at = instantFromMs(row.integer(3));
    found.flight.counted = instantFromMs(row.integer(4));
    found.flight.person = row.text(5);
    found.clean = row.integerIfAny(6);
    found.flight.over = row.integer(7) != 0;
    return found;
}

Result<void> readGlasses(Database& database, FoundFlight& found)
{
    FlightRow& flight = found.flight;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            FlightGlass glass;
            glass.number = static_cast<int>(row.integer(0));
            glass.barrel = row.id<SubjectId>(1);
            glass.drawn = row.integer(2) != 0;
            glass.clean =
                !found.clean || static_cast<std::int64_t>(flight.glasses.size()) < *found.clean;
            flight.glasses.push_back(std::move(glass));
            return Result<void>();
        },
        query_text::glassesOfFlight, flight.flight, flight.entry));
    return database.each(
        [&](const Row& row) {
            const std::int64_t number = row.integer(0);
            const auto glass =
                std::find_if(flight.glasses.begin(), flight.glasses.end(),
                             [&](const FlightGlass& one) { return one.number == number; });
            if (glass != flight.glasses.end()) {
                glass->tastes.push_back({row.id<SubjectId>(1), row.id<EntryId>(2)});
            }
            return Result<void>();
        },
        query_text::tastesOfFlight, flight.flight);
}

template <class... Values>
Result<std::vector<FlightRow>> flightList(Database& database, std::string_view sql,
                                          const Values&... values)
{
    std::vector<FoundFlight> found;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            found.push_back(readFlight(row));
            return Result<void>();
        },
        sql, values...));
    std::vector<FlightRow> all;
    for (FoundFlight& one : found) {
        SPILE_TRY(readGlasses(database, one));
        all.push_back(std::move(one.flight));
    }
    return all;
}

}  // namespace

bool FlightGlass::isTastedBy(const SubjectId& person) const
{
    return std::any_of(tastes.begin(), tastes.end(),
                       [&](const FlightTaste& taste) { return taste.person == person; });
}

const FlightGlass* FlightRow::glassOf(int number) const
{
    const auto found = std::find_if(glasses.begin(), glasses.end(), [&](const FlightGlass& glass) {
        return glass.number == number;
    });
    return found == glasses.end() ? nullptr : &*found;
}

bool FlightRow::isDrawn() const
{
    return std::all_of(glasses.begin(), glasses.end(),
                       [](const FlightGlass& glass) { return glass.drawn; });
}

bool FlightRow::isFinishedBy(const SubjectId& taster) const
{
    return isDrawn() && tastedBy(taster) == static_cast<int>(glasses.size());
}

int FlightRow::tastedBy(const SubjectId& taster) const
{
    return static_cast<int>(
        std::count_if(glasses.begin(), glasses.end(),
                      [&](const FlightGlass& glass) { return glass.isTastedBy(taster); }));
}

Result<std::vector<FlightRow>> flights(Database& database, Instant since,
                                       const BeforeFlight& before, int limit)
{
    return flightList(database, query_text::flightsByTime, toMs(since), toMs(before.counted),
                      before.flight, limit);
}

Result<std::optional<FlightRow>> flightById(Database& database, const SubjectId& flight)
{
    SPILE_ASSIGN(found, flightList(database, query_text::flightById, flight));
    return found.empty() ? std::nullopt : std::optional(std::move(found.front()));
}

Result<std::vector<FlightRow>> openFlights(Database& database, Instant now,
                                           const std::optional<SubjectId>& person)
{
    constexpr int most = 100;  // of two days
    SPILE_ASSIGN(recent, flights(database, now - flightOpenFor, {}, most));
    std::erase_if(recent, [&](const FlightRow& flight) {
        return flight.over || (person && flight.isFinishedBy(*person));
    });
    return std::move(recent);
}

Result<Signs> signsOf(Database& database, const SubjectId& barrel)
{
    Signs signs;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            signs.verdict = row.text(0);
            signs.looksUnsound = row.integerIfAny(1) == 0;
            return Result<void>();
        },
        query_text::lastLook, barrel));
    SPILE_TRY(database.each(
        [&](const Row& row) {
            std::int64_t& strength = signs.faults[row.text(0)];
            strength = std::max(strength, row.integer(1));
            return Result<void>();
        },
        query_text::lastFaults, barrel));
    SPILE_ASSIGN(acidity, database.first([](const Row& row) { return row.integerIfAny(0); },
                                         query_text::lastAcidity, barrel));
    signs.acidity = acidity.value_or(std::nullopt);
    return signs;
}

Result<std::vector<std::string>> attributesOfFlight(Database& database, const FlightRow& flight)
{
    std::vector<std::vector<std::string>> own;
    for (const FlightGlass& glass : flight.glasses) {
        SPILE_ASSIGN(attributes, attributesOf(database, glass.barrel));
        own.push_back(std::move(attributes));
    }
    std::vector<std::string> all;
    for (std::size_t turn = 0; turn < sheetAttributesMost; ++turn) {
        for (const std::vector<std::string>& attributes : own) {
            const bool known = turn >= attributes.size() ||
                               std::find(all.begin(), all.end(), attributes[turn]) != all.end();
            if (!known && all.size() < sheetAttributesMost) {
                all.push_back(attributes[turn]);
            }
        }
    }
    return all;
}

}  // namespace spile::cellar
