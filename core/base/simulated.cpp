#include "core/base/simulated.hpp"

#include <cmath>
#include <numbers>

namespace spile::inline base {

std::uint64_t SeededRandom::next()
{
    state_ += 0x9e3779b97f4a7c15ULL;
    std::uint64_t z = state_;
    z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9ULL;
    z = (z ^ (z >> 27U)) * 0x94d049bb133111ebULL;
    return z ^ (z >> 31U);
}

void SeededRandom::fill(std::span<std::uint8_t> bytes)
{
    while (!bytes.empty()) {
        std::uint64_t word = next();
        const std::size_t count = std::min<std::size_t>(bytes.size(), sizeof word);
        for (std::size_t i = 0; i < count; ++i) {
            bytes[i] = static_cast<std::uint8_t>(word & 0xffU);
            word >>= 8U;
        }
        bytes = bytes.subspan(count);
    }
}

double SeededRandom::unit() { return static_cast<double>(next() >> 11U) * 0x1p-53; }

double SeededRandom::normal(double mean, double deviation)
{
    // Box and Muller 1958; 1 - unit() lies in (0, 1], so that the logarithm is finite.
    const double radius = std::sqrt(-2.0 * std::log(1.0 - unit()));
    return mean + deviation * radius * std::cos(2.0 * std::numbers::pi * unit());
}

}  // namespace spile::inline base
