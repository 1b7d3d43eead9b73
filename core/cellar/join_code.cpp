#include "core/cellar/join_code.hpp"

#include "core/base/sha256.hpp"
#include "core/scan/barrel_code.hpp"

#include <array>

namespace spile::cellar {

namespace {

constexpr unsigned bitsPerCharacter = 5;
constexpr std::size_t idCharacters = 26;  // 130 bits for 128
constexpr std::size_t checkCharacters = 2;
constexpr std::size_t groupSize = 4;

// The bits of `bytes` in groups of five, the first bit first; zeros after the end.
std::string toCharacters(ByteView bytes, std::size_t count)
{
    std::string text;
    for (std::size_t i = 0; i < count; ++i) {
        unsigned value = 0;
        for (std::size_t bit = i * bitsPerCharacter; bit < (i + 1) * bitsPerCharacter; ++bit) {
            const unsigned byte = bit / 8 < bytes.size() ? bytes[bit / 8] : 0U;
            value = value << 1U | (byte >> (7 - bit % 8) & 1U);
        }
        text += scan::codeAlphabet[value];
    }
    return text;
}

std::string checkOf(const DeviceId& device)
{
    return toCharacters(sha256(device.bytes()).bytes(), checkCharacters);
}

}  // namespace

std::string joinCode(const DeviceId& device)
{
    const std::string plain = toCharacters(device.bytes(), idCharacters) + checkOf(device);
    std::string grouped;
    for (std::size_t i = 0; i < plain.size(); ++i) {
        if (i > 0 && i % groupSize == 0) {
            grouped += '-';
        }
        grouped += plain[i];
    }
    return grouped;
}

Result<DeviceId> parseJoinCode(std::string_view typed)
{
    const std::string plain = scan::tidied(typed);
    std::array<std::uint8_t, DeviceId::size> bytes{};
    bool sound = plain.size() == idCharacters + checkCharacters;
    for (std::size_t i = 0; sound && i < idCharacters; ++i) {
        const std::size_t value = scan::codeAlphabet.find(plain[i]);
        sound = value != std::string_view::npos;
        for (std::size_t k = 0; sound && k < bitsPerCharacter; ++k) {
            const std::size_t bit = i * bitsPerCharacter + k;
            const bool one = (value >> (bitsPerCharacter - 1 - k) & 1U) != 0;
            if (bit / 8 < bytes.size()) {
                bytes[bit / 8] =
                    static_cast<std::uint8_t>(bytes[bit / 8] | (one ? 0x80U >> (bit % 8) : 0U));
            } else {
                sound = !one;
            }
        }
    }
    const DeviceId device(bytes);
    if (!sound || plain.substr(idCharacters) != checkOf(device)) {
        return fail(ErrorCode::Malformed, "join code", std::string(typed),
                    "the 28 characters that the device shows");
    }
    return device;
}

}  // namespace spile::cellar
