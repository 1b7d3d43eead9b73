// Flights in the records: glasses, draws, sheets, who has tasted what.
#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/flight.hpp"
#include "core/cellar/acts/sheet.hpp"
#include "core/cellar/acts/tending.hpp"
#include "core/cellar/flights.hpp"
#include "core/cellar/journal.hpp"
#include "core/cellar/queries.hpp"
#include "core/cellar/vocabulary.hpp"
#include "tests/support/small_cellar.hpp"

#include <gtest/gtest.h>

namespace spile::cellar {

namespace {

class Flights : public testing::Test {
protected:
    support::TestDevice device{91};
    std::unique_ptr<Cellar> cellar = device.newCellar();
    support::SmallCellar small = support::fillSmallCellar(*cellar);
    SubjectId first = small.barrel;
    SubjectId second = fullBarrel("Rum 2");
    SubjectId kim = *registerPerson(*cellar, "Kim");

    SubjectId fullBarrel(const std::string& mark)
    {
        NewBarrel barrel;
        barrel.mark = mark;
        barrel.fullSince = FullSince{{device.clock.now()}, DatePrecision::Day, small.batch, {}};
        return registerBarrel(*cellar, barrel)->barrel;
    }
    SubjectId begin(std::optional<int> clean = {})
    {
        return *beginFlight(*cellar, {.glasses = {{417, first}, {288, second}, {905, first}},
                                      .cleanGlasses = clean,
                                      .circumstance = {.person = small.person}});
    }
    Result<EntryId> drawGlass(const SubjectId& flight, int glass, const SubjectId& barrel)
    {
        return recordDraw(*cellar, {barrel, millilitres(100), "sample hole", flight, glass, {}});
    }
    void taste(const SubjectId& flight, int glass, const SubjectId& barrel, const SubjectId& who)
    {
        const SubjectId sheet = *openSheet(*cellar, barrel, who, flight, glass);
        EXPECT_TRUE(tapScore(*cellar, sheet, "oak", 5));
        EXPECT_TRUE(closeSheet(*cellar, sheet));
    }
    FlightRow row(const SubjectId& flight) { return **flightById(cellar->database(), flight); }
};

std::vector<int> numbersOf(const FlightRow& flight)
{
    std::vector<int> numbers;
    for (const FlightGlass& glass : flight.glasses) {
        numbers.push_back(glass.number);
    }
    return numbers;
}

}  // namespace

TEST_F(Flights, KeepTheirGlassesInTheOrderOfDrawing)
{
    const SubjectId flight = begin(1);
    const FlightRow found = row(flight);
    EXPECT_EQ(numbersOf(found), (std::vector<int>{417, 288, 905}));
    EXPECT_EQ(found.glasses[1].barrel, second);
    EXPECT_EQ(found.glasses[2].barrel, first);
    EXPECT_EQ(found.person, "Ada");
    EXPECT_TRUE(found.glasses[0].clean);
    EXPECT_FALSE(found.glasses[1].clean);
    EXPECT_FALSE(found.isDrawn());
    EXPECT_FALSE(*flightById(cellar->database(), first)) << "a barrel is no flight";
    // A flight of which nothing is said has only clean glasses.
    EXPECT_TRUE(row(begin()).glasses[2].clean);
}

TEST_F(Flights, KnowWhatIsDrawn)
{
    const SubjectId flight = begin();
    ASSERT_TRUE(drawGlass(flight, 417, first));
    EXPECT_TRUE(row(flight).glassOf(417)->drawn);
    EXPECT_FALSE(row(flight).glassOf(905)->drawn) << "the same barrel, another glass";
    const auto again = drawGlass(flight, 417, first);
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().code, ErrorCode::Conflict);
    EXPECT_EQ(drawGlass(flight, 288, first).error().code, ErrorCode::NotFound);
    EXPECT_EQ(drawGlass(flight, 500, first).error().code, ErrorCode::NotFound);
    const EntryId drawn = *drawGlass(flight, 288, second);
    ASSERT_TRUE(drawGlass(flight, 905, first));
    EXPECT_TRUE(row(flight).isDrawn());
    ASSERT_TRUE(voidEntry(*cellar, drawn));
    EXPECT_FALSE(row(flight).isDrawn());
    EXPECT_TRUE(drawGlass(flight, 288, second)) << "a draw that was taken back can be done again";
}

TEST_F(Flights, KnowWhoHasTastedWhat)
{
    const SubjectId flight = begin();
    EntryId drawn;
    for (const auto& [glass, barrel] : {std::pair{417, first}, {288, second}, {905, first}}) {
        drawn = *drawGlass(flight, glass, barrel);
    }
    taste(flight, 417, first, small.person);
    taste(flight, 288, second, small.person);
    taste(flight, 288, second, kim);
    const auto open = openSheet(*cellar, first, small.person, flight, 905);
    ASSERT_TRUE(open);
    FlightRow found = row(flight);
    EXPECT_EQ(found.tastedBy(small.person), 2);
    EXPECT_EQ(found.tastedBy(kim), 1);
    EXPECT_FALSE(found.isFinishedBy(small.person)) << "a sheet that is open is not tasted";
    EXPECT_EQ(found.glassOf(288)->tastes.size(), 2U);
    ASSERT_TRUE(closeSheet(*cellar, *open));
    found = row(flight);
    EXPECT_TRUE(found.isFinishedBy(small.person));
    EXPECT_FALSE(found.isFinishedBy(kim));
    ASSERT_TRUE(voidEntry(*cellar, drawn));
    EXPECT_FALSE(row(flight).isFinishedBy(small.person)) << "a glass is to be drawn anew";
    // The sheet of a glass is in the history of its barrel like any other.
    EXPECT_EQ(historyOf(cellar->database(), first)->tastings.size(), 2U);
}

