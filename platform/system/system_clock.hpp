#pragma once

#include "core/base/clock.hpp"

#include <string_view>

namespace spile::system {

/// The clocks of the system.
///
/// Limits    where the system does not name its starts (bootId() then comes from the wall clock
///           less the time since boot, in seconds), setting the wall clock looks like a new start.
/// Threads   any number.
class SystemClock final : public Clock {
public:
    SystemClock();
    [[nodiscard]] Instant now() const override;
    [[nodiscard]] Milliseconds sinceBoot() const override;
    [[nodiscard]] BootId bootId() const override { return bootId_; }

private:
    BootId bootId_;
};

/// Return the id of a start that the system, or we, call `name`.
[[nodiscard]] BootId bootIdFrom(std::string_view name);

}  // namespace spile::system
