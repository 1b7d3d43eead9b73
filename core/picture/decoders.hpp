#pragma once

#include "core/picture/decode.hpp"

// Internal to core/picture: one decoder for each kind of file. Both give the image as stored,
// brought down to options.maxSide; `header` is what readHeader() said of `bytes`.
namespace spile::picture {

[[nodiscard]] Result<Image> decodeJpeg(ByteView bytes, const Header& header,
                                       const DecodeOptions& options);
[[nodiscard]] Result<Image> decodePng(ByteView bytes, const Header& header,
                                      const DecodeOptions& options);

}  // namespace spile::picture
