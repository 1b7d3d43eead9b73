// Source: RFC 8949 (CBOR), Appendix A, Table 6 (examples of encoded data items), from memory.
// Rows are left out only where the table has several of one sort. Tolerance: none, these are bytes.
#include "core/ledger/cbor.hpp"

#include <functional>
#include <gtest/gtest.h>
#include <limits>

namespace spile::ledger {

namespace {

struct Allowed {
    const char* diagnostic;
    const char* hex;
    std::function<void(CborWriter&)> write;
};

const std::vector<Allowed>& allowed()
{
    static const std::vector<Allowed> rows = {
        {"0", "00", [](CborWriter& w) { w.unsignedInteger(0); }},
        {"1", "01", [](CborWriter& w) { w.unsignedInteger(1); }},
        {"10", "0a", [](CborWriter& w) { w.unsignedInteger(10); }},
        {"23", "17", [](CborWriter& w) { w.unsignedInteger(23); }},
        {"24", "1818", [](CborWriter& w) { w.unsignedInteger(24); }},
        {"25", "1819", [](CborWriter& w) { w.integer(25); }},
        {"100", "1864", [](CborWriter& w) { w.integer(100); }},
        {"1000", "1903e8", [](CborWriter& w) { w.unsignedInteger(1000); }},
        {"1000000", "1a000f4240", [](CborWriter& w) { w.integer(1000000); }},
        {"1000000000000", "1b000000e8d4a51000",
         [](CborWriter& w) { w.unsignedInteger(1000000000000); }},
        {"-1", "20", [](CborWriter& w) { w.integer(-1); }},
        {"-10", "29", [](CborWriter& w) { w.integer(-10); }},
        {"-100", "3863", [](CborWriter& w) { w.integer(-100); }},
        {"-1000", "3903e7", [](CborWriter& w) { w.integer(-1000); }},
        {"false", "f4", [](CborWriter& w) { w.boolean(false); }},
        {"true", "f5", [](CborWriter& w) { w.boolean(true); }},
        {"null", "f6", [](CborWriter& w) { w.null(); }},
        {"h''", "40", [](CborWriter& w) { w.bytes({}); }},
        {"h'01020304'", "4401020304",
         [](CborWriter& w) {
             w.bytes(Bytes{1, 2, 3, 4});
         }},
        {"\"\"", "60", [](CborWriter& w) { w.text(""); }},
        {"\"a\"", "6161", [](CborWriter& w) { w.text("a"); }},
        {"\"IETF\"", "6449455446", [](CborWriter& w) { w.text("IETF"); }},
        {"\"\\\"\\\\\"", "62225c", [](CborWriter& w) { w.text("\"\\"); }},
        {"\"\\u00fc\"", "62c3bc", [](CborWriter& w) { w.text("\u00fc"); }},
        {"\"\\u6c34\"", "63e6b0b4", [](CborWriter& w) { w.text("\u6c34"); }},
        {"\"\\ud800\\udd51\"", "64f0908591", [](CborWriter& w) { w.text("\U00010151"); }},
        {"[]", "80", [](CborWriter& w) { w.array(0); }},
        {"[1, 2, 3]", "83010203",
         [](CborWriter& w) {
             w.array(3);
             for (const unsigned i : {1U, 2U, 3U}) {
                 w.unsignedInteger(i);
             }
         }},
        {"[1, [2, 3], [4, 5]]", "8301820203820405",
         [](CborWriter& w) {
             w.array(3);
             w.unsignedInteger(1);
             for (const unsigned i : {2U, 4U}) {
                 w.array(2);
                 w.unsignedInteger(i);
                 w.unsignedInteger(i + 1);
             }
         }},
        {"[1, 2, ... 25]", "98190102030405060708090a0b0c0d0e0f101112131415161718181819",
         [](CborWriter& w) {
             w.array(25);
             for (unsigned i = 1; i <= 25; ++i) {
                 w.unsignedInteger(i);
             }
         }},
        {"{}", "a0", [](CborWriter& w) { w.map(0); }},
        {"{1: 2, 3: 4}", "a201020304",
         [](CborWriter& w) {
             w.map(2);
             for (const unsigned i : {1U, 2U, 3U, 4U}) {
                 w.unsignedInteger(i);
             }
         }},
        {"{\"a\": 1, \"b\": [2, 3]}", "a26161016162820203",
         [](CborWriter& w) {
             w.map(2);
             w.text("a");
             w.unsignedInteger(1);
             w.text("b");
             w.array(2);
             w.unsignedInteger(2);
             w.unsignedInteger(3);
         }},
        {"[\"a\", {\"b\": \"c\"}]", "826161a161626163",
         [](CborWriter& w) {
             w.array(2);
             w.text("a");
             w.map(1);
             w.text("b");
             w.text("c");
         }},
        {"{\"a\": \"A\", ... \"e\": \"E\"}", "a56161614161626142616361436164614461656145",
         [](CborWriter& w) {
             w.map(5);
             for (char c = 'a'; c <= 'e'; ++c) {
                 w.text(std::string(1, c));
                 w.text(std::string(1, static_cast<char>(c - 'a' + 'A')));
             }
         }},
    };
    return rows;
}

struct Refused {
    const char* why;
    const char* hex;
};

Result<ByteView> wholeItem(const Bytes& bytes)
{
    CborReader in(bytes);
    SPILE_ASSIGN(item, in.item());
    if (!in.atEnd()) {
        return fail(ErrorCode::Damaged, "record", "bytes after the item");
    }
    return item;
}

}  // namespace

TEST(CborOfRfc8949, WritesTheExamplesThatTheProfileAllows)
{
    for (const Allowed& row : allowed()) {
        CborWriter out;
        row.write(out);
        EXPECT_EQ(toHex(out.written()), row.hex) << row.diagnostic;
    }
}

TEST(CborOfRfc8949, ReadsTheExamplesThatTheProfileAllows)
{
    for (const Allowed& row : allowed()) {
        const Bytes bytes = *fromHex(row.hex);
        const auto item = wholeItem(bytes);
        ASSERT_TRUE(item) << row.diagnostic << ": " << item.error().value;
        EXPECT_EQ(toHex(*item), row.hex);
    }
}

TEST(CborOfRfc8949, ReadsTheValuesThatWereWritten)
{
    const auto integer = [](const char* hex) {
        const Bytes bytes = *fromHex(hex);
        return CborReader(bytes).integer().value_or(-77);
    };
    EXPECT_EQ(integer("1b000000e8d4a51000"), 1000000000000);
    EXPECT_EQ(integer("3903e7"), -1000);
    EXPECT_EQ(integer("3b7fffffffffffffff"), std::numeric_limits<std::int64_t>::min());
    const Bytes largest = *fromHex("1bffffffffffffffff");  // 18446744073709551615
    EXPECT_EQ(*CborReader(largest).unsignedInteger(), std::numeric_limits<std::uint64_t>::max());
    const Bytes text = *fromHex("64f0908591");
    EXPECT_EQ(*CborReader(text).text(), "\U00010151");
    const Bytes flag = *fromHex("f5");
    EXPECT_EQ(*CborReader(flag).boolean(), true);
}

TEST(Fault48_HostileCbor, IsRefusedAsTheExamplesOutsideTheProfileAre)
{
    // Also from Appendix A, but for the last five.
    constexpr Refused rows[] = {
        {"0.0, a float of 16 bits", "f90000"},
        {"1.5", "f93e00"},
        {"65504.0", "f97bff"},
        {"100000.0, of 32 bits", "fa47c35000"},
        {"1.1, of 64 bits", "fb3ff199999999999a"},
        {"Infinity", "f97c00"},
        {"NaN", "f97e00"},
        {"NaN of 64 bits", "fb7ff8000000000000"},
        {"undefined", "f7"},
        {"simple(16)", "f0"},
        {"simple(255)", "f8ff"},
        {"18446744073709551616, a tagged big number", "c249010000000000000000"},
        {"-18446744073709551617", "c349010000000000000000"},
        {"-18446744073709551616, under 64 bits", "3bffffffffffffffff"},
        {"0(\"2013-03-21T20:04:00Z\")", "c074323031332d30332d32315432303a30343a30305a"},
        {"1(1363896240)", "c11a514b67b0"},
        {"23(h'01020304')", "d74401020304"},
        {"24(h'6449455446')", "d818456449455446"},
        {"32(\"http://www.example.com\")", "d82076687474703a2f2f7777772e6578616d706c652e636f6d"},
        {"(_ h'0102', h'030405')", "5f42010243030405ff"},
        {"(_ \"strea\", \"ming\")", "7f657374726561646d696e67ff"},
        {"[_ ]", "9fff"},
        {"[_ 1, [2, 3], [_ 4, 5]]", "9f018202039f0405ffff"},
        {"[1, [_ 2, 3], [4, 5]]", "83019f0203ff820405"},
        {"{_ \"a\": 1, \"b\": [_ 2, 3]}", "bf61610161629f0203ffff"},
        {"{_ \"Fun\": true, \"Amt\": -2}", "bf6346756ef563416d7421ff"},
        {"0 in two bytes", "1800"},
        {"23 in two bytes", "1817"},
        {"255 in three bytes", "1900ff"},
        {"65535 in five bytes", "1a0000ffff"},
        {"4294967295 in nine bytes", "1b00000000ffffffff"},
        {"\"a\" with a long length", "780161"},
        {"[1] with a long length", "980101"},
        {"map keys out of order", "a203040102"},
        {"a map key twice", "a201020103"},
        {"text that is not UTF-8", "62c328"},
        {"a surrogate in UTF-8", "63eda080"},
        {"nothing", ""},
        {"half an item", "8301"},
        {"a length beyond the end", "5bffffffffffffffff00"},
        {"an array longer than the bytes", "9bffffffffffffffff00"},
    };
    for (const Refused& row : rows) {
        const Bytes bytes = *fromHex(row.hex);
        const auto item = wholeItem(bytes);
        EXPECT_FALSE(item) << row.why;
        if (!item) {
            EXPECT_EQ(item.error().code, ErrorCode::Damaged) << row.why;
        }
    }
}

TEST(Fault48_HostileCbor, IsRefusedWhenNestedDeeperThanTheProfile)
{
    Bytes deep(cborDepthMax, 0x81);  // lists of one item
    deep.push_back(0x00);
    EXPECT_TRUE(wholeItem(deep));
    deep.insert(deep.begin(), 0x81);
    EXPECT_FALSE(wholeItem(deep));
    deep.insert(deep.begin(), 1'000'000, 0x81);
    EXPECT_FALSE(wholeItem(deep));
}

}  // namespace spile::ledger
