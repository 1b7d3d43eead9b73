#pragma once

#include "core/base/result.hpp"
#include "tests/support/points.hpp"

#include <cmath>
#include <functional>
#include <gtest/gtest.h>
#include <limits>
#include <map>
#include <set>

namespace spile::support {

/// What a project function makes of a point's inputs.
using Formula = std::function<double(const Point&)>;

/// Return the value, or NaN and a failed test.
inline double valueOf(const Result<double>& result)
{
    if (!result) {
        ADD_FAILURE() << result.error().subject << ' ' << result.error().value << " ("
                      << result.error().limit << ')';
        return std::numeric_limits<double>::quiet_NaN();
    }
    return *result;
}

/// Compare every point of `file` with the formula of its item. A point without a formula fails, and
/// so does a formula without a point.
inline void checkPoints(std::string_view file, const std::map<std::string, Formula>& formulas)
{
    std::set<std::string> used;
    for (const Point& point : readPoints(file)) {
        SCOPED_TRACE(nameOf(point, file));
        const auto formula = formulas.find(point.item);
        ASSERT_NE(formula, formulas.end());
        used.insert(point.item);
        // A last digit for what rounding does to a tolerance that is met exactly.
        const double rounding = 4e-16 * std::fabs(point.expected);
        EXPECT_NEAR(formula->second(point), point.expected, point.tolerance + rounding);
    }
    for (const auto& [item, formula] : formulas) {
        EXPECT_TRUE(used.contains(item)) << item << " has no points in " << file;
    }
}

}  // namespace spile::support
