#include "core/vessel/cylinder.hpp"

#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace spile::vessel {

namespace {

rc::Gen<double> part()
{
    constexpr int whole = 1'000'000'000;
    return rc::gen::map(rc::gen::inRange(0, whole + 1),
                        [](int n) { return static_cast<double>(n) / whole; });
}

}  // namespace

RC_GTEST_PROP(CylinderLevel, IsTheInverseOfTheFraction, ())
{
    const double fraction = *part();
    RC_ASSERT(std::abs(*cylinderFraction(*cylinderLevel(fraction)) - fraction) < 1e-13);
    const double level = *part();
    // Near empty and full a volume says less of the level: its last digit is 1e-11 of the depth.
    RC_ASSERT(std::abs(*cylinderLevel(*cylinderFraction(level)) - level) < 1e-10);
}

RC_GTEST_PROP(CylinderLevel, RisesWithTheFractionAndIsTheSameUpsideDown, ())
{
    const double a = *part();
    const double b = *part();
    RC_PRE(a < b);
    RC_ASSERT(*cylinderLevel(a) < *cylinderLevel(b));
    RC_ASSERT(std::abs(*cylinderLevel(a) + *cylinderLevel(1 - a) - 1) < 1e-13);
}

}  // namespace spile::vessel
