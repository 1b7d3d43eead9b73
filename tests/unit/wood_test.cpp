#include "core/wood/climate_days.hpp"
#include "core/wood/evaporation.hpp"
#include "core/wood/explanation.hpp"
#include "core/wood/gravity_sign.hpp"
#include "core/wood/loss_band.hpp"
#include "core/wood/loss_rate.hpp"
#include "core/wood/oxygen.hpp"
#include "core/wood/rewetting.hpp"
#include "core/wood/vapour.hpp"

#include <array>
#include <gtest/gtest.h>
#include <limits>

namespace spile::wood {

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();
constexpr Wood usualWood{squareMetres(1.83)};

liquor::Liquor beer() { return liquor::liquorOf(litres(200), 0.10, 7).value(); }

template <class T>
void expectRefused(const Result<T>& result, ErrorCode code, const std::string& subject)
{
    ASSERT_FALSE(result.has_value());
    EXPECT_EQ(result.error().code, code);
    EXPECT_EQ(result.error().subject, subject);
}

LossCase downTo(double gallonsLeft)
{
    LossCase seen;
    seen.start = liquor::liquorOf(usGallons(53), 0.10, 7).value();
    seen.wood.inner = squareMetres(1.83);
    seen.climate = {celsius(18), 0.65};
    seen.time = days(182);
    seen.empty = days(45);
    seen.lost = usGallons(53 - gallonsLeft);
    seen.readingError = litres(3);
    return seen;
}

}  // namespace

TEST(Evaporation, RefusesWhatIsNoBarrelOrClimate)
{
    const Climate air;
    expectRefused(lossRates(beer(), {squareMetres(0)}, air), ErrorCode::OutOfRange, "inner_m2");
    expectRefused(lossRates(beer(), {squareMetres(1), metres(0.2)}, air), ErrorCode::OutOfRange,
                  "stave_m");
    expectRefused(lossRates(beer(), {squareMetres(1), standardStave, notANumber}, air),
                  ErrorCode::NotFinite, "permeance_kg_m2_s_pa");
    expectRefused(lossRates(beer(), {squareMetres(1), standardStave, 1e-10, 1.1}, air),
                  ErrorCode::OutOfRange, "ethanol_share");
    expectRefused(lossRates(beer(), usualWood, {celsius(46), 0.5}), ErrorCode::OutOfRange,
                  "temperature_c");
    expectRefused(lossRates(beer(), usualWood, {celsius(15), 1.01}), ErrorCode::OutOfRange,
                  "relative_humidity");
    expectRefused(evaporated(beer(), usualWood, air, days(-1)), ErrorCode::OutOfRange, "time_d");
}

TEST(Evaporation, GainsWaterFromSaturatedAir)
{
    EXPECT_LT(lossRates(beer(), usualWood, {celsius(15), 1}).value().water, MassFlow{});
    EXPECT_GT(lossRates(beer(), usualWood, {celsius(15), 1}).value().ethanol, MassFlow{});
}

TEST(Evaporation, OfNoTimeIsNothing)
{
    EXPECT_EQ(evaporated(beer(), usualWood, {}, Duration{}).value(), Volume{});
}

TEST(LossCourse, SaysWhenTheBarrelDriesUpAndKeepsTheDaysBefore)
{
    const std::array<Climate, 2000> days = [] {
        std::array<Climate, 2000> all;
        all.fill({celsius(30), 0.2});
        return all;
    }();
    std::array<CourseDay, 2000> out{};
    const Wood leaking{squareMetres(1.83), standardStave, 1e-8};
    expectRefused(lossCourse(beer(), leaking, days, out), ErrorCode::OutOfRange, "liquor");
    EXPECT_GT(out[0].volume, litres(190));
    EXPECT_EQ(out[1999].volume, Volume{});
    for (const CourseDay& day : out) {
        EXPECT_LE(day.realExtract, 44);  // as far as gravity is known
    }
}

