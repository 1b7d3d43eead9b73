#pragma once

#include "core/ledger/database.hpp"
#include "core/ledger/entry.hpp"
#include "core/ledger/projection.hpp"

#include <map>
#include <optional>
#include <set>
#include <vector>

/// Which counted entries are set aside: those of a device that was cut off, after the cut, and
/// those of a device that does not belong. They stay in the ledger and are handed out like all
/// others; the state is as if they had not come. FORMAT.md, section 3, has the rule.
namespace spile::ledger {

inline constexpr const char* cutOffKind = "cut_off";
inline constexpr const char* adoptKind = "adopt";
inline constexpr const char* reinstateKind = "reinstate";
inline constexpr const char* renewKind = "renew";  // a device goes on with a new key

/// Whether entries of that kind change who belongs or what is set aside.
[[nodiscard]] bool isTrustKind(std::string_view kind);

/// An entry of a chain up to which a cut leaves it.
struct ChainPoint {
    std::uint64_t seq = 0;
    EntryId entry;
};

/// What devices may do and which of their entries count, from all entries about it.
struct Standing {
    std::set<DeviceId> members;
    /// Of each device that was cut off: what each cut leaves; none of it if there are no points.
    std::map<DeviceId, std::vector<std::vector<ChainPoint>>> cuts;
    std::set<EntryId> adopted;

    [[nodiscard]] bool limits(const DeviceId& device) const
    {
        return !members.contains(device) || cuts.contains(device);
    }
};

/// Return it from the entries that are here.
[[nodiscard]] Result<Standing> standingOf(Database& database);

/// Return the rows of the entries of `device` that are set aside, in order.
[[nodiscard]] Result<std::vector<std::int64_t>> rowsSetAside(Database& database,
                                                             const DeviceId& device,
                                                             const Standing& standing);

/// Keeps table `set_aside` and the state in step with the entries. Works inside the caller's
/// transaction.
class SetAside {
public:
    SetAside(Database& database, Projection& projection)
        : database_(database), projection_(projection)
    {
    }

    /// Whether a new entry of the device in row `d` is to be held back until settle() has looked.
    [[nodiscard]] Result<bool> limits(std::int64_t d);
    [[nodiscard]] Result<void> holdBack(std::int64_t n, std::int64_t d);
    /// An entry of a kind for which isTrustKind() came.
    void trustChanged() { changed_ = true; }

    /// Before each commit.
    [[nodiscard]] Result<void> settle();
    /// Make the table anew and leave the state alone, which is to be made anew after it.
    [[nodiscard]] Result<void> renew();
    void forget();

private:
    struct Device {
        std::int64_t d = 0;
        DeviceId device;
        bool limited = false;
    };
    [[nodiscard]] Result<void> settleDevice(const Device& device, const Standing& standing);
    [[nodiscard]] Result<void> withdraw(std::int64_t n, std::int64_t d);
    [[nodiscard]] Result<void> release(std::int64_t n);
    [[nodiscard]] Result<std::vector<Device>> devices();
    [[nodiscard]] Result<void> mark(const Device& device, bool limited);

    Database& database_;
    Projection& projection_;
    std::optional<std::set<std::int64_t>> limited_;  // none: not asked yet
    bool changed_ = false;
};

}  // namespace spile::ledger
