#include "core/picture/encode.hpp"
#include "core/picture/reducer.hpp"

#include <gtest/gtest.h>

namespace spile::picture {

static Image stripes(int width, int height, PixelFormat format)
{
    Image image = blankImage(width, height, format);
    for (std::size_t i = 0; i < image.pixels.size(); ++i) {
        image.pixels[i] = static_cast<std::uint8_t>(i * 37 % 251);
    }
    return image;
}

TEST(Encode, GivesTheSameBytesForTheSameImage)
{
    const Image image = stripes(64, 48, PixelFormat::Rgb8);
    EXPECT_EQ(encodeJpeg(image, 85), encodeJpeg(image, 85));
    EXPECT_EQ(encodePng(image), encodePng(image));
}

TEST(EncodeJpeg, NeedsMoreRoomForMoreQuality)
{
    const Image image = stripes(64, 48, PixelFormat::Rgb8);
    EXPECT_LT(encodeJpeg(image, 1)->size(), encodeJpeg(image, 50)->size());
    EXPECT_LT(encodeJpeg(image, 50)->size(), encodeJpeg(image, 100)->size());
}

TEST(EncodeJpeg, RefusesOtherQualities)
{
    const Image image = stripes(8, 8, PixelFormat::Grey8);
    for (const int quality : {-1, 0, 101}) {
        const auto file = encodeJpeg(image, quality);
        ASSERT_FALSE(file) << quality;
        EXPECT_EQ(file.error(), (Error{ErrorCode::OutOfRange, "JPEG quality",
                                       std::to_string(quality), "1 to 100"}));
    }
}

TEST(Encode, RefusesImagesWithOtherPixelsThanTheirSizeNeeds)
{
    Image image = stripes(8, 8, PixelFormat::Rgb8);
    image.pixels.pop_back();
    EXPECT_EQ(encodeJpeg(image, 80).error().subject, "image pixels");
    EXPECT_EQ(encodePng(image).error().subject, "image pixels");
    EXPECT_EQ(encodeJpeg(Image{}, 80).error().subject, "image size");
    EXPECT_EQ(encodePng(Image{}).error().subject, "image size");
    image.width = -8;
    EXPECT_EQ(encodePng(image).error().code, ErrorCode::OutOfRange);
}

}  // namespace spile::picture
