#pragma once

#include "core/base/result.hpp"
#include "core/picture/image.hpp"

namespace spile::picture {

/// The longest side of an image that these functions make or take.
inline constexpr int longestSide = 32768;

struct Size {
    int width = 0;
    int height = 0;

    friend bool operator==(const Size&, const Size&) = default;
};

/// Return `size` brought down, in proportion, to a longer side of at most `maxSide`; never up.
///
/// Range     both sides at least 1 in and out. Requires `maxSide` >= 1.
[[nodiscard]] Size fitted(Size size, int maxSide);

/// Return `image` in another size, each pixel the mean of the area it covers.
///
/// Errors    OutOfRange if a side of `size` or `image` is not in [1, longestSide], or `image` has
///           other pixels than its size needs.
/// Limits    averages the encoded values, as cameras do, not the light.
[[nodiscard]] Result<Image> resized(const Image& image, Size size);

/// Return `image` as it is to be seen if it was stored under the EXIF `orientation`.
///
/// Range     `orientation` 1 to 8; any other leaves the image as it is.
/// Requires  an image that has the pixels its size needs.
/// Source    CIPA DC-008 (EXIF 2.3), tag 0x0112: 3 is turned by 180 degrees, 6 by 90 clockwise, 8
///           by 270; 2, 4, 5 and 7 are mirrored too.
[[nodiscard]] Image oriented(Image image, int orientation);

/// Return the luminance of `image`, as in a camera's Y plane. Requires the pixels its size needs.
///
/// Source    ITU-R BT.601: 0.299 R + 0.587 G + 0.114 B, rounded.
[[nodiscard]] Image toGrey(const Image& image);

/// The luminance of one pixel, as toGrey().
[[nodiscard]] constexpr std::uint8_t luminance(std::uint8_t red, std::uint8_t green,
                                               std::uint8_t blue)
{
    return static_cast<std::uint8_t>((299 * red + 587 * green + 114 * blue + 500) / 1000);
}

/// Check that `image` has sides in [1, longestSide] and the pixels that its size needs.
///
/// Errors    OutOfRange.
[[nodiscard]] Result<void> checkSound(const Image& image);

}  // namespace spile::picture
