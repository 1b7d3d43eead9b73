// Damaged, cut, foreign and forged day files: refused as a whole, and the cellar is unchanged.
#include "core/base/sha256.hpp"
#include "core/cellar/checking.hpp"
#include "tests/fault/bad_day_file.hpp"

#include <filesystem>
#include <fstream>

namespace spile::cellar {

namespace {

bool isRefusal(ErrorCode code)
{
    return code == ErrorCode::Damaged || code == ErrorCode::Unsupported ||
           code == ErrorCode::TooLarge || code == ErrorCode::Foreign;
}

// By the number of the fault that they stand for.
using Fault15_BitFlipInADayFile = BadDayFile;
using Fault16_TruncatedDayFile = BadDayFile;
using Fault17_SameDayFileTwice = BadDayFile;
using Fault20_RecordsReorderedOrTwice = BadDayFile;
using Fault21_DayFileOfAnotherCellar = BadDayFile;
using Fault25_TrailingData = BadDayFile;
using Fault42_PhotoOfOtherContent = BadDayFile;
using Fault50_NewerDayFile = BadDayFile;
using Fault56_DeviceThatIsNotAdmitted = BadDayFile;
using Fault57_WrongSignature = BadDayFile;
using Fault58_GapInAChain = BadDayFile;

}  // namespace

TEST_F(Fault16_TruncatedDayFile, IsRefusedAtEveryLengthThatIsTooShort)
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

TEST_F(Fault15_BitFlipInADayFile, IsRefusedWithAnySingleBitFlipped)
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

TEST_F(Fault25_TrailingData, IsRefusedWithBytesBehindItsEnd)
{
    Bytes longer = support::contentOf(file);
    longer.push_back(0);
    support::overwrite(bad, longer);
    expectRefused(bad, ErrorCode::Damaged);
}

TEST_F(Fault21_DayFileOfAnotherCellar, OfAnotherCellarIsRefusedAsForeign)
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

TEST_F(Fault17_SameDayFileTwice, AddsNothingTheSecondTime)
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

TEST_F(Fault57_WrongSignature, WithAnAlteredRecordIsRefused)
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

TEST_F(Fault57_WrongSignature, WithARecordSignedByAnotherKeyIsRefused)
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

TEST_F(Fault57_WrongSignature, WithASignatureForAnotherCellarIsRefused)
{
    DayFile forged(file);
    auto entries = forged.entries();
    entries[0].signature = phoneKey().sign(ledger::signedMessage(CellarId(), entries[0].id()));
    forged.setEntries(entries);
    expectForgeryRefused(forged);
}

TEST_F(Fault58_GapInAChain, WithARecordThatNamesAnotherBeforeItIsRefused)
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

TEST_F(Fault57_WrongSignature, WithTheSignatureOfAnotherFileIsRefused)
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

TEST_F(Fault58_GapInAChain, ThatSkipsARecordIsRefused)
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

TEST_F(Fault20_RecordsReorderedOrTwice, WithRecordsSwappedOrTwiceIsRefused)
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

TEST_F(Fault58_GapInAChain, ThatEndsBeforeItsRangeDoesIsRefused)
{
    DayFile forged(file);
    auto entries = forged.entries();
    entries.pop_back();
    forged.setEntries(entries);
    expectForgeryRefused(forged);
}

TEST_F(Fault42_PhotoOfOtherContent, WithAPhotoOfOtherContentIsRefused)
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

TEST_F(Fault57_WrongSignature, SealedByAKeyThatIsNotItsSendersIsRefused)
{
    DayFile forged(file);
    forged.seal(ledger::SigningKey(KeySeed({9})));
    forged.write(bad);
    expectRefused(bad, ErrorCode::Damaged);
}

TEST_F(Fault56_DeviceThatIsNotAdmitted, SentByADeviceThatIsNotAdmittedMayCarryRecordsOfOthers)
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

TEST_F(Fault50_NewerDayFile, ForANewerReaderIsRefusedAsUnsupported)
{
    DayFile forged(file);
    // The header's second pair: key 2, min_reader, value 1 (FORMAT.md).
    std::string& header = forged.member(ledger::bag::header);
    ASSERT_EQ(header.substr(1, 4), std::string("\x01\x01\x02\x01", 4));
    header[4] = 2;
    expectForgeryRefused(forged, ErrorCode::Unsupported);
}

}  // namespace spile::cellar
