#include "core/cellar/folding.hpp"

#include <algorithm>
#include <array>
#include <cstdint>

namespace spile::cellar {

namespace {

constexpr std::uint32_t firstFolded = 0xc0;
constexpr std::uint32_t combiningFirst = 0x300;
constexpr std::uint32_t combiningLast = 0x36f;

// U+00C0 to U+017F, eight a line; empty: the character stays as it is.
constexpr std::array<std::string_view, 192> bases = {
    "a", "a", "a",  "a",  "a", "a", "ae", "c",   // À
    "e", "e", "e",  "e",  "i", "i", "i",  "i",   // È
    "d", "n", "o",  "o",  "o", "o", "o",  "",    // Ð ... ×
    "o", "u", "u",  "u",  "u", "y", "th", "ss",  // Ø
    "a", "a", "a",  "a",  "a", "a", "ae", "c",   // à
    "e", "e", "e",  "e",  "i", "i", "i",  "i",   // è
    "d", "n", "o",  "o",  "o", "o", "o",  "",    // ð ... ÷
    "o", "u", "u",  "u",  "u", "y", "th", "y",   // ø
    "a", "a", "a",  "a",  "a", "a", "c",  "c",   // Ā
    "c", "c", "c",  "c",  "c", "c", "d",  "d",   // Ĉ
    "d", "d", "e",  "e",  "e", "e", "e",  "e",   // Đ
    "e", "e", "e",  "e",  "g", "g", "g",  "g",   // Ę
    "g", "g", "g",  "g",  "h", "h", "h",  "h",   // Ġ
    "i", "i", "i",  "i",  "i", "i", "i",  "i",   // Ĩ
    "i", "i", "ij", "ij", "j", "j", "k",  "k",   // İ
    "k", "l", "l",  "l",  "l", "l", "l",  "l",   // ĸ
    "l", "l", "l",  "n",  "n", "n", "n",  "n",   // ŀ
    "n", "n", "n",  "n",  "o", "o", "o",  "o",   // ň
    "o", "o", "oe", "oe", "r", "r", "r",  "r",   // Ő
    "r", "r", "s",  "s",  "s", "s", "s",  "s",   // Ř
    "s", "s", "t",  "t",  "t", "t", "t",  "t",   // Š
    "u", "u", "u",  "u",  "u", "u", "u",  "u",   // Ũ
    "u", "u", "u",  "u",  "w", "w", "y",  "y",   // Ű
    "y", "z", "z",  "z",  "z", "z", "z",  "s",   // Ÿ ... ſ
};

bool isDigit(char c) { return c >= '0' && c <= '9'; }

char lowered(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

// The character that a UTF-8 sequence of two bytes stands for; none if there is none at `at`.
// All that is folded has two.
std::uint32_t twoByteCharacter(std::string_view text, std::size_t at)
{
    const auto lead = static_cast<unsigned char>(text[at]);
    if ((lead & 0xe0U) != 0xc0U || at + 1 >= text.size()) {
        return 0;
    }
    const auto next = static_cast<unsigned char>(text[at + 1]);
    return (next & 0xc0U) == 0x80U ? ((lead & 0x1fU) << 6U) | (next & 0x3fU) : 0;
}

}  // namespace

std::string folded(std::string_view text)
{
    std::string result;
    for (std::size_t at = 0; at < text.size();) {
        const std::uint32_t character = twoByteCharacter(text, at);
        if (character == 0) {
            result += lowered(text[at++]);
            continue;
        }
        const bool known = character >= firstFolded && character < firstFolded + bases.size();
        const std::string_view base = known ? bases.at(character - firstFolded) : "";
        const bool combining = character >= combiningFirst && character <= combiningLast;
        if (!combining) {
            result += base.empty() ? text.substr(at, 2) : base;
        }
        at += 2;
    }
    return result;
}

std::string naturalKey(std::string_view mark, std::string_view code)
{
    // Before every character that a person types, so that "Rum" stands before "Rum 3".
    constexpr char end = '\x01';
    const std::string letters = folded(mark);
    std::string key;
    for (std::size_t at = 0; at < letters.size();) {
        if (!isDigit(letters[at])) {
            key += letters[at++];
            continue;
        }
        const auto past = std::find_if_not(letters.begin() + static_cast<std::ptrdiff_t>(at),
                                           letters.end(), isDigit);
        std::string digits(letters.begin() + static_cast<std::ptrdiff_t>(at), past);
        at += digits.size();
        digits.erase(0, std::min(digits.find_first_not_of('0'), digits.size() - 1));
        // A number begins with how many digits it has; all numbers stand where digits do.
        key += '0';
        key += static_cast<char>('A' + std::min<std::size_t>(digits.size(), 25));
        key += digits;
    }
    return key + end + std::string(code);
}

}  // namespace spile::cellar
