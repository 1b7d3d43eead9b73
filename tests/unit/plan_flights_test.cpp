// How a flight is poured, and in which order it is drawn and tasted.
#include "core/base/simulated.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/tasting.hpp"
#include "core/cellar/acts/tending.hpp"
#include "core/plan/flights.hpp"
#include "tests/support/small_cellar.hpp"

#include <algorithm>
#include <gtest/gtest.h>
#include <set>

namespace spile::plan {

using cellar::FlightGlass;
using cellar::FlightRow;
using panel::Soundness;

namespace {

class FlightPlans : public testing::Test {
protected:
    support::TestDevice device{93};
    std::unique_ptr<cellar::Cellar> cellar = device.newCellar();
    support::SmallCellar small = support::fillSmallCellar(*cellar);
    SeededRandom random{7};

    SubjectId fullBarrel()
    {
        cellar::NewBarrel barrel;
        barrel.fullSince =
            cellar::FullSince{{device.clock.now()}, cellar::DatePrecision::Day, small.batch, {}};
        return registerBarrel(*cellar, barrel)->barrel;
    }
    void fault(const SubjectId& barrel, const std::string& what)
    {
        cellar::NewTaste taste;
        taste.barrel = barrel;
        taste.faults = {{what, 3}};
        taste.circumstance.person = small.person;
        ASSERT_TRUE(recordTaste(*cellar, taste));
    }
    Result<cellar::NewFlight> plan(const std::vector<SubjectId>& barrels, bool twice = false)
    {
        return planFlight(cellar->database(), random, barrels, twice, device.clock.now());
    }
};

FlightRow drawnFlight(int glasses, int clean)
{
    FlightRow flight;
    flight.flight = SubjectId({1, 2, 3});
    for (int i = 0; i < glasses; ++i) {
        FlightGlass glass;
        glass.number = 200 + i;
        glass.clean = i < clean;
        glass.drawn = true;
        flight.glasses.push_back(glass);
    }
    return flight;
}

// All glasses as this taster takes them, one after the other.
std::vector<int> tasteAll(FlightRow flight, int place)
{
    const SubjectId taster({9});
    std::vector<int> numbers;
    while (const FlightGlass* next = nextToTaste(flight, taster, place)) {
        numbers.push_back(next->number);
        for (FlightGlass& glass : flight.glasses) {
            if (glass.number == next->number) {
                glass.tastes.push_back({taster, {}});
                break;
            }
        }
    }
    return numbers;
}

}  // namespace

TEST(BarrelSoundness, GoesByWhatWasFoundLast)
{
    cellar::Signs signs;
    EXPECT_EQ(soundnessOf(signs, {}), Soundness::Clean);
    signs.acidity = 6;
    EXPECT_EQ(soundnessOf(signs, {}), Soundness::Clean);
    signs.acidity = 7;
    EXPECT_EQ(soundnessOf(signs, {}), Soundness::Sour);
    signs = {};
    signs.looksUnsound = true;
    EXPECT_EQ(soundnessOf(signs, {}), Soundness::Suspect);
    signs = {};
    signs.verdict = "destroy";
    EXPECT_EQ(soundnessOf(signs, {}), Soundness::Suspect);
    signs = {};
    signs.verdict = "ready";
    EXPECT_EQ(soundnessOf(signs, {}), Soundness::Clean);
    signs.faults = {{"butter", 1}};
    EXPECT_EQ(soundnessOf(signs, {}), Soundness::Suspect);
    signs.faults["vinegar"] = 1;
    EXPECT_EQ(soundnessOf(signs, {}), Soundness::Sour);
    signs.faults = {{"solvent", 1}};
    EXPECT_EQ(soundnessOf(signs, {}), Soundness::Sour);
}

TEST(BarrelSoundness, GoesByOpenAlarmsToo)
{
    const auto by = [](AlarmKind kind) { return soundnessOf({}, {{kind, {}}}); };
    EXPECT_EQ(by(AlarmKind::PhFalls), Soundness::Sour);
    EXPECT_EQ(by(AlarmKind::Referments), Soundness::Suspect);
    EXPECT_EQ(by(AlarmKind::GravityFalls), Soundness::Suspect);
    EXPECT_EQ(by(AlarmKind::Oxidised), Soundness::Suspect);
    EXPECT_EQ(by(AlarmKind::Leaks), Soundness::Clean);
    EXPECT_EQ(by(AlarmKind::Silent), Soundness::Clean);
    EXPECT_EQ(by(AlarmKind::TooFar), Soundness::Clean);
    EXPECT_EQ(soundnessOf({}, {{AlarmKind::PhFalls, {}}, {AlarmKind::Referments, {}}}),
              Soundness::Sour);
}

TEST_F(FlightPlans, DrawABarrelWhosePhFallsAmongTheLast)
{
    const SubjectId souring = fullBarrel();
    const SubjectId clean = fullBarrel();
    for (const double ph : {4.4, 4.1}) {
        device.clock.pass(std::chrono::days(30));
        cellar::NewReading reading;
        reading.barrel = souring;
        reading.ph = ph;
        ASSERT_TRUE(recordReading(*cellar, reading));
    }
    const auto suspicion = suspicionOf(cellar->database(), souring, device.clock.now());
    ASSERT_TRUE(suspicion);
    EXPECT_EQ(suspicion->soundness, Soundness::Sour);
    EXPECT_FALSE(suspicion->alarms.empty());
    const auto flight = plan({souring, clean, small.barrel});
    ASSERT_TRUE(flight);
    EXPECT_EQ(flight->glasses.back().barrel, souring);
    EXPECT_EQ(flight->cleanGlasses, 2);
}

TEST_F(FlightPlans, DrawCleanThenSuspectThenSour)
{
    const SubjectId sour = fullBarrel();
    const SubjectId suspect = fullBarrel();
    const SubjectId clean = fullBarrel();
    fault(sour, "vinegar");
    ASSERT_TRUE(
        recordCheck(*cellar, {.barrel = suspect, .finding = "weeping head", .sound = false}));
    const auto flight = plan({sour, suspect, small.barrel, clean});
    ASSERT_TRUE(flight);
    std::vector<SubjectId> order;
    for (const auto& glass : flight->glasses) {
        order.push_back(glass.barrel);
    }
    EXPECT_EQ(order, (std::vector<SubjectId>{small.barrel, clean, suspect, sour}));
    EXPECT_EQ(flight->cleanGlasses, 2);
}

TEST_F(FlightPlans, NumberTheGlassesAtRandomEachOnce)
{
    std::vector<SubjectId> barrels = {small.barrel};
    while (barrels.size() < flightBarrelsMost) {
        barrels.push_back(fullBarrel());
    }
    std::set<int> seen;
    int rising = 0;
    constexpr int flights = 60;
    for (int i = 0; i < flights; ++i) {
        const auto flight = plan(barrels, true);
        ASSERT_TRUE(flight);
        ASSERT_EQ(flight->glasses.size(), 13U);
        std::set<int> numbers;
        for (const auto& glass : flight->glasses) {
            EXPECT_GE(glass.number, 101);
            EXPECT_LE(glass.number, 999);
            numbers.insert(glass.number);
            seen.insert(glass.number);
        }
        EXPECT_EQ(numbers.size(), flight->glasses.size());
        for (std::size_t g = 1; g < flight->glasses.size(); ++g) {
            rising += flight->glasses[g].number > flight->glasses[g - 1].number ? 1 : 0;
        }
    }
    EXPECT_GT(seen.size(), 450U);
    // Of 720 steps half go up, give or take four standard deviations.
    EXPECT_NEAR(rising, flights * 6, 54);
}

TEST_F(FlightPlans, PourACleanBarrelTwice)
{
    const SubjectId clean = fullBarrel();
    const SubjectId suspect = fullBarrel();
    fault(suspect, "butter");
    std::set<SubjectId> repeated;
    for (int i = 0; i < 40; ++i) {
        const auto flight = plan({suspect, small.barrel, clean}, true);
        ASSERT_TRUE(flight);
        ASSERT_EQ(flight->glasses.size(), 4U);
        EXPECT_EQ(flight->cleanGlasses, 3);
        std::map<SubjectId, int> glasses;
        for (const auto& glass : flight->glasses) {
            if (++glasses[glass.barrel] == 2) {
                repeated.insert(glass.barrel);
            }
        }
        EXPECT_EQ(flight->glasses.back().barrel, suspect);
        EXPECT_EQ(glasses[suspect], 1);
    }
    EXPECT_EQ(repeated, (std::set<SubjectId>{small.barrel, clean})) << "either of them";
    fault(small.barrel, "butter");
    fault(clean, "butter");
    const auto none = plan({suspect, small.barrel, clean}, true);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().code, ErrorCode::Conflict);
    EXPECT_TRUE(plan({suspect, small.barrel, clean}, false));
}

