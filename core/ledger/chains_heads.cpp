// The newest entries of each chain.
#include "core/ledger/chains.hpp"
#include "core/ledger/keys.hpp"

#include <algorithm>
#include <map>

namespace spile::ledger {

// A record that named a spoilt head as the one before it could be linked nowhere.
Result<void> Chains::readHeads(const DeviceId& device, Chain& chain)
{
    SPILE_TRY(database_.each(
        [&](const Row& row) {
            chain.heads.push_back(
                {device, static_cast<std::uint64_t>(row.integer(0)), row.id<EntryId>(1)});
            return Result<void>();
        },
        "SELECT seq, id FROM head WHERE d = ?", chain.d));
    bool sound = !chain.heads.empty();
    for (const Head& head : chain.heads) {
        SPILE_ASSIGN(counted, isCounted(chain, head.seq, head.id));
        sound = sound && counted;
    }
    return sound ? Result<void>() : headsFromEntries(device, chain);
}

// Those that no other names as the one before it.
Result<void> Chains::headsFromEntries(const DeviceId& device, Chain& chain)
{
    std::map<EntryId, std::uint64_t> ends;
    SPILE_TRY(database_.each(
        [&](const Row& row) {
            const auto seq = static_cast<std::uint64_t>(row.integer(1));
            if (const auto core = decodeCore(row.blob(2))) {
                ends.erase(core->previous);
            } else {
                std::erase_if(ends, [&](const auto& end) { return end.second + 1 == seq; });
            }
            ends.emplace(row.id<EntryId>(0), seq);
            return Result<void>();
        },
        "SELECT id, seq, core FROM entry WHERE d = ? ORDER BY seq", chain.d));
    chain.changed = !chain.heads.empty() || !ends.empty();
    chain.heads.clear();
    for (const auto& [id, seq] : ends) {
        chain.heads.push_back({device, seq, id});
    }
    return {};
}

Result<void> Chains::mendHeads()
{
    SPILE_TRY(database_.run(
        "DELETE FROM head WHERE NOT EXISTS(SELECT 1 FROM entry WHERE entry.d = head.d);"));
    chains_.clear();
    std::vector<std::int64_t> nobody;
    std::vector<DeviceId> devices;
    SPILE_TRY(database_.each(
        [&](const Row& row) {
            const auto device = row.id<DeviceId>(1);
            const bool used = row.integer(3) != 0;
            if (used) {
                devices.push_back(device);
            } else if (!row.isNull(2) && deviceIdOf(row.id<PublicKey>(2)) != device) {
                nobody.push_back(row.integer(0));
            }
            return Result<void>();
        },
        "SELECT d, device, public_key, EXISTS(SELECT 1 FROM entry WHERE entry.d = device_chain.d) "
        "FROM device_chain"));
    for (const std::int64_t d : nobody) {
        SPILE_TRY(database_.execute("DELETE FROM device_chain WHERE d = ?", d));
    }
    for (const DeviceId& device : devices) {
        SPILE_TRY(chainOf(device));
    }
    return {};
}

Result<std::vector<Head>> Chains::heads()
{
    SPILE_TRY(writeHeads());
    std::vector<Head> heads;
    SPILE_TRY(database_.each(
        [&](const Row& row) {
            heads.push_back({row.id<DeviceId>(0), static_cast<std::uint64_t>(row.integer(1)),
                             row.id<EntryId>(2)});
            return Result<void>();
        },
        "SELECT device, seq, id FROM head JOIN device_chain USING(d) ORDER BY device, seq, id"));
    return heads;
}

Result<std::vector<Head>> Chains::headsOf(const DeviceId& device)
{
    SPILE_ASSIGN(chain, chainOf(device));
    std::vector<Head> heads = chain->heads;
    std::sort(heads.begin(), heads.end());
    return heads;
}

Result<std::optional<Head>> Chains::headOf(const DeviceId& device)
{
    SPILE_ASSIGN(chain, chainOf(device));
    if (chain->heads.empty()) {
        return std::optional<Head>();
    }
    return std::optional(*std::max_element(chain->heads.begin(), chain->heads.end()));
}

Result<void> Chains::writeHeads()
{
    for (auto& [device, chain] : chains_) {
        if (!chain.changed) {
            continue;
        }
        SPILE_TRY(database_.execute("DELETE FROM head WHERE d = ?", chain.d));
        for (const Head& head : chain.heads) {
            SPILE_TRY(database_.execute("INSERT INTO head(d, seq, id) VALUES(?, ?, ?)", chain.d,
                                        static_cast<std::int64_t>(head.seq), head.id));
        }
        if (chain.branches != static_cast<std::int64_t>(chain.heads.size())) {
            chain.branches = static_cast<std::int64_t>(chain.heads.size());
            SPILE_TRY(database_.execute("UPDATE device_chain SET branches = ? WHERE d = ?",
                                        chain.branches, chain.d));
        }
        chain.changed = false;
    }
    return {};
}

}  // namespace spile::ledger
