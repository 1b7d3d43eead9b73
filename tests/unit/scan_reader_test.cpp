#include "core/base/simulated.hpp"
#include "core/scan/reader.hpp"
#include "tests/support/symbol_pictures.hpp"

#include <algorithm>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace spile::scan {

using picture::Image;
using picture::LuminanceView;
using support::drawSymbol;
using support::paste;
using support::plainPicture;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;
using testing::UnorderedElementsAre;

static LuminanceView viewOfGrey(const Image& image)
{
    return {image.pixels.data(), image.width, image.height, image.width, 1};
}

static std::vector<std::string> textsIn(const Image& image)
{
    const auto codes = readPicture(viewOfGrey(image)).value();
    std::vector<std::string> texts(codes.size());
    std::transform(codes.begin(), codes.end(), texts.begin(),
                   [](const Code& code) { return code.text; });
    return texts;
}

static Image pictureWith(const Image& symbol, int width, int height, std::uint8_t level = 220)
{
    Image whole = plainPicture(width, height, level);
    paste(whole, symbol, (width - symbol.width) / 2, (height - symbol.height) / 2);
    return whole;
}

class EachFormat : public testing::TestWithParam<std::tuple<Format, int>> {};

TEST_P(EachFormat, IsReadBackInAPicture)
{
    const auto [format, turns] = GetParam();
    const Image image = pictureWith(
        drawSymbol("CASK 7 LOT 31", {.format = format, .quarterTurns = turns}), 900, 900);
    const auto codes = readPicture(viewOfGrey(image));
    ASSERT_TRUE(codes);
    ASSERT_THAT(*codes, SizeIs(1));
    EXPECT_EQ(codes->front().text, "CASK 7 LOT 31");
    EXPECT_EQ(codes->front().format, format);
}

INSTANTIATE_TEST_SUITE_P(Turned, EachFormat,
                         testing::Combine(testing::Values(Format::QrCode, Format::DataMatrix,
                                                          Format::Code128),
                                          testing::Range(0, 4)));

TEST(ReadPicture, FindsEveryQrAndOrdersThemFromTheMiddle)
{
    Image image = plainPicture(1200, 400);
    paste(image, drawSymbol("LEFT FAR AWAY"), 10, 100);
    paste(image, drawSymbol("IN THE MIDDLE"), 530, 100);
    paste(image, drawSymbol("TO THE RIGHT."), 800, 100);
    EXPECT_THAT(textsIn(image), ElementsAre("IN THE MIDDLE", "TO THE RIGHT.", "LEFT FAR AWAY"));
}

TEST(ReadPicture, FindsAllThreeFormatsTogether)
{
    Image image = plainPicture(1000, 1000);
    paste(image, drawSymbol("HTTPS://A.EXAMPLE"), 60, 60);
    paste(image, drawSymbol("DM-3141", {.format = Format::DataMatrix, .pixelsPerModule = 6}), 430,
          430);
    paste(image, drawSymbol("CODE-128", {.format = Format::Code128}), 300, 780);
    EXPECT_THAT(textsIn(image), UnorderedElementsAre("HTTPS://A.EXAMPLE", "DM-3141", "CODE-128"));
}

TEST(ReadPicture, KeepsTwoPrintsOfOneCodeApartButNamesEachOnce)
{
    Image image = plainPicture(1000, 1000);  // large enough that smaller copies are looked at too
    const Image symbol = drawSymbol("S1K4TN7K2QFM", {.pixelsPerModule = 8});
    paste(image, symbol, 20, 20);
    paste(image, symbol, 600, 600);
    EXPECT_THAT(textsIn(image), ElementsAre("S1K4TN7K2QFM", "S1K4TN7K2QFM"));
}

TEST(WithoutRepeats, KeepsTheFirstOfEachTextFormatAndPlace)
{
    const auto code = [](std::string text, Format format, int left) {
        return Code{std::move(text),
                    format,
                    {Point{left, 0}, Point{left + 10, 0}, Point{left + 10, 10}, Point{left, 10}}};
    };
    const Code first = code("A", Format::QrCode, 0);
    const Code otherText = code("B", Format::QrCode, 0);
    const Code otherFormat = code("A", Format::DataMatrix, 0);
    const Code otherPlace = code("A", Format::QrCode, 6);
    EXPECT_THAT(withoutRepeats({first, otherText, code("A", Format::QrCode, 5), otherFormat,
                                code("B", Format::QrCode, -5), otherPlace}),
                ElementsAre(first, otherText, otherFormat, otherPlace));
    EXPECT_THAT(withoutRepeats({}), IsEmpty());
}

