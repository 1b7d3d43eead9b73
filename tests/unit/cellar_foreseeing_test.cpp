// Outlooks as they are kept, and when they say that a barrel is due.
#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/foreseeing.hpp"
#include "core/cellar/acts/tasting.hpp"
#include "core/cellar/checking.hpp"
#include "tests/support/small_cellar.hpp"

#include <gtest/gtest.h>

namespace spile::cellar {

using std::chrono::days;

namespace {

class Foreseeing : public testing::Test {
protected:
    support::TestDevice device{93};
    std::unique_ptr<Cellar> cellar = device.newCellar();
    support::SmallCellar small = support::fillSmallCellar(*cellar);
    Instant filled = device.clock.now();

    BarrelRow row() { return *barrelById(cellar->database(), small.barrel).value(); }
    Instant later(days by)
    {
        device.clock.pass(by);
        return device.clock.now();
    }
    EntryId taste()
    {
        return *recordTaste(*cellar, {.barrel = small.barrel,
                                      .scores = {{"oak", 5}},
                                      .circumstance = {.person = small.person}});
    }
    // Past the looks for leaks, so that a tasting is next.
    void rest()
    {
        later(days(8));
        ASSERT_TRUE(recordCheck(*cellar, {.barrel = small.barrel, .finding = "dry"}));
    }
    KeptOutlook foreseen(Instant next, const std::string& reason = tastingReason::decides)
    {
        KeptOutlook outlook;
        outlook.barrel = small.barrel;
        outlook.fingerprint = outlookFingerprints(cellar->database())->at(small.barrel);
        outlook.nextTasting = next;
        outlook.reason = reason;
        outlook.advice = advice::wait;
        outlook.best = KeptOutlook::Best{0.125, 0.75, next, next + days(20), next + days(60)};
        outlook.horizon = next + days(500);
        outlook.made = device.clock.now();
        return outlook;
    }
    void keep(const KeptOutlook& outlook) { ASSERT_TRUE(keepOutlooks(*cellar, {outlook})); }
    std::vector<BarrelRow> dueBy(Instant until)
    {
        return *barrelsDue(cellar->database(), until, {}, 10);
    }
};

}  // namespace

TEST_F(Foreseeing, KeepsWhatItIsGiven)
{
    rest();
    const KeptOutlook outlook = foreseen(filled + days(100));
    keep(outlook);
    EXPECT_EQ(keptOutlook(cellar->database(), small.barrel).value(), outlook);
    KeptOutlook bare = outlook;
    bare.best.reset();
    bare.advice = advice::noWindows;
    keep(bare);
    EXPECT_EQ(keptOutlook(cellar->database(), small.barrel).value(), bare);
}

TEST_F(Foreseeing, RefusesWhatIsNoChance)
{
    KeptOutlook outlook = foreseen(filled + days(100));
    outlook.best->chance = 1.5;
    const auto refused = keepOutlooks(*cellar, {outlook});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::OutOfRange);
    EXPECT_FALSE(keptOutlook(cellar->database(), small.barrel).value());
}

TEST_F(Foreseeing, NamesTheDayOfTheNextTasting)
{
    rest();
    EXPECT_EQ(row().due, filled + days(182));
    keep(foreseen(filled + days(100)));
    EXPECT_EQ(row().nextStep, "taste");
    EXPECT_EQ(row().due, filled + days(100));
    EXPECT_EQ(row().dueReason, "decides");
    EXPECT_TRUE(dueBy(filled + days(100) - Milliseconds(1)).empty());
    ASSERT_EQ(dueBy(filled + days(100)).size(), 1U);
    EXPECT_EQ(dueBy(filled + days(100)).front().dueReason, "decides");

    keep(foreseen(filled + days(300), tastingReason::beforeTooFar));
    EXPECT_TRUE(dueBy(filled + days(299)).empty());
    EXPECT_EQ(row().dueReason, "before too far");
    ASSERT_TRUE(forgetOutlooks(*cellar, device.clock.now() + Milliseconds(1)));
    EXPECT_EQ(row().due, filled + days(182));
    EXPECT_EQ(row().dueReason, "");
}

TEST_F(Foreseeing, LeavesTheDayToTheHabitWhereItKnowsNoBetter)
{
    rest();
    keep(foreseen(filled + days(100), tastingReason::habit));
    EXPECT_EQ(row().due, filled + days(182));
    EXPECT_EQ(row().dueReason, "");
}

TEST_F(Foreseeing, CountsNoMoreOnceTheBarrelIsTastedAgain)
{
    rest();
    keep(foreseen(filled + days(100)));
    const Instant tasted = later(days(60));
    const EntryId entry = taste();
    EXPECT_EQ(row().due, tasted + days(30));
    EXPECT_EQ(row().dueReason, "");
    EXPECT_FALSE(keptOutlook(cellar->database(), small.barrel).value());
    ASSERT_TRUE(voidEntry(*cellar, entry));
    EXPECT_EQ(row().due, filled + days(100));  // it knows as much as there is again

    ASSERT_TRUE(recordEmpty(*cellar, {.barrel = small.barrel}));
    EXPECT_EQ(row().due, std::nullopt);
    later(days(1));
    ASSERT_TRUE(recordFill(*cellar, {.barrel = small.barrel}));
    rest();
    EXPECT_FALSE(keptOutlook(cellar->database(), small.barrel).value());
    EXPECT_EQ(row().dueReason, "");
}

