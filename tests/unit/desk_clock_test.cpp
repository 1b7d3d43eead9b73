// A clock that was wrong, as a person deals with it at the desk.
#include "core/cellar/acts/lots.hpp"
#include "core/cellar/acts/registering.hpp"
#include "platform/system/file_key_store.hpp"
#include "tests/support/command.hpp"
#include "tests/support/test_device.hpp"

#include <algorithm>
#include <array>
#include <chrono>
#include <ctime>
#include <gmock/gmock.h>

namespace spile {

using nlohmann::json;
using support::Ended;
using testing::HasSubstr;
using testing::Not;

namespace {

class DeskClock : public testing::Test {
protected:
    support::TempFolder folder;
    Instant now = std::chrono::floor<Milliseconds>(std::chrono::system_clock::now());

    // A house with two desks; the second one has recorded something.
    void SetUp() override
    {
        ASSERT_EQ(desk({"new", "--name", "House"}).exit, 0);
        ASSERT_EQ(desk({"hand-out", in("start.spile")}).exit, 0);
        const auto join = [&](const std::string& cellar) {
            const Ended joined = at(cellar, {"--json", "join", in("start.spile")});
            return json::parse(joined.out).at("join_code").get<std::string>();
        };
        ASSERT_EQ(desk({"admit", join("second"), "--name", "Second", "--desk"}).exit, 0);
        ASSERT_EQ(desk({"hand-out", in("admitted.spile")}).exit, 0);
        ASSERT_EQ(at("second", {"take-in", in("admitted.spile")}).exit, 0);
        ASSERT_EQ(at("second", {"admit", join("third"), "--name", "Third"}).exit, 0);
        ASSERT_EQ(at("second", {"hand-out", in("back.spile")}).exit, 0);
        ASSERT_EQ(desk({"take-in", in("back.spile")}).exit, 0);
    }

