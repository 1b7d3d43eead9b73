#pragma once

#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/photographing.hpp"
#include "core/cellar/acts/sheet.hpp"
#include "core/cellar/queries.hpp"
#include "tests/support/recorded_disk.hpp"
#include "tests/support/small_cellar.hpp"

#include <algorithm>
#include <cstdlib>
#include <gtest/gtest.h>
#include <set>

/// A cellar on a disk whose calls are recorded, and a look at what each loss of power leaves of it.
namespace spile::cellar {

using support::allLeaves;
using support::Crash;
using support::DiskCall;
using support::Leaves;
using support::RecordedDisk;

// How many crashes a test looks at; SPILE_CRASHES says otherwise.
inline std::size_t crashesWanted()
{
    const char* asked = std::getenv("SPILE_CRASHES");
#ifdef SPILE_SANITIZED
    constexpr std::size_t usual = 40;
#else
    constexpr std::size_t usual = 240;
#endif
    return asked == nullptr ? usual : std::stoul(asked);
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

inline std::set<EntryId> entriesIn(Cellar& cellar)
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
inline std::set<EntryId> acknowledged(const std::vector<DiskCall>& calls, std::size_t until)
{
    std::set<EntryId> ids;
    for (std::size_t i = 0; i < until; ++i) {
        if (calls[i].kind == DiskCall::Kind::Acknowledge) {
            ids.insert(*EntryId::fromBytes(calls[i].bytes));
        }
    }
    return ids;
}

using Looking = std::string (*)(const Recorded&, const Crash&, const Path&);

// Looks at crashes spread over all calls, each way of leaving by turns; counts those that went
// wrong and tells of the first.
struct Found {
    std::size_t looked = 0, wrong = 0;
    std::string first;
};
inline Found lookAt(const Recorded& recorded, Looking wrongWith, bool lying = false)
{
    Found found;
    const std::size_t calls = recorded.disk->calls().size();
    const std::size_t wanted = crashesWanted();
    for (std::size_t i = 0; i < wanted; ++i) {
        // From the first call to the last, so that the end of it is among them however few they
        // are.
        const std::size_t after = wanted == 1 ? calls : 1 + i * (calls - 1) / (wanted - 1);
        const Crash crash{after, allLeaves[i % allLeaves.size()], i, lying};
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

inline void expectNothingWrong(const Found& found)
{
    EXPECT_EQ(found.wrong, 0U) << found.first;
    EXPECT_GE(found.looked, std::min<std::size_t>(crashesWanted(), 40));
}

// Draws, tastings with all their taps, and photos, each acknowledged.
inline void recordMuch(Recorded& recorded, Cellar& cellar, int rounds)
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

}  // namespace spile::cellar
