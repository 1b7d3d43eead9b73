// What the desk answers about devices and files: each answer names the thing, and says what to do.
#include "tests/support/command.hpp"
#include "tests/support/temp_folder.hpp"

#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace spile {

using nlohmann::json;
using support::Ended;
using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

namespace {

class DeskAnswers : public testing::Test {
protected:
    support::TempFolder folder;
    std::string code;  // of the phone

    void SetUp() override
    {
        ASSERT_EQ(desk("house", {"new", "--name", "House", "--device", "Office"}).exit, 0);
        ASSERT_EQ(desk("house", {"hand-out", in("start.spile")}).exit, 0);
        code = desk("phone", {"join", in("start.spile"), "--json"}).json().at("join_code");
    }
    [[nodiscard]] std::string in(const std::string& name) const
    {
        return (folder.path() / name).string();
    }
    [[nodiscard]] Ended desk(const std::string& cellar, std::vector<std::string> words) const
    {
        words.insert(words.begin(), {"--cellar", in(cellar)});
        return support::run(SPILE_DESK, words);
    }
    [[nodiscard]] std::string key() const { return in("house/owner.key"); }
    void expectRefused(const Ended& ended, int exit, const std::string& says) const
    {
        EXPECT_EQ(ended.exit, exit) << ended.err;
        EXPECT_THAT(ended.err, HasSubstr(says));
        EXPECT_EQ(desk("house", {"check"}).exit, 0);
    }
};

}  // namespace

TEST_F(DeskAnswers, DevicesAreShownWithWhatTheyMayDo)
{
    ASSERT_EQ(desk("house", {"admit", code, "--name", "Kim"}).exit, 0);
    const auto shown = [&] { return desk("house", {"show", "devices", "--json"}).json(); };
    const json before = shown();
    ASSERT_EQ(before.size(), 2U) << before;
    EXPECT_EQ(before[0].at("name"), "Kim");
    EXPECT_EQ(before[0].at("standing"), "phone");
    EXPECT_FALSE(before[0].at("own"));
    EXPECT_TRUE(before[0].at("newest").is_null());
    EXPECT_EQ(before[1].at("name"), "Office");
    EXPECT_EQ(before[1].at("standing"), "desk");
    EXPECT_TRUE(before[1].at("own"));
    EXPECT_TRUE(before[1].at("newest").is_string());
    ASSERT_EQ(desk("house", {"cut-off", "Kim"}).exit, 0);
    EXPECT_EQ(shown()[0].at("standing"), "cut off");
    EXPECT_THAT(desk("house", {"show", "devices"}).out,
                AllOf(HasSubstr("Kim     cut off"), HasSubstr("desk, this one")));
}

TEST_F(DeskAnswers, AnAdmissionSaysAsWhatAndWhatComesNext)
{
    const Ended refused = desk("phone", {"admit", code, "--name", "Kim"});
    expectRefused(refused, 2, "admit it at a desk, or give the owner's key after --owner-key");
    const Ended admitted = desk("house", {"admit", code, "--name", "Kim"});
    EXPECT_EQ(admitted.out,
              "Admitted \"Kim\" as a phone. It learns it by the next day file from "
              "here.\n");
}

TEST_F(DeskAnswers, ACutOffDevicesDayFileIsSaidToCountNowhere)
{
    ASSERT_EQ(desk("house", {"admit", code, "--desk", "--name", "Kim"}).exit, 0);
    ASSERT_EQ(desk("house", {"hand-out", in("a.spile")}).exit, 0);
    ASSERT_EQ(desk("phone", {"take-in", in("a.spile")}).exit, 0);
    ASSERT_EQ(desk("house", {"cut-off", "Kim"}).exit, 0);
    const std::string stranger =
        desk("third", {"join", in("start.spile"), "--json"}).json().at("join_code");
    ASSERT_EQ(desk("phone", {"admit", stranger, "--name", "Lea"}).exit, 0);
    ASSERT_EQ(desk("phone", {"hand-out", in("b.spile")}).exit, 0);
    EXPECT_THAT(desk("house", {"take-in", in("b.spile")}).out,
                HasSubstr("cut off or not let in: 1 record of it counts nowhere"));
    ASSERT_EQ(desk("house", {"hand-out", in("c.spile")}).exit, 0);
    EXPECT_THAT(desk("phone", {"take-in", in("c.spile")}).out, HasSubstr("This device is cut off"));

    EXPECT_THAT(desk("house", {"settle"}).out,
                AllOf(HasSubstr("1 record counts nowhere"), HasSubstr("settle KEY shows")));
    EXPECT_THAT(desk("house", {"adopt", "Kim"}).out, Not(HasSubstr("1970")));
    EXPECT_THAT(desk("house", {"adopt", "Kim", "--all"}).out, HasSubstr("1 record counts now."));
    EXPECT_EQ(desk("house", {"adopt", "Kim"}).out, "Nothing of it is set aside.\n");
}

