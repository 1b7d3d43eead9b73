#include "core/cellar/acts/filling.hpp"

#include "core/cellar/acts/lots.hpp"
#include "core/cellar/vocabulary.hpp"

#include <algorithm>

namespace spile::cellar {

Result<ledger::NewEntry> fillEntry(Cellar& cellar, const NewFill& fill)
{
    SPILE_TRY(needSubject(cellar, "barrel", fill.barrel));
    SPILE_TRY(needPerson(cellar, fill.circumstance));
    if (fill.batch) {
        SPILE_TRY(needSubject(cellar, "batch", *fill.batch));
    }
    if (needFilled(cellar, fill.barrel)) {
        return fail(ErrorCode::Conflict, "barrel", "it holds beer already",
                    "record it emptied first");
    }
    FieldSet fields(fill.circumstance);
    fields.setIfAny(Field::Batch, fill.batch);
    SPILE_TRY(fields.setVolume(Field::VolumeMl, fill.volume));
    SPILE_TRY(fields.setScaled(Field::AbvE2, fill.alcoholByVolume, 1e4));
    SPILE_TRY(fields.setScaled(Field::SgE4, fill.specificGravity, 1e4));
    fields.setText(Field::Programme, fill.programme);
    fields.setIfAny(Field::From, fill.lot);
    SPILE_ASSIGN(entry, newEntry("fill", fill.barrel, std::move(fields), fill.circumstance.at));
    if (fill.lot) {
        SPILE_ASSIGN(mix, mixOf(cellar, *fill.lot));
        entry.target = mix;
    }
    return std::move(entry);
}

Result<EntryId> recordFill(Cellar& cellar, const NewFill& fill)
{
    return recordOne(cellar, fillEntry(cellar, fill));
}

Result<ledger::NewEntry> emptyEntry(Cellar& cellar, const NewEmpty& emptying)
{
    SPILE_TRY(needFilled(cellar, emptying.barrel));
    SPILE_TRY(needPerson(cellar, emptying.circumstance));
    FieldSet fields(emptying.circumstance);
    SPILE_TRY(fields.setVolume(Field::VolumeMl, emptying.volume));
    fields.setText(Field::NextUse, emptying.nextUse);
    SPILE_TRY(fields.setVolume(Field::HeelMl, emptying.heel));
    fields.setText(Field::Programme, emptying.programme);
    fields.setText(Field::Method, emptying.method);
    if (emptying.until) {
        fields.set(Field::UntilMs, toMs(*emptying.until));
    }
    return newEntry("empty", emptying.barrel, std::move(fields), emptying.circumstance.at);
}

Result<EntryId> recordEmpty(Cellar& cellar, const NewEmpty& emptying)
{
    return recordOne(cellar, emptyEntry(cellar, emptying));
}

Result<ledger::NewEntry> gaugeEntry(Cellar& cellar, const NewGauge& gauge)
{
    SPILE_TRY(needFilled(cellar, gauge.barrel));
    SPILE_TRY(needPerson(cellar, gauge.circumstance));
    FieldSet fields(gauge.circumstance);
    SPILE_TRY(fields.setVolume(Field::VolumeMl, gauge.volume));
    fields.setText(Field::GaugeMethod, gauge.method);
    SPILE_TRY(fields.setLength(Field::DipMm, gauge.dip));
    SPILE_TRY(fields.setMass(Field::MassG, gauge.mass));
    SPILE_TRY(fields.setTemperature(Field::TempMc, gauge.temperature));
    if (gauge.bound != Bound::None) {
        fields.set(Field::Bound, static_cast<std::int64_t>(gauge.bound));
    }
    return newEntry("gauge", gauge.barrel, std::move(fields), gauge.circumstance.at);
}

Result<EntryId> recordGauge(Cellar& cellar, const NewGauge& gauge)
{
    return recordOne(cellar, gaugeEntry(cellar, gauge));
}

Result<ledger::NewEntry> checkEntry(Cellar& cellar, const NewCheck& check)
{
    SPILE_TRY(needSubject(cellar, "barrel", check.barrel));
    SPILE_TRY(needPerson(cellar, check.circumstance));
    FieldSet fields(check.circumstance);
    fields.setText(Field::Finding, check.finding);
    fields.set(Field::Sound, check.sound);
    return newEntry("check", check.barrel, std::move(fields), check.circumstance.at);
}

Result<EntryId> recordCheck(Cellar& cellar, const NewCheck& check)
{
    return recordOne(cellar, checkEntry(cellar, check));
}

Result<EntryId> recordMove(Cellar& cellar, const SubjectId& barrel, const SubjectId& place,
                           const Circumstance& circumstance)
{
    SPILE_TRY(needSubject(cellar, "barrel", barrel));
    SPILE_TRY(needSubject(cellar, "place", place));
    SPILE_TRY(needPerson(cellar, circumstance));
    FieldSet fields(circumstance);
    fields.set(Field::Place, place);
    return recordOne(cellar, newEntry("move", barrel, std::move(fields), circumstance.at));
}

Result<EntryId> recordVerdict(Cellar& cellar, const NewVerdict& verdict)
{
    const WordList words = verdicts();
    SPILE_TRY(needFilled(cellar, verdict.barrel));
    SPILE_TRY(needPerson(cellar, verdict.circumstance));
    if (std::find(words.begin(), words.end(), verdict.verdict) == words.end()) {
        return fail(ErrorCode::Malformed, "verdict", verdict.verdict,
                    "hold, ready, top up, move, blend or destroy");
    }
    FieldSet fields(verdict.circumstance);
    fields.setText(Field::Verdict, verdict.verdict);
    if (verdict.until) {
        fields.set(Field::UntilMs, toMs(*verdict.until));
    }
    SPILE_TRY(fields.setScaled(Field::ChanceE3, verdict.chance, 1e3));
    if (verdict.best) {
        fields.set(Field::BestMs, toMs(*verdict.best));
    }
    return recordOne(
        cellar, newEntry("verdict", verdict.barrel, std::move(fields), verdict.circumstance.at));
}

}  // namespace spile::cellar
