#pragma once

#include "core/base/bytes.hpp"

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

// Internal to core/cellar: 16 bytes as 28 characters that people copy, for join codes and for the
// owner's key.
namespace spile::cellar {

inline constexpr std::size_t codeTextBytes = 16;
inline constexpr std::size_t codeTextLength = 28;  ///< 26 for 130 bits, and 2 to check them

/// Write `bytes` in the code alphabet, with two check characters over `before` and them: a pure
/// check system like those of ISO/IEC 7064, the number that the characters write modulo a prime
/// below 32 squared. It finds every wrong character and every swap of two neighbours.
///
/// Requires  codeTextBytes bytes, and `before` to be of the code alphabet.
[[nodiscard]] std::string codeText(ByteView bytes, std::string_view before = {});

/// The other way round. None if `text` is not exactly that, check included.
[[nodiscard]] std::optional<std::array<std::uint8_t, codeTextBytes>> parseCodeText(
    std::string_view text, std::string_view before = {});

/// "ABCD-EFGH-..."
[[nodiscard]] std::string inGroups(std::string_view plain);

}  // namespace spile::cellar
