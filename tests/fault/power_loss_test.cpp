// The power is lost at any moment: what was told to be saved is saved, and what remains is sound.
//
// The calls that the disk gets are recorded once; then each moment is looked at with what a disk
// may have left of what was not synced.
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/photographing.hpp"
#include "core/cellar/acts/sheet.hpp"
#include "core/cellar/queries.hpp"
#include "tests/support/recorded_disk.hpp"
#include "tests/support/small_cellar.hpp"

#include <algorithm>
#include <cstdlib>
#include <gtest/gtest.h>
#include <set>

namespace spile::cellar {

using support::allLeaves;
using support::Crash;
using support::DiskCall;
using support::Leaves;
using support::RecordedDisk;

namespace {

// How many crashes a test looks at; SPILE_CRASHES says otherwise.
std::size_t crashesWanted()
{
    const char* asked = std::getenv("SPILE_CRASHES");
    return asked == nullptr ? 240 : std::stoul(asked);
}

// A device whose cellar lies on a disk that is recorded from some moment on.
struct Recorded {
    support::TestDevice device;
    std::unique_ptr<support::TempFolder> before = std::make_unique<support::TempFolder>();
    std::unique_ptr<RecordedDisk> disk;

    explicit Recorded(std::uint64_t seed) : device(seed) {}

