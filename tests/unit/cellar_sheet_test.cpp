#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/flight.hpp"
#include "core/cellar/acts/sheet.hpp"
#include "core/cellar/queries.hpp"
#include "tests/support/small_cellar.hpp"

#include <gtest/gtest.h>

namespace spile::cellar {

namespace {

class Sheet : public testing::Test {
protected:
    support::TestDevice device{81};
    std::unique_ptr<Cellar> cellar = device.newCellar();
    support::SmallCellar small = support::fillSmallCellar(*cellar);
    SubjectId sheet = *openSheet(*cellar, small.barrel, small.person);

    NewTaste read() { return readSheet(*cellar, sheet)->taste; }
    std::int64_t rows(std::string_view sql) { return *cellar->database().integer(-1, sql); }
};

}  // namespace

TEST_F(Sheet, HoldsTheLatestTapOfEachAttribute)
{
    ASSERT_TRUE(tapScore(*cellar, sheet, "oak", 3));
    ASSERT_TRUE(tapScore(*cellar, sheet, "vanilla", std::nullopt));
    ASSERT_TRUE(tapScore(*cellar, sheet, "oak", 7));
    ASSERT_TRUE(tapFault(*cellar, sheet, "acetic", 2));
    ASSERT_TRUE(tapFault(*cellar, sheet, "sulphur", 4));
    ASSERT_TRUE(tapFault(*cellar, sheet, "acetic", std::nullopt));
    ASSERT_TRUE(tapLiking(*cellar, sheet, 6));
    ASSERT_TRUE(tapPalateTired(*cellar, sheet, true));
    ASSERT_TRUE(writeNote(*cellar, sheet, "soft, long"));
    ASSERT_TRUE(keepOrder(*cellar, sheet, {"vanilla", "oak"}));
    const NewTaste taste = read();
    EXPECT_EQ(taste.barrel, small.barrel);
    EXPECT_EQ(taste.circumstance.person, small.person);
    EXPECT_EQ(taste.scores, (std::map<std::string, Score>{{"oak", 7}, {"vanilla", std::nullopt}}));
    EXPECT_EQ(taste.faults, (std::map<std::string, int>{{"sulphur", 4}}));
    EXPECT_EQ(taste.liking, 6);
    EXPECT_TRUE(taste.palateTired);
    EXPECT_EQ(taste.circumstance.note, "soft, long");
    EXPECT_EQ(taste.attributeOrder, (std::vector<std::string>{"vanilla", "oak"}));
}

TEST_F(Sheet, TakesBackEveryTapInTurn)
{
    constexpr int taps = 300;
    for (int i = 0; i < taps; ++i) {
        ASSERT_TRUE(tapScore(*cellar, sheet, "oak", 1 + i % 9));
    }
    for (int i = taps; i-- > 0;) {
        ASSERT_EQ(read().scores.at("oak"), 1 + i % 9);
        ASSERT_EQ(*undoTap(*cellar, sheet), true);
    }
    EXPECT_TRUE(read().scores.empty());
    EXPECT_EQ(*undoTap(*cellar, sheet), false);
    ASSERT_TRUE(tapScore(*cellar, sheet, "oak", 5));  // and goes on from there
    EXPECT_EQ(read().scores.at("oak"), 5);
}

TEST_F(Sheet, BringsBackWhatAnUndoneTapHadReplaced)
{
    ASSERT_TRUE(tapFault(*cellar, sheet, "acetic", 2));
    ASSERT_TRUE(tapFault(*cellar, sheet, "acetic", std::nullopt));
    ASSERT_TRUE(undoTap(*cellar, sheet));
    EXPECT_EQ(read().faults.at("acetic"), 2);
    ASSERT_TRUE(writeNote(*cellar, sheet, "first"));
    ASSERT_TRUE(writeNote(*cellar, sheet, ""));
    EXPECT_EQ(read().circumstance.note, "");
    ASSERT_TRUE(undoTap(*cellar, sheet));
    EXPECT_EQ(read().circumstance.note, "first");
}

TEST_F(Sheet, KeepsItsTapsWhenTheCellarIsOpenedAgain)
{
    ASSERT_TRUE(tapScore(*cellar, sheet, "oak", 7));
    ASSERT_TRUE(writeNote(*cellar, sheet, "soft"));
    cellar.reset();
    cellar = device.reopen();
    const auto open = openSheets(*cellar);
    ASSERT_TRUE(open);
    ASSERT_EQ(open->size(), 1U);
    EXPECT_EQ(open->front().sheet, sheet);
    EXPECT_EQ(open->front().taps, 2);
    EXPECT_EQ(read().scores.at("oak"), 7);
    EXPECT_EQ(read().circumstance.note, "soft");
    ASSERT_TRUE(undoTap(*cellar, sheet));
    EXPECT_EQ(read().circumstance.note, "");
}

TEST_F(Sheet, BecomesOneTastingAndIsGone)
{
    ASSERT_TRUE(tapScore(*cellar, sheet, "oak", 7));
    ASSERT_TRUE(tapLiking(*cellar, sheet, 8));
    const std::int64_t before = support::entryCount(*cellar);
    const auto taste = closeSheet(*cellar, sheet);
    ASSERT_TRUE(taste);
    EXPECT_EQ(support::entryCount(*cellar), before + 1);
    EXPECT_EQ(rows("SELECT count(*) FROM draft"), 0);
    EXPECT_EQ(rows("SELECT count(*) FROM sheet"), 0);
    EXPECT_TRUE(openSheets(*cellar)->empty());
    const auto tastings = historyOf(cellar->database(), small.barrel)->tastings;
    ASSERT_EQ(tastings.size(), 1U);
    EXPECT_EQ(tastings[0].entry, *taste);
    EXPECT_EQ(tastings[0].scores.at("oak"), 7);
    EXPECT_EQ(tastings[0].liking, 8);
    EXPECT_EQ(closeSheet(*cellar, sheet).error().code, ErrorCode::NotFound);
    EXPECT_EQ(tapScore(*cellar, sheet, "oak", 5).error().code, ErrorCode::NotFound);
    EXPECT_EQ(readSheet(*cellar, sheet).error().code, ErrorCode::NotFound);
}

TEST_F(Sheet, LeavesOtherSheetsAlone)
{
    const SubjectId kim = *registerPerson(*cellar, "Kim");
    device.clock.pass(std::chrono::minutes(1));
    const SubjectId other = *openSheet(*cellar, small.barrel, kim);
    ASSERT_TRUE(tapScore(*cellar, sheet, "oak", 7));
    ASSERT_TRUE(tapScore(*cellar, other, "oak", 2));
    ASSERT_TRUE(undoTap(*cellar, sheet));
    EXPECT_EQ(readSheet(*cellar, other)->taste.scores.at("oak"), 2);
    ASSERT_TRUE(closeSheet(*cellar, sheet));
    const auto open = openSheets(*cellar);
    ASSERT_EQ(open->size(), 1U);
    EXPECT_EQ(open->front().person, kim);
    EXPECT_EQ(readSheet(*cellar, other)->taste.scores.at("oak"), 2);
}

TEST_F(Sheet, KeepsTheFlightAndTheGlass)
{
    const SubjectId flight =
        *beginFlight(*cellar, {.name = "Monday", .glasses = {{417, small.barrel}}});
    const SubjectId poured = *openSheet(*cellar, small.barrel, small.person, flight, 417);
    EXPECT_EQ(readSheet(*cellar, poured)->taste.flight, flight);
    EXPECT_EQ(readSheet(*cellar, poured)->taste.glass, 417);
    EXPECT_TRUE(closeSheet(*cellar, poured));
}

TEST_F(Sheet, RefusesTapsOutsideTheirRangesAndStaysAsItIs)
{
    ASSERT_TRUE(tapScore(*cellar, sheet, "oak", 7));
    const Sha256 before = support::storedBytes(device.cellarFolder());
    EXPECT_EQ(tapScore(*cellar, sheet, "oak", 10).error().subject, "score");
    EXPECT_EQ(tapScore(*cellar, sheet, "oak", 0).error().limit, "1 to 9");
    EXPECT_EQ(tapScore(*cellar, sheet, "", 5).error().subject, "attribute");
    EXPECT_EQ(tapFault(*cellar, sheet, "acetic", 10).error().subject, "strength");
    EXPECT_EQ(tapLiking(*cellar, sheet, 0).error().subject, "liking");
    EXPECT_EQ(writeNote(*cellar, sheet, std::string(4001, 'n')).error().subject, "note");
    EXPECT_EQ(keepOrder(*cellar, sheet, {""}).error().subject, "attribute");
    EXPECT_EQ(support::storedBytes(device.cellarFolder()), before);
    EXPECT_EQ(read().scores.size(), 1U);
}

TEST_F(Sheet, IsListedWhenADayFileIsHandedOutAndIsNotInIt)
{
    ASSERT_TRUE(tapScore(*cellar, sheet, "oak", 7));
    const Path file = device.folder.path() / "day.spile";
    const auto handed = handOut(*cellar, file, {});
    ASSERT_TRUE(handed);
    ASSERT_EQ(handed->openSheets.size(), 1U);
    EXPECT_EQ(handed->openSheets[0].barrel, small.barrel);
    EXPECT_EQ(handed->openSheets[0].person, small.person);
    EXPECT_EQ(handed->openSheets[0].taps, 1);
    support::TestDevice other(82);
    const auto joined = other.join(file);
    EXPECT_TRUE(openSheets(*joined)->empty());
    EXPECT_TRUE(historyOf(joined->database(), small.barrel)->tastings.empty());
    ASSERT_TRUE(closeSheet(*cellar, sheet));
    EXPECT_TRUE(handOut(*cellar, file, {})->openSheets.empty());
}

}  // namespace spile::cellar
