#include "qml/viewmodels/interruption.hpp"

#include <utility>

namespace spile::viewmodels {

void Interruption::begin()
{
    if (!began_) {
        began_ = Moment{clock_.now(), clock_.sinceBoot(), clock_.bootId()};
    }
}

std::optional<Gap> Interruption::end()
{
    const auto began = std::exchange(began_, std::nullopt);
    if (!began) {
        return std::nullopt;
    }
    const Milliseconds byWall = clock_.now() - began->wall;
    Gap gap{byWall, Milliseconds(0)};
    if (clock_.bootId() == began->bootId) {
        gap.away = clock_.sinceBoot() - began->boot;
        const Milliseconds jump = byWall - gap.away;
        gap.clockJump = std::chrono::abs(jump) >= smallestJump ? jump : Milliseconds(0);
    }
    if (gap.away < shortest && gap.clockJump == Milliseconds(0)) {
        return std::nullopt;
    }
    return gap;
}

}  // namespace spile::viewmodels
