#pragma once

#include "core/picture/image.hpp"

namespace spile::scan {

/// What the middle of a frame is like, whatever it shows.
struct FrameQuality {
    double mean = 0;   // level
    double noise = 0;  // standard deviation in levels, of its calmer parts
    double edgeWidth =
        0;  // whole pixels over which the typical strong edge rises; 0 without such edges

    [[nodiscard]] bool isDim() const { return mean < 60 || noise > 7; }
    /// Frames in focus have 1 to 3.
    [[nodiscard]] bool isBlurred() const { return edgeWidth >= 4; }
};

[[nodiscard]] FrameQuality qualityOf(const picture::LuminanceView& frame);

}  // namespace spile::scan
