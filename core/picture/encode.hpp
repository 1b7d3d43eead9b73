#pragma once

#include "core/base/bytes.hpp"
#include "core/base/result.hpp"
#include "core/picture/image.hpp"

namespace spile::picture {

/// Write `image` as a JPEG file without metadata; the same bytes for the same image and library.
///
/// Range     `quality` 1 (small) to 100 (near the original); colour is kept at half resolution.
/// Errors    OutOfRange for another quality, a side not in [1, longestSide], or pixels that do not
///           fit the size; Storage if the library gives up, which leaves nothing behind.
[[nodiscard]] Result<Bytes> encodeJpeg(const Image& image, int quality);

/// Write `image` as a PNG file without metadata, without loss; the same bytes for the same image
/// and library.
///
/// Errors    as encodeJpeg().
[[nodiscard]] Result<Bytes> encodePng(const Image& image);

}  // namespace spile::picture
