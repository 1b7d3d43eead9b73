#pragma once

#include "core/base/job.hpp"
#include "core/blend/best_kept.hpp"
#include "core/blend/two_parts.hpp"

#include <functional>
#include <vector>

namespace spile::blend {

/// Looks at every set of barrels, those that begin with the first barrel first.
class Enumeration {
public:
    /// A set worth keeping by its sums, with the share of each barrel.
    using Take = std::function<void(const std::vector<std::size_t>& barrels,
                                    const std::vector<double>& shares)>;

    /// `limit` is asked for what a set must beat.
    Enumeration(const Sums& sums, const BestKept& kept, Take take, const Job& job);

    /// False if the job stopped it.
    bool run();
    /// The first barrel of the sets that were being looked at last: those before have been done.
    [[nodiscard]] std::size_t firstOpen() const { return firstOpen_; }

private:
    struct Level {
        SetSums set;
        std::vector<double> pairs;  // of each barrel, with those of the set
    };

    void visit(std::size_t level, std::size_t begin);
    void lookAtWhole(const Level& at, std::size_t begin);
    void lookAtPart(const Level& at);
    void offerPart(const Level& at, std::size_t barrel);
    void lookAtTwoParts(const Level& at);
    void offerTwoParts(const Level& at, std::size_t first, std::size_t second);
    void offerWhole(const Level& at, std::size_t barrel);
    void count(std::size_t sets);
    [[nodiscard]] bool isIn(std::size_t barrel) const;

    const Sums& sums_;
    const BestKept& kept_;
    Take take_;
    const Job& job_;
    std::vector<Level> levels_;
    std::vector<std::size_t> in_;
    double most_ = 0;  // that all sets come to
    std::uint64_t done_ = 0, told_ = 0;
    std::size_t firstOpen_ = 0;
    bool stopped_ = false;
};

}  // namespace spile::blend
