#include "core/picture/decode.hpp"
#include "core/picture/encode.hpp"
#include "core/picture/exif.hpp"
#include "core/picture/png_chunks.hpp"
#include "core/picture/transform.hpp"

#include <array>
#include <gtest/gtest.h>
#include <png.h>

namespace spile::picture {

// What a PNG can be and the encoder of ours does not make.
struct Sample {
    int width = 1;
    int height = 1;
    int bits = 8;
    int colourType = PNG_COLOR_TYPE_GRAY;
    int interlace = PNG_INTERLACE_NONE;
    std::vector<std::vector<std::uint8_t>> rows = {};  // as stored
    std::vector<png_color> palette = {};
    std::vector<std::uint8_t> paletteAlpha = {};
};

static Bytes write(Sample sample)
{
    Bytes file;
    png_structp png = png_create_write_struct(PNG_LIBPNG_VER_STRING, nullptr, nullptr, nullptr);
    png_infop info = png_create_info_struct(png);
    png_set_write_fn(
        png, &file,
        [](png_structp writer, png_bytep bytes, std::size_t count) {
            auto* out = static_cast<Bytes*>(png_get_io_ptr(writer));
            out->insert(out->end(), bytes, bytes + count);
        },
        nullptr);
    png_set_IHDR(png, info, static_cast<png_uint_32>(sample.width),
                 static_cast<png_uint_32>(sample.height), sample.bits, sample.colourType,
                 sample.interlace, PNG_COMPRESSION_TYPE_DEFAULT, PNG_FILTER_TYPE_DEFAULT);
    if (!sample.palette.empty()) {
        png_set_PLTE(png, info, sample.palette.data(), static_cast<int>(sample.palette.size()));
        png_set_tRNS(png, info, sample.paletteAlpha.data(),
                     static_cast<int>(sample.paletteAlpha.size()), nullptr);
    }
    png_write_info(png, info);
    std::vector<png_bytep> rows;
    for (auto& row : sample.rows) {
        rows.push_back(row.data());
    }
    png_write_image(png, rows.data());
    png_write_end(png, nullptr);
    png_destroy_write_struct(&png, &info);
    return file;
}

static std::vector<std::uint8_t> greyOf(const Sample& sample)
{
    const auto image = decode(write(sample), {.format = PixelFormat::Grey8});
    return image ? image->pixels : std::vector<std::uint8_t>();
}

static std::vector<std::uint8_t> colourOf(const Sample& sample)
{
    const auto image = decode(write(sample));
    return image ? image->pixels : std::vector<std::uint8_t>();
}

static Image numbered(int width, int height, PixelFormat format)
{
    Image image{width, height, format, {}};
    image.pixels.resize(pixelBytes(width, height, format));
    for (std::size_t i = 0; i < image.pixels.size(); ++i) {
        image.pixels[i] = static_cast<std::uint8_t>(7 * i + i / 31);
    }
    return image;
}

static std::vector<std::vector<std::uint8_t>> rowsOf(const Image& image)
{
    std::vector<std::vector<std::uint8_t>> rows;
    const auto length = static_cast<std::ptrdiff_t>(pixelBytes(image.width, 1, image.format));
    for (auto start = image.pixels.begin(); start != image.pixels.end(); start += length) {
        rows.emplace_back(start, start + length);
    }
    return rows;
}

using Pixels = std::vector<std::uint8_t>;

TEST(DecodePng, GivesBackExactlyWhatWasEncoded)
{
    for (const PixelFormat format : {PixelFormat::Grey8, PixelFormat::Rgb8}) {
        const Image image = numbered(37, 23, format);
        EXPECT_EQ(decode(encodePng(image).value(), {.format = format}), image);
    }
}

TEST(DecodePng, ReadsFewAndManyBits)
{
    EXPECT_EQ(greyOf({.width = 8, .bits = 1, .rows = {{0b10100001}}}),
              (Pixels{255, 0, 255, 0, 0, 0, 0, 255}));
    EXPECT_EQ(greyOf({.width = 4, .bits = 2, .rows = {{0b00011011}}}), (Pixels{0, 85, 170, 255}));
    EXPECT_EQ(greyOf({.width = 2, .bits = 4, .rows = {{0x3F}}}), (Pixels{0x33, 255}));
    // 16 bits are scaled, not cut: 0x10FF is 16.93 / 255 of the way.
    EXPECT_EQ(greyOf({.width = 2, .bits = 16, .rows = {{0x10, 0xFF, 0x12, 0x12}}}),
              (Pixels{0x11, 0x12}));
    EXPECT_EQ(colourOf({.bits = 16,
                        .colourType = PNG_COLOR_TYPE_RGB,
                        .rows = {{0x11, 0x11, 0x22, 0x22, 0x33, 0x33}}}),
              (Pixels{0x11, 0x22, 0x33}));
}

TEST(DecodePng, ReadsPalettesWithAlphaOnWhite)
{
    const Sample sample{.width = 4,
                        .bits = 2,
                        .colourType = PNG_COLOR_TYPE_PALETTE,
                        .rows = {{0b00011011}},
                        .palette = {{10, 20, 30}, {10, 20, 30}, {10, 20, 30}, {90, 90, 90}},
                        .paletteAlpha = {255, 0, 128}};
    // alpha 128: (10 * 128 + 255 * 127) / 255 = 132.02, 137.04, 142.06
    EXPECT_EQ(colourOf(sample), (Pixels{10, 20, 30, 255, 255, 255, 132, 137, 142, 90, 90, 90}));
}

TEST(DecodePng, ShowsTransparencyOnWhite)
{
    EXPECT_EQ(greyOf({.width = 3,
                      .colourType = PNG_COLOR_TYPE_GRAY_ALPHA,
                      .rows = {{100, 255, 100, 0, 0, 51}}}),
              (Pixels{100, 255, 204}));
    EXPECT_EQ(colourOf({.width = 2,
                        .colourType = PNG_COLOR_TYPE_RGB_ALPHA,
                        .rows = {{1, 2, 3, 255, 1, 2, 3, 0}}}),
              (Pixels{1, 2, 3, 255, 255, 255}));
}

TEST(DecodePng, ConvertsBetweenGreyAndColour)
{
    const Image colour = numbered(9, 5, PixelFormat::Rgb8);
    EXPECT_EQ(decode(encodePng(colour).value(), {.format = PixelFormat::Grey8}), toGrey(colour));
    EXPECT_EQ(colourOf({.width = 2, .rows = {{9, 200}}}), (Pixels{9, 9, 9, 200, 200, 200}));
}

TEST(DecodePng, ReadsInterlacedFilesWithinTheWorkingMemory)
{
    const Image image = numbered(37, 23, PixelFormat::Rgb8);
    const Bytes file = write({.width = 37,
                              .height = 23,
                              .colourType = PNG_COLOR_TYPE_RGB,
                              .interlace = PNG_INTERLACE_ADAM7,
                              .rows = rowsOf(image)});
    EXPECT_EQ(decode(file), image);
    const std::uint64_t needed = image.pixels.size();
    EXPECT_TRUE(decode(file, {.limits = {.workingBytes = needed}}));
    const auto refused = decode(file, {.limits = {.workingBytes = needed - 1}});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::TooLarge);
    EXPECT_EQ(refused.error().subject, "interlaced PNG");
    // Others are read row by row and need none.
    EXPECT_EQ(decode(encodePng(image).value(), {.limits = {.workingBytes = 1}}), image);
}

