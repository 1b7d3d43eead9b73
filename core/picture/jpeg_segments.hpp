#pragma once

#include "core/base/bytes.hpp"
#include "core/base/result.hpp"

#include <cstddef>
#include <optional>

// Internal to core/picture: a JPEG file as its marker segments, undecoded.
namespace spile::picture {

namespace marker {
inline constexpr std::uint8_t soi = 0xD8;
inline constexpr std::uint8_t eoi = 0xD9;
inline constexpr std::uint8_t sos = 0xDA;
inline constexpr std::uint8_t app0 = 0xE0;
inline constexpr std::uint8_t app1 = 0xE1;
inline constexpr std::uint8_t app2 = 0xE2;
inline constexpr std::uint8_t app14 = 0xEE;
}  // namespace marker

struct JpegSegment {
    std::uint8_t marker = 0;
    ByteView payload;  // without marker and length
    ByteView scan;     // the entropy-coded data that follows an SOS; else empty
};

/// Walks the segments of a JPEG file from its start to its EOI.
class JpegSegments {
public:
    explicit JpegSegments(ByteView file) : file_(file) {}

    /// Return the next segment; none at the EOI.
    ///
    /// Errors    Damaged where the file ends early or has no marker where one belongs.
    /// Source    ISO/IEC 10918-1, section B.1.1.
    [[nodiscard]] Result<std::optional<JpegSegment>> next();

private:
    [[nodiscard]] ByteView takeScan();

    ByteView file_;
    std::size_t at_ = 0;
};

[[nodiscard]] bool isJpeg(ByteView file);
[[nodiscard]] bool startsWith(ByteView bytes, std::string_view text);

/// The TIFF block of `segment` if it is the APP1 of EXIF.
[[nodiscard]] std::optional<ByteView> exifOf(const JpegSegment& segment);

}  // namespace spile::picture
