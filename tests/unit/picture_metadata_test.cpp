#include "core/picture/decode.hpp"
#include "core/picture/encode.hpp"
#include "core/picture/exif.hpp"
#include "core/picture/metadata.hpp"
#include "core/picture/png_chunks.hpp"
#include "core/picture/reducer.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace spile::picture {

using namespace std::string_view_literals;
using testing::HasSubstr;
using testing::Not;

static Image sample()
{
    Image image = blankImage(40, 24, PixelFormat::Rgb8);
    for (std::size_t i = 0; i < image.pixels.size(); ++i) {
        image.pixels[i] = static_cast<std::uint8_t>(i * i / 97);
    }
    return image;
}

static std::string joined(std::initializer_list<std::string_view> parts)
{
    std::string text;
    for (const std::string_view part : parts) {
        text += part;
    }
    return text;
}

// EXIF as a phone writes it: orientation, maker, and a GPS directory with a place in it. Offsets
// count from "II".
static std::string exifWithPlace(char orientation)
{
    return joined({"II*\0\x08\0\0\0"sv,                 // directory at 8
                   "\3\0"sv,                            // three entries
                   "\x0F\1\2\0\x08\0\0\0\x32\0\0\0"sv,  // maker, at 50
                   "\x12\1\3\0\1\0\0\0"sv, std::string_view(&orientation, 1), "\0\0\0"sv,
                   "\x25\x88\4\0\1\0\0\0\x3A\0\0\0"sv,  // GPS directory, at 58
                   "\0\0\0\0"sv,                        // no other directory
                   "A MAKER\0"sv,                       // 50
                   "\2\0"sv,                            // 58: two entries
                   "\1\0\2\0\2\0\0\0N\0\0\0"sv,         // latitude is north
                   "\2\0\5\0\3\0\0\0\x54\0\0\0"sv,      // latitude, at 84
                   "\x39\0\0\0\1\0\0\0\x12\0\0\0\1\0\0\0\x5F\x31\0\0\x64\0\0\0"sv});
}
static constexpr std::string_view gpsTag = "\x25\x88\4\0"sv;
static constexpr std::string_view seconds = "\x5F\x31\0\0\x64\0\0\0"sv;  // of the latitude

static std::string segment(char code, std::string_view payload)
{
    const std::size_t length = payload.size() + 2;
    return joined({"\xFF"sv, std::string(1, code), std::string(1, static_cast<char>(length >> 8)),
                   std::string(1, static_cast<char>(length & 0xFF)), payload});
}

static std::string plainJpeg() { return std::string(asText(encodeJpeg(sample(), 85).value())); }

// `plainJpeg` with `segments` after its JFIF header.
static std::string jpegWith(std::string_view segments)
{
    const std::string plain = plainJpeg();
    constexpr std::size_t afterJfif = 20;
    return joined({plain.substr(0, afterJfif), segments, plain.substr(afterJfif)});
}

static std::string stripped(std::string_view file)
{
    const auto plain = stripMetadata(asBytes(file));
    EXPECT_TRUE(plain) << (plain ? "" : plain.error().value);
    return plain ? std::string(asText(*plain)) : "";
}

static std::string chunk(std::string_view type, std::string_view data)
{
    Bytes bytes;
    appendChunk(bytes, type, asBytes(data));
    return std::string(asText(bytes));
}

static std::string plainPng() { return std::string(asText(encodePng(sample()).value())); }

// `plainPng` with `early` after its IHDR and `late` before its IEND.
static std::string pngWith(std::string_view early, std::string_view late = {})
{
    const std::string plain = plainPng();
    constexpr std::size_t afterHeader = 8 + 25;
    const std::size_t end = plain.size() - 12;
    return joined({plain.substr(0, afterHeader), early,
                   plain.substr(afterHeader, end - afterHeader), late, plain.substr(end)});
}

