// Bits that flip on a device's disk: what they spoil is found, comes back from another device's day
// file, and the state with it.
#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/photographing.hpp"
#include "core/cellar/queries.hpp"
#include "core/cellar/verifying.hpp"
#include "core/ledger/mending.hpp"
#include "core/ledger/schema.hpp"
#include "tests/support/day_file.hpp"
#include "tests/support/fleet.hpp"

#include <fstream>
#include <gmock/gmock.h>

namespace spile::cellar {

namespace {

using testing::HasSubstr;
using testing::IsEmpty;

// A desk and a phone that hold the same, and a day file of the phone with all of it.
class Flipped : public testing::Test {
protected:
    support::Fleet fleet{2};
    EntryId third;
    Path file;
    Sha256 records, root;

    void SetUp() override
    {
        fleet.exchangeAll();
        std::vector<EntryId> draws;
        for (int i = 0; i < 6; ++i) {
            fleet.at(0).clock.pass(std::chrono::minutes(5));
            draws.push_back(*recordDraw(desk(), {.barrel = fleet.small().barrel,
                                                 .volume = millilitres(50 + i),
                                                 .method = "valve"}));
        }
        third = draws[2];
        ASSERT_TRUE(voidEntry(desk(), third));
        fleet.exchangeUntilQuiet();
        file = fleet.handOut(1, std::nullopt);
        fleet.takeIn(0, file);
        records = support::recordBytes(desk());
        root = *stateRoot(desk());
    }
    Cellar& desk() { return fleet.cellar(0); }
    // Alter a row as a flipped bit would, which asks no trigger.
    void spoil(const std::string& assignment)
    {
        const auto done = desk().database().run(
            std::string("DROP TRIGGER entry_is_never_changed; UPDATE entry SET ") + assignment +
            " WHERE id = x'" + third.hex() + "';" + ledger::entriesNeverChange);
        ASSERT_TRUE(done) << support::textOf(done.error());
    }
    std::vector<Error> findAndNote()
    {
        const auto report = check(desk(), {});
        EXPECT_TRUE(report);
        EXPECT_TRUE(keepRound(desk(), *report, fleet.at(0).clock.now()));
        return report->problems;
    }
    void expectAsItWas()
    {
        EXPECT_EQ(support::problemsOf(desk()), "");
        EXPECT_EQ(support::recordBytes(desk()), records);
        EXPECT_EQ(*stateRoot(desk()), root);
        EXPECT_FALSE(*ledger::isDamaged(desk().database()));
    }
};
using Fault14_BitFlipInTheDatabase = Flipped;
using Fault42_PhotoThatChangedOnTheDisk = Flipped;

}  // namespace

TEST_F(Fault14_BitFlipInTheDatabase, ADamagedRecordComesBackFromADayFile)
{
    for (const std::string assignment :
         {"core = CAST(x'00' || substr(core, 2) AS BLOB)",
          "core = CAST(substr(core, 1, 40) || x'ff' || substr(core, 42) AS BLOB)", "body = x'a0'",
          "signature = zeroblob(64)", "kind = 'gauge'", "seq = seq + 7", "subject = zeroblob(16)",
          "at_ms = at_ms + 1", "d = 2", "id = CAST(x'ee' || substr(id, 2) AS BLOB)"}) {
        SCOPED_TRACE(assignment);
        spoil(assignment);
        const auto found = findAndNote();
        ASSERT_THAT(found, testing::Not(IsEmpty()));
        EXPECT_THAT(found.front().limit, HasSubstr("day file for all"));
        EXPECT_GE(fleet.takeIn(0, file).mended, 1U);  // the file has been taken in before
        expectAsItWas();
    }
}

TEST_F(Fault14_BitFlipInTheDatabase, ADamagedRecordIsNamedByItsDeviceAndNumber)
{
    spoil("body = x'a0'");
    const std::int64_t seq =
        *desk().database().integer(0, "SELECT seq FROM entry WHERE id = ?", third);
    EXPECT_EQ(findAndNote().front().subject,
              "record " + desk().ledger().device().hex().substr(0, 8) + "/" + std::to_string(seq));
}

TEST_F(Fault14_BitFlipInTheDatabase, TheStateAndItsIndicesComeBackToo)
{
    // As a state that was folded from what is damaged; and an index that lost a row.
    ASSERT_TRUE(desk().database().run("UPDATE state_draw SET volume_ml = volume_ml + 1;"));
    spoil("body = x'a0'");
    ASSERT_THAT(findAndNote(), testing::Not(IsEmpty()));
    fleet.takeIn(0, file);
    expectAsItWas();
}

TEST_F(Fault14_BitFlipInTheDatabase, WhatTheFileDoesNotHaveStaysNotedAndBlocksNothing)
{
    fleet.at(0).clock.pass(std::chrono::minutes(5));
    third = *recordDraw(
        desk(), {.barrel = fleet.small().barrel, .volume = millilitres(70), .method = "valve"});
    spoil("core = CAST(x'00' || substr(core, 2) AS BLOB)");
    ASSERT_THAT(findAndNote(), testing::Not(IsEmpty()));
    EXPECT_EQ(fleet.takeIn(0, file).mended, 0U);
    EXPECT_TRUE(*ledger::isDamaged(desk().database()));
    EXPECT_TRUE(recordDraw(
        desk(), {.barrel = fleet.small().barrel, .volume = millilitres(80), .method = "valve"}));
}

// In the file itself, wherever the id of the record stands: its row, the index, the entry after it.
TEST_F(Fault14_BitFlipInTheDatabase, BitsOfItsIdInTheFileComeBack)
{
    ASSERT_TRUE(desk().database().checkpoint(0));
    fleet.backUp(0);
    const Path backup = fleet.at(0).folder.string() + ".backup";
    std::filesystem::remove(backup / "ledger.db-wal");  // all of it is moved
    const Bytes bytes = support::contentOf(backup / "ledger.db");
    const std::string whole(asText(bytes));
    const std::string id(asText(third.bytes()));
    int mended = 0;
    for (std::size_t at = whole.find(id); at != std::string::npos; at = whole.find(id, at + 1)) {
        SCOPED_TRACE(at);
        std::string flipped = whole;
        flipped[at + 9] = static_cast<char>(flipped[at + 9] ^ 0x10);
        support::overwrite(backup / "ledger.db", asBytes(flipped));
        ASSERT_TRUE(fleet.restore(0));
        const auto report = check(desk(), {});
        if (report && !report->problems.empty()) {
            ASSERT_TRUE(keepRound(desk(), *report, fleet.at(0).clock.now()));
            mended += fleet.takeIn(0, file).mended > 0 ? 1 : 0;
            expectAsItWas();
        }
    }
    EXPECT_GE(mended, 2) << "its row, and the entry after it";
}

TEST_F(Fault42_PhotoThatChangedOnTheDisk, IsPutAsideAskedForAndComesBack)
{
    const Bytes picture = support::smallPicture();
    const auto photo = recordPhoto(
        desk(), {.barrel = fleet.small().barrel, .picture = picture, .purpose = "colour"});
    ASSERT_TRUE(photo) << support::textOf(photo.error());
    fleet.exchangeUntilQuiet();
    const auto& photos = desk().ledger().photos();
    const Path path = photos.pathOf(photo->photo.hash);
    std::ofstream(path, std::ios::binary) << "no picture";
    // By rounds of verifying, as the app does.
    for (int part = 0; part < 3; ++part) {
        constexpr int all = 1000;
        const auto round = verifyNext(desk().database(), photos, *roundSoFar(desk().database()),
                                      all, fleet.at(0).clock.now());
        ASSERT_TRUE(round);
        ASSERT_TRUE(keepRound(desk(), *round));
    }
    EXPECT_FALSE(std::filesystem::exists(path));
    EXPECT_TRUE(std::filesystem::exists(path.string() + ".damaged"));
    EXPECT_EQ(check(desk(), {})->missingPhotos, 1U);
    // Its day file asks for it; the phone's for the desk brings it, without any record.
    fleet.takeIn(1, fleet.handOut(0, std::nullopt));
    EXPECT_EQ(fleet.takeIn(0, fleet.handOut(1, 0)).photos, 1U);
    EXPECT_TRUE(photos.isWhole(photo->photo.hash));
    EXPECT_FALSE(std::filesystem::exists(path.string() + ".damaged"));
    EXPECT_EQ(check(desk(), {})->missingPhotos, 0U);
    EXPECT_EQ(support::problemsOf(desk()), "");
}

}  // namespace spile::cellar
