#pragma once

#include "core/base/random.hpp"

namespace spile::system {

/// The entropy of the system's kernel. Ends the program if there is none: a key made of anything
/// else would be worse.
///
/// Threads   any number.
class SystemRandom final : public Random {
public:
    void fill(std::span<std::uint8_t> bytes) override;
};

}  // namespace spile::system
