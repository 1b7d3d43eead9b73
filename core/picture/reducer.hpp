#pragma once

#include "core/picture/image.hpp"

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

// Internal to core/picture: brings rows to another size while they arrive, so that only the smaller
// picture is ever held.
namespace spile::picture {

/// Averages over areas: each pixel of the result is the mean of what it covers of the source,
/// rounded half up. In whole numbers, so the same on every machine.
class Reducer {
public:
    /// Requires sides in [1, 65535].
    Reducer(int sourceWidth, int sourceHeight, Image target);

    /// Take the next row of the source, of the target's format.
    void addRow(std::span<const std::uint8_t> row);
    /// Return the result after the last row.
    [[nodiscard]] Image take() { return std::move(target_); }

private:
    void sumRow(std::span<const std::uint8_t> row);
    void finishRow();

    std::uint64_t sourceWidth_;
    std::uint64_t sourceHeight_;
    Image target_;
    std::size_t channels_;
    std::uint64_t sourceRow_ = 0;
    std::uint64_t targetRow_ = 0;
    std::vector<std::uint64_t> rowSums_;  // of the source row, over each target pixel's width
    std::vector<std::uint64_t> sums_;     // of the target row so far
};

/// Return an image of zeros.
[[nodiscard]] Image blankImage(int width, int height, PixelFormat format);

}  // namespace spile::picture
