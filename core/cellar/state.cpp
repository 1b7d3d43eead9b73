#include "core/cellar/state.hpp"

#include "core/base/sha256.hpp"
#include "core/cellar/barrel_summary.hpp"
#include "core/cellar/effective.hpp"
#include "core/cellar/settling.hpp"
#include "core/cellar/state_schema.hpp"
#include "core/cellar/true_time.hpp"
#include "core/ledger/cbor.hpp"

#include <algorithm>

namespace spile::cellar {

using ledger::Database;
using ledger::Row;

State::State()
{
    for (const KindSpec& kind : allKinds()) {
        statements_.emplace(kind.kind, statementsOf(kind));
    }
    for (const std::string& table : tables()) {
        contents_.emplace(table, "SELECT * FROM " + table);
    }
}

State::~State() = default;

std::int64_t State::version() const { return stateVersion; }

std::vector<std::string> State::tables() const
{
    std::vector<std::string> names(commonTableNames().begin(), commonTableNames().end());
    for (const auto& [kind, statements] : statements_) {
        names.push_back(tableOf(kind));
        for (const auto& item : statements.items) {
            names.push_back(itemTableOf(kind, item.field));
        }
    }
    std::sort(names.begin(), names.end());
    return names;
}

Result<bool> State::has(Database& database, std::string_view kind, const SubjectId& subject) const
{
    SPILE_ASSIGN(found, database.integer(0, statements_.at(kind).exists, subject));
    return found == 1;
}

Result<void> State::create(Database& database, bool temporary)
{
    SPILE_TRY(database.run(placed(commonTables(), temporary)));
    if (!temporary) {
        SPILE_TRY(makeDraftTables(database));
        SPILE_TRY(makeDueTables(database));
    }
    for (const KindSpec& kind : allKinds()) {
        SPILE_TRY(database.run(placed(statements_.at(kind.kind).create, temporary)));
    }
    return {};
}

// Also drops tables that only an earlier version had: all whose name begins like a state table's.
Result<void> State::drop(Database& database)
{
    std::vector<std::string> names;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            names.push_back(row.text(0));
            return Result<void>();
        },
        "SELECT name FROM sqlite_schema WHERE type = 'table' AND name GLOB 'state_*'"));
    for (const std::string& name : names) {
        SPILE_TRY(database.run("DROP TABLE \"" + name + "\""));
    }
    return {};
}

Result<void> State::apply(Database& database, const ledger::CountedEntry& entry)
{
    const ledger::Entry& core = entry.core;
    const KindSpec* kind = findKind(core.kind);
    const bool corrects = core.kind == amendKind || core.kind == voidKind;
    if ((kind == nullptr && !corrects) || (kind != nullptr && core.kindVersion > kind->version) ||
        (corrects && (!core.target || core.kindVersion > correctionVersion))) {
        return database.execute(
            "INSERT OR REPLACE INTO state_unknown(entry, kind, kind_version) VALUES(?, ?, ?)",
            entry.id, core.kind, static_cast<std::int64_t>(core.kindVersion));
    }
    if (!corrects) {
        return writeFact(database, *kind, entry.id, core, entry.body);
    }
    corrections_.push_back(entry.id);
    return {};
}

// A correction that is withdrawn changes what it named as one that comes does.
Result<void> State::withdraw(Database& database, const ledger::CountedEntry& entry)
{
    if (entry.core.kind == amendKind || entry.core.kind == voidKind) {
        corrections_.push_back(entry.id);
    }
    return removeAll(database, entry.id, entry.core);
}

static Result<void> settleRecord(Database& database, const EntryId& id)
{
    return database.execute("DELETE FROM state_unsettled WHERE what <= 2 AND entry = ?", id);
}

