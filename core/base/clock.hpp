#pragma once

#include "core/base/ids.hpp"
#include "core/base/time.hpp"

namespace spile::inline base {

using BootId = ByteId<struct BootKind, 8>;  ///< differs after every start of the machine

/// The clocks of this machine. Core reads time from nowhere else.
class Clock {
public:
    virtual ~Clock() = default;
    /// The wall clock as the device shows it; may be wrong, may jump.
    [[nodiscard]] virtual Instant now() const = 0;
    /// Time since this machine started, sleep included; never goes back within one BootId.
    [[nodiscard]] virtual Milliseconds sinceBoot() const = 0;
    [[nodiscard]] virtual BootId bootId() const = 0;
};

}  // namespace spile::inline base
