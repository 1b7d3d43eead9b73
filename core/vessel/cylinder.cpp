#include "core/vessel/cylinder.hpp"

#include <cmath>
#include <numbers>
#include <string>

namespace spile::vessel {

namespace {

Result<void> needPart(const char* name, double value)
{
    if (!std::isfinite(value)) {
        return fail(ErrorCode::NotFinite, name);
    }
    if (value < 0 || value > 1) {
        return fail(ErrorCode::OutOfRange, name, std::to_string(value), "0 to 1");
    }
    return {};
}

// The filled part of the circle for half the angle of its segment, 0 to pi.
double filledAt(double halfAngle)
{
    return (halfAngle - std::sin(halfAngle) * std::cos(halfAngle)) / std::numbers::pi;
}

}  // namespace

Result<double> cylinderFraction(double level)
{
    SPILE_TRY(needPart("level", level));
    return filledAt(std::acos(1 - 2 * level));
}

Result<double> cylinderLevel(double fraction)
{
    SPILE_TRY(needPart("fraction", fraction));
    // The upper half is the lower one upside down: near a full cylinder the fraction hardly changes
    // with the level, and halving would end too early.
    if (fraction > 0.5) {
        return 1 - *cylinderLevel(1 - fraction);
    }
    double low = 0;
    double high = std::numbers::pi / 2;
    constexpr int halvings = 60;  // more than the digits that a double has
    for (int i = 0; i < halvings; ++i) {
        const double middle = (low + high) / 2;
        (filledAt(middle) < fraction ? low : high) = middle;
    }
    return (1 - std::cos((low + high) / 2)) / 2;
}

}  // namespace spile::vessel
