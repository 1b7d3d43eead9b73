// Sources: each point of finish.csv names its own. Tolerances: half a unit of the last digit.
#include "core/plan/packaging.hpp"
#include "tests/support/check_points.hpp"

#include <algorithm>
#include <gtest/gtest.h>

namespace spile::plan {

using support::Point;

namespace {

Volume volumeOf(const Point& point)
{
    return point.input.contains("gallons") ? usGallons(point.input.at("gallons"))
                                           : litres(point.input.at("litres"));
}

FinishTotals totalsOf(const Point& point)
{
    const double percent = point.input.contains("abv_percent") ? point.input.at("abv_percent") : 0;
    return finishTotals(volumeOf(point), percent / 100).value();
}

double tolerancePercent(const Point& point)
{
    const LabelLaw law =
        point.word.at("law") == "us" ? LabelLaw::UnitedStates : LabelLaw::EuropeanUnion;
    return 100 * support::valueOf(labelTolerance(law, point.input.at("labelled_percent") / 100));
}

double packageLitres(const Point& point)
{
    const auto all = packages();
    const auto found = std::find_if(all.begin(), all.end(), [&](const Package& package) {
        return package.name == point.word.at("package");
    });
    return found == all.end() ? 0 : inLitres(found->content);
}

}  // namespace

TEST(Finish, MatchesPublishedPoints)
{
    support::checkPoints(
        "finish.csv",
        {{"us_beer_barrels", [](const Point& point) { return totalsOf(point).usBeerBarrels; }},
         {"label_tolerance_percent", tolerancePercent},
         {"package_litres", packageLitres},
         {"pure_alcohol_litres",
          [](const Point& point) { return inLitres(totalsOf(point).pureAlcohol); }}});
}

}  // namespace spile::plan
