// Bits that flip on a device's disk: what they spoil is found, comes back from another device's day
// file, and the state with it.
#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/photographing.hpp"
#include "core/cellar/acts/registering.hpp"
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
    // What the desk can still hand out.
    Path handOutAround(std::uint64_t leftOut)
    {
        const Path part = fleet.at(0).folder.string() + ".spile";
        const auto out = handOut(desk(), part, std::nullopt);
        EXPECT_TRUE(out) << support::textOf(out.error());
        EXPECT_EQ(out->file.leftOut, leftOut);
        EXPECT_EQ(static_cast<std::int64_t>(out->file.entries + leftOut),
                  *desk().database().integer(0, "SELECT count(*) FROM entry"));
        EXPECT_TRUE(*ledger::isDamaged(desk().database())) << "noted, without a round";
        return part;
    }
    // A device that has nothing joins with `part`, waits for what is missing, and gets it.
    void joinAndComplete(const Path& part)
    {
        support::TestDevice late(7);
        const auto joined = late.join(part);
        EXPECT_GE(*joined->database().integer(0, "SELECT count(*) FROM waiting"), 1);
        const auto rest = takeIn(*joined, file);
        ASSERT_TRUE(rest) << support::textOf(rest.error());
        EXPECT_EQ(support::problemsOf(*joined), "");
        EXPECT_EQ(*stateRoot(*joined), root);
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
using Fault14_HandedOutAroundADamagedRecord = Flipped;
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

// What is kept beside the entries.
TEST_F(Fault14_BitFlipInTheDatabase, KeysHeadsAndTrustComeBackToo)
{
    for (const std::string own : {"=", "<>"}) {
        const std::string chain =
            " WHERE d " + own + " (SELECT d FROM entry WHERE id = x'" + third.hex() + "')";
        for (const std::string assignment :
             {"device_chain SET public_key = CAST(x'ee' || substr(public_key, 2) AS BLOB)",
              "device_chain SET device = CAST(x'ee' || substr(device, 2) AS BLOB)",
              "device_chain SET trusted = 0", "head SET seq = seq + 1",
              "head SET id = CAST(x'ee' || substr(id, 2) AS BLOB)"}) {
            SCOPED_TRACE(assignment + chain);
            ASSERT_TRUE(desk().database().run("UPDATE " + assignment + chain));
            ASSERT_THAT(findAndNote(), testing::Not(IsEmpty()));
            fleet.takeIn(0, file);
            expectAsItWas();
        }
    }
}

TEST_F(Fault14_BitFlipInTheDatabase, NoRecordNamesASpoiltHead)
{
    ASSERT_TRUE(
        desk().database().run("UPDATE head SET id = CAST(x'ee' || substr(id, 2) AS BLOB) WHERE d = "
                              "(SELECT d FROM entry WHERE id = x'" +
                              third.hex() + "')"));
    ASSERT_TRUE(desk().database().checkpoint(0));
    fleet.backUp(0);
    ASSERT_TRUE(fleet.restore(0));  // so that it is read anew
    fleet.at(0).clock.pass(std::chrono::minutes(5));
    ASSERT_TRUE(recordDraw(
        desk(), {.barrel = fleet.small().barrel, .volume = millilitres(70), .method = "valve"}));
    EXPECT_EQ(support::problemsOf(desk()), "");
    EXPECT_EQ(fleet.takeIn(1, fleet.handOut(0, 1)).added, 1U);
}

TEST_F(Fault14_BitFlipInTheDatabase, AWaitingRecordThatChangedIsDroppedAndComesAgain)
{
    std::uint64_t seed = 70;
    for (const std::string assignment :
         {"core = CAST(x'00' || substr(core, 2) AS BLOB)", "body = x'a0'",
          "signature = zeroblob(64)", "id = CAST(x'ee' || substr(id, 2) AS BLOB)"}) {
        SCOPED_TRACE(assignment);
        support::TestDevice late(++seed);
        const auto other = late.join(file);
        ASSERT_TRUE(recordDraw(
            *other,
            {.barrel = fleet.small().barrel, .volume = millilitres(70), .method = "valve"}));
        const Path waits = late.folder.path() / "waits.spile";
        ASSERT_TRUE(handOut(*other, waits, std::nullopt));
        EXPECT_EQ(fleet.takeIn(0, waits).waiting, 1U);
        ASSERT_TRUE(desk().database().run("UPDATE waiting SET " + assignment));
        EXPECT_NE(support::problemsOf(desk()), "");
        support::admitDevice(desk(), *other);
        EXPECT_EQ(*desk().database().integer(0, "SELECT count(*) FROM waiting"), 0);
        EXPECT_EQ(fleet.takeIn(0, waits).added, 1U) << "the same file again";
        EXPECT_EQ(support::problemsOf(desk()), "");
        EXPECT_FALSE(*ledger::isDamaged(desk().database()));
    }
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

TEST_F(Fault14_HandedOutAroundADamagedRecord, TheRestGoesOutAndWhatIsMissingIsAskedFor)
{
    const std::vector<std::pair<std::string, std::uint64_t>> spoilt = {
        {"core = CAST(x'00' || substr(core, 2) AS BLOB)", 1},
        {"body = x'a0'", 1},
        {"signature = zeroblob(64)", 1},
        // The record after it counts as damaged, too: none is before it.
        {"seq = seq + 7", 2},
        {"d = 2", 2},
    };
    for (const auto& [assignment, leftOut] : spoilt) {
        SCOPED_TRACE(assignment);
        spoil(assignment);
        const Path part = handOutAround(leftOut);
        EXPECT_EQ(fleet.takeIn(1, part).added, 0U) << "the phone has all of it";
        joinAndComplete(part);
        // Without having been asked, the phone would not send what the desk said it has.
        EXPECT_EQ(fleet.takeIn(0, fleet.handOut(1, 0)).mended, leftOut);
        expectAsItWas();
    }
}

TEST_F(Fault14_HandedOutAroundADamagedRecord, AColumnThatIsNotSentHoldsNothingBack)
{
    for (const std::string assignment :
         {"kind = 'gauge'", "id = CAST(x'ee' || substr(id, 2) AS BLOB)"}) {
        SCOPED_TRACE(assignment);
        spoil(assignment);
        support::TestDevice late(7);
        EXPECT_EQ(*stateRoot(*late.join(fleet.handOut(0, std::nullopt))), root);
        ASSERT_THAT(findAndNote(), testing::Not(IsEmpty()));
        fleet.takeIn(0, file);
    }
}

TEST_F(Fault14_HandedOutAroundADamagedRecord, NeverBetweenTheRecordsOfOneTap)
{
    const auto barrel =
        registerBarrel(desk(), {.size = litres(200),
                                .fullSince = FullSince{.since = {fleet.at(0).clock.now(), {}},
                                                       .batch = fleet.small().batch}});
    ASSERT_TRUE(barrel) << support::textOf(barrel.error());
    ASSERT_TRUE(recordDraw(
        desk(), {.barrel = barrel->barrel, .volume = millilitres(40), .method = "valve"}));
    fleet.exchangeUntilQuiet();
    file = fleet.handOut(1, std::nullopt);
    records = support::recordBytes(desk());
    root = *stateRoot(desk());
    for (const std::string kind : {"barrel", "fill"}) {
        SCOPED_TRACE(kind);
        third = **desk().database().first([](const ledger::Row& row) { return row.id<EntryId>(0); },
                                          "SELECT id FROM entry WHERE subject = ? AND kind = ?",
                                          barrel->barrel, kind);
        spoil("body = x'a0'");
        const Path part = handOutAround(2);
        joinAndComplete(part);
        fleet.takeIn(1, part);
        EXPECT_EQ(fleet.takeIn(0, fleet.handOut(1, 0)).mended, 1U);
        expectAsItWas();
    }
}

TEST_F(Fault14_HandedOutAroundADamagedRecord, WhereverInABranchedChainItLies)
{
    const auto drawAt = [&](std::size_t device) {
        fleet.at(device).clock.pass(std::chrono::minutes(5));
        return *recordDraw(
            fleet.cellar(device),
            {.barrel = fleet.small().barrel, .volume = millilitres(30), .method = "valve"});
    };
    fleet.backUp(1);
    const std::vector<EntryId> ofOne = {drawAt(1), drawAt(1)};
    fleet.takeIn(0, fleet.handOut(1, std::nullopt));
    ASSERT_TRUE(fleet.restore(1));
    drawAt(1);
    fleet.exchangeUntilQuiet();
    file = fleet.handOut(1, std::nullopt);
    records = support::recordBytes(desk());
    root = *stateRoot(desk());
    for (const EntryId& lost : ofOne) {
        SCOPED_TRACE(lost.hex());
        third = lost;
        for (const std::string assignment :
             {"body = x'a0'", "id = CAST(x'ee' || substr(id, 2) AS BLOB)"}) {
            spoil(assignment);
            const Path part = handOutAround(1);
            EXPECT_EQ(fleet.takeIn(1, part).added, 0U);
            EXPECT_EQ(fleet.takeIn(0, fleet.handOut(1, 0)).mended, 1U);
            expectAsItWas();
        }
    }
}

TEST_F(Fault14_HandedOutAroundADamagedRecord, ForOneDeviceOnlyWhatItLacks)
{
    fleet.at(0).clock.pass(std::chrono::minutes(5));
    ASSERT_TRUE(recordDraw(
        desk(), {.barrel = fleet.small().barrel, .volume = millilitres(70), .method = "valve"}));
    spoil("body = x'a0'");  // which the phone has
    ASSERT_THAT(findAndNote(), testing::Not(IsEmpty()));
    const Path part = fleet.handOut(0, 1);
    EXPECT_EQ(fleet.takeIn(1, part).entries, 1U);
    EXPECT_EQ(fleet.takeIn(0, fleet.handOut(1, 0)).mended, 1U);
    EXPECT_EQ(support::problemsOf(desk()), "");
    EXPECT_EQ(*stateRoot(desk()), *stateRoot(fleet.cellar(1)));
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

TEST_F(Fault42_PhotoThatChangedOnTheDisk, HoldsUpNoDayFile)
{
    const auto photo = recordPhoto(
        desk(),
        {.barrel = fleet.small().barrel, .picture = support::smallPicture(), .purpose = "colour"});
    ASSERT_TRUE(photo) << support::textOf(photo.error());
    fleet.exchangeUntilQuiet();
    const Path path = desk().ledger().photos().pathOf(photo->photo.hash);
    std::ofstream(path, std::ios::binary) << "no picture";
    const Path part = fleet.at(0).folder.string() + ".spile";
    const auto out = handOut(desk(), part, std::nullopt);
    ASSERT_TRUE(out) << support::textOf(out.error());
    EXPECT_EQ(out->file.photos, 0U);
    EXPECT_EQ(out->file.leftOutPhotos, 1U);
    EXPECT_EQ(out->file.leftOut, 0U);
    EXPECT_FALSE(std::filesystem::exists(path)) << "it is put aside";
    fleet.takeIn(1, part);  // which asks for it
    EXPECT_EQ(fleet.takeIn(0, fleet.handOut(1, 0)).photos, 1U);
    EXPECT_EQ(support::problemsOf(desk()), "");
}

}  // namespace spile::cellar
