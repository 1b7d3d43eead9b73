#include "core/cellar/join_code.hpp"

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

// A pure check system like those of ISO/IEC 7064: the number that the characters write, modulo a
// prime below 32 squared. It finds every wrong character and every swap of two neighbours.
std::string checkOf(std::string_view characters)
{
    constexpr std::size_t modulus = 1021;
    constexpr std::size_t radix = 32;
    std::size_t check = 0;
    for (const char c : characters) {
        check = (check * radix + scan::codeAlphabet.find(c)) % modulus;
    }
    check = check * radix * radix % modulus;  // as if two zeros followed, so that they count too
    return {scan::codeAlphabet[check / radix], scan::codeAlphabet[check % radix]};
}

}  // namespace

std::string joinCode(const DeviceId& device)
{
    std::string plain = toCharacters(device.bytes(), idCharacters);
    plain += checkOf(plain);
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
    if (!sound ||
        plain.substr(idCharacters) != checkOf(std::string_view(plain).substr(0, idCharacters))) {
        return fail(ErrorCode::Malformed, "join code", std::string(typed),
                    "the 28 characters that the device shows");
    }
    return device;
}

}  // namespace spile::cellar
