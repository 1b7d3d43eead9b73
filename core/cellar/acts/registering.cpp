#include "core/cellar/acts/registering.hpp"

#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/queries.hpp"
#include "core/scan/barrel_code.hpp"

#include <algorithm>

namespace spile::cellar {

namespace {

// Requires a kind whose names are kept (named()).
template <class Register>
Result<SubjectId> findOrRegister(Cellar& cellar, const char* kind, const std::string& name,
                                 Register registerIt)
{
    constexpr int namesMost = 100;
    SubjectId after;
    while (true) {
        SPILE_ASSIGN(known, named(cellar.database(), kind, after, namesMost));
        const auto same = std::find_if(known.begin(), known.end(),
                                       [&](const NamedRow& row) { return row.name == name; });
        if (same != known.end()) {
            return same->subject;
        }
        if (known.size() < static_cast<std::size_t>(namesMost)) {
            return registerIt();
        }
        after = known.back().subject;
    }
}

Result<SubjectId> registerAs(Cellar& cellar, std::string_view kind, FieldSet fields)
{
    const SubjectId subject = cellar.outside().ids.next();
    SPILE_TRY(recordOne(cellar, newEntry(kind, subject, std::move(fields))));
    return subject;
}

Result<void> needIfAny(Cellar& cellar, std::string_view kind,
                       const std::optional<SubjectId>& subject)
{
    return subject ? needSubject(cellar, kind, *subject) : Result<void>();
}

std::optional<std::int64_t> milliseconds(const std::optional<Instant>& t)
{
    return t ? std::optional(toMs(*t)) : std::nullopt;
}

Result<bool> isTaken(Cellar& cellar, const std::string& code)
{
    SPILE_ASSIGN(
        found, cellar.database().integer(0, "SELECT 1 FROM state_barrel_now WHERE code = ?", code));
    return found == 1;
}

Result<std::string> newCode(Cellar& cellar)
{
    for (;;) {  // a cellar has millions of codes and thousands of barrels
        std::string code = scan::randomCode(cellar.identity().mark, cellar.outside().random);
        SPILE_ASSIGN(taken, isTaken(cellar, code));
        if (!taken) {
            return code;
        }
    }
}

Result<std::string> codeFor(Cellar& cellar, const std::string& wanted)
{
    if (wanted.empty()) {
        return newCode(cellar);
    }
    SPILE_ASSIGN(code, scan::parseTyped(cellar.identity().mark, wanted));
    SPILE_ASSIGN(taken, isTaken(cellar, code));
    if (taken) {
        return fail(ErrorCode::Conflict, "code", scan::shown(code), "a code that no barrel has");
    }
    return std::move(code);
}

Result<FieldSet> fieldsOf(const NewBarrel& barrel, const std::string& code)
{
    FieldSet fields;
    fields.set(Field::Code, code);
    fields.setText(Field::Mark, barrel.mark);
    fields.setText(Field::Spirit, barrel.spirit);
    fields.setText(Field::Wood, barrel.wood);
    fields.setText(Field::Note, barrel.note);
    if (barrel.charLevel) {
        fields.set(Field::CharLevel, std::int64_t{*barrel.charLevel});
    }
    if (barrel.fillsBefore) {
        fields.set(Field::FillsBefore, std::int64_t{*barrel.fillsBefore});
    }
    SPILE_TRY(fields.setVolume(Field::SizeMl, barrel.size));
    SPILE_TRY(fields.setScaled(
        Field::TareG, barrel.tare ? std::optional(inGrams(*barrel.tare)) : std::nullopt, 1));
    fields.setIfAny(Field::EmptiedMs, milliseconds(barrel.emptied));
    fields.setIfAny(Field::Place, barrel.place);
    return fields;
}

Result<ledger::NewEntry> fillBefore(const SubjectId& barrel, const FullSince& since)
{
    FieldSet fields;
    fields.set(Field::DatePrecision, static_cast<std::int64_t>(since.precision));
    fields.setIfAny(Field::Batch, since.batch);
    SPILE_TRY(fields.setVolume(Field::VolumeMl, since.volume));
    return newEntry("fill", barrel, std::move(fields), since.since);
}

}  // namespace

Result<SubjectId> registerPerson(Cellar& cellar, const std::string& name)
{
    FieldSet fields;
    fields.setText(Field::Name, name);
    return registerAs(cellar, "person", std::move(fields));
}

Result<SubjectId> registerPlace(Cellar& cellar, const std::string& name,
                                const std::optional<SubjectId>& parent)
{
    SPILE_TRY(needIfAny(cellar, "place", parent));
    FieldSet fields;
    fields.setText(Field::Name, name);
    fields.setIfAny(Field::Parent, parent);
    return registerAs(cellar, "place", std::move(fields));
}

Result<ledger::List> windowRows(const std::vector<Window>& windows)
{
    ledger::List rows;
    for (const Window& window : windows) {
        if (window.low > window.high) {
            return fail(ErrorCode::OutOfRange, "window of " + window.attribute,
                        std::to_string(window.low) + " to " + std::to_string(window.high),
                        "low before high");
        }
        rows.emplace_back(
            ledger::List{window.attribute, std::int64_t{window.low}, std::int64_t{window.high}});
    }
    return rows;
}

Result<SubjectId> registerTarget(Cellar& cellar, const std::string& name,
                                 const std::vector<Window>& windows)
{
    SPILE_ASSIGN(rows, windowRows(windows));
    FieldSet fields;
    fields.setText(Field::Name, name);
    fields.set(Field::Windows, std::move(rows));
    return registerAs(cellar, "target", std::move(fields));
}

Result<SubjectId> registerBatch(Cellar& cellar, const NewBatch& batch)
{
    SPILE_TRY(needIfAny(cellar, "target", batch.target));
    FieldSet fields;
    fields.setText(Field::Name, batch.name);
    fields.setText(Field::Note, batch.note);
    fields.setIfAny(Field::BrewedMs, milliseconds(batch.brewed));
    fields.setIfAny(Field::Target, batch.target);
    SPILE_TRY(fields.setScaled(Field::SgE4, batch.specificGravity, 1e4));
    SPILE_TRY(fields.setScaled(Field::AbvE2, batch.alcoholByVolume, 1e4));
    return registerAs(cellar, "batch", std::move(fields));
}

Result<std::vector<std::string>> spareCodes(Cellar& cellar, int count)
{
    if (count < 1 || count > mostSpares) {
        return fail(ErrorCode::OutOfRange, "spare labels", std::to_string(count),
                    "1 to " + std::to_string(mostSpares));
    }
    std::vector<std::string> codes;
    while (codes.size() < static_cast<std::size_t>(count)) {
        SPILE_ASSIGN(code, newCode(cellar));
        if (std::find(codes.begin(), codes.end(), code) == codes.end()) {
            codes.push_back(std::move(code));
        }
    }
    return codes;
}

Result<RegisteredBarrel> registerBarrel(Cellar& cellar, const NewBarrel& barrel,
                                        const Circumstance& circumstance)
{
    SPILE_TRY(needIfAny(cellar, "place", barrel.place));
    if (barrel.fullSince) {
        SPILE_TRY(needIfAny(cellar, "batch", barrel.fullSince->batch));
    }
    const SubjectId subject = cellar.outside().ids.next();
    SPILE_ASSIGN(code, codeFor(cellar, barrel.code));
    SPILE_ASSIGN(fields, fieldsOf(barrel, code));
    SPILE_ASSIGN(first, newEntry("barrel", subject, std::move(fields), circumstance.at));
    std::vector<ledger::NewEntry> entries;
    entries.push_back(std::move(first));
    if (barrel.fullSince) {
        SPILE_ASSIGN(fill, fillBefore(subject, *barrel.fullSince));
        entries.push_back(std::move(fill));
    }
    SPILE_ASSIGN(change, cellar.ledger().change());
    SPILE_TRY(change.recordGroup(std::move(entries)));
    SPILE_TRY(change.commit());
    return RegisteredBarrel{subject, code};
}

Result<SubjectId> placeNamed(Cellar& cellar, const std::string& name)
{
    return findOrRegister(cellar, "place", name, [&] { return registerPlace(cellar, name); });
}

Result<SubjectId> batchNamed(Cellar& cellar, const std::string& name)
{
    return findOrRegister(cellar, "batch", name, [&] {
        NewBatch batch;
        batch.name = name;
        return registerBatch(cellar, batch);
    });
}

Result<EntryId> giveNewCode(Cellar& cellar, const SubjectId& barrel)
{
    SPILE_TRY(needSubject(cellar, "barrel", barrel));
    SPILE_ASSIGN(registration,
                 cellar.database().first(
                     [](const ledger::Row& row) { return row.id<EntryId>(0); },
                     "SELECT entry FROM state_barrel WHERE subject = ? AND voided = 0 ORDER BY "
                     "when_ms, device, seq LIMIT 1",
                     barrel));
    SPILE_ASSIGN(code, newCode(cellar));
    return amend(cellar, registration.value_or(EntryId()),
                 {{static_cast<std::uint32_t>(Field::Code), ledger::Value(code)}});
}

}  // namespace spile::cellar
