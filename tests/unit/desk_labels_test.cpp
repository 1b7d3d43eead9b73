// The desk's labels: for whom, on what, and that no file is lost.
#include "core/cellar/acts/registering.hpp"
#include "core/scan/barrel_code.hpp"
#include "core/scan/reader.hpp"
#include "tests/support/command.hpp"
#include "tests/support/printed_pages.hpp"
#include "tests/support/real_device.hpp"
#include "tests/support/temp_folder.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <map>
#include <set>
#include <sys/stat.h>

namespace spile {

namespace {

using nlohmann::json;
using support::Ended;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::SizeIs;
using testing::UnorderedElementsAre;

// A cellar with the barrels "Rum 12", "Rum 3", "Äpfel" and one without a mark.
struct DeskLabels : testing::Test {
    support::TempFolder folder;
    Path cellarFolder = folder.path() / "desk.cellar";
    support::RealDevice device{folder.path()};
    system::FileKeyStore deskKeys{device.files, cellarFolder};
    std::map<std::string, std::string> codes;  // by mark
    std::string out = (folder.path() / "labels.pdf").string();

    void SetUp() override
    {
        ASSERT_EQ(
            support::run(SPILE_DESK, {"--cellar", cellarFolder.string(), "new", "--mark", "7K2Q"})
                .exit,
            0);
        for (const char* mark : {"Rum 12", "Rum 3", "\xC3\x84pfel", ""}) {
            addBarrel(mark);
        }
    }
    void addBarrel(const std::string& mark)
    {
        const auto cellar = cellar::Cellar::open(
            cellarFolder, {device.clock, device.files, device.random, device.ids, deskKeys});
        ASSERT_TRUE(cellar);
        const auto barrel = cellar::registerBarrel(**cellar, {.mark = mark, .spirit = "rum"});
        ASSERT_TRUE(barrel);
        codes[mark] = barrel->code;
    }
    [[nodiscard]] Ended labels(std::vector<std::string> arguments) const
    {
        arguments.insert(arguments.begin(),
                         {"--cellar", cellarFolder.string(), "--json", "labels"});
        return support::run(SPILE_DESK, arguments);
    }
    [[nodiscard]] Ended write(std::vector<std::string> arguments) const
    {
        arguments.insert(arguments.begin(), {"--out", out, "--force"});
        return labels(std::move(arguments));
    }
    // What is read when the file is printed.
    [[nodiscard]] std::vector<std::string> symbols() const
    {
        std::vector<std::string> texts;
        for (const picture::Image& page : support::printed(out, 150)) {
            const auto codesOfPage = scan::readPicture(picture::viewOf(page));
            for (const scan::Code& code : *codesOfPage) {
                texts.push_back(code.text);
            }
        }
        return texts;
    }
    [[nodiscard]] std::string textOf(const std::string& mark) const
    {
        return scan::labelText({"7K2Q", codes.at(mark)});
    }
};

}  // namespace

TEST_F(DeskLabels, WriteAHeadPlateForABarrelByItsMarkOrCode)
{
    ASSERT_EQ(write({"rum 3"}).exit, 0);
    EXPECT_THAT(symbols(), ElementsAre(textOf("Rum 3"), textOf("Rum 3")));
    ASSERT_EQ(write({scan::shown(codes[""]), "\xC3\x84pfel"}).exit, 0);
    EXPECT_THAT(symbols(), UnorderedElementsAre(textOf(""), textOf(""), textOf("\xC3\x84pfel"),
                                                textOf("\xC3\x84pfel")));
    EXPECT_EQ(support::wrongIn(out), "");
    EXPECT_THAT(support::wordsIn(out), HasSubstr("\xC3\x84pfel"));
}

TEST_F(DeskLabels, TakeAMarkForItselfAndNotForAPartOfAnother)
{
    EXPECT_EQ(write({"Rum"}).exit, 1) << "a spirit, and the beginning of two marks";
    addBarrel("Oak");
    EXPECT_EQ(write({"rum"}).exit, 1) << "a spirit as long as a mark";
    const Ended ended = write({"Rum 1"});
    EXPECT_EQ(ended.exit, 1);
    EXPECT_EQ(ended.json().at("error").at("subject"), "barrel");
    EXPECT_FALSE(std::filesystem::exists(out));
}

TEST_F(DeskLabels, WriteAllInTheBrewersOrder)
{
    const json answer = write({"--all", "--stock", "a4-8", "--from", "6", "--test-page"}).json();
    EXPECT_EQ(answer.at("labels"), 4);
    EXPECT_EQ(answer.at("pages"), 3) << "a test page, three on the sheet, one on the next";
    EXPECT_EQ(answer.at("module_mm"), 1.2);
    const auto order = answer.at("codes").get<std::vector<std::string>>();
    const auto place = [&](const std::string& mark) {
        return std::find(order.begin(), order.end(), codes.at(mark)) - order.begin();
    };
    EXPECT_LT(place("Rum 3"), place("Rum 12"));
    EXPECT_THAT(symbols(), SizeIs(8));
}

TEST_F(DeskLabels, MakeSpareCodesThatNoBarrelHas)
{
    const json answer = write({"--spare", "30", "--roll"}).json();
    EXPECT_EQ(answer.at("pages"), 30);
    const auto spare = answer.at("codes").get<std::set<std::string>>();
    EXPECT_EQ(spare.size(), 30U);
    for (const std::string& code : spare) {
        EXPECT_TRUE(scan::isCode("7K2Q", code)) << code;
    }
    for (const auto& [mark, code] : codes) {
        EXPECT_FALSE(spare.contains(code)) << mark;
    }
    EXPECT_NE(spare, write({"--spare", "30", "--roll"}).json().at("codes"));
}

TEST_F(DeskLabels, NeverWriteOverAFileUnasked)
{
    std::ofstream(out) << "mine";
    const Ended refused = labels({"--out", out, "--all"});
    EXPECT_EQ(refused.exit, 2);
    EXPECT_EQ(refused.json().at("error").at("remedy"), "--force writes over it");
    EXPECT_EQ(std::filesystem::file_size(out), 4U);
    EXPECT_EQ(labels({"--out", out, "--all", "--force"}).exit, 0);
    EXPECT_GT(std::filesystem::file_size(out), 1000U);
    std::set<std::string> left;
    for (const auto& entry : std::filesystem::directory_iterator(folder.path())) {
        left.insert(entry.path().filename().string());
    }
    EXPECT_EQ(left.count("labels.pdf"), 1U);
    for (const std::string& name : left) {
        EXPECT_FALSE(name.starts_with("labels.pdf.")) << "a temporary file is left";
    }
}

TEST_F(DeskLabels, TakeThePlaceOfNothingButAFile)
{
    // A pipe stands for a device, which would be lost: the file is renamed into its place.
    const std::string pipe = (folder.path() / "pipe").string();
    ASSERT_EQ(mkfifo(pipe.c_str(), 0600), 0);
    EXPECT_EQ(labels({"--out", pipe, "--all", "--force"}).exit, 3);
    EXPECT_TRUE(std::filesystem::is_fifo(pipe));
    EXPECT_EQ(labels({"--out", folder.path().string(), "--all", "--force"}).exit, 3);
    const Ended nowhere = labels({"--out", (folder.path() / "no" / "l.pdf").string(), "--all"});
    EXPECT_EQ(nowhere.exit, 2);
    EXPECT_EQ(nowhere.json().at("error").at("subject"), "folder");
}

TEST_F(DeskLabels, SayWhatIsWrong)
{
    EXPECT_EQ(write({}).exit, 2) << "for no barrel";
    EXPECT_EQ(labels({"--all"}).exit, 2) << "no file";
    EXPECT_EQ(write({"--all", "--spare", "501"}).exit, 2);
    EXPECT_EQ(write({"--all", "--spare", "0"}).exit, 2);
    EXPECT_EQ(write({"--all", "--distance", "2"}).exit, 2);
    EXPECT_EQ(write({"--all", "--stock", "a4-8", "--from", "9"}).exit, 2);
    EXPECT_EQ(write({"--all", "--from", "2"}).exit, 2) << "plates have no positions";
    EXPECT_EQ(write({"--all", "--stock", "a4-7"}).exit, 1);
    EXPECT_EQ(write({"--all", "--stock", "a4-8", "--roll"}).exit, 2);
    EXPECT_EQ(write({"--all", "--plate", "--roll"}).exit, 2);
    const Ended small = write({"--all", "--stock", "a4-24", "--distance", "1"});
    EXPECT_EQ(small.exit, 2);
    EXPECT_THAT(small.err, HasSubstr("these can be read from up to 0.55 m"));
    EXPECT_FALSE(std::filesystem::exists(out));
}

TEST_F(DeskLabels, ListTheStockWithoutACellar)
{
    const Ended ended = support::run(SPILE_DESK, {"--cellar", (folder.path() / "none").string(),
                                                  "labels", "--list-stock", "--json"});
    ASSERT_EQ(ended.exit, 0);
    const json rows = ended.json();
    const auto found = std::find_if(rows.begin(), rows.end(),
                                    [](const json& row) { return row.at("name") == "a4-8"; });
    ASSERT_NE(found, rows.end());
    EXPECT_EQ(found->at("labels"), 8);
    EXPECT_EQ(found->at("farthest_m"), 1.0);
}

TEST_F(DeskLabels, TellOfCharactersThatTheFontLacks)
{
    addBarrel("\xE6\xA8\xBD 3");
    const Ended ended = write({"--all"});
    EXPECT_EQ(ended.exit, 0);
    EXPECT_EQ(ended.json().at("incomplete_marks"), json::array({"\xE6\xA8\xBD 3"}));
    EXPECT_THAT(ended.err, HasSubstr("\xE6\xA8\xBD 3"));
}

}  // namespace spile
