// The desk command as a person or a script uses it: its forms, its exits, what it leaves alone.
#include "core/base/file_system.hpp"
#include "core/base/sha256.hpp"
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/registering.hpp"
#include "core/cellar/acts/sheet.hpp"
#include "core/cellar/acts/tasting.hpp"
#include "core/cellar/join_code.hpp"
#include "core/cellar/queries.hpp"
#include "core/scan/barrel_code.hpp"
#include "tests/support/command.hpp"
#include "tests/support/test_device.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <set>

namespace spile {

namespace {

using nlohmann::json;
using support::Ended;

struct DeskCommand : testing::Test {
    support::TempFolder folder;
    Path cellar = folder.path() / "desk.cellar";

    [[nodiscard]] Ended desk(std::vector<std::string> arguments) const
    {
        arguments.insert(arguments.begin(), {"--cellar", cellar.string()});
        return support::run(SPILE_DESK, arguments);
    }
    [[nodiscard]] Ended deskIn(const std::string& name, std::vector<std::string> arguments) const
    {
        arguments.insert(arguments.begin(), {"--cellar", (folder.path() / name).string()});
        return support::run(SPILE_DESK, arguments);
    }
    [[nodiscard]] std::string file(const std::string& name) const
    {
        return (folder.path() / name).string();
    }
};

// A phone's cellar that the desk's day file was taken into, with a barrel that it registered.
struct DeskAndPhone : DeskCommand {
    support::TestDevice phone{31};
    std::string code;

    void SetUp() override
    {
        ASSERT_EQ(desk({"new", "--name", "Test", "--mark", "7K2Q"}).exit, 0);
        ASSERT_EQ(desk({"hand-out", file("start.spile")}).exit, 0);
        const auto own = phone.join(file("start.spile"));
        const auto person = cellar::registerPerson(*own, "Ada");
        const auto batch = cellar::registerBatch(*own, {"Night Ferry"});
        const auto barrel = cellar::registerBarrel(
            *own, {.mark = "Rum 3", .spirit = "rum", .size = litres(190), .fillsBefore = 0});
        code = barrel->code;
        ASSERT_TRUE(cellar::recordFill(
            *own, {.barrel = barrel->barrel, .batch = *batch, .volume = litres(185)}));
        ASSERT_TRUE(cellar::recordDraw(
            *own, {.barrel = barrel->barrel, .volume = millilitres(200), .method = "sample hole"}));
        const auto sheet = cellar::openSheet(*own, barrel->barrel, *person);
        ASSERT_TRUE(cellar::tapScore(*own, *sheet, "vanilla", 7));
        ASSERT_TRUE(cellar::closeSheet(*own, *sheet));
        ASSERT_TRUE(cellar::handOut(*own, file("phone.spile"), {}));
        const std::string joinCode = cellar::joinCode(own->ledger().device());
        ASSERT_EQ(desk({"admit", joinCode, "--name", "Ada's phone"}).exit, 0);
    }
};

std::string hashOf(const Path& path)
{
    std::ifstream in(path, std::ios::binary);
    const std::string bytes((std::istreambuf_iterator<char>(in)), {});
    return sha256(asBytes(bytes)).hex();
}

// What "unchanged" means: ledger.db, its log and the photos.
std::string imprint(const Path& cellar)
{
    std::string all = hashOf(cellar / "ledger.db") + hashOf(cellar / "ledger.db-wal");
    std::set<std::string> photos;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(cellar / "photos")) {
        photos.insert(entry.path().string() +
                      (entry.is_regular_file() ? hashOf(entry.path()) : ""));
    }
    for (const std::string& photo : photos) {
        all += photo;
    }
    return all;
}

}  // namespace

