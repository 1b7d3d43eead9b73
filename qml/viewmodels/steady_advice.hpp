#pragma once

#include "core/scan/live_reader.hpp"

#include <array>

namespace spile::viewmodels {

/// One advice out of what frame after frame asks for, that can be read before it changes: what most
/// frames of the last while wanted. The one that stands stays as long as a third still want it.
class SteadyAdvice {
public:
    /// A frame held no code, and this would help.
    void note(scan::Advice advice);
    /// Judge the frames since the last time, of which there may be none, and return what stands.
    scan::Advice judge();
    void forget() { *this = {}; }

private:
    [[nodiscard]] int wanting(scan::Advice advice) const
    {
        return wanting_[static_cast<std::size_t>(advice)];
    }

    std::array<int, 5> wanting_{};  // frames, by advice
    scan::Advice stands_ = scan::Advice::None;
};

}  // namespace spile::viewmodels
