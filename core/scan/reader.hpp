#pragma once

#include "core/base/result.hpp"
// The one exception to "siblings do not see each other": image.hpp is plain data without code
// of its own to link, and a view of pixels is what a picture and a camera frame have in common.
#include "core/picture/image.hpp"
#include "core/scan/barrel_code.hpp"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace spile::scan {

enum class Format : std::uint8_t { QrCode, DataMatrix, Code128 };

/// A place in a picture: pixels from the left and from the top.
struct Point {
    int x = 0;
    int y = 0;

    friend bool operator==(const Point&, const Point&) = default;
};

/// A symbol that was read, its own error correction or check satisfied.
struct Code {
    std::string text;  // UTF-8
    Format format = Format::QrCode;
    /// Top left, top right, bottom right, bottom left as the symbol itself sees it. A Code 128
    /// has the ends of the line that was read, so its corners may span no height.
    std::array<Point, 4> corners;

    friend bool operator==(const Code&, const Code&) = default;
};

/// The views that are read: sides of at most this, and all rows within 2^31 - 1 bytes.
inline constexpr int longestViewSide = 32768;

/// Find the QR codes, Data Matrices and at most one Code 128 of a still picture.
///
/// Shape     ordered from the middle of the picture outward; each symbol once.
/// Range     any `pixelStride` >= 1 and `rowStride` >= width * pixelStride.
/// Errors    OutOfRange for a view without pixels or with strides that contradict its size;
///           Unsupported if the library gives up. No code found is an empty list, not an error.
/// Limits    one Code 128, since ZXing 1.4 can abort on several (see reader.cpp), and one Data
///           Matrix, which 1.4 only finds where a line through the picture's middle crosses it.
[[nodiscard]] Result<std::vector<Code>> readPicture(const picture::LuminanceView& view);

/// Return `codes` without those that repeat an earlier one: same text, same format, and a centre
/// within the other's box, as when a symbol is found again at another size of the picture.
[[nodiscard]] std::vector<Code> withoutRepeats(std::vector<Code> codes);

/// Find one QR code in a live frame: first in its middle, then anywhere. None if there is none or
/// the view is one that readPicture() refuses: the next frame comes soon.
[[nodiscard]] std::optional<Code> readFrame(const picture::LuminanceView& frame);

/// Read `code` as a label of ours. None unless it is a QR code whose text passes parseLabelText().
[[nodiscard]] std::optional<LabelText> ownLabel(const Code& code);

}  // namespace spile::scan
