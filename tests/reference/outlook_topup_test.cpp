// Source: worked by hand from the saturating curve: rate 0.1/month from 1 to 7, and 15 % replaced
// by beer of level 1 after ten months; and from van 't Hoff's rule with a factor of 2 for 10 K.
#include "core/outlook/course.hpp"
#include "core/wood/effective_age.hpp"

#include <array>
#include <gtest/gtest.h>
#include <vector>

namespace spile::outlook {

namespace {

double levelAt(double age, bool recovers)
{
    const Shape shape{Family::Saturating, 0.1, 0, 0, {}};
    const std::array replaced = {Replaced{10, 0.15}};
    const auto row = courseRow(shape, recovers, replaced, age);
    return row[0] * 1 + row[1] * 7 + row[2] * 1;
}

}  // namespace

TEST(TopUp, ThinsTheLevelAndTheWoodGoesOn)
{
    for (const bool recovers : {false, true}) {
        EXPECT_NEAR(levelAt(10, recovers), 4.79272, 5e-6);
        EXPECT_NEAR(levelAt(10 + 1e-9, recovers), 4.22381, 5e-6);
    }
    EXPECT_NEAR(levelAt(14, true), 5.13907, 5e-6);
    EXPECT_NEAR(levelAt(14, false), 4.95151, 5e-6);
}

TEST(EffectiveAge, OfThirtyDaysTenKelvinOff)
{
    std::array<double, 30> ages = {};
    const std::vector<Temperature> warm(30, celsius(25));
    const std::vector<Temperature> cool(30, celsius(5));
    wood::effectiveAges(warm, ages);
    EXPECT_NEAR(ages.back() * wood::daysOfMonth, 60, 1e-9);
    wood::effectiveAges(cool, ages);
    EXPECT_NEAR(ages.back() * wood::daysOfMonth, 15, 1e-9);
}

}  // namespace spile::outlook
