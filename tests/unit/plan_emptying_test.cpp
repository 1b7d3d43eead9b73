// The sheet that empties a barrel into a lot: what it records, refuses and explains.
#include "core/cellar/acts/filling.hpp"
#include "core/outlook/usual_priors.hpp"
#include "core/wood/spread.hpp"
#include "tests/unit/work_room.hpp"

#include <gmock/gmock.h>

namespace spile::plan {

using testing::Contains;
using testing::ElementsAre;
using testing::Not;

TEST(Emptying, RecordsTransferReadingAndWhatTheBarrelIsForNext)
{
    const WorkRoom bench;
    const std::int64_t before = support::entryCount(*bench.cellar);
    std::vector<std::string> steps;
    EXPECT_EQ(bench.work("empty", bench.small.barrel,
                         {{"lot", word("Harbour")},
                          {"way_out", word("pump")},
                          {"out_ml", number(184'000)},
                          {"heel_ml", number(1'500)},
                          {"abv_e2", number(1'120)},
                          {"sg_e4", number(10'180)},
                          {"next_use", word("re-wet and store")},
                          {"kit", word("clean")},
                          {"programme", word("clean")}},
                         &steps),
              "");
    EXPECT_THAT(steps, ElementsAre("ease", "kit", "where_to", "before", "way", "line", "run",
                                   "trub", "readings", "how_much_out", "heel", "next"));
    const auto history = bench.lotHistory();
    EXPECT_EQ(history.name, "Harbour");
    ASSERT_EQ(history.transfers.size(), 1U);
    const cellar::TransferRow& in = history.transfers.front();
    EXPECT_EQ(in.from, bench.small.barrel);
    EXPECT_EQ(in.beer, "Night Ferry");
    EXPECT_NEAR(inLitres(in.volume), 184, 1e-9);
    EXPECT_DOUBLE_EQ(in.alcoholByVolume.value(), 0.112);
    EXPECT_DOUBLE_EQ(in.specificGravity.value(), 1.018);
    EXPECT_EQ(in.method, "pump");
    const auto row = bench.row();
    EXPECT_FALSE(row.filled);
    EXPECT_EQ(row.nextUse, "re-wet and store");
    EXPECT_FALSE(row.sour);
    EXPECT_EQ(bench.cellar->database().integer(0, "SELECT heel_ml FROM state_empty").value(),
              1'500);
    const auto until =
        bench.cellar->database().integer(0, "SELECT until_ms FROM state_empty").value();
    EXPECT_EQ(instantFromMs(until), bench.device.clock.now() + std::chrono::days(30));
    // 12 steps, the lot, the transfer, the reading and the emptying.
    EXPECT_EQ(support::entryCount(*bench.cellar) - before, 12 + 4);
    EXPECT_EQ(support::problemsOf(*bench.cellar), "");
}

TEST(Emptying, OfAPartLeavesTheBarrelFull)
{
    const WorkRoom bench;
    EXPECT_EQ(bench.work("empty", bench.small.barrel,
                         {{"lot", word("Harbour")},
                          {"how_much", word("a part")},
                          {"way_out", word("gravity")},
                          {"kit", word("clean")},
                          {"out_ml", number(60'000)}}),
              "");
    EXPECT_TRUE(bench.row().filled);
    EXPECT_NEAR(inLitres(bench.row().volume.value()), 130, 1e-9);
    const auto history = cellar::historyOf(bench.cellar->database(), bench.small.barrel).value();
    ASSERT_EQ(history.draws.size(), 1U);
    EXPECT_EQ(history.draws.front().method, "transfer");
    EXPECT_NEAR(inLitres(bench.lotHistory().transfers.at(0).volume), 60, 1e-9);
    EXPECT_EQ(support::problemsOf(*bench.cellar), "");
}

TEST(Emptying, KnowsHowMuchByMeterWeightAndDip)
{
    const WorkRoom bench;
    const auto by = [&](const Filled& values) {
        return volumeOut(bench.facts(bench.small.barrel, values));
    };
    EXPECT_NEAR(inLitres(*by({{"out_way", word("meter")}, {"out_ml", number(181'500)}})), 181.5,
                1e-9);
    const auto weighed = by({{"out_way", word("weight")},
                             {"mass_g", number(250'000)},
                             {"mass_after_g", number(52'000)},
                             {"sg_e4", number(10'200)}});
    EXPECT_NEAR(inLitres(*weighed), 198 / (1.02 * 0.9982) * 1.0011, 0.05);  // and the air's lift
    const auto dipped =
        by({{"out_way", word("dip")}, {"dip_mm", number(560)}, {"dip_after_mm", number(20)}});
    EXPECT_GT(inLitres(*dipped), 150);
    EXPECT_LT(inLitres(*dipped), 200);
    EXPECT_EQ(by({{"out_way", word("weight")},
                  {"mass_g", number(50'000)},
                  {"mass_after_g", number(52'000)}})
                  .error()
                  .subject,
              "mass_after_g");
    EXPECT_EQ(by({{"out_way", word("dip")}, {"dip_mm", number(20)}, {"dip_after_mm", number(30)}})
                  .error()
                  .subject,
              "dip_after_mm");
}

// 5 psi on a head of 52 cm are 7.32 kN; more than that is refused.
TEST(Emptying, RefusesMoreThanFivePsi)
{
    const WorkRoom bench;
    const Filled tooMuch = {{"lot", word("Harbour")},
                            {"kit", word("clean")},
                            {"way_out", word("CO2 push")},
                            {"push_pa", number(34'500)}};
    EXPECT_EQ(bench.work("empty", bench.small.barrel, tooMuch), "pressure: head_force: ");
    Filled atTheLimit = tooMuch;
    atTheLimit["push_pa"] = number(34'473);
    std::vector<std::string> steps;
    EXPECT_EQ(bench.work("empty", bench.small.barrel, atTheLimit, &steps), "");
    EXPECT_THAT(steps, Contains("push"));
    EXPECT_THAT(steps, Not(Contains("run")));
    // And again where the gas is opened, should the pressure have been raised since.
    const Sheet empty = shipped("empty");
    const Step& push = *findStep(empty, "push");
    EXPECT_EQ(refusalOf(push, bench.facts(bench.small.barrel, tooMuch)), "head_force");
    EXPECT_EQ(refusalOf(push, bench.facts(bench.small.barrel, atTheLimit)), "");
}

TEST(Emptying, SaysHeadForceAndLiftAsTheFormulasDo)
{
    const WorkRoom bench;
    cellar::BarrelMeasures measures;
    measures.length = millimetres(870);
    measures.bilge = millimetres(620);
    measures.head = millimetres(520);
    ASSERT_TRUE(cellar::recordMeasures(*bench.cellar, bench.small.barrel, measures).has_value());
    const auto force = [&](std::int64_t pascal) {
        return numberOf("head_force",
                        bench.facts(bench.small.barrel, {{"push_pa", number(pascal)}}));
    };
    EXPECT_NEAR(force(6'895).value, 1'464, 2);  // 1 psi: 1.46 kN
    EXPECT_FALSE(force(6'895).caution);
    EXPECT_TRUE(force(20'684).caution);  // 3 psi
    EXPECT_FALSE(force(20'684).refuses);
    EXPECT_NEAR(force(34'474).value, 7'321, 2);  // 5 psi: 7.32 kN
    EXPECT_NEAR(inPsi(pascals(numberOf("lift_pressure",
                                       bench.facts(bench.small.barrel, {{"lift_mm", number(1'000)},
                                                                        {"sg_e4", number(10'300)}}))
                                  .value)),
                1.465, 0.005);  // of a metre at 1.03
    EXPECT_DOUBLE_EQ(numberOf("wood_left", bench.facts(bench.small.barrel)).value,
                     outlook::leftToGive(2));
}

TEST(Emptying, KeepsCleanAndSourKitApart)
{
    const WorkRoom bench;
    const Filled clean = {{"lot", word("Harbour")},
                          {"out_ml", number(180'000)},
                          {"kit", word("clean")},
                          {"programme", word("sour")},
                          {"abv_e2", number(1'000)}};
    Filled sourKit = clean;
    sourKit["kit"] = word("sour");
    EXPECT_EQ(bench.work("empty", bench.small.barrel, sourKit).substr(0, 13), "kit: kit_mark");
    EXPECT_EQ(bench.work("empty", bench.small.barrel, clean), "");
    EXPECT_TRUE(bench.row().sour);
    ASSERT_TRUE(cellar::recordFill(*bench.cellar, {bench.small.barrel, {}, litres(180)}));
    EXPECT_EQ(bench.work("empty", bench.small.barrel, clean).substr(0, 13), "kit: kit_mark");
    std::vector<std::string> steps;
    EXPECT_EQ(bench.work("empty", bench.small.barrel, sourKit, &steps), "");
    EXPECT_THAT(steps, Contains("kit_sour"));
}

TEST(Emptying, ExplainsWhatIsMissing)
{
    const WorkRoom bench;
    const Filled said = {{"out_ml", number(150'000)}, {"heel_ml", number(1'000)}};
    const WorkFacts facts = bench.facts(bench.small.barrel, said);
    const double filled = numberOf("loss_filled", facts).value;
    const double expected = numberOf("expected_now", facts).value;
    EXPECT_DOUBLE_EQ(filled, 0.190);
    EXPECT_NEAR(numberOf("loss_evaporated", facts).value, filled - expected, 1e-12);
    const SheetNumber missing = numberOf("loss_unexplained", facts);
    EXPECT_NEAR(missing.value, expected - 0.151, 1e-12);
    EXPECT_NEAR(
        missing.high.value() - missing.value,
        numberOf("expected_now", facts).high.value() - expected + wood::spreadReach * 0.005 * 0.150,
        1e-9);                     // a meter is sure to half a per cent
    EXPECT_TRUE(missing.caution);  // 39 L on the first day
    EXPECT_NEAR(numberOf("yield_share", facts).value, 0.150 / expected, 1e-12);
}

}  // namespace spile::plan