TEST_F(DeskCommand, ExplainsEachCommand)
{
    for (const char* command : {"new", "join", "admit", "demo", "take-in", "hand-out", "check",
                                "show", "due", "outlook", "labels", "read"}) {
        const Ended ended = support::run(SPILE_DESK, {command, "--help"});
        EXPECT_EQ(ended.exit, 0) << command;
        EXPECT_NE(ended.out.find("Usage"), std::string::npos) << command;
    }
}

TEST_F(DeskCommand, EndsWithTwoIfUsedWrongly)
{
    EXPECT_EQ(desk({}).exit, 2);
    EXPECT_EQ(desk({"brew"}).exit, 2);
    EXPECT_EQ(desk({"take-in"}).exit, 2);
    EXPECT_EQ(desk({"take-in", file("nowhere.spile")}).exit, 2);
    EXPECT_EQ(desk({"new", "--mark", "IOLU"}).exit, 2);
    ASSERT_EQ(desk({"new"}).exit, 0);
    EXPECT_EQ(desk({"show", "bottles"}).exit, 2);
    EXPECT_EQ(desk({"due", "--on", "tomorrow"}).exit, 2);
    EXPECT_EQ(desk({"admit", "7K2Q-7K2Q", "--name", "Kim"}).exit, 2);
    EXPECT_EQ(desk({"new"}).exit, 2) << "over an existing cellar";
}

TEST_F(DeskCommand, EndsWithOneIfTheRecordsDoNotHaveIt)
{
    EXPECT_EQ(desk({"check"}).exit, 1) << "no cellar";
    ASSERT_EQ(desk({"new"}).exit, 0);
    const Ended ended = desk({"show", "barrel", "7K2QFM"});
    EXPECT_EQ(ended.exit, 1);
    EXPECT_EQ(ended.out, "");
    EXPECT_NE(ended.err.find("7K2QFM"), std::string::npos);
    EXPECT_EQ(desk({"hand-out", file("x.spile"), "--for", "nobody"}).exit, 1);
}

TEST_F(DeskCommand, MakesACellarThatItsFolderShows)
{
    const Ended made = desk({"new", "--name", "Test", "--mark", "7K2Q", "--json"});
    ASSERT_EQ(made.exit, 0);
    EXPECT_EQ(made.json().at("mark"), "7K2Q");
    for (const char* part : {"ledger.db", "photos", "outbox", "device.key", "lock"}) {
        EXPECT_TRUE(std::filesystem::exists(cellar / part)) << part;
    }
    const auto mode = std::filesystem::status(cellar / "device.key").permissions();
    EXPECT_EQ(mode & std::filesystem::perms::mask,
              std::filesystem::perms::owner_read | std::filesystem::perms::owner_write);
}

TEST_F(DeskCommand, TakesItsOptionsBeforeAndAfterTheCommand)
{
    ASSERT_EQ(desk({"new"}).exit, 0);
    const Ended before = desk({"--json", "check"});
    const Ended after = desk({"check", "--json"});
    EXPECT_EQ(before.json(), after.json());
    for (const char* key : {"entries", "devices", "barrels", "photos", "state_root", "problems"}) {
        EXPECT_TRUE(before.json().contains(key)) << key;
    }
    EXPECT_EQ(before.json().at("entries"), 2);
    EXPECT_EQ(before.json().at("devices"), 1);
    EXPECT_EQ(before.json().at("problems"), json::array());
}

TEST_F(DeskCommand, RefusesAFileThatIsNoDayFileAndChangesNothing)
{
    ASSERT_EQ(desk({"new"}).exit, 0);
    std::ofstream(file("bad.spile")) << "not a day file";
    const std::string before = imprint(cellar);
    const Ended ended = desk({"take-in", file("bad.spile")});
    EXPECT_EQ(ended.exit, 3);
    EXPECT_NE(ended.err.find("damaged"), std::string::npos);
    EXPECT_EQ(imprint(cellar), before);
}

