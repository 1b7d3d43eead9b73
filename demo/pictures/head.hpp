#pragma once

#include "core/picture/image.hpp"

#include <cstdint>
#include <optional>
#include <string>

namespace spile::demo {

/// A barrel's head with its label, as a phone might take it in a cellar. All of it is invented.
///
/// Whatever is left empty is drawn from the seed, within the ranges named here; within them every
/// label reads (tests/unit/demo_pictures_test.cpp).
struct HeadScene {
    std::string labelText;  // what the two symbols hold: scan::labelText()
    std::string shownCode;  // what people read: scan::shown()
    std::string mark;       // the brewer's own, for example "Rum 3"
    std::uint64_t seed = 0;
    int width = 1600;
    int height = 1200;
    std::optional<double> distance_m{};      // 0.52 to 0.80
    std::optional<double> tilt_deg{};        // 0 to 28, about an axis drawn from the seed
    std::optional<double> roll_deg{};        // -9 to 9
    std::optional<double> light_gradient{};  // 0.25 to 0.9; 0 even, 1 as near a lamp
    std::optional<double> noise{};           // 1.5 to 5, deviation in steps of 255
    std::optional<double> blur{};            // 0.55 to 0.95, deviation in pixels
};

/// Paint the scene: boards, rim, hoop, neighbours in the dark, and the label plate.
///
/// Shape     width x height, Rgb8. The same scene gives the same bytes.
/// Range     Requires a `labelText` that scan::makeQr() takes, sides of at least 16 pixels, a
///           distance above 0.3, a tilt in [0, 60], the rest >= 0. A mark of more than about
///           15 letters comes out small.
/// Accuracy  none claimed: a picture to look at and to scan, not a measurement of anything.
[[nodiscard]] picture::Image renderHead(const HeadScene& scene);

}  // namespace spile::demo
