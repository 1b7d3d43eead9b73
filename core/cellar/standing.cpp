#include "core/cellar/standing.hpp"

namespace spile::cellar {

Standing standingOf(const BarrelRow& barrel, Instant now)
{
    constexpr auto week = std::chrono::days(7);
    if (barrel.due && *barrel.due <= now) {
        return now - *barrel.due > week ? Standing::Overdue : Standing::Due;
    }
    if (barrel.filled && barrel.verdict == "hold") {
        return Standing::Held;
    }
    return barrel.due && *barrel.due - now <= week ? Standing::Soon : Standing::Resting;
}

}  // namespace spile::cellar
