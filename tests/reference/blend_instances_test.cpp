// Two instances of the bench and all their blends, found by a search of its own through every set
// (computed with Python, 2026). The barrels are invented; the optima are the check.
#include "core/blend/bench.hpp"

#include <gtest/gtest.h>

namespace spile::blend {

namespace {

std::vector<std::size_t> barrelsOf(const Blend& blend)
{
    std::vector<std::size_t> numbers;
    for (const Share& share : blend.shares) {
        numbers.push_back(share.barrel + 1);
    }
    return numbers;
}

using Set = std::vector<std::size_t>;

Problem firstInstance()
{
    Problem problem;
    problem.wishes = {{"a", 5.0}, {"b", 4.5}, {"c", 5.5}};
    const std::vector<std::vector<double>> mean = {{5.6, 6.3, 5.5}, {2.9, 6.4, 5.7},
                                                   {4.1, 5.9, 5.6}, {5.5, 5, 5.9},
                                                   {3.8, 4.7, 4.2}, {6, 5.1, 4.5}};
    const std::vector<std::vector<double>> deviation = {{.38, .4, .6},   {.41, .49, .69},
                                                        {.68, .59, .52}, {.41, .36, .69},
                                                        {.51, .35, .55}, {.61, .55, .67}};
    for (std::size_t i = 0; i < mean.size(); ++i) {
        problem.barrels.push_back({std::to_string(i + 1), 200, 0.11, mean[i], deviation[i]});
    }
    problem.limits.barrelsMost = 3;
    return problem;
}

Problem secondInstance()
{
    Problem problem;
    problem.wishes = {{"a", 5.0, 1}, {"b", 4.0, 1}, {"c", 5.0, 2}, {"d", 6.0, .5}};
    const std::vector<std::vector<double>> mean = {
        {5.3, 4.2, 4.3, 1.1}, {7.9, 6.8, 4.5, 6.2}, {5.4, 4.1, 6.6, 4.5}, {4.5, 3.7, 5.7, 4.8},
        {5.9, 4, 5.2, 3.6},   {6.3, 5.3, 5.5, 5.7}, {3.4, 6.3, 8.3, 2.4}, {2.2, 2.6, 6.3, 5.2}};
    const std::vector<std::vector<double>> deviation = {
        {.57, .64, .56, .46}, {.51, .54, .64, .48}, {.66, .55, .63, .5},  {.58, .44, .51, .39},
        {.34, .32, .58, .48}, {.66, .63, .45, .69}, {.54, .61, .46, .38}, {.37, .37, .54, .35}};
    const std::vector<double> litres = {20, 20, 55, 55, 30, 20, 20, 30};
    const std::vector<double> strength = {.11, .115, .11, .127, .12, .113, .115, .11};
    for (std::size_t i = 0; i < mean.size(); ++i) {
        problem.barrels.push_back(
            {std::to_string(i + 1), litres[i], strength[i], mean[i], deviation[i]});
    }
    problem.limits = {4, 0, 0, 80, 150, .105, .115};
    return problem;
}

}  // namespace

TEST(FirstInstance, HasItsBestBlendsAndAllOfThem)
{
    const auto found = bestBlends(firstInstance());
    ASSERT_TRUE(found);
    EXPECT_TRUE(found->proven);
    EXPECT_EQ(found->blends.size(), 41U);
    EXPECT_EQ(barrelsOf(found->blends[0]), (Set{4, 5}));
    EXPECT_NEAR(found->blends[0].distance, .812225, 5e-7);
    EXPECT_NEAR(found->blends[0].mean[0], 4.65, 1e-12);
    EXPECT_NEAR(found->blends[0].mean[1], 4.85, 1e-12);
    EXPECT_NEAR(found->blends[0].mean[2], 5.05, 1e-12);
    EXPECT_EQ(barrelsOf(found->blends[1]), (Set{4, 5, 6}));
    EXPECT_NEAR(found->blends[1].distance, .885822, 5e-7);
    EXPECT_EQ(barrelsOf(found->blends[2]), (Set{1, 4, 5}));
    EXPECT_NEAR(found->blends[2].distance, 1.021478, 5e-7);
}

// The second best has a strength of exactly 11.5 %, the bound.
TEST(SecondInstance, HasItsBestBlendsAndAllOfThem)
{
    const auto found = bestBlends(secondInstance());
    ASSERT_TRUE(found);
    EXPECT_TRUE(found->proven);
    EXPECT_EQ(found->blends.size(), 52U);
    const Blend& best = found->blends[0];
    EXPECT_EQ(barrelsOf(best), (Set{2, 5, 6, 8}));
    EXPECT_NEAR(best.distance, 1.409749, 5e-7);
    EXPECT_NEAR(best.amount, 100, 1e-12);
    EXPECT_NEAR(best.strength, .1146, 1e-12);
    EXPECT_NEAR(best.mean[0], 5.27, 1e-12);
    EXPECT_NEAR(best.mean[1], 4.40, 1e-12);
    EXPECT_NEAR(best.mean[2], 5.45, 1e-12);
    EXPECT_NEAR(best.mean[3], 5.02, 1e-12);
    EXPECT_EQ(barrelsOf(found->blends[1]), (Set{2, 5, 8}));
    EXPECT_NEAR(found->blends[1].distance, 1.438323, 5e-7);
    EXPECT_NEAR(found->blends[1].strength, .115, 1e-12);
    EXPECT_EQ(barrelsOf(found->blends[2]), (Set{1, 2, 6, 8}));
    EXPECT_NEAR(found->blends[2].distance, 1.667665, 5e-7);
}

TEST(SecondInstance, HasItsBestChances)
{
    Problem problem = secondInstance();
    for (Wish& wish : problem.wishes) {
        wish.low = *wish.target - 1.2;
        wish.high = *wish.target + 1.2;
    }
    const auto found = bestBlends(problem);
    ASSERT_TRUE(found);
    const std::vector<Blend> ranked = byChance(found->blends);
    ASSERT_GE(ranked.size(), 3U);
    EXPECT_EQ(barrelsOf(ranked[0]), (Set{2, 5, 6, 8}));
    EXPECT_NEAR(ranked[0].chance, .811838, 5e-7);
    EXPECT_EQ(barrelsOf(ranked[1]), (Set{2, 3, 6, 8}));
    EXPECT_NEAR(ranked[1].chance, .630661, 5e-7);
    EXPECT_EQ(barrelsOf(ranked[2]), (Set{2, 5, 8}));
    EXPECT_NEAR(ranked[2].chance, .571417, 5e-7);
}

}  // namespace spile::blend
