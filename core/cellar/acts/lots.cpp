#include "core/cellar/acts/lots.hpp"

#include "core/cellar/lot_query_text.hpp"
#include "core/units/scaled.hpp"

#include <algorithm>

namespace spile::cellar {

namespace {

// A circumstance and the lot it is about, checked.
Result<void> needLot(Cellar& cellar, const SubjectId& lot, const Circumstance& circumstance)
{
    SPILE_TRY(needSubject(cellar, "lot", lot));
    return needPerson(cellar, circumstance);
}

// The beer that a barrel holds: its fill, and what it was topped up with since.
struct Held {
    std::optional<EntryId> fill;
    std::vector<EntryId> topUps;
};

Result<Held> heldIn(Cellar& cellar, const SubjectId& barrel)
{
    SPILE_TRY(needFilled(cellar, barrel));
    Held held;
    SPILE_ASSIGN(fill, cellar.database().first(
                           [](const ledger::Row& row) { return row.idIfAny<EntryId>(0); },
                           "SELECT fill FROM state_barrel_now WHERE subject = ?", barrel));
    held.fill = fill.value_or(std::nullopt);
    SPILE_TRY(cellar.database().each(
        [&](const ledger::Row& row) {
            held.topUps.push_back(row.id<EntryId>(0));
            return Result<void>();
        },
        query_text::topUpsOfStay, barrel, held.fill));
    return held;
}

ledger::List sourceRows(const std::vector<EntryId>& sources)
{
    ledger::List rows;
    rows.reserve(sources.size());
    for (const EntryId& source : sources) {
        rows.emplace_back(ledger::List{ledger::Value(source)});
    }
    return rows;
}

// What has come into a lot, in the order of the entries' hashes.
Result<std::vector<EntryId>> insOf(Cellar& cellar, const SubjectId& lot)
{
    std::vector<EntryId> ins;
    SPILE_TRY(cellar.database().each(
        [&](const ledger::Row& row) {
            ins.push_back(row.id<EntryId>(0));
            return Result<void>();
        },
        query_text::insOfLot, lot));
    std::sort(ins.begin(), ins.end());
    return ins;
}

Result<std::vector<EntryId>> sourcesOf(Cellar& cellar, const EntryId& mix)
{
    std::vector<EntryId> sources;
    SPILE_TRY(cellar.database().each(
        [&](const ledger::Row& row) {
            sources.push_back(row.id<EntryId>(0));
            return Result<void>();
        },
        query_text::sourcesOfMix, mix));
    return sources;
}

}  // namespace

Result<SubjectId> registerLot(Cellar& cellar, const NewLot& lot)
{
    SPILE_TRY(needPerson(cellar, lot.circumstance));
    if (lot.target) {
        SPILE_TRY(needSubject(cellar, "target", *lot.target));
    }
    const auto subject = cellar.outside().ids.next();
    FieldSet fields(lot.circumstance);
    fields.setText(Field::Name, lot.name);
    fields.setIfAny(Field::Target, lot.target);
    fields.setIfAny(Field::Place, lot.place);
    SPILE_ASSIGN(entry, newEntry("lot", subject, std::move(fields), lot.circumstance.at));
    entry.target = lot.accepted;
    SPILE_TRY(recordOne(cellar, std::move(entry)));
    return subject;
}

Result<SubjectId> lotNamed(Cellar& cellar, const std::string& name)
{
    SPILE_ASSIGN(found, cellar.database().first(
                            [](const ledger::Row& row) { return row.id<SubjectId>(0); },
                            "SELECT subject FROM state_lot WHERE name = ? AND voided = 0 ORDER BY "
                            "when_ms DESC, device DESC, seq DESC LIMIT 1",
                            name));
    return found ? Result<SubjectId>(*found) : registerLot(cellar, {name});
}

Result<ledger::NewEntry> transferEntry(Cellar& cellar, const NewTransfer& transfer)
{
    SPILE_TRY(needLot(cellar, transfer.lot, transfer.circumstance));
    if (transfer.from == transfer.lot) {
        return fail(ErrorCode::Conflict, "lot", "it would go into itself", "another lot");
    }
    FieldSet fields(transfer.circumstance);
    fields.set(Field::From, transfer.from);
    SPILE_TRY(fields.setVolume(Field::VolumeMl, transfer.volume));
    SPILE_TRY(fields.setScaled(Field::AbvE2, transfer.alcoholByVolume, 1e4));
    SPILE_TRY(fields.setScaled(Field::SgE4, transfer.specificGravity, 1e4));
    SPILE_TRY(fields.setTemperature(Field::TempMc, transfer.temperature));
    fields.setText(Field::Method, transfer.method);
    std::optional<EntryId> source;
    SPILE_ASSIGN(fromLot, cellar.state().has(cellar.database(), "lot", transfer.from));
    if (fromLot) {
        SPILE_ASSIGN(mix, mixOf(cellar, transfer.from));
        source = mix;
    } else {
        SPILE_ASSIGN(held, heldIn(cellar, transfer.from));
        source = held.fill;
        if (!held.topUps.empty()) {
            fields.set(Field::Sources, sourceRows(held.topUps));
        }
    }
    SPILE_ASSIGN(entry,
                 newEntry("transfer", transfer.lot, std::move(fields), transfer.circumstance.at));
    entry.target = source;
    return std::move(entry);
}

Result<EntryId> recordTransfer(Cellar& cellar, const NewTransfer& transfer)
{
    return recordOne(cellar, transferEntry(cellar, transfer));
}

Result<EntryId> mixOf(Cellar& cellar, const SubjectId& lot)
{
    SPILE_TRY(needSubject(cellar, "lot", lot));
    SPILE_ASSIGN(ins, insOf(cellar, lot));
    if (ins.empty()) {
        return fail(ErrorCode::Conflict, "lot", "nothing has come in, as far as is recorded",
                    "record what came in first");
    }
    SPILE_ASSIGN(last,
                 cellar.database().first([](const ledger::Row& row) { return row.id<EntryId>(0); },
                                         query_text::lastMixOfLot, lot));
    if (last) {
        SPILE_ASSIGN(sources, sourcesOf(cellar, *last));
        if (sources == ins) {
            return *last;
        }
    }
    FieldSet fields;
    fields.set(Field::Sources, sourceRows(ins));
    return recordOne(cellar, newEntry("mix", lot, std::move(fields)));
}

Result<ledger::NewEntry> finishEntry(Cellar& cellar, const NewFinish& finish)
{
    SPILE_TRY(needLot(cellar, finish.lot, finish.circumstance));
    if (!finish.mass && !finish.volume) {
        return fail(ErrorCode::Malformed, "finish", finish.substance, "a mass or a volume");
    }
    FieldSet fields(finish.circumstance);
    fields.setText(Field::Substance, finish.substance);
    constexpr double mgPerKg = 1e6;
    SPILE_TRY(fields.setScaled(
        Field::DoseMg, finish.mass ? std::optional(finish.mass->si()) : std::nullopt, mgPerKg));
    SPILE_TRY(fields.setVolume(Field::VolumeMl, finish.volume));
    SPILE_TRY(fields.setScaled(Field::AbvE2, finish.alcoholByVolume, 1e4));
    fields.setText(Field::Allergen, finish.allergen);
    if (finish.until) {
        fields.set(Field::UntilMs, toMs(*finish.until));
    }
    return newEntry("finish", finish.lot, std::move(fields), finish.circumstance.at);
}

Result<EntryId> recordFinish(Cellar& cellar, const NewFinish& finish)
{
    return recordOne(cellar, finishEntry(cellar, finish));
}

Result<ledger::NewEntry> takeOutEntry(Cellar& cellar, const EntryId& finish,
                                      const Circumstance& circumstance)
{
    SPILE_TRY(needPerson(cellar, circumstance));
    SPILE_ASSIGN(lot,
                 cellar.database().first(
                     [](const ledger::Row& row) { return row.id<SubjectId>(0); },
                     "SELECT subject FROM state_finish WHERE entry = ? AND voided = 0", finish));
    if (!lot) {
        return fail(ErrorCode::NotFound, "finish", finish.hex(), "one that is in a lot");
    }
    SPILE_ASSIGN(out, cellar.database().integer(0, query_text::isTakenOut, finish));
    if (out != 0) {
        return fail(ErrorCode::Conflict, "finish", "it was taken out already", "another");
    }
    SPILE_ASSIGN(entry, newEntry("take_out", *lot, FieldSet(circumstance), circumstance.at));
    entry.target = finish;
    return std::move(entry);
}

Result<EntryId> recordTakeOut(Cellar& cellar, const EntryId& finish,
                              const Circumstance& circumstance)
{
    return recordOne(cellar, takeOutEntry(cellar, finish, circumstance));
}

Result<ledger::NewEntry> treatmentEntry(Cellar& cellar, const NewTreatment& treatment)
{
    SPILE_TRY(needLot(cellar, treatment.lot, treatment.circumstance));
    FieldSet fields(treatment.circumstance);
    fields.setText(Field::Method, treatment.method);
    SPILE_TRY(fields.setTemperature(Field::TempMc, treatment.temperature));
    if (treatment.held) {
        fields.set(Field::ElapsedS,
                   std::int64_t{
                       std::chrono::duration_cast<std::chrono::seconds>(*treatment.held).count()});
    }
    return newEntry("treat", treatment.lot, std::move(fields), treatment.circumstance.at);
}

Result<ledger::NewEntry> carbonationEntry(Cellar& cellar, const NewCarbonation& carbonation)
{
    SPILE_TRY(needLot(cellar, carbonation.lot, carbonation.circumstance));
    FieldSet fields(carbonation.circumstance);
    fields.setText(Field::Method, carbonation.method);
    SPILE_TRY(fields.setScaled(Field::Co2E2, carbonation.volumes, 1e2));
    SPILE_TRY(fields.setScaled(
        Field::PressurePa,
        carbonation.gauge ? std::optional(carbonation.gauge->si()) : std::nullopt, 1));
    SPILE_TRY(fields.setTemperature(Field::TempMc, carbonation.temperature));
    constexpr double mgPerKg = 1e6;
    SPILE_TRY(fields.setScaled(
        Field::DoseMg, carbonation.sugar ? std::optional(carbonation.sugar->si()) : std::nullopt,
        mgPerKg));
    return newEntry("carbonate", carbonation.lot, std::move(fields), carbonation.circumstance.at);
}

Result<EntryId> recordDiscard(Cellar& cellar, const NewDiscard& discard)
{
    SPILE_TRY(needLot(cellar, discard.lot, discard.circumstance));
    FieldSet fields(discard.circumstance);
    SPILE_TRY(fields.setVolume(Field::VolumeMl, discard.volume));
    fields.setText(Field::Reason, discard.reason);
    SPILE_ASSIGN(entry,
                 newEntry("discard", discard.lot, std::move(fields), discard.circumstance.at));
    SPILE_ASSIGN(mix, mixOf(cellar, discard.lot));
    entry.target = mix;
    return recordOne(cellar, std::move(entry));
}

Result<EntryId> recordCost(Cellar& cellar, const NewCost& cost)
{
    SPILE_TRY(needPerson(cellar, cost.circumstance));
    FieldSet fields(cost.circumstance);
    SPILE_TRY(fields.setScaled(Field::CostE2, cost.cost, 1e2));
    fields.setText(Field::Name, cost.what);
    SPILE_TRY(fields.setVolume(Field::VolumeMl, cost.forVolume));
    if (cost.fillsExpected) {
        fields.set(Field::FillsExpected, std::int64_t{*cost.fillsExpected});
    }
    return recordOne(cellar,
                     newEntry("cost", cost.subject, std::move(fields), cost.circumstance.at));
}

}  // namespace spile::cellar
