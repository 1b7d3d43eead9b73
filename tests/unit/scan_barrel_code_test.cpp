#include "core/base/simulated.hpp"
#include "core/scan/barrel_code.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace spile::scan {

static constexpr std::string_view mark = "K4TN";

static std::string codeFor(std::string_view serial)
{
    return std::string(serial) + checkCharacter(std::string(mark).append(serial));
}

TEST(BarrelCode, IsAcceptedOnlyUnderItsOwnMark)
{
    SeededRandom random(1);
    const std::string code = randomCode(mark, random);
    EXPECT_TRUE(isCode(mark, code)) << code;
    EXPECT_FALSE(isCode("K4TM", code)) << code;
    EXPECT_FALSE(isCode("K4T", code)) << code;
}

TEST(BarrelCode, HasSixCharactersOfTheAlphabet)
{
    SeededRandom random(2);
    const std::string code = randomCode(mark, random);
    EXPECT_FALSE(isCode(mark, code.substr(0, 5)));
    EXPECT_FALSE(isCode(mark, code + code.back()));
    EXPECT_FALSE(isCode(mark, ""));
    EXPECT_FALSE(isCode(mark, codeFor("ABCDO")));  // check right, O not of the alphabet
}

TEST(BarrelCode, SkipsSerialsWhoseCheckWouldBeMistaken)
{
    // There are such serials, and they are refused although their check agrees.
    int found = 0;
    for (const char a : codeAlphabet) {
        for (const char b : codeAlphabet) {
            const std::string code = codeFor(std::string("777") + a + b);
            if (codeAlphabet.find(code.back()) == std::string_view::npos) {
                ++found;
                EXPECT_FALSE(isCode(mark, code)) << code;
            }
        }
    }
    EXPECT_GT(found, 50);
}

TEST(Mark, HasFourCharactersOfTheAlphabet)
{
    EXPECT_TRUE(isMark("K4TN"));
    EXPECT_FALSE(isMark("K4T"));
    EXPECT_FALSE(isMark("K4TNN"));
    EXPECT_FALSE(isMark("K4TI"));
    EXPECT_FALSE(isMark("k4tn"));
    EXPECT_FALSE(isMark(""));
}

TEST(BarrelCode, IsShownInTwoHalves)
{
    EXPECT_EQ(shown("7K2QFM"), "7K2-QFM");
    EXPECT_EQ(shown("7K"), "7K-");  // not a code, but no crash
}

TEST(LabelText, HoldsPrefixMarkAndCode)
{
    const LabelText label{std::string(mark), codeFor("7K2QF")};
    EXPECT_EQ(labelText(label), "S1K4TN" + label.code);
    EXPECT_EQ(parseLabelText(labelText(label)), label);
}

TEST(LabelText, IsNotReadFromAnythingElse)
{
    const std::string code = codeFor("7K2QF");
    const std::string good = "S1K4TN" + code;
    ASSERT_TRUE(parseLabelText(good));
    std::string wrongCheck = good;
    wrongCheck.back() = wrongCheck.back() == '0' ? '1' : '0';
    EXPECT_FALSE(parseLabelText(wrongCheck));
    EXPECT_FALSE(parseLabelText("S2K4TN" + code));
    EXPECT_FALSE(parseLabelText("s1K4TN" + code));
    EXPECT_FALSE(parseLabelText("S1K4TM" + code));
    EXPECT_FALSE(parseLabelText(good + " "));
    EXPECT_FALSE(parseLabelText(" " + good));
    EXPECT_FALSE(parseLabelText(good.substr(0, 11)));
    EXPECT_FALSE(parseLabelText(""));
    EXPECT_FALSE(parseLabelText("S1"));
    EXPECT_FALSE(parseLabelText("https://example.org/"));
}

TEST(TypedCode, ForgivesCaseHyphenSpacesAndLookalikes)
{
    const std::string code = codeFor("10VQF");
    for (const std::string serial :
         {"10VQF", "10vqf", "1-0vqf", " 1 0 v q f", "IOUQF", "louqf", "L0vqF"}) {
        SCOPED_TRACE(serial);
        const auto read = parseTyped(mark, serial + "-" + code.back() + " ");
        ASSERT_TRUE(read);
        EXPECT_EQ(*read, code);
    }
}

TEST(TypedCode, SaysWhatIsWrong)
{
    const std::string code = codeFor("7K2QF");
    const auto shortOne = parseTyped(mark, "7K2-QF");
    ASSERT_FALSE(shortOne);
    EXPECT_EQ(shortOne.error(), (Error{ErrorCode::Malformed, "barrel code", "7K2-QF",
                                       "6 letters or digits, as on the label: 7K2-QFM"}));
    const auto strange = parseTyped(mark, "7K2?FM");
    ASSERT_FALSE(strange);
    EXPECT_EQ(strange.error().limit, shortOne.error().limit);
    std::string slip = code;
    slip[0] = '8';
    const auto wrong = parseTyped(mark, slip);
    ASSERT_FALSE(wrong);
    EXPECT_EQ(wrong.error().code, ErrorCode::Malformed);
    EXPECT_EQ(wrong.error().value, slip);
    EXPECT_THAT(wrong.error().limit, testing::HasSubstr("another cellar than K4TN"));
}

TEST(NearCodes, AreNoneForWhatIsFarFromAnyCode)
{
    EXPECT_THAT(nearCodes(mark, ""), testing::IsEmpty());
    EXPECT_THAT(nearCodes(mark, "7K2Q"), testing::IsEmpty());
    EXPECT_THAT(nearCodes(mark, "7K2QFM77"), testing::IsEmpty());
    EXPECT_THAT(nearCodes(mark, "7K??FM"), testing::IsEmpty());
    EXPECT_THAT(nearCodes("nope", "7K2QFM"), testing::IsEmpty());
}

TEST(RandomMark, IsAMarkAndDiffers)
{
    SeededRandom random(3);
    const std::string first = randomMark(random);
    EXPECT_TRUE(isMark(first)) << first;
    EXPECT_NE(first, randomMark(random));
}

}  // namespace spile::scan