TEST_F(Flights, AreOpenUntilAllIsTastedForTwoDays)
{
    const SubjectId flight = begin();
    const auto isOpenFor = [&](const std::optional<SubjectId>& who) {
        return openFlights(cellar->database(), device.clock.now(), who)->size() == 1;
    };
    EXPECT_TRUE(isOpenFor(small.person));
    for (const auto& [glass, barrel] : {std::pair{417, first}, {288, second}, {905, first}}) {
        ASSERT_TRUE(drawGlass(flight, glass, barrel));
        taste(flight, glass, barrel, small.person);
    }
    EXPECT_FALSE(isOpenFor(small.person));
    EXPECT_TRUE(isOpenFor(kim));
    EXPECT_TRUE(isOpenFor({}));
    device.clock.pass(std::chrono::hours(47));
    EXPECT_TRUE(isOpenFor(kim));
    EXPECT_FALSE(row(flight).over);
    ASSERT_TRUE(endFlight(*cellar, flight));
    EXPECT_FALSE(isOpenFor(kim)) << "it was ended";
    EXPECT_TRUE(row(flight).over);
    ASSERT_TRUE(cellar->database().execute("DELETE FROM flight_over"));
    EXPECT_TRUE(isOpenFor(kim));
    device.clock.pass(std::chrono::hours(2));
    EXPECT_FALSE(isOpenFor(kim));
    const auto all = flights(cellar->database(), instantFromMs(0), {}, 10);
    ASSERT_EQ(all->size(), 1U);
    EXPECT_TRUE(flights(cellar->database(), instantFromMs(0),
                        {all->front().counted, all->front().flight}, 10)
                    ->empty())
        << "a page goes on after the last one";
}

