// What is stored is verified again part by part: what is spoilt is found within one round, and a
// round that is cut short goes on where it was.
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/photographing.hpp"
#include "core/cellar/verifying.hpp"
#include "tests/support/small_cellar.hpp"
#include "tests/support/test_device.hpp"

#include <fstream>
#include <gmock/gmock.h>

namespace spile::cellar {

namespace {

constexpr int part = 5;

class Verifying : public testing::Test {
protected:
    support::TestDevice device{1};
    std::unique_ptr<Cellar> cellar = device.newCellar();
    support::SmallCellar small = support::fillSmallCellar(*cellar);

    void draw(int count)
    {
        for (int i = 0; i < count; ++i) {
            device.clock.pass(std::chrono::minutes(1));
            ASSERT_TRUE(recordDraw(
                *cellar, {.barrel = small.barrel, .volume = millilitres(60), .method = "valve"}));
        }
    }
    Round step()
    {
        const auto round = verifyNext(cellar->database(), cellar->ledger().photos(),
                                      *roundSoFar(cellar->database()), part, device.clock.now());
        EXPECT_TRUE(round);
        EXPECT_TRUE(keepRound(*cellar, *round));
        return *round;
    }
    // The steps of one whole round, and how it ended.
    std::pair<int, Round> wholeRound()
    {
        for (int steps = 1;; ++steps) {
            const Round round = step();
            if (round.entry == 0 || steps > 1000) {
                return {steps, round};
            }
        }
    }
    std::int64_t entries() { return *cellar->database().integer(0, "SELECT count(*) FROM entry"); }
    void spoilBody()
    {
        ASSERT_TRUE(cellar->database().run(
            "DROP TRIGGER entry_is_never_changed; UPDATE entry SET body = x'a0' WHERE n = "
            "(SELECT max(n) FROM entry);"));
    }
};

}  // namespace

TEST_F(Verifying, ARoundTakesAllInPartsAndEndsWithItsDate)
{
    draw(20);
    EXPECT_FALSE(roundSoFar(cellar->database())->wholeAt);
    const auto [steps, round] = wholeRound();
    EXPECT_GE(steps, entries() / part);
    EXPECT_LE(steps, entries() / part + 2);
    EXPECT_EQ(round.wholeAt, device.clock.now());
    EXPECT_EQ(round.wrong(), "");
}

TEST_F(Verifying, ASpoiltRecordIsFoundAndToldUntilARoundIsSound)
{
    draw(12);
    wholeRound();
    spoilBody();
    const auto [steps, round] = wholeRound();
    EXPECT_THAT(round.wrong(), testing::HasSubstr("its body is not the one"));
    EXPECT_THAT(step().wrong(), testing::HasSubstr("its body is not the one"))
        << "while the next round runs";
}

TEST_F(Verifying, ASpoiltPhotoIsFound)
{
    const auto made = recordPhoto(
        *cellar, {.barrel = small.barrel, .picture = support::smallPicture(), .purpose = "colour"});
    ASSERT_TRUE(made) << support::textOf(made.error());
    EXPECT_EQ(wholeRound().second.wrong(), "");
    const auto hash = *cellar->database().first(
        [](const ledger::Row& row) { return row.id<Sha256>(0); }, "SELECT sha256 FROM photo");
    std::ofstream(cellar->ledger().photos().pathOf(*hash), std::ios::binary) << "no picture";
    EXPECT_THAT(wholeRound().second.wrong(), testing::HasSubstr("photo"));
}

TEST_F(Verifying, GoesOnWhereItWasAfterAStart)
{
    draw(30);
    step();
    const Round before = step();
    cellar.reset();
    cellar = device.reopen();
    EXPECT_EQ(roundSoFar(cellar->database())->entry, before.entry);
    EXPECT_GT(step().entry, before.entry);
}

TEST_F(Verifying, StopsWhenItIsAskedTo)
{
    draw(10);
    CancelToken cancel;
    cancel.cancel();
    const auto stopped = verifyNext(cellar->database(), cellar->ledger().photos(), {}, part,
                                    device.clock.now(), Job({}, &cancel));
    ASSERT_FALSE(stopped);
    EXPECT_EQ(stopped.error().code, ErrorCode::Cancelled);
}

}  // namespace spile::cellar
