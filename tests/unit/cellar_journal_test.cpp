#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/observing.hpp"
#include "core/cellar/acts/photographing.hpp"
#include "core/cellar/acts/tasting.hpp"
#include "core/cellar/acts/trusting.hpp"
#include "core/cellar/journal.hpp"
#include "core/cellar/settling.hpp"
#include "tests/support/fleet.hpp"

#include <gtest/gtest.h>

namespace spile::cellar {

namespace {

class Journal : public testing::Test {
protected:
    support::Fleet fleet{2};
    Cellar& desk = fleet.cellar(0);
    Cellar& phone = fleet.cellar(1);
    SubjectId barrel = fleet.small().barrel;
    Circumstance by{{}, fleet.small().person, {}};

    Journal() { fleet.exchangeAll(); }

    EntryId draw(double ml = 200)
    {
        fleet.at(1).clock.pass(std::chrono::minutes(3));
        const auto made = recordDraw(phone, {.barrel = barrel,
                                             .volume = millilitres(ml),
                                             .method = "sample hole",
                                             .circumstance = by});
        EXPECT_TRUE(made) << support::textOf(made.error());
        return made.value_or(EntryId());
    }
    std::vector<OwnAct> acts(int limit = 100)
    {
        return *ownActs(phone.database(), fromTheNewest, limit);
    }
};

}  // namespace

TEST_F(Journal, HasWhatThisDeviceRecordedTheNewestFirst)
{
    EXPECT_TRUE(acts().empty());
    const EntryId first = draw(150);
    const EntryId second = draw(200);
    const auto found = acts();
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0].entry, second);
    EXPECT_EQ(found[1].entry, first);
    EXPECT_EQ(found[0].kind, "draw");
    EXPECT_EQ(found[0].seq, found[1].seq + 1);
    EXPECT_EQ(found[0].subject, barrel);
    EXPECT_EQ(found[0].barrelMark, "Rum 3");
    EXPECT_EQ(found[0].barrelCode, fleet.small().code);
    EXPECT_EQ(found[0].person, "Ada");
    EXPECT_EQ(found[0].text, "sample hole");
    EXPECT_NEAR(inMillilitres(*found[1].volume), 150, 1e-9);
    EXPECT_EQ(found[0].recorded, fleet.at(1).clock.now());
    EXPECT_EQ(found[0].at, found[0].recorded);
    EXPECT_FALSE(found[0].voided || found[0].amended || found[0].handedOut);
}

TEST_F(Journal, HasNothingOfOthersAndNothingNobodyDid)
{
    ASSERT_TRUE(recordCheck(desk, {.barrel = barrel, .finding = "dry"}));
    EXPECT_TRUE(acts().empty());
    const auto own = ownActs(desk.database(), fromTheNewest, 100);
    ASSERT_TRUE(own);
    for (const OwnAct& act : *own) {
        EXPECT_NE(act.kind, "genesis");
        EXPECT_NE(act.kind, "device");
    }
    EXPECT_EQ(own->size(), 5U);
}

TEST_F(Journal, SaysWhatEachLineNeeds)
{
    NewTaste taste{barrel, {{"oak", 5}, {"vanilla", std::nullopt}, {"roast", 3}}};
    taste.circumstance = by;
    ASSERT_TRUE(recordTaste(phone, taste));
    EXPECT_EQ(acts(1).at(0).scores, 2);
    ASSERT_TRUE(recordVerdict(phone, {barrel, "hold", {}, by}));
    EXPECT_EQ(acts(1).at(0).text, "hold");
    ASSERT_TRUE(recordMove(phone, barrel, *registerPlace(phone, "Vault"), by));
    EXPECT_EQ(acts(1).at(0).name, "Vault");
    EXPECT_EQ(acts(2).at(1).kind, "place");
    EXPECT_EQ(acts(2).at(1).name, "Vault");
    EXPECT_EQ(acts(2).at(1).barrelCode, "");
    fleet.at(1).clock.pass(std::chrono::minutes(1));
    ASSERT_TRUE(recordEmpty(phone, {barrel, litres(180), "refill at once", by}));
    EXPECT_EQ(acts(1).at(0).text, "refill at once");
    fleet.at(1).clock.pass(std::chrono::minutes(1));
    ASSERT_TRUE(recordFill(phone, {.barrel = barrel, .batch = fleet.small().batch}));
    EXPECT_EQ(acts(1).at(0).name, "Night Ferry");
    const Instant before = *fromIso("2025-05-01");
    ASSERT_TRUE(
        recordCheck(phone, {barrel, "dry", true, {ledger::EventTime{before}, by.person, {}}}));
    EXPECT_EQ(acts(1).at(0).at, before);
    EXPECT_GT(acts(1).at(0).recorded, before);
}

