// The handbook's pages of numbers: each calculator has one, and it names where its formulas come
// from.
#include "core/plan/calculators/calculator.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <map>
#include <set>
#include <vector>

namespace spile::plan {

using testing::HasSubstr;

// In one line: what a page says may be broken over two.
static std::string pageOf(std::string_view name)
{
    std::ifstream in(std::string(SPILE_SOURCE_DIR "/assets/handbook/").append(name));
    EXPECT_TRUE(in) << name;
    std::string text;
    for (std::string word; in >> word;) {
        text += (text.empty() ? "" : " ") + word;
    }
    return text;
}

TEST(Handbook, HasAPageForEachCalculatorThatNamesItsPublications)
{
    for (const Calculator& calculator : calculators()) {
        SCOPED_TRACE(calculator.name);
        const std::string page = pageOf(calculator.handbook);
        EXPECT_THAT(page, HasSubstr("`" + std::string(calculator.name) + "`"));
        for (const FormulaSource& source : calculator.sources) {
            EXPECT_THAT(page, HasSubstr(std::string(source.publication)));
        }
    }
}

TEST(Handbook, HasNoPageOfNumbersWithoutACalculatorAndKeepsEachShort)
{
    std::set<std::string> pages;
    for (const Calculator& calculator : calculators()) {
        pages.insert(std::string(calculator.handbook));
    }
    for (const auto& file :
         std::filesystem::directory_iterator(SPILE_SOURCE_DIR "/assets/handbook")) {
        const std::string name = file.path().filename().string();
        if (!name.starts_with("numbers-")) {
            continue;
        }
        EXPECT_TRUE(pages.contains(name)) << name;
        std::ifstream in(file.path());
        const auto lines = std::count(std::istreambuf_iterator<char>(in), {}, '\n');
        EXPECT_LT(lines, 60) << name;
    }
    EXPECT_EQ(pages.size(), 12U);
}

// From the barrel to the bottle: where the numbers are from, and what can hurt.
TEST(Handbook, HasPagesForEmptyingFinishingAndPackaging)
{
    const std::map<std::string_view, std::vector<std::string>> pages = {
        {"emptying.md", {"Bernoulli (1738)", "Rous and Alderson", "7.32 kN", "1.465 psi"}},
        {"finishing.md", {"Weiss, Marine Chemistry 2 (1974) 203", "27 CFR 25.15", "0.3 to 0.9"}},
        {"packaging.md", {"27 CFR 7.65(c)", "1169/2011", "firkin"}}};
    for (const auto& [name, parts] : pages) {
        SCOPED_TRACE(name);
        const std::string page = pageOf(name);
        for (const std::string& part : parts) {
            EXPECT_THAT(page, HasSubstr(part));
        }
        EXPECT_THAT(page, HasSubstr("Source: "));
        EXPECT_THAT(page, HasSubstr("**Caution.**"));
    }
}

}  // namespace spile::plan