TEST_F(DeskCommand, RefusesAnotherCellarsDayFileAndChangesNothing)
{
    ASSERT_EQ(desk({"new"}).exit, 0);
    ASSERT_EQ(deskIn("other.cellar", {"new"}).exit, 0);
    ASSERT_EQ(deskIn("other.cellar", {"hand-out", file("other.spile")}).exit, 0);
    const std::string before = imprint(cellar);
    const Ended ended = desk({"take-in", file("other.spile")});
    EXPECT_EQ(ended.exit, 3);
    EXPECT_NE(ended.err.find("another cellar"), std::string::npos);
    EXPECT_EQ(imprint(cellar), before);
}

TEST_F(DeskCommand, DoesNotWriteOverAnotherFile)
{
    ASSERT_EQ(desk({"new"}).exit, 0);
    std::ofstream(file("letter.txt")) << "dear brewer";
    EXPECT_EQ(desk({"hand-out", file("letter.txt")}).exit, 2);
    std::ifstream in(file("letter.txt"));
    std::string text;
    std::getline(in, text);
    EXPECT_EQ(text, "dear brewer");
    ASSERT_EQ(desk({"hand-out", file("day.spile")}).exit, 0);
    EXPECT_EQ(desk({"hand-out", file("day.spile")}).exit, 0) << "its own day file is replaced";
}

TEST_F(DeskCommand, JoinsAndIsAdmittedAcrossTwoDesks)
{
    ASSERT_EQ(desk({"new"}).exit, 0);
    ASSERT_EQ(desk({"hand-out", file("start.spile")}).exit, 0);
    const Ended joined = deskIn("second.cellar", {"join", file("start.spile"), "--json"});
    ASSERT_EQ(joined.exit, 0) << joined.err;
    const std::string code = joined.json().at("join_code");
    std::string slip = code;
    slip[0] = slip[0] == '0' ? '1' : '0';
    EXPECT_EQ(desk({"admit", slip, "--name", "Kim"}).exit, 2);
    EXPECT_EQ(desk({"admit", code, "--name", "Second", "--desk"}).exit, 0);
    EXPECT_EQ(desk({"admit", code, "--name", "Kim"}).exit, 2) << "twice";
    EXPECT_EQ(desk({"check", "--json"}).json().at("devices"), 2);
    ASSERT_EQ(desk({"hand-out", file("back.spile")}).exit, 0);
    ASSERT_EQ(deskIn("second.cellar", {"take-in", file("back.spile")}).exit, 0);
    EXPECT_EQ(deskIn("second.cellar", {"check", "--json"}).json().at("state_root"),
              desk({"check", "--json"}).json().at("state_root"));
}

TEST_F(DeskAndPhone, ShowsTheBarrelInTheFormsThatScriptsRead)
{
    ASSERT_EQ(desk({"take-in", file("phone.spile")}).exit, 0);
    const json list = desk({"show", "barrels", "--json"}).json();
    ASSERT_EQ(list.size(), 1U);
    for (const char* key : {"code", "mark", "spirit", "fill_number", "beer", "place", "volume_l",
                            "filled_on", "next_step"}) {
        EXPECT_TRUE(list[0].contains(key)) << key;
    }
    EXPECT_EQ(list[0].at("code"), code);
    EXPECT_EQ(list[0].at("volume_l"), 184.8);
    EXPECT_EQ(list[0].at("filled_on"), "2025-09-01");
    const json barrel = desk({"show", "barrel", scan::shown(code), "--json"}).json();
    EXPECT_EQ(barrel.at("fills").size(), 1U);
    EXPECT_EQ(barrel.at("draws")[0].at("volume_l"), 0.2);
    EXPECT_EQ(barrel.at("tastings")[0].at("taster"), "Ada");
    EXPECT_EQ(barrel.at("tastings")[0].at("device"), "Ada's phone");
    EXPECT_EQ(barrel.at("tastings")[0].at("scores").at("vanilla"), 7);
    EXPECT_EQ(barrel.at("photos"), json::array());
    EXPECT_EQ(barrel.at("gauges"), json::array());
}

