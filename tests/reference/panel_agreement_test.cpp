// Sources: P. E. Shrout and J. L. Fleiss, "Intraclass correlations: uses in assessing rater
// reliability", Psychological Bulletin 86 (1979) 420-428, Table 2. The data and the printed .17,
// .29, .71 of one rater: seen, in a public test file; the printed .44, .62, .91 of the mean of
// four: memory. All six digits and the sums of squares: computed with R (psych 2.x and aov). ISO
// 8586, annex, worked example: six batches of iced fish, four assessors, three replicates on a
// 10-point scale. Table and printed mean squares and F of three assessors: seen, in a public
// translation; the joint analysis: computed with R (aov).
#include "core/panel/agreement.hpp"
#include "tests/reference/panel_data.hpp"

#include <gtest/gtest.h>
#include <optional>

namespace spile::panel {

namespace {

const Cells shroutAndFleiss{{{9}, {2}, {5}, {8}}, {{6}, {1}, {3}, {2}},  {{8}, {4}, {6}, {8}},
                            {{7}, {1}, {2}, {6}}, {{10}, {5}, {6}, {9}}, {{6}, {2}, {4}, {7}}};

}  // namespace

TEST(IntraclassCorrelations, AreThoseOfShroutAndFleiss)
{
    const auto icc = intraclassOf(anovaOf(shroutAndFleiss).value()).value();
    EXPECT_NEAR(icc.oneWay, 0.165742, 5e-7);
    EXPECT_NEAR(icc.agreement, 0.289764, 5e-7);
    EXPECT_NEAR(icc.consistency, 0.714841, 5e-7);
    EXPECT_NEAR(icc.oneWayMean, 0.442797, 5e-7);
    EXPECT_NEAR(icc.agreementMean, 0.620051, 5e-7);
    EXPECT_NEAR(icc.consistencyMean, 0.909316, 5e-7);
}

TEST(Anova, IsThatOfShroutAndFleiss)
{
    const Anova anova = anovaOf(shroutAndFleiss).value();
    EXPECT_NEAR(anova.targets.sum, 56.21, 0.005);
    EXPECT_EQ(anova.targets.freedom, 5);
    EXPECT_NEAR(anova.judges.sum, 97.46, 0.005);
    EXPECT_EQ(anova.judges.freedom, 3);
    EXPECT_NEAR(anova.interaction.sum, 15.29, 0.005);
    EXPECT_EQ(anova.interaction.freedom, 15);
    EXPECT_NEAR(anova.targets.mean() / anova.interaction.mean(), 11.027, 0.0005);
    EXPECT_EQ(anova.repeats.freedom, 0);
    EXPECT_EQ(anova.repeats.sum, 0);
}

TEST(Anova, IsThatOfTheReplicatedExampleOfIso8586)
{
    const Anova anova = anovaOf(icedFish).value();
    EXPECT_NEAR(anova.targets.sum, 104.903, 0.0005);
    EXPECT_EQ(anova.targets.freedom, 5);
    EXPECT_NEAR(anova.judges.sum, 26.042, 0.0005);
    EXPECT_EQ(anova.judges.freedom, 3);
    EXPECT_NEAR(anova.interaction.sum, 16.042, 0.0005);
    EXPECT_EQ(anova.interaction.freedom, 15);
    EXPECT_NEAR(anova.repeats.sum, 61.333, 0.0005);
    EXPECT_EQ(anova.repeats.freedom, 48);
    const std::vector<double> judges{5.889, 4.833, 4.667, 6.000};
    for (std::size_t j = 0; j < judges.size(); ++j) {
        EXPECT_NEAR(anova.judgeMeans[j], judges[j], 0.0005);
    }
}

// The printed analysis is of each assessor alone: batches against replicates.
TEST(Anova, GivesTheSumsOfEachAssessorOfIso8586)
{
    const std::vector<double> meanSquares{7.42, 7.83, 2.80, 6.13};
    const std::vector<double> f{13.36, 2.66, 2.40, 13.80};
    for (std::size_t j = 0; j < f.size(); ++j) {
        // Twice the same assessor: a judge beside whom nothing differs.
        Cells alone;
        for (const auto& row : icedFish) {
            alone.push_back({row[j], row[j]});
        }
        const Anova anova = anovaOf(alone).value();
        const double between = anova.targets.mean() / 2;
        const double within = anova.repeats.mean();  // doubled in sum and in freedom
        EXPECT_NEAR(between, meanSquares[j], 0.005) << j;
        EXPECT_NEAR(between / within, f[j], 0.0051) << j;
        EXPECT_NEAR(anova.judges.sum, 0, 1e-12);
    }
}

TEST(Anova, RefusesWhatIsNoFullTable)
{
    const auto codeOf = [](const Cells& cells) -> std::optional<ErrorCode> {
        const auto anova = anovaOf(cells);
        return anova ? std::nullopt : std::optional(anova.error().code);
    };
    EXPECT_EQ(codeOf({}), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf({{{1}, {2}}}), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf({{{1}}, {{2}}}), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf({{{}, {}}, {{}, {}}}), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf({{{1}, {2}}, {{1}}}), ErrorCode::Malformed);
    EXPECT_EQ(codeOf({{{1}, {2}}, {{1}, {2, 3}}}), ErrorCode::Malformed);
    EXPECT_EQ(codeOf({{{1}, {2}}, {{1}, {0.0 / 0.0}}}), ErrorCode::NotFinite);
}

TEST(IntraclassCorrelations, HaveNoValueWhereTargetsDoNotDiffer)
{
    const auto same = anovaOf({{{0.1}, {0.3}}, {{0.1}, {0.3}}, {{0.1}, {0.3}}}).value();
    ASSERT_FALSE(intraclassOf(same));
    EXPECT_EQ(intraclassOf(same).error().code, ErrorCode::OutOfRange);
    const auto all = anovaOf({{{0.1}, {0.1}}, {{0.1}, {0.1}}}).value();
    ASSERT_FALSE(intraclassOf(all));
    EXPECT_EQ(intraclassOf(all).error().code, ErrorCode::OutOfRange);
    // So little that a mean's correlation would be of no sense.
    const auto little = anovaOf({{{1}, {2}}, {{2}, {1.1}}}).value();
    ASSERT_FALSE(intraclassOf(little));
    EXPECT_EQ(intraclassOf(little).error().code, ErrorCode::OutOfRange);
    const auto crossed = anovaOf({{{1}, {2}}, {{2}, {1}}}).value();
    ASSERT_FALSE(intraclassOf(crossed));
    EXPECT_EQ(intraclassOf(crossed).error().code, ErrorCode::OutOfRange);
}

}  // namespace spile::panel
