#include "core/ledger/chains.hpp"

#include "core/ledger/fields.hpp"

#include <algorithm>

namespace spile::ledger {

Result<Chains::Chain*> Chains::chainOf(const DeviceId& device)
{
    const auto known = chains_.find(device);
    if (known != chains_.end()) {
        return &known->second;
    }
    Chain chain;
    SPILE_ASSIGN(d, knowDevice(device, std::nullopt));
    chain.d = d;
    SPILE_ASSIGN(trusted, database_.integer(0, "SELECT trusted FROM device_chain WHERE d = ?", d));
    chain.trusted = trusted != 0;
    SPILE_TRY(database_.each(
        [&](const Row& row) {
            chain.heads.push_back(
                {device, static_cast<std::uint64_t>(row.integer(0)), row.id<EntryId>(1)});
            return Result<void>();
        },
        "SELECT seq, id FROM head WHERE d = ?", d));
    SPILE_ASSIGN(branches,
                 database_.integer(0, "SELECT branches FROM device_chain WHERE d = ?", d));
    chain.branches = branches;
    return &chains_.emplace(device, std::move(chain)).first->second;
}

Result<std::int64_t> Chains::knowDevice(const DeviceId& device, const std::optional<PublicKey>& key)
{
    SPILE_TRY(database_.execute(
        "INSERT INTO device_chain(device, public_key) VALUES(?, ?) "
        "ON CONFLICT(device) DO UPDATE SET public_key = excluded.public_key "
        "WHERE device_chain.public_key IS NULL AND excluded.public_key IS NOT NULL",
        device, key));
    return database_.integer(0, "SELECT d FROM device_chain WHERE device = ?", device);
}

Result<void> Chains::trust(const DeviceId& device, bool admits)
{
    SPILE_ASSIGN(chain, chainOf(device));
    chain->trusted = true;
    SPILE_TRY(database_.execute(
        "UPDATE device_chain SET trusted = 1, admits = max(admits, ?) WHERE d = ?", admits ? 1 : 0,
        chain->d));
    return spreadTrust();
}

Result<bool> Chains::isCounted(const EntryId& id)
{
    SPILE_ASSIGN(found, database_.integer(0, "SELECT 1 FROM entry WHERE id = ?", id));
    return found == 1;
}

Result<bool> Chains::isLinked(const Chain& chain, const Entry& core)
{
    if (core.seq == 1) {
        return true;
    }
    const bool atHead = std::any_of(chain.heads.begin(), chain.heads.end(), [&](const Head& head) {
        return head.id == core.previous && head.seq + 1 == core.seq;
    });
    if (atHead) {
        return true;
    }
    // A branch: the entry before it is here but is not the newest (a copied or restored device).
    SPILE_ASSIGN(seq, database_.integer(0, "SELECT seq FROM entry WHERE id = ? AND d = ?",
                                        core.previous, chain.d));
    return static_cast<std::uint64_t>(seq) + 1 == core.seq;
}

Result<void> Chains::notePhotos(std::int64_t n, const Entry& core)
{
    for (const PhotoRef& photo : core.photos) {
        SPILE_TRY(database_.execute(
            "INSERT INTO photo(sha256, bytes, present) VALUES(?, ?, ?) ON CONFLICT DO NOTHING",
            photo.hash, static_cast<std::int64_t>(photo.bytes), photos_.has(photo.hash) ? 1 : 0));
        SPILE_TRY(database_.execute(
            "INSERT INTO entry_photo(n, sha256) VALUES(?, ?) ON CONFLICT DO NOTHING", n,
            photo.hash));
    }
    return {};
}

Result<bool> Chains::count(Chain& chain, const VerifiedEntry& entry)
{
    const Entry& core = entry.core;
    SPILE_TRY(database_.execute(
        "INSERT INTO entry(id, d, seq, kind, subject, target, at_ms, core, body, signature) "
        "VALUES(?, ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT(id) DO NOTHING",
        entry.id, chain.d, static_cast<std::int64_t>(core.seq), core.kind, core.subject,
        core.target, toMs(core.eventTime()), entry.entry.core, entry.entry.body,
        entry.entry.signature));
    if (database_.changes() == 0) {
        return false;
    }
    const std::int64_t n = database_.lastRow();
    std::erase_if(chain.heads, [&](const Head& head) { return head.id == core.previous; });
    chain.heads.push_back({core.device, core.seq, entry.id});
    chain.changed = true;
    SPILE_TRY(notePhotos(n, core));
    SPILE_ASSIGN(limited, setAside_.limits(chain.d));
    SPILE_TRY(
        limited ? setAside_.holdBack(n, chain.d)
                : projection_.apply(database_, CountedEntry{n, entry.id, core, entry.entry.body}));
    if (isTrustKind(core.kind)) {
        setAside_.trustChanged();
    }
    if (core.kind == deviceKind) {
        SPILE_TRY(spreadTrust());
    }
    return true;
}

Result<Arrival> Chains::arrive(const VerifiedEntry& entry)
{
    SPILE_ASSIGN(chain, chainOf(entry.core.device));
    SPILE_ASSIGN(linked, isLinked(*chain, entry.core));
    if (chain->trusted && linked) {
        SPILE_ASSIGN(counted, count(*chain, entry));
        SPILE_ASSIGN(waits, anyWaiting());
        if (counted && waits) {
            SPILE_TRY(database_.execute("DELETE FROM waiting WHERE id = ?", entry.id));
        }
        return counted ? Arrival::Counted : Arrival::Known;
    }
    SPILE_ASSIGN(known, isCounted(entry.id));
    if (known) {
        return Arrival::Known;
    }
    SPILE_TRY(database_.execute(
        "INSERT INTO waiting(id, device, seq, core, body, signature) VALUES(?, ?, ?, ?, ?, ?) "
        "ON CONFLICT(id) DO NOTHING",
        entry.id, entry.core.device, static_cast<std::int64_t>(entry.core.seq), entry.entry.core,
        entry.entry.body, entry.entry.signature));
    anyWaiting_ = true;
    return database_.changes() == 0 ? Arrival::Known : Arrival::Waiting;
}

// Most of the time nothing waits; asking once spares a look for each entry.
Result<bool> Chains::anyWaiting()
{
    if (!anyWaiting_) {
        SPILE_ASSIGN(found, database_.integer(0, "SELECT EXISTS(SELECT 1 FROM waiting)"));
        anyWaiting_ = found == 1;
    }
    return *anyWaiting_;
}

Result<void> Chains::appendOwn(const VerifiedEntry& entry)
{
    SPILE_ASSIGN(chain, chainOf(entry.core.device));
    SPILE_ASSIGN(counted, count(*chain, entry));
    if (!counted) {
        return fail(ErrorCode::Conflict, "record", entry.id.hex());
    }
    return {};
}

// A device entry admits its subject if the device that signed it may admit; that one may itself
// be admitted by an entry that came later, so this runs until nothing changes. Order-free: trust
// only ever grows here.
Result<void> Chains::spreadTrust()
{
    for (bool grew = true; grew;) {
        SPILE_ASSIGN(again, admitFromEntries());
        grew = again;
    }
    return {};
}

// None if the body is of another shape: of a newer version, or nonsense that was signed.
static std::optional<std::int64_t> roleIn(ByteView body)
{
    const auto fields = decodeFields(body);
    const auto role = fields ? fields->find(trust_field::role) : Fields::const_iterator();
    const bool found = fields && role != fields->end();
    const auto* number = found ? role->second.as<std::int64_t>() : nullptr;
    return number == nullptr ? std::nullopt : std::optional(*number);
}

Result<bool> Chains::admitFromEntries()
{
    struct Admission {
        DeviceId device;
        bool admits;
    };
    std::vector<Admission> fresh;
    SPILE_TRY(database_.each(
        [&](const Row& row) -> Result<void> {
            const auto device = DeviceId::fromBytes(row.blob(0));
            const auto role = roleIn(row.blob(1));
            const bool admits = role == static_cast<std::int64_t>(DeviceRole::Desk);
            const bool trusted = row.integer(2) != 0;
            const bool admitted = row.integer(3) != 0;
            if (device && (!trusted || (admits && !admitted))) {
                fresh.push_back({*device, admits});
            }
            return {};
        },
        "SELECT entry.subject, entry.body, coalesce(its.trusted, 0), coalesce(its.admits, 0) "
        "FROM entry INDEXED BY entry_device JOIN device_chain AS author ON author.d = entry.d "
        "LEFT JOIN device_chain AS its ON its.device = entry.subject "
        "WHERE entry.kind = 'device' AND author.admits = 1"));
    for (const Admission& admission : fresh) {
        SPILE_ASSIGN(chain, chainOf(admission.device));
        chain->trusted = true;
        SPILE_TRY(database_.execute(
            "UPDATE device_chain SET trusted = 1, admits = max(admits, ?) WHERE d = ?",
            admission.admits ? 1 : 0, chain->d));
    }
    return !fresh.empty();
}

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

Result<bool> Chains::linkOne(Chain& chain, const WaitingRow& waiting)
{
    SPILE_ASSIGN(found, database_.first(
                            [](const Row& row) {
                                const ByteView core = row.blob(0);
                                const ByteView body = row.blob(1);
                                return SignedEntry{Bytes(core.begin(), core.end()),
                                                   row.id<Signature>(2),
                                                   Bytes(body.begin(), body.end())};
                            },
                            "SELECT core, body, signature FROM waiting WHERE n = ?", waiting.n));
    auto core = decodeCore(found->core);
    if (!core) {  // damaged: whoever has it hands it out again
        SPILE_TRY(database_.execute("DELETE FROM waiting WHERE n = ?", waiting.n));
        return false;
    }
    SPILE_ASSIGN(linked, isLinked(chain, *core));
    if (!linked) {
        return false;
    }
    SPILE_TRY(count(chain, VerifiedEntry{std::move(*found), waiting.id, std::move(*core)}));
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

Result<void> Chains::settle()
{
    SPILE_TRY(writeHeads());
    SPILE_TRY(setAside_.settle());
    return projection_.settle(database_);
}

Result<void> Chains::renewSetAside() { return setAside_.renew(); }

void Chains::forget()
{
    chains_.clear();
    anyWaiting_.reset();
    setAside_.forget();
    projection_.forget();
}

}  // namespace spile::ledger
