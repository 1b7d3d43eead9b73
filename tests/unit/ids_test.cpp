#include "core/base/ids.hpp"

#include <gtest/gtest.h>
#include <set>
#include <type_traits>
#include <unordered_set>

namespace spile {

static const std::string sixteen = "000102030405060708090a0b0c0d0eff";

TEST(ByteId, ReadsOnlyItsOwnLength)
{
    const auto id = SubjectId::fromHex(sixteen);
    ASSERT_TRUE(id.has_value());
    EXPECT_EQ(id->hex(), sixteen);
    EXPECT_EQ(SubjectId::fromBytes(id->bytes()), id);
    EXPECT_FALSE(SubjectId::fromHex(sixteen.substr(2)).has_value());
    EXPECT_FALSE(SubjectId::fromHex(sixteen + "00").has_value());
    EXPECT_FALSE(SubjectId::fromHex(sixteen.substr(1) + "g").has_value());
    EXPECT_FALSE(SubjectId::fromBytes(id->bytes().first(15)).has_value());
}

TEST(ByteId, IsOrderedAsItsHexIs)
{
    const auto low = *SubjectId::fromHex(sixteen);
    const auto high = *SubjectId::fromHex("01" + sixteen.substr(2));
    EXPECT_LT(low, high);
    EXPECT_LT(SubjectId(), low);
    EXPECT_TRUE(SubjectId().isZero());
    EXPECT_FALSE(low.isZero());
}

TEST(ByteId, OfAnotherKindDoesNotMix)
{
    static_assert(!std::is_convertible_v<DeviceId, SubjectId>);
    static_assert(!std::is_constructible_v<SubjectId, DeviceId>);
    EXPECT_FALSE((std::is_same_v<CellarId, DeviceId>));
}

TEST(IdHash, SpreadsIdsThatDifferInOneByte)
{
    std::set<std::size_t> hashes;
    std::unordered_set<SubjectId, IdHash> ids;
    for (std::size_t place = 0; place < SubjectId::size; ++place) {
        for (unsigned value = 1; value < 256; ++value) {
            std::array<std::uint8_t, SubjectId::size> bytes{};
            bytes[place] = static_cast<std::uint8_t>(value);
            hashes.insert(IdHash()(SubjectId(bytes)));
            ids.emplace(bytes);
        }
    }
    EXPECT_EQ(ids.size(), 16U * 255U);
    EXPECT_EQ(hashes.size(), ids.size());
}

}  // namespace spile
