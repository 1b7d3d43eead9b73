#include "core/cellar/acts/correcting.hpp"

#include "core/cellar/effective.hpp"
#include "core/ledger/entry_number.hpp"

#include <algorithm>

namespace spile::cellar {

namespace {

struct Corrected {
    std::string kind;
    SubjectId subject;
};

Result<Corrected> needEntry(Cellar& cellar, const EntryId& id)
{
    SPILE_ASSIGN(found,
                 cellar.database().first(
                     [](const ledger::Row& row) {
                         return Corrected{row.text(0), row.id<SubjectId>(1)};
                     },
                     "SELECT kind, subject FROM entry WHERE n = " SPILE_ENTRY_NUMBER("?1"), id));
    if (!found) {
        return fail(ErrorCode::NotFound, "record", id.hex(), "one that is in the cellar");
    }
    return std::move(*found);
}

Result<void> checkAmendment(const KindSpec& kind, const ledger::Fields& fields)
{
    for (const auto& [key, value] : fields) {
        const std::uint32_t number = key;  // clang 14 lets no lambda see a structured binding
        const auto field = std::find_if(
            kind.fields.begin(), kind.fields.end(),
            [&](const KindField& f) { return static_cast<std::uint32_t>(f.field) == number; });
        if (field == kind.fields.end()) {
            return fail(ErrorCode::Malformed, std::string(kind.kind),
                        "field " + std::to_string(number), "a field that this kind has");
        }
        if (specOf(field->field).fixed) {
            return fail(ErrorCode::Conflict, std::string(specOf(field->field).name),
                        "it is not corrected", "take the record back and make it anew");
        }
        if (value.isNull() && field->required) {
            return fail(ErrorCode::Malformed, std::string(specOf(field->field).name), "nothing",
                        "a value");
        }
        if (!value.isNull()) {
            SPILE_TRY(checkValue(specOf(field->field), value));
        }
    }
    return {};
}

// Trust is given and taken by records of its own, never by a correction.
bool beginsCellar(std::string_view kind)
{
    return kind == ledger::genesisKind || ledger::isTrustKind(kind) || kind == ledger::renewKind;
}

}  // namespace

Result<ledger::NewEntry> amendment(Cellar& cellar, const EntryId& target,
                                   const ledger::Fields& fields)
{
    SPILE_ASSIGN(corrected, needEntry(cellar, target));
    const KindSpec* kind = findKind(corrected.kind);
    if (kind == nullptr || beginsCellar(corrected.kind) || fields.empty()) {
        return fail(ErrorCode::Malformed, "amend", corrected.kind,
                    "a record that can be corrected, and a field");
    }
    SPILE_TRY(checkAmendment(*kind, fields));
    ledger::NewEntry entry;
    entry.kind = amendKind;
    entry.subject = corrected.subject;
    entry.target = target;
    entry.fields = fields;
    SPILE_ASSIGN(newest, newestAmendments(cellar.database(), target));
    newest.resize(std::min(newest.size(), ledger::overwritesMax));
    entry.overwrites = std::move(newest);
    return entry;
}

Result<EntryId> amend(Cellar& cellar, const EntryId& target, const ledger::Fields& fields)
{
    return recordOne(cellar, amendment(cellar, target, fields));
}

bool mayVoid(std::string_view kind) { return !beginsCellar(kind) && kind != "mix"; }

Result<EntryId> voidEntry(Cellar& cellar, const EntryId& target)
{
    SPILE_ASSIGN(corrected, needEntry(cellar, target));
    if (!mayVoid(corrected.kind)) {
        return fail(ErrorCode::Conflict, "void", corrected.kind, "a record of the cellar's work");
    }
    ledger::NewEntry entry;
    entry.kind = voidKind;
    entry.subject = corrected.subject;
    entry.target = target;
    // What it was corrected to when it was taken back: a correction that is not among them was made
    // without knowing of this.
    SPILE_ASSIGN(newest, newestAmendments(cellar.database(), target));
    newest.resize(std::min(newest.size(), ledger::overwritesMax));
    entry.overwrites = std::move(newest);
    return recordOne(cellar, std::move(entry));
}

}  // namespace spile::cellar
