#include "core/picture/transform.hpp"

#include <gtest/gtest.h>

namespace spile::picture {

static Image grey(int width, int height, std::vector<std::uint8_t> pixels)
{
    return {width, height, PixelFormat::Grey8, std::move(pixels)};
}

TEST(Oriented, FollowsTheExifNames)
{
    // EXIF 2.3, tag 0x0112: where the stored row 0 and column 0 are to be seen.
    const Image stored = grey(3, 2, {1, 2, 3, 4, 5, 6});
    EXPECT_EQ(oriented(stored, 1), stored);                          // top, left
    EXPECT_EQ(oriented(stored, 2), grey(3, 2, {3, 2, 1, 6, 5, 4}));  // top, right
    EXPECT_EQ(oriented(stored, 3), grey(3, 2, {6, 5, 4, 3, 2, 1}));  // bottom, right
    EXPECT_EQ(oriented(stored, 4), grey(3, 2, {4, 5, 6, 1, 2, 3}));  // bottom, left
    EXPECT_EQ(oriented(stored, 5), grey(2, 3, {1, 4, 2, 5, 3, 6}));  // left, top
    EXPECT_EQ(oriented(stored, 6), grey(2, 3, {4, 1, 5, 2, 6, 3}));  // right, top
    EXPECT_EQ(oriented(stored, 7), grey(2, 3, {6, 3, 5, 2, 4, 1}));  // right, bottom
    EXPECT_EQ(oriented(stored, 8), grey(2, 3, {3, 6, 2, 5, 1, 4}));  // left, bottom
    EXPECT_EQ(oriented(stored, 0), stored);
    EXPECT_EQ(oriented(stored, 9), stored);
}

TEST(Oriented, KeepsTheColoursOfAPixelTogether)
{
    const Image stored{1, 2, PixelFormat::Rgb8, {1, 2, 3, 4, 5, 6}};
    EXPECT_EQ(oriented(stored, 6), (Image{2, 1, PixelFormat::Rgb8, {4, 5, 6, 1, 2, 3}}));
}

TEST(Fitted, KeepsProportionAndNeverGrows)
{
    EXPECT_EQ(fitted({4000, 3000}, 1000), (Size{1000, 750}));
    EXPECT_EQ(fitted({3000, 4000}, 1000), (Size{750, 1000}));
    EXPECT_EQ(fitted({400, 300}, 1000), (Size{400, 300}));
    EXPECT_EQ(fitted({1000, 1}, 10), (Size{10, 1}));
    EXPECT_EQ(fitted({5, 3}, 1), (Size{1, 1}));
    EXPECT_EQ(fitted({1000, 995}, 100), (Size{100, 100}));  // 99.5 rounds up
}

TEST(Resized, AveragesTheAreaThatAPixelCovers)
{
    EXPECT_EQ(resized(grey(4, 2, {0, 10, 20, 30, 40, 50, 60, 71}), {2, 1}).value(),
              grey(2, 1, {25, 45}));  // 45.25
    // 3 to 2: each covers one and a half; (2 * 30 + 60) / 3 and (60 + 2 * 120) / 3.
    EXPECT_EQ(resized(grey(3, 1, {30, 60, 120}), {2, 1}).value(), grey(2, 1, {40, 100}));
    EXPECT_EQ(resized(grey(1, 3, {30, 60, 120}), {1, 2}).value(), grey(1, 2, {40, 100}));
    EXPECT_EQ(resized(grey(2, 1, {0, 1}), {1, 1}).value(), grey(1, 1, {1}));  // a half rounds up
}

TEST(Resized, GrowsByRepetition)
{
    EXPECT_EQ(resized(grey(2, 1, {7, 9}), {4, 2}).value(), grey(4, 2, {7, 7, 9, 9, 7, 7, 9, 9}));
}

TEST(Resized, KeepsColoursApart)
{
    const Image image{2, 1, PixelFormat::Rgb8, {0, 100, 200, 10, 110, 210}};
    EXPECT_EQ(resized(image, {1, 1}).value(), (Image{1, 1, PixelFormat::Rgb8, {5, 105, 205}}));
}

TEST(Resized, RefusesUnsoundImagesAndSizes)
{
    EXPECT_EQ(resized(grey(2, 2, {1, 2, 3}), {1, 1}).error().subject, "image pixels");
    EXPECT_EQ(resized(grey(0, 2, {}), {1, 1}).error().subject, "image size");
    EXPECT_EQ(resized(grey(1, 1, {1}), {0, 1}).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(resized(grey(1, 1, {1}), {1, 32769}).error().code, ErrorCode::OutOfRange);
}

TEST(ViewOf, IsOfGreyImagesOnly)
{
    const Image image = grey(3, 2, {1, 2, 3, 4, 5, 6});
    const LuminanceView view = viewOf(image);
    EXPECT_EQ(view.data, image.pixels.data());
    EXPECT_EQ(view.width, 3);
    EXPECT_EQ(view.height, 2);
    EXPECT_EQ(view.rowStride, 3);
    EXPECT_EQ(view.pixelStride, 1);
    const Image colour{1, 1, PixelFormat::Rgb8, {1, 2, 3}};
    EXPECT_EQ(viewOf(colour).data, nullptr);
}

TEST(ToGrey, LeavesGreyAlone)
{
    const Image image = grey(3, 1, {1, 128, 255});
    EXPECT_EQ(toGrey(image), image);
    const Image colour{3, 1, PixelFormat::Rgb8, {1, 1, 1, 128, 128, 128, 255, 255, 255}};
    EXPECT_EQ(toGrey(colour), image);
}

}  // namespace spile::picture
