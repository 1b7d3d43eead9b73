// The band of a course: ordered, around the middle course, and as wide as random draws say.
#include "core/wood/explanation.hpp"
#include "core/wood/loss_band.hpp"
#include "core/wood/soakage.hpp"
#include "tests/property/wood_draws.hpp"

#include <algorithm>
#include <gtest/gtest.h>
#include <random>
#include <rapidcheck/gtest.h>

namespace spile::wood {

namespace {

bool isOrdered(const Spread& s) { return s.low <= s.median && s.median <= s.high; }

bool isOrdered(const VolumeSpread& s) { return s.low <= s.median && s.median <= s.high; }

template <class T>
double quantile(std::vector<T> values, double q)
{
    std::sort(values.begin(), values.end());
    return values.at(static_cast<std::size_t>(q * static_cast<double>(values.size() - 1)));
}

// A lognormal on either side of the median, so that both ends of the spread are met.
double drawn(const Spread& s, double z)
{
    const double reach = z < 0 ? std::log(s.median / s.low) : std::log(s.high / s.median);
    return s.median * std::exp(z / spreadReach * reach);
}

struct Draws {
    std::vector<double> volume;
    std::vector<double> strength;
    std::vector<double> gravity;
};

// The same barrel with its causes drawn at random, day by day with no code of the band.
Draws randomCourses(const liquor::Liquor& start, const VolumeSpread& soakage,
                    const Climate& climate, int days)
{
    std::mt19937 random(1);
    std::normal_distribution<double> normal;
    Draws all;
    for (int n = 0; n < 2000; ++n) {
        const Wood wood{squareMetres(1.83), standardStave, drawn(permeancePrior, normal(random)),
                        drawn(ethanolSharePrior, normal(random))};
        const double soaked =
            std::max(0.0, soakage.median.si() + normal(random) * deviation(soakage).si());
        liquor::Liquor left = start;
        liquor::Mixed end = liquor::describeUnchecked(left);
        for (int day = 0; day < days; ++day) {
            const double today = soaked * (std::exp(-0.1 * day) - std::exp(-0.1 * (day + 1)));
            const Rates rates = lossRates(left, wood, climate).value();
            left.water = left.water - kilograms(rates.water.si() * factor::day);
            left.ethanol = left.ethanol - kilograms(rates.ethanol.si() * factor::day);
            left = (1 - today / end.volume.si()) * left;
            end = liquor::describeUnchecked(left);
        }
        all.volume.push_back(end.volume.si());
        all.strength.push_back(end.alcoholByVolume);
        all.gravity.push_back(end.specificGravity);
    }
    return all;
}

void expectQuantiles(const Spread& band, const std::vector<double>& draws)
{
    const double tenth = 0.1 * (quantile(draws, 0.9) - quantile(draws, 0.1));
    EXPECT_NEAR(band.low, quantile(draws, 0.1), tenth);
    EXPECT_NEAR(band.median, quantile(draws, 0.5), tenth);
    EXPECT_NEAR(band.high, quantile(draws, 0.9), tenth);
}

}  // namespace

TEST(Band, IsAsWideAsRandomDraws)
{
    const auto start = liquor::liquorOf(litres(200), 0.10, 7).value();
    const auto soakage = soakagePrior(squareMetres(1.83), days(30)).value();
    for (const Climate climate : {Climate{celsius(18), 0.55}, Climate{celsius(12), 0.80}}) {
        SCOPED_TRACE(climate.relativeHumidity);
        std::vector<BandDay> band(180);
        ASSERT_TRUE(
            lossBand(start, {squareMetres(1.83)}, soakage, steady(climate, 180), band).has_value());
        const Draws draws = randomCourses(start, soakage, climate, 180);
        const BandDay& end = band.back();
        expectQuantiles({end.volume.low.si(), end.volume.median.si(), end.volume.high.si()},
                        draws.volume);
        expectQuantiles(end.alcoholByVolume, draws.strength);
        expectQuantiles(end.specificGravity, draws.gravity);
    }
}

RC_GTEST_PROP(Band, IsOrderedOnEveryDay, ())
{
    const auto start = *anyLiquor();
    const auto climates = *anyDays(1, 60);
    const WoodPrior wood{squareMetres(*between(0.3, 4))};
    const auto soakage = soakagePrior(wood.inner, days(*between(0, 400))).value();
    std::vector<BandDay> band(climates.size());
    RC_ASSERT(lossBand(start, wood, soakage, climates, band).has_value());
    for (const BandDay& day : band) {
        RC_ASSERT(isOrdered(day.volume));
        RC_ASSERT(isOrdered(day.alcoholByVolume));
        RC_ASSERT(isOrdered(day.specificGravity));
    }
}

RC_GTEST_PROP(Band, HasTheCourseAsItsMiddleWhereNothingSoaksIn, ())
{
    const auto start = *anyLiquor();
    const auto climates = *anyDays(1, 60);
    const Area inner = squareMetres(*between(0.3, 4));
    std::vector<BandDay> band(climates.size());
    std::vector<CourseDay> course(climates.size());
    RC_ASSERT(lossBand(start, {inner}, {}, climates, band).has_value());
    RC_ASSERT(lossCourse(start, {inner}, climates, course).has_value());
    // Their cubics for the extract's gravity are laid at different places: 1e-8.
    const CourseDay& end = course.back();
    const BandDay& middle = band.back();
    RC_ASSERT(std::fabs(middle.volume.median / end.volume - 1) < 2e-8);
    RC_ASSERT(std::fabs(middle.alcoholByVolume.median - end.alcoholByVolume) < 2e-8);
    RC_ASSERT(std::fabs(middle.specificGravity.median - end.specificGravity) < 2e-8);
}

RC_GTEST_PROP(Band, IsNarrowerWhenThePermeanceIsKnownBetter, ())
{
    const auto start = liquor::liquorOf(litres(200), *between(0.06, 0.14), 7).value();
    const auto climates = steady({celsius(*between(5, 30)), *between(0.1, 0.6)}, 90);
    WoodPrior wood{squareMetres(1.83)};
    std::vector<BandDay> wide(climates.size());
    std::vector<BandDay> narrow(climates.size());
    RC_ASSERT(lossBand(start, wood, {}, climates, wide).has_value());
    wood.permeance = {1.8e-10, 2.0e-10, 2.2e-10};
    RC_ASSERT(lossBand(start, wood, {}, climates, narrow).has_value());
    const auto width = [](const VolumeSpread& v) { return v.high - v.low; };
    RC_ASSERT(width(narrow.back().volume) < width(wide.back().volume));
}

RC_GTEST_PROP(Band, AnswersEveryInput, ())
{
    const auto anySpread = [] { return Spread{*anyDouble(), *anyDouble(), *anyDouble()}; };
    const auto start = liquor::liquorOf(litres(200), 0.1, 7).value();
    const WoodPrior wood{squareMetres(1.83), standardStave,
                         *rc::gen::arbitrary<bool>() ? anySpread() : permeancePrior,
                         *rc::gen::arbitrary<bool>() ? anySpread() : ethanolSharePrior};
    const VolumeSpread soakage{cubicMetres(*anyDouble()), cubicMetres(*anyDouble()),
                               cubicMetres(*anyDouble())};
    std::array<BandDay, 3> band;
    if (lossBand(start, wood, soakage, steady({}, 3), band)) {
        for (const BandDay& day : band) {
            RC_ASSERT(isOrdered(day.volume));
            RC_ASSERT(std::isfinite(day.volume.low.si()));
            RC_ASSERT(std::isfinite(day.volume.high.si()));
            RC_ASSERT(isOrdered(day.alcoholByVolume));
            RC_ASSERT(isOrdered(day.specificGravity));
        }
    }
}

RC_GTEST_PROP(Explanation, LeavesNothingOfWhatIsExplained, ())
{
    LossCase seen;
    seen.start = liquor::liquorOf(litres(200), 0.1, 7).value();
    seen.wood.inner = squareMetres(1.83);
    seen.climate = *anyClimate();
    seen.time = days(*between(1, 400));
    seen.empty = days(*between(0, 400));
    seen.lost = litres(*between(-5, 80));
    const auto all = explainLoss(seen).value();
    RC_ASSERT(isOrdered(all.evaporation));
    RC_ASSERT(isOrdered(all.soakage));
    RC_ASSERT(all.unexplained >= Volume{});
    RC_ASSERT(all.moreThanExplained == (seen.lost > all.most));
    RC_ASSERT((!all.moreThanShortFill || all.moreThanExplained));
}

RC_GTEST_PROP(Explanation, AnswersEveryInput, ())
{
    LossCase seen;
    seen.start = {kilograms(*anyDouble()), kilograms(*anyDouble()), kilograms(*anyDouble())};
    seen.wood.inner = squareMetres(*anyDouble());
    seen.time = seconds(*between(-10, 1e7));
    seen.empty = seconds(*anyDouble());
    seen.rewetted = seconds(*anyDouble());
    seen.lost = cubicMetres(*anyDouble());
    seen.readingError = cubicMetres(*anyDouble());
    const auto all = explainLoss(seen);
    RC_ASSERT((!all || (std::isfinite(all->unexplained.si()) && std::isfinite(all->most.si()))));
}

}  // namespace spile::wood
