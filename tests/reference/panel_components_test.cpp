// Sources: Penicillin, O. L. Davies and P. L. Goldsmith (eds.), "Statistical Methods in Research
// and Production", 4th ed. 1972, section 6.6, as the data set `Penicillin` of R's lme4 has it:
// zones of 24 plates by 6 samples. The fit: computed with R (lme4, lmer(diameter ~ 1 + (1|plate) +
// (1|sample)), REML). R's optimiser stopped near the minimum: in a full table the deviations are
// also those of the analysis of variance, .84670432, 1.93155841 and .54992314 (computed with Python
// from the mean squares), from which R's differ in the sixth digit. Both are held to below.
// ISO 8586, worked example (panel_data.hpp): computed with R (lme4, REML).
#include "core/panel/components.hpp"
#include "tests/reference/panel_data.hpp"

#include <array>
#include <gtest/gtest.h>
#include <optional>

namespace spile::panel {

namespace {

// Plates a to x, samples A to F.
constexpr std::array<std::array<int, 6>, 24> penicillin{
    {{27, 23, 26, 23, 23, 21}, {27, 23, 26, 23, 23, 21}, {25, 21, 25, 24, 24, 20},
     {26, 23, 25, 23, 23, 20}, {25, 22, 26, 22, 23, 20}, {24, 22, 25, 23, 22, 19},
     {24, 20, 23, 21, 22, 19}, {26, 22, 26, 24, 24, 21}, {24, 21, 24, 22, 22, 20},
     {24, 21, 24, 23, 22, 19}, {26, 23, 26, 24, 24, 21}, {25, 22, 26, 24, 24, 20},
     {26, 24, 26, 24, 25, 22}, {26, 23, 26, 23, 23, 20}, {26, 23, 25, 24, 24, 22},
     {25, 22, 25, 23, 23, 20}, {25, 21, 24, 23, 23, 20}, {25, 22, 24, 23, 23, 19},
     {24, 21, 23, 21, 21, 19}, {26, 23, 26, 24, 24, 21}, {25, 21, 24, 22, 22, 18},
     {25, 22, 25, 22, 22, 20}, {24, 21, 24, 22, 24, 19}, {24, 21, 24, 22, 21, 18}}};

struct Design {
    std::vector<double> y;
    Factor plate{{}, 24};
    Factor sample{{}, 6};
};

Design penicillinDesign()
{
    Design design;
    for (std::size_t plate = 0; plate < penicillin.size(); ++plate) {
        for (std::size_t sample = 0; sample < penicillin[plate].size(); ++sample) {
            design.y.push_back(penicillin[plate][sample]);
            design.plate.level.push_back(static_cast<int>(plate));
            design.sample.level.push_back(static_cast<int>(sample));
        }
    }
    return design;
}

void expectPenicillin(const Components& found, std::size_t plate, std::size_t sample)
{
    EXPECT_NEAR(found.mean, 22.9722222, 5e-8);
    EXPECT_NEAR(found.deviations[plate], 0.8467025, 5e-6);
    EXPECT_NEAR(found.deviations[plate], 0.84670432, 5e-7);
    EXPECT_NEAR(found.deviations[sample], 1.9316138, 6e-5);
    EXPECT_NEAR(found.deviations[sample], 1.93155841, 5e-7);
    EXPECT_NEAR(found.residual, 0.5499227, 1e-6);
    EXPECT_NEAR(found.residual, 0.54992314, 5e-8);
    EXPECT_NEAR(found.criterion, 330.860589, 5e-7);
    const std::array effects{2.187058, -1.010476, 1.937900, -0.096895, -0.013842, -3.003745};
    ASSERT_EQ(found.effects[sample].size(), effects.size());
    for (std::size_t i = 0; i < effects.size(); ++i) {
        EXPECT_NEAR(found.effects[sample][i], effects[i], 1e-6) << i;
    }
    EXPECT_EQ(found.effects[plate].size(), 24U);
}

}  // namespace

TEST(Components, AreThoseOfPenicillin)
{
    const Design design = penicillinDesign();
    expectPenicillin(componentsOf(design.y, {design.plate, design.sample}).value(), 0, 1);
    expectPenicillin(componentsOf(design.y, {design.sample, design.plate}).value(), 1, 0);
}

TEST(Components, AreThoseOfIso8586WithoutAnInteraction)
{
    std::vector<double> y;
    Factor batch{{}, 6};
    Factor assessor{{}, 4};
    Factor both{{}, 24};
    for (std::size_t i = 0; i < icedFish.size(); ++i) {
        for (std::size_t j = 0; j < icedFish[i].size(); ++j) {
            for (const double score : icedFish[i][j]) {
                y.push_back(score);
                batch.level.push_back(static_cast<int>(i));
                assessor.level.push_back(static_cast<int>(j));
                both.level.push_back(static_cast<int>(4 * i + j));
            }
        }
    }
    const Components found = componentsOf(y, {batch, assessor, both}).value();
    EXPECT_NEAR(found.deviations[0], 1.28298, 5e-6);
    EXPECT_NEAR(found.deviations[1], 0.64344, 5e-6);
    EXPECT_EQ(found.deviations[2], 0);
    EXPECT_NEAR(found.residual, 1.10823, 5e-6);
    for (const double effect : found.effects[2]) {
        EXPECT_EQ(effect, 0);
    }
}

TEST(Components, RefuseWhatTheyCannotBeMadeFrom)
{
    const Factor pairs{{0, 0, 1, 1}, 2};
    const auto codeOf = [](const std::vector<double>& y,
                           const std::vector<Factor>& factors) -> std::optional<ErrorCode> {
        const auto found = componentsOf(y, factors);
        return found ? std::nullopt : std::optional(found.error().code);
    };
    EXPECT_EQ(codeOf({1, 2, 3, 4}, {}), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf({1, 2}, {{{0, 0}, 1}}), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf({1, 2, 3}, {pairs}), ErrorCode::Malformed);
    EXPECT_EQ(codeOf({1, 2, 3, 4}, {{{0, 0, 1, 2}, 2}}), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf({1, 2, 3, 4}, {{{0, 0, 1, -1}, 2}}), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf({1, 2, 3, 4}, {{{0, 3, 1, 2}, 4}}), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf({1, 2, 3, 4}, {pairs, {{0, 1, 1, 0}, 1001}, {{0, 1, 1, 0}, 1002}}),
              ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf({0.1, 0.1, 0.1, 0.1}, {pairs}), ErrorCode::OutOfRange);
    EXPECT_EQ(componentsOf({0.1, 0.1, 0.1, 0.1}, {pairs}).error().subject, "scores");
    EXPECT_EQ(codeOf({1, 1, 2, 2}, {pairs}), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf({1, 2, 3, 0.0 / 0.0}, {pairs}), ErrorCode::NotFinite);
}

}  // namespace spile::panel
