#include "core/scan/reader.hpp"
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

}  // namespace spile::scan
