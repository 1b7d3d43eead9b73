// Tasters of known habits get the advice that they were made for.
#include "core/panel/attribute_reading.hpp"
#include "tests/unit/simulated_tasters.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <numeric>

namespace spile::panel {

namespace {

using testing::ElementsAre;

// Four plain tasters and one with a habit, as taster 4; the plain ones are to be called steady.
TasterReport reportBesidePlainOnes(const Habit& habit, const Cellar& cellar = {})
{
    const PanelReport report = reportOf({plain, plain, plain, plain, habit}, cellar);
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_THAT(kindsOf(report.tasters[i]), ElementsAre(AdviceKind::Steady)) << i;
    }
    return report.tasters.at(4);
}

}  // namespace

TEST(Advice, IsSteadyForAPlainTaster)
{
    const TasterReport report = reportBesidePlainOnes(plain);
    ASSERT_THAT(kindsOf(report), ElementsAre(AdviceKind::Steady));
    EXPECT_EQ(report.scores, 256);
    EXPECT_EQ(report.beers, 64);
    EXPECT_EQ(report.advice[0].beers, 64);
    for (const TasterOnAttribute& one : report.attributes) {
        EXPECT_NEAR(one.bias->value, 0, 4 * one.bias->error);
        EXPECT_NEAR(one.gain->value, 1, 4 * one.gain->error);
        EXPECT_NEAR(one.driftPerYear->value, 0, 4 * one.driftPerYear->error);
        EXPECT_NEAR(one.latestStandardised().value(), 0, 3.5);
        EXPECT_NEAR(one.spread->deviation, std::sqrt(0.64 + stepVariance), 0.25);
        EXPECT_FALSE(one.spread->fromRepeats);
    }
}

TEST(Advice, KnowsWhoReadsHighOrLow)
{
    const TasterReport high = reportBesidePlainOnes(with(&Habit::bias, 2));
    ASSERT_THAT(kindsOf(high), ElementsAre(AdviceKind::ReadsHigh));
    // A fifth of what he reads high is his own share in the panel's mean.
    EXPECT_NEAR(high.advice[0].measured.value, 1.6, 0.3);
    EXPECT_LT(high.advice[0].measured.error, 0.2);
    EXPECT_EQ(high.advice[0].limit, biasLimit);

    const TasterReport low = reportBesidePlainOnes(with(&Habit::bias, -2));
    ASSERT_THAT(kindsOf(low), ElementsAre(AdviceKind::ReadsLow));
    EXPECT_NEAR(low.advice[0].measured.value, -1.6, 0.3);
}

TEST(Advice, NamesTheAttributeThatIsReadHigh)
{
    Habit habit = with(&Habit::bias, 2.5);
    habit.onlyAttribute = 2;
    const TasterReport report = reportBesidePlainOnes(habit);
    ASSERT_THAT(kindsOf(report), ElementsAre(AdviceKind::ReadsHigh));
    EXPECT_EQ(report.advice[0].attribute, 2);
}

TEST(Advice, KnowsWhoScatters)
{
    const TasterReport report = reportBesidePlainOnes(with(&Habit::scatter, 2));
    ASSERT_THAT(kindsOf(report), ElementsAre(AdviceKind::Wide));
    EXPECT_NEAR(report.advice[0].measured.value, 2, 0.6);
    EXPECT_EQ(report.advice[0].limit, wideLimit);
    EXPECT_NEAR(report.attributes[0].spread->deviation, 2, 0.4);
}

TEST(Advice, KnowsWhoUsesLittleOrMuchOfTheLine)
{
    const TasterReport narrow = reportBesidePlainOnes(with(&Habit::gain, 0.4));
    ASSERT_THAT(kindsOf(narrow), ElementsAre(AdviceKind::NarrowRange));
    EXPECT_NEAR(narrow.advice[0].measured.value, 0.4, 0.15);

    // On beers that differ less, so that the line's ends do not cut him off.
    Cellar cellar;
    cellar.beerDeviation = 1.2;
    const TasterReport wide = reportBesidePlainOnes(with(&Habit::gain, 2.2), cellar);
    ASSERT_THAT(kindsOf(wide), ElementsAre(AdviceKind::WideRange));
    EXPECT_GT(wide.advice[0].measured.value, wideGain);
}

