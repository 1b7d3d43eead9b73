// The codec of an entry's signed part; FORMAT.md has the table of keys.
#include "core/ledger/cbor.hpp"
#include "core/ledger/entry.hpp"

#include <limits>

namespace spile::ledger {

namespace {

enum Key : std::uint64_t {
    Version = 1,
    Cellar,
    Device,
    Seq,
    Previous,
    Recorded,
    Wall,
    Boot,
    At,
    InGroup,
    Kind,
    KindVersion,
    Subject,
    Overwrites,
    Target,
    BodyHash,
    BodyBytes,
    Photos
};

constexpr std::uint64_t formatVersion = 1;
constexpr std::uint64_t photoBytesMax = std::uint64_t{1} << 53U;
constexpr std::size_t kindCharsMax = 32;
constexpr int zoneMinutesMax = 18 * 60;

std::size_t keyCount(const Entry& entry)
{
    return std::size_t{12} + (entry.wall ? 1 : 0) + (entry.at ? 1 : 0) + (entry.group ? 1 : 0) +
           (entry.overwrites.empty() ? 0 : 1) + (entry.target ? 1 : 0) +
           (entry.photos.empty() ? 0 : 1);
}

void writeLists(CborWriter& out, const Entry& entry)
{
    if (!entry.overwrites.empty()) {
        out.unsignedInteger(Overwrites);
        out.array(entry.overwrites.size());
        for (const EntryId& id : entry.overwrites) {
            out.bytes(id.bytes());
        }
    }
    if (entry.target) {
        out.unsignedInteger(Target);
        out.bytes(entry.target->bytes());
    }
    out.unsignedInteger(BodyHash);
    out.bytes(entry.bodyHash.bytes());
    out.unsignedInteger(BodyBytes);
    out.unsignedInteger(entry.bodyBytes);
    if (!entry.photos.empty()) {
        out.unsignedInteger(Photos);
        out.array(entry.photos.size());
        for (const PhotoRef& photo : entry.photos) {
            out.array(2);
            out.bytes(photo.hash.bytes());
            out.unsignedInteger(photo.bytes);
        }
    }
}

void writeTimes(CborWriter& out, const Entry& entry)
{
    out.unsignedInteger(Recorded);
    out.integer(toMs(entry.recorded));
    if (entry.wall) {
        out.unsignedInteger(Wall);
        out.integer(toMs(*entry.wall));
    }
    out.unsignedInteger(Boot);
    out.array(2);
    out.bytes(entry.boot.bytes());
    out.unsignedInteger(static_cast<std::uint64_t>(entry.sinceBoot.count()));
    if (entry.at) {
        out.unsignedInteger(At);
        out.array(2);
        out.integer(toMs(entry.at->time));
        out.integer(entry.at->zoneMinutes);
    }
    if (entry.group) {
        out.unsignedInteger(InGroup);
        out.array(2);
        out.unsignedInteger(entry.group->index);
        out.unsignedInteger(entry.group->count);
    }
}

tl::unexpected<Error> damagedCore(std::string what)
{
    return fail(ErrorCode::Damaged, "record", std::move(what));
}

template <class Id>
Result<Id> readId(CborReader& in)
{
    SPILE_ASSIGN(bytes, in.bytes());
    const auto id = Id::fromBytes(bytes);
    if (!id) {
        return damagedCore("an id has the wrong size");
    }
    return *id;
}

Result<std::uint64_t> readUpTo(CborReader& in, std::uint64_t highest)
{
    SPILE_ASSIGN(value, in.unsignedInteger());
    if (value > highest) {
        return damagedCore("a number is too large");
    }
    return value;
}

Result<Instant> readInstant(CborReader& in)
{
    SPILE_ASSIGN(ms, in.integer());
    if (ms < toMs(earliestTime) || ms > toMs(latestTime)) {
        return damagedCore("a time outside the calendar");
    }
    return instantFromMs(ms);
}

Result<void> expectArray(CborReader& in, std::size_t count)
{
    SPILE_ASSIGN(found, in.array());
    if (found != count) {
        return damagedCore("a list of the wrong length");
    }
    return {};
}

// Reads keys in ascending order; each of the functions below takes the part that is its own.
class CoreReader {
public:
    explicit CoreReader(ByteView core) : in_(core) {}