TEST_F(Foreseeing, ComesAfterLooksForLeaksAndWhatTheBrewerSaid)
{
    keep(foreseen(filled + days(100)));
    EXPECT_EQ(row().nextStep, "check for leaks");
    EXPECT_EQ(row().due, filled + std::chrono::hours(1));
    rest();
    EXPECT_EQ(row().due, filled + days(100));
    const Instant judged = later(days(1));
    ASSERT_TRUE(recordVerdict(
        *cellar, {.barrel = small.barrel, .verdict = "hold", .until = judged + days(200)}));
    EXPECT_EQ(row().due, judged + days(200));
    EXPECT_EQ(row().dueReason, "");
    later(days(1));
    ASSERT_TRUE(recordVerdict(*cellar, {.barrel = small.barrel, .verdict = "hold"}));
    EXPECT_EQ(row().due, filled + days(100));
    ASSERT_TRUE(recordVerdict(*cellar, {.barrel = small.barrel, .verdict = "ready"}));
    EXPECT_EQ(row().nextStep, "empty");
    EXPECT_EQ(row().due, device.clock.now());
}

TEST_F(Foreseeing, ListsBarrelsByTheirBestTimeThoseWithoutWindowsLast)
{
    std::vector<KeptOutlook> outlooks;
    std::vector<SubjectId> wanted;
    for (int i = 0; i < 5; ++i) {
        const SubjectId barrel =
            registerBarrel(*cellar, {.mark = "Rum " + std::to_string(i)})->barrel;
        ASSERT_TRUE(recordFill(*cellar, {.barrel = barrel}));
        KeptOutlook outlook = foreseen(filled + days(500 - 100 * i));
        outlook.barrel = barrel;
        if (i == 4) {
            outlook.best.reset();
        }
        outlooks.push_back(outlook);
    }
    for (const int i : {3, 2, 1, 0, 4}) {
        wanted.push_back(outlooks[static_cast<std::size_t>(i)].barrel);
    }
    ASSERT_TRUE(keepOutlooks(*cellar, outlooks));
    std::vector<SubjectId> seen;
    AfterForeseen after;
    for (;;) {
        const auto page = foreseenBarrels(cellar->database(), after, 2);
        ASSERT_TRUE(page);
        if (page->empty()) {
            break;
        }
        for (const ForeseenBarrel& one : *page) {
            seen.push_back(one.outlook.barrel);
        }
        after = afterForeseen(page->back());
    }
    EXPECT_EQ(seen, wanted);
    ASSERT_TRUE(recordEmpty(*cellar, {.barrel = wanted[0]}));
    EXPECT_EQ(foreseenBarrels(cellar->database(), {}, 10)->size(), 4U);
}

TEST_F(Foreseeing, IsNoPartOfTheState)
{
    rest();
    const Sha256 before = *stateRoot(*cellar);
    keep(foreseen(filled + days(100)));
    EXPECT_EQ(*stateRoot(*cellar), before);
    const auto report = check(*cellar, {});
    ASSERT_TRUE(report);
    EXPECT_TRUE(report->problems.empty());
    EXPECT_EQ(row().due, filled + days(100));  // the check, which folds all anew, leaves it alone
}

TEST_F(Foreseeing, IsKeptWhereTheCellarIsOpenedAgainAndItsStateMadeAnew)
{
    rest();
    keep(foreseen(filled + days(100)));
    ASSERT_TRUE(cellar->database().execute("UPDATE meta SET value = 1 WHERE key = 'projection'"));
    cellar.reset();
    cellar = device.reopen();
    EXPECT_EQ(row().due, filled + days(100));
    EXPECT_EQ(dueBy(filled + days(100)).size(), 1U);
}

TEST_F(Foreseeing, IsSaidBesideTheVerdict)
{
    rest();
    const Instant best = filled + days(200);
    ASSERT_TRUE(recordVerdict(
        *cellar, {.barrel = small.barrel, .verdict = "ready", .chance = 0.6251, .best = best}));
    const auto history = historyOf(cellar->database(), small.barrel);
    ASSERT_TRUE(history);
    const OtherRow& verdict = history->others.back();
    EXPECT_EQ(verdict.kind, "verdict");
    EXPECT_EQ(verdict.chance, 0.625);
    EXPECT_EQ(verdict.best, best);
    EXPECT_FALSE(
        recordVerdict(*cellar, {.barrel = small.barrel, .verdict = "ready", .chance = 1.01}));
}

}  // namespace spile::cellar
