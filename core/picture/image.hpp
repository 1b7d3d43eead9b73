#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace spile::picture {

enum class PixelFormat : std::uint8_t {
    Grey8,  ///< one byte a pixel: luminance
    Rgb8,   ///< three bytes a pixel: red, green, blue, sRGB-encoded
};

[[nodiscard]] constexpr std::size_t bytesPerPixel(PixelFormat format)
{
    return format == PixelFormat::Grey8 ? 1 : 3;
}

[[nodiscard]] constexpr std::size_t pixelBytes(int width, int height, PixelFormat format)
{
    return static_cast<std::size_t>(width) * static_cast<std::size_t>(height) *
           bytesPerPixel(format);
}

/// Plain pixels, rows from the top, without padding: pixels.size() = width * height * bytes a
/// pixel.
struct Image {
    int width = 0;
    int height = 0;
    PixelFormat format = PixelFormat::Grey8;
    std::vector<std::uint8_t> pixels;

    friend bool operator==(const Image&, const Image&) = default;
};

/// A look at somebody else's luminance plane: one byte every `pixelStride`, rows every `rowStride`
/// bytes. Valid as long as the owner keeps it; nothing is copied.
struct LuminanceView {
    const std::uint8_t* data = nullptr;
    int width = 0;
    int height = 0;
    int rowStride = 0;
    int pixelStride = 1;
};

/// Look at the pixels of `image`, which must outlive the view. A view without data if `image` is
/// not grey: see toGrey().
[[nodiscard]] inline LuminanceView viewOf(const Image& image)
{
    if (image.format != PixelFormat::Grey8) {
        return {};
    }
    return {image.pixels.data(), image.width, image.height, image.width, 1};
}
LuminanceView viewOf(Image&&) = delete;  // it would look at pixels that are gone

}  // namespace spile::picture
