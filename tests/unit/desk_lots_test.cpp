// The desk's commands for lots, traces and reports, as a person or a script uses them.
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/lots.hpp"
#include "core/cellar/acts/packing.hpp"
#include "core/cellar/acts/registering.hpp"
#include "core/cellar/join_code.hpp"
#include "tests/support/command.hpp"
#include "tests/support/test_device.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace spile {

using nlohmann::json;
using support::Ended;
using testing::HasSubstr;
using testing::Not;

namespace {

// A desk that has taken in what a phone recorded: two barrels in one lot, packaged and released.
struct DeskLots : testing::Test {
    support::TempFolder folder;
    support::TestDevice phone{41};

    template <class... Words>
    Ended desk(Words... words)
    {
        return support::run(SPILE_DESK,
                            {"--cellar", (folder.path() / "desk.cellar").string(), words...});
    }
    std::string file(const std::string& name) { return (folder.path() / name).string(); }
    template <class T>
    static T must(const Result<T>& made)
    {
        EXPECT_TRUE(made) << (made ? "" : made.error().subject + " " + made.error().value);
        return made.value_or(T());
    }

    void SetUp() override
    {
        ASSERT_EQ(desk("new", "--name", "Test", "--mark", "7K2Q").exit, 0);
        ASSERT_EQ(desk("hand-out", file("start.spile")).exit, 0);
        const auto own = phone.join(file("start.spile"));
        const SubjectId ada = must(cellar::registerPerson(*own, "Ada"));
        const SubjectId beer = must(cellar::registerBatch(*own, {"Night Ferry"}));
        const SubjectId tank = must(cellar::registerLot(*own, {.name = "Tank 2"}));
        for (const char* mark : {"Rum 1", "Rum 2"}) {
            fillAndMove(*own, mark, beer, tank, ada);
        }
        must(cellar::recordFinish(*own, {.lot = tank,
                                         .substance = "coconut",
                                         .mass = kilograms(2),
                                         .allergen = "coconut",
                                         .circumstance = {{}, ada, {}}}));
        const EntryId packed = must(cellar::recordPackage(
            *own,
            {.lot = tank,
             .lotCode = "26-1A",
             .packages = {{"bottle 500 mL", millilitres(500), 200}, {"keg 20 L", litres(20), 3}},
             .lost = litres(4),
             .alcoholByVolume = 0.1,
             .circumstance = {{}, ada, {}}}));
        must(cellar::recordRelease(
            *own, {packed, "The Lock", {{"bottle 500 mL", millilitres(500), 40}}, {{}, ada, {}}}));
        must(cellar::recordCost(*own, {.subject = beer, .cost = 800, .what = "malt"}));
        must(cellar::recordCost(*own, {.subject = tank, .cost = 60, .what = "bottles"}));
        ASSERT_TRUE(cellar::handOut(*own, file("phone.spile"), {}));
        ASSERT_EQ(desk("admit", cellar::joinCode(own->ledger().device()), "--name", "Kim").exit, 0);
        ASSERT_EQ(desk("take-in", file("phone.spile")).exit, 0);
    }
    // 200 L in, 2 L never seen again, 150 L moved and the rest poured away as the heel.
    void fillAndMove(cellar::Cellar& own, const char* mark, const SubjectId& beer,
                     const SubjectId& tank, const SubjectId& person)
    {
        const auto barrel = cellar::registerBarrel(
            own, {.mark = mark, .spirit = "rum", .size = litres(200), .fillsBefore = 1});
        must(cellar::recordFill(own, {.barrel = barrel->barrel,
                                      .batch = beer,
                                      .volume = litres(200),
                                      .circumstance = {{}, person, {}}}));
        phone.clock.pass(std::chrono::hours(24));
        must(cellar::recordTransfer(own, {.lot = tank,
                                          .from = barrel->barrel,
                                          .volume = litres(150),
                                          .alcoholByVolume = 0.1,
                                          .specificGravity = 1.02,
                                          .circumstance = {{}, person, {}}}));
        must(cellar::recordEmpty(own, {.barrel = barrel->barrel, .heel = litres(48)}));
        must(cellar::recordCost(
            own, {.subject = barrel->barrel, .cost = 100, .what = "barrel", .fillsExpected = 2}));
    }
    json report(const std::string& name)
    {
        const Ended ended = desk("report", name, "--from", "2025-09-01", "--to", "2025-12-31",
                                 "--by", "quarter", "--json");
        EXPECT_EQ(ended.exit, 0) << ended.err;
        return ended.json();
    }
};

}  // namespace