    [[nodiscard]] Outside outside()
    {
        return {device.clock, disk ? disk->files() : static_cast<FileSystem&>(device.files),
                device.random, device.ids, device.keys};
    }
    // What is on the disk now is what lasts; from here on, calls are recorded.
    void record()
    {
        std::filesystem::copy(device.folder.path(), before->path(),
                              std::filesystem::copy_options::recursive);
        disk = std::make_unique<RecordedDisk>(device.folder.path(), device.files);
    }
    [[nodiscard]] Result<std::unique_ptr<Cellar>> open()
    {
        return Cellar::open(device.cellarFolder(), outside(), disk->vfs());
    }
};

std::set<EntryId> entriesIn(Cellar& cellar)
{
    std::set<EntryId> ids;
    EXPECT_TRUE(cellar.database().each(
        [&](const ledger::Row& row) {
            ids.insert(row.id<EntryId>(0));
            return Result<void>();
        },
        "SELECT id FROM entry"));
    return ids;
}

// What had been acknowledged when so many calls were made.
std::set<EntryId> acknowledged(const std::vector<DiskCall>& calls, std::size_t until)
{
    std::set<EntryId> ids;
    for (std::size_t i = 0; i < until; ++i) {
        if (calls[i].kind == DiskCall::Kind::Acknowledge) {
            ids.insert(*EntryId::fromBytes(calls[i].bytes));
        }
    }
    return ids;
}

// What is wrong with a cellar after a crash; empty if nothing.
std::string wrongAfter(const Recorded& recorded, const Crash& crash, const Path& folder)
{
    support::TestDevice device(crash.seed + 7);
    device.keys = recorded.device.keys;
    auto cellar = Cellar::open(folder / "test.cellar", device.outside());
    if (!cellar) {
        return "it does not open: " + support::textOf(cellar.error());
    }
    const std::set<EntryId> here = entriesIn(**cellar);
    const std::set<EntryId> said = acknowledged(recorded.disk->calls(), crash.after);
    if (!std::includes(here.begin(), here.end(), said.begin(), said.end())) {
        return "acknowledged records are lost";
    }
    if (const std::string problems = support::problemsOf(**cellar); !problems.empty()) {
        return problems;
    }
    const auto first = barrels((*cellar)->database(), {}, 1);
    const auto draw = recordDraw(
        **cellar,
        {.barrel = first->at(0).barrel, .volume = millilitres(1), .method = "sample hole"});
    return draw ? "" : "it does not go on: " + support::textOf(draw.error());
}

using Looking = std::string (*)(const Recorded&, const Crash&, const Path&);

// Looks at crashes spread over all calls, each way of leaving by turns; counts those that went
// wrong and tells of the first.
struct Found {
    std::size_t looked = 0, wrong = 0;
    std::string first;
};
Found lookAt(const Recorded& recorded, Looking wrongWith, bool lying = false)
{
    Found found;
    const std::size_t calls = recorded.disk->calls().size();
    const std::size_t wanted = crashesWanted();
    for (std::size_t i = 0; i < wanted; ++i) {
        // A step that shares no factor with the number of calls comes to each.
        Crash crash{i * calls / wanted + 1, allLeaves[i % allLeaves.size()], i, lying};
        crash.after = std::min(crash.after, calls);
        support::TempFolder folder;
        writeCrashed(recorded.disk->calls(), crash, recorded.before->path(), folder.path());
        const std::string wrong = wrongWith(recorded, crash, folder.path());
        ++found.looked;
        if (!wrong.empty() && ++found.wrong == 1) {
            found.first = "after call " + std::to_string(crash.after) + " of " +
                          std::to_string(calls) + ", leaving " +
                          std::to_string(static_cast<int>(crash.leaves)) + ": " + wrong;
        }
    }
    return found;
}

void expectNothingWrong(const Found& found)
{
    EXPECT_EQ(found.wrong, 0U) << found.first;
    EXPECT_GE(found.looked, std::min<std::size_t>(crashesWanted(), 100));
}

// Draws, tastings with all their taps, and photos, each acknowledged.
void recordMuch(Recorded& recorded, Cellar& cellar, int rounds)
{
    const auto barrel = barrels(cellar.database(), {}, 1)->at(0).barrel;
    const auto person = named(cellar.database(), "person", {}, 1)->at(0).subject;
    const auto say = [&](const Result<EntryId>& id) {
        ASSERT_TRUE(id) << support::textOf(id.error());
        recorded.disk->acknowledge(id->bytes());
    };
    for (int round = 0; round < rounds; ++round) {
        recorded.device.clock.pass(std::chrono::minutes(3));
        say(recordDraw(cellar,
                       {.barrel = barrel, .volume = millilitres(20), .method = "sample hole"}));
        const auto sheet = openSheet(cellar, barrel, person);
        ASSERT_TRUE(sheet);
        ASSERT_TRUE(tapScore(cellar, *sheet, "oak", 1 + round % 9));
        ASSERT_TRUE(tapScore(cellar, *sheet, "vanilla", 5));
        say(closeSheet(cellar, *sheet));
        const Bytes picture = support::smallPicture(static_cast<std::uint8_t>(round));
        const auto photo =
            recordPhoto(cellar, {.barrel = barrel, .picture = picture, .purpose = "colour"});
        ASSERT_TRUE(photo) << support::textOf(photo.error());
        recorded.disk->acknowledge(photo->entry.bytes());
    }
}

// A cellar in which much is recorded while the disk is; `pragma` weakens it.
std::unique_ptr<Recorded> recordedCellar(std::uint64_t seed, const std::string& pragma = {})
{
    auto recorded = std::make_unique<Recorded>(seed);
    {
        auto made = recorded->device.newCellar();
        static_cast<void>(support::fillSmallCellar(*made));
    }
    recorded->record();
    auto cellar = recorded->open();
    EXPECT_TRUE(cellar) << support::textOf(cellar.error());
    if (cellar && !pragma.empty()) {
        EXPECT_TRUE((*cellar)->database().run(pragma));
    }
    if (cellar) {
        recordMuch(*recorded, **cellar, 8);
    }
    return recorded;
}

}  // namespace

TEST(Fault01_PowerLossAtAnyWrite, LosesNothingThatWasAcknowledged)
{
    const auto recorded = recordedCellar(101);
    expectNothingWrong(lookAt(*recorded, wrongAfter));
}

// The harness itself: what is known to be weak must be seen to lose records.
TEST(Fault01_PowerLossAtAnyWrite, IsSeenToLoseRecordsWithoutSyncs)
{
    const auto normal = recordedCellar(102, "PRAGMA synchronous=NORMAL;");
    EXPECT_GT(lookAt(*normal, wrongAfter).wrong, 0U);
    const auto off = recordedCellar(103, "PRAGMA synchronous=OFF;");
    EXPECT_GT(lookAt(*off, wrongAfter).wrong, 0U);
}

TEST(Fault02_PowerLossDuringCheckpoint, LosesNothing)
{
    auto recorded = std::make_unique<Recorded>(104);
    {
        auto made = recorded->device.newCellar();
        static_cast<void>(support::fillSmallCellar(*made));
    }
    recorded->record();
    auto cellar = recorded->open();
    ASSERT_TRUE(cellar);
    for (int round = 0; round < 3; ++round) {
        recordMuch(*recorded, **cellar, 2);
        // What the ledger does by itself once its log has grown.
        ASSERT_TRUE((*cellar)->database().checkpoint(0));
    }
    expectNothingWrong(lookAt(*recorded, wrongAfter));
}

}  // namespace spile::cellar
