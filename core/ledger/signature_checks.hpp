#pragma once

#include "core/base/ids.hpp"
#include "core/base/result.hpp"
#include "core/ledger/keys.hpp"

#include <cstdint>
#include <deque>
#include <future>
#include <string>
#include <vector>

namespace spile::ledger {

/// Return how people are told of an entry: its device, shortened, and its number there.
[[nodiscard]] std::string placeOf(const DeviceId& device, std::uint64_t seq);

/// Checks the signatures of many entries on all cores: most of what verifying a day file costs.
///
/// Errors    Damaged, naming the first entry whose signature does not hold; from the add() or the
///           finish() that comes to know of it.
class SignatureChecks {
public:
    struct One {
        PublicKey key;
        CellarId cellar;
        EntryId id;
        Signature signature;
        DeviceId device;
        std::uint64_t seq = 0;
    };

    [[nodiscard]] Result<void> add(const One& one);
    /// Wait until all that was added has been checked.
    [[nodiscard]] Result<void> finish();

private:
    void send();
    [[nodiscard]] Result<void> awaitOldest();

    std::vector<One> batch_;
    std::deque<std::future<Result<void>>> sent_;  // each waits in its destructor too
};

}  // namespace spile::ledger