Result<void> State::removeAll(Database& database, const EntryId& id, const ledger::Entry& core)
{
    SPILE_TRY(database.execute("DELETE FROM state_unknown WHERE entry = ?", id));
    SPILE_TRY(database.execute("DELETE FROM state_amend WHERE entry = ?", id));
    SPILE_TRY(database.execute("DELETE FROM state_void WHERE entry = ?", id));
    SPILE_TRY(database.execute("DELETE FROM state_attached WHERE entry = ?", id));
    SPILE_TRY(settleRecord(database, id));
    const KindSpec* kind = findKind(core.kind);
    if (kind == nullptr) {
        return {};
    }
    if (kind->kind == observeKind) {
        SPILE_TRY(noteClock(database, id));
    }
    const KindStatements& statements = statements_.at(kind->kind);
    SPILE_TRY(database.execute(statements.remove, id, core.subject));
    for (const auto& item : statements.items) {
        SPILE_TRY(database.execute(item.clear, id, core.subject));
    }
    if (kind->aboutBarrel) {
        touched_.insert(core.subject);
    }
    return {};
}

Result<void> State::refresh(Database& database, const EntryId& id)
{
    struct Found {
        Bytes core, body;
        bool setAside;
    };
    SPILE_ASSIGN(
        found, database.first(
                   [](const Row& row) {
                       const ByteView core = row.blob(0);
                       const ByteView body = row.blob(1);
                       return Found{Bytes(core.begin(), core.end()),
                                    Bytes(body.begin(), body.end()), row.integer(2) != 0};
                   },
                   "SELECT core, body, EXISTS(SELECT 1 FROM set_aside WHERE set_aside.n = entry.n) "
                   "FROM entry WHERE id = ?",
                   id));
    if (!found) {
        return {};  // it has not come yet; when it does, it finds its corrections
    }
    const auto decoded = ledger::decodeCore(found->core);
    if (!decoded) {
        return {};  // damaged; when it is mended, the state is made anew
    }
    const ledger::Entry& core = *decoded;
    if (found->setAside) {
        return removeAll(database, id, core);
    }
    const bool amends = core.kind == amendKind;
    if (amends || core.kind == voidKind) {
        if (!core.target || core.kindVersion > correctionVersion) {
            return {};
        }
        SPILE_ASSIGN(voided, isVoided(database, id));
        return database.execute(
            amends
                ? std::string_view(
                      "INSERT OR REPLACE INTO state_amend(entry, target, voided) VALUES(?, ?, ?)")
                : std::string_view(
                      "INSERT OR REPLACE INTO state_void(entry, target, voided) VALUES(?, ?, ?)"),
            id, *core.target, voided ? 1 : 0);
    }
    SPILE_TRY(settleRecord(database, id));
    const KindSpec* kind = findKind(core.kind);
    return kind != nullptr && core.kindVersion <= kind->version
               ? writeFact(database, *kind, id, core, found->body)
               : Result<void>();
}

namespace {

// Leaves out what is not as the table of fields wants it: a newer or a faulty writer's.
bool dropUnsound(const KindSpec& kind, ledger::Fields& fields)
{
    const std::size_t before = fields.size();
    std::erase_if(fields, [&](const auto& item) {
        const FieldSpec* spec = findField(item.first);
        const bool isOwn = spec != nullptr &&
                           std::any_of(kind.fields.begin(), kind.fields.end(),
                                       [&](const KindField& f) { return f.field == spec->field; });
        return isOwn && !checkValue(*spec, item.second);
    });
    return fields.size() != before;
}

ledger::Bound boundOf(const ledger::Value& value)
{
    if (const auto* integer = value.as<std::int64_t>()) {
        return *integer;
    }
    if (const auto* flag = value.as<bool>()) {
        return *flag ? 1 : 0;
    }
    if (const auto* text = value.as<std::string>()) {
        return *text;
    }
    if (const auto* bytes = value.as<Bytes>()) {
        return *bytes;
    }
    return std::nullopt;
}

Result<void> runBound(Database& database, std::string_view sql,
                      std::span<const ledger::Bound> values)
{
    return database.eachBound([](const Row&) { return Result<void>(); }, sql, values);
}

}  // namespace

