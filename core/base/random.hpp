#pragma once

#include <cstdint>
#include <span>

namespace spile::inline base {

/// Unpredictable bytes, for keys, ids and codes. Core takes entropy from nowhere else.
class Random {
public:
    virtual ~Random() = default;
    virtual void fill(std::span<std::uint8_t> bytes) = 0;

    /// Return a number in [0, `bound`), each equally likely. Requires `bound` > 0.
    [[nodiscard]] std::uint32_t below(std::uint32_t bound);
};

}  // namespace spile::inline base
