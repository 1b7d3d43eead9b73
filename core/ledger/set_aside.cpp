#include "core/ledger/set_aside.hpp"

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

// Cuts act whoever made them, as long as it was a device that may admit: otherwise two that cut
// each other off would depend on the order. Only the owner lifts them.
Result<void> readCuts(Database& database, const DeviceId& owner, std::vector<TrustEntry>& entries,
                      Standing& standing)
{
    std::set<std::pair<DeviceId, EntryId>> lifted;
    for (const TrustEntry& entry : entries) {
        if (entry.kind == reinstateKind && entry.author == owner) {
            for (const EntryId& cut : entry.lifted) {
                lifted.emplace(entry.subject, cut);
            }
        }
    }
    for (const TrustEntry& entry : entries) {
        if (entry.kind == cutOffKind && entry.mayAdmit && entry.subject != owner &&
            !lifted.contains({entry.subject, entry.id})) {
            standing.cuts[entry.subject].push_back(entry.left);
        }
    }
    for (const auto& [device, cuts] : standing.cuts) {
        const DeviceId cutOff = device;  // clang 14 lets no lambda see a structured binding
        SPILE_ASSIGN(left, Left::of(database, cutOff, cuts));
        for (TrustEntry& entry : entries) {
            if (entry.author == cutOff) {
                entry.cutAway = !left.keeps(entry.id, entry.seq);
            }
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
    standing.members.insert(owner);
    for (const DeviceId& device : own) {
        const bool spokenOf =
            std::any_of(entries.begin(), entries.end(), [&](const TrustEntry& entry) {
                return entry.kind == deviceKind && entry.mayAdmit && entry.subject == device;
            });
        if (!spokenOf) {  // it may record before anybody has heard of it
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

Result<bool> SetAside::limits(std::int64_t d)
{
    if (!limited_) {
        limited_.emplace();
        SPILE_TRY(database_.each(
            [&](const Row& row) {
                limited_->insert(row.integer(0));
                return Result<void>();
            },
            "SELECT d FROM device_chain WHERE limited = 1"));
    }
    return limited_->contains(d);
}

Result<void> SetAside::holdBack(std::int64_t n, std::int64_t d)
{
    changed_ = true;
    return database_.execute("INSERT INTO set_aside(n, d) VALUES(?, ?)", n, d);
}

Result<std::vector<SetAside::Device>> SetAside::devices()
{
    std::vector<Device> all;
    SPILE_TRY(database_.each(
        [&](const Row& row) {
            all.push_back({row.integer(0), row.id<DeviceId>(1), row.integer(2) != 0});
            return Result<void>();
        },
        "SELECT d, device, limited FROM device_chain WHERE trusted = 1 ORDER BY d"));
    return all;
}

Result<void> SetAside::mark(const Device& device, bool limited)
{
    limited_.reset();
    return limited == device.limited
               ? Result<void>()
               : database_.execute("UPDATE device_chain SET limited = ? WHERE d = ?",
                                   limited ? 1 : 0, device.d);
}

Result<void> SetAside::settle()
{
    if (!changed_) {
        return {};
    }
    SPILE_ASSIGN(standing, standingOf(database_));
    SPILE_ASSIGN(all, devices());
    for (const Device& device : all) {
        const bool limited = standing.limits(device.device);
        // All of them: a branch that comes can take away what admitted another device.
        if (limited || device.limited) {
            SPILE_TRY(settleDevice(device, standing));
            SPILE_TRY(mark(device, limited));
        }
    }
    changed_ = false;
    return {};
}

Result<void> SetAside::settleDevice(const Device& device, const Standing& standing)
{
    SPILE_ASSIGN(wanted, rowsSetAside(database_, device.device, standing));
    std::vector<std::int64_t> present;
    SPILE_TRY(database_.each(
        [&](const Row& row) {
            present.push_back(row.integer(0));
            return Result<void>();
        },
        "SELECT n FROM set_aside WHERE d = ? ORDER BY n", device.d));
    std::vector<std::int64_t> fresh;
    std::vector<std::int64_t> freed;
    std::set_difference(wanted.begin(), wanted.end(), present.begin(), present.end(),
                        std::back_inserter(fresh));
    std::set_difference(present.begin(), present.end(), wanted.begin(), wanted.end(),
                        std::back_inserter(freed));
    for (const std::int64_t n : fresh) {
        SPILE_TRY(withdraw(n, device.d));
    }
    for (const std::int64_t n : freed) {
        SPILE_TRY(release(n));
    }
    return {};
}

// Gives `use` the entry in row `n`.
static Result<void> withEntry(Database& database, std::int64_t n,
                              const std::function<Result<void>(const CountedEntry&)>& use)
{
    struct Stored {
        EntryId id;
        Bytes core, body;
    };
    SPILE_ASSIGN(found, database.first(
                            [](const Row& row) {
                                const ByteView core = row.blob(1);
                                const ByteView body = row.blob(2);
                                return Stored{row.id<EntryId>(0), Bytes(core.begin(), core.end()),
                                              Bytes(body.begin(), body.end())};
                            },
                            "SELECT id, core, body FROM entry WHERE n = ?", n));
    if (!found) {
        return fail(ErrorCode::Damaged, "ledger.db", "a record that is set aside is missing");
    }
    SPILE_ASSIGN(core, decodeCore(found->core));
    return use(CountedEntry{n, found->id, std::move(core), found->body});
}

Result<void> SetAside::withdraw(std::int64_t n, std::int64_t d)
{
    SPILE_TRY(database_.execute("INSERT INTO set_aside(n, d) VALUES(?, ?)", n, d));
    return withEntry(database_, n, [&](const CountedEntry& entry) {
        return projection_.withdraw(database_, entry);
    });
}

Result<void> SetAside::release(std::int64_t n)
{
    SPILE_TRY(database_.execute("DELETE FROM set_aside WHERE n = ?", n));
    return withEntry(database_, n, [&](const CountedEntry& entry) {
        return projection_.apply(database_, entry);
    });
}

Result<void> SetAside::renew()
{
    SPILE_TRY(database_.execute("DELETE FROM set_aside"));
    SPILE_ASSIGN(standing, standingOf(database_));
    SPILE_ASSIGN(all, devices());
    for (const Device& device : all) {
        SPILE_TRY(mark(device, standing.limits(device.device)));
        SPILE_ASSIGN(rows, rowsSetAside(database_, device.device, standing));
        for (const std::int64_t n : rows) {
            SPILE_TRY(database_.execute("INSERT INTO set_aside(n, d) VALUES(?, ?)", n, device.d));
        }
    }
    return {};
}

void SetAside::forget()
{
    limited_.reset();
    changed_ = false;
}

}  // namespace spile::ledger
