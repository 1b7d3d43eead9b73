#include "core/cellar/journal.hpp"

#include "core/cellar/effective.hpp"
#include "core/cellar/kind.hpp"
#include "core/cellar/query_text.hpp"
#include "core/cellar/settling.hpp"
#include "core/cellar/true_time.hpp"
#include "core/ledger/trust.hpp"
#include "core/units/scaled.hpp"

#include <algorithm>
#include <array>

namespace spile::cellar {

using ledger::Database;
using ledger::Row;

namespace {

// A field of what an entry says now; null if it does not have it or has it in another type.
template <class T>
const T* fieldOf(const ledger::Fields& fields, Field field)
{
    const auto found = fields.find(static_cast<std::uint32_t>(field));
    return found == fields.end() ? nullptr : found->second.as<T>();
}

std::optional<SubjectId> subjectIn(const ledger::Fields& fields, Field field)
{
    const auto* bytes = fieldOf<Bytes>(fields, field);
    return bytes == nullptr ? std::nullopt : SubjectId::fromBytes(*bytes);
}

Result<std::string> nameOf(Database& database, std::string_view query,
                           const std::optional<SubjectId>& subject)
{
    SPILE_ASSIGN(name, database.first([](const Row& row) { return row.text(0); }, query, subject));
    return name.value_or("");
}

int judged(const ledger::Fields& fields)
{
    const auto* scores = fieldOf<ledger::List>(fields, Field::Scores);
    return scores == nullptr ? 0
                             : static_cast<int>(std::count_if(
                                   scores->begin(), scores->end(), [](const ledger::Value& row) {
                                       const auto* columns = row.as<ledger::List>();
                                       return columns != nullptr && columns->size() == 2 &&
                                              !(*columns)[1].isNull();
                                   }));
}

// The word that says most about an act, by the field that has it.
std::string wordIn(const ledger::Fields& fields)
{
    for (const Field field : {Field::Finding, Field::Verdict, Field::GaugeMethod, Field::DrawMethod,
                              Field::NextUse, Field::Purpose}) {
        if (const auto* word = fieldOf<std::string>(fields, field)) {
            return *word;
        }
    }
    return {};
}

Result<void> describe(Database& database, const ledger::Fields& fields, OwnAct& act)
{
    SPILE_ASSIGN(person,
                 nameOf(database, query_text::nameOfPerson, subjectIn(fields, Field::Person)));
    act.person = person;
    act.text = wordIn(fields);
    act.scores = judged(fields);
    if (const auto* ml = fieldOf<std::int64_t>(fields, Field::VolumeMl)) {
        act.volume = volumeFromMl(*ml);
    }
    if (const auto* name = fieldOf<std::string>(fields, Field::Name)) {
        act.name = *name;
    } else if (act.kind == "fill") {
        SPILE_ASSIGN(beer,
                     nameOf(database, query_text::nameOfBatch, subjectIn(fields, Field::Batch)));
        act.name = beer;
    } else if (act.kind == "move") {
        SPILE_ASSIGN(place,
                     nameOf(database, query_text::placeById, subjectIn(fields, Field::Place)));
        act.name = place;
    }
    return {};
}

bool isAboutDevice(std::string_view kind)
{
    return kind == observeKind || kind == ledger::cutOffKind || kind == ledger::reinstateKind ||
           kind == ledger::renewKind;
}

Result<void> describeDevice(Database& database, const ledger::Entry& core,
                            const ledger::Fields& fields, OwnAct& act)
{
    if (!isAboutDevice(act.kind)) {
        return {};
    }
    const DeviceId device = *DeviceId::fromBytes(act.subject.bytes());
    SPILE_ASSIGN(name, nameOfDevice(database, device));
    act.device = name.empty() ? device.hex().substr(0, 8) : name;
    const auto* shown = fieldOf<std::int64_t>(fields, Field::ShownMs);
    if (act.kind == observeKind && shown != nullptr && core.at) {
        act.ahead = instantFromMs(*shown) - core.at->time;
    }
    return {};
}

// A glass is named by its draw and its tasting; what answers the tasting belongs to it too.
Result<void> readGlass(Database& database, const ledger::Entry& core, const ledger::Fields& fields,
                       OwnAct& act)
{
    act.flight = subjectIn(fields, Field::Flight);
    if (const auto* glass = fieldOf<std::int64_t>(fields, Field::Glass)) {
        act.glass = static_cast<int>(*glass);
    }
    if (act.flight || !core.target) {
        return {};
    }
    return database.each(
        [&](const Row& row) {
            act.flight = row.idIfAny<SubjectId>(0);
            act.glass =
                row.isNull(1) ? std::nullopt : std::optional(static_cast<int>(row.integer(1)));
            return Result<void>();
        },
        query_text::glassOfTaste, *core.target);
}

struct FoundAct {
    OwnAct act;
    Bytes core, body;
};

FoundAct readAct(const Row& row, std::int64_t covered)
{
    FoundAct found;
    OwnAct& act = found.act;
    act.entry = row.id<EntryId>(0);
    act.seq = static_cast<std::uint64_t>(row.integer(1));
    act.kind = row.text(2);
    act.subject = row.id<SubjectId>(3);
    const ByteView core = row.blob(4);
    const ByteView body = row.blob(5);
    found.core.assign(core.begin(), core.end());
    found.body.assign(body.begin(), body.end());
    act.voidedBy = row.idIfAny<EntryId>(6);
    act.voided = act.voidedBy.has_value();
    act.barrelCode = row.text(7);
    act.barrelMark = row.text(8);
    act.handedOut = row.integer(1) <= covered;
    return found;
}

Result<std::int64_t> covered(Database& database)
{
    return database.integer(0, query_text::coveredSeq);
}

}  // namespace

Result<std::vector<OwnAct>> ownActs(Database& database, std::uint64_t beforeSeq, int limit)
{
    SPILE_ASSIGN(handedOut, covered(database));
    std::vector<FoundAct> found;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            found.push_back(readAct(row, handedOut));
            return Result<void>();
        },
        query_text::ownActs, static_cast<std::int64_t>(beforeSeq), limit));
    std::vector<OwnAct> acts;
    for (FoundAct& one : found) {
        const auto core = ledger::decodeCore(one.core);
        if (!core) {
            continue;  // damaged
        }
        SPILE_ASSIGN(times, countedTimes(database, *core));
        one.act.at = times.at;
        one.act.recorded = times.recorded;
        one.act.clock = times.clock;
        auto said = ledger::decodeFields(one.body);
        SPILE_ASSIGN(effective, applyAmendments(database, one.act.entry,
                                                said ? std::move(*said) : ledger::Fields()));
        one.act.amended = effective.amended;
        SPILE_TRY(describe(database, effective.fields, one.act));
        SPILE_TRY(describeDevice(database, *core, effective.fields, one.act));
        SPILE_TRY(readGlass(database, *core, effective.fields, one.act));
        acts.push_back(std::move(one.act));
    }
    return acts;
}

