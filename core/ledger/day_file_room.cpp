#include "core/ledger/day_file_room.hpp"

#include <algorithm>

namespace spile::ledger {

void askForSome(std::vector<Sha256>& missing, std::size_t most, std::uint64_t number)
{
    std::sort(missing.begin(), missing.end());
    if (missing.size() <= most) {
        return;
    }
    // Steps of the golden section round a circle leave no gap for long, nor does every second or
    // third of them, as one of several receivers gets: the three-distance theorem.
    constexpr std::uint64_t goldenSection = 0x9e3779b97f4a7c15;  // of 2^64
    const std::uint64_t turned = (number * goldenSection) >> 32U;
    const auto from = static_cast<std::ptrdiff_t>((turned * missing.size()) >> 32U);
    std::rotate(missing.begin(), missing.begin() + from, missing.end());
    missing.resize(most);
    std::sort(missing.begin(), missing.end());
}

}  // namespace spile::ledger