Result<void> State::writeFact(Database& database, const KindSpec& kind, const EntryId& id,
                              const ledger::Entry& core, ByteView body)
{
    auto decoded = ledger::decodeFields(body);
    bool flawed = !decoded.has_value();
    SPILE_ASSIGN(effective,
                 applyAmendments(database, id, decoded ? std::move(*decoded) : ledger::Fields()));
    flawed |= dropUnsound(kind, effective.fields);
    SPILE_ASSIGN(voided, isVoided(database, id));
    SPILE_ASSIGN(times, countedTimes(database, core));

    const KindStatements& statements = statements_.at(kind.kind);
    std::vector<ledger::Bound> values = {
        id,
        core.subject,
        core.device,
        static_cast<std::int64_t>(core.seq),
        toMs(times.at),
        toMs(times.when()),
        times.clock ? ledger::Bound(toMs(*times.clock)) : ledger::Bound(std::nullopt),
        core.target,
        voided ? 1 : 0,
        effective.amended ? 1 : 0,
        effective.twoValues ? 1 : 0,
        flawed ? 1 : 0};
    for (const KindField& field : kind.fields) {
        if (specOf(field.field).type != FieldType::List) {
            const auto value = effective.fields.find(static_cast<std::uint32_t>(field.field));
            values.push_back(value == effective.fields.end() ? ledger::Bound(std::nullopt)
                                                             : boundOf(value->second));
        }
    }
    SPILE_TRY(runBound(database, statements.upsert, values));
    SPILE_TRY(writeItems(database, statements, id, core.subject, effective.fields));
    SPILE_TRY(noteUnsettled(database, id, voided, effective.twoValues));
    std::int64_t row = 0;
    for (const ledger::PhotoRef& photo : core.photos) {
        SPILE_TRY(
            database.execute("INSERT OR REPLACE INTO state_attached(entry, row, sha256, bytes) "
                             "VALUES(?, ?, ?, ?)",
                             id, row++, photo.hash, static_cast<std::int64_t>(photo.bytes)));
    }
    if (kind.aboutBarrel) {
        touched_.insert(core.subject);
    }
    if (kind.kind == observeKind) {
        SPILE_TRY(noteClock(database, id));
    }
    return {};
}

Result<void> State::noteUnsettled(Database& database, const EntryId& id, bool voided,
                                  bool twoValues)
{
    const auto note = [&](Unsettled what) {
        return database.execute("INSERT OR IGNORE INTO state_unsettled(what, entry) VALUES(?, ?)",
                                static_cast<std::int64_t>(what), id);
    };
    if (!voided) {
        return twoValues ? note(Unsettled::TwoValues) : Result<void>();
    }
    SPILE_ASSIGN(unseen, isCorrectedUnseen(database, id));
    return unseen ? note(Unsettled::VoidedAndCorrected) : Result<void>();
}

Result<void> State::writeItems(Database& database, const KindStatements& statements,
                               const EntryId& id, const SubjectId& subject,
                               const ledger::Fields& fields)
{
    for (const auto& item : statements.items) {
        SPILE_TRY(database.execute(item.clear, id, subject));
        const auto value = fields.find(static_cast<std::uint32_t>(item.field));
        const auto* rows = value == fields.end() ? nullptr : value->second.as<ledger::List>();
        if (rows == nullptr) {
            continue;
        }
        std::int64_t number = 0;
        for (const ledger::Value& row : *rows) {
            std::vector<ledger::Bound> values = {id, subject, number++};
            for (const ledger::Value& column : *row.as<ledger::List>()) {
                values.push_back(boundOf(column));
            }
            SPILE_TRY(runBound(database, item.insert, values));
        }
    }
    return {};
}

Result<Sha256> State::root(Database& database)
{
    Sha256Stream hash;
    for (const auto& [table, sql] : contents_) {
        hash.add(asBytes(table));
        // WITHOUT ROWID tables come in the order of their primary key.
        SPILE_TRY(database.each(
            [&](const Row& row) {
                ledger::CborWriter out;
                out.array(static_cast<std::size_t>(row.columns()));
                for (int i = 0; i < row.columns(); ++i) {
                    switch (row.type(i)) {
                        case ledger::Bound::Type::Integer:
                            out.integer(row.integer(i));
                            break;
                        case ledger::Bound::Type::Text:
                            out.text(row.text(i));
                            break;
                        case ledger::Bound::Type::Blob:
                            out.bytes(row.blob(i));
                            break;
                        case ledger::Bound::Type::Null:
                            out.null();
                            break;
                    }
                }
                hash.add(out.written());
                return Result<void>();
            },
            sql));
    }
    return hash.finish();
}

}  // namespace spile::cellar