TEST_F(FlightPlans, RefuseTooFewTooManyAndTwins)
{
    EXPECT_EQ(plan({small.barrel}).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(plan({small.barrel, small.barrel}).error().code, ErrorCode::Conflict);
    std::vector<SubjectId> barrels;
    for (std::size_t i = 0; i <= flightBarrelsMost; ++i) {
        barrels.push_back(fullBarrel());
    }
    EXPECT_EQ(plan(barrels).error().limit, "2 to 12");
}

TEST(FlightOrders, DrawInTheOrderOfTheGlasses)
{
    FlightRow flight = drawnFlight(3, 3);
    EXPECT_EQ(nextToDraw(flight), nullptr);
    flight.glasses[2].drawn = false;
    EXPECT_EQ(nextToDraw(flight)->number, 202);
    flight.glasses[1].drawn = false;
    EXPECT_EQ(nextToDraw(flight)->number, 201);
}

TEST(FlightOrders, GiveEachTasterARowOfItsOwnAndSuspectsLast)
{
    const FlightRow flight = drawnFlight(6, 4);
    std::set<std::vector<int>> rows;
    for (int place = 0; place < 4; ++place) {
        const std::vector<int> numbers = tasteAll(flight, place);
        ASSERT_EQ(std::set<int>(numbers.begin(), numbers.end()).size(), 6U);
        EXPECT_GE(std::min(numbers[4], numbers[5]), 204) << "the suspect ones come last";
        rows.insert(numbers);
    }
    EXPECT_EQ(rows.size(), 4U);
}

TEST(FlightOrders, LeaveOutWhatIsNotDrawn)
{
    FlightRow flight = drawnFlight(4, 4);
    flight.glasses[1].drawn = false;
    const std::vector<int> numbers = tasteAll(flight, 0);
    EXPECT_EQ(numbers.size(), 3U);
    EXPECT_EQ(std::count(numbers.begin(), numbers.end(), 201), 0);
}

}  // namespace spile::plan
