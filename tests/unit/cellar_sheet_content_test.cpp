// What an open sheet keeps besides scores: readings, photos, where the taster is; and its end.
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/sheet.hpp"
#include "core/cellar/queries.hpp"
#include "tests/support/small_cellar.hpp"

#include <cmath>
#include <gtest/gtest.h>

namespace spile::cellar {

namespace {

class SheetOf : public testing::Test {
protected:
    support::TestDevice device{83};
    std::unique_ptr<Cellar> cellar = device.newCellar();
    support::SmallCellar small = support::fillSmallCellar(*cellar);
    SubjectId sheet = *openSheet(*cellar, small.barrel, small.person);

    SheetContent read() { return *readSheet(*cellar, sheet); }
    BarrelHistory history() { return *historyOf(cellar->database(), small.barrel); }
    std::int64_t number(std::string_view sql) { return *cellar->database().integer(-1, sql); }
    Result<void> measure(Measure what, std::optional<double> value)
    {
        return tapReading(*cellar, sheet, what, value);
    }
};

}  // namespace

TEST_F(SheetOf, ReadingsHoldsTheLatestOfEach)
{
    ASSERT_TRUE(measure(Measure::SpecificGravity, 1.0312));
    ASSERT_TRUE(measure(Measure::Ph, 4.31));
    ASSERT_TRUE(measure(Measure::Temperature, celsius(12.5).si()));
    ASSERT_TRUE(measure(Measure::SpecificGravity, 1.0298));
    EXPECT_DOUBLE_EQ(*read().reading.specificGravity, 1.0298);
    EXPECT_DOUBLE_EQ(*read().reading.ph, 4.31);
    EXPECT_NEAR(inCelsius(*read().reading.temperature), 12.5, 1e-9);
    ASSERT_TRUE(measure(Measure::Ph, std::nullopt));
    EXPECT_FALSE(read().reading.ph);
    ASSERT_TRUE(undoTap(*cellar, sheet));
    EXPECT_DOUBLE_EQ(*read().reading.ph, 4.31);
    ASSERT_TRUE(undoTap(*cellar, sheet));
    EXPECT_DOUBLE_EQ(*read().reading.specificGravity, 1.0312);
}

TEST_F(SheetOf, ReadingsRefusesWhatTheFieldCannotHold)
{
    EXPECT_EQ(measure(Measure::SpecificGravity, 1.31).error().subject, "sg_e4");
    EXPECT_EQ(measure(Measure::Ph, 0.5).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(measure(Measure::Temperature, 12.5).error().subject, "temp_mc");  // kelvins
    EXPECT_EQ(measure(Measure::Ph, std::nan("")).error().code, ErrorCode::NotFinite);
    EXPECT_FALSE(isMeasured(read().reading));
    EXPECT_EQ(number("SELECT count(*) FROM draft"), 0);
}

TEST_F(SheetOf, PhotosKeepsThemDurablyAndEachOnce)
{
    const auto first = keepPhoto(*cellar, sheet, support::smallPicture(10), "colour");
    ASSERT_TRUE(first) << support::textOf(first.error());
    ASSERT_TRUE(keepPhoto(*cellar, sheet, support::smallPicture(20), "head"));
    ASSERT_TRUE(keepPhoto(*cellar, sheet, support::smallPicture(10), "place"));
    EXPECT_TRUE(cellar->ledger().photos().read(first->hash));
    ASSERT_EQ(read().photos.size(), 2U);
    EXPECT_EQ(read().photos[0].photo, *first);
    EXPECT_EQ(read().photos[0].purpose, "place");
    EXPECT_EQ(read().photos[1].purpose, "head");
    ASSERT_TRUE(undoTap(*cellar, sheet));
    EXPECT_EQ(read().photos[0].purpose, "colour");
    ASSERT_TRUE(undoTap(*cellar, sheet));
    EXPECT_EQ(read().photos.size(), 1U);
}

TEST_F(SheetOf, PhotosRefusesWhatIsNoPictureAndMoreThan32)
{
    EXPECT_FALSE(keepPhoto(*cellar, sheet, asBytes("no picture"), "colour"));
    EXPECT_EQ(keepPhoto(*cellar, sheet, support::smallPicture(), "").error().subject, "purpose");
    for (std::uint8_t shade = 1; shade <= 32; ++shade) {
        ASSERT_TRUE(keepPhoto(*cellar, sheet, support::smallPicture(shade), "colour"));
    }
    EXPECT_EQ(keepPhoto(*cellar, sheet, support::smallPicture(99), "colour").error().code,
              ErrorCode::OutOfRange);
    EXPECT_TRUE(keepPhoto(*cellar, sheet, support::smallPicture(32), "colour"));
}

TEST_F(SheetOf, PhotosIsSoundAfterTheirTapsAreUndone)
{
    ASSERT_TRUE(keepPhoto(*cellar, sheet, support::smallPicture(10), "colour"));
    ASSERT_TRUE(undoTap(*cellar, sheet));
    EXPECT_EQ(support::problemsOf(*cellar), "");
    ASSERT_TRUE(closeSheet(*cellar, sheet));
    EXPECT_TRUE(history().photos.empty());
    EXPECT_EQ(support::problemsOf(*cellar), "");
}

TEST_F(SheetOf, AllBecomesOneGroupOfRecordsThatAnswerTheTasting)
{
    ASSERT_TRUE(tapScore(*cellar, sheet, "oak", 7));
    ASSERT_TRUE(measure(Measure::SpecificGravity, 1.0298));
    ASSERT_TRUE(keepPhoto(*cellar, sheet, support::smallPicture(10), "colour"));
    ASSERT_TRUE(keepPhoto(*cellar, sheet, support::smallPicture(20), "head"));
    const std::int64_t before = support::entryCount(*cellar);
    const auto taste = closeSheet(*cellar, sheet);
    ASSERT_TRUE(taste) << support::textOf(taste.error());
    EXPECT_EQ(support::entryCount(*cellar), before + 4);
    EXPECT_EQ(history().tastings.at(0).entry, *taste);
    ASSERT_EQ(history().readings.size(), 1U);
    EXPECT_DOUBLE_EQ(*history().readings[0].specificGravity, 1.0298);
    EXPECT_EQ(history().readings[0].person, "Ada");
    ASSERT_EQ(history().photos.size(), 2U);
    EXPECT_TRUE(history().photos[0].here);
    EXPECT_EQ(*cellar->database().integer(0, "SELECT count(*) FROM entry WHERE target = ?", *taste),
              3);
    EXPECT_EQ(number("SELECT count(*) FROM draft"), 0);

    const Path file = device.folder.path() / "day.spile";
    ASSERT_TRUE(handOut(*cellar, file, {}));
    support::TestDevice other(84);
    const auto joined = other.join(file);
    EXPECT_EQ(historyOf(joined->database(), small.barrel)->photos.size(), 2U);
    EXPECT_EQ(support::problemsOf(*joined), "");
}

TEST_F(SheetOf, NothingButATastingIsOneRecordWithoutAGroup)
{
    ASSERT_TRUE(tapScore(*cellar, sheet, "oak", 7));
    const auto taste = closeSheet(*cellar, sheet);
    ASSERT_TRUE(taste);
    const auto core = cellar->database().first(
        [](const ledger::Row& row) { return ledger::decodeCore(row.blob(0)); },
        "SELECT core FROM entry WHERE id = ?", *taste);
    EXPECT_FALSE((**core)->group);
}

TEST_F(SheetOf, WhichTheStepIsKeptWithoutBeingATap)
{
    EXPECT_EQ(openSheets(*cellar)->front().step, "");
    ASSERT_TRUE(tapScore(*cellar, sheet, "oak", 7));
    ASSERT_TRUE(keepStep(*cellar, sheet, "attribute vanilla"));
    ASSERT_TRUE(undoTap(*cellar, sheet));
    cellar.reset();
    cellar = device.reopen();
    EXPECT_EQ(openSheets(*cellar)->front().step, "attribute vanilla");
    EXPECT_EQ(openSheets(*cellar)->front().taps, 0);
    ASSERT_TRUE(keepStep(*cellar, sheet, ""));
    EXPECT_EQ(openSheets(*cellar)->front().step, "");
    EXPECT_EQ(keepStep(*cellar, sheet, std::string(81, 's')).error().subject, "step");
    EXPECT_EQ(keepStep(*cellar, device.ids.next(), "note").error().code, ErrorCode::NotFound);
}

TEST_F(SheetOf, WhichTheLastTapIsSaidInItsWords)
{
    EXPECT_FALSE(*lastTap(*cellar, sheet));
    ASSERT_TRUE(tapScore(*cellar, sheet, "oak", 7));
    EXPECT_EQ((*lastTap(*cellar, sheet))->subject, "score");
    EXPECT_EQ((*lastTap(*cellar, sheet))->name, "oak");
    EXPECT_EQ((*lastTap(*cellar, sheet))->number, 7);
    ASSERT_TRUE(measure(Measure::Temperature, celsius(12.5).si()));
    EXPECT_EQ((*lastTap(*cellar, sheet))->subject, "reading");
    EXPECT_EQ((*lastTap(*cellar, sheet))->name, "temp_mc");
    EXPECT_EQ((*lastTap(*cellar, sheet))->number, 12'500);
    ASSERT_TRUE(writeNote(*cellar, sheet, "soft"));
    EXPECT_EQ((*lastTap(*cellar, sheet))->text, "soft");
    const auto photo = keepPhoto(*cellar, sheet, support::smallPicture(10), "colour");
    EXPECT_EQ((*lastTap(*cellar, sheet))->name, photo->hash.hex());
    EXPECT_EQ((*lastTap(*cellar, sheet))->text, "colour");
    for (int i = 0; i < 3; ++i) {
        ASSERT_TRUE(undoTap(*cellar, sheet));
    }
    EXPECT_EQ((*lastTap(*cellar, sheet))->name, "oak");
}

TEST_F(SheetOf, WhichIsThrownAwayNothingRemains)
{
    const SubjectId other = *openSheet(*cellar, small.barrel, small.person);
    ASSERT_TRUE(tapScore(*cellar, other, "oak", 2));
    ASSERT_TRUE(tapScore(*cellar, sheet, "oak", 7));
    ASSERT_TRUE(keepPhoto(*cellar, sheet, support::smallPicture(10), "colour"));
    const std::int64_t before = support::entryCount(*cellar);
    ASSERT_TRUE(discardSheet(*cellar, sheet));
    EXPECT_EQ(support::entryCount(*cellar), before);
    EXPECT_EQ(openSheets(*cellar)->size(), 1U);
    EXPECT_EQ(readSheet(*cellar, other)->taste.scores.at("oak"), 2);
    EXPECT_EQ(number("SELECT count(*) FROM draft"), 1);
    EXPECT_EQ(discardSheet(*cellar, sheet).error().code, ErrorCode::NotFound);
    EXPECT_EQ(keepPhoto(*cellar, sheet, support::smallPicture(11), "colour").error().code,
              ErrorCode::NotFound);
    EXPECT_EQ(support::problemsOf(*cellar), "");
}

}  // namespace spile::cellar
