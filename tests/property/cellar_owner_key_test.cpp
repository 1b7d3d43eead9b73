// The texts of the join symbol and of the owner's key: read back, and every slip noticed.
#include "core/cellar/join_code.hpp"
#include "core/cellar/owner_key_text.hpp"
#include "core/scan/barrel_code.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace spile::cellar {

namespace {

template <class Id>
rc::Gen<Id> anyId()
{
    return rc::gen::map(rc::gen::container<Bytes>(Id::size, rc::gen::arbitrary<std::uint8_t>()),
                        [](const Bytes& bytes) { return *Id::fromBytes(bytes); });
}

rc::Gen<std::string> anyMark()
{
    return rc::gen::container<std::string>(4, rc::gen::elementOf(std::string(scan::codeAlphabet)));
}

// Another character that a camera or a person may have had in its place.
std::string withSlip(std::string text)
{
    const auto at = *rc::gen::inRange<std::size_t>(0, text.size());
    const char other = *rc::gen::elementOf(std::string("0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ-. "));
    RC_PRE(other != text[at]);
    text[at] = other;
    return text;
}

}  // namespace

RC_GTEST_PROP(JoinSymbol, RoundTrips, ())
{
    const JoinSymbol symbol{*anyMark(), *anyId<DeviceId>()};
    const std::string text = joinSymbolText(symbol);
    RC_ASSERT(text.size() == 34U);
    RC_ASSERT(parseJoinSymbol(text) == symbol);
    RC_ASSERT(!scan::parseLabelText(text));
    RC_ASSERT(!isOwnerSymbol(text));
}

RC_GTEST_PROP(JoinSymbol, RefusesEverySlipOfASingleCharacter, ())
{
    const std::string text = withSlip(joinSymbolText({*anyMark(), *anyId<DeviceId>()}));
    RC_ASSERT(!parseJoinSymbol(text));
    RC_ASSERT(!scan::parseLabelText(text));
}

RC_GTEST_PROP(JoinSymbol, AnswersAnyText, ())
{
    const std::string text = "S2" + *rc::gen::arbitrary<std::string>();
    const auto read = parseJoinSymbol(text);
    RC_ASSERT((!read || joinSymbolText(*read) == text));
}

RC_GTEST_PROP(OwnerKeyText, RoundTripsTypedReadOrAsAFile, ())
{
    const KeySeed key = *anyId<KeySeed>();
    const auto lines = ownerKeyLines(key);
    RC_ASSERT(parseOwnerKey(lines[0] + " " + lines[1]) == key);
    RC_ASSERT(parseOwnerKey(ownerSymbolText(key)) == key);
    RC_ASSERT(parseOwnerKey(key.hex() + "\n") == key);
    RC_ASSERT(isOwnerSymbol(ownerSymbolText(key)));
}

RC_GTEST_PROP(OwnerKeyText, RefusesEverySlipOfASingleCharacter, ())
{
    const KeySeed key = *anyId<KeySeed>();
    const auto lines = ownerKeyLines(key);
    const std::string right = lines[0] + lines[1];
    const std::string text = withSlip(right);
    // A hyphen more or less, and O for 0, say the same.
    RC_PRE(scan::tidied(text) != scan::tidied(right));
    RC_ASSERT(!parseOwnerKey(text));
}

RC_GTEST_PROP(OwnerKeyText, AnswersAnyTextWithoutRepeatingIt, ())
{
    const auto text = *rc::gen::arbitrary<std::string>();
    const auto read = parseOwnerKey(text);
    if (!read) {
        RC_ASSERT(read.error().code == ErrorCode::Malformed);
        RC_ASSERT((text.size() < 4 || read.error().value.find(text) == std::string::npos));
    }
}

}  // namespace spile::cellar
