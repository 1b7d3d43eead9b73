#pragma once

#include "core/base/bytes.hpp"
#include "core/base/result.hpp"
#include "core/picture/header.hpp"
#include "core/picture/image.hpp"

namespace spile::picture {

struct DecodeOptions {
    PixelFormat format = PixelFormat::Rgb8;
    int maxSide = 4096;  ///< of the result; a larger picture is brought down to it, never up
    Limits limits = {};
};

/// Decode the JPEG or PNG file `bytes`, turned as its EXIF orientation asks.
///
/// Shape     sides of fitted() of the header's size, swapped if the orientation swaps them.
/// Range     `maxSide` in [1, 32768].
/// Errors    those of readHeader(); OutOfRange for another `maxSide`; Damaged for every file whose
///           pixels are not whole, also where the library would guess on; TooLarge if a progressive
///           JPEG has too many scans, or it or an interlaced PNG needs more than
///           `limits.workingBytes`, since these cannot be read row by row.
/// Limits    transparent pixels are shown on white; colour profiles are not applied. A flipped bit
///           within a JPEG's data may decode to wrong pixels: only a hash can tell.
[[nodiscard]] Result<Image> decode(ByteView bytes, const DecodeOptions& options = {});

}  // namespace spile::picture
