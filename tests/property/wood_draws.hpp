#pragma once

#include "core/wood/loss_band.hpp"

#include <array>
#include <cmath>
#include <limits>
#include <rapidcheck.h>
#include <tuple>
#include <vector>

/// Barrels, liquors and climates that nobody picked.
namespace spile::wood {

inline rc::Gen<double> between(double least, double most)
{
    constexpr int whole = 1'000'000'000;
    return rc::gen::map(rc::gen::inRange(0, whole + 1), [=](int n) {
        return least + (most - least) * (static_cast<double>(n) / whole);
    });
}

inline rc::Gen<double> anyDouble()
{
    using Limits = std::numeric_limits<double>;
    return rc::gen::oneOf(
        rc::gen::arbitrary<double>(), between(-2, 2), between(-50, 1100), between(0, 1e-8),
        rc::gen::element(Limits::quiet_NaN(), Limits::infinity(), -Limits::infinity(), -0.0, 0.0,
                         1.0, 0.026, 1.83, 200.0, 258.15, 288.15, 318.15, 2e-10, 1e-8,
                         Limits::max(), Limits::lowest(), Limits::denorm_min()));
}

/// Beer and spirit, 300 to 600 L: no barrel of anyWood() dries them up in 200 days.
inline rc::Gen<liquor::Liquor> anyLiquor()
{
    return rc::gen::map(rc::gen::tuple(between(300, 600), between(0, 0.7), between(0, 25)),
                        [](const auto& drawn) {
                            return liquor::liquorOf(litres(std::get<0>(drawn)), std::get<1>(drawn),
                                                    std::get<2>(drawn))
                                .value();
                        });
}

inline rc::Gen<Wood> anyWood()
{
    return rc::gen::map(rc::gen::tuple(between(0.3, 4), between(0.012, 0.035),
                                       between(0.5e-10, 5e-10), between(0.01, 0.1)),
                        [](const auto& drawn) {
                            return Wood{squareMetres(std::get<0>(drawn)),
                                        metres(std::get<1>(drawn)), std::get<2>(drawn),
                                        std::get<3>(drawn)};
                        });
}

inline rc::Gen<Climate> anyClimate()
{
    return rc::gen::map(rc::gen::tuple(between(0, 35), between(0, 1)), [](const auto& drawn) {
        return Climate{celsius(std::get<0>(drawn)), std::get<1>(drawn)};
    });
}

inline rc::Gen<std::vector<Climate>> anyDays(std::size_t least, std::size_t most)
{
    return rc::gen::mapcat(rc::gen::inRange(least, most + 1), [](std::size_t count) {
        return rc::gen::container<std::vector<Climate>>(count, anyClimate());
    });
}

/// The same climate each day.
inline std::vector<Climate> steady(const Climate& climate, std::size_t count)
{
    std::vector<Climate> days;
    days.resize(count, climate);
    return days;
}

}  // namespace spile::wood
