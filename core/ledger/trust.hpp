#pragma once

#include "core/ledger/database.hpp"
#include "core/ledger/entry.hpp"

#include <map>
#include <set>
#include <string_view>
#include <vector>

/// Who belongs to the cellar, and which of its entries are set aside: those of a device that was
/// cut off, after the cut, and those of a device that does not belong. All is a function of the
/// entries that are here; FORMAT.md, section 3, has the rule.
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

/// Whether a device belongs to the cellar, and whether it may admit others.
struct Membership {
    bool admitted = false;
    bool mayAdmit = false;
    bool cutOff = false;  // what it records now is set aside

    friend bool operator==(const Membership&, const Membership&) = default;
};

/// What devices may do and which of their entries count, from all entries about it.
struct Standing {
    std::set<DeviceId> members;
    /// Those that an entry admits whose author may; those that were ever admitted as desks.
    std::set<DeviceId> admitted, desks;
    /// Of each device that was cut off: what each cut leaves; none of it if there are no points.
    std::map<DeviceId, std::vector<std::vector<ChainPoint>>> cuts;
    std::set<EntryId> adopted;

    [[nodiscard]] bool limits(const DeviceId& device) const
    {
        return !members.contains(device) || cuts.contains(device);
    }
    /// This device counts its own entries from the start; here it is admitted once its `device`
    /// entry has come.
    [[nodiscard]] Membership membershipOf(const DeviceId& device) const;
};

/// Return it from the entries that are here, of all devices in one pass.
[[nodiscard]] Result<Standing> standingOf(Database& database);

/// Return the rows of the entries of `device` that are set aside, in order.
[[nodiscard]] Result<std::vector<std::int64_t>> rowsSetAside(Database& database,
                                                             const DeviceId& device,
                                                             const Standing& standing);

/// The same of one device: as dear as standingOf(), which is for several.
[[nodiscard]] Result<Membership> membershipOf(Database& database, const DeviceId& device);

}  // namespace spile::ledger
