// show flight: what was drawn to be tasted together, and who has tasted it.
#include "core/cellar/flights.hpp"

#include "core/scan/barrel_code.hpp"
#include "platform/desk/commands.hpp"
#include "platform/desk/rows.hpp"

namespace spile::desk {

using cellar::FlightGlass;
using cellar::FlightRow;
using nlohmann::json;

namespace {

constexpr int flightsAtOnce = 500;

Result<std::vector<FlightRow>> allFlights(ledger::Database& database)
{
    std::vector<FlightRow> all;
    cellar::BeforeFlight before;
    for (bool more = true; more;) {
        SPILE_ASSIGN(rows, cellar::flights(database, instantFromMs(0), before, flightsAtOnce));
        more = rows.size() == flightsAtOnce;
        if (more) {
            before = {rows.back().counted, rows.back().flight};
        }
        std::move(rows.begin(), rows.end(), std::back_inserter(all));
    }
    return all;
}

// A glass as it is shown: what the tables of ids say, with names.
struct ShownGlass {
    const FlightGlass* glass;
    cellar::BarrelRow barrel;
    std::vector<std::string> tasters;
};

Result<ShownGlass> shownGlass(ledger::Database& database, const FlightGlass& glass)
{
    SPILE_ASSIGN(row, cellar::barrelById(database, glass.barrel));
    ShownGlass shown{&glass, row.value_or(cellar::BarrelRow()), {}};
    for (const cellar::FlightTaste& taste : glass.tastes) {
        SPILE_ASSIGN(name, cellar::nameOfPerson(database, taste.person));
        shown.tasters.push_back(name);
    }
    return shown;
}

json toJson(const ShownGlass& shown)
{
    return {{"glass", shown.glass->number},
            {"barrel", scan::shown(shown.barrel.code)},
            {"mark", shown.barrel.mark.empty() ? json() : json(shown.barrel.mark)},
            {"clean", shown.glass->clean},
            {"drawn", shown.glass->drawn},
            {"tasted_by", shown.tasters}};
}

std::vector<std::string> lineOf(const FlightRow& flight, const ShownGlass& shown)
{
    std::string tasters;
    for (const std::string& name : shown.tasters) {
        tasters += (tasters.empty() ? "" : ", ") + name;
    }
    return {toIsoTime(flight.at),
            std::to_string(shown.glass->number),
            scan::shown(shown.barrel.code),
            shown.barrel.mark,
            shown.glass->clean ? "" : "suspect",
            shown.glass->drawn ? "drawn" : "not drawn",
            tasters.empty() ? "nobody" : tasters};
}

}  // namespace

int showFlights(const Session& session, cellar::Cellar& cellar)
{
    const auto all = allFlights(cellar.database());
    if (!all) {
        return session.refuse(all.error());
    }
    json list = json::array();
    std::vector<std::vector<std::string>> lines = {
        {"begun", "glass", "barrel", "mark", "", "", "tasted by"}};
    for (const FlightRow& flight : *all) {
        json glasses = json::array();
        for (const FlightGlass& glass : flight.glasses) {
            const auto shown = shownGlass(cellar.database(), glass);
            if (!shown) {
                return session.refuse(shown.error());
            }
            glasses.push_back(toJson(*shown));
            lines.push_back(lineOf(flight, *shown));
        }
        list.push_back({{"id", flight.flight.hex()},
                        {"name", flight.name.empty() ? json() : json(flight.name)},
                        {"at", toIsoTime(flight.at)},
                        {"person", flight.person.empty() ? json() : json(flight.person)},
                        {"glasses", glasses}});
    }
    session.answer(list, all->empty() ? "No flights yet.\n" : table(lines));
    return Done;
}

}  // namespace spile::desk