TEST(ReadPicture, PlacesTheCorners)
{
    Image image = plainPicture(400, 300);
    paste(image, drawSymbol("S1K4TN7K2QFM", {.quarterTurns = 1}), 150, 100);
    const auto codes = readPicture(viewOfGrey(image));
    ASSERT_TRUE(codes);
    ASSERT_THAT(*codes, SizeIs(1));
    // 25 modules of 4 pixels after a quiet zone of 16; turned, the top left is at the top right.
    const std::array<Point, 4> expected = {Point{266, 116}, {266, 216}, {166, 216}, {166, 116}};
    for (std::size_t i = 0; i < expected.size(); ++i) {
        SCOPED_TRACE(i);
        EXPECT_NEAR(codes->front().corners[i].x, expected[i].x, 4);
        EXPECT_NEAR(codes->front().corners[i].y, expected[i].y, 4);
    }
}

TEST(ReadPicture, TriesHalfTheSizeWhenNothingIsFound)
{
    // Noise that hides the symbol from the first look; the mean of four pixels shows it. Of these
    // ten, 9 are read; 0 with the second look taken out.
    int count = 0;
    for (std::uint64_t seed = 0; seed < 10; ++seed) {
        Image image = pictureWith(
            drawSymbol("S1K4TN7K2QFM", {.pixelsPerModule = 6, .dark = 90, .light = 170}), 300, 300,
            170);
        support::addNoise(image, 20, seed);
        const auto codes = readPicture(viewOfGrey(image)).value();
        for (const Code& code : codes) {
            ++count;
            EXPECT_EQ(code.text, "S1K4TN7K2QFM");
            EXPECT_NEAR(code.corners[0].x, 75, 8);  // in the picture, not in its half
            EXPECT_NEAR(code.corners[2].y, 225, 8);
        }
    }
    EXPECT_GE(count, 5);
}

TEST(ReadPicture, ReadsThroughNoiseAndUnevenLight)
{
    Image image = pictureWith(drawSymbol("S1K4TN7K2QFM"), 640, 480);
    support::addGradient(image, 0.35);
    support::addNoise(image, 10, 5);
    EXPECT_THAT(textsIn(image), ElementsAre("S1K4TN7K2QFM"));
}

TEST(ReadPicture, FindsNothingInBlankPicturesAndNoise)
{
    for (const std::uint8_t level : std::initializer_list<std::uint8_t>{0, 128, 255}) {
        EXPECT_THAT(textsIn(plainPicture(640, 480, level)), IsEmpty()) << int{level};
    }
    for (std::uint64_t seed = 0; seed < 8; ++seed) {
        Image noise = plainPicture(640, 480);
        SeededRandom(seed).fill(noise.pixels);
        EXPECT_THAT(textsIn(noise), IsEmpty()) << seed;
    }
}

// The plane ends with the last pixel, so that a read past it is out of bounds.
static std::vector<std::uint8_t> planeWith(const Image& image, int rowStride, int pixelStride)
{
    const auto offset = [&](int x, int y) {
        return static_cast<std::size_t>(std::int64_t{y} * rowStride +
                                        std::int64_t{x} * pixelStride);
    };
    std::vector<std::uint8_t> plane(offset(image.width - 1, image.height - 1) + 1);
    SeededRandom(1).fill(plane);
    auto pixel = image.pixels.begin();
    for (int y = 0; y < image.height; ++y) {
        for (int x = 0; x < image.width; ++x) {
            plane[offset(x, y)] = *pixel++;
        }
    }
    return plane;
}

class EachStride : public testing::TestWithParam<std::tuple<int, int>> {};

TEST_P(EachStride, IsRead)
{
    const auto [pixelStride, padding] = GetParam();
    const Image image = pictureWith(drawSymbol("S1K4TN7K2QFM"), 201, 203);
    const int rowStride = image.width * pixelStride + padding;
    const auto plane = planeWith(image, rowStride, pixelStride);
    const LuminanceView view{plane.data(), image.width, image.height, rowStride, pixelStride};
    const auto codes = readPicture(view);
    ASSERT_TRUE(codes);
    ASSERT_THAT(*codes, SizeIs(1));
    EXPECT_EQ(codes->front().text, "S1K4TN7K2QFM");
    const auto live = readFrame(view);
    ASSERT_TRUE(live);
    EXPECT_EQ(live->text, "S1K4TN7K2QFM");
}

INSTANTIATE_TEST_SUITE_P(OfRowsAndPixels, EachStride,
                         testing::Combine(testing::Values(1, 2, 4), testing::Values(0, 1, 55)));

