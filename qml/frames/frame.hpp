#pragma once

#include "core/picture/image.hpp"

#include <memory>

namespace spile::frames {

/// A frame of a camera that is still to be looked at.
///
/// Threads   made and offered in any; looked at and then destroyed in a thread of the pool, so that
///           mapping it and reading it never hold up who offers it.
class Frame {
public:
    Frame() = default;
    virtual ~Frame() = default;
    Frame(const Frame&) = delete;
    Frame& operator=(const Frame&) = delete;
    Frame(Frame&&) = delete;
    Frame& operator=(Frame&&) = delete;

    /// Look at its luminance, which stays as long as the frame. A view without pixels if its form
    /// is not read. Called once.
    [[nodiscard]] virtual picture::LuminanceView luminance() = 0;
};

/// Make a frame of a grey picture.
[[nodiscard]] std::unique_ptr<Frame> frameOf(picture::Image picture);

}  // namespace spile::frames
