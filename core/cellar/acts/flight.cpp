#include "core/cellar/acts/flight.hpp"

#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/flights.hpp"

#include <algorithm>
#include <set>

namespace spile::cellar {

namespace {

ledger::List glassRows(const std::vector<PouredGlass>& glasses)
{
    ledger::List rows;
    for (const PouredGlass& glass : glasses) {
        rows.emplace_back(ledger::List{std::int64_t{glass.number}, glass.barrel});
    }
    return rows;
}

Result<FlightRow> needFlight(Cellar& cellar, const SubjectId& flight)
{
    SPILE_ASSIGN(found, flightById(cellar.database(), flight));
    if (!found) {
        return fail(ErrorCode::NotFound, "flight", flight.hex(), "one that is begun");
    }
    return std::move(*found);
}

}  // namespace

Result<SubjectId> beginFlight(Cellar& cellar, const NewFlight& flight)
{
    SPILE_TRY(needPerson(cellar, flight.circumstance));
    std::set<int> numbers;
    for (const PouredGlass& glass : flight.glasses) {
        SPILE_TRY(needFilled(cellar, glass.barrel));
        if (!numbers.insert(glass.number).second) {
            return fail(ErrorCode::Conflict, "glass", std::to_string(glass.number) + " twice",
                        "a number of its own for each");
        }
    }
    const SubjectId subject = cellar.outside().ids.next();
    FieldSet fields(flight.circumstance);
    fields.setText(Field::Name, flight.name);
    fields.set(Field::Glasses, glassRows(flight.glasses));
    if (flight.cleanGlasses) {
        fields.set(Field::CleanGlasses, std::int64_t{*flight.cleanGlasses});
    }
    SPILE_TRY(
        recordOne(cellar, newEntry("flight", subject, std::move(fields), flight.circumstance.at)));
    return subject;
}

Result<EntryId> leaveGlassOut(Cellar& cellar, const SubjectId& flight, int glass)
{
    SPILE_ASSIGN(known, needFlight(cellar, flight));
    const FlightGlass* own = known.glassOf(glass);
    if (own == nullptr) {
        return fail(ErrorCode::NotFound, "glass", std::to_string(glass), "one of the flight");
    }
    if (own->drawn || known.glasses.size() == 1) {
        return fail(ErrorCode::Conflict, "glass",
                    std::to_string(glass) + (own->drawn ? " is drawn" : " is the only one"),
                    "one that is not drawn, of several");
    }
    std::vector<PouredGlass> left;
    std::int64_t clean = 0;
    for (const FlightGlass& one : known.glasses) {
        if (one.number != glass) {
            left.push_back({one.number, one.barrel});
            clean += one.clean ? 1 : 0;
        }
    }
    FieldSet fields;
    fields.set(Field::Glasses, glassRows(left));
    fields.set(Field::CleanGlasses, clean);
    return amend(cellar, known.entry, fields.take());
}

Result<int> placeInFlight(Cellar& cellar, const SubjectId& flight, const SubjectId& person)
{
    SPILE_TRY(needSubject(cellar, "person", person));
    SPILE_ASSIGN(known, needFlight(cellar, flight));
    SPILE_ASSIGN(change, cellar.ledger().change());
    ledger::Database& database = change.database();
    SPILE_ASSIGN(
        own, database.integer(-1, "SELECT place FROM flight_taster WHERE flight = ? AND person = ?",
                              flight, person));
    if (own >= 0) {
        return static_cast<int>(own);
    }
    // Those who taste on other devices count as well, as far as it is known here.
    std::set<SubjectId> others;
    SPILE_TRY(database.each(
        [&](const ledger::Row& row) {
            others.insert(row.id<SubjectId>(0));
            return Result<void>();
        },
        "SELECT person FROM flight_taster WHERE flight = ?", flight));
    for (const FlightGlass& glass : known.glasses) {
        for (const FlightTaste& taste : glass.tastes) {
            others.insert(taste.person);
        }
    }
    others.erase(person);
    const auto place = static_cast<std::int64_t>(others.size());
    SPILE_TRY(database.execute("INSERT INTO flight_taster(flight, person, place) VALUES(?, ?, ?)",
                               flight, person, place));
    SPILE_TRY(change.commit());
    return static_cast<int>(place);
}

Result<void> endFlight(Cellar& cellar, const SubjectId& flight)
{
    SPILE_TRY(needFlight(cellar, flight));
    SPILE_ASSIGN(change, cellar.ledger().change());
    SPILE_TRY(
        change.database().execute("INSERT OR IGNORE INTO flight_over(flight) VALUES(?)", flight));
    return change.commit();
}

}  // namespace spile::cellar
