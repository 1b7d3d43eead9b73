// The main job as ./demo/run does it, and that it comes out the same each time.
#include "tests/support/command.hpp"
#include "tests/support/temp_folder.hpp"

#include <fstream>
#include <gtest/gtest.h>
#include <iterator>

namespace spile {

static std::string contentOf(const std::filesystem::path& path)
{
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

TEST(DemoWorld, MakesTheSameBytesForTheSameSeedAndOthersForAnother)
{
    const support::TempFolder one, two, other;
    for (const auto* folder : {&one, &two}) {
        const auto ended = support::run(SPILE_DEMO, {folder->path().string(), "3"});
        ASSERT_EQ(ended.exit, 0) << ended.err;
    }
    ASSERT_EQ(support::run(SPILE_DEMO, {other.path().string(), "4"}).exit, 0);
    for (const char* file :
         {"report.json", "code.txt", "head.jpg", "sample.jpg", "ada.spile", "kim.spile"}) {
        const std::string content = contentOf(one.path() / file);
        EXPECT_FALSE(content.empty()) << file;
        EXPECT_TRUE(content == contentOf(two.path() / file)) << file;
        EXPECT_FALSE(content == contentOf(other.path() / file)) << file;
    }
    const auto report = nlohmann::json::parse(contentOf(one.path() / "report.json"));
    EXPECT_EQ(report.at("barrels"), 36);
    EXPECT_EQ(report.at("devices"), 3);
    EXPECT_EQ(report.at("problems"), 0);
    EXPECT_EQ(report.at("new_tastings").size(), 2U);
    EXPECT_EQ(report.at("photo_at_desk"), true);

    const std::string desk = (one.path() / "desk.cellar").string();
    const auto read =
        support::run(SPILE_DESK, {"read", "--json", (one.path() / "head.jpg").string()});
    ASSERT_EQ(read.exit, 0) << read.err;
    ASSERT_FALSE(read.json()[0].at("codes").empty());
    EXPECT_EQ(read.json()[0].at("codes")[0].at("ours"), true);
    const std::string code = report.at("code");
    EXPECT_TRUE(std::string(read.json()[0].at("codes")[0].at("text")).ends_with(code));
    const auto shown =
        support::run(SPILE_DESK, {"--cellar", desk, "show", "barrel", code, "--json"});
    ASSERT_EQ(shown.exit, 0) << shown.err;
    EXPECT_GE(shown.json().at("tastings").size(), 2U);
    EXPECT_EQ(shown.json().at("photos").back().at("sha256"), report.at("photo_sha256"));
    const auto checked = support::run(SPILE_DESK, {"--cellar", desk, "check", "--json"});
    EXPECT_EQ(checked.json().at("state_root"), report.at("state_root"));
}

}  // namespace spile
