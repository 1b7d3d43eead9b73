// What the state makes anew before a commit, since it depends on several entries: state.cpp has
// what each entry does by itself.
#include "core/cellar/barrel_summary.hpp"
#include "core/cellar/state.hpp"
#include "core/cellar/true_time.hpp"
#include "core/ledger/entry_number.hpp"

#include <map>

namespace spile::cellar {

using ledger::Database;
using ledger::Row;

// A correction changes the entry it names, which may itself be a correction, and so on. All that
// are concerned are looked at once, each after the corrections of it.
Result<void> State::settleCorrections(Database& database)
{
    std::map<EntryId, std::optional<EntryId>> targets;  // of each concerned; none: a fact
    std::map<EntryId, int> awaited;                     // corrections of it, still to be looked at
    for (const EntryId& correction : corrections_) {
        for (std::optional<EntryId> next = correction; next && !targets.contains(*next);) {
            SPILE_ASSIGN(
                target,
                database.first(
                    [](const Row& row) {
                        const std::string kind = row.text(0);
                        return kind == amendKind || kind == voidKind ? row.idIfAny<EntryId>(1)
                                                                     : std::nullopt;
                    },
                    "SELECT kind, target FROM entry WHERE n = " SPILE_ENTRY_NUMBER("?1"), *next));
            const std::optional<EntryId> named = target.value_or(std::nullopt);
            targets[*next] = named;
            awaited.try_emplace(*next, 0);
            if (named) {
                ++awaited[*named];
            }
            next = named;
        }
    }
    corrections_.clear();
    std::vector<EntryId> ready;
    for (const auto& [id, count] : awaited) {
        if (count == 0) {
            ready.push_back(id);
        }
    }
    while (!ready.empty()) {
        const EntryId id = ready.back();
        ready.pop_back();
        SPILE_TRY(refresh(database, id));
        const auto target = targets.find(id);
        if (target != targets.end() && target->second && --awaited[*target->second] == 0) {
            ready.push_back(*target->second);
        }
    }
    return {};
}

// Requires its row, as it is or as it was until now.
Result<void> State::noteClock(Database& database, const EntryId& observation)
{
    return database.each(
        [&](const Row& row) {
            const auto device = DeviceId::fromBytes(row.blob(0));
            const auto boot = row.idIfAny<BootId>(1);
            if (device && boot) {
                clocks_.emplace(*device, *boot);
            }
            return Result<void>();
        },
        "SELECT subject, boot FROM state_clock_observe WHERE entry = ?", observation);
}

// Corrections keep their own times, and so do observations: nothing here changes `clocks_`.
Result<void> State::settleClocks(Database& database)
{
    std::map<DeviceId, std::set<BootId>> starts;  // a chain is read once for all of them
    for (const auto& [device, boot] : clocks_) {
        starts[device].insert(boot);
    }
    for (const auto& [device, boots] : starts) {
        std::vector<EntryId> records;
        SPILE_TRY(database.each(
            [&, &wanted = boots](const Row& row) -> Result<void> {
                const auto core = ledger::decodeCore(row.blob(1));
                if (core && wanted.contains(core->boot) && core->kind != observeKind &&
                    core->kind != amendKind && core->kind != voidKind) {
                    records.push_back(row.id<EntryId>(0));
                }
                return {};
            },
            "SELECT id, core FROM entry WHERE d = (SELECT d FROM device_chain WHERE device = ?)",
            device));
        for (const EntryId& id : records) {
            SPILE_TRY(refresh(database, id));
        }
    }
    clocks_.clear();
    return {};
}

Result<void> State::settle(Database& database)
{
    SPILE_TRY(settleCorrections(database));
    SPILE_TRY(settleClocks(database));
    for (const SubjectId& barrel : touched_) {
        SPILE_TRY(writeBarrelSummary(database, barrel));
    }
    touched_.clear();
    return {};
}

}  // namespace spile::cellar