    [[nodiscard]] std::string in(const std::string& name) const
    {
        return (folder.path() / name).string();
    }
    [[nodiscard]] Ended at(const std::string& cellar, std::vector<std::string> words) const
    {
        words.insert(words.begin(), {"--cellar", in(cellar)});
        return support::run(SPILE_DESK, words);
    }
    [[nodiscard]] Ended desk(std::vector<std::string> words) const
    {
        words.insert(words.begin(), "--json");
        return at("house", std::move(words));
    }
    [[nodiscard]] json clockOf(const std::string& device) const
    {
        const json all = json::parse(desk({"clock"}).out).at("clocks");
        for (const json& one : all) {
            if (one.at("device") == device) {
                return one;
            }
        }
        ADD_FAILURE() << device;
        return {};
    }
    // What the desk recorded while its clock showed `time`.
    void registerLotAt(Instant time) const
    {
        SimulatedClock clock(time);
        SeededRandom random(5);
        system::DiskFileSystem files;
        Uuid7Source ids(clock, random);
        system::FileKeyStore keys(files, in("house"));
        const auto cellar = cellar::Cellar::open(in("house"), {clock, files, random, ids, keys});
        ASSERT_TRUE(cellar);
        ASSERT_TRUE(cellar::registerLot(**cellar, {.name = "Tank 2"}));
    }
    // In this machine's zone, as it is typed.
    static std::string typed(Instant time)
    {
        const std::time_t seconds =
            std::chrono::duration_cast<std::chrono::seconds>(time.time_since_epoch()).count();
        std::tm local{};
        localtime_r(&seconds, &local);
        std::array<char, 32> text{};
        const auto length = std::strftime(text.data(), text.size(), "%Y-%m-%d %H:%M", &local);
        return {text.data(), length};
    }
};

}  // namespace

TEST_F(DeskClock, OneThatShowsAnotherTimeIsSetRightAndBack)
{
    const json before = clockOf("Second");
    EXPECT_TRUE(before.at("off_s").is_null());
    const Ended said = desk({"clock", "Second", "--shows", typed(now + std::chrono::days(10))});
    ASSERT_EQ(said.exit, 0) << said.err;
    const json after = clockOf("Second");
    EXPECT_NEAR(after.at("off_s").get<double>(), 10 * 86'400.0, 120);
    EXPECT_EQ(after.at("newest"), before.at("newest"));
    EXPECT_NE(after.at("truly"), before.at("newest"));
    EXPECT_THAT(at("house", {"clock"}).out, HasSubstr(" ahead"));
    EXPECT_EQ(desk({"check"}).exit, 0);
    ASSERT_EQ(desk({"clock", "Second", "--take-back"}).exit, 0);
    EXPECT_TRUE(clockOf("Second").at("off_s").is_null());
    EXPECT_EQ(desk({"clock", "Second", "--take-back"}).exit, 1);
}

TEST_F(DeskClock, RefusesWhatIsNoTimeAndSaysWhatWouldBe)
{
    const json before = json::parse(desk({"check"}).out);
    for (const char* text : {"yesterday", "2026-02-30 10:00", "2026-03-14", "2026-03-14 14:02 x",
                             "2026-03-14 25:00"}) {
        const Ended refused = desk({"clock", "--right", text});
        EXPECT_EQ(refused.exit, 2) << text;
        EXPECT_THAT(refused.err + refused.out, HasSubstr(text));
        EXPECT_THAT(refused.err + refused.out, HasSubstr("2026-03-14 14:02"));
    }
    EXPECT_EQ(desk({"clock", "Nobody", "--shows", "2026-03-14 14:02"}).exit, 1);
    EXPECT_EQ(desk({"clock", "Third", "--shows", "2026-03-14 14:02"}).exit, 1);   // has no records
    EXPECT_EQ(desk({"clock", "Second", "--shows", "1999-03-14 14:02"}).exit, 2);  // before them
    EXPECT_EQ(desk({"clock", "--shows", typed(now)}).exit, 2);                    // this one
    EXPECT_EQ(desk({"clock", "Second", "--right", typed(now)}).exit, 2);          // another
    EXPECT_EQ(desk({"clock", "--right", typed(now), "--shows", typed(now)}).exit, 2);
    EXPECT_EQ(json::parse(desk({"check"}).out), before);
}

TEST_F(DeskClock, IsDoubtedByEveryCommandBeforeItRecords)
{
    EXPECT_EQ(desk({"cut-off", "Third"}).err, "");
    registerLotAt(now + std::chrono::days(3));
    const std::string code =
        json::parse(at("fourth", {"--json", "join", in("start.spile")}).out).at("join_code");
    const std::vector<std::vector<std::string>> recording = {
        {"cut-off", "Second", "--after", "0"},
        {"adopt", "Second", "--all"},
        {"reinstate", "Second", "--owner-key", in("house/owner.key")},
        {"admit", code, "--name", "Fourth"},
        {"hold", "Tank 2", "--reason", "pH"},
        {"clear", "Tank 2", "--result", "3.4"},
        {"clock", "Second", "--shows", typed(now)}};
    for (const auto& words : recording) {
        const Ended ended = desk(words);
        ASSERT_EQ(ended.exit, 0) << words.front() << ended.err;
        EXPECT_THAT(ended.err, HasSubstr("stands before its own newest record")) << words.front();
        EXPECT_THAT(ended.err, HasSubstr("`spile-desk clock`"));
        EXPECT_TRUE(json::accept(ended.out)) << words.front();
        EXPECT_THAT(ended.out, Not(HasSubstr("newest record"))) << words.front();
    }
    const std::string held = desk(recording[4]).err;
    EXPECT_EQ(std::count(held.begin(), held.end(), '\n'), 1) << held;
    EXPECT_EQ(desk({"show", "lots"}).err, "");
    EXPECT_EQ(desk({"adopt", "Second"}).err, "");  // only lists
}

TEST_F(DeskClock, OwnClockIsSetRight)
{
    ASSERT_EQ(desk({"clock", "--right", typed(now - std::chrono::days(400))}).exit, 0);
    const json own = clockOf("Desk");
    EXPECT_NEAR(own.at("off_s").get<double>(), 400 * 86'400.0, 120);
    EXPECT_EQ(desk({"check"}).exit, 0);
}

}  // namespace spile
