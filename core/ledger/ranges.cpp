#include "core/ledger/ranges.hpp"

#include <algorithm>
#include <map>
#include <set>

namespace spile::ledger {

namespace {

struct ChainRow {
    std::int64_t n = 0;
    std::uint64_t seq = 0;
    EntryId id;
};

struct ChainKey {
    std::int64_t d = 0;
    DeviceId device;
};

Result<std::vector<ChainKey>> chainsOf(Database& database, const CellarId& cellar)
{
    std::vector<ChainKey> chains;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            chains.push_back({row.integer(0), row.id<DeviceId>(1)});
            return Result<void>();
        },
        "SELECT d, device FROM device_chain WHERE EXISTS(SELECT 1 FROM head WHERE head.d = "
        "device_chain.d) "
        "ORDER BY device = ? DESC, d",
        cellar));
    return chains;
}

Result<std::vector<ChainRow>> rowsOf(Database& database, std::int64_t d)
{
    std::vector<ChainRow> rows;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            rows.push_back(
                {row.integer(0), static_cast<std::uint64_t>(row.integer(1)), row.id<EntryId>(2)});
            return Result<void>();
        },
        "SELECT n, seq, id FROM entry WHERE d = ? ORDER BY seq", d));
    return rows;
}

Result<std::vector<Head>> headsOf(Database& database, const ChainKey& chain)
{
    std::vector<Head> heads;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            heads.push_back(
                {chain.device, static_cast<std::uint64_t>(row.integer(0)), row.id<EntryId>(1)});
            return Result<void>();
        },
        "SELECT seq, id FROM head WHERE d = ? ORDER BY seq, id", chain.d));
    return heads;
}

// Where a receiver with these heads stands in an unbranched chain: the last entry it has, none
// if it has none or one that is not here.
Result<std::optional<Head>> standsAt(Database& database, std::int64_t d, const DeviceId& device,
                                     const std::vector<Head>& known)
{
    std::optional<Head> stands;
    for (const Head& head : known) {
        if (head.device != device) {
            continue;
        }
        SPILE_ASSIGN(
            here, database.integer(0, "SELECT 1 FROM entry WHERE d = ? AND seq = ? AND id = ?", d,
                                   static_cast<std::int64_t>(head.seq), head.id));
        if (here == 0 || stands) {
            return std::optional<Head>();
        }
        stands = head;
    }
    return stands;
}

// Follows each branch back from its head until it meets an entry that another one has taken.
Result<std::vector<OutgoingRange>> branches(Database& database, const ChainKey& chain,
                                            const std::vector<Head>& heads)
{
    SPILE_ASSIGN(rows, rowsOf(database, chain.d));
    std::map<EntryId, ChainRow> byId;
    for (const ChainRow& row : rows) {
        byId.emplace(row.id, row);
    }
    std::set<EntryId> taken;
    std::vector<OutgoingRange> ranges;
    for (const Head& head : heads) {
        OutgoingRange out{{chain.device, 0, head.seq, EntryId(), head.id}, {}};
        EntryId at = head.id;
        while (!at.isZero() && !taken.contains(at)) {
            const ChainRow& row = byId.at(at);
            taken.insert(at);
            out.rows.push_back(row.n);
            out.range.first = row.seq;
            SPILE_ASSIGN(core, database.first([](const Row& r) { return decodeCore(r.blob(0)); },
                                              "SELECT core FROM entry WHERE n = ?", row.n));
            if (!*core) {
                return passOn(*core);
            }
            at = (**core).previous;
        }
        out.range.before = at;
        std::reverse(out.rows.begin(), out.rows.end());
        ranges.push_back(std::move(out));
    }
    return ranges;
}

}  // namespace

Result<std::vector<OutgoingRange>> rangesBeyond(Database& database, const CellarId& cellar,
                                                const std::vector<Head>& known)
{
    std::vector<OutgoingRange> all;
    SPILE_ASSIGN(chains, chainsOf(database, cellar));
    for (const ChainKey& chain : chains) {
        SPILE_ASSIGN(heads, headsOf(database, chain));
        if (heads.size() > 1) {
            SPILE_ASSIGN(ranges, branches(database, chain, heads));
            std::move(ranges.begin(), ranges.end(), std::back_inserter(all));
            continue;
        }
        SPILE_ASSIGN(stands, standsAt(database, chain.d, chain.device, known));
        const Head& head = heads.front();
        const std::uint64_t first = stands ? stands->seq + 1 : 1;
        if (first <= head.seq) {
            all.push_back(
                {{chain.device, first, head.seq, stands ? stands->id : EntryId(), head.id}, {}});
        }
    }
    return all;
}

}  // namespace spile::ledger
