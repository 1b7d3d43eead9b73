#include "core/cellar/effective.hpp"

#include "core/cellar/field.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace spile::cellar {

namespace {

struct Amendment {
    EntryId id;
    bool voided = false;
    ledger::Entry core;
    ledger::Fields fields;

    // Its place in the order that ties are settled by.
    [[nodiscard]] auto order() const
    {
        return std::tuple(std::min(core.eventTime(), core.recorded), core.device, core.seq, id);
    }
};

Result<std::vector<Amendment>> amendmentsOf(ledger::Database& database, const EntryId& target)
{
    std::vector<Amendment> found;
    SPILE_TRY(database.each(
        [&](const ledger::Row& row) -> Result<void> {
            auto core = ledger::decodeCore(row.blob(2));
            if (!core) {
                return {};  // damaged; other corrections come in
            }
            // A body of another shape, from a newer version, corrects nothing here.
            auto fields = ledger::decodeFields(row.blob(3));
            found.push_back({row.id<EntryId>(0), row.integer(1) != 0, std::move(*core),
                             fields ? std::move(*fields) : ledger::Fields()});
            return {};
        },
        "SELECT a.entry, a.voided, e.core, e.body FROM state_amend AS a JOIN entry AS e ON e.id = "
        "a.entry "
        "WHERE a.target = ? ORDER BY a.entry",
        target));
    return found;
}

// The amendments that are replaced, directly or through others, by one of `from`.
std::set<EntryId> replacedBy(const std::vector<Amendment>& all, std::vector<EntryId> from)
{
    std::map<EntryId, const Amendment*> byId;
    for (const Amendment& amendment : all) {
        byId.emplace(amendment.id, &amendment);
    }
    std::set<EntryId> replaced;
    while (!from.empty()) {
        const auto at = byId.find(from.back());
        from.pop_back();
        if (at == byId.end()) {
            continue;
        }
        for (const EntryId& older : at->second->core.overwrites) {
            if (replaced.insert(older).second) {
                from.push_back(older);
            }
        }
    }
    return replaced;
}

// The writes of a field that no other live one has replaced.
std::vector<const Amendment*> newestWrites(std::uint32_t number, const std::vector<Amendment>& all)
{
    std::vector<const Amendment*> writes;
    std::vector<EntryId> ids;
    for (const Amendment& amendment : all) {
        if (!amendment.voided && amendment.fields.contains(number)) {
            writes.push_back(&amendment);
            ids.push_back(amendment.id);
        }
    }
    const std::set<EntryId> replaced = replacedBy(all, ids);
    std::erase_if(writes, [&](const Amendment* write) { return replaced.contains(write->id); });
    return writes;
}

bool disagree(const std::vector<const Amendment*>& writes, std::uint32_t number)
{
    return std::any_of(writes.begin(), writes.end(), [&](const Amendment* write) {
        return write->fields.at(number) != writes.front()->fields.at(number);
    });
}

std::set<std::uint32_t> fieldsIn(const std::vector<Amendment>& all)
{
    std::set<std::uint32_t> numbers;
    for (const Amendment& amendment : all) {
        for (const auto& [number, value] : amendment.fields) {
            numbers.insert(number);
        }
    }
    std::erase_if(numbers, [](std::uint32_t number) {
        const FieldSpec* spec = findField(number);
        return spec != nullptr && spec->fixed;
    });
    return numbers;
}

void applyField(std::uint32_t number, const std::vector<Amendment>& all, Effective& effective)
{
    const std::vector<const Amendment*> writes = newestWrites(number, all);
    if (writes.empty()) {
        return;
    }
    const Amendment* shown = *std::max_element(
        writes.begin(), writes.end(),
        [](const Amendment* a, const Amendment* b) { return a->order() < b->order(); });
    const ledger::Value& value = shown->fields.at(number);
    effective.twoValues |= disagree(writes, number);
    effective.amended = true;
    if (value.isNull()) {
        effective.fields.erase(number);
    } else {
        effective.fields[number] = value;
    }
}

}  // namespace

Result<Effective> applyAmendments(ledger::Database& database, const EntryId& id,
                                  ledger::Fields fields)
{
    Effective effective{std::move(fields)};
    SPILE_ASSIGN(all, amendmentsOf(database, id));
    for (const std::uint32_t number : fieldsIn(all)) {
        applyField(number, all, effective);
    }
    return effective;
}

Result<std::vector<EntryId>> newestAmendments(ledger::Database& database, const EntryId& id)
{
    SPILE_ASSIGN(all, amendmentsOf(database, id));
    std::vector<EntryId> ids;
    std::transform(all.begin(), all.end(), std::back_inserter(ids),
                   [](const Amendment& a) { return a.id; });
    const std::set<EntryId> replaced = replacedBy(all, ids);
    std::erase_if(ids, [&](const EntryId& amendment) { return replaced.contains(amendment); });
    return ids;
}

Result<bool> isVoided(ledger::Database& database, const EntryId& id)
{
    SPILE_ASSIGN(
        found, database.integer(0, "SELECT 1 FROM state_void WHERE target = ? AND voided = 0", id));
    return found == 1;
}

Result<std::vector<Rival>> rivalsOf(ledger::Database& database, const EntryId& id)
{
    SPILE_ASSIGN(all, amendmentsOf(database, id));
    std::vector<Rival> rivals;
    for (const std::uint32_t number : fieldsIn(all)) {
        std::vector<const Amendment*> writes = newestWrites(number, all);
        if (writes.empty() || !disagree(writes, number)) {
            continue;
        }
        std::sort(writes.begin(), writes.end(),
                  [](const Amendment* a, const Amendment* b) { return b->order() < a->order(); });
        for (const Amendment* write : writes) {
            rivals.push_back({write->id, number, write->fields.at(number), write->core.device});
        }
    }
    return rivals;
}

Result<bool> isCorrectedUnseen(ledger::Database& database, const EntryId& id)
{
    std::vector<EntryId> seen;  // by one of those who took it back
    SPILE_TRY(database.each(
        [&](const ledger::Row& row) -> Result<void> {
            if (const auto core = ledger::decodeCore(row.blob(0))) {
                seen.insert(seen.end(), core->overwrites.begin(), core->overwrites.end());
            }
            return {};
        },
        "SELECT e.core FROM state_void AS v JOIN entry AS e ON e.id = v.entry WHERE v.target = ? "
        "AND v.voided = 0",
        id));
    SPILE_ASSIGN(all, amendmentsOf(database, id));
    std::set<EntryId> known = replacedBy(all, seen);
    known.insert(seen.begin(), seen.end());
    return std::any_of(all.begin(), all.end(), [&](const Amendment& amendment) {
        return !amendment.voided && !known.contains(amendment.id);
    });
}

}  // namespace spile::cellar