TEST_F(DeskAndPhone, AddsNothingTheSecondTime)
{
    const json first = desk({"take-in", file("phone.spile"), "--json"}).json();
    EXPECT_EQ(first[0].at("added"), 6);
    const json before = desk({"check", "--json"}).json();
    const json second = desk({"take-in", file("phone.spile"), "--json"}).json();
    EXPECT_EQ(second[0].at("added"), 0);
    EXPECT_EQ(desk({"check", "--json"}).json(), before);
}

TEST_F(DeskAndPhone, OffersTheBarrelThatAMistypedCodeMayHaveMeant)
{
    ASSERT_EQ(desk({"take-in", file("phone.spile")}).exit, 0);
    std::string slip = code;
    slip[2] = slip[2] == 'X' ? 'Y' : 'X';
    const Ended ended = desk({"show", "barrel", slip});
    EXPECT_EQ(ended.exit, 1);
    EXPECT_NE(ended.err.find(scan::shown(code)), std::string::npos) << ended.err;
    EXPECT_NE(ended.err.find("Rum 3"), std::string::npos);
}

TEST_F(DeskAndPhone, MarksWhatIsDatedInTheFuture)
{
    {
        const auto own = phone.reopen();
        const auto rows = cellar::barrelsWithCode(own->database(), code);
        phone.clock.setWall(*fromIso("2199-01-01"));
        ASSERT_TRUE(cellar::recordDraw(
            *own,
            {.barrel = rows->front().barrel, .volume = millilitres(50), .method = "sample hole"}));
        ASSERT_TRUE(cellar::handOut(*own, file("later.spile"), {}));
    }
    ASSERT_EQ(desk({"take-in", file("later.spile")}).exit, 0);
    const json draws = desk({"show", "barrel", code, "--json"}).json().at("draws");
    EXPECT_FALSE(draws[0].contains("in_future"));
    EXPECT_EQ(draws[1].at("in_future"), true);
    EXPECT_NE(desk({"show", "barrel", code}).out.find("in the future"), std::string::npos);
}

TEST_F(DeskAndPhone, ListsWhatIsDueByADay)
{
    ASSERT_EQ(desk({"take-in", file("phone.spile")}).exit, 0);
    EXPECT_EQ(desk({"due", "--on", "2025-08-31", "--json"}).json(), json::array());
    const json due = desk({"due", "--on", "2025-09-01", "--json"}).json();
    ASSERT_EQ(due.size(), 1U);
    EXPECT_EQ(due[0].at("next_step"), "check for leaks");
    EXPECT_EQ(due[0].at("due_on"), "2025-09-01");
}

TEST_F(DeskAndPhone, ShowsTheOutlookOfAllAndOfOne)
{
    EXPECT_EQ(desk({"outlook", "--json"}).json(), json::array());
    EXPECT_EQ(desk({"outlook", "7K2QFM"}).exit, 1);
    ASSERT_EQ(desk({"take-in", file("phone.spile")}).exit, 0);
    const json all = desk({"outlook", "--json"}).json();
    ASSERT_EQ(all.size(), 1U);
    EXPECT_EQ(all[0].at("code"), code);
    EXPECT_EQ(all[0].at("advice"), "no windows");
    EXPECT_TRUE(all[0].at("best_at").is_null());
    EXPECT_GT(all[0].at("next_tasting").at("at"), "2025-09-01");

    const json one = desk({"outlook", code, "--json"}).json();
    EXPECT_EQ(one.at("beer"), "Night Ferry");
    ASSERT_EQ(one.at("attributes").size(), 1U);
    const json& vanilla = one.at("attributes")[0];
    EXPECT_EQ(vanilla.at("attribute"), "vanilla");
    EXPECT_EQ(vanilla.at("scores")[0].at("score"), 7.0);
    EXPECT_EQ(vanilla.at("scores")[0].at("person"), "Ada");
    for (const json& point : vanilla.at("course")) {
        EXPECT_GE(point.at("low_score"), 1.0);
        EXPECT_LE(point.at("low_score"), point.at("middle_score"));
        EXPECT_LE(point.at("middle_score"), point.at("high_score"));
        EXPECT_LE(point.at("high_score"), 9.0);
    }
    EXPECT_NE(desk({"outlook", code}).out.find("vanilla"), std::string::npos);
    EXPECT_NE(desk({"outlook"}).out.find("Rum 3"), std::string::npos);
}

