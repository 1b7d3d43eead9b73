#include "core/base/simulated.hpp"
#include "core/scan/barrel_code.hpp"
#include "core/scan/label_bits.hpp"
#include "core/scan/label_decoder.hpp"
#include "core/scan/reed_solomon.hpp"
#include "core/scan/soft_sum.hpp"
#include "core/scan/symbol.hpp"

#include <algorithm>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace spile::scan {

// ZXing's writer is the other opinion: it chooses one of the eight masks.
TEST(LabelBits, DrawsWhatZxingDraws)
{
    for (const char* text :
         {"S1K4TN7K2QFM", "ABC-23456789DEF", "A B$C%D*E+F-G.H/I:J9", "7KM45678901"}) {
        const auto grid = makeQr(text).value();
        const auto word = label::encode(text);
        ASSERT_TRUE(word);
        int equal = 0;
        for (int mask = 0; mask < label::masks; ++mask) {
            const auto drawn = label::draw(*word, mask);
            equal += std::equal(drawn.begin(), drawn.end(), grid.modules.begin()) ? 1 : 0;
        }
        EXPECT_EQ(equal, 1) << text;
    }
}

TEST(LabelBits, DecodesOnlyWhatItEncodes)
{
    for (const char* text : {"A", "7K", "S1K4TN7K2QFM", "A B$C%D*E+F-G.H/I:J9"}) {
        auto word = *label::encode(text);
        EXPECT_EQ(label::decode(word), text);
        word[label::dataBytes - 1] ^= 1;  // padding, or the last character
        EXPECT_NE(label::decode(word), text);
        word = *label::encode(text);
        word.back() ^= 1;  // parity
        EXPECT_EQ(label::decode(word), std::nullopt);
    }
    EXPECT_EQ(label::encode(""), std::nullopt);
    EXPECT_EQ(label::encode("lower"), std::nullopt);
    EXPECT_EQ(label::encode("123456789012345678901"), std::nullopt);
}

TEST(LabelBits, KnowsWhatAllLabelsHaveInCommon)
{
    const auto& common = label::ownLabels();
    for (const char* text : {"S1K4TN7K2QFM", "S10000000000", "S1ZZZZZZZZZZ"}) {
        const auto word = *label::encode(text);
        for (std::size_t i = 0; i < word.size(); ++i) {
            EXPECT_EQ(word[i] & common.known[i], common.value[i]) << text << " " << i;
        }
    }
}

static std::vector<float> softsOf(std::string_view text, int mask)
{
    const auto drawn = label::draw(*label::encode(text), mask);
    std::vector<float> softs(drawn.size());
    std::transform(drawn.begin(), drawn.end(), softs.begin(),
                   [](bool dark) { return dark ? 1.0F : -1.0F; });
    return softs;
}

// Make the first bytes say nothing or the contrary.
static void spoil(std::vector<float>& softs, int bytes, float by)
{
    for (int i = 0; i < 8 * bytes; ++i) {
        softs[label::bitModules()[static_cast<std::size_t>(i)]] *= by;
    }
}

TEST(CorrectLabel, BearsFourteenWrongCodewordsOrTwentyUnclearOnes)
{
    const char* text = "ABC-23456789DEF";
    for (int mask = 0; mask < label::masks; ++mask) {
        auto softs = softsOf(text, mask);
        spoil(softs, 14, -1);
        EXPECT_EQ(label::correctLabel(softs), std::nullopt) << "agrees too little: plainly wrong";
        softs = softsOf(text, mask);
        spoil(softs, 14, -0.3F);
        const auto wrong = label::correctLabel(softs);
        ASSERT_TRUE(wrong) << mask;
        EXPECT_EQ(wrong->text, text);
        EXPECT_EQ(wrong->mask, mask);
        softs = softsOf(text, mask);
        spoil(softs, 20, -0.1F);
        EXPECT_TRUE(label::correctLabel(softs)) << mask;
        spoil(softs, 26, -1);
        EXPECT_FALSE(label::correctLabel(softs)) << mask;
    }
}

TEST(CorrectLabel, TakesForGrantedWhatOurLabelsShare)
{
    // Three codewords at the front and five of padding are known of a label of ours.
    SeededRandom random(1);
    const std::string text = labelText({"K4TN", randomCode("K4TN", random)});
    auto own = softsOf(text, 3);
    auto other = softsOf("S2" + text.substr(2), 3);
    for (auto* softs : {&own, &other}) {
        spoil(*softs, 25, -0.1F);
    }
    ASSERT_TRUE(label::correctLabel(own));
    EXPECT_EQ(label::correctLabel(own)->text, text);
    EXPECT_FALSE(label::correctLabel(other));
}

TEST(ReedSolomon, MatchesAPublishedSymbol)
{
    // ISO/IEC 18004:2015, annex I: version 1-M of "01234567".
    const std::array<std::uint8_t, 16> data{0x10, 0x20, 0x0c, 0x56, 0x61, 0x80, 0xec, 0x11,
                                            0xec, 0x11, 0xec, 0x11, 0xec, 0x11, 0xec, 0x11};
    std::array<std::uint8_t, 10> parity{};
    addParity(data, parity);
    EXPECT_THAT(parity,
                testing::ElementsAre(0xa5, 0x24, 0xd4, 0xc1, 0xed, 0x36, 0xc7, 0x87, 0x2c, 0x55));
}

TEST(SoftSum, AddsFramesOfOneSymbolAndBeginsAnewWithAnother)
{
    SoftSum sum;
    const auto first = softsOf("S1K4TN7K2QFM", 0);
    const auto other = softsOf("S1K4TNZZZZZZ", 5);
    auto weak = first;
    for (float& soft : weak) {
        soft *= 0.5F;
    }
    EXPECT_FALSE(sum.take(first, 1));
    EXPECT_TRUE(sum.take(weak, 3));
    EXPECT_FLOAT_EQ(sum.mean()[0], (1 + 3 * 0.5F) / 4);
    EXPECT_FALSE(sum.take(other, 1));
    EXPECT_FLOAT_EQ(sum.mean()[0], other[0]);
    sum.forget();
    EXPECT_FALSE(sum.take(other, 1));
}

}  // namespace spile::scan
