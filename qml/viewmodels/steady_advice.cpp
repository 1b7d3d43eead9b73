#include "qml/viewmodels/steady_advice.hpp"

#include <algorithm>
#include <numeric>

namespace spile::viewmodels {

void SteadyAdvice::note(scan::Advice advice) { ++wanting_[static_cast<std::size_t>(advice)]; }

scan::Advice SteadyAdvice::judge()
{
    const int frames = std::accumulate(wanting_.begin(), wanting_.end(), 0);
    if (frames == 0) {
        return stands_;
    }
    const bool stays = stands_ != scan::Advice::None && 3 * wanting(stands_) >= frames;
    if (!stays) {
        const auto most = std::max_element(wanting_.begin() + 1, wanting_.end());
        stands_ = 2 * *most > frames ? static_cast<scan::Advice>(most - wanting_.begin())
                                     : scan::Advice::None;
    }
    wanting_ = {};
    return stands_;
}

}  // namespace spile::viewmodels
