// A lost device, a copied one and one that nobody admitted, as a person deals with them at the
// desk.
#include "tests/support/command.hpp"
#include "tests/support/temp_folder.hpp"

#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace spile {

using nlohmann::json;
using support::Ended;
using testing::HasSubstr;

namespace {

class DeskTrust : public testing::Test {
protected:
    support::TempFolder folder;

    void SetUp() override
    {
        ASSERT_EQ(desk("house", {"new", "--name", "House"}).exit, 0);
        ASSERT_EQ(desk("house", {"hand-out", in("start.spile")}).exit, 0);
        code = json::parse(desk("second", {"join", in("start.spile")}).out).at("join_code");
    }

    [[nodiscard]] std::string in(const std::string& name) const
    {
        return (folder.path() / name).string();
    }
    [[nodiscard]] Ended desk(const std::string& cellar, std::vector<std::string> words) const
    {
        words.insert(words.begin(), {"--json", "--cellar", in(cellar)});
        return support::run(SPILE_DESK, words);
    }
    void carry(const std::string& from, const std::string& to) const
    {
        const std::string file = in("carried.spile");
        ASSERT_EQ(desk(from, {"hand-out", file}).exit, 0);
        ASSERT_EQ(desk(to, {"take-in", file}).exit, 0);
        std::filesystem::remove(file);
    }
    [[nodiscard]] json settle(const std::string& cellar) const
    {
        return json::parse(desk(cellar, {"settle"}).out);
    }
    void admitSecond() const
    {
        ASSERT_EQ(desk("house", {"admit", code, "--name", "Second", "--desk"}).exit, 0);
        carry("house", "second");
    }
    std::string code;
};

}  // namespace

TEST_F(DeskTrust, ALostDeskIsCutOffAndLetInAgainByTheOwner)
{
    admitSecond();
    EXPECT_EQ(desk("house", {"cut-off", "Nobody"}).exit, 1);
    const Ended cut = desk("house", {"cut-off", "Second", "--reason", "left on a train"});
    ASSERT_EQ(cut.exit, 0) << cut.err;
    const std::string stranger =
        json::parse(desk("third", {"join", in("start.spile")}).out).at("join_code");
    ASSERT_EQ(desk("second", {"admit", stranger}).exit, 0);  // it has not heard of the cut
    carry("second", "house");
    const json open = settle("house");
    ASSERT_EQ(open.size(), 1U) << open;
    EXPECT_EQ(open[0].at("what"), "set_aside");
    EXPECT_EQ(open[0].at("about"), "Second");
    EXPECT_EQ(open[0].at("records"), 1);
    const std::string key = open[0].at("key");
    EXPECT_EQ(json::parse(desk("house", {"settle", key}).out).at("choices").size(), 1U);
    EXPECT_EQ(desk("house", {"settle", key, "2"}).exit, 1);

    EXPECT_EQ(desk("house", {"reinstate", "Second", "--owner-key", "1234"}).exit, 2);
    EXPECT_EQ(desk("house", {"reinstate", "Second", "--owner-key", ""}).exit, 2);
    const std::string zeros(64, '0');
    EXPECT_EQ(desk("house", {"reinstate", "Second", "--owner-key", zeros}).exit, 2);
    ASSERT_EQ(desk("house", {"reinstate", "Second", "--owner-key", in("house/owner.key")}).exit, 0);
    EXPECT_TRUE(settle("house").empty());
    EXPECT_EQ(desk("house", {"reinstate", "Second", "--owner-key", in("house/owner.key")}).exit, 2);
}

TEST_F(DeskTrust, WhatIsSetAsideIsAdopted)
{
    admitSecond();
    ASSERT_EQ(desk("house", {"cut-off", "Second", "--after", "0"}).exit, 0);
    const std::string stranger =
        json::parse(desk("third", {"join", in("start.spile")}).out).at("join_code");
    ASSERT_EQ(desk("second", {"admit", stranger}).exit, 0);
    carry("second", "house");
    const Ended adopted = desk("house", {"adopt", "Second"});
    ASSERT_EQ(adopted.exit, 0) << adopted.err;
    EXPECT_EQ(json::parse(adopted.out).at("adopted"), 1);
    EXPECT_TRUE(settle("house").empty());
    EXPECT_EQ(desk("house", {"check"}).exit, 0);
}

TEST_F(DeskTrust, AfterItsFolderWasPutBackADeskGetsANewKey)
{
    admitSecond();
    std::filesystem::copy(in("second"), in("kept"), std::filesystem::copy_options::recursive);
    const std::string stranger =
        json::parse(desk("third", {"join", in("start.spile")}).out).at("join_code");
    ASSERT_EQ(desk("second", {"admit", stranger}).exit, 0);
    carry("second", "house");
    std::filesystem::remove_all(in("second"));
    std::filesystem::rename(in("kept"), in("second"));
    ASSERT_EQ(desk("house", {"hand-out", in("back.spile")}).exit, 0);
    const Ended back =
        support::run(SPILE_DESK, {"--cellar", in("second"), "take-in", in("back.spile")});
    ASSERT_EQ(back.exit, 0) << back.err;
    EXPECT_THAT(back.out, HasSubstr("It goes on under a new key, which is to be admitted"));
    EXPECT_FALSE(std::filesystem::exists(in("second/device.key.next")));
    EXPECT_EQ(desk("second", {"check"}).exit, 0);
    carry("second", "house");
    const json open = settle("house");
    ASSERT_EQ(open.size(), 1U) << open;
    EXPECT_EQ(open[0].at("what"), "waiting");
    const std::string key = open[0].at("key");
    EXPECT_EQ(desk("house", {"settle", key, "1"}).exit, 2) << "without a name";
    ASSERT_EQ(desk("house", {"settle", key, "1", "--name", "Second again"}).exit, 0);
    EXPECT_TRUE(settle("house").empty());
}

TEST_F(DeskTrust, TheOwnersKeyOnItsSheetAdmitsADeskWhereNoneIsLeft)
{
    const Ended sheet = desk("house", {"owner-sheet", in("sheet.txt")});
    ASSERT_EQ(sheet.exit, 0) << sheet.err;
    EXPECT_EQ(desk("house", {"owner-sheet", in("sheet.txt")}).exit, 2) << "it is there already";
    std::ifstream file(in("sheet.txt"));
    std::string typed;
    for (std::string line; std::getline(file, line);) {
        if (line.starts_with("    ")) {
            typed += line;
        }
    }
    std::filesystem::remove_all(in("house"));
    const Ended admitted =
        desk("second", {"admit", code, "--name", "Second", "--desk", "--owner-key", typed});
    ASSERT_EQ(admitted.exit, 0) << admitted.err;
    const std::string other =
        json::parse(desk("third", {"join", in("start.spile")}).out).at("join_code");
    EXPECT_EQ(desk("second", {"admit", other}).exit, 0) << "it may admit now";
    EXPECT_EQ(desk("second", {"owner-sheet", in("other.txt")}).exit, 1) << "it has no such key";
}

}  // namespace spile