TEST(DecodePng, BringsLargePicturesDownRowByRow)
{
    const Image image = numbered(3000, 2000, PixelFormat::Grey8);
    const auto small =
        decode(encodePng(image).value(), {.format = PixelFormat::Grey8, .maxSide = 301});
    EXPECT_EQ(small, resized(image, {301, 201}));
}

TEST(DecodePng, AppliesEveryOrientationWhereverItStands)
{
    const Image image = numbered(5, 3, PixelFormat::Rgb8);
    const Bytes file = encodePng(image).value();
    constexpr std::ptrdiff_t afterHeader = 8 + 25;
    constexpr std::ptrdiff_t endChunk = 12;
    for (int orientation = 1; orientation <= 8; ++orientation) {
        SCOPED_TRACE(orientation);
        Bytes exif;
        appendChunk(exif, "eXIf", tiffWithOrientation(orientation));
        Bytes before = file;
        before.insert(before.begin() + afterHeader, exif.begin(), exif.end());
        EXPECT_EQ(decode(before), oriented(image, orientation));
        Bytes behind = file;
        behind.insert(behind.end() - endChunk, exif.begin(), exif.end());
        EXPECT_EQ(decode(behind), oriented(image, orientation));
    }
}

TEST(DecodePng, CallsEveryPrefixDamaged)
{
    const Image image = numbered(12, 9, PixelFormat::Rgb8);
    const Bytes plain = encodePng(image).value();
    const Bytes interlaced = write({.width = 12,
                                    .height = 9,
                                    .colourType = PNG_COLOR_TYPE_RGB,
                                    .interlace = PNG_INTERLACE_ADAM7,
                                    .rows = rowsOf(image)});
    for (const Bytes& file : {plain, interlaced}) {
        ASSERT_TRUE(decode(file));
        for (std::size_t length = 0; length < file.size(); ++length) {
            SCOPED_TRACE(length);
            const auto decoded = decode(ByteView(file).first(length));
            ASSERT_FALSE(decoded);
            EXPECT_EQ(decoded.error().code,
                      length < 8 ? ErrorCode::Unsupported : ErrorCode::Damaged);
        }
    }
}

TEST(DecodePng, CallsEveryFlippedBitOfThePixelsDamaged)
{
    const Bytes file = encodePng(numbered(12, 9, PixelFormat::Rgb8)).value();
    for (std::size_t place = 8 + 25; place < file.size(); ++place) {
        Bytes flipped = file;
        flipped[place] ^= 0x10;
        EXPECT_FALSE(decode(flipped)) << place;
    }
}

}  // namespace spile::picture