TEST_F(Flights, RefuseANumberTwice)
{
    const auto twice = beginFlight(*cellar, {.glasses = {{417, first}, {417, second}}});
    ASSERT_FALSE(twice);
    EXPECT_EQ(twice.error().code, ErrorCode::Conflict);
    EXPECT_EQ(beginFlight(*cellar, {.glasses = {{0, first}}}).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(beginFlight(*cellar, {.glasses = {{1000, first}}}).error().subject, "glass");
}

TEST_F(Flights, LeaveAGlassOutThatCannotBeDrawn)
{
    const SubjectId flight = begin(2);
    ASSERT_TRUE(drawGlass(flight, 417, first));
    EXPECT_EQ(leaveGlassOut(*cellar, flight, 417).error().code, ErrorCode::Conflict);
    EXPECT_EQ(leaveGlassOut(*cellar, flight, 418).error().code, ErrorCode::NotFound);
    ASSERT_TRUE(leaveGlassOut(*cellar, flight, 288));
    const FlightRow found = row(flight);
    EXPECT_EQ(numbersOf(found), (std::vector<int>{417, 905}));
    EXPECT_TRUE(found.glasses[0].clean);
    EXPECT_FALSE(found.glasses[1].clean) << "what was suspect stays so";
    ASSERT_TRUE(leaveGlassOut(*cellar, flight, 905));
    EXPECT_TRUE(row(flight).isDrawn());
    const SubjectId alone = *beginFlight(*cellar, {.glasses = {{101, first}}});
    EXPECT_EQ(leaveGlassOut(*cellar, alone, 101).error().code, ErrorCode::Conflict);
}

TEST_F(Flights, GiveEachTasterAPlaceThatStays)
{
    const SubjectId flight = begin();
    ASSERT_TRUE(drawGlass(flight, 288, second));
    const SubjectId eve = *registerPerson(*cellar, "Eve");
    taste(flight, 288, second, eve);  // from another phone's day file, as it were
    EXPECT_EQ(*placeInFlight(*cellar, flight, kim), 1) << "after Eve, who has tasted";
    EXPECT_EQ(*placeInFlight(*cellar, flight, small.person), 2);
    cellar.reset();
    cellar = device.reopen();
    EXPECT_EQ(*placeInFlight(*cellar, flight, kim), 1);
    EXPECT_EQ(*placeInFlight(*cellar, begin(), kim), 0) << "another flight begins anew";
    EXPECT_EQ(placeInFlight(*cellar, flight, first).error().code, ErrorCode::NotFound);
}

TEST_F(Flights, AreNamedByTheActsOfTheirGlasses)
{
    const SubjectId flight = begin();
    ASSERT_TRUE(drawGlass(flight, 417, first));
    const SubjectId sheet = *openSheet(*cellar, first, small.person, flight, 417);
    ASSERT_TRUE(tapReading(*cellar, sheet, Measure::Ph, 4.2));
    ASSERT_TRUE(closeSheet(*cellar, sheet));
    const auto acts = ownActs(cellar->database(), fromTheNewest, 4);
    ASSERT_EQ(acts->size(), 4U);
    for (const OwnAct& act : *acts) {
        if (act.kind == "flight") {
            EXPECT_FALSE(act.flight);
        } else {  // the reading, which answers the sheet, the sheet, and the draw
            EXPECT_EQ(act.flight, flight) << act.kind;
            EXPECT_EQ(act.glass, 417) << act.kind;
        }
    }
}

TEST_F(Flights, GoWithTheDayFile)
{
    const SubjectId flight = begin(2);
    ASSERT_TRUE(drawGlass(flight, 417, first));
    const Path file = device.folder.path() / "day.spile";
    ASSERT_TRUE(handOut(*cellar, file, {}));
    support::TestDevice other(92);
    const auto joined = other.join(file);
    const auto there = flightById(joined->database(), flight);
    ASSERT_TRUE(there && *there);
    EXPECT_EQ(numbersOf(**there), (std::vector<int>{417, 288, 905}));
    EXPECT_TRUE((*there)->glassOf(417)->drawn);
    EXPECT_FALSE((*there)->glassOf(905)->clean);
}

TEST_F(Flights, AskTheSameOfEveryGlass)
{
    NewBarrel other;
    other.fullSince = FullSince{{device.clock.now()}, DatePrecision::Day, {}, {}};
    const SubjectId target =
        *registerTarget(*cellar, "Round", {{"smoke", 3, 5}, {"cherry", 4, 6}, {"oak", 4, 6}});
    NewBatch batch;
    batch.name = "Harbour";
    batch.target = target;
    other.fullSince->batch = *registerBatch(*cellar, batch);
    const SubjectId third = registerBarrel(*cellar, other)->barrel;
    const SubjectId flight = *beginFlight(*cellar, {.glasses = {{417, first}, {288, third}}});
    const auto asked = attributesOfFlight(cellar->database(), row(flight));
    ASSERT_TRUE(asked);
    EXPECT_EQ(asked->size(), 11U) << "nine usual ones and two of the target";
    EXPECT_EQ((*asked)[0], "vanilla");  // a turn each
    EXPECT_EQ((*asked)[1], "smoke");
    EXPECT_EQ((*asked)[2], "oak");
    EXPECT_EQ((*asked)[3], "cherry");
    EXPECT_EQ(std::count(asked->begin(), asked->end(), "oak"), 1);
}

TEST_F(Flights, SeeWhatSpeaksAgainstABarrel)
{
    const auto signs = [&] { return *signsOf(cellar->database(), first); };
    EXPECT_FALSE(signs().looksUnsound);
    EXPECT_TRUE(signs().faults.empty());
    ASSERT_TRUE(
        recordCheck(*cellar, {.barrel = first, .finding = "weeping stave", .sound = false}));
    EXPECT_TRUE(signs().looksUnsound);
    device.clock.pass(std::chrono::hours(1));
    ASSERT_TRUE(recordCheck(*cellar, {.barrel = first, .finding = "dry"}));
    EXPECT_FALSE(signs().looksUnsound) << "the latest look counts";

    const auto taste = [&](const SubjectId& who, std::map<std::string, int> faults, int acidity) {
        NewTaste sheet;
        sheet.barrel = first;
        sheet.scores = {{"acidity", acidity}, {"oak", 9}};
        sheet.faults = std::move(faults);
        sheet.circumstance.person = who;
        ASSERT_TRUE(recordTaste(*cellar, sheet));
    };
    taste(small.person, {{"vinegar", 3}}, 7);
    device.clock.pass(std::chrono::hours(1));
    taste(kim, {}, 2);
    EXPECT_EQ(signs().faults.at("vinegar"), 3) << "one tasting, two tasters";
    EXPECT_EQ(signs().acidity, 7);
    device.clock.pass(std::chrono::days(30));
    taste(kim, {{"butter", 1}}, 3);
    EXPECT_EQ(signs().faults, (std::map<std::string, std::int64_t>{{"butter", 1}}));
    EXPECT_EQ(signs().acidity, 3);
    ASSERT_TRUE(recordVerdict(*cellar, {.barrel = first, .verdict = "destroy"}));
    EXPECT_EQ(signs().verdict, "destroy");
    // Another beer in the barrel is another matter.
    device.clock.pass(std::chrono::hours(1));
    ASSERT_TRUE(recordEmpty(*cellar, {.barrel = first}));
    device.clock.pass(std::chrono::hours(1));
    ASSERT_TRUE(recordFill(*cellar, {.barrel = first, .batch = small.batch}));
    EXPECT_TRUE(signs().faults.empty());
    EXPECT_TRUE(signs().verdict.empty());
}

}  // namespace spile::cellar
