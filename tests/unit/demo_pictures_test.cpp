#include "core/base/simulated.hpp"
#include "core/scan/barrel_code.hpp"
#include "core/scan/reader.hpp"
#include "demo/pictures/head.hpp"
#include "demo/pictures/sample.hpp"

#include <cstdlib>
#include <gtest/gtest.h>
#include <string>
#include <tuple>
#include <vector>

namespace spile::demo {

namespace {

/// Luminance as a camera would hand it to the reader.
std::vector<std::uint8_t> greyOf(const picture::Image& image)
{
    std::vector<std::uint8_t> grey;
    grey.reserve(image.pixels.size() / 3);
    for (std::size_t i = 0; i + 2 < image.pixels.size(); i += 3) {
        const int sum = 77 * image.pixels[i] + 150 * image.pixels[i + 1] + 29 * image.pixels[i + 2];
        grey.push_back(static_cast<std::uint8_t>(sum / 256));
    }
    return grey;
}

HeadScene labelledScene(std::uint64_t seed)
{
    SeededRandom random(1000 + seed);
    const std::string mark = scan::randomMark(random);
    const std::string code = scan::randomCode(mark, random);
    HeadScene scene;
    scene.labelText = scan::labelText({mark, code});
    scene.shownCode = scan::shown(code);
    scene.mark = "Rum " + std::to_string(seed);
    scene.seed = seed;
    return scene;
}

HeadScene smallScene(std::uint64_t seed)
{
    HeadScene scene = labelledScene(5);
    scene.seed = seed;
    scene.width = 200;
    scene.height = 150;
    return scene;
}

/// Return how many of the head's two symbols are read, all with the text that was asked for.
int symbolsRead(const HeadScene& scene)
{
    const picture::Image image = renderHead(scene);
    const std::vector<std::uint8_t> grey = greyOf(image);
    const auto codes = scan::readPicture({grey.data(), image.width, image.height, image.width, 1});
    if (!codes) {
        ADD_FAILURE() << codes.error().subject << ": " << codes.error().value;
        return 0;
    }
    for (const scan::Code& code : *codes) {
        EXPECT_EQ(code.text, scene.labelText);
    }
    return static_cast<int>(codes->size());
}

/// Return the mean of all bands in a square in the middle of the glass's beer.
double beerBrightness(const picture::Image& image)
{
    double sum = 0.0;
    int count = 0;
    for (int y = image.height * 55 / 100; y < image.height * 60 / 100; ++y) {
        for (int x = image.width * 30 / 100; x < image.width * 36 / 100; ++x) {
            const auto i =
                3 * (static_cast<std::size_t>(y) * static_cast<std::size_t>(image.width) +
                     static_cast<std::size_t>(x));
            sum += image.pixels[i] + image.pixels[i + 1] + image.pixels[i + 2];
            count += 3;
        }
    }
    return sum / count;
}

SampleScene smallSample(std::uint64_t seed, double colour)
{
    SampleScene scene;
    scene.seed = seed;
    scene.colour_ebc = colour;
    scene.width = 240;
    scene.height = 320;
    return scene;
}

}  // namespace

TEST(RenderHead, GivesTheSameBytesForTheSameScene)
{
    const picture::Image first = renderHead(smallScene(3));
    const picture::Image second = renderHead(smallScene(3));
    EXPECT_EQ(first.width, 200);
    EXPECT_EQ(first.height, 150);
    EXPECT_EQ(first.format, picture::PixelFormat::Rgb8);
    ASSERT_EQ(first.pixels.size(), 200U * 150U * 3U);
    EXPECT_EQ(first.pixels, second.pixels);
}

TEST(RenderHead, DiffersBetweenSeedsAndBetweenLabels)
{
    EXPECT_NE(renderHead(smallScene(3)).pixels, renderHead(smallScene(4)).pixels);
    HeadScene renamed = smallScene(3);
    renamed.mark = "Rye 9";
    EXPECT_NE(renderHead(smallScene(3)).pixels, renderHead(renamed).pixels);
}

// What is given must not shift what is drawn: the same barrel, only with more noise.
TEST(RenderHead, KeepsTheRestWhenOneThingIsGiven)
{
    HeadScene quiet = smallScene(6);
    quiet.noise = 2.0;
    HeadScene loud = smallScene(6);
    loud.noise = 4.0;
    const picture::Image a = renderHead(quiet);
    const picture::Image b = renderHead(loud);
    int sum = 0;
    for (std::size_t i = 0; i < a.pixels.size(); ++i) {
        sum += std::abs(int{a.pixels[i]} - int{b.pixels[i]});
    }
    EXPECT_GT(sum, 0);
    EXPECT_LT(sum, static_cast<int>(3 * a.pixels.size()));
}

// Apart, so that a run on several cores spreads them.
class RenderHeadOfSeed : public testing::TestWithParam<std::uint64_t> {};

TEST_P(RenderHeadOfSeed, ReadsBackFromBothSymbols)
{
    EXPECT_EQ(symbolsRead(labelledScene(GetParam())), 2);
}

INSTANTIATE_TEST_SUITE_P(Drawn, RenderHeadOfSeed, testing::Range<std::uint64_t>(100, 124));

// Far and near, straight and tilted, even and uneven light, all with the most noise and blur.
class RenderHeadAtCorner : public testing::TestWithParam<std::tuple<double, double, double>> {};

TEST_P(RenderHeadAtCorner, ReadsBack)
{
    const auto [distance, tilt, gradient] = GetParam();
    HeadScene scene = labelledScene(200);
    scene.distance_m = distance;
    scene.tilt_deg = tilt;
    scene.light_gradient = gradient;
    scene.noise = 5.0;
    scene.blur = 0.95;
    EXPECT_GE(symbolsRead(scene), 1);
}

INSTANTIATE_TEST_SUITE_P(Drawn, RenderHeadAtCorner,
                         testing::Combine(testing::Values(0.52, 0.80), testing::Values(0.0, 28.0),
                                          testing::Values(0.25, 0.9)));

TEST(RenderSample, GivesTheSameBytesForTheSameScene)
{
    const picture::Image first = renderSample(smallSample(2, 30.0));
    EXPECT_EQ(first.pixels, renderSample(smallSample(2, 30.0)).pixels);
    EXPECT_EQ(first.pixels.size(), 240U * 320U * 3U);
    EXPECT_NE(first.pixels, renderSample(smallSample(3, 30.0)).pixels);
}

TEST(RenderSample, IsDarkerTheHigherTheColour)
{
    for (std::uint64_t seed = 1; seed <= 6; ++seed) {
        SCOPED_TRACE(seed);
        double lighter = 256.0;
        for (const double colour : {10.0, 20.0, 30.0, 45.0, 60.0, 80.0, 100.0, 120.0}) {
            SCOPED_TRACE(colour);
            const double brightness = beerBrightness(renderSample(smallSample(seed, colour)));
            EXPECT_LT(brightness, lighter - 1.0);
            lighter = brightness;
        }
    }
}

// The darkest glass still mirrors the room, so it is not black.
TEST(RenderSample, SpansFromStrawToDarkBrown)
{
    SampleScene pale = smallSample(1, 10.0);
    pale.haze = 0.0;
    SampleScene dark = smallSample(1, 120.0);
    dark.haze = 0.0;
    EXPECT_GT(beerBrightness(renderSample(pale)), 2.0 * beerBrightness(renderSample(dark)));
}

}  // namespace spile::demo
