#include "core/base/bytes.hpp"

#include <gtest/gtest.h>

namespace spile {

TEST(Hex, WritesLowerCaseAndReadsBoth)
{
    EXPECT_EQ(toHex(Bytes{0x00, 0x09, 0xaf, 0xff}), "0009afff");
    EXPECT_EQ(toHex({}), "");
    EXPECT_EQ(fromHex("0009afFF"), (Bytes{0x00, 0x09, 0xaf, 0xff}));
    EXPECT_EQ(fromHex(""), Bytes());
}

TEST(Hex, RefusesWhatIsNotHex)
{
    for (const char* text : {"0", "000", "0g", "g0", "/0", ":0", "@0", "G0", "`0", " 0", "0x"}) {
        EXPECT_EQ(fromHex(text), std::nullopt) << text;
    }
}

TEST(BytesAndText, LookAtTheSameMemory)
{
    const std::string text("a\0b", 3);
    const ByteView bytes = asBytes(text);
    ASSERT_EQ(bytes.size(), 3U);
    EXPECT_EQ(bytes[2], 'b');
    EXPECT_EQ(asText(bytes).data(), text.data());
    EXPECT_EQ(asText(bytes), text);
}

// The ends of every row of the table in RFC 3629, section 4.
TEST(Utf8, AcceptsTheEndsOfEveryRange)
{
    EXPECT_TRUE(isUtf8(""));
    EXPECT_TRUE(isUtf8(std::string_view("\x00\x7f", 2)));
    EXPECT_TRUE(isUtf8("\xc2\x80\xdf\xbf"));
    EXPECT_TRUE(isUtf8("\xe0\xa0\x80\xe0\xbf\xbf\xe1\x80\x80\xec\xbf\xbf"));
    EXPECT_TRUE(isUtf8("\xed\x80\x80\xed\x9f\xbf\xee\x80\x80\xef\xbf\xbf"));
    EXPECT_TRUE(isUtf8("\xf0\x90\x80\x80\xf3\xbf\xbf\xbf\xf4\x80\x80\x80\xf4\x8f\xbf\xbf"));
}

TEST(Utf8, RefusesWhatLiesOutside)
{
    for (const char* text :
         {"\x80", "\xbf", "\xc0\x80", "\xc1\xbf", "\xf5\x80\x80\x80", "\xff",  // no lead byte
          "\xe0\x9f\xbf", "\xf0\x8f\xbf\xbf",                                  // not the shortest
          "\xed\xa0\x80", "\xed\xbf\xbf", "\xf4\x90\x80\x80",                  // no character
          "\xc2", "\xe1\x80", "\xf1\x80\x80", "\xc2z", "\xe1\x80z", "a\xf1\x80\x80z",  // cut off
          "\xc2\xc0", "\xe1\x80\x7f"}) {
        EXPECT_FALSE(isUtf8(text)) << toHex(asBytes(text));
    }
}

}  // namespace spile
