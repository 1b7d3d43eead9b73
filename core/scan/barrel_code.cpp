#include "core/scan/barrel_code.hpp"

#include <algorithm>
#include <cstddef>

namespace spile::scan {

static constexpr std::string_view labelPrefix = "S1";
static constexpr std::size_t markLength = 4;
static constexpr std::size_t codeLength = 6;
static constexpr std::size_t labelLength = labelPrefix.size() + markLength + codeLength;

// The 36 characters of the check, in the standard's order: a character's value is its place.
static constexpr std::string_view checkAlphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

static bool isOfAlphabet(std::string_view text)
{
    return text.find_first_not_of(codeAlphabet) == std::string_view::npos;
}

static std::string randomText(std::size_t length, Random& random)
{
    std::string text;
    for (std::size_t i = 0; i < length; ++i) {
        text += codeAlphabet[random.below(static_cast<std::uint32_t>(codeAlphabet.size()))];
    }
    return text;
}

char checkCharacter(std::string_view text)
{
    // ISO/IEC 7064, hybrid system MOD 37,36: the product runs modulo 37, the sum modulo 36 with 36
    // standing for 0, and the sum with the check character must leave 1.
    constexpr std::size_t m = 36;
    std::size_t product = m;
    for (const char character : text) {
        std::size_t sum = (product + checkAlphabet.find(character)) % m;
        if (sum == 0) {
            sum = m;
        }
        product = sum * 2 % (m + 1);
    }
    return checkAlphabet[(m + 1 - product) % m];
}

std::string randomMark(Random& random) { return randomText(markLength, random); }

std::string randomCode(std::string_view mark, Random& random)
{
    for (;;) {
        const std::string serial = randomText(codeLength - 1, random);
        const char check = checkCharacter(std::string(mark) + serial);
        if (codeAlphabet.find(check) != std::string_view::npos) {
            return serial + check;
        }
    }
}

bool isMark(std::string_view text) { return text.size() == markLength && isOfAlphabet(text); }

bool isCode(std::string_view mark, std::string_view code)
{
    return isMark(mark) && code.size() == codeLength && isOfAlphabet(code) &&
           checkCharacter(std::string(mark).append(code.substr(0, codeLength - 1))) == code.back();
}

std::string shown(std::string_view code)
{
    const std::size_t half = std::min(code.size(), codeLength / 2);
    return std::string(code.substr(0, half)).append("-").append(code.substr(half));
}

std::string labelText(const LabelText& label)
{
    return std::string(labelPrefix) + label.cellarMark + label.code;
}

std::optional<LabelText> parseLabelText(std::string_view text)
{
    if (text.size() != labelLength || !text.starts_with(labelPrefix)) {
        return std::nullopt;
    }
    const std::string_view mark = text.substr(labelPrefix.size(), markLength);
    const std::string_view code = text.substr(labelPrefix.size() + markLength);
    if (!isCode(mark, code)) {
        return std::nullopt;
    }
    return LabelText{std::string(mark), std::string(code)};
}

// The character of the alphabet that people and keyboards take `character` for.
static char unmistaken(char character)
{
    switch (character) {
        case 'I':
        case 'L':
            return '1';
        case 'O':
            return '0';
        case 'U':
            return 'V';
        default:
            return character;
    }
}

std::string tidied(std::string_view typed)
{
    std::string code;
    for (const char character : typed) {
        if (character == ' ' || character == '-') {
            continue;
        }
        const bool isLower = character >= 'a' && character <= 'z';
        code += unmistaken(isLower ? static_cast<char>(character - 'a' + 'A') : character);
    }
    return code;
}

Result<std::string> parseTyped(std::string_view mark, std::string_view typed)
{
    std::string code = tidied(typed);
    if (code.size() != codeLength || !isOfAlphabet(code)) {
        return fail(ErrorCode::Malformed, "barrel code", std::string(typed),
                    "6 letters or digits, as on the label: 7K2-QFM");
    }
    if (!isCode(mark, code)) {
        return fail(
            ErrorCode::Malformed, "barrel code", std::string(typed),
            "one character is wrong, or it is a code of another cellar than " + std::string(mark));
    }
    return code;
}

// Put each character of the alphabet at each place of `code`, for the `replaced` (0 or 1)
// characters that stood there.
static void addWithOneCharacter(const std::string& code, std::size_t replaced,
                                std::vector<std::string>& candidates)
{
    for (std::size_t place = 0; place + replaced <= code.size(); ++place) {
        for (const char character : codeAlphabet) {
            candidates.push_back(std::string(code).replace(place, replaced, 1, character));
        }
    }
}

std::vector<std::string> nearCodes(std::string_view mark, std::string_view typed)
{
    const std::string code = tidied(typed);
    std::vector<std::string> candidates;
    if (code.size() == codeLength) {
        addWithOneCharacter(code, 1, candidates);
        for (std::size_t place = 0; place + 1 < code.size(); ++place) {
            candidates.push_back(code);
            std::swap(candidates.back()[place], candidates.back()[place + 1]);
        }
    } else if (code.size() + 1 == codeLength) {
        addWithOneCharacter(code, 0, candidates);
    } else if (code.size() == codeLength + 1) {
        for (std::size_t place = 0; place < code.size(); ++place) {
            candidates.push_back(std::string(code).erase(place, 1));
        }
    }
    std::erase_if(candidates, [&](const std::string& candidate) {
        return candidate == code || !isCode(mark, candidate);
    });
    std::sort(candidates.begin(), candidates.end());
    candidates.erase(std::unique(candidates.begin(), candidates.end()), candidates.end());
    return candidates;
}

}  // namespace spile::scan
