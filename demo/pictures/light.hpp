#pragma once

#include "demo/pictures/rgb.hpp"
#include "demo/pictures/vec3.hpp"

#include <algorithm>
#include <cmath>

namespace spile::demo {

/// One lamp and the light that the room gives back.
struct Light {
    Vec3 lamp;              // where it hangs [mm]
    double unevenness = 0;  // 0: as strong everywhere; 1: falls with the square of the distance
    double reference = 1;   // the distance at which both are alike [mm]
    Rgb lampColour{1.0, 0.90, 0.75};
    Rgb roomColour{0.20, 0.19, 0.19};

    /// Return the light that a matt surface sends out.
    ///
    /// Range     `normal` of length 1; `open`, the share of the room it sees, and `unshaded`, the
    ///           share of the lamp, in [0, 1].
    [[nodiscard]] Rgb on(Rgb albedo, Vec3 place, Vec3 normal, double open, double unshaded) const
    {
        return albedo * (open * roomColour + (unshaded * facing(place, normal)) * lampColour);
    }

    /// Return the highlight of the lamp on a surface between dull (4) and polished (100).
    [[nodiscard]] double glint(Vec3 place, Vec3 normal, Vec3 toEye, double polish) const
    {
        const Vec3 half = unitOf(unitOf(lamp - place) + toEye);
        return std::pow(std::max(0.0, dot(half, normal)), polish) * strength(place);
    }

private:
    [[nodiscard]] double strength(Vec3 place) const
    {
        const double far = length(lamp - place) / reference;
        return mix(1.0, std::min(1.0 / (far * far), 4.0), unevenness);
    }
    [[nodiscard]] double facing(Vec3 place, Vec3 normal) const
    {
        return std::max(0.0, dot(unitOf(lamp - place), normal)) * strength(place);
    }
};

}  // namespace spile::demo
