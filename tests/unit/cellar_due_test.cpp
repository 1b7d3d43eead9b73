// When a barrel wants what next: the rules of nextStep() alone, then as the acts lead to them.
#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/tasting.hpp"
#include "core/cellar/barrel_summary.hpp"
#include "core/cellar/queries.hpp"
#include "tests/support/small_cellar.hpp"

#include <gtest/gtest.h>

namespace spile::cellar {

using std::chrono::days;

namespace {

const Instant filledAt = *fromIso("2025-03-01T10:00Z");

BarrelFacts freshlyFilled()
{
    BarrelFacts facts;
    facts.filled = true;
    facts.filledAt = filledAt;
    facts.filledToTheDay = true;
    return facts;
}

void expectStep(const BarrelFacts& facts, const std::string& step, std::optional<Instant> due)
{
    const NextStep next = nextStep(facts);
    EXPECT_EQ(next.step, step);
    EXPECT_EQ(next.due, due);
}

}  // namespace

TEST(NextStep, OfAnEmptyBarrelIsToFillItWithoutADate) { expectStep({}, "fill", std::nullopt); }

TEST(NextStep, AfterFillingIsToLookForLeaksAnHourADayThreeAndSevenDaysOn)
{
    BarrelFacts facts = freshlyFilled();
    expectStep(facts, "check for leaks", filledAt + std::chrono::hours(1));
    facts.lastLooked = filledAt + std::chrono::minutes(30);
    expectStep(facts, "check for leaks", filledAt + std::chrono::hours(1));
    facts.lastLooked = filledAt + std::chrono::hours(1);
    expectStep(facts, "check for leaks", filledAt + days(1));
    facts.lastLooked = filledAt + days(2);
    expectStep(facts, "check for leaks", filledAt + days(3));
    facts.lastLooked = filledAt + days(3);
    expectStep(facts, "check for leaks", filledAt + days(7));
}

TEST(NextStep, OfABarrelThatWasLookedAtIsTheFirstTastingAfter182Days)
{
    BarrelFacts facts = freshlyFilled();
    facts.lastLooked = filledAt + days(7);
    expectStep(facts, "taste", filledAt + days(182));
}

TEST(NextStep, OfABarrelFilledInSomeMonthIsTheFirstTasting)
{
    BarrelFacts facts = freshlyFilled();
    facts.filledToTheDay = false;
    expectStep(facts, "taste", filledAt + days(182));
}

TEST(NextStep, AfterATastingIsTheNextOneIn30Days)
{
    BarrelFacts facts = freshlyFilled();
    facts.lastLooked = filledAt + days(200);
    facts.lastTasted = filledAt + days(200);
    expectStep(facts, "taste", filledAt + days(230));
}

TEST(NextStep, AfterTheTastingOfTheFillIsTheFirstOneInWood)
{
    BarrelFacts facts = freshlyFilled();
    facts.lastLooked = filledAt + days(8);
    facts.lastTasted = filledAt + days(7);
    expectStep(facts, "taste", filledAt + days(182));
    facts.lastTasted = filledAt + days(8);
    expectStep(facts, "taste", filledAt + days(38));
}

TEST(NextStep, FollowsTheVerdict)
{
    BarrelFacts facts = freshlyFilled();
    facts.lastLooked = filledAt + days(200);
    facts.lastTasted = filledAt + days(200);
    facts.verdictAt = filledAt + days(201);
    for (const char* verdict : {"ready", "blend", "destroy"}) {
        facts.verdict = verdict;
        expectStep(facts, "empty", facts.verdictAt);
    }
    facts.verdict = "hold";
    expectStep(facts, "taste", filledAt + days(230));
    facts.verdictUntil = filledAt + days(400);
    expectStep(facts, "taste", filledAt + days(400));
    for (const char* verdict : {"top up", "move"}) {
        facts.verdict = verdict;
        expectStep(facts, "taste", filledAt + days(230));
    }
}

namespace {

class Due : public testing::Test {
protected:
    support::TestDevice device{91};
    std::unique_ptr<Cellar> cellar = device.newCellar();
    support::SmallCellar small = support::fillSmallCellar(*cellar);
    Instant filled = device.clock.now();

