// Killed while a day file is taken in or handed out: run again, it ends as if nothing had been.
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/photographing.hpp"
#include "core/cellar/acts/tasting.hpp"
#include "core/cellar/checking.hpp"
#include "core/ledger/bundle_reader.hpp"
#include "platform/system/file_key_store.hpp"
#include "platform/system/system_clock.hpp"
#include "tests/support/killed_process.hpp"
#include "tests/support/small_cellar.hpp"

#include <algorithm>
#include <chrono>
#include <gtest/gtest.h>

namespace spile::cellar {

using std::chrono::microseconds;
using support::Acknowledge;
using support::runAndKill;
using support::textOf;

namespace {

constexpr int rounds = 250;  // of a draw and a tasting
constexpr int photos = 12;
constexpr int moments = 20;

// A receiver whose clock runs, so that take-in commits in slices of time.
struct Receiver {
    explicit Receiver(const Path& folder)
        : keys(files, folder / "keys"), cellarFolder(folder / "a.cellar")
    {
    }

    system::SystemClock clock;
    SeededRandom random{7};
    Uuid7Source ids{clock, random};
    system::DiskFileSystem files;
    system::FileKeyStore keys;
    Path cellarFolder;

    Outside outside() { return {clock, files, random, ids, keys}; }
    Result<std::unique_ptr<Cellar>> open() { return Cellar::open(cellarFolder, outside()); }
};

class KilledExchange : public testing::Test {
protected:
    support::TestDevice deskDevice{11};
    std::unique_ptr<Cellar> desk = deskDevice.newCellar();
    support::TempFolder receivers;
    Path start = deskDevice.folder.path() / "start.spile";
    Path full = deskDevice.folder.path() / "full.spile";

    void SetUp() override
    {
        const support::SmallCellar small = support::fillSmallCellar(*desk);
        ASSERT_TRUE(handOut(*desk, start, {}));
        for (int i = 0; i < rounds; ++i) {
            ASSERT_TRUE(recordDraw(
                *desk,
                {.barrel = small.barrel, .volume = millilitres(20), .method = "sample hole"}));
            ASSERT_TRUE(recordTaste(*desk, {.barrel = small.barrel,
                                            .scores = {{"oak", 1 + i % 9}},
                                            .circumstance = {.person = small.person}}));
        }
        for (int i = 0; i < photos; ++i) {
            const Bytes picture = support::smallPicture(static_cast<std::uint8_t>(i));
            ASSERT_TRUE(recordPhoto(
                *desk, {.barrel = small.barrel, .picture = picture, .purpose = "colour"}));
        }
        ASSERT_TRUE(handOut(*desk, full, {}));
    }

    // A receiver's folder that holds only the cellar's start.
    Path receiverFolder(const std::string& name)
    {
        const Path fresh = receivers.path() / "fresh";
        if (!std::filesystem::exists(fresh)) {
            Receiver receiver(fresh);
            EXPECT_TRUE(Cellar::join(receiver.cellarFolder, receiver.outside(), start, {}));
        }
        std::filesystem::copy(fresh, receivers.path() / name,
                              std::filesystem::copy_options::recursive);
        return receivers.path() / name;
    }

    int takeInChild(const Path& folder)
    {
        Receiver receiver(folder);
        auto cellar = receiver.open();
        return cellar && takeIn(**cellar, full) ? 0 : 1;
    }

    // Close the desk's own database, since a child must not inherit an open one.
    void closeDesk() { desk.reset(); }
};

bool hasTemporary(const Path& folder)
{
    const auto names = support::filesUnder(folder);
    return std::any_of(names.begin(), names.end(), [](const std::string& name) {
        return name.find(".tmp-") != std::string::npos;
    });
}

template <class Work>
microseconds timeOf(Work work)
{
    const auto begin = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration_cast<microseconds>(std::chrono::steady_clock::now() - begin);
}

}  // namespace

TEST_F(KilledExchange, TakesInTheSameStateWhenItIsRunAgain)
{
    const Sha256 wanted = *stateRoot(*desk);
    const std::int64_t entries = support::entryCount(*desk);
    closeDesk();
    const Path unkilled = receiverFolder("unkilled");
    const auto whole = timeOf([&] { ASSERT_EQ(takeInChild(unkilled), 0); });
    SeededRandom random(21);
    int cutShort = 0;
    int partly = 0;
    for (int moment = 0; moment < moments; ++moment) {
        SCOPED_TRACE("moment " + std::to_string(moment));
        const Path folder = receiverFolder("moment" + std::to_string(moment));
        const microseconds delay(random.below(static_cast<std::uint32_t>(whole.count())));
        const auto killed =
            runAndKill(delay, [&](const Acknowledge&) { return takeInChild(folder); });
        cutShort += killed.ended ? 0 : 1;
        Receiver receiver(folder);
        auto cellar = receiver.open();
        ASSERT_TRUE(cellar) << textOf(cellar.error());
        EXPECT_EQ(support::problemsOf(**cellar), "") << "after the kill";
        partly += support::entryCount(**cellar) > 8 && support::entryCount(**cellar) < entries;
        const auto again = takeIn(**cellar, full);
        ASSERT_TRUE(again) << textOf(again.error());
        EXPECT_EQ(*stateRoot(**cellar), wanted);
        EXPECT_EQ(support::entryCount(**cellar), entries);
        EXPECT_EQ(support::problemsOf(**cellar), "");
        EXPECT_FALSE(hasTemporary(folder));
        EXPECT_EQ(check(**cellar, {})->photos, static_cast<std::uint64_t>(photos));
    }
    EXPECT_GE(cutShort, 3);  // else the moments lay behind the end
    RecordProperty("killedWithAPartStored", partly);
}

TEST_F(KilledExchange, LeavesTheWholeDayFileOrNone)
{
    closeDesk();
    const Path out = deskDevice.folder.path() / "out.spile";
    SeededRandom random(22);
    auto handOutAgainAndAgain = [&](const Acknowledge& acknowledge) {
        const auto cellar = deskDevice.reopen();
        while (handOut(*cellar, out, {})) {
            acknowledge(asBytes("1"));
        }
        return 1;
    };
    std::size_t handed = 0;
    for (int moment = 0; moment < moments; ++moment) {
        SCOPED_TRACE("moment " + std::to_string(moment));
        const auto killed = runAndKill(microseconds(random.below(120'000)), handOutAgainAndAgain);
        EXPECT_FALSE(killed.ended) << "hand-out failed";
        handed += killed.acknowledged.size();
        const auto cellar = deskDevice.reopen();
        const bool there = std::filesystem::exists(out);
        EXPECT_TRUE(there || killed.acknowledged.empty());
        if (there) {
            auto bundle = ledger::BundleReader::open(deskDevice.files, out);
            ASSERT_TRUE(bundle) << textOf(bundle.error());
            EXPECT_TRUE(bundle->verify(cellar->identity().id, ledger::SignatureCheck::EveryEntry,
                                       {}, [](const ledger::VerifiedEntry&) {}));
        }
        const auto again = handOut(*cellar, out, {});
        ASSERT_TRUE(again) << textOf(again.error());
        EXPECT_EQ(again->file.photos, static_cast<std::uint64_t>(photos));
        EXPECT_FALSE(hasTemporary(deskDevice.folder.path()));
        EXPECT_EQ(support::problemsOf(*cellar), "");
        if (moment % 2 == 0) {
            std::filesystem::remove(out);
        }
    }
    EXPECT_GE(handed, 3U);  // else it was killed before it did anything
}

}  // namespace spile::cellar
