// How far joining and taking in say that they are.
#include "tests/support/fleet.hpp"

#include <algorithm>
#include <gtest/gtest.h>

namespace spile::cellar {

namespace {

class Progress : public testing::Test {
protected:
    support::Fleet fleet{3};

    struct Told {
        std::uint64_t done = 0, total = 0;
    };
    std::vector<Told> told;
    Job job{[this](std::uint64_t done, std::uint64_t total) {
                told.push_back({done, total});
            },
            nullptr};

    void record(std::size_t device, int records, int photos)
    {
        Cellar& cellar = fleet.cellar(device);
        std::vector<ledger::NewEntry> made;
        for (int i = 0; i < records; ++i) {
            ledger::NewEntry entry{"check", fleet.small().barrel, {}, {}, {}, {}, {}};
            entry.fields = {{static_cast<std::uint32_t>(Field::Finding), std::string("dry")},
                            {static_cast<std::uint32_t>(Field::Sound), true}};
            if (i < photos) {
                const std::string picture = "picture " + std::to_string(i);
                const auto hash = cellar.ledger().photos().add(asBytes(picture));
                ASSERT_TRUE(hash);
                entry.photos.push_back({*hash, picture.size()});
            }
            made.push_back(std::move(entry));
        }
        auto change = cellar.ledger().change();
        ASSERT_TRUE(change);
        for (ledger::NewEntry& entry : made) {
            ASSERT_TRUE(change->record(std::move(entry)));
        }
        ASSERT_TRUE(change->commit());
    }

    void admit(std::size_t device, ledger::DeviceRole role)
    {
        ASSERT_TRUE(ledger::admit(fleet.cellar(0).ledger(), fleet.cellar(device).ledger().device(),
                                  "Device", role));
    }

    // A file in which records of a device come before the one that admits it, or after.
    Path fileOfAll()
    {
        for (const std::size_t device : {1U, 2U}) {
            record(device, 700, 5);
            fleet.takeIn(0, fleet.handOut(device, {}));
            admit(device, ledger::DeviceRole::Desk);
        }
        return fleet.handOut(0, {});
    }

    void expectOnward() const
    {
        ASSERT_GE(told.size(), 2U);
        EXPECT_GT(told.front().total, 0U);
        std::uint64_t before = 0;
        for (const Told& now : told) {
            EXPECT_EQ(now.total, told.front().total);
            EXPECT_LE(now.done, now.total);
            EXPECT_GE(now.done, before) << "it ran backwards";
            before = now.done;
        }
        EXPECT_EQ(told.back().done, told.back().total);
    }
};

}  // namespace

TEST_F(Progress, OfJoiningGoesOnwardToItsTotal)
{
    const Path file = fileOfAll();
    support::Fleet::Member& member = fleet.at(1);
    support::TempFolder folder;
    system::DiskFileSystem files;
    support::MemoryKeyStore keys;
    const Outside outside{member.clock, files, member.random, member.ids, keys};
    ASSERT_TRUE(Cellar::join(folder.path() / "joined", outside, file, job));
    expectOnward();
    EXPECT_GE(told.size(), 10U);
    EXPECT_EQ(std::count_if(told.begin(), told.end(), [](const Told& t) { return t.done == 0; }),
              0);
}

TEST_F(Progress, OfTakingInCountsWhatWaitedBefore)
{
    record(1, 700, 5);
    fleet.takeIn(2, fleet.handOut(1, {}));
    fleet.takeIn(0, fleet.handOut(1, {}));
    admit(1, ledger::DeviceRole::Phone);
    ASSERT_TRUE(takeIn(fleet.cellar(2), fleet.handOut(0, 1), job));
    expectOnward();
}

TEST_F(Progress, OfASealedFileGoesOnwardToo)
{
    fileOfAll();
    const support::TempFolder folder;
    const Path file = folder.path() / "sealed.spile";
    ASSERT_TRUE(handOut(fleet.cellar(0), file, {}, {}, "some words"));
    ASSERT_TRUE(takeIn(fleet.cellar(1), file, job, "some words"));
    expectOnward();
}

TEST_F(Progress, OfAFileThatWasTakenInBeforeComesToItsEnd)
{
    const Path file = fileOfAll();
    fleet.takeIn(1, file);
    ASSERT_TRUE(takeIn(fleet.cellar(1), file, job));
    expectOnward();
}

}  // namespace spile::cellar
