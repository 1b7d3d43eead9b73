// Entries that wait for their device to be admitted, or for the one before them.
#include "core/ledger/chains.hpp"
#include "core/ledger/entry_check.hpp"
#include "core/ledger/mending.hpp"

#include <algorithm>

namespace spile::ledger {

Result<std::vector<WaitingPlace>> Chains::waitingAfter(const WaitingPlace& from)
{
    std::vector<WaitingPlace> rows;
    SPILE_TRY(database_.each(
        [&](const Row& row) {
            rows.push_back(
                {row.id<DeviceId>(0), static_cast<std::uint64_t>(row.integer(1)), row.integer(2)});
            return Result<void>();
        },
        "SELECT waiting.device, waiting.seq, waiting.n FROM waiting CROSS JOIN "
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

// None if it is not there, or not what was signed any more: then it is dropped. No receipt has
// named it, so it comes again.
Result<std::optional<VerifiedEntry>> Chains::soundOf(std::int64_t n)
{
    SPILE_ASSIGN(found, database_.first(
                            [](const Row& row) -> Result<VerifiedEntry> {
                                SPILE_ASSIGN(entry, waitingEntry(row));
                                const ByteView core = row.blob(1);
                                const ByteView body = row.blob(2);
                                return VerifiedEntry{
                                    {Bytes(core.begin(), core.end()), row.id<Signature>(3),
                                     Bytes(body.begin(), body.end())},
                                    row.id<EntryId>(0),
                                    std::move(entry)};
                            },
                            SPILE_WAITING_ENTRIES "WHERE waiting.n = ?", n));
    if (!found) {  // counted with the first of its tap
        return std::optional<VerifiedEntry>();
    }
    if (*found) {
        return std::optional(std::move(**found));
    }
    SPILE_TRY(database_.execute("DELETE FROM waiting WHERE n = ?", n));
    SPILE_TRY(database_.execute("INSERT INTO meta(key, value) VALUES(?, ?) ON CONFLICT DO NOTHING",
                                damageFound, found->error().subject + ": " + found->error().value));
    return std::optional<VerifiedEntry>();
}

// What waits right after `before` in its chain. Where the chain has branches it is one of several.
Result<std::optional<Chains::SoundRow>> Chains::soundAfter(const VerifiedEntry& before)
{
    std::vector<std::int64_t> rows;
    SPILE_TRY(database_.each(
        [&](const Row& row) {
            rows.push_back(row.integer(0));
            return Result<void>();
        },
        "SELECT n FROM waiting WHERE device = ? AND seq = ? ORDER BY n", before.core.device,
        static_cast<std::int64_t>(before.core.seq) + 1));
    for (const std::int64_t n : rows) {
        SPILE_ASSIGN(found, soundOf(n));
        if (found && found->core.previous == before.id) {
            return std::optional(SoundRow{n, std::move(*found)});
        }
    }
    return std::optional<SoundRow>();
}

// The tap that begins with it. It counts whole or not at all: where a part of it was damaged and
// dropped all of it waits, until that comes again. Empty then.
Result<std::vector<Chains::SoundRow>> Chains::wholeTap(SoundRow first)
{
    std::vector<SoundRow> tap;
    tap.push_back(std::move(first));
    for (;;) {
        const VerifiedEntry& last = tap.back().entry;
        if (!last.core.group || last.core.group->index + 1 == last.core.group->count) {
            return tap;
        }
        SPILE_ASSIGN(next, soundAfter(last));
        if (!next) {
            return std::vector<SoundRow>();
        }
        tap.push_back(std::move(*next));
    }
}

// Let the tap that begins there count; return of how many records it is, 0 if it may not.
Result<std::int64_t> Chains::linkTap(const WaitingPlace& place)
{
    SPILE_ASSIGN(chain, chainOf(place.device));
    SPILE_ASSIGN(may, mayLink(*chain, place.seq));
    if (!may) {
        return 0;
    }
    SPILE_ASSIGN(found, soundOf(place.n));
    if (!found) {
        return 0;
    }
    SPILE_ASSIGN(linked, isLinked(*chain, found->core));
    if (!linked) {
        return 0;
    }
    SPILE_ASSIGN(tap, wholeTap({place.n, std::move(*found)}));
    for (const SoundRow& row : tap) {
        SPILE_TRY(count(*chain, row.entry));
        SPILE_TRY(database_.execute("DELETE FROM waiting WHERE n = ?", row.n));
    }
    return static_cast<std::int64_t>(tap.size());
}

Result<std::int64_t> Chains::linkWaiting(std::int64_t limit, WaitingPlace& from)
{
    std::int64_t linked = 0;
    for (;;) {
        SPILE_ASSIGN(rows, waitingAfter(from));
        if (rows.empty()) {
            return linked;
        }
        for (const WaitingPlace& place : rows) {
            from = place;
            SPILE_ASSIGN(tap, linkTap(place));
            linked += tap;
            if (tap > 0 && linked >= limit) {
                return linked;
            }
        }
    }
}

}  // namespace spile::ledger
