#include "core/cellar/acts/act.hpp"

#include "core/units/scaled.hpp"

namespace spile::cellar {

namespace {

template <class T>
std::optional<double> mapped(const std::optional<T>& quantity, double (*in)(T))
{
    return quantity ? std::optional(in(*quantity)) : std::nullopt;
}

}  // namespace

FieldSet::FieldSet(const Circumstance& circumstance)
{
    setIfAny(Field::Person, circumstance.person);
    setText(Field::Note, circumstance.note);
}

Result<void> FieldSet::setScaled(Field field, const std::optional<double>& value, double scale)
{
    if (value) {
        SPILE_ASSIGN(scaled, toScaled(*value * scale, specOf(field).name));
        set(field, scaled);
    }
    return {};
}

Result<void> FieldSet::setVolume(Field field, const std::optional<Volume>& volume)
{
    return setScaled(field, mapped<Volume>(volume, inMillilitres), 1);
}

Result<void> FieldSet::setMass(Field field, const std::optional<Mass>& mass)
{
    return setScaled(field, mapped<Mass>(mass, inGrams), 1);
}

Result<void> FieldSet::setLength(Field field, const std::optional<Length>& length)
{
    return setScaled(field, mapped<Length>(length, inMillimetres), 1);
}

Result<void> FieldSet::setTemperature(Field field, const std::optional<Temperature>& temperature)
{
    return setScaled(field, mapped<Temperature>(temperature, inCelsius), 1e3);
}

Result<ledger::NewEntry> newEntry(std::string_view kind, const SubjectId& subject, FieldSet fields,
                                  const std::optional<ledger::EventTime>& at)
{
    ledger::NewEntry entry;
    entry.kind = kind;
    entry.subject = subject;
    entry.fields = fields.take();
    entry.at = at;
    SPILE_TRY(checkFields(*findKind(kind), entry.fields));
    return entry;
}

Result<EntryId> recordOne(Cellar& cellar, Result<ledger::NewEntry> entry)
{
    if (!entry) {
        return passOn(entry);
    }
    SPILE_ASSIGN(change, cellar.ledger().change());
    SPILE_ASSIGN(id, change.record(std::move(*entry)));
    SPILE_TRY(change.commit());
    return id;
}

Result<void> needSubject(Cellar& cellar, std::string_view kind, const SubjectId& subject)
{
    SPILE_ASSIGN(found, cellar.state().has(cellar.database(), kind, subject));
    if (!found) {
        return fail(ErrorCode::NotFound, std::string(kind), subject.hex(),
                    "one that is registered");
    }
    return {};
}

Result<void> needPerson(Cellar& cellar, const Circumstance& circumstance)
{
    return circumstance.person ? needSubject(cellar, "person", *circumstance.person)
                               : Result<void>();
}

Result<void> needFilled(Cellar& cellar, const SubjectId& barrel)
{
    SPILE_ASSIGN(filled, cellar.database().integer(
                             -1, "SELECT filled FROM state_barrel_now WHERE subject = ?", barrel));
    if (filled < 0) {
        return fail(ErrorCode::NotFound, "barrel", barrel.hex(), "one that is registered");
    }
    if (filled == 0) {
        return fail(ErrorCode::Conflict, "barrel", "it is empty, as far as is recorded",
                    "record its fill first");
    }
    return {};
}

}  // namespace spile::cellar
