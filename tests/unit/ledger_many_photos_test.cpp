// More photos than one day file has room for, or may ask for.
#include "core/base/sha256.hpp"
#include "core/ledger/hand_out.hpp"
#include "tests/support/fleet.hpp"

#include <algorithm>
#include <gtest/gtest.h>
#include <set>

namespace spile::cellar {

namespace {

constexpr int photos = 40;

void recordPhotos(Cellar& cellar, const SubjectId& barrel)
{
    auto change = cellar.ledger().change();
    ASSERT_TRUE(change);
    ledger::NewEntry entry{"of a later version", barrel, {}, {}, {}, {}, {}};
    for (int i = 0; i < photos; ++i) {
        const std::string picture = "picture " + std::to_string(i);
        const auto hash = cellar.ledger().photos().add(asBytes(picture));
        ASSERT_TRUE(hash) << support::textOf(hash.error());
        entry.photos.push_back({*hash, picture.size()});
        if (entry.photos.size() == ledger::photosMax || i + 1 == photos) {
            ASSERT_TRUE(change->record(entry));
            entry.photos.clear();
        }
    }
    ASSERT_TRUE(change->commit());
}

std::int64_t missing(Cellar& cellar)
{
    return *cellar.database().integer(-1, "SELECT count(*) FROM photo WHERE present = 0");
}

ledger::HandedOut handOutSome(Cellar& cellar, const Path& file, const ledger::DayFileRoom& room)
{
    auto out = ledger::handOut(cellar.ledger(), file, {}, programVersion, {}, {}, room);
    EXPECT_TRUE(out) << support::textOf(out.error());
    return out.value_or(ledger::HandedOut());
}

std::vector<Sha256> hashes(int count)
{
    std::vector<Sha256> made;
    for (int i = 0; i < count; ++i) {
        made.push_back(sha256(asBytes("picture " + std::to_string(i))));
    }
    std::sort(made.begin(), made.end());
    return made;
}

}  // namespace

TEST(ManyPhotos, ComeWithTheNextDayFileWhereOneHasNoRoomForThem)
{
    support::Fleet fleet(2);
    recordPhotos(fleet.cellar(0), fleet.small().barrel);
    const Path file = fleet.at(0).folder / "all.spile";
    const auto out = handOutSome(fleet.cellar(0), file, {.photos = 30});
    EXPECT_EQ(out.photos, 30U);
    EXPECT_EQ(out.photosLeft, 10U);
    EXPECT_EQ(out.missingPhotos, 0U) << "they are here";

    fleet.takeIn(1, file);
    EXPECT_EQ(missing(fleet.cellar(1)), 10);
    fleet.takeIn(0, fleet.handOut(1, {}));
    fleet.takeIn(1, fleet.handOut(0, 1));
    EXPECT_EQ(missing(fleet.cellar(1)), 0);
}

// The header, the bag's own files, and as many files of entries as 8 GB are.
TEST(ManyPhotos, LeaveRoomForTheEntries)
{
    EXPECT_LE(ledger::DayFileRoom().photos + 1000, ledger::ZipLimits().maxMembers);
    EXPECT_LE(ledger::DayFileRoom().asked, ledger::headerListMost);
}

TEST(ManyPhotos, AreAskedForInTurn)
{
    support::Fleet fleet(2);
    recordPhotos(fleet.cellar(0), fleet.small().barrel);
    const Path file = fleet.at(0).folder / "none.spile";
    handOutSome(fleet.cellar(0), file, {.photos = 0});
    fleet.takeIn(1, file);
    ASSERT_EQ(missing(fleet.cellar(1)), photos);
    const auto countAsked = [&] {
        return *fleet.cellar(0).database().integer(-1, "SELECT count(*) FROM peer_missing_photo");
    };
    const auto askedFirst = [&] {
        return *fleet.cellar(0).database().first(
            [](const ledger::Row& row) { return row.id<Sha256>(0); },
            "SELECT sha256 FROM peer_missing_photo ORDER BY sha256 LIMIT 1");
    };
    std::set<Sha256> firsts;
    for (int i = 0; i < 5; ++i) {
        const Path asks = fleet.at(1).folder / ("asks" + std::to_string(i) + ".spile");
        handOutSome(fleet.cellar(1), asks, {.asked = 10});
        fleet.takeIn(0, asks);
        EXPECT_EQ(countAsked(), 10);
        firsts.insert(*askedFirst());
    }
    EXPECT_GT(firsts.size(), 1U);
}

// Also where a device's files go to several receivers, one after the other.
TEST(ManyPhotos, AreAllAskedForOfEveryReceiver)
{
    for (const int count : {11, 20, 40, 100, 101}) {
        const std::vector<Sha256> all = hashes(count);
        for (std::uint64_t receivers = 1; receivers <= 5; ++receivers) {
            std::set<Sha256> asked;
            for (std::uint64_t i = 0; i < 100; ++i) {
                std::vector<Sha256> some = all;
                ledger::askForSome(some, 10, 3 + i * receivers);
                EXPECT_EQ(some.size(), 10U);
                EXPECT_TRUE(std::is_sorted(some.begin(), some.end()));
                asked.insert(some.begin(), some.end());
            }
            EXPECT_EQ(asked.size(), all.size()) << count << " for " << receivers;
        }
    }
}

TEST(ManyPhotos, AreAllAskedForAtOnceWhereThereIsRoom)
{
    const std::vector<Sha256> all = hashes(10);
    std::vector<Sha256> asked(all.rbegin(), all.rend());
    ledger::askForSome(asked, 10, 7);
    EXPECT_EQ(asked, all);
}

}  // namespace spile::cellar
