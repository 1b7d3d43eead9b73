// Source: the check value of CRC-32 (ISO 3309, ITU-T V.42, as in ZIP), CRC of "123456789"; the
// others are common knowledge of the same checksum. Exact.
#include "core/ledger/crc32.hpp"

#include <gtest/gtest.h>

namespace spile::ledger {

TEST(Crc32, MatchesTheCheckValue) { EXPECT_EQ(crc32(asBytes("123456789")), 0xcbf43926U); }

TEST(Crc32, MatchesShortTexts)
{
    EXPECT_EQ(crc32(asBytes("")), 0U);
    EXPECT_EQ(crc32(asBytes("a")), 0xe8b7be43U);
    EXPECT_EQ(crc32(asBytes("abc")), 0x352441c2U);
    EXPECT_EQ(crc32(asBytes("The quick brown fox jumps over the lazy dog")), 0x414fa339U);
}

// The definition of the checksum, a bit at a time.
static std::uint32_t bitByBit(ByteView bytes)
{
    std::uint32_t state = 0xffffffff;
    for (const std::uint8_t byte : bytes) {
        state ^= byte;
        for (int bit = 0; bit < 8; ++bit) {
            state = (state & 1U) != 0 ? (state >> 1U) ^ 0xedb88320U : state >> 1U;
        }
    }
    return ~state;
}

TEST(Crc32, IsTheSameForAnyLengthHoweverItIsCut)
{
    Bytes bytes(400);
    std::uint32_t seed = 1;
    for (std::uint8_t& byte : bytes) {
        seed = seed * 1664525 + 1013904223;
        byte = static_cast<std::uint8_t>(seed >> 24U);
    }
    for (std::size_t length = 0; length <= bytes.size(); ++length) {
        const ByteView part = ByteView(bytes).first(length);
        Crc32 cut;
        cut.add(part.first(length / 3));
        cut.add(part.subspan(length / 3));
        EXPECT_EQ(crc32(part), bitByBit(part)) << length;
        EXPECT_EQ(cut.value(), bitByBit(part)) << length;
    }
}

}  // namespace spile::ledger