TEST(LossCourse, SaysWhenASpiritHasNoWaterLeft)
{
    const auto spirit = liquor::liquorOf(litres(5), 0.70, 0).value();
    const Wood leaking{squareMetres(1.83), standardStave, 4e-9, 0.001};
    const std::array days{Climate{celsius(30), 0}};  // takes 2 kg of water, of which there are 1.7
    std::array<CourseDay, 1> out{};
    expectRefused(lossCourse(spirit, leaking, days, out), ErrorCode::OutOfRange, "liquor");
    expectRefused(evaporated(spirit, leaking, days[0], spile::days(1)), ErrorCode::OutOfRange,
                  "liquor");
}

TEST(LossCourse, RefusesRowsThatDoNotFitTheDays)
{
    const std::array<Climate, 2> days{};
    std::array<CourseDay, 3> out{};
    expectRefused(lossCourse(beer(), usualWood, days, out), ErrorCode::OutOfRange, "rows");
    std::array<BandDay, 3> band{};
    expectRefused(lossBand(beer(), {squareMetres(1.83)}, {}, days, band), ErrorCode::OutOfRange,
                  "rows");
}

TEST(LossCourse, TurnsToEachDaysClimate)
{
    const Climate dry{celsius(25), 0.3};
    const Climate humid{celsius(10), 0.9};
    const std::array days{humid, dry, dry, humid};
    std::array<CourseDay, 4> out{};
    ASSERT_TRUE(lossCourse(beer(), usualWood, days, out).has_value());
    const auto fall = [&](std::size_t i) {
        return inMillilitres(out[i - 1].volume - out[i].volume);
    };
    EXPECT_GT(fall(1), 5 * fall(3));
    EXPECT_NEAR(fall(1), fall(2), 0.01 * fall(1));
}

TEST(LossBand, RefusesASpreadOutOfOrder)
{
    const std::array<Climate, 1> days{};
    std::array<BandDay, 1> out{};
    WoodPrior wood{squareMetres(1.83)};
    wood.permeance = {2e-10, 1e-10, 3e-10};
    expectRefused(lossBand(beer(), wood, {}, days, out), ErrorCode::OutOfRange, "spread");
    expectRefused(
        lossBand(beer(), {squareMetres(1.83)}, {litres(2), litres(1), litres(3)}, days, out),
        ErrorCode::OutOfRange, "spread");
}

TEST(LossRate, StartsFromThePrior)
{
    const Spread prior = spreadOf(lossRatePrior());
    EXPECT_NEAR(prior.median, 2.0e-10, 1e-20);
    EXPECT_NEAR(prior.low, 1.07e-10, 0.005e-10);
    EXPECT_NEAR(prior.high, 3.74e-10, 0.005e-10);
}

TEST(LossRate, TakesAGainWithinReadingErrorAndRefusesOneBeyond)
{
    const LossRate prior = lossRatePrior();
    const auto within = updated(prior, {litres(3), litres(-1), litres(1)});
    ASSERT_TRUE(within.has_value());
    EXPECT_LT(within->logMedian, prior.logMedian);
    expectRefused(updated(prior, {litres(3), litres(-5), litres(1)}), ErrorCode::OutOfRange,
                  "measured_loss_m3");
}

TEST(LossRate, LearnsNothingWhereNothingIsForeseen)
{
    const LossRate prior = lossRatePrior();
    const auto same = updated(prior, {Volume{}, litres(1), litres(1)}).value();
    EXPECT_EQ(same.logMedian, prior.logMedian);
    EXPECT_EQ(same.logSd, prior.logSd);
}

TEST(LossRate, LearnsFromAGainThatWasForeseen)
{
    const LossRate prior = lossRatePrior();
    EXPECT_GT(updated(prior, {litres(-1), litres(-1.5), litres(0.2)}).value().logMedian,
              prior.logMedian);
}

