#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/tasting.hpp"
#include "core/cellar/kind.hpp"
#include "core/cellar/vocabulary.hpp"
#include "tests/support/small_cellar.hpp"

#include <gtest/gtest.h>
#include <set>

namespace spile::cellar {

namespace {

using Attributes = std::vector<std::string>;

class Asked : public testing::Test {
protected:
    support::TestDevice device{86};
    std::unique_ptr<Cellar> cellar = device.newCellar();
    SubjectId person = *registerPerson(*cellar, "Ada");

    SubjectId fullBarrel(const std::vector<Window>& windows)
    {
        const SubjectId target = *registerTarget(*cellar, "Target", windows);
        const SubjectId batch = *registerBatch(*cellar, {.name = "Beer", .target = target});
        const SubjectId barrel = registerBarrel(*cellar, {})->barrel;
        EXPECT_TRUE(recordFill(*cellar, {.barrel = barrel, .batch = batch}));
        device.clock.pass(std::chrono::hours(1));
        return barrel;
    }
    void score(const SubjectId& barrel, const std::map<std::string, Score>& scores)
    {
        NewTaste taste{barrel, scores};
        taste.circumstance.person = person;
        ASSERT_TRUE(recordTaste(*cellar, taste));
        device.clock.pass(std::chrono::hours(1));
    }
    Attributes asked(const SubjectId& barrel) { return *attributesOf(cellar->database(), barrel); }
};

// Each word once, and each one that its field can hold.
void expectWords(WordList words, Field field)
{
    std::set<std::string_view> seen;
    for (const std::string_view word : words) {
        EXPECT_TRUE(seen.insert(word).second) << word;
        EXPECT_TRUE(checkValue(specOf(field), std::string(word))) << word;
    }
    EXPECT_FALSE(seen.empty());
}

}  // namespace

TEST(Vocabulary, HoldsEachWordOnceAndAsItsFieldWantsIt)
{
    EXPECT_EQ(usualAttributes().size(), 9U);
    expectWords(usualAttributes(), Field::Finding);  // as short as a list's word may be
    expectWords(usualFaults(), Field::Finding);
    expectWords(noteChips(), Field::Note);
    expectWords(drawMethods(), Field::DrawMethod);
    expectWords(gaugeMethods(), Field::GaugeMethod);
    expectWords(checkFindings(), Field::Finding);
    expectWords(verdicts(), Field::Verdict);
    expectWords(nextUses(), Field::NextUse);
    expectWords(usualSpirits(), Field::Spirit);
    expectWords(usualWoods(), Field::Wood);
}

TEST(Vocabulary, CallsOneFindingSound)
{
    EXPECT_EQ(std::count_if(checkFindings().begin(), checkFindings().end(), isSound), 1);
    EXPECT_TRUE(isSound("dry"));
    EXPECT_FALSE(isSound("somebody's own word"));
}

TEST(Vocabulary, HasTheSizesInOrder)
{
    double before = 0;
    for (const BarrelSize& size : barrelSizes()) {
        EXPECT_GT(inLitres(size.volume), before) << size.name;
        before = inLitres(size.volume);
    }
    EXPECT_DOUBLE_EQ(before, 500);
}

TEST_F(Asked, AreTheUsualAttributesIfNothingElseIsKnown)
{
    const SubjectId barrel = registerBarrel(*cellar, {})->barrel;
    EXPECT_EQ(asked(barrel), Attributes(usualAttributes().begin(), usualAttributes().end()));
}

TEST_F(Asked, AreTheTargetsFirstThenWhatWasScoredThenTheUsualOnes)
{
    const SubjectId barrel = fullBarrel({{"smoke", 3, 5}, {"oak", 4, 6}});
    score(barrel, {{"cherry", 4}, {"oak", 5}});
    const Attributes all = asked(barrel);
    EXPECT_EQ(Attributes(all.begin(), all.begin() + 4),
              (Attributes{"smoke", "oak", "cherry", "vanilla"}));
    EXPECT_EQ(all.size(), 11U);
    EXPECT_EQ(std::set<std::string>(all.begin(), all.end()).size(), 11U);
}

TEST_F(Asked, AreAtMostTwelve)
{
    const SubjectId barrel = fullBarrel({{"smoke", 3, 5}});
    score(barrel, {{"a", 4}, {"b", 5}, {"c", 5}, {"d", 5}});
    EXPECT_EQ(asked(barrel).size(), 12U);
    EXPECT_EQ(asked(barrel).at(4), "d");
}

TEST_F(Asked, AreNotThoseOfAFillThatIsOver)
{
    const SubjectId barrel = fullBarrel({{"smoke", 3, 5}});
    score(barrel, {{"cherry", 4}});
    ASSERT_TRUE(recordEmpty(*cellar, {.barrel = barrel}));
    device.clock.pass(std::chrono::hours(1));
    EXPECT_EQ(asked(barrel).front(), "vanilla");
    ASSERT_TRUE(recordFill(*cellar, {.barrel = barrel}));
    EXPECT_EQ(asked(barrel), Attributes(usualAttributes().begin(), usualAttributes().end()));
}

}  // namespace spile::cellar
