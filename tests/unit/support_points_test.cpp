#include "tests/support/check_points.hpp"
#include "tests/support/points.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest-spi.h>
#include <gtest/gtest.h>
#include <stdexcept>

namespace spile::support {

static const std::string header = "item,input,expected,tolerance,source,tag\n";

TEST(Points, ReadsNumbersAndWordsOfALine)
{
    const auto points =
        pointsOf(header +
                     "# a remark\n\nhydrometer,reading=1.05;temp_c=-2.5;scale=60F,1.051,5e-6,"
                     "A table of 1950; page 3,seen\n",
                 "x.csv");
    ASSERT_EQ(points.size(), 1U);
    EXPECT_EQ(points[0].item, "hydrometer");
    EXPECT_EQ(points[0].input.at("reading"), 1.05);
    EXPECT_EQ(points[0].input.at("temp_c"), -2.5);
    EXPECT_EQ(points[0].word.at("scale"), "60F");
    EXPECT_EQ(points[0].expected, 1.051);
    EXPECT_EQ(points[0].tolerance, 5e-6);
    EXPECT_EQ(points[0].source, "A table of 1950; page 3");
    EXPECT_EQ(points[0].tag, "seen");
    EXPECT_EQ(points[0].line, 4U);
}

TEST(Points, RefusesWhatHasNotItsForm)
{
    EXPECT_THROW((void)readPoints("no_such_file.csv"), std::runtime_error);
    EXPECT_THROW((void)pointsOf("item,input\n", "x.csv"), std::runtime_error);
    for (const std::string line :
         {"a,b=1,2,0.1,source", "a,b=1,2,0.1,source,seen,more", "a,b,2,0.1,source,seen",
          "a,=1,2,0.1,source,seen", "a,b=1;b=2,2,0.1,source,seen", "a,b=1,two,0.1,source,seen",
          "a,b=1,nan,0.1,source,seen", "a,b=1,2,-0.1,source,seen", "a,b=1,2,0.1,,seen",
          ",b=1,2,0.1,source,seen", "a,b=1,2,0.1,source,rumour"}) {
        EXPECT_THROW((void)pointsOf(header + line + "\n", "x.csv"), std::runtime_error) << line;
    }
}

TEST(Points, NamesTheLineThatIsWrong)
{
    try {
        (void)pointsOf(header + "a,b=1,2,0.1,source,seen\na,b=1,2,0.1,source,rumour\n", "x.csv");
        ADD_FAILURE();
    } catch (const std::runtime_error& error) {
        EXPECT_THAT(error.what(), testing::StartsWith("x.csv:3:"));
    }
}

TEST(CheckPoints, FailsForAnItemWithoutAFormula)
{
    EXPECT_FATAL_FAILURE(checkPoints("r22_table.csv", {}), "");
}

TEST(CheckPoints, FailsForAFormulaWithoutAPointAndForAValueThatIsOff)
{
    testing::TestPartResultArray results;
    {
        const testing::ScopedFakeTestPartResultReporter reporter(&results);
        const auto nothing = [](const Point& point) { return point.expected; };
        checkPoints("r22_table.csv",
                    {{"mass_percent", nothing},
                     {"density_kg_m3", [](const Point& p) { return p.expected + 6e-4; }},
                     {"density_by_mass_kg_m3", nothing},
                     {"abv_percent_by_density", nothing},
                     {"weight_of_a_cork", nothing}});
    }
    EXPECT_EQ(results.size(), 14 * 6 + 1);
}

}  // namespace spile::support
