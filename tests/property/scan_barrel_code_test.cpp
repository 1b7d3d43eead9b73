#include "core/base/simulated.hpp"
#include "core/scan/barrel_code.hpp"

#include <algorithm>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace spile::scan {

static constexpr std::string_view checkAlphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

static rc::Gen<std::string> textOf(std::string_view alphabet)
{
    return rc::gen::container<std::string>(
        rc::gen::elementOf(std::string(alphabet.begin(), alphabet.end())));
}

static rc::Gen<LabelText> anyLabel()
{
    return rc::gen::map(rc::gen::arbitrary<std::uint64_t>(), [](std::uint64_t seed) {
        SeededRandom random(seed);
        const std::string mark = randomMark(random);
        return LabelText{mark, randomCode(mark, random)};
    });
}

static rc::Gen<std::size_t> placeIn(std::size_t length)
{
    return rc::gen::inRange<std::size_t>(0, length);
}

static bool isNear(const LabelText& label, std::string_view typed)
{
    const auto near = nearCodes(label.cellarMark, typed);
    return std::find(near.begin(), near.end(), label.code) != near.end();
}

RC_GTEST_PROP(CheckCharacter, FindsEverySingleWrongCharacter, ())
{
    const std::string text = *textOf(checkAlphabet);
    RC_PRE(!text.empty());
    const std::size_t place = *placeIn(text.size());
    for (const char wrong : checkAlphabet) {
        std::string slip = text;
        slip[place] = wrong;
        RC_ASSERT((checkCharacter(slip) == checkCharacter(text)) == (wrong == text[place]));
    }
}

// Exhaustive rather than random, since the system misses a few: all pairs of neighbours at the end
// of a serial, after each character.
TEST(CheckCharacter, FindsMoreThan99PercentOfSwappedNeighbours)
{
    const auto isMissed = [](const std::string& text) {
        std::string swapped = text;
        std::swap(swapped[text.size() - 1], swapped[text.size() - 2]);
        return swapped != text && checkCharacter(swapped) == checkCharacter(text);
    };
    const std::size_t n = codeAlphabet.size();
    std::size_t missed = 0;
    for (std::size_t i = 0; i < n * n * n; ++i) {
        const std::string tail = {codeAlphabet[i / n / n], codeAlphabet[i / n % n],
                                  codeAlphabet[i % n]};
        missed += isMissed("K4TN7K" + tail) ? 1U : 0U;
    }
    EXPECT_LT(100 * missed, n * n * (n - 1));
}

RC_GTEST_PROP(BarrelCode, IsValidWhenMadeAndReadsBackFromItsLabel, ())
{
    const LabelText label = *anyLabel();
    RC_ASSERT(isMark(label.cellarMark));
    RC_ASSERT(isCode(label.cellarMark, label.code));
    RC_ASSERT(labelText(label).size() == 12U);
    RC_ASSERT((parseLabelText(labelText(label)) == label));
    RC_ASSERT((parseTyped(label.cellarMark, shown(label.code)) == label.code));
}

RC_GTEST_PROP(LabelText, IsNeverReadWithOneWrongCharacter, ())
{
    std::string text = labelText(*anyLabel());
    const std::size_t place = *placeIn(text.size());
    const char wrong = *rc::gen::arbitrary<char>();
    RC_PRE(wrong != text[place]);
    text[place] = wrong;
    RC_ASSERT(!parseLabelText(text));
}

RC_GTEST_PROP(LabelText, ReadsOnlyWhatItWouldWrite, (const std::string& text))
{
    const auto label = parseLabelText(text);
    RC_ASSERT((!label || labelText(*label) == text));  // its own || would not stop early
}

RC_GTEST_PROP(TypedCode, AnswersAnyText, (const std::string& typed))
{
    const auto code = parseTyped("K4TN", typed);
    RC_ASSERT((code ? isCode("K4TN", *code) : code.error().value == typed));
}

RC_GTEST_PROP(NearCodes, ContainTheCodeAfterOneWrongCharacter, ())
{
    const LabelText label = *anyLabel();
    std::string typed = label.code;
    const std::size_t place = *placeIn(typed.size());
    typed[place] = *rc::gen::elementOf(std::string("0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ?*"));
    RC_PRE(tidied(typed) != label.code);
    RC_ASSERT(isNear(label, typed));
}

RC_GTEST_PROP(NearCodes, ContainTheCodeAfterAMissingOrSurplusCharacter, ())
{
    const LabelText label = *anyLabel();
    std::string missing = label.code;
    missing.erase(*placeIn(missing.size()), 1);
    RC_ASSERT(isNear(label, missing));
    std::string surplus = label.code;
    surplus.insert(*placeIn(surplus.size() + 1), 1, *rc::gen::elementOf(std::string("07AXZ?")));
    RC_ASSERT(isNear(label, surplus));
}

RC_GTEST_PROP(NearCodes, ContainTheCodeAfterASwapOfNeighbours, ())
{
    const LabelText label = *anyLabel();
    std::string typed = label.code;
    const std::size_t place = *placeIn(typed.size() - 1);
    std::swap(typed[place], typed[place + 1]);
    RC_PRE(typed != label.code);
    RC_ASSERT(isNear(label, typed));
}

RC_GTEST_PROP(NearCodes, AreValidSortedUniqueAndFew, ())
{
    const std::string typed = *rc::gen::oneOf(
        rc::gen::resize(8, textOf(codeAlphabet)),
        rc::gen::map(anyLabel(), [](const LabelText& label) { return label.code; }));
    const auto near = nearCodes("K4TN", typed);
    RC_ASSERT(near.size() <= 12U);
    RC_ASSERT(std::is_sorted(near.begin(), near.end()));
    RC_ASSERT(std::adjacent_find(near.begin(), near.end()) == near.end());
    for (const std::string& code : near) {
        RC_ASSERT(isCode("K4TN", code));
        RC_ASSERT(code != tidied(typed));
    }
}

}  // namespace spile::scan