TEST(ReadPicture, RefusesViewsThatContradictThemselves)
{
    const Image image = plainPicture(64, 64);
    const LuminanceView good = viewOfGrey(image);
    ASSERT_TRUE(readPicture(good));
    const auto subjectOf = [&](auto change) {
        LuminanceView view = good;
        change(view);
        EXPECT_EQ(readFrame(view), std::nullopt);
        const auto codes = readPicture(view);
        EXPECT_FALSE(codes);
        return codes ? std::string() : codes.error().subject;
    };
    EXPECT_EQ(subjectOf([](LuminanceView& view) { view.data = nullptr; }), "picture");
    EXPECT_EQ(subjectOf([](LuminanceView& view) { view.width = 0; }), "picture width");
    EXPECT_EQ(subjectOf([](LuminanceView& view) { view.width = -64; }), "picture width");
    EXPECT_EQ(subjectOf([](LuminanceView& view) { view.width = 32769; }), "picture width");
    EXPECT_EQ(subjectOf([](LuminanceView& view) { view.height = 0; }), "picture height");
    EXPECT_EQ(subjectOf([](LuminanceView& view) { view.height = 1 << 30; }), "picture height");
    EXPECT_EQ(subjectOf([](LuminanceView& view) { view.pixelStride = 0; }), "pixel stride");
    EXPECT_EQ(subjectOf([](LuminanceView& view) { view.pixelStride = 2; }), "row stride");
    EXPECT_EQ(subjectOf([](LuminanceView& view) { view.rowStride = 63; }), "row stride");
    EXPECT_EQ(subjectOf([](LuminanceView& view) { view.rowStride = -64; }), "row stride");
    EXPECT_EQ(subjectOf([](LuminanceView& view) { view.rowStride = 1 << 30; }), "row stride");
}

TEST(ReadPicture, AnswersTinyAndNarrowViews)
{
    for (const int width : {1, 2, 3, 4, 7, 8, 9, 21, 40, 501}) {
        for (const int height : {1, 2, 3, 4, 7, 8, 9, 21, 40, 501}) {
            Image image = plainPicture(width, height);
            SeededRandom(static_cast<std::uint64_t>(width * 1000 + height)).fill(image.pixels);
            EXPECT_TRUE(readPicture(viewOfGrey(image))) << width << " x " << height;
            EXPECT_FALSE(readFrame(viewOfGrey(image))) << width << " x " << height;
        }
    }
}

TEST(ReadFrame, FindsAQrInTheMiddleAndElsewhere)
{
    Image image = plainPicture(640, 480);
    paste(image, drawSymbol("AT THE BORDER"), 2, 2);
    auto code = readFrame(viewOfGrey(image));
    ASSERT_TRUE(code);
    EXPECT_EQ(code->text, "AT THE BORDER");

    paste(image, drawSymbol("IN THE MIDDLE"), 254, 174);
    code = readFrame(viewOfGrey(image));
    ASSERT_TRUE(code);
    EXPECT_EQ(code->text, "IN THE MIDDLE");
    EXPECT_NEAR(code->corners[0].x, 270, 4);  // in the frame, not in its middle
    EXPECT_NEAR(code->corners[0].y, 190, 4);
}

TEST(ReadFrame, ReadsNoOtherFormat)
{
    EXPECT_FALSE(readFrame(
        viewOfGrey(pictureWith(drawSymbol("DM-3141", {.format = Format::DataMatrix}), 400, 400))));
    EXPECT_FALSE(readFrame(
        viewOfGrey(pictureWith(drawSymbol("CODE-128", {.format = Format::Code128}), 900, 400))));
}

TEST(OwnLabel, IsReadBackFromAPictureOfARandomLabel)
{
    SeededRandom random(2026);
    for (int i = 0; i < 20; ++i) {
        const std::string mark = randomMark(random);
        const LabelText label{mark, randomCode(mark, random)};
        const auto code = readFrame(viewOfGrey(
            pictureWith(drawSymbol(labelText(label), {.quarterTurns = i % 4}), 500, 400)));
        ASSERT_TRUE(code) << labelText(label);
        EXPECT_EQ(ownLabel(*code), label);
    }
}

TEST(OwnLabel, IsOnlyAQrWithTheRightPrefixAndCheck)
{
    SeededRandom random(7);
    const std::string mark = randomMark(random);
    const std::string text = labelText({mark, randomCode(mark, random)});
    const auto own = [](std::string code, Format format) {
        return ownLabel(Code{std::move(code), format, {}}).has_value();
    };
    EXPECT_TRUE(own(text, Format::QrCode));
    EXPECT_FALSE(own(text, Format::DataMatrix));
    EXPECT_FALSE(own(text, Format::Code128));
    EXPECT_FALSE(own("S3" + text.substr(2), Format::QrCode));
    EXPECT_FALSE(own(text.substr(0, 11) + (text.back() == '0' ? '1' : '0'), Format::QrCode));
    EXPECT_FALSE(own("HTTPS://A.EXAMPLE", Format::QrCode));
}

}  // namespace spile::scan
