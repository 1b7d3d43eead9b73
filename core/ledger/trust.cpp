#include "core/ledger/trust.hpp"

#include "core/ledger/chains.hpp"
#include "core/ledger/fields.hpp"

#include <algorithm>
#include <unordered_map>
#include <unordered_set>

namespace spile::ledger {

namespace {

// An entry that says who belongs or what is set aside.
struct TrustEntry {
    EntryId id;
    DeviceId author;
    bool mayAdmit = false;  // its author
    std::uint64_t seq = 0;
    std::string kind;
    DeviceId subject;
    std::optional<EntryId> target;
    std::vector<EntryId> lifted;
    std::vector<ChainPoint> left;
    bool cutAway = false;  // by a cut of its author's chain
};

// A body of another shape leaves nothing: a cut that cannot be read is a cut all the same.
std::vector<ChainPoint> pointsIn(ByteView body)
{
    std::vector<ChainPoint> points;
    const auto fields = decodeFields(body);
    const auto found = fields ? fields->find(trust_field::chainPoints) : Fields::const_iterator();
    const auto* rows = fields && found != fields->end() ? found->second.as<List>() : nullptr;
    if (rows == nullptr) {
        return points;
    }
    for (const Value& row : *rows) {
        const auto* columns = row.as<List>();
        if (columns == nullptr || columns->size() != 2) {
            continue;
        }
        const auto* seq = columns->front().as<std::int64_t>();
        const auto* bytes = columns->back().as<Bytes>();
        const auto entry = bytes == nullptr ? std::nullopt : EntryId::fromBytes(*bytes);
        if (seq != nullptr && *seq > 0 && entry) {
            points.push_back({static_cast<std::uint64_t>(*seq), *entry});
        }
    }
    return points;
}

std::optional<DeviceId> beforeIn(ByteView body)
{
    const auto fields = decodeFields(body);
    const auto found = fields ? fields->find(trust_field::before) : Fields::const_iterator();
    const auto* bytes = fields && found != fields->end() ? found->second.as<Bytes>() : nullptr;
    return bytes == nullptr ? std::nullopt : DeviceId::fromBytes(*bytes);
}

Result<std::vector<TrustEntry>> trustEntries(Database& database)
{
    std::vector<TrustEntry> all;
    SPILE_TRY(database.each(
        [&](const Row& row) -> Result<void> {
            SPILE_ASSIGN(core, decodeCore(row.blob(1)));
            TrustEntry entry;
            entry.id = row.id<EntryId>(0);
            entry.author = core.device;
            entry.mayAdmit = row.integer(3) != 0;
            entry.seq = core.seq;
            entry.kind = core.kind;
            entry.subject = DeviceId::fromBytes(core.subject.bytes()).value_or(DeviceId());
            entry.target = core.target;
            entry.lifted = core.overwrites;
            if (core.kind == cutOffKind) {
                entry.left = pointsIn(row.blob(2));
            }
            all.push_back(std::move(entry));
            return {};
        },
        "SELECT entry.id, entry.core, entry.body, author.admits FROM entry INDEXED BY entry_trust "
        "JOIN device_chain AS author ON author.d = entry.d "
        "WHERE entry.kind IN ('adopt', 'cut_off', 'device', 'reinstate')"));
    return all;
}

struct ChainRow {
    std::int64_t n = 0;
    EntryId id;
    std::uint64_t seq = 0;
};

// What the cuts of one chain leave of it.
class Left {
public:
    static Result<Left> of(Database& database, const DeviceId& device,
                           const std::vector<std::vector<ChainPoint>>& cuts)
    {
        Left left;
        SPILE_ASSIGN(branches, database.integer(0,
                                                "SELECT count(*) FROM head JOIN device_chain "
                                                "USING(d) WHERE device = ?",
                                                device));
        left.branched_ = branches > 1;
        if (left.branched_) {
            SPILE_TRY(left.readChain(database, device));
        }
        for (const auto& points : cuts) {
            left.add(points);
        }
        return left;
    }