TEST(LossSign, RisesFromUsualOverWatchToLeak)
{
    const LossRate rate = lossRatePrior();  // its 90 % rate is 1.87 times the median
    const auto sign = [&](double measured) {
        return judgeLoss(rate, {litres(4), litres(measured), litres(0.5)}).value().sign;
    };
    EXPECT_EQ(sign(4), LossSign::Usual);
    EXPECT_EQ(sign(8.4), LossSign::Usual);
    EXPECT_EQ(sign(8.6), LossSign::Watch);
    EXPECT_EQ(sign(8.9), LossSign::Watch);
    EXPECT_EQ(sign(9.1), LossSign::Leak);
    EXPECT_EQ(sign(-1), LossSign::Usual);
}

TEST(LossSign, IsStricterWhereTheRateIsKnown)
{
    const LossRate known{lossRatePrior().logMedian, 0.1};
    const LossSeen seen{litres(4), litres(6), litres(0.3)};
    EXPECT_EQ(judgeLoss(lossRatePrior(), seen).value().sign, LossSign::Usual);
    EXPECT_EQ(judgeLoss(known, seen).value().sign, LossSign::Watch);
}

// Brewers' observation, common practice: 53 gallons are 45 at the first sampling after six months.
TEST(Explanation, SaysThatEightGallonsAreMoreThanWoodAndAirTake)
{
    const auto all = explainLoss(downTo(45)).value();
    EXPECT_TRUE(all.moreThanExplained);
    EXPECT_NEAR(inUsGallons(all.evaporation.median), 1.08, 0.01);
    EXPECT_NEAR(inLitres(all.soakage.high), 6 + 5 * 24.0 / 99, 0.001);
    EXPECT_GT(all.unexplained, usGallons(3));
    const auto usual = explainLoss(downTo(51)).value();
    EXPECT_FALSE(usual.moreThanExplained);
    EXPECT_EQ(usual.unexplained, Volume{});
}

TEST(Explanation, AllowsForAShortFillOnlyWhenAsked)
{
    const auto all = explainLoss(downTo(47.5)).value();
    EXPECT_TRUE(all.moreThanExplained);
    EXPECT_FALSE(all.moreThanShortFill);
    EXPECT_NEAR(inUsGallons(all.shortFill.high), 2, 1e-9);
}

TEST(Oxygen, ThroughTheBungholeIsMoreThanThroughASampleHole)
{
    const auto hole = drawn(DrawMethod::SampleHole, millilitres(100), litres(5)).value();
    const auto bung = drawn(DrawMethod::Bunghole, millilitres(100), litres(5)).value();
    EXPECT_NEAR(inGrams(hole.median) * 1e3, 13.9, 0.05);  // half of 0.1 L of air of 278.65 mg/L
    EXPECT_NEAR(inGrams(bung.median) * 1e3, 278.65 * (0.1 + 0.2 * 5), 0.05);
}

TEST(Oxygen, PassesTwiceAsFastThroughWoodOfHalfTheThickness)
{
    const auto thick = throughWood(squareMetres(1), millimetres(26), days(100)).value();
    const auto thin = throughWood(squareMetres(1), millimetres(13), days(100)).value();
    EXPECT_NEAR(thin.median / thick.median, 2, 1e-12);
}

TEST(Rewetting, FollowsHowLongTheBarrelStoodEmpty)
{
    EXPECT_EQ(emptyBarrelNeeds(days(3)).value(), EmptyBarrel::FillAsItIs);
    EXPECT_EQ(emptyBarrelNeeds(days(14)).value(), EmptyBarrel::FillAsItIs);
    EXPECT_EQ(emptyBarrelNeeds(days(30)).value(), EmptyBarrel::Rewet);
    EXPECT_EQ(emptyBarrelNeeds(days(200)).value(), EmptyBarrel::SwellFirst);
    EXPECT_EQ(emptyBarrelNeeds(days(500)).value(), EmptyBarrel::ProveItHolds);
    EXPECT_EQ(rewetting(squareMetres(1.83), days(3)).value().spirit, VolumeSpread{});
    EXPECT_NEAR(inLitres(rewetting(squareMetres(0.6), days(30)).value().spirit.median), 0.98, 0.01);
}

