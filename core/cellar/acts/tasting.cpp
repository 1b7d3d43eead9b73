#include "core/cellar/acts/tasting.hpp"

namespace spile::cellar {

namespace {

template <class Items>
ledger::List rowsOf(const Items& items)
{
    ledger::List rows;
    for (const auto& [name, value] : items) {
        rows.emplace_back(ledger::List{name, static_cast<std::int64_t>(value)});
    }
    return rows;
}

ledger::List scoreRows(const std::map<std::string, Score>& scores)
{
    ledger::List rows;
    for (const auto& [attribute, score] : scores) {
        rows.emplace_back(
            ledger::List{attribute, score ? ledger::Value(std::int64_t{*score}) : ledger::Value()});
    }
    return rows;
}

ledger::List orderRows(const std::vector<std::string>& order)
{
    ledger::List rows;
    for (const std::string& attribute : order) {
        rows.emplace_back(ledger::List{attribute});
    }
    return rows;
}

}  // namespace

ledger::Value valueOf(Score score)
{
    if (!score) {
        return {};
    }
    return std::int64_t{*score};
}

Result<ledger::NewEntry> tasteEntry(const NewTaste& taste)
{
    FieldSet fields(taste.circumstance);
    fields.set(Field::Scores, scoreRows(taste.scores));
    if (!taste.faults.empty()) {
        fields.set(Field::Faults, rowsOf(taste.faults));
    }
    if (taste.liking) {
        fields.set(Field::Liking, std::int64_t{*taste.liking});
    }
    if (!taste.attributeOrder.empty()) {
        fields.set(Field::AttributeOrder, orderRows(taste.attributeOrder));
    }
    if (taste.palateTired) {
        fields.set(Field::PalateTired, true);
    }
    fields.setIfAny(Field::Flight, taste.flight);
    if (taste.glass) {
        fields.set(Field::Glass, std::int64_t{*taste.glass});
    }
    return newEntry("taste", taste.barrel, std::move(fields), taste.circumstance.at);
}

Result<EntryId> recordTaste(Cellar& cellar, const NewTaste& taste)
{
    SPILE_TRY(needSubject(cellar, "barrel", taste.barrel));
    SPILE_TRY(needPerson(cellar, taste.circumstance));
    return recordOne(cellar, tasteEntry(taste));
}

bool isMeasured(const NewReading& reading)
{
    return reading.specificGravity || reading.ph || reading.temperature || reading.alcoholByVolume;
}

Result<ledger::NewEntry> readingEntry(const NewReading& reading)
{
    if (!isMeasured(reading)) {
        return fail(ErrorCode::Malformed, "reading", "nothing",
                    "gravity, pH, temperature or strength");
    }
    FieldSet fields(reading.circumstance);
    SPILE_TRY(fields.setScaled(Field::SgE4, reading.specificGravity, 1e4));
    SPILE_TRY(fields.setScaled(Field::PhE2, reading.ph, 1e2));
    SPILE_TRY(fields.setScaled(Field::AbvE2, reading.alcoholByVolume, 1e4));
    SPILE_TRY(fields.setTemperature(Field::TempMc, reading.temperature));
    if (reading.specificGravity) {
        SPILE_TRY(fields.setTemperature(Field::SgRefMc, reading.hydrometerReference));
        SPILE_TRY(fields.setTemperature(Field::SgTempMc, reading.sampleTemperature));
    }
    return newEntry("reading", reading.barrel, std::move(fields), reading.circumstance.at);
}

Result<EntryId> recordReading(Cellar& cellar, const NewReading& reading)
{
    SPILE_TRY(needSubject(cellar, "barrel", reading.barrel));
    SPILE_TRY(needPerson(cellar, reading.circumstance));
    return recordOne(cellar, readingEntry(reading));
}

ledger::Fields directionFields(const std::map<std::string, Direction>& directions)
{
    FieldSet fields;
    fields.set(Field::Directions, rowsOf(directions));
    return fields.take();
}

Result<EntryId> recordDirections(Cellar& cellar, const SubjectId& barrel, const EntryId& taste,
                                 const std::map<std::string, Direction>& directions,
                                 const Circumstance& circumstance)
{
    SPILE_TRY(needSubject(cellar, "barrel", barrel));
    SPILE_TRY(needPerson(cellar, circumstance));
    SPILE_ASSIGN(batch, cellar.database().first(
                            [](const ledger::Row& row) { return row.idIfAny<SubjectId>(0); },
                            "SELECT batch FROM state_barrel_now WHERE subject = ?", barrel));
    FieldSet fields;
    fields.setIfAny(Field::Person, circumstance.person);
    fields.set(Field::Directions, rowsOf(directions));
    fields.setIfAny(Field::Batch, batch.value_or(std::nullopt));
    SPILE_ASSIGN(entry, newEntry("direction", barrel, std::move(fields), circumstance.at));
    entry.target = taste;
    return recordOne(cellar, std::move(entry));
}

}  // namespace spile::cellar
