#pragma once

#include "core/base/clock.hpp"

#include <optional>

namespace spile::viewmodels {

/// What happened between two looks at the clocks.
struct Gap {
    Milliseconds away{0};       ///< real time, by the clock that runs since the machine started
    Milliseconds clockJump{0};  ///< by how much the wall clock was set meanwhile; 0 if not
};

/// Notices when the app was away and whether the wall clock was changed meanwhile.
class Interruption {
public:
    /// A pause shorter than this is not worth a word; a wall clock may drift by less than that.
    static constexpr Milliseconds shortest = std::chrono::seconds(2);
    static constexpr Milliseconds smallestJump = std::chrono::minutes(1);

    explicit Interruption(const Clock& clock) : clock_(clock) {}

    void begin();
    /// None if there was no pause, or too short a one. After a new start of the machine the time
    /// away is the wall clock's, and no jump can be told.
    [[nodiscard]] std::optional<Gap> end();

private:
    struct Moment {
        Instant wall;
        Milliseconds boot;
        BootId bootId;
    };

    const Clock& clock_;
    std::optional<Moment> began_;
};

}  // namespace spile::viewmodels
