// The symbols of devices and of the owner's key, as pictures: each is read as itself and never as a
// barrel's label, nor a label as one of them.
#include "core/base/simulated.hpp"
#include "core/cellar/join_code.hpp"
#include "core/cellar/owner_key_text.hpp"
#include "core/scan/live_reader.hpp"
#include "core/scan/symbol.hpp"
#include "tests/support/symbol_pictures.hpp"

#include <gtest/gtest.h>

namespace spile::cellar {

namespace {

constexpr int levelH = 8;

JoinSymbol symbolOf(std::uint64_t seed)
{
    SeededRandom random(seed);
    std::array<std::uint8_t, DeviceId::size> bytes{};
    random.fill(bytes);
    return {scan::randomMark(random), DeviceId(bytes)};
}

KeySeed keyOf(std::uint64_t seed)
{
    SeededRandom random(seed);
    std::array<std::uint8_t, KeySeed::size> bytes{};
    random.fill(bytes);
    return KeySeed(bytes);
}

picture::Image drawn(const std::string& text, int pixelsPerModule)
{
    return support::drawSymbol(text, {.pixelsPerModule = pixelsPerModule, .eccLevel = levelH});
}

}  // namespace

TEST(JoinSymbol, FillsVersionThreeAndTheOwnersKeyVersionFive)
{
    const auto join = scan::encodeQr(joinSymbolText(symbolOf(1)), scan::QrLevel::H);
    const auto owner = scan::encodeQr(ownerSymbolText(keyOf(1)), scan::QrLevel::H);
    ASSERT_TRUE(join && owner);
    EXPECT_EQ(join->size, 29);
    EXPECT_EQ(owner->size, 37);
}

TEST(JoinSymbol, IsReadFromAFrameAsItselfAndNeverAsALabel)
{
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const JoinSymbol symbol = symbolOf(seed);
        picture::Image image = drawn(joinSymbolText(symbol), 3 + static_cast<int>(seed % 4));
        support::addNoise(image, 8, seed);
        scan::LiveReader reader;
        const auto codes = reader.look(picture::viewOf(image)).codes;
        ASSERT_EQ(codes.size(), 1U) << seed;
        EXPECT_FALSE(scan::ownLabel(codes.front()));
        EXPECT_FALSE(isOwnerSymbol(codes.front().text));
        EXPECT_EQ(parseJoinSymbol(codes.front().text), symbol);
    }
}

TEST(JoinSymbol, DamagedIsNeverReadAsAnotherThing)
{
    int read = 0;
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        const JoinSymbol symbol = symbolOf(seed);
        picture::Image image = drawn(joinSymbolText(symbol), 6);
        // A growing blot, from which the reader of damaged labels would mend.
        const int side = 8 * static_cast<int>(seed);
        support::paste(image, support::plainPicture(side, side, 30), 80, 80);
        support::addNoise(image, 20, seed);
        scan::LiveReader reader;
        for (int frame = 0; frame < 12; ++frame) {
            for (const scan::Code& code : reader.look(picture::viewOf(image)).codes) {
                EXPECT_FALSE(scan::ownLabel(code)) << code.text;
                EXPECT_EQ(parseJoinSymbol(code.text), symbol);
                ++read;
            }
        }
    }
    EXPECT_GT(read, 0);
}

TEST(JoinSymbol, ALabelIsNeverTakenForOneOrForTheOwnersKey)
{
    SeededRandom random(7);
    for (int i = 0; i < 50; ++i) {
        const std::string mark = scan::randomMark(random);
        const std::string text = scan::labelText({mark, scan::randomCode(mark, random)});
        EXPECT_FALSE(parseJoinSymbol(text));
        EXPECT_FALSE(isOwnerSymbol(text));
        EXPECT_FALSE(parseOwnerKey(text));
    }
}

TEST(OwnerKeyText, IsReadFromAPictureOfItsSymbol)
{
    for (std::uint64_t seed = 1; seed <= 8; ++seed) {
        picture::Image image = drawn(ownerSymbolText(keyOf(seed)), 4);
        support::addNoise(image, 10, seed);
        const auto codes = scan::readPicture(picture::viewOf(image));
        ASSERT_TRUE(codes);
        ASSERT_EQ(codes->size(), 1U);
        EXPECT_TRUE(isOwnerSymbol(codes->front().text));
        EXPECT_FALSE(parseJoinSymbol(codes->front().text));
        EXPECT_FALSE(scan::ownLabel(codes->front()));
        EXPECT_EQ(parseOwnerKey(codes->front().text), keyOf(seed));
    }
}

// Worked out by hand from FORMAT.md: the alphabet's digits for the bits, and their number modulo
// 1021.
TEST(OwnerKeyText, OfAKeyThatCanBeWorkedOutByHand)
{
    EXPECT_EQ(ownerKeyLines(KeySeed())[0], "0000-0000-0000-0000-0000-0000-0000");
    std::array<std::uint8_t, KeySeed::size> bytes{};
    bytes[15] = 0x01;  // bit 127 is the third of the last character: 0b00100, so 4
    // 4 x 1024 mod 1021 is 12.
    EXPECT_EQ(ownerKeyLines(KeySeed(bytes))[0], "0000-0000-0000-0000-0000-0000-040C");
}

TEST(OwnerKeyText, ErrorsNameTheLineAndNeverTheKey)
{
    const auto lines = ownerKeyLines(keyOf(3));
    for (const std::size_t line : {0U, 1U}) {
        auto wrong = lines;
        wrong[line][5] = wrong[line][5] == '7' ? '8' : '7';
        const auto read = parseOwnerKey(wrong[0] + "\n" + wrong[1]);
        ASSERT_FALSE(read);
        EXPECT_EQ(read.error().code, ErrorCode::Malformed);
        EXPECT_EQ(read.error().value, "line " + std::to_string(line + 1) + " is mistyped");
        EXPECT_EQ(read.error().limit.find(lines[0].substr(0, 4)), std::string::npos);
    }
    const auto swapped = parseOwnerKey(lines[1] + lines[0]);
    EXPECT_FALSE(swapped) << "the lines are in the wrong order";
}

}  // namespace spile::cellar
