// The disk refuses at each of the file calls in turn: a clean error, nothing half written, and
// the same act succeeds afterwards.
#include "core/base/sha256.hpp"
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/photographing.hpp"
#include "core/cellar/checking.hpp"
#include "core/ledger/ballast.hpp"
#include "core/ledger/bundle_reader.hpp"
#include "tests/support/faulty_file_system.hpp"
#include "tests/support/small_cellar.hpp"

#include <algorithm>
#include <gtest/gtest.h>

namespace spile::cellar {

using support::Fault;
using support::textOf;

namespace {

constexpr std::uint64_t callsMax = 2000;  // more than any of these acts makes

class RefusingDisk : public testing::Test {
protected:
    support::TestDevice device{51};
    support::FaultyFileSystem disk{device.files};
    std::unique_ptr<Cellar> cellar;
    support::SmallCellar small;
    Path file = device.folder.path() / "day.spile";
    ErrorCode unreadable = ErrorCode::StorageFull;  // of a file that is there already

    [[nodiscard]] Outside outside()
    {
        return {device.clock, disk, device.random, device.ids, device.keys};
    }

    void SetUp() override
    {
        cellar = *Cellar::create(device.cellarFolder(), outside(), {"Test cellar", "7K2Q", "Desk"});
        small = support::fillSmallCellar(*cellar);
    }

    [[nodiscard]] std::vector<std::string> temporaries() const
    {
        auto names = support::filesUnder(device.folder.path());
        std::erase_if(
            names, [](const std::string& name) { return name.find(".tmp-") == std::string::npos; });
        return names;
    }

