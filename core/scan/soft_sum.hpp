#pragma once

#include "core/scan/redraw_modules.hpp"

#include <span>

namespace spile::scan {

/// Adds up how dark the modules of one symbol are over several frames, each of which alone says too
/// little. A frame that shows another symbol, or the same another way up, begins a new sum.
class SoftSum {
public:
    /// Take what one frame says, with the weight of how well its grid fits. False if the sum has
    /// only this frame.
    bool take(std::span<const float> softs, float weight);
    [[nodiscard]] std::span<const float> mean() const { return mean_; }
    void forget();

private:
    redraw::Softs sum_;
    redraw::Softs mean_;
    float weight_ = 0;
};

}  // namespace spile::scan
