#pragma once

#include "demo/pictures/lettering.hpp"
#include "demo/pictures/light.hpp"
#include "demo/pictures/noise.hpp"
#include "demo/pictures/rgb.hpp"

namespace spile::demo {

/// What people leave on a head: a burnt sign, a chalk tally, and the nail in the sample hole with
/// the trace that has run down from it.
class Scribbles {
public:
    explicit Scribbles(SeededRandom& random);

    /// Return the light of the head at a place from its centre [mm], with all this over it.
    [[nodiscard]] Rgb over(Rgb wood, double x, double y, const Light& light,
                           const Noise& noise) const;

private:
    void drawSign(SeededRandom& random);
    void drawTally(SeededRandom& random);
    [[nodiscard]] Rgb nail(Rgb wood, double x, double y, const Light& light,
                           const Noise& noise) const;

    InkSheet burnt_;
    InkSheet chalk_;
    double burntX_;
    double chalkX_;
    double chalkY_;
    double nailX_;
    double nailY_;
    double run_;
};

}  // namespace spile::demo
