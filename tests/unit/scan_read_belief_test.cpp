#include "core/base/simulated.hpp"
#include "core/scan/read_belief.hpp"

#include <gtest/gtest.h>

namespace spile::scan {

static Code labelOf(std::uint64_t seed)
{
    SeededRandom random(seed);
    const std::string mark = randomMark(random);
    return {labelText({mark, randomCode(mark, random)}), Format::QrCode, {}};
}

static Code other(std::string text) { return {std::move(text), Format::QrCode, {}}; }

static constexpr Milliseconds frame{33};

TEST(ReadBelief, BelievesALabelOfOursAtTheFirstReadAndOnce)
{
    ReadBelief belief;
    EXPECT_TRUE(belief.take(labelOf(1), frame));
    EXPECT_FALSE(belief.take(labelOf(1), 2 * frame));
    EXPECT_FALSE(belief.take(labelOf(1), 3 * frame));
}

TEST(ReadBelief, BelievesAnotherCodeAfterTwoEqualReadsAndOnce)
{
    ReadBelief belief;
    EXPECT_FALSE(belief.take(other("keg 12"), frame));
    EXPECT_TRUE(belief.take(other("keg 12"), 2 * frame));
    EXPECT_FALSE(belief.take(other("keg 12"), 3 * frame));
}

TEST(ReadBelief, WantsThemInARow)
{
    ReadBelief belief;
    EXPECT_FALSE(belief.take(other("a"), frame));
    EXPECT_FALSE(belief.take(other("b"), 2 * frame));
    EXPECT_FALSE(belief.take(other("a"), 3 * frame));
    EXPECT_TRUE(belief.take(other("a"), 4 * frame));
}

TEST(ReadBelief, TakesALabelWithAWrongCheckForAnotherCode)
{
    Code wrong = labelOf(1);
    char& last = wrong.text.back();
    last = last == '7' ? '8' : '7';
    ReadBelief belief;
    EXPECT_FALSE(belief.take(wrong, frame));
    EXPECT_TRUE(belief.take(wrong, 2 * frame));
}

TEST(ReadBelief, ForgetsAfterAPause)
{
    ReadBelief belief;
    EXPECT_FALSE(belief.take(other("a"), frame));
    EXPECT_FALSE(belief.take(other("a"), frame + ReadBelief::pause + Milliseconds(1)));

    EXPECT_TRUE(belief.take(labelOf(1), 5 * ReadBelief::pause));
    EXPECT_FALSE(belief.take(labelOf(1), 6 * ReadBelief::pause));  // no longer than the pause
    EXPECT_TRUE(belief.take(labelOf(1), 7 * ReadBelief::pause + Milliseconds(1)));
}

TEST(ReadBelief, BelievesAnewAfterAnotherCodeOrWhenTold)
{
    ReadBelief belief;
    EXPECT_TRUE(belief.take(labelOf(1), frame));
    EXPECT_TRUE(belief.take(labelOf(2), 2 * frame));
    EXPECT_TRUE(belief.take(labelOf(1), 3 * frame));
    belief.forget();
    EXPECT_TRUE(belief.take(labelOf(1), 4 * frame));
}

}  // namespace spile::scan