TEST_F(DeskLots, ShowsAllAndOne)
{
    const Ended all = desk("show", "lots", "--json");
    ASSERT_EQ(all.exit, 0) << all.err;
    ASSERT_EQ(all.json().size(), 1U);
    EXPECT_EQ(all.json()[0].at("name"), "Tank 2");
    EXPECT_EQ(all.json()[0].at("in_l"), 300);
    EXPECT_EQ(all.json()[0].at("left_l"), 136);
    EXPECT_THAT(desk("show", "lots").out, HasSubstr("136.0 L"));

    const Ended one = desk("show", "lot", "tank 2", "--json");
    ASSERT_EQ(one.exit, 0) << one.err;
    EXPECT_EQ(one.json().at("transfers").size(), 2U);
    EXPECT_EQ(one.json().at("transfers")[0].at("from"), "Rum 1");
    EXPECT_EQ(one.json().at("allergens"), json::array({"coconut"}));
    EXPECT_EQ(one.json().at("packages")[0].at("left")[0].at("count"), 160);
    EXPECT_NEAR(one.json().at("mixed_abv"), 10, 0.01);
    const std::string text = desk("show", "lot", all.json()[0].at("id").get<std::string>()).out;
    for (const char* said :
         {"150.0 L from Rum 2, Night Ferry", "ALLERGEN coconut",
          "26-1A: 200 x bottle 500 mL, 3 x keg 20 L", "40 x bottle 500 mL to The Lock"}) {
        EXPECT_THAT(text, HasSubstr(said));
    }
    EXPECT_EQ(desk("show", "lot", "Tank 9").exit, 1);
    EXPECT_EQ(desk("show", "lot").exit, 2);
}

TEST_F(DeskLots, HoldsAndClears)
{
    EXPECT_EQ(desk("clear", "Tank 2", "--result", "sound").exit, 1);  // nothing is held
    ASSERT_EQ(desk("hold", "Tank 2", "--reason", "laboratory").exit, 0);
    EXPECT_EQ(desk("show", "lots", "--json").json()[0].at("held"), true);
    ASSERT_EQ(desk("hold", "Tank 2", "--reason", "label").exit, 0);
    // One result says nothing of the other hold.
    EXPECT_EQ(desk("clear", "Tank 2", "--result", "sound").exit, 2);
    EXPECT_EQ(desk("clear", "Tank 2", "--result", "sound", "--reason", "no such").exit, 1);
    EXPECT_EQ(desk("clear", "Tank 2", "--result", "sound", "--reason", "laboratory").exit, 0);
    EXPECT_EQ(desk("show", "lots", "--json").json()[0].at("held"), true);
    EXPECT_EQ(desk("clear", "Tank 2", "--result", "agreed").exit, 0);
    EXPECT_EQ(desk("show", "lots", "--json").json()[0].at("held"), false);
    EXPECT_THAT(desk("show", "lot", "Tank 2").out, HasSubstr("laboratory; result"));
    EXPECT_EQ(desk("hold", "Tank 9", "--reason", "x").exit, 1);
    EXPECT_EQ(desk("hold", "Tank 2").exit, 2);
}

TEST_F(DeskLots, TracesPackagesUp)
{
    const Ended up = desk("trace", "26-1a", "--json");
    ASSERT_EQ(up.exit, 0) << up.err;
    const json answer = up.json();
    EXPECT_EQ(answer.at("lot"), "Tank 2");
    EXPECT_EQ(answer.at("volume_l"), 160);
    ASSERT_EQ(answer.at("barrels").size(), 2U);
    for (const json& barrel : answer.at("barrels")) {
        EXPECT_NEAR(barrel.at("share"), 0.5, 1e-9);
        EXPECT_EQ(barrel.at("volume_l"), 80);
        EXPECT_EQ(barrel.at("fill_number"), 2);
    }
    EXPECT_EQ(answer.at("additions")[0].at("allergen"), "coconut");
    // Who did several things stands there once.
    ASSERT_EQ(answer.at("people").size(), 1U);
    EXPECT_THAT(answer.at("people")[0].at("did"), testing::Contains("package"));
    EXPECT_THAT(answer.at("people")[0].at("did"), testing::Contains("transfer"));
    const std::string text = desk("trace", "26-1A").out;
    EXPECT_THAT(text, HasSubstr("50.0 %  80.0 L  Rum 1"));
    EXPECT_EQ(desk("trace", "26-9Z").exit, 1);
    EXPECT_EQ(desk("trace").exit, 2);
}

