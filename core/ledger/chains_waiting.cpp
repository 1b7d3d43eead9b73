// Entries that wait for their device to be admitted, or for the one before them.
#include "core/ledger/chains.hpp"
#include "core/ledger/entry_check.hpp"
#include "core/ledger/mending.hpp"

namespace spile::ledger {

Result<std::vector<DeviceId>> Chains::devicesWaiting()
{
    std::vector<DeviceId> devices;
    SPILE_TRY(database_.each(
        [&](const Row& row) {
            devices.push_back(row.id<DeviceId>(0));
            return Result<void>();
        },
        "SELECT DISTINCT waiting.device FROM waiting JOIN device_chain USING(device) "
        "WHERE trusted = 1 ORDER BY waiting.device"));
    return devices;
}

Result<std::vector<Chains::WaitingRow>> Chains::waitingOf(const DeviceId& device)
{
    std::vector<WaitingRow> rows;
    SPILE_TRY(database_.each(
        [&](const Row& row) {
            rows.push_back({row.integer(0), row.id<EntryId>(1)});
            return Result<void>();
        },
        "SELECT n, id FROM waiting WHERE device = ? ORDER BY seq, id", device));
    return rows;
}

// None if it is not what was signed any more: then it is dropped. No receipt has named it, so it
// comes again.
Result<std::optional<SignedEntry>> Chains::soundOf(const WaitingRow& waiting)
{
    SPILE_ASSIGN(found, database_.first(
                            [](const Row& row) -> Result<SignedEntry> {
                                SPILE_TRY(waitingEntry(row));
                                const ByteView core = row.blob(1);
                                const ByteView body = row.blob(2);
                                return SignedEntry{Bytes(core.begin(), core.end()),
                                                   row.id<Signature>(3),
                                                   Bytes(body.begin(), body.end())};
                            },
                            SPILE_WAITING_ENTRIES "WHERE waiting.n = ?", waiting.n));
    if (*found) {
        return std::optional(std::move(**found));
    }
    SPILE_TRY(database_.execute("DELETE FROM waiting WHERE n = ?", waiting.n));
    SPILE_TRY(database_.execute("INSERT INTO meta(key, value) VALUES(?, ?) ON CONFLICT DO NOTHING",
                                damageFound, found->error().subject + ": " + found->error().value));
    return std::optional<SignedEntry>();
}

Result<bool> Chains::linkOne(Chain& chain, const WaitingRow& waiting)
{
    SPILE_ASSIGN(found, soundOf(waiting));
    if (!found) {
        return false;
    }
    SPILE_ASSIGN(core, decodeCore(found->core));
    SPILE_ASSIGN(linked, isLinked(chain, core));
    if (!linked) {
        return false;
    }
    SPILE_TRY(count(chain, VerifiedEntry{std::move(*found), waiting.id, std::move(core)}));
    SPILE_TRY(database_.execute("DELETE FROM waiting WHERE n = ?", waiting.n));
    return true;
}

Result<std::int64_t> Chains::linkWaiting(std::int64_t limit)
{
    std::int64_t linked = 0;
    SPILE_ASSIGN(devices, devicesWaiting());
    for (const DeviceId& device : devices) {
        SPILE_ASSIGN(chain, chainOf(device));
        SPILE_ASSIGN(rows, waitingOf(device));
        for (const WaitingRow& row : rows) {
            if (linked == limit) {
                return linked;
            }
            SPILE_ASSIGN(one, linkOne(*chain, row));
            linked += one ? 1 : 0;
        }
    }
    return linked;
}

}  // namespace spile::ledger
