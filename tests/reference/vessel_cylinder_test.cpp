// Source: plane geometry. The area below a level is here the integral of the chord, by Simpson's
// rule, which shares nothing with the formula of the segment. Values marked "computed" were found
// by it.
#include "core/vessel/cylinder.hpp"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace spile::vessel {

namespace {

// Part of a circle of radius 1 below the depth h: with x = 1 - cos t the chord is smooth.
double integrated(double depth)
{
    const double last = std::acos(1 - depth);
    constexpr int steps = 2000;
    const double step = last / steps;
    double sum = 0;
    for (int i = 0; i <= steps; ++i) {
        const double sine = std::sin(i * step);
        const int weight = i == 0 || i == steps ? 1 : i % 2 == 0 ? 2 : 4;
        sum += weight * 2 * sine * sine;
    }
    return sum * step / 3 / std::numbers::pi;
}

}  // namespace

TEST(Cylinder, IsEmptyHalfAndFullWhereItMustBe)
{
    EXPECT_DOUBLE_EQ(*cylinderFraction(0), 0);
    EXPECT_DOUBLE_EQ(*cylinderFraction(0.5), 0.5);
    EXPECT_DOUBLE_EQ(*cylinderFraction(1), 1);
    EXPECT_NEAR(*cylinderLevel(0), 0, 1e-15);
    EXPECT_DOUBLE_EQ(*cylinderLevel(0.5), 0.5);
    EXPECT_DOUBLE_EQ(*cylinderLevel(1), 1);
}

TEST(Cylinder, AgreesWithTheIntegralOfTheChord)
{
    for (int i = 0; i <= 100; ++i) {
        const double level = i / 100.0;
        EXPECT_NEAR(*cylinderFraction(level), integrated(2 * level), 1e-12) << level;
    }
}

TEST(Cylinder, HoldsAQuarterAtTheQuarterSegment)
{
    // Computed: the depth, in radii, at which a quarter of the circle lies below.
    double low = 0;
    double high = 1;
    for (int i = 0; i < 60; ++i) {
        const double middle = (low + high) / 2;
        (integrated(middle) < 0.25 ? low : high) = middle;
    }
    EXPECT_NEAR(low, 0.5960, 5e-5);
    EXPECT_NEAR(2 * *cylinderLevel(0.25), low, 1e-12);
    EXPECT_NEAR(2 * *cylinderLevel(0.75), 2 - low, 1e-12);
}

TEST(Cylinder, RefusesWhatIsNoPartOfAWhole)
{
    for (const auto& convert : {cylinderLevel, cylinderFraction}) {
        EXPECT_EQ(convert(-0.001).error().code, ErrorCode::OutOfRange);
        EXPECT_EQ(convert(1.001).error().code, ErrorCode::OutOfRange);
        EXPECT_EQ(convert(std::nan("")).error().code, ErrorCode::NotFinite);
        EXPECT_EQ(convert(INFINITY).error().code, ErrorCode::NotFinite);
    }
}

}  // namespace spile::vessel
