#pragma once

#include "core/base/bytes.hpp"

#include <cstdint>

namespace spile::ledger {

/// CRC-32 of bytes that arrive in pieces: against accidents, not against people.
///
/// Source    ISO 3309 (polynomial 04C11DB7, reflected), as ZIP uses it; eight tables at once:
///           Kounavis and Berry, "A systematic approach to building high performance
///           software-based CRC generators", ISCC 2005.
class Crc32 {
public:
    void add(ByteView bytes);
    [[nodiscard]] std::uint32_t value() const { return ~state_; }

private:
    std::uint32_t state_ = 0xffffffff;
};

[[nodiscard]] std::uint32_t crc32(ByteView bytes);

}  // namespace spile::ledger
