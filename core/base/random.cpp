#include "core/base/random.hpp"

#include <array>
#include <limits>

namespace spile::inline base {

std::uint32_t Random::below(std::uint32_t bound)
{
    // Reject the incomplete last stretch, so that no remainder is favoured.
    constexpr std::uint32_t highest = std::numeric_limits<std::uint32_t>::max();
    const std::uint32_t fair = highest - highest % bound;
    for (;;) {
        std::array<std::uint8_t, 4> bytes{};
        fill(bytes);
        std::uint32_t number = 0;
        for (const std::uint8_t byte : bytes) {
            number = number << 8U | byte;
        }
        if (number < fair) {
            return number % bound;
        }
    }
}

}  // namespace spile::inline base
