// Entries that wait for their device to be admitted, or for the one before them.
#include "core/ledger/chains.hpp"
#include "core/ledger/entry_check.hpp"
#include "core/ledger/mending.hpp"

#include <algorithm>

namespace spile::ledger {

Result<std::vector<Chains::WaitingRow>> Chains::waitingAfter(const WaitingPlace& from)
{
    std::vector<WaitingRow> rows;
    SPILE_TRY(database_.each(
        [&](const Row& row) {
            rows.push_back(
                {{row.id<DeviceId>(0), static_cast<std::uint64_t>(row.integer(1)), row.integer(2)},
                 row.id<EntryId>(3)});
            return Result<void>();
        },
        "SELECT waiting.device, waiting.seq, waiting.n, waiting.id FROM waiting CROSS JOIN "
        "device_chain USING(device) WHERE trusted = 1 AND (waiting.device, waiting.seq, waiting.n) "
        "> (?, ?, ?) ORDER BY waiting.device, waiting.seq, waiting.n LIMIT 100",
        from.device, static_cast<std::int64_t>(from.seq), from.n));
    return rows;
}

// Behind a gap nothing is worth being read and verified: there is no entry before it.
Result<bool> Chains::mayLink(const Chain& chain, std::uint64_t seq)
{
    const bool atHead = std::any_of(chain.heads.begin(), chain.heads.end(),
                                    [&](const Head& head) { return head.seq + 1 == seq; });
    if (seq == 1 || atHead) {
        return true;
    }
    SPILE_ASSIGN(found, database_.integer(0, "SELECT 1 FROM entry WHERE d = ? AND seq = ?", chain.d,
                                          static_cast<std::int64_t>(seq) - 1));
    return found == 1;
}

// None if it is not what was signed any more: then it is dropped. No receipt has named it, so it
// comes again.
Result<std::optional<SignedEntry>> Chains::soundOf(std::int64_t n)
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
                            SPILE_WAITING_ENTRIES "WHERE waiting.n = ?", n));
    if (*found) {
        return std::optional(std::move(**found));
    }
    SPILE_TRY(database_.execute("DELETE FROM waiting WHERE n = ?", n));
    SPILE_TRY(database_.execute("INSERT INTO meta(key, value) VALUES(?, ?) ON CONFLICT DO NOTHING",
                                damageFound, found->error().subject + ": " + found->error().value));
    return std::optional<SignedEntry>();
}

Result<Chains::Linked> Chains::linkOne(const WaitingRow& waiting)
{
    SPILE_ASSIGN(chain, chainOf(waiting.place.device));
    SPILE_ASSIGN(may, mayLink(*chain, waiting.place.seq));
    if (!may) {
        return Linked::No;
    }
    SPILE_ASSIGN(found, soundOf(waiting.place.n));
    if (!found) {
        return Linked::No;
    }
    SPILE_ASSIGN(core, decodeCore(found->core));
    SPILE_ASSIGN(linked, isLinked(*chain, core));
    if (!linked) {
        return Linked::No;
    }
    const bool ends = !core.group || core.group->index + 1 == core.group->count;
    SPILE_TRY(count(*chain, VerifiedEntry{std::move(*found), waiting.id, std::move(core)}));
    SPILE_TRY(database_.execute("DELETE FROM waiting WHERE n = ?", waiting.place.n));
    return ends ? Linked::TapEnded : Linked::InsideTap;
}

Result<std::int64_t> Chains::linkWaiting(std::int64_t limit, WaitingPlace& from)
{
    std::int64_t linked = 0;
    for (;;) {
        SPILE_ASSIGN(rows, waitingAfter(from));
        if (rows.empty()) {
            return linked;
        }
        for (const WaitingRow& row : rows) {
            from = row.place;
            SPILE_ASSIGN(one, linkOne(row));
            linked += one == Linked::No ? 0 : 1;
            if (one == Linked::TapEnded && linked >= limit) {
                return linked;
            }
        }
    }
}

}  // namespace spile::ledger