    Result<Entry> read()
    {
        SPILE_ASSIGN(count, in_.map());
        pairsLeft_ = count;
        SPILE_TRY(readVersion());
        SPILE_TRY(readChain());
        SPILE_TRY(readTimes());
        SPILE_TRY(readMeaning());
        SPILE_TRY(readLists());
        if (pairsLeft_ != 0 || !in_.atEnd()) {
            return damagedCore("more than the known keys");
        }
        return std::move(entry_);
    }

private:
    // Moves past `key` if it comes next.
    Result<bool> next(std::uint64_t key)
    {
        if (pairsLeft_ == 0) {
            return false;
        }
        CborReader ahead = in_;
        SPILE_ASSIGN(found, ahead.unsignedInteger());
        if (found != key) {
            return false;
        }
        in_ = ahead;
        --pairsLeft_;
        return true;
    }
    Result<void> need(std::uint64_t key)
    {
        SPILE_ASSIGN(there, next(key));
        return there ? Result<void>()
                     : damagedCore("key " + std::to_string(key) + " missing or out of order");
    }
    template <class T>
    Result<void> needId(std::uint64_t key, T& into)
    {
        SPILE_TRY(need(key));
        SPILE_ASSIGN(id, readId<T>(in_));
        into = id;
        return {};
    }

    Result<void> readVersion()
    {
        SPILE_TRY(need(Version));
        SPILE_ASSIGN(version, in_.unsignedInteger());
        if (version != formatVersion) {
            return fail(ErrorCode::Unsupported, "record", std::to_string(version), "update Spile");
        }
        return {};
    }

    Result<void> readChain()
    {
        SPILE_TRY(needId(Cellar, entry_.cellar));
        SPILE_TRY(needId(Device, entry_.device));
        SPILE_TRY(need(Seq));
        SPILE_ASSIGN(seq, readUpTo(in_, seqMax));
        entry_.seq = seq;
        SPILE_TRY(needId(Previous, entry_.previous));
        if (seq == 0 || (seq == 1) != entry_.previous.isZero()) {
            return damagedCore("chain number and previous entry disagree");
        }
        return {};
    }

    Result<void> readTimes()
    {
        SPILE_TRY(need(Recorded));
        SPILE_ASSIGN(recorded, readInstant(in_));
        entry_.recorded = recorded;
        SPILE_ASSIGN(hasWall, next(Wall));
        if (hasWall) {
            SPILE_ASSIGN(wall, readInstant(in_));
            entry_.wall = wall;
        }
        SPILE_TRY(need(Boot));
        SPILE_TRY(expectArray(in_, 2));
        SPILE_ASSIGN(boot, readId<BootId>(in_));
        SPILE_ASSIGN(sinceBoot, readUpTo(in_, static_cast<std::uint64_t>(sinceBootMax.count())));
        entry_.boot = boot;
        entry_.sinceBoot = Milliseconds(static_cast<std::int64_t>(sinceBoot));
        return readAtAndGroup();
    }

    Result<void> readAtAndGroup()
    {
        SPILE_ASSIGN(hasAt, next(At));
        if (hasAt) {
            SPILE_TRY(expectArray(in_, 2));
            SPILE_ASSIGN(time, readInstant(in_));
            SPILE_ASSIGN(zone, in_.integer());
            if (zone < -zoneMinutesMax || zone > zoneMinutesMax) {
                return damagedCore("a zone outside +-18 h");
            }
            entry_.at = EventTime{time, static_cast<int>(zone)};
        }
        SPILE_ASSIGN(hasGroup, next(InGroup));
        if (hasGroup) {
            SPILE_TRY(expectArray(in_, 2));
            SPILE_ASSIGN(index, readUpTo(in_, std::numeric_limits<std::uint16_t>::max()));
            SPILE_ASSIGN(count, readUpTo(in_, std::numeric_limits<std::uint16_t>::max()));
            if (index >= count) {
                return damagedCore("a group index beyond its count");
            }
            entry_.group =
                Group{static_cast<std::uint32_t>(index), static_cast<std::uint32_t>(count)};
        }
        return {};
    }

