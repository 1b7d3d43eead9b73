#pragma once

#include "demo/pictures/rgb.hpp"

#include <array>
#include <cmath>
#include <cstddef>

namespace spile::demo {

/// How beer dims light: invented for the demo, no claim.
///
/// Beer and Lambert's law in nine wavelengths, three for each band of an sRGB picture. The
/// absorbance of 1 cm at 430 nm is taken as EBC / 25 and falls by a factor e every 68 nm towards
/// the red; a band passes the mean of its three. The slope was chosen so that the glasses look
/// right from straw to nearly black, and is not a measured spectrum.
class BeerColour {
public:
    explicit BeerColour(double ebc)
    {
        constexpr double slope = 68.0;  // [nm]
        for (std::size_t i = 0; i < wavelengths.size(); ++i) {
            const double absorbancePerCm = ebc / 25.0 * std::exp((430.0 - wavelengths[i]) / slope);
            perMm_[i] = absorbancePerCm * 2.302585092994046 / 10.0;
        }
    }

    /// Return the share of light that passes `path` [mm] of the beer.
    [[nodiscard]] Rgb passed(double path) const
    {
        const auto band = [&](std::size_t first) {
            return (std::exp(-perMm_[first] * path) + std::exp(-perMm_[first + 1] * path) +
                    std::exp(-perMm_[first + 2] * path)) /
                   3.0;
        };
        return {band(0), band(3), band(6)};
    }

    /// Return what comes back from `path` [mm] of haze that scatters `turbid` of the light in each
    /// mm: the haze behind is seen through the beer before it, so that dark beer glows little.
    [[nodiscard]] Rgb scattered(double turbid, double path) const
    {
        const auto band = [&](std::size_t first) {
            const double dimming =
                turbid + (perMm_[first] + perMm_[first + 1] + perMm_[first + 2]) / 3.0;
            return turbid / dimming * (1.0 - std::exp(-dimming * path));
        };
        return {band(0), band(3), band(6)};
    }

private:
    static constexpr std::array<double, 9> wavelengths = {590, 615, 645, 520, 543,
                                                          568, 440, 460, 485};  // [nm]
    std::array<double, 9> perMm_{};
};

}  // namespace spile::demo