    [[nodiscard]] bool keeps(const EntryId& id, std::uint64_t seq) const
    {
        return std::all_of(cuts_.begin(), cuts_.end(), [&](const Cut& cut) {
            return seq <= cut.upTo || cut.entries.contains(id);
        });
    }

private:
    struct Cut {
        std::uint64_t upTo = 0;  // on every branch
        std::unordered_set<EntryId, IdHash> entries;
    };

    Result<void> readChain(Database& database, const DeviceId& device)
    {
        return database.each(
            [&](const Row& row) -> Result<void> {
                SPILE_ASSIGN(core, decodeCore(row.blob(1)));
                before_.emplace(row.id<EntryId>(0), core.previous);
                return {};
            },
            "SELECT id, core FROM entry JOIN device_chain USING(d) WHERE device = ?", device);
    }

    // Where the chain has branches, a point that is here leaves its own branch alone.
    void add(const std::vector<ChainPoint>& points)
    {
        Cut cut;
        for (const ChainPoint& point : points) {
            if (!branched_ || !before_.contains(point.entry)) {
                cut.upTo = std::max(cut.upTo, point.seq);
                continue;
            }
            for (auto at = before_.find(point.entry);
                 at != before_.end() && cut.entries.insert(at->first).second;
                 at = before_.find(at->second)) {
            }
        }
        cuts_.push_back(std::move(cut));
    }

