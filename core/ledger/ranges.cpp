#include "core/ledger/ranges.hpp"

#include "core/ledger/entry_check.hpp"
#include "core/ledger/signature_checks.hpp"

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
            const auto found = byId.find(at);
            if (found == byId.end()) {
                return fail(ErrorCode::Damaged,
                            "record " + placeOf(chain.device, std::max(out.range.first, head.seq)),
                            "it or the one before it is missing");
            }
            const ChainRow& row = found->second;
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

// Puts the sound entries of a chain, which come by their numbers, together to ranges.
class SoundRanges {
public:
    explicit SoundRanges(const DeviceId& device) : device_(device) {}

    struct Sound {
        std::int64_t n = 0;
        EntryId id;
        Entry core;
    };

    void add(const Sound& entry)
    {
        const Entry& core = entry.core;
        const auto follows = ends_.find(core.previous);
        std::size_t which = stretches_.size();
        if (follows != ends_.end()) {
            which = follows->second;
            ends_.erase(follows);
        } else {
            stretches_.push_back({});
            if (core.seq > 1) {
                needed_.push_back({device_, core.seq - 1, core.previous});
            }
        }
        ends_.emplace(entry.id, which);
        lengthen(stretches_[which], entry);
    }

    /// Without those that leave a tap unfinished.
    std::vector<OutgoingRange> finish()
    {
        std::vector<OutgoingRange> ranges;
        for (Stretch& stretch : stretches_) {
            dropped_ += stretch.out.rows.size() - stretch.whole;
            stretch.out.rows.resize(stretch.whole);
            if (stretch.whole > 0) {
                ranges.push_back(std::move(stretch.out));
            }
        }
        return ranges;
    }

    [[nodiscard]] std::uint64_t dropped() const { return dropped_; }
    /// Entries before which a range begins; where one is not there or not sound, there is a gap.
    [[nodiscard]] const std::vector<Head>& needed() const { return needed_; }
    /// Whether each of these ends a range; asked after finish().
    [[nodiscard]] bool reach(const std::vector<Head>& heads) const
    {
        return dropped_ == 0 && std::all_of(heads.begin(), heads.end(), [&](const Head& head) {
                   return ends_.contains(head.id);
               });
    }

private:
    struct Stretch {
        OutgoingRange out;
        std::size_t whole = 0;  // so many of its rows, up to the end of a tap
    };

    void lengthen(Stretch& stretch, const Sound& entry)
    {
        const Entry& core = entry.core;
        ChainRange& range = stretch.out.range;
        if (stretch.out.rows.empty()) {
            if (core.group && core.group->index > 0) {
                ++dropped_;
                return;
            }
            range = {device_, core.seq, core.seq, core.previous, entry.id};
        }
        stretch.out.rows.push_back(entry.n);
        if (!core.group || core.group->index + 1 == core.group->count) {
            range.last = core.seq;
            range.end = entry.id;
            stretch.whole = stretch.out.rows.size();
        }
    }

    DeviceId device_;
    std::vector<Stretch> stretches_;
    std::map<EntryId, std::size_t> ends_;  // the stretch that ends with it
    std::vector<Head> needed_;
    std::uint64_t dropped_ = 0;
};

// What is sound of one store, chain by chain.
class SoundStore {
public:
    explicit SoundStore(Database& database) : database_(database) {}

    Result<void> findUnsound(const CellarId& cellar, const Job& job)
    {
        std::uint64_t done = 0;
        return database_.each(
            [&](const Row& row) -> Result<void> {
                std::vector<Error> wrong = wrongWith(row, cellar);
                if (!wrong.empty()) {
                    unsound_.insert(row.integer(storedRowColumn));
                    part_.wrong = part_.wrong ? part_.wrong : std::move(wrong.front());
                }
                constexpr std::uint64_t reportEvery = 256;
                return ++done % reportEvery != 0 || job.advance(done, done)
                           ? Result<void>()
                           : fail(ErrorCode::Cancelled, "day file");
            },
            storedEntries, 0, -1);
    }

    Result<void> add(const ChainKey& chain, const std::vector<Head>& known)
    {
        SPILE_ASSIGN(heads, headsOf(database_, chain));
        SoundRanges sound(chain.device);
        SPILE_TRY(follow(chain, sound));
        std::vector<OutgoingRange> ranges = sound.finish();
        part_.leftOut += sound.dropped();
        SPILE_ASSIGN(whole, isWhole(chain, sound, heads));
        if (whole) {
            part_.have.insert(part_.have.end(), heads.begin(), heads.end());
        } else if (!ranges.empty() && ranges.front().range.first == 1) {
            const ChainRange& sure = ranges.front().range;
            part_.have.push_back({sure.device, sure.last, sure.end});
        }
        std::optional<Head> stands;
        if (heads.size() == 1) {
            SPILE_ASSIGN(found, standsAt(database_, chain.d, chain.device, known));
            stands = found;
        }
        for (OutgoingRange& out : ranges) {
            if (!stands || liesBeyond(out, *stands)) {
                part_.ranges.push_back(std::move(out));
            }
        }
        return {};
    }

    SoundPart finish()
    {
        std::sort(part_.have.begin(), part_.have.end());
        part_.leftOut += unsound_.size();
        return std::move(part_);
    }

private:
    Result<void> follow(const ChainKey& chain, SoundRanges& sound)
    {
        return database_.each(
            [&](const Row& row) -> Result<void> {
                if (!unsound_.contains(row.integer(0))) {
                    SPILE_ASSIGN(core, decodeCore(row.blob(2)));
                    sound.add({row.integer(0), row.id<EntryId>(1), std::move(core)});
                }
                return {};
            },
            "SELECT n, id, core FROM entry WHERE d = ? ORDER BY seq", chain.d);
    }

    Result<bool> isWhole(const ChainKey& chain, const SoundRanges& sound,
                         const std::vector<Head>& heads)
    {
        for (const Head& needed : sound.needed()) {
            SPILE_ASSIGN(
                n, database_.integer(0, "SELECT n FROM entry WHERE d = ? AND seq = ? AND id = ?",
                                     chain.d, static_cast<std::int64_t>(needed.seq), needed.id));
            if (n == 0 || unsound_.contains(n)) {
                return false;
            }
        }
        return sound.reach(heads);
    }

    // Cuts off what a receiver that stands there has; false if nothing is left.
    static bool liesBeyond(OutgoingRange& out, const Head& stands)
    {
        ChainRange& range = out.range;
        if (range.last <= stands.seq) {
            return false;
        }
        if (range.first <= stands.seq) {
            const std::uint64_t known = stands.seq + 1 - range.first;
            out.rows.erase(out.rows.begin(), out.rows.begin() + static_cast<std::ptrdiff_t>(known));
            range.first = stands.seq + 1;
            range.before = stands.id;
        }
        return true;
    }

    Database& database_;
    std::set<std::int64_t> unsound_;  // rows of table entry
    SoundPart part_;
};

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

Result<SoundPart> soundRangesBeyond(Database& database, const CellarId& cellar,
                                    const std::vector<Head>& known, const Job& job)
{
    SoundStore store(database);
    SPILE_TRY(store.findUnsound(cellar, job));
    SPILE_ASSIGN(chains, chainsOf(database, cellar));
    for (const ChainKey& chain : chains) {
        SPILE_TRY(store.add(chain, known));
    }
    return store.finish();
}

}  // namespace spile::ledger
