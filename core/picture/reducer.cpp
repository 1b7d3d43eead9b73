#include "core/picture/reducer.hpp"

#include <algorithm>
#include <utility>

namespace spile::picture {

Reducer::Reducer(int sourceWidth, int sourceHeight, Image target)
    : sourceWidth_(static_cast<std::uint64_t>(sourceWidth)),
      sourceHeight_(static_cast<std::uint64_t>(sourceHeight)),
      target_(std::move(target)),
      channels_(bytesPerPixel(target_.format)),
      rowSums_(pixelBytes(target_.width, 1, target_.format)),
      sums_(rowSums_.size())
{
}

// Both directions count in units in which a source pixel is as long as the target has pixels and a
// target pixel as long as the source has: all borders are then whole numbers.
void Reducer::sumRow(std::span<const std::uint8_t> row)
{
    const auto sourceLength = static_cast<std::uint64_t>(target_.width);
    const std::uint64_t targetLength = sourceWidth_;
    std::fill(rowSums_.begin(), rowSums_.end(), 0);
    std::size_t target = 0;
    for (std::size_t source = 0; source < sourceWidth_; ++source) {
        std::uint64_t from = source * sourceLength;
        const std::uint64_t end = from + sourceLength;
        while (from < end) {
            const std::uint64_t to = std::min(end, (target + 1) * targetLength);
            for (std::size_t channel = 0; channel < channels_; ++channel) {
                rowSums_[target * channels_ + channel] +=
                    (to - from) * row[source * channels_ + channel];
            }
            from = to;
            target += to == (target + 1) * targetLength ? 1U : 0U;
        }
    }
}

void Reducer::finishRow()
{
    // Never 0, since no header with an empty side passes; the analyser cannot know.
    const std::uint64_t area = std::max<std::uint64_t>(1, sourceWidth_ * sourceHeight_);
    const std::size_t start = targetRow_ * sums_.size();
    for (std::size_t i = 0; i < sums_.size(); ++i) {
        target_.pixels[start + i] = static_cast<std::uint8_t>((sums_[i] + area / 2) / area);
    }
    std::fill(sums_.begin(), sums_.end(), 0);
    ++targetRow_;
}

void Reducer::addRow(std::span<const std::uint8_t> row)
{
    const auto targetHeight = static_cast<std::uint64_t>(target_.height);
    if (sourceWidth_ == static_cast<std::uint64_t>(target_.width) &&
        sourceHeight_ == targetHeight) {
        std::copy_n(
            row.begin(), rowSums_.size(),
            target_.pixels.begin() + static_cast<std::ptrdiff_t>(sourceRow_ * rowSums_.size()));
        ++sourceRow_;
        return;
    }
    sumRow(row);
    std::uint64_t from = sourceRow_ * targetHeight;
    const std::uint64_t end = from + targetHeight;
    while (from < end) {
        const std::uint64_t to = std::min(end, (targetRow_ + 1) * sourceHeight_);
        for (std::size_t i = 0; i < sums_.size(); ++i) {
            sums_[i] += (to - from) * rowSums_[i];
        }
        from = to;
        if (to == (targetRow_ + 1) * sourceHeight_) {
            finishRow();
        }
    }
    ++sourceRow_;
}

Image blankImage(int width, int height, PixelFormat format)
{
    return {width, height, format, std::vector<std::uint8_t>(pixelBytes(width, height, format))};
}

}  // namespace spile::picture
