#include "platform/system/system_random.hpp"

#include "core/base/bytes.hpp"

#include <algorithm>
#include <array>
#include <gtest/gtest.h>

namespace spile::system {

TEST(SystemRandom, FillsEveryByteAndNeverTheSame)
{
    // Over 256 bytes getrandom() may answer in parts. Each byte place stays zero in all eight
    // rounds with a chance of 2^-64.
    constexpr std::size_t length = 5000;
    SystemRandom random;
    Bytes seen(length);
    Bytes last;
    for (int round = 0; round < 8; ++round) {
        Bytes bytes(length);
        random.fill(bytes);
        EXPECT_NE(bytes, last);
        for (std::size_t i = 0; i < length; ++i) {
            seen[i] |= bytes[i];
        }
        last = bytes;
    }
    EXPECT_EQ(std::count(seen.begin(), seen.end(), 0), 0);
}

TEST(SystemRandom, FillsMoreThanTheSystemGivesAtOnce)
{
    // getrandom() gives at most 2^25 - 1 bytes a call.
    Bytes bytes((std::size_t{1} << 25U) + 64);
    SystemRandom().fill(bytes);
    EXPECT_LT(std::count(bytes.end() - 64, bytes.end(), 0), 32);
}

TEST(SystemRandom, LeavesTheNeighboursAlone)
{
    std::array<std::uint8_t, 10> bytes{};
    SystemRandom random;
    for (int round = 0; round < 8; ++round) {
        random.fill(std::span(bytes).subspan(2, 6));
    }
    EXPECT_EQ(bytes[1], 0);
    EXPECT_EQ(bytes[8], 0);
    random.fill({});
}

}  // namespace spile::system