    Result<void> readMeaning()
    {
        SPILE_TRY(need(Kind));
        SPILE_ASSIGN(kind, in_.text());
        if (kind.empty() || kind.size() > kindCharsMax) {
            return damagedCore("a kind of the wrong length");
        }
        entry_.kind = kind;
        SPILE_TRY(need(KindVersion));
        SPILE_ASSIGN(version, readUpTo(in_, std::numeric_limits<std::uint32_t>::max()));
        entry_.kindVersion = static_cast<std::uint32_t>(version);
        return needId(Subject, entry_.subject);
    }

    Result<void> readLists()
    {
        SPILE_TRY(readOverwrites());
        SPILE_ASSIGN(hasTarget, next(Target));
        if (hasTarget) {
            SPILE_ASSIGN(target, readId<EntryId>(in_));
            entry_.target = target;
        }
        SPILE_TRY(needId(BodyHash, entry_.bodyHash));
        SPILE_TRY(need(BodyBytes));
        SPILE_ASSIGN(bodyBytes, readUpTo(in_, bodyBytesMax));
        entry_.bodyBytes = static_cast<std::uint32_t>(bodyBytes);
        return readPhotos();
    }

    Result<void> readOverwrites()
    {
        SPILE_ASSIGN(there, next(Overwrites));
        if (!there) {
            return {};
        }
        SPILE_ASSIGN(count, in_.array());
        if (count == 0 || count > overwritesMax) {
            return damagedCore("a list of the wrong length");
        }
        for (std::size_t i = 0; i < count; ++i) {
            SPILE_ASSIGN(id, readId<EntryId>(in_));
            entry_.overwrites.push_back(id);
        }
        return {};
    }

    Result<void> readPhotos()
    {
        SPILE_ASSIGN(there, next(Photos));
        if (!there) {
            return {};
        }
        SPILE_ASSIGN(count, in_.array());
        if (count == 0 || count > photosMax) {
            return damagedCore("a list of the wrong length");
        }
        for (std::size_t i = 0; i < count; ++i) {
            SPILE_TRY(expectArray(in_, 2));
            SPILE_ASSIGN(hash, readId<Sha256>(in_));
            SPILE_ASSIGN(bytes, readUpTo(in_, photoBytesMax));
            entry_.photos.push_back({hash, bytes});
        }
        return {};
    }

    CborReader in_;
    std::size_t pairsLeft_ = 0;
    Entry entry_;
};

}  // namespace

Bytes encodeCore(const Entry& entry)
{
    CborWriter out;
    out.map(keyCount(entry));
    out.unsignedInteger(Version);
    out.unsignedInteger(formatVersion);
    out.unsignedInteger(Cellar);
    out.bytes(entry.cellar.bytes());
    out.unsignedInteger(Device);
    out.bytes(entry.device.bytes());
    out.unsignedInteger(Seq);
    out.unsignedInteger(entry.seq);
    out.unsignedInteger(Previous);
    out.bytes(entry.previous.bytes());
    writeTimes(out, entry);
    out.unsignedInteger(Kind);
    out.text(entry.kind);
    out.unsignedInteger(KindVersion);
    out.unsignedInteger(entry.kindVersion);
    out.unsignedInteger(Subject);
    out.bytes(entry.subject.bytes());
    writeLists(out, entry);
    return out.take();
}

Result<Entry> decodeCore(ByteView core) { return CoreReader(core).read(); }

}  // namespace spile::ledger
