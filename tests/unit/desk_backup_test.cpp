// Copies of a cellar, as a person makes them: backup, restore, export, sealed day files.
#include "tests/support/command.hpp"
#include "tests/support/temp_folder.hpp"

#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <regex>
#include <sstream>

namespace spile {

using nlohmann::json;
using support::Ended;
using testing::HasSubstr;

namespace {

class DeskBackup : public testing::Test {
protected:
    support::TempFolder folder;

    void SetUp() override { ASSERT_EQ(desk("house", {"new", "--name", "House"}).exit, 0); }

    [[nodiscard]] std::string in(const std::string& name) const
    {
        return (folder.path() / name).string();
    }
    [[nodiscard]] Ended desk(const std::string& cellar, std::vector<std::string> words) const
    {
        words.insert(words.begin(), {"--json", "--cellar", in(cellar)});
        return support::run(SPILE_DESK, words);
    }
    [[nodiscard]] std::string root(const std::string& cellar) const
    {
        const Ended checked = desk(cellar, {"check"});
        EXPECT_EQ(checked.exit, 0) << checked.err;
        const json report = json::parse(checked.out);
        return report.at("state_root");
    }
};

}  // namespace

TEST_F(DeskBackup, IsRestoredAsANewDeviceOfTheSameState)
{
    ASSERT_EQ(desk("house", {"backup", in("copy.spile")}).exit, 0);
    const Ended restored = desk("again", {"restore", in("copy.spile")});
    ASSERT_EQ(restored.exit, 0) << restored.err;
    EXPECT_FALSE(json::parse(restored.out).at("join_code").get<std::string>().empty());
    EXPECT_EQ(root("again"), root("house"));
    EXPECT_EQ(desk("again", {"restore", in("copy.spile")}).exit, 2);  // it is there already
}

TEST_F(DeskBackup, UnderAPassphraseOpensWithItAlone)
{
    const Ended sealed = desk("house", {"backup", in("copy.spile"), "--sealed"});
    ASSERT_EQ(sealed.exit, 0) << sealed.err;
    const std::string words = json::parse(sealed.out).at("passphrase");
    const Ended none = desk("again", {"restore", in("copy.spile")});
    EXPECT_EQ(none.exit, 2);
    EXPECT_THAT(none.err, HasSubstr("passphrase"));
    EXPECT_EQ(desk("again", {"restore", in("copy.spile"), "--passphrase", "other"}).exit, 2);
    EXPECT_FALSE(std::filesystem::exists(in("again")));
    ASSERT_EQ(desk("again", {"restore", in("copy.spile"), "--passphrase", words}).exit, 0);
    EXPECT_EQ(root("again"), root("house"));
    EXPECT_EQ(desk("house", {"take-in", in("copy.spile"), "--passphrase", words}).exit, 0);
    EXPECT_EQ(desk("house", {"take-in", in("copy.spile")}).exit, 2);
}

// The unit of a quantity is the end of its name.
TEST_F(DeskBackup, AnExportExplainsItsUnits)
{
    ASSERT_EQ(desk("house", {"export", in("plain")}).exit, 0);
    std::ostringstream readme;
    readme << std::ifstream(in("plain/README.txt")).rdbuf();
    const std::regex unit("_(e[0-9]|m?[a-z])$|_pa$");
    int units = 0;
    for (const auto& table : std::filesystem::directory_iterator(in("plain/tables"))) {
        std::ifstream file(table.path());
        std::string head;
        std::getline(file, head);
        std::istringstream columns(head.substr(0, head.find('\r')));
        for (std::string column; std::getline(columns, column, ',');) {
            std::smatch found;
            if (std::regex_search(column, found, unit)) {
                ++units;
                const bool scaled = found.str().at(1) == 'e';
                const std::string named =
                    scaled ? column.substr(column.rfind('_', column.size() - 4) + 1) : found.str();
                EXPECT_THAT(readme.str(), HasSubstr(named)) << table.path() << ": " << column;
            }
        }
    }
    EXPECT_GT(units, 50);
}

TEST_F(DeskBackup, ExportIsPlainTextAndTakesNoOthersPlace)
{
    const Ended exported = desk("house", {"export", in("plain")});
    ASSERT_EQ(exported.exit, 0) << exported.err;
    std::ifstream records(in("plain/records.jsonl"));
    int count = 0;
    for (std::string line; std::getline(records, line); ++count) {
        const json record = json::parse(line);
        EXPECT_EQ(record.at("id").get<std::string>().size(), 64U);
        EXPECT_TRUE(record.at("fields").is_object());
    }
    EXPECT_EQ(count, json::parse(exported.out).at("records"));
    std::ifstream devices(in("plain/tables/device.csv"));
    std::string head;
    std::getline(devices, head);
    EXPECT_EQ(head, "entry,subject,device,seq,at_ms,clock_ms,name,public_key,role\r");
    EXPECT_FALSE(std::filesystem::exists(in("plain.unfinished")));
    EXPECT_EQ(desk("house", {"export", in("plain")}).exit, 2);
    EXPECT_EQ(desk("house", {"export", in("house")}).exit, 2);
}

}  // namespace spile
