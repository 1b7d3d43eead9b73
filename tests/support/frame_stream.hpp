#pragma once

#include "core/picture/image.hpp"

#include <array>
#include <cstdint>
#include <cstdio>
#include <memory>
#include <string>

namespace spile::support {

/// A frame that scan_generator.py drew, and what is on it.
struct DrawnFrame {
    picture::Image image;
    std::string text;
    int seed = 0;
    int frame = -1;                  // of a burst, or -1
    std::array<float, 8> corners{};  // x and y: top left, top right, bottom right, bottom left
};

/// Frames as they come from scan_generator.py --stream, which runs beside.
class FrameStream {
public:
    /// Start the generator with these arguments, as a shell reads them.
    explicit FrameStream(const std::string& arguments);

    /// Wait for the next frame and put it into `frame`, whose memory is used again. False at the
    /// end; throws std::runtime_error if the generator fails or its output is cut short.
    bool next(DrawnFrame& frame);

private:
    struct Closer {
        void operator()(std::FILE* pipe) const;
    };
    std::unique_ptr<std::FILE, Closer> pipe_;
};

}  // namespace spile::support
