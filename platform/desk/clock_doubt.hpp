#pragma once

#include "core/cellar/clocks.hpp"

#include <string>
#include <vector>

namespace spile::desk {

/// "1 d 2 h 3 min", without a sign.
[[nodiscard]] std::string span(Milliseconds time);

/// What makes this machine's clock doubtful, and what a person can do about it.
struct SaidDoubt {
    std::string says;    // one line, a sentence
    std::string remedy;  // in lines; empty: nothing but setting the clock
};
[[nodiscard]] std::vector<SaidDoubt> doubtsSaid(const cellar::ClockDoubt& doubt);

}  // namespace spile::desk
