#include "demo/pictures/noise.hpp"

namespace spile::demo {

double between(SeededRandom& random, double from, double to)
{
    return from + (to - from) * random.unit();
}

double drawnUnless(const std::optional<double>& given, double from, double to, SeededRandom& random)
{
    const double drawn = between(random, from, to);
    return given.value_or(drawn);
}

Noise::Noise(SeededRandom& random) : lattice_(std::size_t{side} * side)
{
    for (float& value : lattice_) {
        value = static_cast<float>(random.unit());
    }
}

}  // namespace spile::demo
