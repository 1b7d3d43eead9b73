#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace spile::inline base {

using Bytes = std::vector<std::uint8_t>;
using ByteView = std::span<const std::uint8_t>;

/// Look at the characters of `text` as bytes; valid as long as `text` is.
[[nodiscard]] ByteView asBytes(std::string_view text);

/// Look at `bytes` as characters; valid as long as `bytes` is.
[[nodiscard]] std::string_view asText(ByteView bytes);

/// Return `bytes` in lower-case hexadecimal, two characters each.
[[nodiscard]] std::string toHex(ByteView bytes);

/// Return the bytes that `hex` writes; none if it has an odd length or another character.
[[nodiscard]] std::optional<Bytes> fromHex(std::string_view hex);

/// Whether `text` is well-formed UTF-8 (RFC 3629: no surrogates, shortest form, up to U+10FFFF).
[[nodiscard]] bool isUtf8(std::string_view text);

}  // namespace spile::inline base
