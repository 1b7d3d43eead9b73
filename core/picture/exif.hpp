#pragma once

#include "core/base/bytes.hpp"

// Internal to core/picture: the one EXIF field that the app reads.
namespace spile::picture {

/// Return the orientation that the TIFF block `tiff` of EXIF data states: 1 to 8, and 1 if there is
/// none or the block is nonsense, since a picture is worth more than its metadata.
[[nodiscard]] int orientationOf(ByteView tiff);

/// Return a TIFF block that states nothing but `orientation`. Requires 1 to 8.
[[nodiscard]] Bytes tiffWithOrientation(int orientation);

}  // namespace spile::picture
