#include "core/panel/serving_order.hpp"

#include <algorithm>

namespace spile::panel {

std::vector<int> williamsRow(int n, int session)
{
    std::vector<int> row;
    if (n <= 0) {
        return row;
    }
    const bool odd = n % 2 != 0;
    const int rows = odd ? 2 * n : n;
    const int number = (session % rows + rows) % rows;
    // The first row goes 0, 1, n - 1, 2, n - 2, ...; each further row adds one to all of it.
    for (int place = 0; place < n; ++place) {
        const int first = place % 2 == 0 ? (n - place / 2) % n : place / 2 + 1;
        row.push_back((first + number) % n);
    }
    // With an odd n only the rows together with their mirrors are balanced.
    if (odd && number >= n) {
        std::reverse(row.begin(), row.end());
    }
    return row;
}

}  // namespace spile::panel
