#include "core/base/simulated.hpp"
#include "core/scan/live_reader.hpp"
#include "core/scan/reader.hpp"
#include "tests/support/damaged_labels.hpp"
#include "tests/support/symbol_pictures.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace spile::scan {

using picture::LuminanceView;

RC_GTEST_PROP(ReadPicture, AnswersAnyBytesInAnyShape, ())
{
    const int pixelStride = *rc::gen::inRange(1, 5);
    const int width = *rc::gen::inRange(1, 70);
    const int height = *rc::gen::inRange(1, 70);
    const int rowStride = width * pixelStride + *rc::gen::inRange(0, 9);
    const auto plane = *rc::gen::container<std::vector<std::uint8_t>>(
        static_cast<std::size_t>(rowStride) * static_cast<std::size_t>(height),
        rc::gen::arbitrary<std::uint8_t>());
    const LuminanceView view{plane.data(), width, height, rowStride, pixelStride};
    RC_ASSERT(readPicture(view).has_value());
    const auto code = readFrame(view);
    RC_ASSERT((!code || code->format == Format::QrCode));
}

// No pixel may be touched: the view that is refused points nowhere.
RC_GTEST_PROP(ReadPicture, RefusesContradictingViewsUntouched,
              (int width, int height, int rowStride, int pixelStride))
{
    RC_PRE((width <= 0 || height <= 0 || pixelStride <= 0 ||
            rowStride < std::int64_t{width} * pixelStride));
    const std::uint8_t pixel = 0;
    const LuminanceView view{&pixel, width, height, rowStride, pixelStride};
    RC_ASSERT(!readPicture(view).has_value());
    RC_ASSERT(!readFrame(view).has_value());
}

// Damage over a symbol: the text is right or there is none, since error correction decides.
RC_GTEST_PROP(ReadPicture, NeverMisreadsADamagedLabel, ())
{
    const std::string text = "S1K4TN7K2QFM";
    picture::Image image = support::drawSymbol(text);
    const int side = *rc::gen::inRange(1, 100);
    support::paste(image, support::plainPicture(side, side, *rc::gen::arbitrary<std::uint8_t>()),
                   *rc::gen::inRange(0, image.width - side),
                   *rc::gen::inRange(0, image.height - side));
    support::addNoise(image, *rc::gen::inRange(0, 60), *rc::gen::arbitrary<std::uint64_t>());
    const auto codes =
        readPicture({image.pixels.data(), image.width, image.height, image.width, 1});
    RC_ASSERT(codes.has_value());
    for (const Code& code : *codes) {
        RC_ASSERT((code.format != Format::QrCode || code.text == text));
    }
}

// Frame after frame by one reader, from any angle: the right text or none, from the first to the
// last of a burst.
RC_GTEST_PROP(LiveReader, NeverMisreadsADamagedLabelAtAnAngle, ())
{
    SeededRandom random(*rc::gen::arbitrary<std::uint32_t>());
    const std::string mark = randomMark(random);
    const std::string text = labelText({mark, randomCode(mark, random)});
    picture::Image symbol = support::drawSymbol(text, {.dark = 60, .light = 190});
    for (int patches = *rc::gen::inRange(0, 4); patches > 0; --patches) {
        const int side = *rc::gen::inRange(1, 16);
        support::cover(symbol, *rc::gen::inRange(-4, 30 - side), *rc::gen::inRange(-4, 30 - side),
                       side, side, *rc::gen::arbitrary<std::uint8_t>());
    }
    const auto beside = [] { return static_cast<float>(*rc::gen::inRange(-25, 26)); };
    const float left = 60 + beside();
    const float right = 200 + beside();
    picture::Image frame = support::seenAt(
        symbol,
        {left, 60 + beside(), right, 60 + beside(), right, 200 + beside(), left, 200 + beside()},
        280, 270);
    support::blurAcross(frame, *rc::gen::inRange(0, 4));
    LiveReader reader;
    const int noise = *rc::gen::inRange(0, 40);
    for (std::uint64_t i = 0; i < 4; ++i) {
        picture::Image noisy = frame;
        support::addNoise(noisy, noise, i);
        for (const Code& code : reader.look(viewOf(noisy)).codes) {
            RC_ASSERT((code.format != Format::QrCode || code.text == text));
        }
    }
}

RC_GTEST_PROP(LiveReader, AnswersAnyBytesInAnyShape, ())
{
    static LiveReader reader;  // of views of all sizes, one after another
    const int pixelStride = *rc::gen::inRange(1, 4);
    const int width = *rc::gen::inRange(1, 120);
    const int height = *rc::gen::inRange(1, 120);
    const int rowStride = width * pixelStride + *rc::gen::inRange(0, 9);
    std::vector<std::uint8_t> plane(
        static_cast<std::size_t>((height - 1) * rowStride + (width - 1) * pixelStride + 1));
    SeededRandom(*rc::gen::arbitrary<std::uint32_t>()).fill(plane);
    const LuminanceView view{plane.data(), width, height, rowStride, pixelStride};
    for (const Code& code : reader.look(view).codes) {
        RC_ASSERT((code.format != Format::QrCode));  // noise is no label
    }
}

// Strides change nothing.
RC_GTEST_PROP(LiveReader, SeesTheSameInAnyStride, ())
{
    picture::Image symbol = support::drawSymbol("S1K4TN7K2QFM");
    support::cover(symbol, -1, -1, 9, 9, 60);
    picture::Image frame = support::plainPicture(300, 260, 90);
    support::paste(frame, symbol, *rc::gen::inRange(5, 160), *rc::gen::inRange(5, 120));
    support::addNoise(frame, 4, 1);
    const int pixelStride = *rc::gen::inRange(2, 5);
    const int rowStride = frame.width * pixelStride + *rc::gen::inRange(0, 9);
    std::vector<std::uint8_t> plane(static_cast<std::size_t>(rowStride * frame.height), 255);
    for (int y = 0; y < frame.height; ++y) {
        for (int x = 0; x < frame.width; ++x) {
            plane[static_cast<std::size_t>(y * rowStride + x * pixelStride)] =
                frame.pixels[static_cast<std::size_t>(y * frame.width + x)];
        }
    }
    const auto codes = LiveReader().look(viewOf(frame)).codes;
    RC_ASSERT(codes.size() == 1);
    RC_ASSERT((LiveReader()
                   .look({plane.data(), frame.width, frame.height, rowStride, pixelStride})
                   .codes == codes));
}

}  // namespace spile::scan
