#pragma once

#include "core/base/simulated.hpp"

#include <optional>
#include <vector>

namespace spile::demo {

/// Return a number in [from, to).
[[nodiscard]] double between(SeededRandom& random, double from, double to);

/// Return `given`, or if there is none a number in [from, to). Draws in both cases, so that what is
/// drawn afterwards stays the same.
[[nodiscard]] double drawnUnless(const std::optional<double>& given, double from, double to,
                                 SeededRandom& random);

/// A field of smooth random values, the stuff that grain, stains and grime are made of.
class Noise {
public:
    explicit Noise(SeededRandom& random);

    /// Return the value at a place: in [0, 1], one new value a unit, repeating after 256 units.
    [[nodiscard]] double at(double x, double y) const;
    /// Return a sum of `octaves` fields, each twice as fine and half as strong: in [0, 1].
    [[nodiscard]] double fractal(double x, double y, int octaves) const;

private:
    static constexpr unsigned side = 256;  // a power of two, so that wrapping is a mask
    std::vector<float> lattice_;
};

// Both stand in the header to be inlined: they are the innermost loop of every picture.

inline double Noise::at(double x, double y) const
{
    // std::floor is a call on plain x86-64.
    const auto floored = [](double value) {
        const int whole = static_cast<int>(value);
        return value < whole ? whole - 1 : whole;
    };
    const int column = floored(x);
    const int row = floored(y);
    const double u = x - column;
    const double v = y - row;
    const unsigned left = static_cast<unsigned>(column) % side;
    const unsigned right = (left + 1) % side;
    const unsigned top = static_cast<unsigned>(row) % side;
    const unsigned bottom = (top + 1) % side;
    const auto value = [&](unsigned r, unsigned c) {
        return static_cast<double>(lattice_[std::size_t{r} * side + c]);
    };
    const double across = u * u * (3.0 - 2.0 * u);
    const double down = v * v * (3.0 - 2.0 * v);
    const double upper = value(top, left) + across * (value(top, right) - value(top, left));
    const double lower =
        value(bottom, left) + across * (value(bottom, right) - value(bottom, left));
    return upper + down * (lower - upper);
}

inline double Noise::fractal(double x, double y, int octaves) const
{
    double sum = 0.0;
    double total = 0.0;
    double weight = 1.0;
    for (int i = 0; i < octaves; ++i) {
        sum += weight * at(x, y);
        total += weight;
        weight *= 0.5;
        // Turned and shifted, or the lattice would show as edges along x and y.
        const double turned = 1.6 * x - 1.2 * y + 17.3;
        y = 1.2 * x + 1.6 * y + 41.9;
        x = turned;
    }
    return sum / total;
}

}  // namespace spile::demo
