#pragma once

#include "core/ledger/database.hpp"
#include "core/ledger/entry.hpp"
#include "core/ledger/projection.hpp"
#include "core/ledger/trust.hpp"

#include <optional>
#include <set>
#include <vector>

/// The entries that are set aside stay in the ledger and are handed out like all others; the state
/// is as if they had not come.
namespace spile::ledger {

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
