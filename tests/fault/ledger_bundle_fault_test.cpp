// Damaged, cut, foreign and forged day files: refused as a whole, and the cellar is unchanged.
#include "core/base/sha256.hpp"
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/photographing.hpp"
#include "core/cellar/checking.hpp"
#include "tests/support/day_file.hpp"
#include "tests/support/small_cellar.hpp"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>

namespace spile::cellar {

using support::DayFile;
using support::textOf;

namespace {

bool isRefusal(ErrorCode code)
{
    return code == ErrorCode::Damaged || code == ErrorCode::Unsupported ||
           code == ErrorCode::TooLarge || code == ErrorCode::Foreign;
}

// A phone has handed out a day file of two draws and a photo, and the desk has not seen it yet.
class BadDayFile : public testing::Test {
protected:
    support::TestDevice deskDevice{41};
    support::TestDevice phoneDevice{42};
    std::unique_ptr<Cellar> desk = deskDevice.newCellar();
    std::unique_ptr<Cellar> phone;
    support::SmallCellar small = support::fillSmallCellar(*desk);
    Path file = phoneDevice.folder.path() / "day.spile";
    Path bad = deskDevice.folder.path() / "bad.spile";
    Sha256 before;

    void SetUp() override
    {
        const Path start = deskDevice.folder.path() / "start.spile";
        ASSERT_TRUE(handOut(*desk, start, {}));
        phone = phoneDevice.join(start);
        support::admitDevice(*desk, *phone);
        for (int i = 0; i < 3; ++i) {
            ASSERT_TRUE(recordDraw(
                *phone,
                {.barrel = small.barrel, .volume = millilitres(100), .method = "sample hole"}));
        }
        const Bytes picture = support::smallPicture();
        ASSERT_TRUE(
            recordPhoto(*phone, {.barrel = small.barrel, .picture = picture, .purpose = "colour"}));
        // The phone knows what the desk holds, so that only its own records are in the file.
        support::carry(*desk, *phone, start);
        ASSERT_TRUE(handOut(*phone, file, desk->ledger().device()));
        before = support::storedBytes(deskDevice.cellarFolder());
    }

    ledger::SigningKey phoneKey()
    {
        return ledger::SigningKey(**phoneDevice.keys.load(KeyName::Device));
    }