TEST(Advice, KnowsWhoDrifts)
{
    const TasterReport up = reportBesidePlainOnes(with(&Habit::driftPerYear, 3));
    ASSERT_THAT(kindsOf(up), ElementsAre(AdviceKind::Drifting));
    // Four fifths: the rest is his own share in the panel. The ends of the line take some more.
    EXPECT_NEAR(up.advice[0].measured.value, 2.4, 0.7);
    EXPECT_LT(up.advice[0].measured.error, 0.5);
    const TasterReport down = reportBesidePlainOnes(with(&Habit::driftPerYear, -3));
    ASSERT_THAT(kindsOf(down), ElementsAre(AdviceKind::Drifting));
    EXPECT_NEAR(down.advice[0].measured.value, -2.4, 0.7);
}

TEST(Advice, TellsRisingBeersFromDriftingTasters)
{
    Cellar rising;
    rising.beerDeviation = 0.6;
    rising.risePerYear = 3;
    double sum = 0;
    constexpr unsigned seeds = 10;
    for (rising.seed = 1; rising.seed <= seeds; ++rising.seed) {
        for (const TasterReport& taster : reportOf({plain, plain, plain}, rising).tasters) {
            EXPECT_THAT(kindsOf(taster), ElementsAre(AdviceKind::Steady)) << rising.seed;
            for (const TasterOnAttribute& one : taster.attributes) {
                sum += one.driftPerYear->value / (3.0 * 4 * seeds);
            }
        }
    }
    EXPECT_NEAR(sum, 0, 0.08);
    rising.seed = 1;
    EXPECT_THAT(kindsOf(reportBesidePlainOnes(with(&Habit::driftPerYear, 3), rising)),
                ElementsAre(AdviceKind::Drifting));
    // Who uses half of the line falls behind rising beers; that is no drift either.
    EXPECT_THAT(kindsOf(reportBesidePlainOnes(with(&Habit::gain, 0.4), rising)),
                testing::Not(testing::Contains(AdviceKind::Drifting)));
}

TEST(Advice, KnowsWhoIsOutOfLineLately)
{
    const TasterReport report = reportBesidePlainOnes(with(&Habit::lately, 2.5));
    ASSERT_THAT(kindsOf(report), ElementsAre(AdviceKind::OutOfLineLately));
    EXPECT_NEAR(report.advice[0].measured.value, 2.5, 1.2);
    for (const TasterOnAttribute& one : report.attributes) {
        EXPECT_GT(one.latestStandardised().value(), 2);
    }
}

TEST(Advice, SaysNothingOfASmallBiasHoweverSure)
{
    const TasterReport report = reportBesidePlainOnes(with(&Habit::bias, 1.3));
    EXPECT_THAT(kindsOf(report), ElementsAre(AdviceKind::Steady));
    for (const TasterOnAttribute& one : report.attributes) {
        EXPECT_GT(one.bias->value, 6 * one.bias->error);
    }
}

TEST(Advice, IsSureOfAllAttributesBeforeItIsSureOfOne)
{
    const auto toldOf = [](const std::vector<double>& biases, double error) {
        TasterReport report{0, 80, 20, {}, {}};
        for (const double bias : biases) {
            const auto attribute = static_cast<int>(report.attributes.size());
            TasterOnAttribute one{attribute, 20, 20, {}, {}, {}, {}, {}};
            one.bias = Measured{bias, error};
            report.attributes.push_back(one);
        }
        report.advice = adviceFor(report);
        return report;
    };
    const auto high = ElementsAre(AdviceKind::ReadsHigh);
    const auto steady = ElementsAre(AdviceKind::Steady);
    // The worst: beyond half of 1.25 by three errors.
    EXPECT_THAT(kindsOf(toldOf({0, 0, 1.3, 0}, 0.22)), high);
    EXPECT_EQ(toldOf({0, 0, 1.3, 0}, 0.22).advice[0].attribute, 2);
    EXPECT_THAT(kindsOf(toldOf({0, 0, 1.3, 0}, 0.23)), steady);
    // The mean of four: by two and a half of its own, which are 0.79 of one's, as errors of one
    // taster have half in common.
    EXPECT_THAT(kindsOf(toldOf({1.3, 1.3, 1.31, 1.3}, 0.33)), high);
    EXPECT_EQ(toldOf({1.3, 1.3, 1.31, 1.3}, 0.33).advice[0].attribute, 2);
    EXPECT_THAT(kindsOf(toldOf({1.3, 1.3, 1.31, 1.3}, 0.36)), steady);
    EXPECT_THAT(kindsOf(toldOf({1.2, 1.2, 1.2, 1.2}, 0.01)), steady);
    EXPECT_THAT(kindsOf(toldOf({}, 0)), steady);
}