TEST_F(DeskLots, TracesABarrelDownAndWritesTheRecallList)
{
    const Ended down = desk("trace", "Rum 1", "--json");  // a barrel has no way up
    ASSERT_EQ(down.exit, 0) << down.err;
    EXPECT_EQ(down.json().at("packages")[0].at("lot_code"), "26-1A");
    EXPECT_EQ(down.json().at("lots")[0].at("lot"), "Tank 2");
    for (const char* what : {"26-1A", "Tank 2", "Rum 2", "Night Ferry", "coconut"}) {
        const Ended recall = desk("trace", what, "--recall");
        ASSERT_EQ(recall.exit, 0) << recall.err;
        EXPECT_THAT(recall.out, HasSubstr("26-1A of Tank 2"));
        EXPECT_THAT(recall.out, HasSubstr("40 x bottle 500 mL"));
        EXPECT_THAT(recall.out, HasSubstr("to The Lock"));
        EXPECT_THAT(recall.out, HasSubstr("in the house: 160 x bottle 500 mL, 3 x keg 20 L"));
    }
    EXPECT_THAT(desk("trace", "26-1A").out, Not(HasSubstr("The Lock")));
}

TEST_F(DeskLots, SumsUpForADutyReturn)
{
    const json duty = report("duty");
    ASSERT_EQ(duty.size(), 2U);
    EXPECT_EQ(duty[0].at("from"), "2025-07-01");
    EXPECT_EQ(duty[0].at("to"), "2025-09-30");
    const json& packaged = duty[0].at("packaged");
    EXPECT_EQ(packaged.at("volume_l"), 160);
    EXPECT_NEAR(packaged.at("volume_hl"), 1.6, 1e-9);
    EXPECT_NEAR(packaged.at("volume_us_bbl"), 160 / 117.347765304, 1e-6);
    EXPECT_NEAR(packaged.at("alcohol_l"), 16, 1e-6);
    EXPECT_EQ(duty[0].at("released").at("volume_l"), 20);
    EXPECT_EQ(duty[1].at("packaged").at("volume_l"), 0);
}

TEST_F(DeskLots, TellsLossesAndCosts)
{
    const json losses = report("losses");
    ASSERT_EQ(losses.at("barrels").size(), 2U);
    EXPECT_EQ(losses.at("barrels")[0].at("lost_l"), 2);
    EXPECT_EQ(losses.at("periods")[0].at("evaporated_l"), 4);
    EXPECT_EQ(losses.at("periods")[0].at("lost_packing_l"), 4);

    const json costs = report("costs");
    ASSERT_EQ(costs.size(), 1U);
    // 800 for 400 L of beer, 50 of each barrel, on 150 L out of each.
    EXPECT_NEAR(costs[0].at("barrels")[0].at("per_litre"), (400.0 + 50.0) / 150, 1e-9);
    EXPECT_EQ(costs[0].at("own"), 60);
    EXPECT_EQ(costs[0].at("complete"), true);
    EXPECT_EQ(report("lots").size(), 1U);
}

TEST_F(DeskLots, RefusesReportsThatAreNone)
{
    EXPECT_EQ(desk("report", "weather").exit, 2);
    EXPECT_EQ(desk("report", "duty", "--from", "yesterday").exit, 2);
    EXPECT_EQ(desk("report", "duty", "--by", "week").exit, 2);
    EXPECT_EQ(desk("report", "duty", "--from", "2025-12-01", "--to", "2025-11-01").exit, 2);
    for (const char* command : {"hold", "clear", "trace", "report"}) {
        EXPECT_THAT(desk(command, "--help").out, HasSubstr("Usage"));
    }
}

}  // namespace spile
