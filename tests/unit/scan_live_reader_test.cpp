#include "core/scan/live_reader.hpp"
#include "core/scan/zxing_reading.hpp"
#include "tests/support/damaged_labels.hpp"
#include "tests/support/symbol_pictures.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace spile::scan {

using picture::Image;
using picture::LuminanceView;
using support::cover;
using support::drawSymbol;
using support::paste;
using support::plainPicture;
using testing::ElementsAre;
using testing::IsEmpty;

static const char* const label = "S1K4TN7K2QFM";

static Image frameWith(const Image& symbol, std::uint8_t level = 90)
{
    Image frame = plainPicture(1920, 1080, level);
    paste(frame, symbol, (1920 - symbol.width) / 2, (1080 - symbol.height) / 2);
    return frame;
}

static Looked look(LiveReader& reader, const Image& frame) { return reader.look(viewOf(frame)); }

static Looked lookOnce(const Image& frame) { return LiveReader().look(viewOf(frame)); }

static std::vector<std::string> textsOf(const Looked& looked)
{
    std::vector<std::string> texts;
    for (const Code& code : looked.codes) {
        texts.push_back(code.text);
    }
    return texts;
}

// What is read within so many frames, all the same.
static std::vector<std::string> readWithin(int frames, const Image& frame)
{
    LiveReader reader;
    std::vector<std::string> texts;
    for (int i = 0; i < frames && texts.empty(); ++i) {
        texts = textsOf(look(reader, frame));
    }
    return texts;
}

TEST(LiveReader, NamesTheHeadsInViewFromTheMiddleOutward)
{
    Image frame = frameWith(drawSymbol(label));
    paste(frame, drawSymbol("S1K4TNZZZZZZ"), 40, 40);
    paste(frame, drawSymbol("S1K4TN222222"), 1500, 500);
    LiveReader reader;
    EXPECT_THAT(textsOf(look(reader, frame)), ElementsAre(label, "S1K4TN222222", "S1K4TNZZZZZZ"));
}

TEST(LiveReader, ReadsADamagedLabelInTheFirstFrame)
{
    Image symbol = drawSymbol(label);
    cover(symbol, -1, -1, 9, 9, 60);
    const Image frame = frameWith(symbol);
    EXPECT_THAT(readByZxing(viewOf(frame), {}), IsEmpty());
    EXPECT_THAT(readWithin(1, frame), ElementsAre(label));
}

TEST(LiveReader, ReadsADamagedLabelAtTheBorderWithinAFewFrames)
{
    Image symbol = drawSymbol(label, {.pixelsPerModule = 4});
    cover(symbol, -1, -1, 9, 9, 60);
    Image frame = plainPicture(1920, 1080, 90);
    paste(frame, symbol, 20, 30);
    EXPECT_THAT(readWithin(4, frame), ElementsAre(label));
}

TEST(LiveReader, ReadsOtherCodesInTheMiddle)
{
    for (const Format format : {Format::DataMatrix, Format::Code128}) {
        const Image frame = frameWith(drawSymbol("CASK 7", {.format = format}), 220);
        EXPECT_THAT(readWithin(4, frame), ElementsAre("CASK 7"));
    }
}

TEST(LiveReader, ReadsFromSeveralFramesWhatNoneOfThemSays)
{
    // A reflection that moves: each frame hides a third of the symbol, another one.
    Image upright = drawSymbol(label);
    cover(upright, 9, 0, 9, 25, 125);
    Image across = drawSymbol(label);
    cover(across, 0, 8, 25, 10, 125);
    const Image first = frameWith(upright);
    const Image second = frameWith(across);
    EXPECT_THAT(readWithin(8, first), IsEmpty());
    EXPECT_THAT(readWithin(8, second), IsEmpty());

    LiveReader reader;
    EXPECT_THAT(textsOf(look(reader, first)), IsEmpty());
    EXPECT_THAT(textsOf(look(reader, first)), IsEmpty());
    const Looked looked = look(reader, second);
    ASSERT_THAT(textsOf(looked), ElementsAre(label));
    EXPECT_NEAR(looked.codes[0].corners[0].x, 910, 4);
    EXPECT_NEAR(looked.codes[0].corners[2].y, 590, 4);
}

TEST(LiveReader, ForgetsTheFramesOfBefore)
{
    // Until then the turn is that of the frame after the first, which does not look for damage.
    Image symbol = drawSymbol(label);
    cover(symbol, -1, -1, 9, 9, 60);
    LiveReader reader;
    EXPECT_THAT(textsOf(look(reader, plainPicture(1920, 1080))), IsEmpty());
    reader.restart();
    EXPECT_THAT(textsOf(look(reader, frameWith(symbol))), ElementsAre(label));
}

TEST(LiveReader, AdvisesLight)
{
    Image frame = frameWith(drawSymbol(label, {.pixelsPerModule = 3, .dark = 8, .light = 22}), 12);
    support::addNoise(frame, 14, 3);
    const Looked looked = lookOnce(frame);
    EXPECT_THAT(looked.codes, IsEmpty());
    EXPECT_EQ(looked.advice, Advice::Light);
}

TEST(LiveReader, AdvisesToComeCloser)
{
    // 1.5 pixels a module, and a stain over what must not be lost.
    Image symbol = drawSymbol(label);
    cover(symbol, 8, 0, 10, 25, 30);
    const Image frame =
        support::seenAt(symbol, {935, 515, 984, 517, 982, 566, 933, 564}, 1920, 1080);
    const Looked looked = lookOnce(frame);
    EXPECT_THAT(looked.codes, IsEmpty());
    EXPECT_EQ(looked.advice, Advice::Closer);
}

TEST(LiveReader, AdvisesToHoldStill)
{
    Image frame = frameWith(drawSymbol(label));
    support::blurAcross(frame, 6);
    const Looked looked = lookOnce(frame);
    EXPECT_THAT(looked.codes, IsEmpty());
    EXPECT_EQ(looked.advice, Advice::Still);
}

TEST(LiveReader, AdvisesToWipe)
{
    Image symbol = drawSymbol(label);
    cover(symbol, 8, 0, 10, 25, 30);
    const Looked looked = lookOnce(frameWith(symbol));
    EXPECT_THAT(looked.codes, IsEmpty());
    EXPECT_EQ(looked.advice, Advice::Wipe);
}

TEST(LiveReader, AdvisesNothingWhereNothingIs)
{
    EXPECT_EQ(lookOnce(plainPicture(1920, 1080)).advice, Advice::None);
    EXPECT_EQ(lookOnce(frameWith(drawSymbol(label))).advice, Advice::None);
}

TEST(LiveReader, SeesNothingInViewsThatContradictThemselves)
{
    const std::uint8_t pixel = 0;
    LiveReader reader;
    for (const LuminanceView& view : {LuminanceView{}, LuminanceView{&pixel, 0, 1, 1, 1},
                                      LuminanceView{&pixel, 64, 64, 8, 1}}) {
        const Looked looked = reader.look(view);
        EXPECT_THAT(looked.codes, IsEmpty());
        EXPECT_EQ(looked.advice, Advice::None);
    }
}

}  // namespace spile::scan