TEST(Rewetting, CountsWhatStaysAndWhatItAddsToTheBeer)
{
    const auto left = leftByRewetting({litres(3), 0.625}, {litres(2), 0.60}).value();
    const auto described = liquor::describe(left).value();
    EXPECT_NEAR(inLitres(described.volume), 1.0, 0.01);
    EXPECT_NEAR(described.alcoholByVolume, 0.675, 0.005);
    const auto with = withSpirit(beer(), left).value();
    EXPECT_NEAR(with.strengthGained, 0.0029, 0.0001);
    EXPECT_LT(with.gravityGained, 0);
    EXPECT_NEAR(inLitres(with.volumeGained), 0.98, 0.01);
    expectRefused(leftByRewetting({litres(3), 0.6}, {litres(4), 0.6}), ErrorCode::OutOfRange,
                  "drained_water_kg");
}

TEST(GravitySign, TellsSpiritFromFermentation)
{
    GravityCase seen;
    seen.before = beer();
    seen.after = beer();
    seen.measuredChange = -0.0025;
    EXPECT_TRUE(judgeGravity(seen).value().unexplainedFall);
    seen.spiritMost = liquor::liquorOf(litres(4), 0.60, 0).value();
    EXPECT_FALSE(judgeGravity(seen).value().unexplainedFall);
    seen.measuredChange = -0.004;
    EXPECT_TRUE(judgeGravity(seen).value().unexplainedFall);
    seen.measuredChange = 0.001;
    EXPECT_FALSE(judgeGravity(seen).value().unexplainedFall);
}

TEST(GravitySign, TakesAFallWithinReadingErrorAsNone)
{
    GravityCase seen;
    seen.before = beer();
    seen.after = beer();
    seen.measuredChange = -0.0014;  // two deviations of a difference are 0.00141
    EXPECT_FALSE(judgeGravity(seen).value().unexplainedFall);
    // Where evaporation should have raised it by 0.0005, the same fall is one.
    seen.after.water = (1 - 0.03) * seen.after.water;
    EXPECT_TRUE(judgeGravity(seen).value().unexplainedFall);
}

TEST(ClimateDays, HoldTheLastRecordAndTakeTheMeanOfADay)
{
    constexpr std::int64_t day = 86'400;
    const std::array records{ClimateRecord{day + 10, {celsius(10), 0.5}},
                             ClimateRecord{day + 20, {celsius(20), 0.7}},
                             ClimateRecord{3 * day, {celsius(12), 0.8}}};
    std::array<Climate, 5> out;
    ASSERT_TRUE(climateDays(records, 0, out).has_value());
    EXPECT_EQ(out[0], usualClimate);
    EXPECT_NEAR(inCelsius(out[1].temperature), 15, 1e-9);
    EXPECT_NEAR(out[1].relativeHumidity, 0.6, 1e-12);
    EXPECT_EQ(out[2], records[1].climate);
    EXPECT_EQ(out[3], records[2].climate);
    EXPECT_EQ(out[4], records[2].climate);
}

TEST(ClimateDays, BeginWithWhatWasKnownBefore)
{
    const std::array records{ClimateRecord{-500'000, {celsius(9), 0.9}}};
    std::array<Climate, 1> out;
    ASSERT_TRUE(climateDays(records, 0, out).has_value());
    EXPECT_EQ(out[0], records[0].climate);
    ASSERT_TRUE(climateDays({}, 0, out, {celsius(8), 0.85}).has_value());
    EXPECT_EQ(out[0], (Climate{celsius(8), 0.85}));
}

TEST(ClimateDays, RefuseRecordsOutOfOrderAndWriteNothing)
{
    const std::array records{ClimateRecord{100, {celsius(9), 0.9}}, ClimateRecord{99, {}}};
    std::array<Climate, 1> out{Climate{celsius(1), 0.1}};
    expectRefused(climateDays(records, 0, out), ErrorCode::Malformed, "climate records");
    EXPECT_EQ(out[0], (Climate{celsius(1), 0.1}));
}

}  // namespace spile::wood
