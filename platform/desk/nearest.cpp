#include "platform/desk/nearest.hpp"

#include <algorithm>
#include <numeric>
#include <string_view>

namespace spile::desk {

namespace {

// Letters to change, add or take away from one to the other (Levenshtein 1965).
std::size_t distance(std::string_view a, std::string_view b)
{
    std::vector<std::size_t> row(b.size() + 1);
    std::iota(row.begin(), row.end(), std::size_t{0});
    for (std::size_t i = 0; i < a.size(); ++i) {
        std::size_t diagonal = row[0];
        row[0] = i + 1;
        for (std::size_t j = 0; j < b.size(); ++j) {
            const std::size_t above = row[j + 1];
            row[j + 1] = std::min({above + 1, row[j] + 1, diagonal + (a[i] == b[j] ? 0 : 1)});
            diagonal = above;
        }
    }
    return row.back();
}

}  // namespace

std::string nearest(const std::string& name, std::vector<std::string> known)
{
    constexpr std::size_t most = 3;
    constexpr std::size_t longest = 64;  // of a name that is worth comparing
    const std::string_view typed = std::string_view(name).substr(0, longest);
    std::stable_sort(known.begin(), known.end(), [&](const std::string& a, const std::string& b) {
        return distance(typed, a) < distance(typed, b);
    });
    std::string text;
    for (std::size_t i = 0; i < std::min(most, known.size()); ++i) {
        text += (i == 0 ? "" : ", ") + known[i];
    }
    return text;
}

}  // namespace spile::desk
