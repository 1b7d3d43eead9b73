#include "core/picture/encode.hpp"
#include "core/picture/exif.hpp"
#include "core/picture/header.hpp"
#include "core/picture/png_chunks.hpp"
#include "core/picture/reducer.hpp"

#include <algorithm>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace spile::picture {

// A PNG file with no more than a header: 8 bits, grey.
static Bytes pngStating(std::uint32_t width, std::uint32_t height)
{
    Bytes ihdr;
    for (const std::uint32_t side : {width, height}) {
        for (const int shift : {24, 16, 8, 0}) {
            ihdr.push_back(static_cast<std::uint8_t>(side >> shift));
        }
    }
    ihdr.insert(ihdr.end(), {8, 0, 0, 0, 0});
    Bytes file(pngSignature.begin(), pngSignature.end());
    appendChunk(file, "IHDR", ihdr);
    return file;
}

// A JPEG file up to its first scan, with a frame header of the given marker.
static Bytes jpegStating(int width, int height, std::uint8_t startOfFrame = 0xC0,
                         std::uint8_t bits = 8, std::uint8_t components = 1)
{
    Bytes file = {0xFF, 0xD8, 0xFF, startOfFrame, 0, static_cast<std::uint8_t>(8 + 3 * components),
                  bits};
    for (const int side : {height, width}) {
        file.push_back(static_cast<std::uint8_t>(side >> 8));
        file.push_back(static_cast<std::uint8_t>(side & 0xFF));
    }
    file.push_back(components);
    for (int i = 0; i < components; ++i) {
        file.insert(file.end(), {static_cast<std::uint8_t>(i + 1), 0x11, 0});
    }
    file.insert(file.end(), {0xFF, 0xDA, 0, 8, 1, 1, 0, 0, 63, 0});
    return file;
}

static ErrorCode codeOf(const Result<Header>& header)
{
    EXPECT_FALSE(header);
    return header ? ErrorCode{} : header.error().code;
}

TEST(ReadHeader, TellsFormatAndSize)
{
    const Image image = blankImage(40, 30, PixelFormat::Rgb8);
    EXPECT_EQ(readHeader(encodeJpeg(image, 80).value()), (Header{FileFormat::Jpeg, 40, 30, 1}));
    EXPECT_EQ(readHeader(encodePng(image).value()), (Header{FileFormat::Png, 40, 30, 1}));
    EXPECT_EQ(readHeader(pngStating(7, 9)), (Header{FileFormat::Png, 7, 9, 1}));
    EXPECT_EQ(readHeader(jpegStating(513, 258)), (Header{FileFormat::Jpeg, 513, 258, 1}));
}