TEST_F(Journal, SaysWhichDeviceAndHowFarItsClockWasAhead)
{
    draw();
    fleet.exchangeAll();
    SimulatedClock& clock = fleet.at(0).clock;
    const DeviceId other = phone.ledger().device();
    const auto newest = [&] { return ownActs(desk.database(), fromTheNewest, 1)->at(0); };
    const auto observed =
        observeClock(desk, other, clock.now() + std::chrono::hours(3), {clock.now(), 0}, by.person);
    ASSERT_TRUE(observed) << support::textOf(observed.error());
    EXPECT_EQ(newest().kind, "clock_observe");
    EXPECT_EQ(newest().device, *nameOfDevice(desk.database(), other));
    EXPECT_FALSE(newest().device.empty());
    EXPECT_EQ(newest().ahead, std::chrono::hours(3));
    EXPECT_EQ(newest().person, "Ada");
    EXPECT_TRUE(mayVoid(newest().kind));
    ASSERT_TRUE(voidEntry(desk, *observed));
    EXPECT_TRUE(newest().voided);
    ASSERT_TRUE(observeOwnClock(desk, {clock.now() + std::chrono::hours(2), 0}));
    EXPECT_EQ(newest().device, *nameOfDevice(desk.database(), desk.ledger().device()));
    EXPECT_EQ(newest().ahead, -std::chrono::hours(2));
    ASSERT_TRUE(cutOff(desk, {.device = other}));
    EXPECT_EQ(newest().kind, "cut_off");
    EXPECT_EQ(newest().device, *nameOfDevice(desk.database(), other));
    EXPECT_FALSE(newest().ahead);
    EXPECT_FALSE(mayVoid(newest().kind));
    EXPECT_FALSE(voidEntry(desk, newest().entry));
}

TEST_F(Journal, ShowsWhatWasTakenBackAndCorrected)
{
    const EntryId entry = draw();
    const ledger::Fields fields = {
        {static_cast<std::uint32_t>(Field::VolumeMl), std::int64_t{250}}};
    ASSERT_TRUE(amend(phone, entry, fields));
    ASSERT_EQ(acts().size(), 1U);
    EXPECT_TRUE(acts()[0].amended);
    EXPECT_NEAR(inMillilitres(*acts()[0].volume), 250, 1e-9);
    const EntryId taken = *voidEntry(phone, entry);
    ASSERT_EQ(acts().size(), 1U);
    EXPECT_TRUE(acts()[0].voided);
    EXPECT_EQ(acts()[0].voidedBy, taken);
    ASSERT_TRUE(voidEntry(phone, *acts()[0].voidedBy));
    EXPECT_FALSE(acts()[0].voided);
}

TEST_F(Journal, IsReadPageByPage)
{
    std::vector<EntryId> made;
    for (int i = 0; i < 25; ++i) {
        made.push_back(draw(10));
    }
    std::vector<EntryId> read;
    std::uint64_t before = fromTheNewest;
    for (;;) {
        const auto page = ownActs(phone.database(), before, 10);
        ASSERT_TRUE(page);
        if (page->empty()) {
            break;
        }
        for (const OwnAct& act : *page) {
            read.push_back(act.entry);
            before = act.seq;
        }
    }
    std::reverse(made.begin(), made.end());
    EXPECT_EQ(read, made);
}