    bool branched_ = false;
    std::unordered_map<EntryId, EntryId, IdHash> before_;
    std::vector<Cut> cuts_;
};

// The cuts that the owner has lifted, each of its device.
std::set<std::pair<DeviceId, EntryId>> liftedBy(const DeviceId& owner,
                                                const std::vector<TrustEntry>& entries)
{
    std::set<std::pair<DeviceId, EntryId>> lifted;
    for (const TrustEntry& entry : entries) {
        if (entry.kind == reinstateKind && entry.author == owner) {
            for (const EntryId& cut : entry.lifted) {
                lifted.emplace(entry.subject, cut);
            }
        }
    }
    return lifted;
}

// Cuts act whoever made them, as long as it was a device that may admit: otherwise two that cut
// each other off would depend on the order. Only the owner lifts them.
Result<void> readCuts(Database& database, const DeviceId& owner, std::vector<TrustEntry>& entries,
                      Standing& standing)
{
    const auto lifted = liftedBy(owner, entries);
    for (const TrustEntry& entry : entries) {
        if (entry.kind == cutOffKind && entry.mayAdmit && entry.subject != owner &&
            !lifted.contains({entry.subject, entry.id})) {
            standing.cuts[entry.subject].push_back(entry.left);
        }
    }
    std::unordered_map<DeviceId, std::vector<TrustEntry*>, IdHash> byAuthor;
    for (TrustEntry& entry : entries) {
        byAuthor[entry.author].push_back(&entry);
    }
    for (const auto& [device, cuts] : standing.cuts) {
        const auto own = byAuthor.find(device);
        if (own == byAuthor.end()) {
            continue;
        }
        SPILE_ASSIGN(left, Left::of(database, device, cuts));
        for (TrustEntry* entry : own->second) {
            entry->cutAway = !left.keeps(entry->id, entry->seq);
        }
    }
    return {};
}

// The least fixed point, from the owner on: it only ever grows, so the order does not matter.
void spread(const std::vector<TrustEntry>& entries, Standing& standing)
{
    for (bool grew = true; grew;) {
        grew = false;
        for (const TrustEntry& entry : entries) {
            const bool stands = standing.members.contains(entry.author) && !entry.cutAway;
            const bool counts = entry.mayAdmit && (stands || standing.adopted.contains(entry.id));
            if (counts && entry.kind == deviceKind) {
                grew |= standing.members.insert(entry.subject).second;
            }
            if (counts && entry.kind == adoptKind && entry.target) {
                grew |= standing.adopted.insert(*entry.target).second;
            }
        }
    }
}

Result<DeviceId> inMeta(Database& database, std::string_view key)
{
    SPILE_ASSIGN(found, database.first([](const Row& row) { return row.id<DeviceId>(0); },
                                       "SELECT value FROM meta WHERE key = ?", key));
    return found.value_or(DeviceId());
}

// This device under its present key and those it had before.
Result<std::vector<DeviceId>> ownDevices(Database& database)
{
    SPILE_ASSIGN(own, inMeta(database, "device"));
    std::vector<DeviceId> all = {own};
    for (;;) {
        SPILE_ASSIGN(before,
                     database.first([](const Row& row) { return beforeIn(row.blob(0)); },
                                    "SELECT body FROM entry JOIN device_chain USING(d) WHERE "
                                    "device = ? AND seq = 1 AND kind = 'renew'",
                                    all.back()));
        if (!before || !*before || std::find(all.begin(), all.end(), **before) != all.end()) {
            return all;
        }
        all.push_back(**before);
    }
}

Result<void> readDesks(Database& database, std::set<DeviceId>& desks)
{
    return database.each(
        [&](const Row& row) {
            desks.insert(row.id<DeviceId>(0));
            return Result<void>();
        },
        "SELECT device FROM device_chain WHERE admits = 1");
}

}  // namespace

bool isTrustKind(std::string_view kind)
{
    return kind == deviceKind || kind == cutOffKind || kind == adoptKind || kind == reinstateKind;
}

Result<Standing> standingOf(Database& database)
{
    SPILE_ASSIGN(owner, inMeta(database, "cellar"));
    SPILE_ASSIGN(own, ownDevices(database));
    SPILE_ASSIGN(entries, trustEntries(database));
    Standing standing;
    SPILE_TRY(readDesks(database, standing.desks));
    for (const TrustEntry& entry : entries) {
        if (entry.kind == deviceKind && entry.mayAdmit) {
            standing.admitted.insert(entry.subject);
        }
    }
    standing.members.insert(owner);
    for (const DeviceId& device : own) {
        if (!standing.admitted.contains(device)) {  // it may record before anybody has heard of it
            standing.members.insert(device);
        }
    }
    SPILE_TRY(readCuts(database, owner, entries, standing));
    spread(entries, standing);
    return standing;
}

Result<std::vector<std::int64_t>> rowsSetAside(Database& database, const DeviceId& device,
                                               const Standing& standing)
{
    std::vector<std::int64_t> rows;
    if (!standing.limits(device)) {
        return rows;
    }
    const bool belongs = standing.members.contains(device);
    const auto cuts = standing.cuts.find(device);
    const std::vector<std::vector<ChainPoint>> none;
    SPILE_ASSIGN(left,
                 Left::of(database, device, cuts == standing.cuts.end() ? none : cuts->second));
    SPILE_TRY(database.each(
        [&](const Row& row) {
            const auto id = row.id<EntryId>(1);
            const bool kept = belongs && left.keeps(id, static_cast<std::uint64_t>(row.integer(2)));
            if (!kept && !standing.adopted.contains(id)) {
                rows.push_back(row.integer(0));
            }
            return Result<void>();
        },
        "SELECT n, id, seq FROM entry JOIN device_chain USING(d) WHERE device = ? ORDER BY n",
        device));
    return rows;
}

Membership Standing::membershipOf(const DeviceId& device) const
{
    const bool belongs = members.contains(device);
    const bool cutOff = cuts.contains(device);
    return {belongs && admitted.contains(device), belongs && desks.contains(device) && !cutOff,
            cutOff};
}

Result<Membership> membershipOf(Database& database, const DeviceId& device)
{
    SPILE_ASSIGN(standing, standingOf(database));
    return standing.membershipOf(device);
}

}  // namespace spile::ledger
