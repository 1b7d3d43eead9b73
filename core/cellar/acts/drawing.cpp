#include "core/cellar/acts/drawing.hpp"

#include "core/cellar/flights.hpp"
#include "core/units/scaled.hpp"

#include <array>
#include <cstdio>

namespace spile::cellar {

namespace {

std::string inText(std::int64_t ml)
{
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%.2f L", inLitres(volumeFromMl(ml)));
    return text.data();
}

Result<void> needVolume(Cellar& cellar, const SubjectId& barrel, std::int64_t ml)
{
    SPILE_ASSIGN(held, cellar.database().first(
                           [](const ledger::Row& row) { return row.integerIfAny(0); },
                           "SELECT volume_ml FROM state_barrel_now WHERE subject = ?", barrel));
    const std::optional<std::int64_t> known = held.value_or(std::nullopt);
    if (known && ml > *known) {
        return fail(ErrorCode::OutOfRange, "volume", inText(ml),
                    "at most the " + inText(*known) + " it holds; gauge it if it holds more");
    }
    return {};
}

// A glass of a flight is drawn once, from its own barrel.
Result<void> needUndrawn(Cellar& cellar, const NewDraw& draw)
{
    if (!draw.flight || !draw.glass) {
        return {};
    }
    SPILE_ASSIGN(flight, flightById(cellar.database(), *draw.flight));
    const FlightGlass* glass = flight ? flight->glassOf(*draw.glass) : nullptr;
    if (glass == nullptr || glass->barrel != draw.barrel) {
        return fail(ErrorCode::NotFound, "glass", std::to_string(*draw.glass),
                    "a glass of the flight, from its barrel");
    }
    if (glass->drawn) {
        return fail(ErrorCode::Conflict, "glass", std::to_string(*draw.glass) + " is drawn",
                    "the next glass");
    }
    return {};
}

}  // namespace

Result<ledger::NewEntry> drawEntry(Cellar& cellar, const NewDraw& draw)
{
    SPILE_TRY(needFilled(cellar, draw.barrel));
    SPILE_TRY(needPerson(cellar, draw.circumstance));
    SPILE_ASSIGN(ml, toMl(draw.volume));
    SPILE_TRY(needVolume(cellar, draw.barrel, ml));
    SPILE_TRY(needUndrawn(cellar, draw));
    FieldSet fields(draw.circumstance);
    fields.set(Field::VolumeMl, ml);
    fields.setText(Field::DrawMethod, draw.method);
    fields.setIfAny(Field::Flight, draw.flight);
    if (draw.glass) {
        fields.set(Field::Glass, std::int64_t{*draw.glass});
    }
    return newEntry("draw", draw.barrel, std::move(fields), draw.circumstance.at);
}

Result<EntryId> recordDraw(Cellar& cellar, const NewDraw& draw)
{
    return recordOne(cellar, drawEntry(cellar, draw));
}

}  // namespace spile::cellar
