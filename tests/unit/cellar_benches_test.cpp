// Benches: glasses beside one another, scored blind, one of them accepted.
#include "core/cellar/acts/benching.hpp"
#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/lots.hpp"
#include "core/cellar/benches.hpp"
#include "tests/support/small_cellar.hpp"

#include <algorithm>
#include <gtest/gtest.h>
#include <set>

namespace spile::cellar {

namespace {

// What was refused; "nothing" if it was recorded.
template <class T>
std::string refusalOf(const Result<T>& result)
{
    return result ? "nothing" : result.error().subject;
}
template <class T>
bool isRefused(const Result<T>& result, ErrorCode code)
{
    return !result && result.error().code == code;
}

class Benches : public testing::Test {
protected:
    support::TestDevice device{7};
    std::unique_ptr<Cellar> cellar = device.newCellar();
    support::SmallCellar own = support::fillSmallCellar(*cellar);
    SubjectId other = filled();
    SubjectId bo = *registerPerson(*cellar, "Bo");

    SubjectId filled()
    {
        const auto made = registerBarrel(*cellar, {.mark = "Rum 9"});
        EXPECT_TRUE(made);
        NewFill fill;
        fill.barrel = made->barrel;
        fill.volume = litres(150);
        EXPECT_TRUE(recordFill(*cellar, fill));
        return made->barrel;
    }
    NewBench twoGlasses()
    {
        NewBench bench;
        bench.name = "Night Ferry";
        bench.glasses = {{{own.barrel, litres(180)}, {other, litres(60.5)}},
                         {{other, litres(140)}}};
        return bench;
    }
    SubjectId recorded()
    {
        const auto bench = recordBench(*cellar, twoGlasses());
        EXPECT_TRUE(bench) << (bench ? "" : support::textOf(bench.error()));
        return bench.value_or(SubjectId());
    }
    Result<EntryId> taste(const SubjectId& bench, int glass, const SubjectId& person, int oak)
    {
        NewGlassTaste sheet;
        sheet.bench = bench;
        sheet.glass = glass;
        sheet.scores = {{"oak", oak}, {"vanilla", std::nullopt}};
        sheet.liking = 7;
        sheet.circumstance.person = person;
        return recordGlassTaste(*cellar, sheet);
    }
    Result<EntryId> accept(const SubjectId& bench, int glass, bool cold, bool carbonated)
    {
        return acceptGlass(*cellar, {bench, glass, cold, carbonated, {}});
    }
    BenchWhole read(const SubjectId& bench)
    {
        const auto found = benchById(cellar->database(), bench);
        EXPECT_TRUE(found && *found);
        return found && *found ? **found : BenchWhole();
    }
};

}  // namespace

TEST_F(Benches, KeepWhatIsInEachGlassAndHowItTasted)
{
    const SubjectId bench = recorded();
    ASSERT_TRUE(taste(bench, 2, own.person, 6));
    const BenchWhole found = read(bench);
    EXPECT_EQ(found.name, "Night Ferry");
    EXPECT_EQ(found.glasses, 2);
    EXPECT_FALSE(found.accepted);
    ASSERT_EQ(found.poured.size(), 2U);
    ASSERT_EQ(found.poured[0].portions.size(), 2U);
    EXPECT_EQ(found.poured[0].portions[1].barrel, other);
    EXPECT_EQ(found.poured[0].portions[1].name, "Rum 9");
    EXPECT_DOUBLE_EQ(found.poured[0].volume().si(), 0.2405);
    EXPECT_TRUE(found.poured[0].tastes.empty());
    ASSERT_EQ(found.poured[1].tastes.size(), 1U);
    const GlassTaste& sheet = found.poured[1].tastes[0];
    EXPECT_EQ(sheet.scores.at("oak"), 6);
    EXPECT_EQ(sheet.scores.at("vanilla"), std::nullopt);
    EXPECT_EQ(sheet.liking, 7);
    EXPECT_EQ(found.scoredAttributes(), (std::vector<std::string>{"oak", "vanilla"}));
    EXPECT_EQ(support::problemsOf(*cellar), "");
}

TEST_F(Benches, RefuseWhatIsNoBench)
{
    NewBench one = twoGlasses();
    one.glasses.pop_back();
    EXPECT_TRUE(isRefused(recordBench(*cellar, one), ErrorCode::OutOfRange));
    NewBench five = twoGlasses();
    five.glasses.resize(5, five.glasses[0]);
    EXPECT_EQ(refusalOf(recordBench(*cellar, five)), "glasses");
    NewBench nothing = twoGlasses();
    nothing.glasses[1].clear();
    EXPECT_EQ(refusalOf(recordBench(*cellar, nothing)), "glass");
    NewBench twice = twoGlasses();
    twice.glasses[1].push_back({other, litres(1)});
    EXPECT_TRUE(isRefused(recordBench(*cellar, twice), ErrorCode::Conflict));
    NewBench empty = twoGlasses();
    empty.glasses[1] = {{registerBarrel(*cellar, {.mark = "Empty"})->barrel, litres(1)}};
    EXPECT_TRUE(isRefused(recordBench(*cellar, empty), ErrorCode::Conflict));
    NewBench unmeasured = twoGlasses();
    unmeasured.glasses[1][0].volume = Volume();
    EXPECT_FALSE(recordBench(*cellar, unmeasured));
    EXPECT_TRUE(benches(cellar->database(), {}, 10)->empty());
}

TEST_F(Benches, AreScoredOnceByEachTasterAndShownAfterTheLastGlass)
{
    const SubjectId bench = recorded();
    ASSERT_TRUE(taste(bench, 1, own.person, 4));
    EXPECT_TRUE(isRefused(taste(bench, 1, own.person, 5), ErrorCode::Conflict));
    EXPECT_TRUE(taste(bench, 1, bo, 5));
    EXPECT_EQ(refusalOf(taste(bench, 3, bo, 5)), "glass");
    EXPECT_EQ(refusalOf(taste(SubjectId(), 1, bo, 5)), "bench");
    NewGlassTaste nobody;
    nobody.bench = bench;
    nobody.glass = 2;
    EXPECT_EQ(refusalOf(recordGlassTaste(*cellar, nobody)), "person");
    EXPECT_FALSE(read(bench).areScoresShownTo(own.person));
    EXPECT_EQ(read(bench).tastedBy(own.person), 1);
    ASSERT_TRUE(taste(bench, 2, own.person, 4));
    EXPECT_TRUE(read(bench).areScoresShownTo(own.person));
    EXPECT_FALSE(read(bench).areScoresShownTo(bo));
}

TEST_F(Benches, AcceptAGlassOnlyTastedColdAndCarbonated)
{
    const SubjectId bench = recorded();
    EXPECT_EQ(refusalOf(accept(bench, 1, true, true)), "glass");
    ASSERT_TRUE(taste(bench, 1, own.person, 5));
    EXPECT_EQ(refusalOf(accept(bench, 2, true, true)), "glass") << "the other one was tasted";
    EXPECT_EQ(refusalOf(accept(bench, 1, false, true)), "tasted_cold");
    EXPECT_EQ(refusalOf(accept(bench, 1, true, false)), "tasted_carbonated");
    EXPECT_TRUE(isRefused(accept(bench, 3, true, true), ErrorCode::NotFound));
    EXPECT_FALSE(read(bench).choice);
    const auto accepted = accept(bench, 1, true, true);
    ASSERT_TRUE(accepted);
    ASSERT_TRUE(read(bench).choice);
    EXPECT_EQ(read(bench).choice->glass, 1);
    EXPECT_FALSE(read(bench).choice->lot);
    EXPECT_EQ(refusalOf(accept(bench, 1, true, true)), "accept");
    const auto lot = registerLot(*cellar, {.name = "Night Ferry", .accepted = *accepted});
    ASSERT_TRUE(lot);
    EXPECT_EQ(read(bench).choice->lot, *lot);
    ASSERT_TRUE(voidEntry(*cellar, *accepted));
    EXPECT_FALSE(read(bench).choice);
    EXPECT_FALSE(read(bench).accepted);
}

TEST_F(Benches, AreListedTheNewestFirstPageByPage)
{
    const SubjectId first = recorded();
    device.clock.pass(std::chrono::hours(1));
    const SubjectId second = recorded();
    const auto newest = benches(cellar->database(), {}, 1);
    ASSERT_TRUE(newest);
    ASSERT_EQ(newest->size(), 1U);
    EXPECT_EQ(newest->front().bench, second);
    const auto rest =
        benches(cellar->database(), {newest->front().counted, newest->front().bench}, 10);
    ASSERT_EQ(rest->size(), 1U);
    EXPECT_EQ(rest->front().bench, first);
    EXPECT_EQ(rest->front().glasses, 2);
}

TEST_F(Benches, OfferTheGlassesToEachPersonInAnOrderOfTheirOwn)
{
    const SubjectId bench = recorded();
    const auto order = glassOrder(bench, own.person, 4);
    EXPECT_EQ(order, glassOrder(bench, own.person, 4));
    EXPECT_EQ(std::set<int>(order.begin(), order.end()), (std::set<int>{1, 2, 3, 4}));
    std::set<std::vector<int>> orders;
    std::map<int, int> firsts;
    for (int person = 0; person < 240; ++person) {
        const auto shuffled = glassOrder(bench, device.ids.next(), 4);
        orders.insert(shuffled);
        ++firsts[shuffled.front()];
    }
    EXPECT_GT(orders.size(), 20U) << "of 24";
    for (int glass = 1; glass <= 4; ++glass) {
        EXPECT_GT(firsts[glass], 35) << "of 60 expected";
    }
}

}  // namespace spile::cellar
