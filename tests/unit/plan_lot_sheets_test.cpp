// From the lot to the bottle: cautions before what needs them, and each sheet worked to its end on
// a small cellar, with what it records.
#include "core/gas/carbonation.hpp"
#include "tests/unit/work_room.hpp"

#include <algorithm>
#include <cmath>
#include <gmock/gmock.h>

namespace spile::plan {

using testing::Contains;
using testing::ElementsAre;

namespace {

struct Expected {
    const char *sheet, *step;
    std::vector<std::string> cautions;
};

}  // namespace

// A step's cautions are shown before anything of it can be filled in or begun, so a caution on the
// step stands before it; what the words of a caution need was asked for in a step before.
TEST(LotSheets, StandEachCautionBeforeItsStep)
{
    const std::vector<Expected> table = {
        {"empty", "ease", {"ease", "no_flame"}},
        {"empty", "kit_sour", {"sour_kit"}},
        {"empty", "before", {"lift", "ease"}},
        {"empty", "pressure", {"push", "push_heads"}},
        {"empty", "line", {"co2_room", "sanitiser"}},
        {"empty", "run", {"ease", "vent_open", "co2_room"}},
        {"empty", "push", {"head_force", "push", "vent_relief", "co2_room"}},
        {"empty", "trub", {"ease"}},
        {"empty", "how_much_out", {"lift"}},
        {"empty", "heel", {"lift"}},
        {"empty", "bung", {"co2_room", "vent_open"}},
        {"finish", "trial_spirit", {"spirit_law", "no_flame", "spit"}},
        {"finish", "add_spirit", {"spirit_law", "no_flame", "alcohol_heat"}},
        {"finish", "clean", {"no_steam", "alcohol_heat", "sanitiser"}},
        {"finish", "add", {"co2_room", "ease"}},
        {"treat", "filter", {"pressure_line", "co2_room", "sanitiser"}},
        {"treat", "pasteurise", {"hot_pressure"}},
        {"carbonate", "keg", {"co2_room", "pressure_keg"}},
        {"carbonate", "gas_on", {"co2_room", "pressure_keg"}},
        {"carbonate", "sugar", {"bottle_pressure"}},
        {"carbonate", "prime", {"bottle_pressure", "hot_sugar"}},
        {"package", "ready", {"co2_room", "sanitiser"}},
        {"package", "fill", {"bottle_pressure", "pressure_keg", "co2_room", "lift"}},
        {"package", "count", {"lift"}}};
    for (const Expected& row : table) {
        SCOPED_TRACE(std::string(row.sheet) + " / " + row.step);
        const Sheet sheet = shipped(row.sheet);
        const Step* step = findStep(sheet, row.step);
        ASSERT_NE(step, nullptr);
        for (const std::string& caution : row.cautions) {
            EXPECT_THAT(step->cautions, Contains(caution));
        }
    }
    EXPECT_EQ(shipped("empty").steps.front().name, "ease");  // before anything else
}

// Whatever asks for something dangerous has its caution, on whichever step it is put later.
TEST(LotSheets, AskForNothingDangerousWithoutItsCaution)
{
    const std::map<std::string, std::string> needs = {{"push_pa", "push"},
                                                      {"mass_after_g", "lift"},
                                                      {"mass_g", "lift"},
                                                      {"dip_mm", "ease"},
                                                      {"spirit_ml", "spirit_law"},
                                                      {"trial_dose_ul", "no_flame"},
                                                      {"volumes_e2", "co2_room|bottle_pressure"},
                                                      {"sugar", "bottle_pressure"},
                                                      {"treat_temp_mc", "hot_pressure"},
                                                      {"count_a", "lift"}};
    for (const char* name : {"empty", "finish", "treat", "carbonate", "package"}) {
        for (const Step& step : shipped(name).steps) {
            for (const Part& ask : step.asks) {
                const auto need = needs.find(ask.name);
                if (need == needs.end()) {
                    continue;
                }
                EXPECT_TRUE(std::any_of(step.cautions.begin(), step.cautions.end(),
                                        [&](const std::string& caution) {
                                            return need->second.find(caution) != std::string::npos;
                                        }))
                    << name << " / " << step.name << " asks for " << ask.name;
            }
        }
    }
}

TEST(Finishing, ScalesTheTrialsDoseAndCarriesTheAllergen)
{
    const WorkRoom bench;
    const SubjectId lot = bench.withLot();
    const Filled coconut = {{"addition", word("coconut")},    {"trial_ml", number(100)},
                            {"trial_dose_mg", number(1'200)}, {"added_g", number(2'150)},
                            {"allergen", word("coconut")},    {"contact_days", number(10)},
                            {"first_taste_days", number(2)}};
    const WorkFacts facts = bench.facts(lot, coconut);
    EXPECT_NEAR(numberOf("lot_left", facts).value, 0.180, 1e-12);
    EXPECT_NEAR(numberOf("finish_dose", facts).value, 2.16, 1e-9);  // 180 L, 1.2 g in 100 mL
    EXPECT_EQ(expectedOf("added_g", facts), 2'160);
    EXPECT_DOUBLE_EQ(numberOf("taste_every", facts).value, 2 * factor::day);
    EXPECT_EQ(bench.work("finish", lot, coconut), "");
    const auto history = bench.lotHistory();
    ASSERT_EQ(history.finishes.size(), 1U);
    const cellar::FinishRow& finish = history.finishes.front();
    EXPECT_EQ(finish.substance, "coconut");
    EXPECT_NEAR(inGrams(finish.mass.value()), 2'150, 1e-9);
    EXPECT_EQ(finish.until, bench.device.clock.now() + std::chrono::days(10));
    EXPECT_THAT(history.allergens(), ElementsAre("coconut"));
    EXPECT_EQ(numberOf("allergens", bench.facts(lot)).word, "coconut");
    const auto due = cellar::finishesDue(bench.cellar->database(),
                                         bench.device.clock.now() + std::chrono::days(11), 5);
    EXPECT_EQ(due->size(), 1U);
    EXPECT_EQ(support::problemsOf(*bench.cellar), "");
}

TEST(Finishing, TakesSpiritByVolumeAndStrength)
{
    const WorkRoom bench;
    const SubjectId lot = bench.withLot();
    const Filled rum = {{"addition", word("spirit")},     {"trial_ml", number(100)},
                        {"trial_dose_ul", number(1'000)}, {"spirit_ml", number(1'800)},
                        {"spirit_abv_e2", number(4'000)}, {"allergen", word("none")},
                        {"contact_days", number(0)}};
    EXPECT_NEAR(numberOf("finish_dose", bench.facts(lot, rum)).value, 1.8e-3, 1e-12);
    std::vector<std::string> steps;
    EXPECT_EQ(bench.work("finish", lot, rum, &steps), "");
    EXPECT_THAT(steps, Contains("add_spirit"));
    const auto finish = bench.lotHistory().finishes.at(0);
    EXPECT_NEAR(inLitres(finish.volume.value()), 1.8, 1e-9);
    EXPECT_DOUBLE_EQ(finish.alcoholByVolume.value(), 0.40);
    EXPECT_EQ(finish.allergen, "");
    EXPECT_FALSE(finish.until.has_value());
}

TEST(Treating, RecordsFilterAndHeat)
{
    const WorkRoom bench;
    const SubjectId lot = bench.withLot();
    EXPECT_EQ(bench.work("treat", lot, {}), "");
    EXPECT_EQ(bench.work("treat", lot,
                         {{"treatment", word("pasteurised")},
                          {"treat_temp_mc", number(62'000)},
                          {"held_s", number(900)}}),
              "");
    const auto treatments = bench.lotHistory().treatments;
    ASSERT_EQ(treatments.size(), 2U);
    EXPECT_EQ(treatments[0].method, "filtered");
    EXPECT_FALSE(treatments[0].temperature.has_value());
    EXPECT_EQ(treatments[1].method, "pasteurised");
    EXPECT_DOUBLE_EQ(inCelsius(treatments[1].temperature.value()), 62);
    EXPECT_EQ(treatments[1].held, std::chrono::minutes(15));
}

TEST(Carbonating, ForcesByTheKegChart)
{
    const WorkRoom bench;
    const SubjectId lot = bench.withLot();
    const Filled forced = {{"carbonating", word("forced")},
                           {"volumes_e2", number(250)},
                           {"carb_temp_mc", number(4'000)},
                           {"gas_way", word("shaken")}};
    const Pressure gauge = gas::kegPressure(2.5, celsius(4)).value();
    EXPECT_DOUBLE_EQ(numberOf("keg_pressure", bench.facts(lot, forced)).value, gauge.si());
    EXPECT_NEAR(numberOf("carbonating_time", bench.facts(lot, forced)).value,
                15 * 60 * std::log(20.0), 1e-6);
    EXPECT_EQ(bench.work("carbonate", lot, forced), "");
    const auto done = bench.lotHistory().carbonations.at(0);
    EXPECT_EQ(done.method, "forced");
    EXPECT_DOUBLE_EQ(done.volumes, 2.5);
    EXPECT_NEAR(done.gauge->si(), gauge.si(), 0.5);
    EXPECT_FALSE(done.sugar.has_value());
}

TEST(Carbonating, PrimesWithARangeAndWarnsWhereItReachesThree)
{
    const WorkRoom bench;
    const SubjectId lot = bench.withLot();
    Filled priming = {{"carbonating", word("priming")},
                      {"warmest_mc", number(20'000)},
                      {"volumes_e2", number(240)},
                      {"sugar", word("glucose")}};
    const double residual = gas::residualVolumes(celsius(20)).value();
    const auto finals = [&] { return numberOf("final_co2", bench.facts(lot, priming)); };
    EXPECT_NEAR(finals().value, 2.4, 1e-12);
    EXPECT_NEAR(finals().low.value(), 2.4 - 0.3 * residual, 1e-12);
    EXPECT_NEAR(finals().high.value(), 2.4 + 0.3 * residual, 1e-12);
    EXPECT_FALSE(finals().caution);
    const Mass sugar =
        gas::primingSugar(gas::Sugar::Glucose, litres(180), 0.6 * residual, 2.4).value();
    EXPECT_EQ(bench.work("carbonate", lot, priming), "");
    const auto done = bench.lotHistory().carbonations.at(0);
    EXPECT_EQ(done.method, "priming");
    EXPECT_NEAR(inGrams(done.sugar.value()), inGrams(sugar), 1e-3);
    priming["volumes_e2"] = number(280);  // 2.8 + 0.26
    EXPECT_TRUE(finals().caution);
    EXPECT_TRUE(numberOf("pressure_in_bottles", bench.facts(lot, priming)).caution);
    priming["co2_now_e2"] = number(40);  // measured: the doubt is gone
    EXPECT_DOUBLE_EQ(finals().high.value(), 2.8);
    EXPECT_FALSE(finals().caution);
}

TEST(Packaging, CountsLabelsAndNamesTheLot)
{
    const WorkRoom bench;
    const SubjectId lot = bench.withLot();
    const Filled plan = {{"package_a", word("keg 20 L")},
                         {"most_a", number(4)},
                         {"package_b", word("bottle 330 mL")},
                         {"loss_e2", number(300)},
                         {"law", word("US")},
                         {"abv_e2", number(1'104)},
                         {"label_abv_e2", number(1'100)},
                         {"best_before_months", number(18)}};
    const WorkFacts facts = bench.facts(lot, plan);
    // By hand: 174.6 L; 4 kegs, 94.6 L in 286 bottles.
    EXPECT_EQ(expectedOf("count_a", facts), 4);
    EXPECT_EQ(expectedOf("count_b", facts), 286);
    EXPECT_EQ(expectedOf("count_c", facts), 0);
    EXPECT_EQ(expectedOf("label_abv_e2", facts), 1'100);
    EXPECT_DOUBLE_EQ(numberOf("label_tolerance", facts).value, 0.003);
    EXPECT_EQ(numberOf("label_verdict", facts).word, "within the tolerance");
    Filled counted = plan;
    counted["count_a"] = number(4);
    counted["count_b"] = number(280);
    counted["lot_code"] = word(facts.lot->freeCode);
    EXPECT_EQ(bench.work("package", lot, counted), "");
    const auto packages = bench.lotHistory().packages;
    ASSERT_EQ(packages.size(), 1U);
    EXPECT_THAT(packages[0].packages,
                ElementsAre(cellar::PackageCount{"keg 20 L", litres(20), 4},
                            cellar::PackageCount{"bottle 330 mL", millilitres(330), 280}));
    EXPECT_NEAR(inLitres(packages[0].lost.value()), 5.4, 1e-9);  // as foreseen; the rest is there
    EXPECT_DOUBLE_EQ(packages[0].labelStrength.value(), 0.11);
    EXPECT_EQ(packages[0].law, "US");
    EXPECT_GT(packages[0].bestBefore.value(), bench.device.clock.now() + std::chrono::days(540));
    EXPECT_LT(packages[0].bestBefore.value(), bench.device.clock.now() + std::chrono::days(551));
    // The next code is another; the same is refused.
    EXPECT_EQ(bench.facts(lot).lot->freeCode, lotCodeOf(bench.device.clock.now(), 'B'));
    EXPECT_EQ(bench.work("package", lot, counted), "code: lot_code: " + counted["lot_code"].text);
    EXPECT_EQ(support::problemsOf(*bench.cellar), "");
}

TEST(Packaging, DoesNotBeginWhileTheLotIsHeld)
{
    const WorkRoom bench;
    const SubjectId lot = bench.withLot();
    const EntryId hold = cellar::recordHold(*bench.cellar, lot, "waits for the laboratory").value();
    const Filled values = {{"package_a", word("keg 20 L")}, {"lot_code", word("X1")}};
    EXPECT_EQ(bench.work("package", lot, values), "hold: hold_state: waits for the laboratory");
    // Held while it is worked on: neither is it filled.
    EXPECT_EQ(refusalOf(*findStep(shipped("package"), "fill"), bench.facts(lot)), "hold_state");
    ASSERT_TRUE(cellar::recordClear(*bench.cellar, hold, "sound").has_value());
    EXPECT_EQ(bench.work("package", lot, values), "");
}

TEST(LotCode, IsYearDayAndLetter)
{
    const auto at = [](int year, unsigned month, unsigned day) {
        return Instant(std::chrono::sys_days(std::chrono::year(year) / static_cast<int>(month) /
                                             static_cast<int>(day))
                           .time_since_epoch());
    };
    EXPECT_EQ(lotCodeOf(at(2026, 1, 1), 'A'), "26001A");
    EXPECT_EQ(lotCodeOf(at(2026, 11, 26), 'C'), "26330C");
    EXPECT_EQ(lotCodeOf(at(2028, 12, 31), 'B'), "28366B");
}

TEST(Filling, FromALotNamesWhereTheBeerIsFrom)
{
    const WorkRoom bench;
    const SubjectId lot = bench.withLot();
    EXPECT_EQ(bench.work("fill", bench.small.barrel,
                         {{"from_lot", word("Nowhere")}, {"volume_ml", number(100'000)}}),
              "volume: from_lot: Nowhere");
    EXPECT_EQ(bench.work("fill", bench.small.barrel,
                         {{"from_lot", word("Harbour")}, {"volume_ml", number(100'000)}}),
              "");
    const auto ways = bench.lotHistory().waysOut;
    ASSERT_EQ(ways.size(), 1U);
    EXPECT_EQ(ways[0].kind, "fill");
    EXPECT_NEAR(inLitres(ways[0].volume), 100, 1e-9);
    EXPECT_EQ(bench.work("top_up", bench.small.barrel,
                         {{"from_lot", word("Harbour")}, {"top_up_ml", number(2'000)}}),
              "");
    EXPECT_EQ(bench.lotHistory().waysOut.size(), 2U);
    EXPECT_NEAR(inLitres(cellar::lotById(bench.cellar->database(), lot).value()->left()), 78, 1e-9);
}

}  // namespace spile::plan