TEST_F(DeskAnswers, ADeviceThatCannotBeActedOnIsNamedAsItWasTyped)
{
    ASSERT_EQ(desk("house", {"admit", code, "--name", "Kim"}).exit, 0);
    expectRefused(desk("house", {"cut-off", "Office"}), 2,
                  "Office (it is this one: do it at another desk)");
    expectRefused(desk("house", {"reinstate", "Kim", "--owner-key", key()}), 2,
                  "Kim (one that is cut off)");
    expectRefused(desk("house", {"clock", "Nobody"}), 1, "Nobody (show devices lists them)");
    EXPECT_EQ(desk("house", {"clock", "Kim"}).out, "Nothing was recorded yet.\n");
}

TEST_F(DeskAnswers, FilesThatAreNotThereOrNoDayFilesAreNamed)
{
    std::ofstream(in("list.txt")) << "what to buy";
    ASSERT_EQ(desk("house", {"backup", in("sealed.spile"), "--sealed"}).exit, 0);
    for (const char* command : {"take-in", "join", "restore"}) {
        const std::string cellar = std::string(command) == "take-in" ? "house" : "new";
        expectRefused(desk(cellar, {command, in("list.txt")}), 3,
                      in("list.txt") + " is damaged; nothing of it was used");
        expectRefused(desk(cellar, {command, in("sealed.spile")}), 2,
                      in("sealed.spile") +
                          " does not fit what is there: it is sealed (give its "
                          "passphrase after --passphrase)");
        EXPECT_FALSE(std::filesystem::exists(in("new")));
    }
    for (const std::vector<std::string>& words :
         {std::vector<std::string>{"hand-out", in("none/a.spile")},
          {"backup", in("none/a.spile")},
          {"owner-sheet", "--pdf", in("none/a.pdf")}}) {
        expectRefused(desk("house", words), 2, "there is no folder " + in("none"));
    }
    expectRefused(desk("house", {"reinstate", "Office", "--owner-key", in("none/owner.key")}), 1,
                  "file is not there: " + in("none/owner.key"));
}

TEST_F(DeskAnswers, APartOfACellarIsNoneToJoin)
{
    ASSERT_EQ(desk("house", {"admit", code, "--name", "Kim", "--desk"}).exit, 0);
    ASSERT_EQ(desk("house", {"hand-out", in("a.spile")}).exit, 0);
    ASSERT_EQ(desk("phone", {"take-in", in("a.spile")}).exit, 0);
    ASSERT_EQ(desk("phone", {"hand-out", in("b.spile")}).exit, 0);
    ASSERT_EQ(desk("house", {"take-in", in("b.spile")}).exit, 0);
    ASSERT_EQ(desk("house", {"hand-out", in("part.spile"), "--for", "Kim"}).exit, 0);
    expectRefused(desk("new", {"join", in("part.spile")}), 2,
                  in("part.spile") +
                      " does not fit what is there: it does not hold the cellar from its beginning "
                      "(hand one out without --for)");
}

TEST_F(DeskAnswers, ARestoredCellarIsToldHowToGoOnWithoutADesk)
{
    ASSERT_EQ(desk("house", {"backup", in("b.spile")}).exit, 0);
    const Ended restored = desk("again", {"restore", in("b.spile")});
    EXPECT_EQ(restored.exit, 0) << restored.err;
    EXPECT_THAT(restored.out, AllOf(HasSubstr("again, as a new device"),
                                    HasSubstr("--owner-key KEY"), HasSubstr("cut-off")));
}

TEST_F(DeskAnswers, AWordThatIsNoCommandIsNamed)
{
    expectRefused(desk("house", {"settel"}), 2,
                  "there is no command \"settel\"; the nearest: settle");
    expectRefused(desk("house", {}), 2, "A subcommand is required");
}

}  // namespace spile
