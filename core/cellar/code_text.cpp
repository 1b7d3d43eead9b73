#include "core/cellar/code_text.hpp"

#include "core/scan/barrel_code.hpp"

namespace spile::cellar {

namespace {

constexpr unsigned bitsPerCharacter = 5;
constexpr std::size_t checkCharacters = 2;
constexpr std::size_t plainLength = codeTextLength - checkCharacters;
constexpr std::size_t groupSize = 4;

// The bits of `bytes` in groups of five, the first bit first; zeros after the end.
std::string toCharacters(ByteView bytes)
{
    std::string text;
    text.reserve(codeTextLength);  // a secret leaves no copies behind
    for (std::size_t i = 0; i < plainLength; ++i) {
        unsigned value = 0;
        for (std::size_t bit = i * bitsPerCharacter; bit < (i + 1) * bitsPerCharacter; ++bit) {
            const unsigned byte = bit / 8 < bytes.size() ? bytes[bit / 8] : 0U;
            value = value << 1U | (byte >> (7 - bit % 8) & 1U);
        }
        text += scan::codeAlphabet[value];
    }
    return text;
}

std::array<char, checkCharacters> checkOf(std::string_view before, std::string_view characters)
{
    constexpr std::size_t modulus = 1021;
    constexpr std::size_t radix = 32;
    std::size_t check = 0;
    for (const std::string_view part : {before, characters}) {
        for (const char c : part) {
            check = (check * radix + scan::codeAlphabet.find(c)) % modulus;
        }
    }
    check = check * radix * radix % modulus;  // as if two zeros followed, so that they count too
    return {scan::codeAlphabet[check / radix], scan::codeAlphabet[check % radix]};
}

bool isOfAlphabet(std::string_view text)
{
    return text.find_first_not_of(scan::codeAlphabet) == std::string_view::npos;
}

}  // namespace

std::string codeText(ByteView bytes, std::string_view before)
{
    std::string text = toCharacters(bytes);
    const auto check = checkOf(before, text);
    text.append(check.data(), check.size());
    return text;
}

std::optional<std::array<std::uint8_t, codeTextBytes>> parseCodeText(std::string_view text,
                                                                     std::string_view before)
{
    if (text.size() != codeTextLength || !isOfAlphabet(text) || !isOfAlphabet(before)) {
        return std::nullopt;
    }
    std::array<std::uint8_t, codeTextBytes> bytes{};
    for (std::size_t bit = 0; bit < plainLength * bitsPerCharacter; ++bit) {
        const std::size_t value = scan::codeAlphabet.find(text[bit / bitsPerCharacter]);
        const bool one = (value >> (bitsPerCharacter - 1 - bit % bitsPerCharacter) & 1U) != 0;
        if (bit / 8 < bytes.size()) {
            bytes[bit / 8] =
                static_cast<std::uint8_t>(bytes[bit / 8] | (one ? 0x80U >> (bit % 8) : 0U));
        } else if (one) {
            return std::nullopt;
        }
    }
    const auto check = checkOf(before, text.substr(0, plainLength));
    return text.substr(plainLength) == std::string_view(check.data(), check.size())
               ? std::optional(bytes)
               : std::nullopt;
}

std::string inGroups(std::string_view plain)
{
    std::string grouped;
    grouped.reserve(plain.size() + plain.size() / groupSize);
    for (std::size_t i = 0; i < plain.size(); ++i) {
        if (i > 0 && i % groupSize == 0) {
            grouped += '-';
        }
        grouped += plain[i];
    }
    return grouped;
}

}  // namespace spile::cellar
