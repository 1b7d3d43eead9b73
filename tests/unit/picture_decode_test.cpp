#include "core/picture/decode.hpp"
#include "core/picture/encode.hpp"
#include "core/picture/exif.hpp"
#include "core/picture/png_chunks.hpp"
#include "core/picture/reducer.hpp"
#include "core/picture/transform.hpp"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <jpeglib.h>

namespace spile::picture {

// Smooth, and different towards all four corners.
static Image smoothImage(int width, int height, PixelFormat format)
{
    Image image = blankImage(width, height, format);
    auto out = image.pixels.begin();
    for (int y = 0; y < height; ++y) {
        for (int x = 0; x < width; ++x) {
            *out++ = static_cast<std::uint8_t>(40 + 150 * x / width + 60 * y / height);
            if (format == PixelFormat::Rgb8) {
                *out++ = static_cast<std::uint8_t>(200 - 100 * x / width);
                *out++ = static_cast<std::uint8_t>(250 - 200 * y / height);
            }
        }
    }
    return image;
}

static double meanDifference(const Image& a, const Image& b)
{
    EXPECT_EQ(a.width, b.width);
    EXPECT_EQ(a.height, b.height);
    EXPECT_EQ(a.format, b.format);
    double sum = 0;
    for (std::size_t i = 0; i < std::min(a.pixels.size(), b.pixels.size()); ++i) {
        sum += std::abs(a.pixels[i] - b.pixels[i]);
    }
    return sum / static_cast<double>(a.pixels.size());
}

// By libjpeg itself, which the encoder of ours offers no way to: in one scan for each coefficient
// and component, or in the usual scans.
static Bytes progressiveJpeg(const Image& image, bool oneScanEach)
{
    jpeg_error_mgr errors{};
    jpeg_compress_struct info{};
    info.err = jpeg_std_error(&errors);
    jpeg_create_compress(&info);
    unsigned char* file = nullptr;
    unsigned long size = 0;
    jpeg_mem_dest(&info, &file, &size);
    info.image_width = static_cast<JDIMENSION>(image.width);
    info.image_height = static_cast<JDIMENSION>(image.height);
    info.input_components = 3;
    info.in_color_space = JCS_RGB;
    jpeg_set_defaults(&info);
    jpeg_simple_progression(&info);
    std::vector<jpeg_scan_info> scans;
    for (int component = 0; component < 3; ++component) {
        for (int coefficient = 0; coefficient < 64; ++coefficient) {
            scans.push_back({1, {component}, coefficient, coefficient, 0, 0});
        }
    }
    if (oneScanEach) {
        info.scan_info = scans.data();
        info.num_scans = static_cast<int>(scans.size());
    }
    jpeg_start_compress(&info, TRUE);
    Image copy = image;
    while (info.next_scanline < info.image_height) {
        JSAMPROW row = copy.pixels.data() +
                       pixelBytes(image.width, static_cast<int>(info.next_scanline), image.format);
        jpeg_write_scanlines(&info, &row, 1);
    }
    jpeg_finish_compress(&info);
    Bytes bytes(file, file + size);
    jpeg_destroy_compress(&info);
    std::free(file);
    return bytes;
}

static Bytes withExif(const Bytes& jpeg, int orientation)
{
    const Bytes tiff = tiffWithOrientation(orientation);
    Bytes segment = {0xFF, 0xE1, 0, static_cast<std::uint8_t>(8 + tiff.size()), 'E', 'x', 'i',
                     'f',  0,    0};
    segment.insert(segment.end(), tiff.begin(), tiff.end());
    Bytes file = jpeg;
    file.insert(file.begin() + 2, segment.begin(), segment.end());
    return file;
}

static ErrorCode codeOf(const Result<Image>& image)
{
    EXPECT_FALSE(image);
    return image ? ErrorCode{} : image.error().code;
}

TEST(DecodeJpeg, GivesBackWhatWasEncoded)
{
    for (const PixelFormat format : {PixelFormat::Grey8, PixelFormat::Rgb8}) {
        const Image image = smoothImage(97, 61, format);
        const auto decoded = decode(encodeJpeg(image, 95).value(), {.format = format});
        ASSERT_TRUE(decoded);
        EXPECT_LT(meanDifference(*decoded, image), 1.5);
    }
}

TEST(DecodeJpeg, GivesTheLuminancePlaneForGrey)
{
    const Image image = smoothImage(64, 64, PixelFormat::Rgb8);
    const Bytes file = encodeJpeg(image, 95).value();
    const auto decoded = decode(file, {.format = PixelFormat::Grey8});
    ASSERT_TRUE(decoded);
    EXPECT_LT(meanDifference(*decoded, toGrey(image)), 1.0);
    // and grey files can be asked for in colour
    const auto colour = decode(encodeJpeg(toGrey(image), 95).value(), {});
    ASSERT_TRUE(colour);
    EXPECT_EQ(colour->format, PixelFormat::Rgb8);
    EXPECT_LT(meanDifference(toGrey(*colour), toGrey(image)), 1.0);
}

TEST(DecodeJpeg, BringsTheLongerSideDownToAnyLength)
{
    const Image image = smoothImage(1000, 601, PixelFormat::Rgb8);
    const Bytes file = encodeJpeg(image, 95).value();
    for (const int maxSide : {2000, 1000, 999, 501, 500, 499, 250, 126, 125, 100, 3, 1}) {
        SCOPED_TRACE(maxSide);
        const auto decoded = decode(file, {.maxSide = maxSide});
        ASSERT_TRUE(decoded);
        const Size size = fitted({1000, 601}, maxSide);
        EXPECT_EQ((Size{decoded->width, decoded->height}), size);
        EXPECT_LT(meanDifference(*decoded, resized(image, size).value()), 2.0);
    }
}

TEST(DecodeJpeg, KeepsTheDetailThatTheSmallerSizeCanShow)
{
    Image stripes = blankImage(800, 16, PixelFormat::Grey8);
    for (std::size_t i = 0; i < stripes.pixels.size(); ++i) {
        stripes.pixels[i] = i / 4 % 2 == 0 ? 40 : 210;  // 4 pixels each
    }
    const Bytes file = encodeJpeg(stripes, 95).value();
    for (const int maxSide : {790, 401, 400, 390}) {
        SCOPED_TRACE(maxSide);
        const auto decoded = decode(file, {.format = PixelFormat::Grey8, .maxSide = maxSide});
        ASSERT_TRUE(decoded);
        EXPECT_LT(meanDifference(*decoded, resized(stripes, fitted({800, 16}, maxSide)).value()),
                  5.0);
    }
}

TEST(DecodeJpeg, AppliesEveryOrientation)
{
    const Image image = smoothImage(60, 40, PixelFormat::Rgb8);
    const Bytes file = encodeJpeg(image, 90).value();
    const Image stored = decode(file).value();
    for (int orientation = 1; orientation <= 8; ++orientation) {
        SCOPED_TRACE(orientation);
        const Bytes turned = withExif(file, orientation);
        EXPECT_EQ(readHeader(turned), (Header{FileFormat::Jpeg, 60, 40, orientation}));
        EXPECT_EQ(decode(turned), oriented(stored, orientation));
    }
    EXPECT_EQ(decode(withExif(file, 6), {.maxSide = 30})->height, 30);
}

TEST(DecodeJpeg, ReadsProgressiveFilesButNotWithAbsurdlyManyScans)
{
    const Image image = smoothImage(48, 48, PixelFormat::Rgb8);
    const auto usual = decode(progressiveJpeg(image, false));
    ASSERT_TRUE(usual);
    EXPECT_LT(meanDifference(*usual, image), 3.0);

    const Bytes absurd = progressiveJpeg(image, true);
    const auto refused = decode(absurd);
    EXPECT_EQ(codeOf(refused), ErrorCode::TooLarge);
    EXPECT_EQ(refused.error().value, "more than 100 scans");
    EXPECT_TRUE(decode(absurd, {.limits = {.scans = 192}}));
    EXPECT_EQ(codeOf(decode(absurd, {.limits = {.scans = 191}})), ErrorCode::TooLarge);
}

TEST(DecodeJpeg, KeepsProgressiveFilesWithinTheWorkingMemory)
{
    const Image image = smoothImage(800, 600, PixelFormat::Rgb8);
    // Its coefficients take 800 * 600 * 1.5 * 2 bytes, about 1.4 MiB; a baseline file needs rows.
    const DecodeOptions tight{.limits = {.workingBytes = 1 << 20}};
    EXPECT_EQ(codeOf(decode(progressiveJpeg(image, false), tight)), ErrorCode::TooLarge);
    EXPECT_TRUE(decode(progressiveJpeg(image, false)));
    EXPECT_TRUE(decode(encodeJpeg(image, 80).value(), tight));
}

TEST(DecodeJpeg, CallsEveryPrefixDamaged)
{
    const Bytes baseline = encodeJpeg(smoothImage(24, 16, PixelFormat::Rgb8), 75).value();
    const Bytes progressive = progressiveJpeg(smoothImage(24, 16, PixelFormat::Rgb8), false);
    for (const Bytes& file : {baseline, progressive}) {
        ASSERT_TRUE(decode(file));
        for (std::size_t length = 0; length < file.size(); ++length) {
            SCOPED_TRACE(length);
            EXPECT_EQ(codeOf(decode(ByteView(file).first(length))),
                      length < 3 ? ErrorCode::Unsupported : ErrorCode::Damaged);
        }
    }
}

TEST(DecodeJpeg, CallsMissingPixelsDamagedThoughTheEndIsThere)
{
    Bytes file = encodeJpeg(smoothImage(64, 64, PixelFormat::Rgb8), 75).value();
    file.erase(file.end() - 60, file.end() - 2);
    EXPECT_EQ(codeOf(decode(file)), ErrorCode::Damaged);
}

TEST(DecodeJpeg, TakesAFewFillBytesBeforeTheEndButNotMany)
{
    const Bytes file = encodeJpeg(smoothImage(64, 64, PixelFormat::Rgb8), 75).value();
    Bytes filled = file;
    filled.insert(filled.end() - 2, 32, 0);
    EXPECT_EQ(decode(filled), decode(file));
    filled.insert(filled.end() - 2, 100, 0);
    EXPECT_EQ(codeOf(decode(filled)), ErrorCode::Damaged);
}

TEST(DecodeJpeg, RefusesTwoFrameHeaders)
{
    Bytes file = encodeJpeg(smoothImage(64, 64, PixelFormat::Grey8), 75).value();
    const Bytes second = {0xFF, 0xC0, 0, 11, 8, 0, 8, 0, 8, 1, 1, 0x11, 0};
    file.insert(file.begin() + 2, second.begin(), second.end());
    EXPECT_EQ(codeOf(decode(file)), ErrorCode::Damaged);
}

TEST(Decode, RefusesImpossibleSides)
{
    const Bytes file = encodePng(smoothImage(4, 4, PixelFormat::Grey8)).value();
    EXPECT_EQ(codeOf(decode(file, {.maxSide = 0})), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf(decode(file, {.maxSide = 32769})), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf(decode(asBytes("neither JPEG nor PNG"))), ErrorCode::Unsupported);
}

}  // namespace spile::picture
