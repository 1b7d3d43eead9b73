#pragma once

#include "core/picture/image.hpp"

#include <array>
#include <string_view>

/// Pictures of labels that are damaged or seen at an angle, on top of symbol_pictures.hpp.
namespace spile::support {

/// Cover the modules from (column, row) on of a symbol that drawSymbol() drew with its usual style.
void cover(picture::Image& symbol, int column, int row, int columns, int rows, std::uint8_t level);

/// Return a frame of that level with `symbol` seen so that its corners, quiet zone included, lie at
/// `corners`: x and y of the top left, top right, bottom right, bottom left.
[[nodiscard]] picture::Image seenAt(const picture::Image& symbol,
                                    const std::array<float, 8>& corners, int width, int height,
                                    std::uint8_t level = 90);

/// Blur by the mean of 2 * radius + 1 pixels along rows, as a camera that moves does.
void blurAcross(picture::Image& picture, int radius);

/// The light grey and whole, in which nothing is to be read.
[[nodiscard]] picture::Image noiseOnly(int width, int height, std::uint64_t seed);

}  // namespace spile::support
