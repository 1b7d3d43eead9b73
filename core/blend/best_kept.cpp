#include "core/blend/best_kept.hpp"

#include <algorithm>
#include <limits>

namespace spile::blend {

static bool isNearer(const Blend& a, const Blend& b) { return a.distance < b.distance; }

static bool isOfSameBarrels(const Blend& a, const Blend& b)
{
    return std::equal(a.shares.begin(), a.shares.end(), b.shares.begin(), b.shares.end(),
                      [](const Share& x, const Share& y) { return x.barrel == y.barrel; });
}

BestKept::BestKept(std::size_t most) : most_(most), limit_(std::numeric_limits<double>::infinity())
{
}

double BestKept::best() const
{
    return kept_.empty() ? std::numeric_limits<double>::infinity() : kept_.front().distance;
}

bool BestKept::offer(Blend blend)
{
    if (!(blend.distance < limit_)) {
        return false;
    }
    const auto same = std::find_if(kept_.begin(), kept_.end(),
                                   [&](const Blend& one) { return isOfSameBarrels(one, blend); });
    if (same != kept_.end()) {
        if (same->distance <= blend.distance) {
            return false;
        }
        kept_.erase(same);
    }
    const bool isBest = blend.distance < best();
    kept_.insert(std::upper_bound(kept_.begin(), kept_.end(), blend, isNearer), std::move(blend));
    if (kept_.size() > most_) {
        kept_.pop_back();
    }
    if (kept_.size() == most_) {
        limit_ = kept_.back().distance;
    }
    return isBest;
}

std::vector<Blend> BestKept::taken() && { return std::move(kept_); }

}  // namespace spile::blend
