#include "core/base/simulated.hpp"
#include "core/picture/decode.hpp"
#include "core/picture/encode.hpp"
#include "core/picture/metadata.hpp"
#include "core/picture/reducer.hpp"
#include "core/picture/transform.hpp"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <numeric>
#include <rapidcheck/gtest.h>

namespace spile::picture {

static rc::Gen<Image> anyImage(int maxSide)
{
    return rc::gen::map(rc::gen::tuple(rc::gen::inRange(1, maxSide), rc::gen::inRange(1, maxSide),
                                       rc::gen::element(PixelFormat::Grey8, PixelFormat::Rgb8),
                                       rc::gen::arbitrary<std::uint64_t>()),
                        [](const std::tuple<int, int, PixelFormat, std::uint64_t>& t) {
                            Image image =
                                blankImage(std::get<0>(t), std::get<1>(t), std::get<2>(t));
                            SeededRandom(std::get<3>(t)).fill(image.pixels);
                            return image;
                        });
}

static Bytes anyFile()
{
    const Image image = *anyImage(24);
    return *rc::gen::arbitrary<bool>() ? encodeJpeg(image, *rc::gen::inRange(1, 101)).value()
                                       : encodePng(image).value();
}

// Change, drop or insert a few bytes.
static void damage(Bytes& file)
{
    const int times = *rc::gen::inRange(1, 4);
    for (int i = 0; i < times && !file.empty(); ++i) {
        const auto place = file.begin() + *rc::gen::inRange<std::ptrdiff_t>(
                                              0, static_cast<std::ptrdiff_t>(file.size()));
        switch (*rc::gen::inRange(0, 3)) {
            case 0:
                *place = *rc::gen::oneOf(rc::gen::arbitrary<std::uint8_t>(),
                                         rc::gen::element<std::uint8_t>(0, 0xFF));
                break;
            case 1:
                file.erase(place);
                break;
            default:
                file.insert(place, *rc::gen::arbitrary<std::uint8_t>());
        }
    }
}

RC_GTEST_PROP(EncodePng, LosesNothing, ())
{
    const Image image = *anyImage(40);
    RC_ASSERT((decode(encodePng(image).value(), {.format = image.format}) == image));
}

RC_GTEST_PROP(EncodeJpeg, KeepsTheSize, ())
{
    const Image image = *anyImage(40);
    const auto decoded = decode(encodeJpeg(image, *rc::gen::inRange(1, 101)).value());
    RC_ASSERT(decoded.has_value());
    RC_ASSERT(decoded->width == image.width);
    RC_ASSERT(decoded->height == image.height);
}

RC_GTEST_PROP(Decode, AnswersDamagedFilesWithASoundImageOrAnError, ())
{
    Bytes file = anyFile();
    damage(file);
    const DecodeOptions options{.maxSide = 20, .limits = {.pixels = 1'000'000}};
    const auto header = readHeader(file, options.limits);
    const auto image = decode(file, options);
    RC_ASSERT((header || !image));
    if (image) {
        RC_ASSERT(checkSound(*image).has_value());
        RC_ASSERT(std::max(image->width, image->height) <= 20);
    }
}

RC_GTEST_PROP(Decode, AnswersAnyBytesBehindASignature, (const Bytes& bytes))
{
    Bytes file =
        *rc::gen::element(Bytes{0xFF, 0xD8, 0xFF}, Bytes{0x89, 'P', 'N', 'G', 13, 10, 26, 10});
    file.insert(file.end(), bytes.begin(), bytes.end());
    RC_ASSERT(!decode(file).has_value());
    RC_ASSERT(!stripMetadata(file).has_value());
}

RC_GTEST_PROP(StripMetadata, ChangesNoPixelAndNothingTheSecondTime, ())
{
    const Bytes file = anyFile();
    const Bytes plain = stripMetadata(file).value();
    RC_ASSERT((decode(plain) == decode(file)));
    RC_ASSERT((stripMetadata(plain) == plain));
}

RC_GTEST_PROP(StripMetadata, ShowsADamagedFileAsItWasOrRefusesIt, ())
{
    Bytes file = anyFile();
    damage(file);
    const auto plain = stripMetadata(file);
    if (plain) {
        const auto before = decode(file);
        const auto after = decode(*plain);
        RC_ASSERT((!before || before == after));
    }
}

RC_GTEST_PROP(Oriented, IsUndoneByItsInverse, ())
{
    const Image image = *anyImage(30);
    const int orientation = *rc::gen::inRange(1, 9);
    const int inverse = orientation == 6 ? 8 : orientation == 8 ? 6 : orientation;
    RC_ASSERT((oriented(oriented(image, orientation), inverse) == image));
}

RC_GTEST_PROP(Resized, StaysBetweenDarkestAndLightest, ())
{
    const Image image = toGrey(*anyImage(30));
    const Size size{*rc::gen::inRange(1, 40), *rc::gen::inRange(1, 40)};
    const Image other = resized(image, size).value();
    const auto [low, high] = std::minmax_element(image.pixels.begin(), image.pixels.end());
    for (const std::uint8_t pixel : other.pixels) {
        RC_ASSERT(pixel >= *low);
        RC_ASSERT(pixel <= *high);
    }
}

RC_GTEST_PROP(Resized, KeepsTheMean, ())
{
    const Image image = toGrey(*anyImage(30));
    const Size size{*rc::gen::inRange(1, image.width + 1), *rc::gen::inRange(1, image.height + 1)};
    const Image other = resized(image, size).value();
    const auto mean = [](const Image& of) {
        return std::accumulate(of.pixels.begin(), of.pixels.end(), 0.0) /
               static_cast<double>(of.pixels.size());
    };
    RC_ASSERT(std::abs(mean(image) - mean(other)) <= 0.5);  // each pixel rounds by half at most
}

}  // namespace spile::picture
