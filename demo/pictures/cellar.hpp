#pragma once

#include "demo/pictures/noise.hpp"
#include "demo/pictures/rgb.hpp"
#include "demo/pictures/vec3.hpp"

#include <vector>

namespace spile::demo {

/// What lies behind the barrels: a wall lost in the dark, the rack, a far lamp or two. Out of
/// focus, so all its edges are soft.
class Cellar {
public:
    explicit Cellar(SeededRandom& random);

    /// Return the light that comes along a ray from behind the barrels.
    [[nodiscard]] Rgb behind(Vec3 from, Vec3 ray, const Noise& noise) const;

private:
    struct FarLamp {
        double x, y, size, strength;
    };
    std::vector<FarLamp> lamps_;
    double post_;
};

}  // namespace spile::demo
