#include "core/scan/frame_passes.hpp"

#include "core/scan/code_order.hpp"
#include "core/scan/zxing_reading.hpp"

#include <algorithm>

namespace spile::scan {

using picture::LuminanceView;

namespace {

constexpr int mostPixels = 3'000'000;  // of a frame that is searched as a whole at its full size
constexpr std::uint8_t mostBeside = 8;

Part partOf(const LuminanceView& frame, int width, int height)
{
    const Point topLeft{(frame.width - width) / 2, (frame.height - height) / 2};
    LuminanceView view = frame;
    view.data +=
        std::ptrdiff_t{topLeft.y} * frame.rowStride + std::ptrdiff_t{topLeft.x} * frame.pixelStride;
    view.width = width;
    view.height = height;
    return {view, topLeft};
}

std::vector<Code> placed(std::vector<Code> codes, Point topLeft, double scale)
{
    placeInWhole(codes, topLeft, scale);
    return codes;
}

}  // namespace

Part middleOf(const LuminanceView& frame)
{
    return partOf(frame, std::min(frame.width, std::clamp(frame.width / 2, 960, 1280)),
                  std::min(frame.height, std::clamp(frame.height / 2, 540, 720)));
}

std::vector<Code> FramePasses::plainMiddle(const View& frame)
{
    const Part middle = middleOf(frame);
    return placed(readByZxing(middle.view, {.most = mostBeside, .alsoSmaller = false}),
                  middle.topLeft, 1);
}

std::vector<Code> FramePasses::plainWhole(const View& frame)
{
    const Wanted wanted{.most = mostBeside};
    if (frame.width * frame.height <= mostPixels) {
        return withoutRepeats(readByZxing(frame, wanted));
    }
    halve(frame, first_);
    return placed(withoutRepeats(readByZxing(first_.view(), wanted)), {}, 2);
}

std::vector<Code> FramePasses::othersInMiddle(const View& frame)
{
    const Part middle = partOf(frame, std::min(frame.width, 640), std::min(frame.height, 360));
    auto codes = readByZxing(middle.view, {.kind = Kind::DataMatrix, .alsoSmaller = false});
    if (codes.empty()) {
        codes = readByZxing(middle.view, {.kind = Kind::Code128});
    }
    return placed(std::move(codes), middle.topLeft, 1);
}

std::vector<Code> FramePasses::sharpenedMiddle(const View& frame)
{
    const Part middle = middleOf(frame);
    gather(middle.view, first_);
    twice(first_, second_);
    sharpen(second_, 4, first_);
    return placed(readByZxing(first_.view(), {.alsoSmaller = false}), middle.topLeft, 0.5);
}

std::vector<Code> FramePasses::thresholdedMiddle(const View& frame)
{
    const Part middle = middleOf(frame);
    gather(middle.view, first_);
    smooth(first_, second_);
    smooth(second_, first_);
    darkMap_.mark(first_, 16, 8, second_);
    for (std::uint8_t& pixel : second_.pixels) {
        pixel = pixel != 0 ? 0 : 255;
    }
    return placed(readByZxing(second_.view(), {.alsoSmaller = false, .isBlackAndWhite = true}),
                  middle.topLeft, 1);
}

std::vector<Code> FramePasses::redrawnMiddle(const View& frame)
{
    const Part middle = middleOf(frame);
    return placed(redrawer_.read(middle.view), middle.topLeft, 1);
}

std::vector<Code> FramePasses::redrawnTogether(std::span<const float> softs, const View& frame)
{
    auto code = redrawer_.readTogether(softs);
    if (!code) {
        return {};
    }
    code->corners = unread().corners;
    return placed({std::move(*code)}, middleOf(frame).topLeft, 1);
}

std::vector<Code> FramePasses::redrawnWhole(const View& frame)
{
    halve(frame, first_);
    double scale = 2;
    while (first_.width * first_.height > mostPixels / 3) {
        halve(first_.view(), second_);
        std::swap(first_, second_);
        scale *= 2;
    }
    return placed(redrawer_.read(first_.view()), {}, scale);
}

}  // namespace spile::scan
