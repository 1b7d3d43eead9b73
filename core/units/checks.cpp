#include "core/units/checks.hpp"

#include <array>
#include <charconv>

namespace spile::inline units {

namespace {

std::string shortText(double value)
{
    std::array<char, 32> text{};
    // Not printf, which would follow the locale's decimal sign.
    const auto end =
        std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::general, 6);
    return {text.data(), end.ptr};
}

std::string limitText(double least, double most)
{
    if (std::isinf(most)) {
        return "at least " + shortText(least);
    }
    if (std::isinf(least)) {
        return "at most " + shortText(most);
    }
    return shortText(least) + " to " + shortText(most);
}

}  // namespace

tl::unexpected<Error> failBetween(std::string_view name, double value, double least, double most)
{
    if (!std::isfinite(value)) {
        return fail(ErrorCode::NotFinite, std::string(name));
    }
    return fail(ErrorCode::OutOfRange, std::string(name), shortText(value), limitText(least, most));
}

}  // namespace spile::inline units
