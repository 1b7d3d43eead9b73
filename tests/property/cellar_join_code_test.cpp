#include "core/cellar/join_code.hpp"
#include "core/scan/barrel_code.hpp"

#include <algorithm>
#include <cctype>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace spile::cellar {

static rc::Gen<DeviceId> anyDevice()
{
    return rc::gen::map(
        rc::gen::container<Bytes>(DeviceId::size, rc::gen::arbitrary<std::uint8_t>()),
        [](const Bytes& bytes) { return *DeviceId::fromBytes(bytes); });
}

RC_GTEST_PROP(JoinCode, RoundTrips, ())
{
    const DeviceId device = *anyDevice();
    const auto back = parseJoinCode(joinCode(device));
    RC_ASSERT(back.has_value());
    RC_ASSERT(*back == device);
}

RC_GTEST_PROP(JoinCode, IsReadInLowerCaseAndWithoutItsHyphens, ())
{
    const DeviceId device = *anyDevice();
    std::string typed = joinCode(device);
    std::erase(typed, '-');
    std::transform(typed.begin(), typed.end(), typed.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    RC_ASSERT(*parseJoinCode(" " + typed + " ") == device);
}

// The check is modulo a prime above the radix: no wrong character can pass (join_code.cpp).
TEST(JoinCode, RefusesEverySlipOfASingleCharacter)
{
    int slips = 0;
    int unnoticed = 0;
    for (std::uint8_t seed = 0; seed < 20; ++seed) {
        const std::string code =
            joinCode(DeviceId({seed, 7, 1, 0x5e, 0xc0, 0x99, 3, seed, 0xff, 0x10}));
        for (std::size_t at = 0; at < code.size(); ++at) {
            for (const char other : scan::codeAlphabet) {
                if (code[at] == '-' || code[at] == other) {
                    continue;
                }
                std::string typed = code;
                typed[at] = other;
                const auto read = parseJoinCode(typed);
                ++slips;
                unnoticed += read ? 1 : 0;
                EXPECT_TRUE(read || read.error().code == ErrorCode::Malformed);
            }
        }
    }
    EXPECT_EQ(slips, 20 * 28 * 31);
    EXPECT_EQ(unnoticed, 0);
}

TEST(JoinCode, RefusesEverySwapOfTwoNeighbours)
{
    for (std::uint8_t seed = 0; seed < 20; ++seed) {
        std::string code = joinCode(DeviceId({seed, 0x5e, 0xc0, 0x99, 3, seed, 0xff, 0x10, 9}));
        std::erase(code, '-');
        for (std::size_t at = 0; at + 1 < code.size(); ++at) {
            std::string typed = code;
            std::swap(typed[at], typed[at + 1]);
            EXPECT_EQ(parseJoinCode(typed).has_value(), typed == code) << code << " at " << at;
        }
    }
}

RC_GTEST_PROP(JoinCode, RefusesCodesThatAreTooShortOrTooLong, ())
{
    std::string code = joinCode(*anyDevice());
    if (*rc::gen::arbitrary<bool>()) {
        code += *rc::gen::elementOf(std::string(scan::codeAlphabet));
    } else {
        code.pop_back();
    }
    RC_ASSERT(!parseJoinCode(code));
}

RC_GTEST_PROP(JoinCode, AnswersAnyText, ())
{
    const auto text = *rc::gen::arbitrary<std::string>();
    const auto read = parseJoinCode(text);
    if (read) {
        RC_ASSERT(*parseJoinCode(joinCode(*read)) == *read);
    } else {
        RC_ASSERT(read.error().code == ErrorCode::Malformed);
    }
}

}  // namespace spile::cellar
