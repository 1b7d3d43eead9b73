// What is reported of a panel and its tasters.
#include "tests/unit/simulated_tasters.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <limits>
#include <optional>

namespace spile::panel {

using testing::Contains;
using testing::ElementsAre;

TEST(Spread, IsTakenFromBlindRepeatsWhereThereAreFive)
{
    Cellar cellar;
    cellar.repeats = 2;
    const TasterReport report =
        reportOf({plain, plain, plain, plain, with(&Habit::scatter, 2.4)}, cellar).tasters[4];
    ASSERT_THAT(kindsOf(report), Contains(AdviceKind::Wide));
    for (const TasterOnAttribute& one : report.attributes) {
        EXPECT_TRUE(one.spread->fromRepeats);
        EXPECT_EQ(one.spread->freedom, 16);
        EXPECT_EQ(one.spread->othersFreedom, 64);
        EXPECT_NEAR(one.spread->deviation, 2.4, 1.1);
        EXPECT_NEAR(one.spread->others, std::sqrt(0.64 + stepVariance), 0.3);
    }
    cellar.sessions = 4;
    const PanelReport few = reportOf({plain, plain, plain}, cellar);
    for (const TasterOnAttribute& one : few.tasters[0].attributes) {
        EXPECT_FALSE(one.spread->fromRepeats);
    }
}

TEST(Spread, IsTheTastersOwnEvenBesideASingleOther)
{
    Cellar cellar;
    cellar.sessions = 60;
    const PanelReport report = reportOf({plain, plain}, cellar);
    for (const TasterReport& taster : report.tasters) {
        for (const TasterOnAttribute& one : taster.attributes) {
            EXPECT_NEAR(one.spread->deviation, std::sqrt(0.64 + stepVariance), 0.12);
        }
    }
}

TEST(Spread, IsNotTakenFromRepeatsThatTheOthersDoNotHave)
{
    Cellar cellar;
    cellar.repeats = 2;
    std::vector<Score> scores = scoresOf({plain, plain, plain}, cellar);
    std::erase_if(scores, [](const Score& one) { return one.taster != 1 && one.repeat != 0; });
    EXPECT_FALSE(panelReportOf(scores)->tasters[1].attributes[0].spread->fromRepeats);
    // But one who tastes alone has nothing else.
    std::erase_if(scores, [](const Score& one) { return one.taster != 1; });
    const auto alone = panelReportOf(scores).value();
    EXPECT_TRUE(alone.tasters[0].attributes[0].spread->fromRepeats);
    EXPECT_EQ(alone.tasters[0].attributes[0].spread->othersFreedom, 0);
    EXPECT_TRUE(alone.attributes[0].repeatability);
}

TEST(Panel, TellsOfTimeOnlyAfterSomeSittings)
{
    const auto firstOf = [](int sessions) {
        Cellar cellar;
        cellar.sessions = sessions;
        cellar.barrels = 6;
        return reportOf({plain, plain, plain}, cellar).tasters[0].attributes[0];
    };
    EXPECT_FALSE(firstOf(3).latest);
    EXPECT_TRUE(firstOf(4).latest);
    EXPECT_FALSE(firstOf(6).driftPerYear);  // within five months
    EXPECT_TRUE(firstOf(7).driftPerYear);
}

TEST(Panel, JudgesNothingByFewBeersOrTastersWhoCameOnce)
{
    std::vector<Score> scores;
    std::vector<Score> strangers;
    for (int barrel = 0; barrel < 6; ++barrel) {
        for (int taster = 0; taster < 2; ++taster) {
            const double line = 1.25 * ((barrel * (taster + 2)) % 5);
            if (barrel < 4) {
                scores.push_back({taster, 0, 0, barrel, 0, 0, line});
            }
            strangers.push_back({2 * barrel + taster, 0, 0, barrel, 0, 0, line});
        }
    }
    EXPECT_EQ(panelReportOf(scores)->attributes[0].judgement, Judgement::TooFew);
    EXPECT_EQ(panelReportOf(scores)->attributes[0].beers, 4);
    EXPECT_EQ(panelReportOf(scores)->tasters[0].advice[0].beers, 6);
    EXPECT_EQ(panelReportOf(strangers)->attributes[0].judgement, Judgement::TooFew);
    for (int taster = 0; taster < 2; ++taster) {
        scores.push_back({taster, 0, 0, 4, 0, 0, 3.75 + taster});
    }
    EXPECT_NE(panelReportOf(scores)->attributes[0].judgement, Judgement::TooFew);
}

TEST(Panel, KnowsOfWhatItsScoresAreMade)
{
    Cellar cellar;
    cellar.repeats = 2;
    cellar.sessions = 40;
    const PanelReport report =
        reportOf({with(&Habit::bias, 1), with(&Habit::bias, -1), plain, plain}, cellar);
    ASSERT_EQ(report.attributes.size(), 4U);
    for (const PanelOnAttribute& panel : report.attributes) {
        EXPECT_EQ(panel.judgement, Judgement::Judged);
        EXPECT_EQ(panel.tasters, 4);
        EXPECT_EQ(panel.beers, 160);
        EXPECT_NEAR(panel.deviations->beers, 2, 0.25);
        EXPECT_NEAR(panel.deviations->tasters, std::sqrt(2.0 / 3), 0.1);
        EXPECT_NEAR(panel.deviations->residual, std::sqrt(0.64 + stepVariance), 0.08);
        EXPECT_NEAR(panel.repeatability.value(), std::sqrt(0.64 + stepVariance), 0.15);
        const double one = panel.agreement->one;
        EXPECT_NEAR(one, 4 / (4 + 0.67 + 0.77), 0.06);
        EXPECT_EQ(panel.agreement->tasters, 4);
        // Spearman and Brown: what four of one give.
        EXPECT_NEAR(panel.agreement->ofMean, 4 * one / (1 + 3 * one), 1e-12);
    }
}

TEST(Panel, SaysThatAgreementCannotBeJudgedWhereBeersDoNotDiffer)
{
    Cellar cellar;
    cellar.beerDeviation = 0;
    cellar.seed = 4;
    const PanelReport report = reportOf({plain, plain, with(&Habit::bias, 2.5)}, cellar);
    for (const PanelOnAttribute& panel : report.attributes) {
        EXPECT_EQ(panel.judgement, Judgement::SamplesDoNotDiffer);
        EXPECT_FALSE(panel.agreement);
        EXPECT_TRUE(panel.deviations);
    }
    EXPECT_THAT(kindsOf(report.tasters[2]), ElementsAre(AdviceKind::ReadsHigh));
    EXPECT_FALSE(report.tasters[2].attributes[0].gain);
    EXPECT_TRUE(report.tasters[2].attributes[0].spread);
}

TEST(Panel, SaysWhereNothingScatters)
{
    std::vector<Score> scores;
    for (int barrel = 0; barrel < 12; ++barrel) {
        for (int taster = 0; taster < 2; ++taster) {
            const double differs = 2.5 * taster;
            scores.push_back({taster, 0, barrel, barrel, 0, 1.0 * barrel, differs});
            scores.push_back(
                {taster, 1, barrel, barrel, 0, 1.0 * barrel, differs + 1.25 * (barrel % 4)});
            scores.push_back({taster, 2, barrel, barrel, 0, 1.0 * barrel, 5});
        }
    }
    const PanelReport report = panelReportOf(scores).value();
    EXPECT_EQ(report.attributes[0].judgement, Judgement::SamplesDoNotDiffer);
    EXPECT_EQ(report.attributes[1].judgement, Judgement::NothingScatters);
    EXPECT_EQ(report.attributes[2].judgement, Judgement::SamplesDoNotDiffer);
    for (const PanelOnAttribute& panel : report.attributes) {
        EXPECT_FALSE(panel.agreement || panel.deviations || panel.repeatability);
    }
    EXPECT_EQ(report.tasters[1].attributes[1].bias->value, 1.25);
    EXPECT_EQ(report.tasters[0].attributes[2].bias->value, 0);
    EXPECT_THAT(kindsOf(report.tasters[1]), ElementsAre(AdviceKind::ReadsHigh));
}

TEST(Panel, ReadsTheSameFromScoresInAnyOrder)
{
    std::vector<Score> scores = scoresOf({plain, with(&Habit::bias, 2), plain}, {});
    const PanelReport report = panelReportOf(scores).value();
    std::mt19937 random(5);
    std::shuffle(scores.begin(), scores.end(), random);
    const PanelReport shuffled = panelReportOf(scores).value();
    for (std::size_t i = 0; i < report.tasters.size(); ++i) {
        for (std::size_t a = 0; a < report.tasters[i].attributes.size(); ++a) {
            const TasterOnAttribute& one = report.tasters[i].attributes[a];
            const TasterOnAttribute& other = shuffled.tasters[i].attributes[a];
            EXPECT_EQ(one.bias->value, other.bias->value);
            EXPECT_EQ(one.gain->value, other.gain->value);
            EXPECT_EQ(one.driftPerYear->error, other.driftPerYear->error);
            EXPECT_EQ(one.latest->value, other.latest->value);
            EXPECT_EQ(one.spread->others, other.spread->others);
        }
    }
}

TEST(Panel, RefusesScoresThatAreNone)
{
    const auto codeOf = [](const std::vector<Score>& scores) -> std::optional<ErrorCode> {
        const auto report = panelReportOf(scores);
        return report ? std::nullopt : std::optional(report.error().code);
    };
    EXPECT_EQ(codeOf({{0, 0, 0, 0, 0, 0, 10.1}}), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf({{0, 0, 0, 0, 0, 0, -0.1}}), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf({{0, 0, 0, 0, 0, 0, std::nan("")}}), ErrorCode::NotFinite);
    EXPECT_EQ(codeOf({{0, 0, 0, 0, 0, std::numeric_limits<double>::infinity(), 5}}),
              ErrorCode::NotFinite);
    EXPECT_EQ(codeOf({{0, 0, 0, 0, 0, 0, 5}, {0, 0, 0, 0, 0, 0, 5}}), ErrorCode::Conflict);
    EXPECT_TRUE(panelReportOf({{0, 0, 0, 0, 0, 0, 5}, {0, 0, 0, 0, 1, 0, 5}}).has_value());
    EXPECT_TRUE(panelReportOf({})->tasters.empty());
}

}  // namespace spile::panel
