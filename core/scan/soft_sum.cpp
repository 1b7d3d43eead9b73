#include "core/scan/soft_sum.hpp"

#include <cmath>
#include <numeric>

namespace spile::scan {

// Two looks at one symbol agree at least so well; two of different symbols do hardly, though they
// have a fourth of their modules in common.
static constexpr float leastLikeness = 0.5F;

static float likeness(std::span<const float> a, std::span<const float> b)
{
    const auto product = [](std::span<const float> x, std::span<const float> y) {
        return std::inner_product(x.begin(), x.end(), y.begin(), 0.0F);
    };
    const float lengths = std::sqrt(product(a, a) * product(b, b));
    return lengths > 0 ? product(a, b) / lengths : 0;
}

bool SoftSum::take(std::span<const float> softs, float weight)
{
    const bool goesOn = sum_.size() == softs.size() && likeness(sum_, softs) >= leastLikeness;
    if (!goesOn) {
        sum_.assign(softs.size(), 0);
        weight_ = 0;
    }
    weight_ += weight;
    mean_.resize(softs.size());
    for (std::size_t i = 0; i < softs.size(); ++i) {
        sum_[i] += weight * softs[i];
        mean_[i] = sum_[i] / weight_;
    }
    return goesOn;
}

void SoftSum::forget()
{
    sum_.clear();
    weight_ = 0;
}

}  // namespace spile::scan
