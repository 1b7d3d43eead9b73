#pragma once

#include "core/picture/image.hpp"
#include "core/scan/reader.hpp"

#include <cstdint>
#include <string_view>

/// Pictures of symbols, drawn by ZXing's own writer: for tests and benches only.
namespace spile::support {

struct SymbolStyle {
    scan::Format format = scan::Format::QrCode;
    int pixelsPerModule = 4;
    int quietZone = 4;         // modules
    int quarterTurns = 0;      // clockwise
    std::uint8_t dark = 30;    // luminance of ink
    std::uint8_t light = 220;  // and of paper
    int eccLevel = 8;          // of a QR: 1 to 8, two each for L, M, Q, H
};

/// Draw one symbol with its quiet zone. Requires a text that the format can hold.
[[nodiscard]] picture::Image drawSymbol(std::string_view text, const SymbolStyle& style = {});

/// Return a grey picture of one level.
[[nodiscard]] picture::Image plainPicture(int width, int height, std::uint8_t level = 220);

/// Copy `part` into `whole`, its top left corner at (x, y). Requires it to fit.
void paste(picture::Image& whole, const picture::Image& part, int x, int y);

/// Add normally distributed noise; the same for the same seed.
void addNoise(picture::Image& picture, double deviation, std::uint64_t seed);

/// Darken from left to right, down to `right` of the light at the right edge.
void addGradient(picture::Image& picture, double right);

}  // namespace spile::support
