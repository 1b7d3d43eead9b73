#pragma once

#include "core/blend/blend.hpp"

#include <vector>

namespace spile::blend {

/// The best blends of a search, one of each set of barrels.
class BestKept {
public:
    explicit BestKept(std::size_t most);

    /// What a blend must beat to be kept; infinite as long as there is room.
    [[nodiscard]] double limit() const { return limit_; }
    [[nodiscard]] bool isEmpty() const { return kept_.empty(); }
    /// The least distance; infinite if there is none.
    [[nodiscard]] double best() const;
    /// Keep it if it is good enough. True if it is the best so far.
    bool offer(Blend blend);
    /// The kept ones, the least distance first.
    [[nodiscard]] std::vector<Blend> taken() &&;

private:
    std::size_t most_;
    double limit_;
    std::vector<Blend> kept_;
};

}  // namespace spile::blend