TEST_F(Journal, CountsWhatNoDayFileCoversYet)
{
    const auto none = unsent(phone.database());
    ASSERT_TRUE(none);
    EXPECT_EQ(none->entries, 0U);
    ASSERT_TRUE(none->last);  // of the exchange in the beginning
    draw();
    draw();
    ASSERT_TRUE(recordPhoto(phone, {barrel, support::smallPicture(), "colour", {}, by}));
    const auto some = unsent(phone.database());
    EXPECT_EQ(some->entries, 3U);
    EXPECT_EQ(some->byKind, (std::map<std::string, std::uint64_t>{{"draw", 2}, {"photo", 1}}));
    EXPECT_EQ(some->photos, 1U);

    fleet.at(1).clock.pass(std::chrono::minutes(1));
    fleet.handOut(1, 0);
    const auto sent = unsent(phone.database());
    EXPECT_EQ(sent->entries, 0U);
    EXPECT_TRUE(sent->byKind.empty());
    EXPECT_EQ(sent->photos, 0U);
    EXPECT_EQ(sent->last->made, fleet.at(1).clock.now());
    EXPECT_EQ(sent->last->entries, 3U);
    EXPECT_EQ(sent->last->number, none->last->number + 1);
    EXPECT_EQ(sent->last->to, desk.ledger().device());
    EXPECT_TRUE(acts()[0].handedOut);
    draw();
    EXPECT_EQ(unsent(phone.database())->entries, 1U);
    EXPECT_FALSE(acts()[0].handedOut);
    EXPECT_TRUE(acts()[1].handedOut);
    fleet.handOut(1, std::nullopt);
    EXPECT_FALSE(unsent(phone.database())->last->to);
}

TEST_F(Journal, KnowsWhatOthersAreProvenToHold)
{
    const auto begun = receipts(phone.database());
    ASSERT_TRUE(begun);
    ASSERT_EQ(begun->size(), 1U);
    EXPECT_EQ(begun->at(0).id, desk.ledger().device());
    EXPECT_EQ(begun->at(0).device, "Desk");
    EXPECT_EQ(begun->at(0).lacks, 0U);
    draw();
    draw();
    const Path file = fleet.handOut(1, 0);
    EXPECT_EQ(receipts(phone.database())->at(0).lacks, 2U);  // handed out is not yet received
    fleet.takeIn(0, file);
    EXPECT_EQ(receipts(phone.database())->at(0).lacks, 2U);
    fleet.at(1).clock.pass(std::chrono::hours(1));
    fleet.takeIn(1, fleet.handOut(0, 1));
    const Receipt receipt = receipts(phone.database())->at(0);
    EXPECT_EQ(receipt.lacks, 0U);
    EXPECT_EQ(receipt.holds, acts(1).at(0).seq);
    EXPECT_EQ(receipt.takenIn, fleet.at(1).clock.now());
}

TEST_F(Journal, HasNoReceiptOfADeviceThatSentNothing)
{
    support::TestDevice alone(89);
    const auto fresh = alone.newCellar();
    EXPECT_TRUE(receipts(fresh->database())->empty());
    EXPECT_FALSE(unsent(fresh->database())->last);
    EXPECT_EQ(unsent(fresh->database())->entries, 0U);
}

TEST(Membership, IsThereOnceTheDeskHasLetTheDeviceIn)
{
    support::Fleet fleet(2);
    const DeviceId phone = fleet.cellar(1).ledger().device();
    const auto at = [&](std::size_t member, const DeviceId& device) {
        return *ledger::membershipOf(fleet.cellar(member).database(), device);
    };
    const DeviceId desk = fleet.cellar(0).ledger().device();
    EXPECT_TRUE(at(0, desk).admitted && at(0, desk).mayAdmit);
    EXPECT_FALSE(at(0, phone).admitted);
    EXPECT_FALSE(at(1, phone).admitted);  // though its own entries count here
    fleet.exchangeAll();
    EXPECT_TRUE(at(1, phone).admitted);
    EXPECT_FALSE(at(1, phone).mayAdmit);
}

}  // namespace spile::cellar