TEST(Advice, DoesNotBlameTheLatestSittingOnOneWhoDrifts)
{
    Habit habit = with(&Habit::driftPerYear, 3);
    habit.lately = 3;
    const TasterReport report = reportBesidePlainOnes(habit);
    EXPECT_THAT(kindsOf(report), ElementsAre(AdviceKind::Drifting));
    EXPECT_GT(report.attributes[0].latest->value, 2);
}

TEST(Advice, ForgivesTheLatestSittingOfOneWhoseMoodsAreKnown)
{
    const TasterReport report = reportBesidePlainOnes(with(&Habit::mood, 1.2));
    for (const TasterOnAttribute& one : report.attributes) {
        EXPECT_GT(one.latest->error, 0.9);
    }
    const PanelReport steady = reportOf({plain, plain, plain});
    for (const TasterOnAttribute& one : steady.tasters[0].attributes) {
        EXPECT_LT(one.latest->error, 0.8);
    }
}

// The biased one came late: the others must not seem to have changed.
TEST(Advice, AllowsForTheBiasOfThoseWhoAreThere)
{
    Cellar cellar;
    cellar.beerDeviation = 1.2;
    Habit late = with(&Habit::bias, 3);
    late.fromSession = 8;
    const PanelReport report = reportOf({plain, plain, late}, cellar);
    for (std::size_t i = 0; i < 2; ++i) {
        for (const TasterOnAttribute& one : report.tasters[i].attributes) {
            EXPECT_NEAR(one.driftPerYear->value, 0, 0.6);
        }
    }
}

TEST(Advice, GivesEachHabitItsOwnWord)
{
    Cellar cellar;
    cellar.beerDeviation = 1.2;
    Habit habit = with(&Habit::bias, -2);
    habit.scatter = 2;
    EXPECT_THAT(kindsOf(reportBesidePlainOnes(habit, cellar)),
                ElementsAre(AdviceKind::ReadsLow, AdviceKind::Wide));
}

TEST(Advice, SaysHowManyMoreBeersANewTasterNeeds)
{
    Habit newcomer = with(&Habit::bias, 4);
    newcomer.fromSession = 14;
    const TasterReport report = reportBesidePlainOnes(newcomer);
    ASSERT_THAT(kindsOf(report), ElementsAre(AdviceKind::TooFew));
    EXPECT_EQ(report.beers, 8);
    EXPECT_EQ(report.advice[0].beers, 2);
    const PanelReport panel = reportOf({plain, plain, plain, newcomer});
    const double biases = std::accumulate(
        panel.tasters.begin(), panel.tasters.end(), 0.0,
        [](double sum, const TasterReport& one) { return sum + one.attributes[0].bias->value; });
    EXPECT_NEAR(biases, 0, 1e-9);
    for (const TasterOnAttribute& one : report.attributes) {
        EXPECT_TRUE(one.bias);
        EXPECT_FALSE(one.gain || one.driftPerYear || one.latest || one.spread);
    }

    const PanelReport alone = reportOf({plain});
    ASSERT_THAT(kindsOf(alone.tasters[0]), ElementsAre(AdviceKind::TooFew));
    EXPECT_EQ(alone.tasters[0].advice[0].beers, beersNeeded);
    EXPECT_FALSE(alone.tasters[0].attributes[0].bias);
    EXPECT_EQ(alone.attributes[0].judgement, Judgement::TooFew);
    EXPECT_FALSE(alone.attributes[0].deviations || alone.attributes[0].agreement);
}

}  // namespace spile::panel
