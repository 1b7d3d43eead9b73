#include "core/cellar/acts/tending.hpp"

#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/lots.hpp"

namespace spile::cellar {

Result<ledger::NewEntry> repairEntry(Cellar& cellar, const NewRepair& repair)
{
    SPILE_TRY(needSubject(cellar, "barrel", repair.barrel));
    SPILE_TRY(needPerson(cellar, repair.circumstance));
    FieldSet fields(repair.circumstance);
    fields.setText(Field::Repair, repair.repair);
    return newEntry("repair", repair.barrel, std::move(fields), repair.circumstance.at);
}

Result<EntryId> recordRepair(Cellar& cellar, const NewRepair& repair)
{
    return recordOne(cellar, repairEntry(cellar, repair));
}

Result<ledger::NewEntry> topUpEntry(Cellar& cellar, const NewTopUp& topUp)
{
    SPILE_TRY(needFilled(cellar, topUp.barrel));
    SPILE_TRY(needPerson(cellar, topUp.circumstance));
    if (topUp.batch) {
        SPILE_TRY(needSubject(cellar, "batch", *topUp.batch));
    }
    FieldSet fields(topUp.circumstance);
    SPILE_TRY(fields.setVolume(Field::VolumeMl, topUp.volume));
    fields.setIfAny(Field::Batch, topUp.batch);
    fields.setText(Field::Substance, topUp.substance);
    SPILE_TRY(fields.setScaled(Field::AbvE2, topUp.alcoholByVolume, 1e4));
    fields.setIfAny(Field::From, topUp.lot);
    SPILE_ASSIGN(entry, newEntry("top_up", topUp.barrel, std::move(fields), topUp.circumstance.at));
    if (topUp.lot) {
        SPILE_ASSIGN(mix, mixOf(cellar, *topUp.lot));
        entry.target = mix;
    }
    return std::move(entry);
}

Result<EntryId> recordTopUp(Cellar& cellar, const NewTopUp& topUp)
{
    return recordOne(cellar, topUpEntry(cellar, topUp));
}

Result<ledger::NewEntry> doseEntry(Cellar& cellar, const NewDose& dose)
{
    SPILE_TRY(needSubject(cellar, "barrel", dose.barrel));
    SPILE_TRY(needPerson(cellar, dose.circumstance));
    if (dose.volume && dose.drained && *dose.drained > *dose.volume) {
        return fail(ErrorCode::OutOfRange, "drained_ml",
                    std::to_string(inLitres(*dose.drained)) + " L",
                    "at most the " + std::to_string(inLitres(*dose.volume)) + " L put in");
    }
    FieldSet fields(dose.circumstance);
    fields.setText(Field::Substance, dose.substance);
    SPILE_TRY(fields.setVolume(Field::VolumeMl, dose.volume));
    SPILE_TRY(fields.setVolume(Field::DrainedMl, dose.drained));
    SPILE_TRY(fields.setMass(Field::MassG, dose.mass));
    SPILE_TRY(fields.setScaled(Field::AbvE2, dose.alcoholByVolume, 1e4));
    return newEntry("dose", dose.barrel, std::move(fields), dose.circumstance.at);
}

Result<EntryId> recordDose(Cellar& cellar, const NewDose& dose)
{
    return recordOne(cellar, doseEntry(cellar, dose));
}

Result<EntryId> recordMeasures(Cellar& cellar, const SubjectId& barrel,
                               const BarrelMeasures& measures)
{
    SPILE_TRY(needSubject(cellar, "barrel", barrel));
    FieldSet fields;
    SPILE_TRY(fields.setMass(Field::TareG, measures.tare));
    SPILE_TRY(fields.setVolume(Field::FullMl, measures.full));
    SPILE_TRY(fields.setLength(Field::LengthMm, measures.length));
    SPILE_TRY(fields.setLength(Field::BilgeMm, measures.bilge));
    SPILE_TRY(fields.setLength(Field::HeadMm, measures.head));
    SPILE_TRY(fields.setLength(Field::StaveMm, measures.stave));
    if (measures.emptied) {
        fields.set(Field::EmptiedMs, toMs(*measures.emptied));
    }
    ledger::Fields measured = fields.take();
    if (measured.empty()) {
        return fail(ErrorCode::Malformed, "measures", "nothing", "a mass, a volume or a length");
    }
    SPILE_ASSIGN(
        registration,
        cellar.database().first([](const ledger::Row& row) { return row.id<EntryId>(0); },
                                "SELECT entry FROM state_barrel WHERE subject = ? AND voided = 0 "
                                "ORDER BY when_ms, device, seq LIMIT 1",
                                barrel));
    return amend(cellar, registration.value_or(EntryId()), measured);
}

Result<EntryId> recordClimate(Cellar& cellar, const NewClimate& climate)
{
    SPILE_TRY(needSubject(cellar, "place", climate.place));
    SPILE_TRY(needPerson(cellar, climate.circumstance));
    FieldSet fields(climate.circumstance);
    SPILE_TRY(fields.setTemperature(Field::TempMc, climate.temperature));
    SPILE_TRY(fields.setScaled(Field::HumidityE1, climate.relativeHumidity, 1e3));
    return recordOne(
        cellar, newEntry("climate", climate.place, std::move(fields), climate.circumstance.at));
}

}  // namespace spile::cellar
