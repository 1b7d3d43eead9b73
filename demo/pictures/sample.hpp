#pragma once

#include "core/picture/image.hpp"

#include <cstdint>
#include <optional>

namespace spile::demo {

/// A glass of beer on grey ground, with a white and a grey patch beside it. All of it is invented.
///
/// Whatever is left empty is drawn from the seed, within the ranges named here.
struct SampleScene {
    std::uint64_t seed = 0;
    double colour_ebc = 30.0;  // 10 to 120
    int width = 1200;
    int height = 1600;
    std::optional<double> fill_ml{};         // 160 to 290
    std::optional<double> haze{};            // 0 to 1; 0 bright, 1 cloudy
    std::optional<double> foam{};            // 0 to 1; 0 a few bubbles at the wall, 1 a thin cover
    std::optional<double> light_gradient{};  // 0.2 to 0.8; 0 even, 1 as near a lamp
    std::optional<double> noise{};           // 1.5 to 4, deviation in steps of 255
};

/// Paint the scene: a straight glass without stem, the beer in it, and its coloured shadow.
///
/// Shape     width x height, Rgb8. The same scene gives the same bytes. With all else equal, a
///           higher colour gives a darker beer in every band.
/// Range     Requires sides of at least 16 pixels and a colour above 0; outside 10 to 120 EBC the
///           picture is still made.
/// Accuracy  none claimed: the beer's colour follows a model invented for the demo (beer.hpp).
[[nodiscard]] picture::Image renderSample(const SampleScene& scene);

}  // namespace spile::demo
