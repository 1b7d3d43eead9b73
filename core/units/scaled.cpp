#include "core/units/scaled.hpp"

#include <cmath>
#include <string>

namespace spile::inline units {

Result<std::int64_t> toScaled(double value, std::string_view field)
{
    constexpr double exactIntegers = 9007199254740992.0;  // 2^53
    if (!std::isfinite(value)) {
        return fail(ErrorCode::NotFinite, std::string(field));
    }
    if (std::fabs(value) > exactIntegers) {
        return fail(ErrorCode::OutOfRange, std::string(field), std::to_string(value), "+-2^53");
    }
    return std::llround(value);
}

}  // namespace spile::inline units
