#include "core/cellar/acts/drawing.hpp"

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

}  // namespace

Result<ledger::NewEntry> drawEntry(Cellar& cellar, const NewDraw& draw)
{
    SPILE_TRY(needFilled(cellar, draw.barrel));
    SPILE_TRY(needPerson(cellar, draw.circumstance));
    SPILE_ASSIGN(ml, toMl(draw.volume));
    SPILE_TRY(needVolume(cellar, draw.barrel, ml));
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

Result<SubjectId> beginFlight(Cellar& cellar, const std::string& name,
                              const std::vector<SubjectId>& barrels,
                              const Circumstance& circumstance)
{
    SPILE_TRY(needPerson(cellar, circumstance));
    ledger::List glasses;
    for (const SubjectId& barrel : barrels) {
        SPILE_TRY(needFilled(cellar, barrel));
        const auto number = static_cast<std::int64_t>(glasses.size() + 1);
        glasses.emplace_back(ledger::List{number, barrel});
    }
    const SubjectId flight = cellar.outside().ids.next();
    FieldSet fields(circumstance);
    fields.setText(Field::Name, name);
    fields.set(Field::Glasses, std::move(glasses));
    SPILE_TRY(recordOne(cellar, newEntry("flight", flight, std::move(fields), circumstance.at)));
    return flight;
}

}  // namespace spile::cellar
