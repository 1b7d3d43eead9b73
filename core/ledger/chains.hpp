#pragma once

#include "core/ledger/database.hpp"
#include "core/ledger/entry.hpp"
#include "core/ledger/photo_store.hpp"
#include "core/ledger/projection.hpp"
#include "core/ledger/set_aside.hpp"

#include <string>
#include <unordered_map>
#include <vector>

/// How entries come to count: each device's chain, and which devices are admitted.
namespace spile::ledger {

/// Kinds and fields that the ledger itself acts on; the cellar's table of kinds has them too.
inline constexpr const char* genesisKind = "genesis";
inline constexpr const char* deviceKind = "device";
namespace trust_field {
inline constexpr std::uint32_t name = 1;
inline constexpr std::uint32_t mark = 2;
inline constexpr std::uint32_t publicKey = 3;
inline constexpr std::uint32_t role = 4;
inline constexpr std::uint32_t chainPoints = 90;
inline constexpr std::uint32_t before = 91;
}  // namespace trust_field

/// What an admitted device may do: a desk may admit others.
enum class DeviceRole : std::int64_t { Desk = 1, Phone = 2 };

/// The newest entry of a branch of a device's chain.
struct Head {
    DeviceId device;
    std::uint64_t seq = 0;
    EntryId id;
    friend auto operator<=>(const Head&, const Head&) = default;
};

/// An entry that is decoded and verified, but not yet stored.
struct VerifiedEntry {
    SignedEntry entry;
    EntryId id;
    Entry core;
};

enum class Arrival : std::uint8_t {
    Known,    ///< it was here, counted or waiting
    Counted,  ///< stored and folded into the state
    Waiting,  ///< stored, until its device is admitted or the entry before it comes
};

/// How far a pass over what waits has come: device by device, along their chains.
struct WaitingPlace {
    DeviceId device;
    std::uint64_t seq = 0;
    std::int64_t n = 0;
};

/// Works inside the caller's transaction. Keeps the heads it met in memory until settle() writes
/// them; forget() after a rollback.
class Chains {
public:
    Chains(Database& database, Projection& projection, const PhotoStore& photos)
        : database_(database),
          projection_(projection),
          photos_(photos),
          setAside_(database, projection)
    {
    }

    /// Store an entry that came from elsewhere.
    [[nodiscard]] Result<Arrival> arrive(const VerifiedEntry& entry);
    /// Store an entry that this device has just made, at the head of its own chain.
    [[nodiscard]] Result<void> appendOwn(const VerifiedEntry& entry);
    /// Let entries count that wait after `from` and can by now, about `limit`: it ends between two
    /// taps. `from` is where to go on then. Return how many did; 0: there are no more after it.
    [[nodiscard]] Result<std::int64_t> linkWaiting(std::int64_t limit, WaitingPlace& from);

    /// Note a device and, if given, its key; return its row. Its entries do not count by this.
    [[nodiscard]] Result<std::int64_t> knowDevice(const DeviceId& device,
                                                  const std::optional<PublicKey>& key);
    /// Let a device's entries count here, and let it admit others if `admits`.
    [[nodiscard]] Result<void> trust(const DeviceId& device, bool admits);

    /// Return the heads of all chains, sorted by device.
    [[nodiscard]] Result<std::vector<Head>> heads();
    /// Return the newest entries of the branches of one device, in order.
    [[nodiscard]] Result<std::vector<Head>> headsOf(const DeviceId& device);
    /// Return the newest entry of `device` with the longest chain; none if it has none.
    [[nodiscard]] Result<std::optional<Head>> headOf(const DeviceId& device);

    /// Make heads anew that are not the newest entries of their chain any more, and forget devices
    /// that there are not: what a damaged disk leaves.
    [[nodiscard]] Result<void> mendHeads();
    /// Make anew which entries are set aside; the state is to be made anew after it.
    [[nodiscard]] Result<void> renewSetAside();
    /// Write the heads and let the projection finish. Before each commit.
    [[nodiscard]] Result<void> settle();
    void forget();

private:
    struct Chain {
        std::int64_t d = 0;
        bool trusted = false;
        std::vector<Head> heads;
        std::int64_t branches = 0;  // as stored
        bool changed = false;
    };
    [[nodiscard]] Result<Chain*> chainOf(const DeviceId& device);
    [[nodiscard]] Result<bool> isCounted(const Chain& chain, std::uint64_t seq, const EntryId& id);
    [[nodiscard]] Result<void> readHeads(const DeviceId& device, Chain& chain);
    [[nodiscard]] Result<void> headsFromEntries(const DeviceId& device, Chain& chain);
    [[nodiscard]] Result<bool> isLinked(const Chain& chain, const Entry& core);
    [[nodiscard]] Result<bool> count(Chain& chain, const VerifiedEntry& entry);
    [[nodiscard]] Result<void> notePhotos(std::int64_t n, const Entry& core);
    [[nodiscard]] Result<void> spreadTrust();
    [[nodiscard]] Result<bool> admitFromEntries();
    struct SoundRow {
        std::int64_t n = 0;  // of table waiting
        VerifiedEntry entry;
    };
    [[nodiscard]] Result<std::vector<WaitingPlace>> waitingAfter(const WaitingPlace& from);
    [[nodiscard]] Result<bool> mayLink(const Chain& chain, std::uint64_t seq);
    [[nodiscard]] Result<std::optional<VerifiedEntry>> soundOf(std::int64_t n);
    [[nodiscard]] Result<std::optional<SoundRow>> soundAfter(const VerifiedEntry& before);
    [[nodiscard]] Result<std::vector<SoundRow>> wholeTap(SoundRow first);
    [[nodiscard]] Result<std::int64_t> linkTap(const WaitingPlace& place);
    [[nodiscard]] Result<void> writeHeads();
    [[nodiscard]] Result<bool> anyWaiting();

    Database& database_;
    Projection& projection_;
    const PhotoStore& photos_;
    SetAside setAside_;
    std::unordered_map<DeviceId, Chain, IdHash> chains_;
    std::optional<bool> anyWaiting_;  // none: not asked yet
};

}  // namespace spile::ledger
