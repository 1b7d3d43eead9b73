#include "core/labels/decimal.hpp"

#include <array>
#include <charconv>
#include <cmath>

namespace spile::labels {

std::string number(double value)
{
    constexpr int places = 4;
    constexpr double parts = 1e4;
    value = std::round(value * parts) / parts + 0.0;  // no "-0"
    std::array<char, 32> text{};
    const auto written = std::to_chars(text.data(), text.data() + text.size(), value,
                                       std::chars_format::fixed, places);
    std::string result(text.data(), written.ptr);
    result.erase(result.find_last_not_of('0') + 1);
    if (result.back() == '.') {
        result.pop_back();
    }
    return result;
}

}  // namespace spile::labels
