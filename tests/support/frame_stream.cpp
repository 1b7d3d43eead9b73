#include "tests/support/frame_stream.hpp"

#include <algorithm>
#include <stdexcept>
#include <utility>

namespace spile::support {

// As scan_generator.py's write_frame() writes them; the machine is little-endian, as it says.
struct Header {
    std::array<char, 4> magic;
    std::int32_t width, height, seed, frame;
    std::array<std::int32_t, 8> corners;
    std::int32_t textLength;
};
static_assert(sizeof(Header) == 56);

FrameStream::FrameStream(const std::string& arguments)
    : pipe_(popen(
          (std::string(SPILE_SOURCE_DIR "/tests/support/scan_generator.py --stream ") + arguments)
              .c_str(),
          "r"))
{
    if (!pipe_) {
        throw std::runtime_error("the generator of frames does not start");
    }
}

void FrameStream::Closer::operator()(std::FILE* pipe) const { pclose(pipe); }

bool FrameStream::next(DrawnFrame& frame)
{
    constexpr int longest = 10000;
    Header header;
    const std::size_t got = std::fread(&header, 1, sizeof header, pipe_.get());
    if (got == 0) {
        std::FILE* pipe = pipe_.release();
        if (pclose(pipe) != 0) {
            throw std::runtime_error("the generator of frames failed");
        }
        return false;
    }
    const auto isSound = [&] {
        return got == sizeof header && header.magic == std::array{'S', 'P', 'F', 'R'} &&
               header.width > 0 && header.width <= longest && header.height > 0 &&
               header.height <= longest && header.textLength >= 0 && header.textLength <= longest;
    };
    if (!isSound()) {
        throw std::runtime_error("the generator of frames sent something else");
    }
    frame.seed = header.seed;
    frame.frame = header.frame;
    std::transform(header.corners.begin(), header.corners.end(), frame.corners.begin(),
                   [](std::int32_t tenths) { return static_cast<float>(tenths) / 10; });
    frame.text.resize(static_cast<std::size_t>(header.textLength));
    frame.image.width = header.width;
    frame.image.height = header.height;
    frame.image.format = picture::PixelFormat::Grey8;
    frame.image.pixels.resize(
        picture::pixelBytes(header.width, header.height, picture::PixelFormat::Grey8));
    if (std::fread(frame.text.data(), 1, frame.text.size(), pipe_.get()) != frame.text.size() ||
        std::fread(frame.image.pixels.data(), 1, frame.image.pixels.size(), pipe_.get()) !=
            frame.image.pixels.size()) {
        throw std::runtime_error("the generator of frames stopped amid a frame");
    }
    return true;
}

}  // namespace spile::support