TEST(StripJpeg, RemovesThePlaceAndEverythingElse)
{
    const std::string file =
        jpegWith(joined({segment('\xE1', joined({"Exif\0\0"sv, exifWithPlace('\1')})),
                         segment('\xE1', "http://ns.adobe.com/xap/1.0/\0<x:xmpmeta SECRET/>"sv),
                         segment('\xE2', "MPF\0SECRET"sv),
                         segment('\xED', "Photoshop 3.0\0SECRET"sv), segment('\xEB', "SECRET"sv),
                         segment('\xE0', "JFXX\0SECRET"sv), segment('\xFE', "SECRET comment"sv)}));
    ASSERT_THAT(file, HasSubstr(std::string(gpsTag)));
    ASSERT_THAT(file, HasSubstr(std::string(seconds)));
    EXPECT_EQ(stripped(file), plainJpeg());
}

TEST(StripJpeg, KeepsTheCompressedPixelsByteForByte)
{
    const std::string plain = plainJpeg();
    const std::string file = jpegWith(segment('\xE1', joined({"Exif\0\0"sv, exifWithPlace('\6')})));
    const std::string result = stripped(file);
    const std::string pixels = plain.substr(plain.find("\xFF\xDA"));
    EXPECT_THAT(result, testing::EndsWith(pixels));
    EXPECT_EQ(decode(asBytes(result)), decode(asBytes(file)));
}

TEST(StripJpeg, PutsTheOrientationBackAlone)
{
    const std::string result =
        stripped(jpegWith(segment('\xE1', joined({"Exif\0\0"sv, exifWithPlace('\6')}))));
    EXPECT_EQ(readHeader(asBytes(result))->orientation, 6);
    EXPECT_THAT(result, Not(HasSubstr(std::string(gpsTag))));
    EXPECT_THAT(result, Not(HasSubstr(std::string(seconds))));
    EXPECT_THAT(result, Not(HasSubstr("A MAKER")));
    // Nothing but the orientation: the plain file and one segment of 36 bytes after JFIF.
    const std::string plain = plainJpeg();
    EXPECT_EQ(result.size(), plain.size() + 36);
    EXPECT_EQ(result.substr(0, 20) + result.substr(56), plain);
}

TEST(StripJpeg, DropsWhatFollowsTheEnd)
{
    EXPECT_EQ(stripped(plainJpeg() + "SECRET film of the cellar"), plainJpeg());
    EXPECT_EQ(stripped(plainJpeg() + plainJpeg()), plainJpeg());
}

TEST(StripJpeg, KeepsColourProfileAndAdobesTransform)
{
    const std::string icc = segment('\xE2', "ICC_PROFILE\0\1\1profile"sv);
    const std::string adobe = segment('\xEE', "Adobe\0\x64\0\0\0\0\1"sv);
    const std::string longAdobe = segment('\xEE', "Adobe\0\x64\0\0\0\0\1SECRET"sv);
    EXPECT_EQ(stripped(jpegWith(icc + longAdobe)), jpegWith(icc + adobe));
}

TEST(StripJpeg, DropsTheSmallCopyWithinJfif)
{
    std::string file = plainJpeg();
    file[18] = 2;  // a copy of 2 x 1 pixels
    file[19] = 1;
    file[5] = static_cast<char>(16 + 6);
    file.insert(20, "SECRET");
    ASSERT_TRUE(decode(asBytes(file)));
    EXPECT_EQ(stripped(file), plainJpeg());
}

TEST(StripJpeg, DropsSegmentsBetweenScansToo)
{
    std::string file = plainJpeg();
    file.insert(file.size() - 2, segment('\xFE', "SECRET"sv));
    EXPECT_EQ(stripped(file), plainJpeg());
}

TEST(StripJpeg, RefusesEveryPrefix)
{
    const std::string file = jpegWith(segment('\xE1', joined({"Exif\0\0"sv, exifWithPlace('\6')})));
    for (std::size_t length = 0; length < file.size(); ++length) {
        const auto result = stripMetadata(asBytes(file).first(length));
        ASSERT_FALSE(result) << length;
        EXPECT_EQ(result.error().code, length < 3 ? ErrorCode::Unsupported : ErrorCode::Damaged)
            << length;
    }
}

