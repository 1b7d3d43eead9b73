#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

/// Published check values, kept as data beside the tests: tests/reference/points/<area>.csv.
namespace spile::support {

/// One line: what a quantity must be for given inputs, and who says so.
struct Point {
    std::string item;                         ///< the quantity, such as "hydrometer_sg20"
    std::map<std::string, double> input;      ///< by name with unit: "temp_c"
    std::map<std::string, std::string> word;  ///< inputs that are not numbers
    double expected = 0;
    double tolerance = 0;
    std::string source;
    std::string tag;  ///< seen | memory | common practice | computed
    std::size_t line = 0;
};

/// Return the points of a file of tests/reference/points, in its order.
///
/// Shape     the first line is "item,input,expected,tolerance,source,tag"; an input is
///           "name=value;name=value"; lines that are empty or begin with '#' are skipped.
/// Errors    throws std::runtime_error with file and line for anything else, for a tag that is not
///           one of the four, and for a tolerance below 0: a test program then fails.
[[nodiscard]] std::vector<Point> readPoints(std::string_view file);

/// The same from a text, for the test of the reader.
[[nodiscard]] std::vector<Point> pointsOf(std::string_view text, std::string_view name);

/// "liquor.csv:12 water_density temp_c=4", for a failing test.
[[nodiscard]] std::string nameOf(const Point& point, std::string_view file);

}  // namespace spile::support
