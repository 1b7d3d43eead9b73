#include "core/cellar/owner_key_text.hpp"

#include "core/cellar/code_text.hpp"
#include "core/ledger/keys.hpp"
#include "core/scan/barrel_code.hpp"

#include <algorithm>

namespace spile::cellar {

namespace {

constexpr std::string_view symbolPrefix = "S3";
constexpr std::size_t keyLength = 2 * codeTextLength;
constexpr std::size_t hexDigits = 2 * KeySeed::size;

// Both lines without their groups.
std::string plainText(const KeySeed& key)
{
    std::string text;
    text.reserve(keyLength);
    for (const std::size_t half : {0U, 1U}) {
        std::string line = codeText(key.bytes().subspan(half * codeTextBytes, codeTextBytes), text);
        text += line;
        ledger::wipe(line);
    }
    return text;
}

tl::unexpected<Error> refuse(const std::string& what)
{
    return fail(ErrorCode::Malformed, "owner key", what,
                "the two lines of 28 characters on the owner's sheet, or the file owner.key");
}

Result<KeySeed> fromLines(std::string_view text)
{
    const auto first = parseCodeText(text.substr(0, codeTextLength));
    if (!first) {
        return refuse("line 1 is mistyped");
    }
    const auto second = parseCodeText(text.substr(codeTextLength), text.substr(0, codeTextLength));
    if (!second) {
        return refuse("line 2 is mistyped");
    }
    std::array<std::uint8_t, KeySeed::size> bytes{};
    std::copy(first->begin(), first->end(), bytes.begin());
    std::copy(second->begin(), second->end(), bytes.begin() + codeTextBytes);
    const KeySeed key(bytes);
    ledger::wipe(bytes);
    return key;
}

Result<KeySeed> fromTidied(std::string_view text)
{
    if (text.size() == hexDigits) {
        std::string digits(text);
        std::transform(digits.begin(), digits.end(), digits.begin(), [](char c) {
            return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        });
        const auto key = KeySeed::fromHex(digits);
        ledger::wipe(digits);
        return key ? Result<KeySeed>(*key) : refuse("not 64 hexadecimal digits");
    }
    if (text.size() == symbolPrefix.size() + keyLength && text.starts_with(symbolPrefix)) {
        text.remove_prefix(symbolPrefix.size());
    }
    return text.size() == keyLength ? fromLines(text)
                                    : refuse(std::to_string(text.size()) + " characters");
}

}  // namespace

std::array<std::string, 2> ownerKeyLines(const KeySeed& key)
{
    std::string text = plainText(key);
    const std::string_view both(text);
    std::array lines = {inGroups(both.substr(0, codeTextLength)),
                        inGroups(both.substr(codeTextLength))};
    ledger::wipe(text);
    return lines;
}

std::string ownerSymbolText(const KeySeed& key)
{
    std::string plain = plainText(key);
    std::string text;
    text.reserve(symbolPrefix.size() + plain.size());
    text.append(symbolPrefix).append(plain);
    ledger::wipe(plain);
    return text;
}

bool isOwnerSymbol(std::string_view text)
{
    return text.size() == symbolPrefix.size() + keyLength && text.starts_with(symbolPrefix);
}

Result<KeySeed> parseOwnerKey(std::string_view typed)
{
    std::string whole(typed);
    std::erase_if(whole, [](char c) { return c == '\n' || c == '\r' || c == '\t'; });
    std::string text = scan::tidied(whole);
    auto key = fromTidied(text);
    ledger::wipe(whole);
    ledger::wipe(text);
    return key;
}

}  // namespace spile::cellar
