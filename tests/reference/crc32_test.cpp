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

}  // namespace spile::ledger
