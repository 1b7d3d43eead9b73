#pragma once

#include "core/base/bytes.hpp"
#include "core/picture/image.hpp"

#include <vector>

namespace spile::support {

/// Return a film of `frames`: an AVI file of JPEG pictures, with an index.
///
/// Range     requires at least one frame, all Rgb8 and of one size; 1 to 60 `framesPerSecond`.
/// Source    Microsoft, "AVI RIFF File Reference", and Multimedia Programming Interface 1.0
///           (1991) for RIFF.
[[nodiscard]] Bytes filmOf(const std::vector<picture::Image>& frames, int framesPerSecond);

}  // namespace spile::support
