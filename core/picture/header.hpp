#pragma once

#include "core/base/bytes.hpp"
#include "core/base/result.hpp"

#include <cstdint>

namespace spile::picture {

/// What is refused before any pixel is decoded. A caller may tighten it.
struct Limits {
    std::uint64_t bytes = std::uint64_t{64} << 20;          ///< of the file
    std::uint64_t pixels = 200'000'000;                     ///< of the picture
    int side = 32768;                                       ///< width and height
    int scans = 100;                                        ///< of a JPEG; cameras write 1 to 10
    std::uint64_t workingBytes = std::uint64_t{256} << 20;  ///< for what cannot be read row by row
};

enum class FileFormat : std::uint8_t { Jpeg, Png };

/// What a picture file says of itself before its pixels.
struct Header {
    FileFormat format = FileFormat::Jpeg;
    int width = 0;   ///< as stored, before `orientation` is applied
    int height = 0;  ///< as stored, before `orientation` is applied
    int orientation = 1;

    friend bool operator==(const Header&, const Header&) = default;
};

/// Read the header of the JPEG or PNG file `bytes`; no pixel is decoded.
///
/// Range     `orientation` is 1 to 8 as in EXIF, and 1 if none or nonsense is stated.
/// Errors    Unsupported for another kind of file, or a kind of JPEG that no camera makes
///           (lossless, 12 bits, CMYK); Damaged if it ends or contradicts itself before the size
///           is known; TooLarge if it is over `limits`.
/// Source    ISO/IEC 10918-1, annex B; W3C PNG, third edition, section 11; CIPA DC-008 (EXIF 2.3),
///           tag 0x0112.
[[nodiscard]] Result<Header> readHeader(ByteView bytes, const Limits& limits = {});

}  // namespace spile::picture