Result<Unsent> unsent(Database& database)
{
    Unsent found;
    SPILE_ASSIGN(after, covered(database));
    SPILE_TRY(database.each(
        [&](const Row& row) {
            const auto count = static_cast<std::uint64_t>(row.integer(1));
            found.byKind[row.text(0)] = count;
            found.entries += count;
            return Result<void>();
        },
        query_text::ownKindsAfter, after));
    SPILE_ASSIGN(photos, database.integer(0, query_text::ownPhotosAfter, after));
    found.photos = static_cast<std::uint64_t>(photos);
    SPILE_ASSIGN(last, database.first(
                           [](const Row& row) {
                               return DayFileMade{instantFromMs(row.integer(0)),
                                                  static_cast<std::uint64_t>(row.integer(1)),
                                                  static_cast<std::uint64_t>(row.integer(2)),
                                                  row.idIfAny<DeviceId>(3)};
                           },
                           query_text::lastHandedOut));
    found.last = last;
    return found;
}

Result<std::vector<Receipt>> receipts(Database& database)
{
    std::vector<DeviceId> others;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            others.push_back(row.id<DeviceId>(0));
            return Result<void>();
        },
        "SELECT device FROM device_chain WHERE device <> (SELECT value FROM meta WHERE key = "
        "'device') ORDER BY device"));
    std::vector<Receipt> all;
    for (const DeviceId& other : others) {
        Receipt receipt;
        receipt.id = other;
        bool any = false;
        SPILE_TRY(database.each(
            [&](const Row& row) {
                any = true;
                receipt.takenIn = instantFromMs(row.integer(0));
                receipt.device = row.isNull(1) ? other.hex().substr(0, 8) : row.text(1);
                return Result<void>();
            },
            query_text::lastTakenIn, other));
        if (!any) {
            continue;
        }
        SPILE_ASSIGN(holds, database.integer(0, query_text::heldByPeer, other));
        SPILE_ASSIGN(lacks, database.integer(0, query_text::ownCountAfter, holds));
        receipt.holds = static_cast<std::uint64_t>(holds);
        receipt.lacks = static_cast<std::uint64_t>(lacks);
        all.push_back(std::move(receipt));
    }
    return all;
}

}  // namespace spile::cellar