TEST(StripJpeg, RefusesFilesWithoutPixels)
{
    const std::string frame = segment('\xC0', "\x08\0\x08\0\x08\1\1\x11\0"sv);
    EXPECT_EQ(stripMetadata(asBytes(joined({"\xFF\xD8"sv, frame, "\xFF\xD9"sv}))).error().value,
              "no pixels");
}

TEST(StripPng, RemovesThePlaceAndEverythingElse)
{
    const std::string file = pngWith(
        joined({chunk("eXIf", exifWithPlace('\1')), chunk("tEXt", "Comment\0SECRET"sv),
                chunk("zTXt", "Comment\0\0SECRET"sv), chunk("prVt", "SECRET")}),
        joined({chunk("iTXt", "Comment\0\0\0\0\0SECRET"sv), chunk("tIME", "\7\xEA\1\1\1\1\1"sv)}));
    ASSERT_THAT(file, HasSubstr(std::string(gpsTag)));
    EXPECT_EQ(stripped(file + "SECRET after the end"), plainPng());
}

TEST(StripPng, KeepsWhatThePixelsNeed)
{
    const std::string kept =
        joined({chunk("gAMA", "\0\0\xB1\x8F"sv), chunk("sRGB", "\0"sv),
                chunk("pHYs", "\0\0\x0B\x13\0\0\x0B\x13\1"sv), chunk("sBIT", "\x08\x08\x08"sv),
                chunk("bKGD", "\0\0\0\0\0\0"sv), chunk("tRNS", "\0\1\0\1\0\1"sv)});
    EXPECT_EQ(stripped(pngWith(kept)), pngWith(kept));
}

TEST(StripPng, PutsTheOrientationBackAlone)
{
    const std::string minimal = chunk("eXIf", asText(tiffWithOrientation(8)));
    const std::string exif = chunk("eXIf", exifWithPlace('\x08'));
    EXPECT_EQ(stripped(pngWith(exif)), pngWith(minimal));
    EXPECT_EQ(stripped(pngWith({}, exif)), pngWith(minimal));
    EXPECT_EQ(decode(asBytes(stripped(pngWith(exif)))), decode(asBytes(pngWith(exif))));
}

TEST(StripPng, RefusesWrongChecksums)
{
    const std::string file = plainPng();
    for (std::size_t place = 8; place < file.size(); ++place) {
        std::string flipped = file;
        flipped[place] = static_cast<char>(flipped[place] ^ 0x10);
        EXPECT_FALSE(stripMetadata(asBytes(flipped))) << place;
    }
}

TEST(StripPng, RefusesCriticalChunksThatItDoesNotKnow)
{
    const auto result = stripMetadata(asBytes(pngWith(chunk("CgBI", "\0\0\0\0"sv))));
    ASSERT_FALSE(result);
    EXPECT_EQ(result.error().code, ErrorCode::Unsupported);
    EXPECT_EQ(result.error().value, "chunk CgBI");
}

TEST(StripPng, RefusesEveryPrefix)
{
    const std::string file = pngWith(chunk("eXIf", exifWithPlace('\6')));
    for (std::size_t length = 0; length < file.size(); ++length) {
        const auto result = stripMetadata(asBytes(file).first(length));
        ASSERT_FALSE(result) << length;
        EXPECT_EQ(result.error().code, length < 8 ? ErrorCode::Unsupported : ErrorCode::Damaged)
            << length;
    }
}

TEST(StripMetadata, KeepsToTheLimits)
{
    EXPECT_EQ(stripMetadata(asBytes(plainPng()), {.side = 39}).error().code, ErrorCode::TooLarge);
    EXPECT_EQ(stripMetadata(asBytes(plainJpeg()), {.bytes = 99}).error().code, ErrorCode::TooLarge);
}

}  // namespace spile::picture