    void expectRefused(const Path& path, ErrorCode code)
    {
        const auto taken = takeIn(*desk, path);
        ASSERT_FALSE(taken);
        EXPECT_EQ(taken.error().code, code) << textOf(taken.error());
        expectUnchanged();
    }
    void expectUnchanged() { EXPECT_EQ(support::storedBytes(deskDevice.cellarFolder()), before); }
    // A change that the phone itself, or who has its key, made and sealed properly.
    void expectForgeryRefused(DayFile& forged, ErrorCode code = ErrorCode::Damaged)
    {
        forged.seal(phoneKey());
        forged.write(bad);
        expectRefused(bad, code);
    }
};

}  // namespace

TEST_F(BadDayFile, IsRefusedAtEveryLengthThatIsTooShort)
{
    const Bytes whole = support::contentOf(file);
    support::overwrite(bad, whole);
    for (std::size_t length = whole.size(); length-- > 0;) {
        std::filesystem::resize_file(bad, length);
        const auto taken = takeIn(*desk, bad);
        ASSERT_FALSE(taken) << length << " of " << whole.size() << " bytes were taken in";
        EXPECT_TRUE(isRefusal(taken.error().code)) << length << ": " << textOf(taken.error());
    }
    expectUnchanged();
    EXPECT_EQ(takeIn(*desk, file)->added, 4U);  // the whole one is fine
}

TEST_F(BadDayFile, IsRefusedWithAnySingleBitFlipped)
{
    const Bytes whole = support::contentOf(file);
    support::overwrite(bad, whole);
    std::fstream open(bad, std::ios::binary | std::ios::in | std::ios::out);
    const auto put = [&](std::size_t at, unsigned byte) {
        open.seekp(static_cast<std::streamoff>(at));
        open.put(static_cast<char>(byte));
        open.flush();
    };
    for (std::size_t at = 0; at < whole.size(); ++at) {
        for (unsigned bit = 0; bit < 8; ++bit) {
            put(at, whole[at] ^ (1U << bit));
            const auto taken = takeIn(*desk, bad);
            ASSERT_FALSE(taken) << "bit " << bit << " of byte " << at << " went unnoticed";
            EXPECT_TRUE(isRefusal(taken.error().code)) << textOf(taken.error());
        }
        put(at, whole[at]);
    }
    expectUnchanged();
    EXPECT_EQ(takeIn(*desk, bad)->added, 4U);  // with every bit back, it is fine
}

TEST_F(BadDayFile, IsRefusedWithBytesBehindItsEnd)
{
    Bytes longer = support::contentOf(file);
    longer.push_back(0);
    support::overwrite(bad, longer);
    expectRefused(bad, ErrorCode::Damaged);
}

TEST_F(BadDayFile, OfAnotherCellarIsRefusedAsForeign)
{
    support::TestDevice other(43);
    const auto cellar = other.newCellar();
    static_cast<void>(support::fillSmallCellar(*cellar));
    ASSERT_TRUE(handOut(*cellar, bad, {}));
    expectRefused(bad, ErrorCode::Foreign);
    const auto taken = takeIn(*desk, bad);
    EXPECT_NE(taken.error().value.find(cellar->identity().id.hex().substr(0, 8)),
              std::string::npos);
    EXPECT_NE(taken.error().limit.find(desk->identity().id.hex().substr(0, 8)), std::string::npos);
}

TEST_F(BadDayFile, AddsNothingTheSecondTime)
{
    ASSERT_EQ(takeIn(*desk, file)->added, 4U);
    const Sha256 root = *stateRoot(*desk);
    before = support::storedBytes(deskDevice.cellarFolder());
    const auto again = takeIn(*desk, file);
    ASSERT_TRUE(again);
    EXPECT_EQ(again->added, 0U);
    EXPECT_EQ(again->known, 4U);
    EXPECT_EQ(again->photos, 0U);
    EXPECT_EQ(*stateRoot(*desk), root);
    support::overwrite(bad, support::contentOf(file));  // the same under another name
    EXPECT_EQ(takeIn(*desk, bad)->added, 0U);
}

TEST_F(BadDayFile, SealedAnewUnchangedIsFine)
{
    // The proof of the forgeries below: what is refused there is refused for its change.
    DayFile same(file);
    same.seal(phoneKey());
    same.write(bad);
    EXPECT_EQ(support::contentOf(bad), support::contentOf(file));
    EXPECT_EQ(takeIn(*desk, bad)->added, 4U);
}

TEST_F(BadDayFile, WithAnAlteredRecordIsRefused)
{
    DayFile forged(file);
    auto entries = forged.entries();
    auto core = *ledger::decodeCore(entries[1].core);
    core.recorded += Milliseconds(1);
    entries[1].core = ledger::encodeCore(core);
    forged.setEntries(entries);
    expectForgeryRefused(forged);
}

TEST_F(BadDayFile, WithAnAlteredBodyIsRefused)
{
    DayFile forged(file);
    auto entries = forged.entries();
    auto fields = *ledger::decodeFields(entries[1].body);
    fields[static_cast<std::uint32_t>(Field::VolumeMl)] = std::int64_t{101};
    entries[1].body = ledger::encodeFields(fields);
    forged.setEntries(entries);
    expectForgeryRefused(forged);
}

TEST_F(BadDayFile, WithARecordSignedByAnotherKeyIsRefused)
{
    for (const std::size_t which :
         {0U, 1U, 3U}) {  // also the last, whose signature covers the chain
        SCOPED_TRACE(which);
        DayFile forged(file);
        auto entries = forged.entries();
        const ledger::SigningKey other(KeySeed({1, 2, 3}));
        entries[which].signature =
            other.sign(ledger::signedMessage(desk->identity().id, entries[which].id()));
        forged.setEntries(entries);
        expectForgeryRefused(forged);
    }
}

TEST_F(BadDayFile, WithASignatureForAnotherCellarIsRefused)
{
    DayFile forged(file);
    auto entries = forged.entries();
    entries[0].signature = phoneKey().sign(ledger::signedMessage(CellarId(), entries[0].id()));
    forged.setEntries(entries);
    expectForgeryRefused(forged);
}

TEST_F(BadDayFile, WithARecordThatNamesAnotherBeforeItIsRefused)
{
    DayFile forged(file);
    auto entries = forged.entries();
    auto core = *ledger::decodeCore(entries[1].core);
    core.previous = EntryId(std::array<std::uint8_t, 32>{1});
    entries[1] = ledger::signEntry(core, entries[1].body, phoneKey());
    forged.setEntries(entries);
    expectForgeryRefused(forged);
}

TEST_F(BadDayFile, WithAnotherLastRecordThanItsHeaderNamesIsRefused)
{
    DayFile forged(file);
    auto entries = forged.entries();
    auto core = *ledger::decodeCore(entries.back().core);
    core.recorded += Milliseconds(1);
    entries.back() = ledger::signEntry(core, entries.back().body, phoneKey());
    forged.setEntries(entries);
    expectForgeryRefused(forged);
}

TEST_F(BadDayFile, WithTheSignatureOfAnotherFileIsRefused)
{
    DayFile forged(file);
    forged.member(ledger::bag::signature) =
        asText(ledger::encodeSignature(ledger::signBundle(phoneKey(), Sha256())));
    forged.write(bad);
    expectRefused(bad, ErrorCode::Damaged);
}

TEST_F(BadDayFile, WithOneFileChangedInAnArchiveThatIsWholeIsRefused)
{
    for (const char* name : {ledger::bag::readMe, ledger::bag::header, ledger::bag::info,
                             ledger::bag::declaration, "data/entries/000001.cborseq"}) {
        SCOPED_TRACE(name);
        DayFile forged(file);
        forged.member(name) += " ";
        forged.write(bad);
        expectRefused(bad, ErrorCode::Damaged);
    }
}

TEST_F(BadDayFile, ThatSkipsARecordIsRefused)
{
    DayFile forged(file);
    auto entries = forged.entries();
    entries.erase(entries.begin() + 1);
    forged.setEntries(entries);
    auto header = forged.header();
    header.entries = entries.size();
    forged.setHeader(header);
    expectForgeryRefused(forged);
}

TEST_F(BadDayFile, WithRecordsSwappedOrTwiceIsRefused)
{
    DayFile swapped(file);
    auto entries = swapped.entries();
    std::swap(entries[0], entries[1]);
    swapped.setEntries(entries);
    expectForgeryRefused(swapped);

    DayFile twice(file);
    entries = twice.entries();
    entries.insert(entries.begin(), entries.front());
    twice.setEntries(entries);
    expectForgeryRefused(twice);
}

TEST_F(BadDayFile, ThatEndsBeforeItsRangeDoesIsRefused)
{
    DayFile forged(file);
    auto entries = forged.entries();
    entries.pop_back();
    forged.setEntries(entries);
    expectForgeryRefused(forged);
}

TEST_F(BadDayFile, WithAPhotoOfOtherContentIsRefused)
{
    DayFile forged(file);
    for (auto& [name, content] : forged.members) {
        if (name.starts_with(ledger::bag::photoFolder)) {
            content.back() = static_cast<char>(content.back() ^ 1);
        }
    }
    expectForgeryRefused(forged);
}

TEST_F(BadDayFile, WithAPhotoThatNoRecordNamesStoresNoPhoto)
{
    DayFile forged(file);
    const Bytes stranger = support::smallPicture(200);
    forged.members.emplace_back(ledger::bag::photoFolder + sha256(stranger).hex(),
                                asText(stranger));
    auto header = forged.header();
    ++header.photos;
    forged.setHeader(header);
    forged.seal(phoneKey());
    forged.write(bad);
    const auto taken = takeIn(*desk, bad);
    ASSERT_TRUE(taken) << textOf(taken.error());
    EXPECT_EQ(taken->photos, 1U);
    EXPECT_FALSE(desk->ledger().photos().has(sha256(stranger)));
}

TEST_F(BadDayFile, WithAFileThatItsManifestDoesNotListIsRefused)
{
    DayFile forged(file);
    forged.seal(phoneKey());
    forged.members.emplace_back("data/photos/extra", "x");
    forged.write(bad);
    expectRefused(bad, ErrorCode::Damaged);
}

TEST_F(BadDayFile, SealedByAKeyThatIsNotItsSendersIsRefused)
{
    DayFile forged(file);
    forged.seal(ledger::SigningKey(KeySeed({9})));
    forged.write(bad);
    expectRefused(bad, ErrorCode::Damaged);
}

TEST_F(BadDayFile, SentByADeviceThatIsNotAdmittedMayCarryRecordsOfOthers)
{
    // Whoever carries a file vouches for the file, not for what is in it: each record is signed.
    DayFile carried(file);
    const ledger::SigningKey carrier(KeySeed({9}));
    auto header = carried.header();
    header.from = carrier.deviceId();
    carried.setHeader(header);
    carried.seal(carrier);
    carried.write(bad);
    EXPECT_EQ(takeIn(*desk, bad)->added, 4U);
    EXPECT_EQ(support::problemsOf(*desk), "");
}

TEST_F(BadDayFile, ForANewerReaderIsRefusedAsUnsupported)
{
    DayFile forged(file);
    // The header's second pair: key 2, min_reader, value 1 (FORMAT.md).
    std::string& header = forged.member(ledger::bag::header);
    ASSERT_EQ(header.substr(1, 4), std::string("\x01\x01\x02\x01", 4));
    header[4] = 2;
    expectForgeryRefused(forged, ErrorCode::Unsupported);
}

}  // namespace spile::cellar
