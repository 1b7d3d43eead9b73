#pragma once

#include "core/base/bytes.hpp"
#include "core/base/result.hpp"
#include "core/picture/header.hpp"

namespace spile::picture {

/// Return the JPEG or PNG file `bytes` without the place, the camera and all other metadata. The
/// compressed pixels stay byte for byte; whatever follows the end of the picture goes.
///
/// Shape     kept of a JPEG: the picture's own segments, JFIF without its thumbnail, the colour
///           profile, Adobe's colour transform. Kept of a PNG: critical chunks and tRNS gAMA cHRM
///           sRGB iCCP sBIT bKGD pHYs. An orientation other than 1 is put back alone.
/// Errors    those of readHeader(); Damaged if the file is not whole or a PNG's CRC fails;
///           Unsupported for a PNG with a critical chunk that is not known.
/// Limits    text within a colour profile, or hidden in the pixels, stays.
[[nodiscard]] Result<Bytes> stripMetadata(ByteView bytes, const Limits& limits = {});

}  // namespace spile::picture
