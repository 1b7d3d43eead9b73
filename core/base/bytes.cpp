#include "core/base/bytes.hpp"

#include <array>

namespace spile::inline base {

ByteView asBytes(std::string_view text)
{
    return {reinterpret_cast<const std::uint8_t*>(text.data()), text.size()};
}

std::string_view asText(ByteView bytes)
{
    return {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
}

std::string toHex(ByteView bytes)
{
    static constexpr std::string_view digits = "0123456789abcdef";
    std::string hex;
    hex.reserve(bytes.size() * 2);
    for (const std::uint8_t byte : bytes) {
        hex += digits[byte >> 4U];
        hex += digits[byte & 15U];
    }
    return hex;
}

static std::optional<std::uint8_t> hexDigit(char c)
{
    if (c >= '0' && c <= '9') {
        return static_cast<std::uint8_t>(c - '0');
    }
    if (c >= 'a' && c <= 'f') {
        return static_cast<std::uint8_t>(c - 'a' + 10);
    }
    if (c >= 'A' && c <= 'F') {
        return static_cast<std::uint8_t>(c - 'A' + 10);
    }
    return std::nullopt;
}

std::optional<Bytes> fromHex(std::string_view hex)
{
    if (hex.size() % 2 != 0) {
        return std::nullopt;
    }
    Bytes bytes;
    bytes.reserve(hex.size() / 2);
    for (std::size_t i = 0; i < hex.size(); i += 2) {
        const auto high = hexDigit(hex[i]);
        const auto low = hexDigit(hex[i + 1]);
        if (!high || !low) {
            return std::nullopt;
        }
        bytes.push_back(static_cast<std::uint8_t>(*high << 4U | *low));
    }
    return bytes;
}

// The well-formed sequences of RFC 3629, section 4: how many bytes follow a lead byte, and between
// which values the first of them must lie.
struct Utf8Lead {
    std::uint8_t first, last, trailing, low, high;
};
static constexpr std::array utf8Leads = {
    Utf8Lead{0x00, 0x7f, 0, 0, 0},       Utf8Lead{0xc2, 0xdf, 1, 0x80, 0xbf},
    Utf8Lead{0xe0, 0xe0, 2, 0xa0, 0xbf}, Utf8Lead{0xe1, 0xec, 2, 0x80, 0xbf},
    Utf8Lead{0xed, 0xed, 2, 0x80, 0x9f}, Utf8Lead{0xee, 0xef, 2, 0x80, 0xbf},
    Utf8Lead{0xf0, 0xf0, 3, 0x90, 0xbf}, Utf8Lead{0xf1, 0xf3, 3, 0x80, 0xbf},
    Utf8Lead{0xf4, 0xf4, 3, 0x80, 0x8f}};

// Whether `rest` begins with a whole sequence that `lead` describes.
static bool isUtf8Sequence(const Utf8Lead& lead, ByteView rest)
{
    if (rest[0] < lead.first || rest[0] > lead.last || rest.size() <= lead.trailing) {
        return false;
    }
    for (std::size_t i = 1; i <= lead.trailing; ++i) {
        const std::uint8_t low = i == 1 ? lead.low : 0x80;
        const std::uint8_t high = i == 1 ? lead.high : 0xbf;
        if (rest[i] < low || rest[i] > high) {
            return false;
        }
    }
    return true;
}

static std::size_t utf8SequenceLength(ByteView rest)
{
    for (const Utf8Lead& lead : utf8Leads) {
        if (isUtf8Sequence(lead, rest)) {
            return lead.trailing + std::size_t{1};
        }
    }
    return 0;
}

bool isUtf8(std::string_view text)
{
    ByteView rest = asBytes(text);
    while (!rest.empty()) {
        const std::size_t length = utf8SequenceLength(rest);
        if (length == 0) {
            return false;
        }
        rest = rest.subspan(length);
    }
    return true;
}

}  // namespace spile::inline base