    BarrelRow row() { return barrelsWithCode(cellar->database(), small.code)->front(); }
    void expectDue(const std::string& step, std::optional<Instant> due)
    {
        EXPECT_EQ(row().nextStep, step);
        EXPECT_EQ(row().due, due);
    }
    Instant later(days by)
    {
        device.clock.pass(by);
        return device.clock.now();
    }
    std::vector<BarrelRow> dueBy(Instant until)
    {
        return *barrelsDue(cellar->database(), until, {}, 10);
    }
    Result<EntryId> taste(Circumstance circumstance = {})
    {
        circumstance.person = small.person;
        return recordTaste(
            *cellar,
            {.barrel = small.barrel, .scores = {{"oak", 5}}, .circumstance = circumstance});
    }
};

}  // namespace

TEST_F(Due, FollowsABarrelThroughItsFill)
{
    const Instant hourLater = filled + std::chrono::hours(1);
    expectDue("check for leaks", hourLater);
    EXPECT_TRUE(dueBy(hourLater - Milliseconds(1)).empty());
    EXPECT_EQ(dueBy(hourLater).size(), 1U);

    later(days(1));
    ASSERT_TRUE(recordCheck(*cellar, {.barrel = small.barrel, .finding = "dry"}));
    expectDue("check for leaks", filled + days(3));
    later(days(6));
    ASSERT_TRUE(recordCheck(*cellar, {.barrel = small.barrel, .finding = "dry"}));
    expectDue("taste", filled + days(182));

    const Instant tasted = later(days(180));
    ASSERT_TRUE(taste());
    expectDue("taste", tasted + days(30));
    EXPECT_EQ(row().tastings, 1);

    const Instant judged = later(days(1));
    ASSERT_TRUE(recordVerdict(
        *cellar, {.barrel = small.barrel, .verdict = "hold", .until = judged + days(90)}));
    expectDue("taste", judged + days(90));

    const Instant ready = later(days(90));
    ASSERT_TRUE(recordVerdict(*cellar, {.barrel = small.barrel, .verdict = "ready"}));
    expectDue("empty", ready);

    later(days(3));
    ASSERT_TRUE(recordEmpty(*cellar, {.barrel = small.barrel}));
    expectDue("fill", std::nullopt);
    EXPECT_FALSE(row().filled);
    EXPECT_TRUE(dueBy(filled + days(10'000)).empty());

    const Instant refilled = later(days(1));
    ASSERT_TRUE(recordFill(*cellar, {.barrel = small.barrel}));
    expectDue("check for leaks",
              refilled + std::chrono::hours(1));  // nothing of the fill before counts
    EXPECT_EQ(row().tastings, 0);
    EXPECT_EQ(row().fillNumber, 2);
}

TEST_F(Due, TakesADrawForALookAtTheBarrel)
{
    later(days(7));
    ASSERT_TRUE(recordDraw(
        *cellar, {.barrel = small.barrel, .volume = millilitres(100), .method = "valve"}));
    expectDue("taste", filled + days(182));
}

TEST_F(Due, GoesBackWhenATastingIsVoided)
{
    later(days(190));
    const auto tasting = taste();
    ASSERT_TRUE(tasting);
    expectDue("taste", device.clock.now() + days(30));
    ASSERT_TRUE(voidEntry(*cellar, *tasting));
    expectDue("check for leaks", filled + std::chrono::hours(1));
}

TEST_F(Due, CountsABackDatedTastingFromItsDate)
{
    later(days(200));
    const Instant at = filled + days(190);
    ASSERT_TRUE(taste({.at = ledger::EventTime{at}}));
    expectDue("taste", at + days(30));
}

TEST_F(Due, OfABarrelEmptiedAndRefilledOnOneDateIsThatOfTheNewFill)
{
    // As a desk writes it up afterwards: both with the date of that day.
    later(days(300));
    const Circumstance thatDay{.at = ledger::EventTime{*fromIso("2026-06-20")}};
    ASSERT_TRUE(recordEmpty(*cellar, {.barrel = small.barrel, .circumstance = thatDay}));
    ASSERT_TRUE(recordFill(
        *cellar, {.barrel = small.barrel, .volume = litres(150), .circumstance = thatDay}));
    EXPECT_TRUE(row().filled);
    EXPECT_EQ(row().volume, litres(150));
    expectDue("check for leaks", *fromIso("2026-06-20T01:00Z"));
}

TEST_F(Due, IsNotRuledByAVerdictDatedInTheFuture)
{
    const Instant now = later(days(200));
    ASSERT_TRUE(
        recordVerdict(*cellar, {.barrel = small.barrel,
                                .verdict = "ready",
                                .circumstance = {.at = ledger::EventTime{now + days(3650)}}}));
    const Instant judged = later(days(1));
    ASSERT_TRUE(recordVerdict(
        *cellar, {.barrel = small.barrel, .verdict = "hold", .until = judged + days(60)}));
    expectDue("taste", judged + days(60));
}

TEST_F(Due, IsNotRuledByOtherFactsDatedInTheFuture)
{
    const Instant now = later(days(200));
    const Circumstance future{.at = ledger::EventTime{now + days(3650)}};
    ASSERT_TRUE(taste(future));
    expectDue("taste", now + days(30));
    ASSERT_TRUE(recordGauge(
        *cellar,
        {.barrel = small.barrel, .volume = litres(180), .method = "dip", .circumstance = future}));
    later(days(1));
    ASSERT_TRUE(
        recordDraw(*cellar, {.barrel = small.barrel, .volume = litres(1), .method = "valve"}));
    EXPECT_NEAR(inLitres(*row().volume), 179, 1e-9);
    const SubjectId rack = *registerPlace(*cellar, "Rack 1");
    const SubjectId floor = *registerPlace(*cellar, "Floor");
    ASSERT_TRUE(recordMove(*cellar, small.barrel, rack, future));
    later(days(1));
    ASSERT_TRUE(recordMove(*cellar, small.barrel, floor));
    EXPECT_EQ(row().place, "Floor");
}

TEST_F(Due, OfABarrelWhoseFillIsDatedInTheFutureCountsFromItsRecording)
{
    later(days(200));
    ASSERT_TRUE(recordEmpty(*cellar, {.barrel = small.barrel}));
    const Instant now = later(days(1));
    const Instant claimed = now + days(3650);
    ASSERT_TRUE(recordFill(*cellar, {.barrel = small.barrel,
                                     .volume = litres(100),
                                     .circumstance = {.at = ledger::EventTime{claimed}}}));
    EXPECT_EQ(row().filledAt, claimed);  // shown as such
    expectDue("check for leaks", now + std::chrono::hours(1));
    later(days(1));
    ASSERT_TRUE(
        recordDraw(*cellar, {.barrel = small.barrel, .volume = litres(1), .method = "valve"}));
    EXPECT_NEAR(inLitres(*row().volume), 99, 1e-9);
    later(days(1));
    ASSERT_TRUE(recordEmpty(*cellar, {.barrel = small.barrel}));
    EXPECT_FALSE(row().filled);
}

TEST_F(Due, OfANewFillIsNotRuledByFactsOfTheOldOneDatedInTheFuture)
{
    const Instant now = later(days(200));
    const Circumstance future{.at = ledger::EventTime{now + days(3650)}};
    ASSERT_TRUE(taste(future));
    ASSERT_TRUE(recordVerdict(
        *cellar, {.barrel = small.barrel, .verdict = "ready", .circumstance = future}));
    later(days(1));
    ASSERT_TRUE(recordEmpty(*cellar, {.barrel = small.barrel}));
    const Instant refilled = later(days(1));
    ASSERT_TRUE(recordFill(*cellar, {.barrel = small.barrel}));
    expectDue("check for leaks", refilled + std::chrono::hours(1));
    EXPECT_EQ(row().tastings, 0);
}

}  // namespace spile::cellar
