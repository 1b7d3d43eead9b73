// Source: OIML R 22, International alcoholometric tables (1975), general formula; the same in
// Council Directive 76/766/EEC. The points of r22_table.csv were made by evaluating it outside this
// project, and the sums of the coefficients by adding them there: a slip in a digit of one shows.
#include "core/liquor/density_curve.hpp"
#include "core/liquor/ethanol_water.hpp"
#include "tests/support/check_points.hpp"

#include <gtest/gtest.h>
#include <numeric>

namespace spile::liquor {

namespace {

template <class Array>
double sumOf(const Array& array)
{
    return std::accumulate(array.begin(), array.end(), 0.0);
}

double massFraction(const support::Point& point)
{
    return support::valueOf(massFractionByVolume(point.input.at("abv_percent") / 100));
}

double densityAt(double byMass, const support::Point& point)
{
    return support::valueOf(
        densityByMass(byMass, celsius(point.input.at("temp_c"))).map([](Density density) {
            return density.si();
        }));
}

}  // namespace

TEST(R22, HasTheCoefficientsSums)
{
    // Computed; tolerances of half the last digit given, and of the terms' own rounding.
    EXPECT_NEAR(sumOf(r22::a), 789.2391232999, 5e-10);
    EXPECT_NEAR(sumOf(r22::b), -0.211417636694, 5e-13);
    EXPECT_NEAR(sumOf(r22::c1), -0.648923082889, 5e-11);
    EXPECT_NEAR(sumOf(r22::c2), 0.00490189903, 5e-12);
    EXPECT_NEAR(sumOf(r22::c3), -3.813296252e-5, 5e-14);
    EXPECT_NEAR(sumOf(r22::c4), 3.115646253e-7, 5e-17);
    EXPECT_NEAR(sumOf(r22::c5), -1.442461471e-8, 5e-18);
}

TEST(R22, MatchesTheTable)
{
    support::checkPoints(
        "r22_table.csv",
        {{"mass_percent", [](const support::Point& point) { return 100 * massFraction(point); }},
         {"density_kg_m3",
          [](const support::Point& point) { return densityAt(massFraction(point), point); }},
         {"density_by_mass_kg_m3",
          [](const support::Point& point) { return densityAt(point.input.at("by_mass"), point); }},
         {"abv_percent_by_density", [](const support::Point& point) {
              const auto byMass =
                  massFractionByDensity(kilogramsPerCubicMetre(point.input.at("density_kg_m3")),
                                        celsius(point.input.at("temp_c")));
              return 100 * support::valueOf(byMass.and_then(volumeFractionByMass));
          }}});
}

TEST(R22, FallsStrictlyWithStrengthFromZeroToFortyDegrees)
{
    // What makes the inverse one: computed over a fine net.
    for (int quarter = 0; quarter <= 160; ++quarter) {
        const double t = quarter / 4.0;
        const DensityCurve curve(t);
        for (int i = 0; i <= 1000; ++i) {
            EXPECT_LT(curve.withSlope(i / 1000.0).slope, 0) << t << " °C, " << i;
        }
    }
}

TEST(R22, IsTheSameOnBothPathsAndAtItsEnds)
{
    EXPECT_EQ(waterDensityAt20, 998.20123);
    EXPECT_NEAR(ethanolDensityAt20, 789.2391233, 1e-7);
    for (int i = 0; i <= 100; ++i) {
        EXPECT_EQ(densityAt20(i / 100.0), densityByMass(i / 100.0, celsius(20))->si());
    }
    for (const double t : {-20.0, 0.0, 20.0, 40.0}) {
        EXPECT_TRUE(densityByMass(0.5, celsius(t))) << t;
    }
    EXPECT_EQ(*massFractionByVolume(0), 0);
    EXPECT_DOUBLE_EQ(*massFractionByVolume(1), 1);
    for (const double t : {0.0, 4.0, 20.0, 40.0}) {
        EXPECT_NEAR(*massFractionByDensity(*densityByMass(0, celsius(t)), celsius(t)), 0, 1e-15);
        EXPECT_NEAR(*massFractionByDensity(*densityByMass(1, celsius(t)), celsius(t)), 1, 1e-15);
    }
}

}  // namespace spile::liquor