TEST(ReadHeader, RefusesWhatIsTooLargeBeforeAnyPixel)
{
    EXPECT_EQ(codeOf(readHeader(pngStating(100'000, 100'000))), ErrorCode::TooLarge);
    EXPECT_EQ(codeOf(readHeader(pngStating(32'769, 1))), ErrorCode::TooLarge);
    EXPECT_EQ(codeOf(readHeader(pngStating(20'000, 10'001))), ErrorCode::TooLarge);
    EXPECT_TRUE(readHeader(pngStating(20'000, 10'000)));
    EXPECT_TRUE(readHeader(pngStating(32'768, 1)));
    EXPECT_EQ(codeOf(readHeader(jpegStating(65'535, 65'535))), ErrorCode::TooLarge);
    const auto error = readHeader(pngStating(100'000, 100'000)).error();
    EXPECT_EQ(error.value, "100000 x 100000");
    EXPECT_THAT(error.limit, testing::HasSubstr("32768"));
}

TEST(ReadHeader, KeepsToTighterLimits)
{
    const Bytes file = pngStating(40, 30);
    EXPECT_TRUE(readHeader(file, {.bytes = file.size(), .pixels = 1200, .side = 40}));
    EXPECT_EQ(codeOf(readHeader(file, {.bytes = file.size() - 1})), ErrorCode::TooLarge);
    EXPECT_EQ(codeOf(readHeader(file, {.pixels = 1199})), ErrorCode::TooLarge);
    EXPECT_EQ(codeOf(readHeader(file, {.side = 39})), ErrorCode::TooLarge);
}

TEST(ReadHeader, SaysWhatOtherFilesAre)
{
    using namespace std::string_view_literals;
    EXPECT_EQ(readHeader(asBytes("")).error().value, "empty file");
    EXPECT_EQ(readHeader(asBytes("GIF89a")).error().value, "starts with 47494638");
    EXPECT_EQ(readHeader(asBytes("\0\0\0\x18"
                                 "ftypheic\0\0\0\0"sv))
                  .error(),
              (Error{ErrorCode::Unsupported, "picture file", "heic", "a JPEG or PNG file"}));
}

TEST(ReadHeader, RefusesKindsOfJpegThatNoCameraMakes)
{
    EXPECT_TRUE(readHeader(jpegStating(8, 8, 0xC2)));                                // progressive
    EXPECT_EQ(codeOf(readHeader(jpegStating(8, 8, 0xC3))), ErrorCode::Unsupported);  // lossless
    EXPECT_EQ(codeOf(readHeader(jpegStating(8, 8, 0xC7))), ErrorCode::Unsupported);  // differential
    EXPECT_EQ(codeOf(readHeader(jpegStating(8, 8, 0xC1, 12))), ErrorCode::Unsupported);
    EXPECT_EQ(codeOf(readHeader(jpegStating(8, 8, 0xC0, 8, 4))), ErrorCode::Unsupported);  // CMYK
    EXPECT_EQ(codeOf(readHeader(jpegStating(8, 8, 0xC0, 8, 2))), ErrorCode::Unsupported);
}

TEST(ReadHeader, RefusesPicturesWithoutPixels)
{
    EXPECT_EQ(codeOf(readHeader(jpegStating(0, 8))), ErrorCode::Damaged);
    EXPECT_EQ(codeOf(readHeader(jpegStating(8, 0))), ErrorCode::Damaged);
    EXPECT_EQ(codeOf(readHeader(pngStating(0, 8))), ErrorCode::Damaged);
    EXPECT_EQ(codeOf(readHeader(pngStating(8, 0))), ErrorCode::Damaged);
    EXPECT_EQ(codeOf(readHeader(pngStating(0x80000000, 8))), ErrorCode::Damaged);
}

TEST(ReadHeader, RefusesDamagedHeaders)
{
    Bytes png = pngStating(8, 8);
    png[20] ^= 1;  // a bit of the width: the CRC tells
    EXPECT_EQ(codeOf(readHeader(png)), ErrorCode::Damaged);

    const Bytes jpeg = jpegStating(8, 8);
    for (std::size_t length = 3; length < jpeg.size(); ++length) {
        EXPECT_EQ(codeOf(readHeader(ByteView(jpeg).first(length))), ErrorCode::Damaged) << length;
    }
    Bytes noFrame = jpeg;
    noFrame[3] = 0xFE;  // a comment in place of the frame
    EXPECT_EQ(codeOf(readHeader(noFrame)), ErrorCode::Damaged);
    Bytes noLength = jpeg;
    noLength.insert(noLength.begin() + 2, {0xFF, 0xFE, 0, 1});
    EXPECT_EQ(readHeader(noLength).error().value, "a segment of impossible length at byte 4");
    Bytes noMarker = jpeg;
    noMarker.insert(noMarker.begin() + 2, {0xFF, 0xFE, 0, 2, 0x55});
    EXPECT_EQ(codeOf(readHeader(noMarker)), ErrorCode::Damaged);
}

TEST(Orientation, IsReadInBothByteOrders)
{
    const Bytes big = {'M', 'M', 0, 42, 0, 0, 0, 8, 0, 1, 1, 0x12, 0, 3, 0, 0, 0, 1, 0, 6, 0, 0};
    const Bytes little = {'I', 'I', 42, 0, 8, 0, 0, 0, 1, 0, 0x12, 1, 3, 0, 1, 0, 0, 0, 6, 0, 0, 0};
    EXPECT_EQ(orientationOf(big), 6);
    EXPECT_EQ(orientationOf(little), 6);
    for (int orientation = 1; orientation <= 8; ++orientation) {
        EXPECT_EQ(orientationOf(tiffWithOrientation(orientation)), orientation);
    }
}

TEST(Orientation, IsOneWhereTheBlockIsNonsense)
{
    const Bytes good = tiffWithOrientation(6);
    const std::size_t entryEnd = 22;
    for (std::size_t length = 0; length < entryEnd; ++length) {
        EXPECT_EQ(orientationOf(ByteView(good).first(length)), 1) << length;
    }
    const auto after = [&](std::size_t place, std::uint8_t byte) {
        Bytes bad = good;
        bad[place] = byte;
        return orientationOf(bad);
    };
    EXPECT_EQ(after(0, 'I'), 1);    // byte order
    EXPECT_EQ(after(3, 43), 1);     // magic number
    EXPECT_EQ(after(4, 0xFF), 1);   // directory far outside
    EXPECT_EQ(after(9, 0), 1);      // no entries
    EXPECT_EQ(after(11, 0x13), 1);  // another tag
    EXPECT_EQ(after(13, 4), 1);     // another type
    EXPECT_EQ(after(19, 0), 1);
    EXPECT_EQ(after(19, 9), 1);
    EXPECT_EQ(after(19, 8), 8);
}

}  // namespace spile::picture
