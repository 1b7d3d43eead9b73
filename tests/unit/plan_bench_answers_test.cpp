// What the bench's blends cost and how sure they are; glasses and the tank.
#include "core/cellar/acts/benching.hpp"
#include "core/cellar/acts/tending.hpp"
#include "core/plan/bench_answers.hpp"
#include "tests/support/outlook_cellar.hpp"

#include <cmath>
#include <gtest/gtest.h>
#include <numeric>

namespace spile::plan {

namespace {

// A bench made by hand: 200 L each, of one attribute.
BenchBarrel barrelOf(const std::string& beer, double strength, int filledDay)
{
    BenchBarrel barrel;
    barrel.row.beer = beer;
    barrel.row.filledAt = Instant(std::chrono::hours(24 * filledDay));
    barrel.volume = litres(200);
    barrel.alcoholByVolume = strength;
    barrel.realExtract = 5;
    barrel.volumeDeviation = litres(3);
    barrel.strengthDeviation = 0.002;
    return barrel;
}

Bench benchOf(std::vector<BenchBarrel> barrels)
{
    Bench bench;
    blend::Wish wish{"oak", 5};
    wish.low = 4;
    wish.high = 6;
    bench.problem.wishes = {wish, blend::Wish{"vanilla", 5}};
    for (BenchBarrel& barrel : barrels) {
        bench.problem.barrels.push_back(
            {"", barrel.volume.si(), barrel.alcoholByVolume, {5, 5}, {1, 1}});
        bench.barrels.push_back(std::move(barrel));
    }
    return bench;
}

blend::Blend blendOf(const Bench& bench, std::vector<blend::Share> shares)
{
    return blend::blendOf(bench.problem, std::move(shares));
}

double sumOf(const Recipe& recipe)
{
    return std::accumulate(recipe.steps.begin(), recipe.steps.end(), 0.0,
                           [](double sum, const auto& step) { return sum + step.millilitres; });
}

}  // namespace

TEST(BenchRecipe, HasHalvesOfAMillilitreThatMakeExactlyAHundred)
{
    const Recipe thirds = recipeOf({200, 200, 200});
    ASSERT_EQ(thirds.steps.size(), 3U);
    EXPECT_DOUBLE_EQ(sumOf(thirds), 100);
    EXPECT_DOUBLE_EQ(thirds.steps[0].millilitres, 33.5);
    EXPECT_DOUBLE_EQ(thirds.steps[2].millilitres, 33);
    EXPECT_NEAR(thirds.rounding, 0.01, 1e-12) << "33 of 33.3";
    const Recipe even = recipeOf({1, 3});
    EXPECT_EQ(even.steps[0].part, 1U) << "the largest first";
    EXPECT_DOUBLE_EQ(even.steps[0].millilitres, 75);
    EXPECT_DOUBLE_EQ(even.rounding, 0);
}

TEST(BenchRecipe, LeavesNothingOut)
{
    const Recipe recipe = recipeOf({1, 1000, 1, 1});
    EXPECT_DOUBLE_EQ(sumOf(recipe), 100);
    EXPECT_DOUBLE_EQ(recipe.steps[0].millilitres, 98.5);
    EXPECT_DOUBLE_EQ(recipe.steps[3].millilitres, 0.5);
    EXPECT_GT(recipe.rounding, 4) << "0.5 in place of 0.1";
}

TEST(BenchAnswer, OfWholeBarrelsCarriesTheErrorsOfEach)
{
    const Bench bench = benchOf({barrelOf("Ferry", 0.10, 10), barrelOf("Ferry", 0.14, 40)});
    const auto answer = answerOf(bench, blendOf(bench, {{0, 0.2}, {1, 0.2}}));
    ASSERT_TRUE(answer);
    // Volumes: 3 L each, as squares; strengths: 0.2 % vol each at half the weight, and 3 L more of
    // a barrel that is 2 points off the mean of 400 L.
    EXPECT_NEAR((answer->volume.high - answer->volume.low).si() * 1e3,
                2 * 1.2815515655446004 * std::sqrt(18), 1e-9);
    const double strength = std::sqrt(2 * std::pow(0.001, 2) + 2 * std::pow(0.02 * 3 / 400, 2));
    EXPECT_NEAR(answer->strength.high - answer->strength.low, 2 * 1.2815515655446004 * strength,
                1e-12);
    EXPECT_NEAR(answer->strength.median, 0.12, 2e-4);
    EXPECT_TRUE(answer->ullaged.empty());
    EXPECT_EQ(answer->beers, 1U);
    EXPECT_EQ(answer->oldest, Instant(std::chrono::hours(240)));
    EXPECT_EQ(answer->youngest, Instant(std::chrono::hours(960)));
}

TEST(BenchAnswer, OfAPartSaysWhatIsLeft)
{
    const Bench bench =
        benchOf({barrelOf("Ferry", 0.10, 1), barrelOf("", 0.10, 1), barrelOf("", 0.10, 1)});
    const auto answer = answerOf(bench, blendOf(bench, {{0, 0.2}, {1, 0.05}, {2, 0.2}}));
    ASSERT_TRUE(answer);
    ASSERT_EQ(answer->ullaged.size(), 1U);
    EXPECT_EQ(answer->ullaged[0].barrel, 1U);
    EXPECT_NEAR(answer->ullaged[0].left.si(), 0.15, 1e-12);
    EXPECT_EQ(answer->beers, 3U) << "two that nobody named";
    const double metered = 0.25;  // litres: half a percent of 50
    EXPECT_NEAR((answer->volume.high - answer->volume.low).si() * 1e3,
                2 * 1.2815515655446004 * std::sqrt(18 + metered * metered), 1e-9);
}

TEST(BenchAnswer, SaysTheChanceOfEachWindow)
{
    const Bench bench = benchOf({barrelOf("Ferry", 0.10, 1)});
    const auto answer = answerOf(bench, blendOf(bench, {{0, 0.2}}));
    ASSERT_TRUE(answer);
    ASSERT_EQ(answer->chances.size(), 2U);
    EXPECT_NEAR(answer->chances[0], 0.6826894921, 1e-9) << "one deviation to either side";
    EXPECT_EQ(answer->chances[1], 1) << "no window";
}

TEST(BenchAnswers, AreDistinctWithTheGreatestChanceFirst)
{
    const Bench bench = benchOf(std::vector<BenchBarrel>(5, barrelOf("Ferry", 0.1, 1)));
    blend::Found found;
    const auto add = [&](std::vector<blend::Share> shares, double chance) {
        blend::Blend blend = blendOf(bench, std::move(shares));
        blend.chance = chance;
        found.blends.push_back(std::move(blend));
    };
    add({{0, 0.2}, {1, 0.2}, {2, 0.2}}, 0.5);
    add({{0, 0.2}, {1, 0.2}}, 0.9);
    add({{0, 0.2}}, 0.8);            // all of it is in the one before
    add({{0, 0.2}, {3, 0.2}}, 0.7);  // one in two is another
    add({{0, 0.2}, {1, 0.2}, {3, 0.2}, {4, 0.2}},
        0.6);  // two in four of the first, one of the last
    const auto answers = answersOf(bench, found);
    ASSERT_TRUE(answers);
    std::vector<double> chances;
    for (const BenchAnswer& answer : *answers) {
        chances.push_back(answer.blend.chance);
    }
    EXPECT_EQ(chances, (std::vector<double>{0.9, 0.7, 0.6}));
}

TEST(BenchAnswers, AreTwoWhereThereAreTwoBlends)
{
    const Bench bench = benchOf(std::vector<BenchBarrel>(2, barrelOf("Ferry", 0.1, 1)));
    blend::Found found;
    found.blends.push_back(blendOf(bench, {{0, 0.2}, {1, 0.2}}));
    EXPECT_EQ(answersOf(bench, found)->size(), 1U);
    found.blends.push_back(blendOf(bench, {{0, 0.2}}));  // alike
    const auto answers = answersOf(bench, found);
    ASSERT_EQ(answers->size(), 2U);
    EXPECT_EQ((*answers)[0].blend.chance >= (*answers)[1].blend.chance, true);
}

TEST(BenchAnswers, AreSixAtMost)
{
    const Bench bench = benchOf(std::vector<BenchBarrel>(9, barrelOf("Ferry", 0.1, 1)));
    blend::Found found;
    for (std::size_t i = 0; i < 9; ++i) {
        found.blends.push_back(blendOf(bench, {{i, 0.2}}));
    }
    EXPECT_EQ(answersOf(bench, found)->size(), answersMost);
}

TEST(BenchTank, SaysWhatIsTakenWholeAndWhatIsNotThereAnyMore)
{
    support::OutlookCellar world;
    const SubjectId whole = world.filledBarrel();  // 195 L
    const SubjectId part = world.filledBarrel();
    const SubjectId gone = world.filledBarrel();
    cellar::BenchGlass glass;
    glass.number = 1;
    glass.portions = {
        {part, litres(60), "", ""}, {whole, litres(190), "", ""}, {gone, litres(100), "", ""}};
    cellar::NewEmpty empty;
    empty.barrel = gone;
    ASSERT_TRUE(cellar::recordEmpty(*world.cellar, empty));
    const auto parts = tankPartsOf(world.cellar->database(), glass, world.now());
    ASSERT_TRUE(parts);
    ASSERT_EQ(parts->size(), 3U);
    EXPECT_EQ((*parts)[0].portion.barrel, whole) << "the largest first";
    EXPECT_TRUE((*parts)[0].whole());
    EXPECT_FALSE((*parts)[0].tooLittle());
    EXPECT_TRUE((*parts)[1].tooLittle()) << "it is empty";
    EXPECT_FALSE((*parts)[1].whole());
    EXPECT_FALSE((*parts)[2].whole());
    EXPECT_FALSE((*parts)[2].tooLittle());
    ASSERT_TRUE((*parts)[2].held);
    EXPECT_NEAR((*parts)[2].held->si(), 0.195, 0.003);
}

TEST(BenchErrors, GrowWhereNobodyReadTheStrength)
{
    support::OutlookCellar world;
    const SubjectId read = world.filledBarrel();
    const SubjectId unread = world.filledBarrel();
    world.pass(std::chrono::hours(1));
    cellar::NewReading reading;
    reading.barrel = read;
    reading.specificGravity = 1.020;
    reading.alcoholByVolume = 0.11;
    ASSERT_TRUE(cellar::recordReading(*world.cellar, reading));
    BenchAsk ask;
    ask.wishes = {{"oak", 4, 6}};
    ask.keptBack = {world.own.barrel};
    const auto bench = benchOf(world.cellar->database(), {}, ask, world.now(), {});
    ASSERT_TRUE(bench);
    ASSERT_EQ(bench->barrels.size(), 2U);
    for (const BenchBarrel& barrel : bench->barrels) {
        EXPECT_NEAR(barrel.strengthDeviation, barrel.row.barrel == unread ? 0.015 : 0.002, 2e-4);
        EXPECT_GT(barrel.volumeDeviation, litres(1)) << "half a percent of 200 L, and the wood";
        EXPECT_LT(barrel.volumeDeviation, litres(8));
    }
}

}  // namespace spile::plan