// Kim and Bo agree, Ada reads two steps higher.
TEST_F(DeskAndPhone, ShowsWhatTheTastersAreLike)
{
    EXPECT_EQ(desk({"show", "tasters"}).out, "Nobody has scored yet.\n");
    {
        const auto own = phone.reopen();
        const auto barrels = cellar::barrelsWithCode(own->database(), code);
        const auto ada = cellar::registerPerson(*own, "Ada of the cellar");
        const auto kim = cellar::registerPerson(*own, "Kim");
        const auto bo = cellar::registerPerson(*own, "Bo");
        for (int day = 0; day < 24; ++day) {
            phone.clock.pass(std::chrono::days(1));
            const int level = 2 + (day * 3) % 5;
            for (const auto& [person, score] :
                 {std::pair(*ada, level + 2 - day % 2), std::pair(*kim, level - day % 2),
                  std::pair(*bo, level - (day / 2) % 2)}) {
                ASSERT_TRUE(cellar::recordTaste(*own, {.barrel = barrels->front().barrel,
                                                       .scores = {{"oak", score}},
                                                       .circumstance = {.person = person}}));
            }
        }
        ASSERT_TRUE(cellar::handOut(*own, file("panel.spile"), {}));
    }
    ASSERT_EQ(desk({"take-in", file("panel.spile")}).exit, 0);

    const json told = desk({"show", "tasters", "--json"}).json();
    const auto named = [](const json& list, const char* key, const std::string& name) {
        const auto found = std::find_if(list.begin(), list.end(),
                                        [&](const json& one) { return one.at(key) == name; });
        return found == list.end() ? json() : *found;
    };
    const json ada = named(told.at("tasters"), "name", "Ada of the cellar");
    EXPECT_EQ(ada.at("scores"), 24);
    EXPECT_EQ(ada.at("beers"), 24);
    const json advice = named(ada.at("advice"), "advice", "reads high");
    EXPECT_EQ(advice.at("attribute"), "oak");
    EXPECT_EQ(advice.at("unit"), "steps");
    EXPECT_EQ(advice.at("limit"), 1.0);
    // Two steps above the others are four thirds above the mean of all three.
    EXPECT_NEAR(advice.at("measured").get<double>(), 1.33, 0.25);
    const json oak = named(ada.at("attributes"), "attribute", "oak");
    EXPECT_EQ(oak.at("bias_steps").at("value"), advice.at("measured"));
    EXPECT_NEAR(oak.at("gain").at("value").get<double>(), 1, 0.3);
    const json alone = named(told.at("tasters"), "name", "Ada");
    EXPECT_EQ(alone.at("advice")[0].at("advice"), "too few");
    EXPECT_EQ(alone.at("advice")[0].at("beers_missing"), 10);

    const json panel = named(told.at("attributes"), "attribute", "oak");
    EXPECT_EQ(panel.at("judgement"), "judged");
    EXPECT_GT(panel.at("agreement").at("of_mean"), panel.at("agreement").at("one"));
    EXPECT_TRUE(panel.at("repeatability_steps").is_null()) << "there were no blind repeats";
    EXPECT_EQ(named(told.at("attributes"), "attribute", "vanilla").at("judgement"), "too few");
    EXPECT_NE(desk({"show", "tasters"}).out.find("reads high"), std::string::npos);
}

}  // namespace spile
