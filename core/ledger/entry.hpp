#pragma once

#include "core/base/clock.hpp"
#include "core/base/ids.hpp"
#include "core/base/result.hpp"
#include "core/ledger/keys.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// One recorded fact, as it is signed. FORMAT.md has the bytes.
namespace spile::ledger {

inline constexpr std::size_t bodyBytesMax = std::size_t{64} * 1024;
inline constexpr std::size_t coreBytesMax = std::size_t{16} * 1024;
inline constexpr std::size_t overwritesMax = 16;
inline constexpr std::size_t photosMax = 32;
inline constexpr std::uint64_t seqMax = std::uint64_t{1} << 53U;
inline constexpr Milliseconds sinceBootMax{std::int64_t{1} << 53U};

/// No record has a time outside these years.
inline constexpr Instant latestTime = instantFromMs(253402300799999);  // the end of 9999
inline constexpr Instant earliestTime = instantFromMs(-253402300799999);

/// When it happened, as the person claims it, with the offset of the local time then.
struct EventTime {
    Instant time;
    int zoneMinutes = 0;  // east of UTC, in [-1080, 1080]
    friend bool operator==(const EventTime&, const EventTime&) = default;
};

/// Its place among the entries of one tap, which count together or not at all.
struct Group {
    std::uint32_t index = 0;
    std::uint32_t count = 1;
    friend bool operator==(const Group&, const Group&) = default;
};

struct PhotoRef {
    Sha256 hash;
    std::uint64_t bytes = 0;
    friend bool operator==(const PhotoRef&, const PhotoRef&) = default;
};

/// The signed part of an entry; its body is bound by hash and travels beside it.
struct Entry {
    CellarId cellar;
    DeviceId device;
    std::uint64_t seq = 0;        // 1, 2, 3, ... per device
    EntryId previous;             // of this device; zero at seq 1
    Instant recorded;             // the device's wall clock, but never before its previous entry
    std::optional<Instant> wall;  // the wall clock itself where it differs from `recorded`
    BootId boot;
    Milliseconds sinceBoot{0};
    std::optional<EventTime> at;  // none: when it was recorded
    std::optional<Group> group;
    std::string kind;
    std::uint32_t kindVersion = 1;
    SubjectId subject;
    std::vector<EntryId> overwrites;  // what this replaces, as seen when it was written
    std::optional<EntryId> target;    // what this amends, voids or answers
    Sha256 bodyHash;
    std::uint32_t bodyBytes = 0;
    std::vector<PhotoRef> photos;

    /// When it counts as having happened.
    [[nodiscard]] Instant eventTime() const { return at ? at->time : recorded; }
    friend bool operator==(const Entry&, const Entry&) = default;
};

/// Return the canonical bytes of `entry`; their SHA-256 is its id.
[[nodiscard]] Bytes encodeCore(const Entry& entry);

/// Read what encodeCore() wrote.
///
/// Errors    Damaged if it is not that, byte for byte, or outside the limits above;
///           Unsupported if it has a newer version number.
[[nodiscard]] Result<Entry> decodeCore(ByteView core);

/// An entry as it is stored and sent: the signed bytes, never encoded anew.
struct SignedEntry {
    Bytes core;
    Signature signature;
    Bytes body;

    [[nodiscard]] EntryId id() const;
};

/// The bytes that an entry's signature covers.
[[nodiscard]] Bytes signedMessage(const CellarId& cellar, const EntryId& id);

/// Sign `entry` with `key`, with `body` bound to it; sets device, bodyHash and bodyBytes.
[[nodiscard]] SignedEntry signEntry(Entry entry, ByteView body, const SigningKey& key);

/// Append the wire form of `entry` to `out`: one item of a CBOR sequence (RFC 8742).
void appendWire(Bytes& out, const SignedEntry& entry);

/// Take the next entry off the front of `sequence`.
///
/// Errors    Damaged if there is none, byte for byte.
[[nodiscard]] Result<SignedEntry> takeWire(ByteView& sequence);

}  // namespace spile::ledger
