#pragma once

#include "core/base/random.hpp"
#include "core/blend/enumeration.hpp"

namespace spile::blend {

/// Good sets soon: from random sets on, one barrel is added, left out or exchanged as long as that
/// brings the set nearer, first to the bounds and then to the target.
class Exchange {
public:
    Exchange(const Sums& sums, Enumeration::Take take) : sums_(sums), take_(std::move(take)) {}

    void run(int starts, Random& random);
    /// The whole barrels of the set that comes nearest to the bounds, of all that were met.
    [[nodiscard]] const std::vector<std::size_t>& nearest() const { return nearest_; }

private:
    struct Worth {
        double broken = 0;  // bounds, each in its own measure
        double distance = 0;
        friend auto operator<=>(const Worth&, const Worth&) = default;
    };
    [[nodiscard]] Worth worthOf(const std::vector<std::size_t>& set) const;
    bool improve(std::vector<std::size_t>& set, Worth& worth) const;
    void keep(const std::vector<std::size_t>& set, const Worth& worth);
    void keepTwoParts(const std::vector<std::size_t>& set, std::size_t first, std::size_t second);

    const Sums& sums_;
    Enumeration::Take take_;
    std::vector<std::size_t> nearest_;
    double leastBroken_ = -1;
};

/// By how much a set with these sums breaks its bounds, in parts of its amount; 0 if it keeps them.
[[nodiscard]] double brokenBy(const Sums& sums, const SetSums& set);

}  // namespace spile::blend