    // Runs `act` with the first, second, ... call refused, until it gets through. `look` is called
    // after each refusal. Returns how many calls were refused.
    template <class Act, class Look>
    std::uint64_t refuseEach(ErrorCode code, bool lasting, Act act, Look look)
    {
        for (std::uint64_t call = 1; call < callsMax; ++call) {
            SCOPED_TRACE("call " + std::to_string(call) + (lasting ? " and all after it" : ""));
            disk.failAt(Fault{{}, call, code, lasting});
            const auto done = act();
            const bool refused = disk.calls() >= call;
            disk.failNever();
            if (!refused) {
                EXPECT_TRUE(done) << textOf(done.error());
                return call - 1;
            }
            EXPECT_FALSE(done) << "the refusal went unnoticed";
            if (!done) {
                EXPECT_TRUE(done.error().code == code || done.error().code == unreadable)
                    << textOf(done.error());
            }
            look();
            if (HasFailure()) {
                return call;
            }
        }
        ADD_FAILURE() << "it never got through";
        return 0;
    }
};

using Fault09_RefusingDisk = RefusingDisk;

}  // namespace

TEST_F(Fault09_RefusingDisk, LeavesNoPhotoWithoutItsRecordAndNoRecordWithoutItsPhoto)
{
    std::uint8_t shade = 0;
    for (const bool lasting : {false, true}) {
        const Bytes picture = support::smallPicture(++shade);
        const std::int64_t entries = support::entryCount(*cellar);
        const auto refused = refuseEach(
            ErrorCode::StorageFull, lasting,
            [&] {
                return recordPhoto(
                    *cellar, {.barrel = small.barrel, .picture = picture, .purpose = "colour"});
            },
            [&] {
                EXPECT_EQ(support::entryCount(*cellar), entries);
                if (!lasting) {
                    EXPECT_TRUE(temporaries().empty());
                }
            });
        EXPECT_GE(refused, 6U);  // make and sync folders, create, append, sync, rename
        EXPECT_EQ(support::entryCount(*cellar), entries + 1);
        EXPECT_TRUE(temporaries().empty());
        EXPECT_EQ(support::problemsOf(*cellar), "");
    }
}

TEST_F(Fault09_RefusingDisk, RefusesPhotosFirstAndRecordsLast)
{
    const Bytes picture = support::smallPicture();
    const NewPhoto photo{.barrel = small.barrel, .picture = picture, .purpose = "colour"};
    disk.setFree(ledger::ballastBytes);  // what the photo needs is not there beside it
    const auto refused = recordPhoto(*cellar, photo);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::StorageFull);
    EXPECT_EQ(refused.error().subject, "photo");
    EXPECT_EQ(refused.error().value, "32 MiB free");
    EXPECT_TRUE(support::filesUnder(device.cellarFolder() / "photos").empty());
    EXPECT_TRUE(recordDraw(*cellar,
                           {.barrel = small.barrel, .volume = millilitres(50), .method = "valve"}));
    EXPECT_TRUE(handOut(*cellar, file, {}));
    disk.setFree(ledger::ballastBytes + 100'000);
    EXPECT_TRUE(recordPhoto(*cellar, photo));
    EXPECT_EQ(support::problemsOf(*cellar), "");
}

TEST_F(Fault09_RefusingDisk, LeavesNoHalfDayFile)
{
    const Bytes picture = support::smallPicture();
    ASSERT_TRUE(
        recordPhoto(*cellar, {.barrel = small.barrel, .picture = picture, .purpose = "colour"}));
    const Sha256 root = *stateRoot(*cellar);
    for (const bool lasting : {false, true}) {
        for (const bool replaces : {false, true}) {
            SCOPED_TRACE(replaces ? "over an older file" : "as a new file");
            std::filesystem::remove(file);
            if (replaces) {
                ASSERT_TRUE(handOut(*cellar, file, {}));
                unreadable = ErrorCode::Conflict;  // it cannot be told to be ours, so it stays
            }
            const auto refused = refuseEach(
                ErrorCode::StorageFull, lasting, [&] { return handOut(*cellar, file, {}); },
                [&] {
                    if (std::filesystem::exists(file)) {  // then whole: the old or the new one
                        auto bundle = ledger::BundleReader::open(device.files, file);
                        ASSERT_TRUE(bundle) << textOf(bundle.error());
                        EXPECT_TRUE(bundle->verify(cellar->identity().id,
                                                   ledger::SignatureCheck::EveryEntry, {},
                                                   [](const ledger::VerifiedEntry&) {}));
                    } else {
                        EXPECT_FALSE(replaces) << "the older file is gone";
                    }
                    if (!lasting) {
                        EXPECT_TRUE(temporaries().empty());
                    }
                });
            EXPECT_GE(refused, 20U);
            EXPECT_TRUE(temporaries().empty());
        }
    }
    EXPECT_EQ(*stateRoot(*cellar), root);
}

TEST_F(Fault09_RefusingDisk, StopsTakeInSoThatTheNextRunFinishesIt)
{
    support::TestDevice phoneDevice(52);
    ASSERT_TRUE(handOut(*cellar, file, {}));
    const auto phone = phoneDevice.join(file);
    support::admitDevice(*cellar, *phone);
    std::uint8_t shade = 100;
    for (const bool lasting : {false, true}) {
        std::vector<Bytes> pictures = {support::smallPicture(++shade),
                                       support::smallPicture(++shade)};
        for (const Bytes& picture : pictures) {
            ASSERT_TRUE(recordPhoto(
                *phone, {.barrel = small.barrel, .picture = picture, .purpose = "colour"}));
        }
        const Path day = phoneDevice.folder.path() / "day.spile";
        ASSERT_TRUE(handOut(*phone, day, {}));
        const std::int64_t entries = support::entryCount(*cellar);
        const auto refused = refuseEach(
            ErrorCode::Storage, lasting, [&] { return takeIn(*cellar, day); },
            [&] {
                // Photos come first, and only files can be refused here: no record has been added.
                EXPECT_EQ(support::entryCount(*cellar), entries);
                if (!lasting) {
                    EXPECT_TRUE(temporaries().empty());
                }
            });
        EXPECT_GE(refused, 20U);
        EXPECT_EQ(support::entryCount(*cellar), entries + 2);
        for (const Bytes& picture : pictures) {
            EXPECT_TRUE(cellar->ledger().photos().read(sha256(picture)));
        }
        EXPECT_TRUE(temporaries().empty());
        EXPECT_EQ(support::problemsOf(*cellar), "");
        EXPECT_EQ(check(*cellar, {})->missingPhotos, 0U);
    }
}

}  // namespace spile::cellar
