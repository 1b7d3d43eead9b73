// A lost device, a copied one and one that nobody admitted, as a person deals with them at the
// desk.
#include "core/cellar/join_code.hpp"
#include "core/picture/encode.hpp"
#include "tests/support/command.hpp"
#include "tests/support/printed_pages.hpp"
#include "tests/support/symbol_pictures.hpp"
#include "tests/support/temp_folder.hpp"

#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sstream>

namespace spile {

using nlohmann::json;
using support::Ended;
using testing::HasSubstr;
using testing::Not;

namespace {

void writePng(const std::string& file, const picture::Image& image)
{
    std::ofstream(file, std::ios::binary) << asText(*picture::encodePng(image));
}

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
    // The owner's sheet of the house, printed: its two lines, and a picture of the page.
    [[nodiscard]] std::pair<std::string, std::string> printSheet() const
    {
        const std::string file = in("owner.pdf");
        EXPECT_EQ(desk("house", {"owner-sheet", "--pdf", file}).exit, 0);
        std::istringstream words(support::wordsIn(file));
        std::string typed;
        for (std::string line; std::getline(words, line);) {
            typed += line.size() == 34 && line.find(' ') == std::string::npos ? line + " " : "";
        }
        const auto pages = support::printed(file, 150);
        EXPECT_EQ(pages.size(), 1U);
        const std::string picture = in("owner.png");
        writePng(picture, pages.at(0));
        return {typed, picture};
    }
    [[nodiscard]] std::string drawn(const std::string& name, const cellar::JoinSymbol& symbol) const
    {
        writePng(in(name), support::drawSymbol(cellar::joinSymbolText(symbol)));
        return in(name);
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
    ASSERT_EQ(desk("second", {"admit", stranger, "--name", "Lea"}).exit,
              0);  // it has not heard of the cut
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

TEST_F(DeskTrust, ADeviceThatIsCutOffIsNotCutOffAgain)
{
    admitSecond();
    const std::string stranger =
        json::parse(desk("third", {"join", in("start.spile")}).out).at("join_code");
    ASSERT_EQ(desk("second", {"admit", stranger, "--name", "Lea"}).exit, 0);
    carry("second", "house");
    ASSERT_EQ(desk("house", {"cut-off", "Second"}).exit, 0);
    const json before = json::parse(desk("house", {"hand-out", in("before.spile")}).out);
    const Ended again = desk("house", {"cut-off", "Second"});
    EXPECT_EQ(again.exit, 2);
    EXPECT_THAT(again.err, HasSubstr("Second (it is cut off already, since "));
    const json after = json::parse(desk("house", {"hand-out", in("after.spile")}).out);
    EXPECT_EQ(after.at("entries"), before.at("entries")) << "nothing was recorded";
    EXPECT_EQ(desk("house", {"cut-off", "Second", "--after", "0"}).exit, 0) << "all of it";
}

TEST_F(DeskTrust, NoDeviceIsAdmittedWithoutAName)
{
    const Ended refused = desk("house", {"admit", code});
    EXPECT_EQ(refused.exit, 2);
    EXPECT_THAT(refused.err, HasSubstr("--name is required"));
    EXPECT_EQ(desk("house", {"admit", code, "--name", ""}).exit, 2);
    EXPECT_EQ(json::parse(desk("house", {"show", "devices"}).out).size(), 1U);
}

TEST_F(DeskTrust, WhatIsSetAsideIsAdopted)
{
    admitSecond();
    ASSERT_EQ(desk("house", {"cut-off", "Second", "--after", "0"}).exit, 0);
    const std::string stranger =
        json::parse(desk("third", {"join", in("start.spile")}).out).at("join_code");
    ASSERT_EQ(desk("second", {"admit", stranger, "--name", "Lea"}).exit, 0);
    carry("second", "house");
    const Ended listed = desk("house", {"adopt", "Second"});
    ASSERT_EQ(listed.exit, 0) << listed.err;
    const json waiting = json::parse(listed.out);
    EXPECT_EQ(waiting.at("set_aside"), 1);
    ASSERT_EQ(waiting.at("records").size(), 1U);
    EXPECT_EQ(waiting.at("records")[0].at("kind"), "device");
    EXPECT_EQ(settle("house").size(), 1U) << "it is only listed";
    EXPECT_EQ(desk("house", {"adopt", "Second", "--record", "ffffffffffffffff"}).exit, 1);
    EXPECT_EQ(desk("house", {"adopt", "Second", "--all", "--record", "ff"}).exit, 2);
    const std::string id = waiting.at("records")[0].at("id");
    const Ended adopted = desk("house", {"adopt", "Second", "--record", id.substr(0, 12)});
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
    ASSERT_EQ(desk("second", {"admit", stranger, "--name", "Lea"}).exit, 0);
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
    EXPECT_THAT(std::string(open[0].at("says")),
                HasSubstr("which says that it is \"Second\" with a new key"));
    const std::string key = open[0].at("key");
    EXPECT_EQ(desk("house", {"settle", key, "1"}).exit, 2) << "without a name";
    ASSERT_EQ(desk("house", {"settle", key, "1", "--name", "Second again"}).exit, 0);
    EXPECT_TRUE(settle("house").empty());
}

TEST_F(DeskTrust, AllThatIsSetAsideIsAdoptedAtOnce)
{
    admitSecond();
    ASSERT_EQ(desk("house", {"cut-off", "Second", "--after", "0"}).exit, 0);
    for (const char* name : {"third", "fourth"}) {
        const std::string stranger =
            json::parse(desk(name, {"join", in("start.spile")}).out).at("join_code");
        ASSERT_EQ(desk("second", {"admit", stranger, "--name", "Lea"}).exit, 0);
    }
    carry("second", "house");
    const Ended adopted = desk("house", {"adopt", "Second", "--all"});
    ASSERT_EQ(adopted.exit, 0) << adopted.err;
    EXPECT_THAT(adopted.err, HasSubstr("2 records set aside."));
    EXPECT_EQ(json::parse(adopted.out).at("adopted"), 2);
    EXPECT_TRUE(settle("house").empty());
    EXPECT_EQ(desk("house", {"check"}).exit, 0);
}

TEST_F(DeskTrust, TheOwnersKeyOnItsSheetAdmitsADeskWhereNoneIsLeft)
{
    const auto [typed, picture] = printSheet();
    std::filesystem::remove_all(in("house"));
    const Ended admitted =
        desk("second", {"admit", code, "--name", "Second", "--desk", "--owner-key", typed});
    ASSERT_EQ(admitted.exit, 0) << admitted.err;
    const std::string other =
        json::parse(desk("third", {"join", in("start.spile")}).out).at("join_code");
    EXPECT_EQ(desk("second", {"admit", other, "--name", "Kim"}).exit, 0) << "it may admit now";
    EXPECT_EQ(desk("second", {"owner-sheet", "--pdf", in("other.pdf")}).exit, 1)
        << "it has no such key";
}

TEST_F(DeskTrust, TheOwnersSheetIsPrivateAndNeverWrittenOverAnything)
{
    const std::string file = in("sheet.pdf");
    ASSERT_EQ(desk("house", {"owner-sheet", "--pdf", file, "--letter"}).exit, 0);
    using std::filesystem::perms;
    EXPECT_EQ(std::filesystem::status(file).permissions(), perms::owner_read | perms::owner_write);
    EXPECT_EQ(support::wrongIn(file), "");
    const std::string words = support::wordsIn(file);
    for (const char* part : {"Owner's key of the cellar \"House\"", "Cellar mark ", "Store it away",
                             "Do not photograph it", "--owner-key-picture", "reinstate"}) {
        EXPECT_THAT(words, HasSubstr(part));
    }
    const Ended again = desk("house", {"owner-sheet", "--pdf", file});
    EXPECT_EQ(again.exit, 2) << "it is there already";
    EXPECT_EQ(support::wordsIn(file), words);
    EXPECT_EQ(desk("house", {"owner-sheet", "--pdf", in("no/such/sheet.pdf")}).exit, 2);
    EXPECT_EQ(desk("house", {"owner-sheet"}).exit, 2);
    std::ifstream key(in("house/owner.key"));
    std::string digits;
    key >> digits;
    EXPECT_EQ(again.err.find(digits), std::string::npos);
}

TEST_F(DeskTrust, APictureOfTheOwnersSheetIsAsGoodAsItsWords)
{
    admitSecond();
    ASSERT_EQ(desk("house", {"cut-off", "Second"}).exit, 0);
    const auto [typed, picture] = printSheet();
    std::filesystem::remove(in("house/owner.key"));
    const Ended none = desk("house", {"reinstate", "Second"});
    EXPECT_EQ(none.exit, 2);
    std::string wrong = typed;
    wrong[6] = wrong[6] == '7' ? '8' : '7';
    const Ended mistyped = desk("house", {"reinstate", "Second", "--owner-key", wrong});
    EXPECT_EQ(mistyped.exit, 2);
    EXPECT_THAT(mistyped.out + mistyped.err, HasSubstr("line 1 is mistyped"));
    EXPECT_THAT(mistyped.out + mistyped.err, Not(HasSubstr(wrong.substr(0, 9))));
    const Ended shown = desk("house", {"read", picture});
    ASSERT_EQ(shown.exit, 0) << shown.err;
    EXPECT_THAT(shown.out, HasSubstr("not shown"));
    EXPECT_THAT(shown.out, Not(HasSubstr(typed.substr(0, 4))));
    const Ended back = desk("house", {"reinstate", "Second", "--owner-key-picture", picture});
    ASSERT_EQ(back.exit, 0) << back.out << back.err;
}

TEST_F(DeskTrust, ADeviceIsAdmittedByAPictureOfItsSymbol)
{
    const std::string mark = json::parse(desk("third", {"join", in("start.spile")}).out).at("mark");
    const DeviceId device = *cellar::parseJoinCode(code);
    const std::string picture = drawn("ours.png", {mark, device});
    const std::string foreign = drawn("foreign.png", {mark == "7777" ? "8888" : "7777", device});
    const Ended refused = desk("house", {"admit", "--picture", foreign, "--name", "Kim"});
    EXPECT_EQ(refused.exit, 2);
    EXPECT_THAT(refused.out + refused.err, HasSubstr("it has joined another cellar"));
    EXPECT_EQ(desk("house", {"admit", "--name", "Kim"}).exit, 2) << "neither code nor picture";
    EXPECT_EQ(desk("house", {"admit", code, "--picture", picture, "--name", "Kim"}).exit, 2)
        << "both";
    const Ended admitted = desk("house", {"admit", "--picture", picture, "--name", "Kim"});
    ASSERT_EQ(admitted.exit, 0) << admitted.out << admitted.err;
    EXPECT_EQ(json::parse(admitted.out).at("join_code"), code);
    EXPECT_EQ(desk("house", {"admit", "--picture", picture, "--name", "Kim"}).exit, 2)
        << "it is admitted already";
    const std::string label = in("label.png");
    writePng(label, support::drawSymbol(scan::labelText({"7K2Q", "7K2QFM"})));
    const Ended none = desk("house", {"admit", "--picture", label, "--name", "Kim"});
    EXPECT_EQ(none.exit, 1);
    EXPECT_THAT(none.out + none.err, HasSubstr("join symbol"));
    EXPECT_THAT(desk("house", {"read", picture}).out, HasSubstr("S2" + mark));
}

}  // namespace spile
