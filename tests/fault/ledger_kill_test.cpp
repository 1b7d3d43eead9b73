// The recording process is killed at any moment: what it was told is saved, is saved.
#include "core/base/sha256.hpp"
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/sheet.hpp"
#include "core/cellar/queries.hpp"
#include "tests/support/killed_process.hpp"
#include "tests/support/real_device.hpp"
#include "tests/support/small_cellar.hpp"

#include <algorithm>
#include <gtest/gtest-spi.h>
#include <gtest/gtest.h>
#include <set>

namespace spile::cellar {

using support::Acknowledge;
using support::barrelAndPerson;
using support::RealDevice;
using support::runAndKill;

namespace {

constexpr int tapsPerSheet = 6;

Bytes message(char kind, ByteView id, int tap)
{
    Bytes bytes(2 + EntryId::size);
    bytes[0] = static_cast<std::uint8_t>(kind);
    bytes[1] = static_cast<std::uint8_t>(tap);
    std::copy(id.begin(), id.end(), bytes.begin() + 2);
    return bytes;
}

std::string attribute(int tap) { return "attribute " + std::to_string(tap); }

// One draw, then one sheet tapped full and closed; says so after each act has returned.
Result<void> recordRound(Cellar& cellar, const SubjectId& barrel, const SubjectId& person,
                         const Acknowledge& acknowledge)
{
    SPILE_ASSIGN(
        draw,
        recordDraw(cellar, {.barrel = barrel, .volume = millilitres(1), .method = "sample hole"}));
    acknowledge(message('E', draw.bytes(), 0));
    SPILE_ASSIGN(sheet, openSheet(cellar, barrel, person));
    SPILE_TRY(writeNote(cellar, sheet, sheet.hex()));
    for (int tap = 1; tap <= tapsPerSheet; ++tap) {
        SPILE_TRY(tapScore(cellar, sheet, attribute(tap), 1 + tap % 9));
        acknowledge(message('T', sheet.bytes(), tap));
    }
    SPILE_ASSIGN(taste, closeSheet(cellar, sheet));
    acknowledge(message('E', taste.bytes(), 0));
    return {};
}

int recordUntilKilled(const Path& folder, const Acknowledge& acknowledge)
{
    RealDevice device(folder);
    auto cellar = device.openOrMake();
    if (!cellar) {
        return 1;
    }
    const auto known = barrelAndPerson(**cellar);
    if (!known) {
        return 2;
    }
    for (;;) {
        if (!recordRound(**cellar, known->first, known->second, acknowledge)) {
            return 3;
        }
    }
}

struct Acknowledged {
    std::set<EntryId> entries;
    std::map<std::string, int> taps;  // by the sheet
};

void takeDown(const Bytes& said, Acknowledged& into)
{
    constexpr std::size_t size = 2 + EntryId::size;
    ASSERT_EQ(said.size() % size, 0U);
    for (std::size_t at = 0; at < said.size(); at += size) {
        const ByteView one = ByteView(said).subspan(at, size);
        if (one[0] == 'E') {
            into.entries.insert(*EntryId::fromBytes(one.subspan(2)));
        } else {
            into.taps[toHex(one.subspan(2, SubjectId::size))] = one[1];
        }
    }
}

// A sheet is still open with its taps, or closed: then a tasting has them all.
void expectTaps(Cellar& cellar, const Acknowledged& said)
{
    std::map<std::string, std::size_t> kept;
    const auto open = openSheets(cellar);
    ASSERT_TRUE(open);
    for (const OpenSheet& sheet : *open) {
        kept[sheet.sheet.hex()] = readSheet(cellar, sheet.sheet)->taste.scores.size();
    }
    const auto rows = barrels(cellar.database(), {}, 1);
    ASSERT_TRUE(rows);
    if (!rows->empty()) {
        const auto history = historyOf(cellar.database(), rows->front().barrel);
        ASSERT_TRUE(history);
        for (const TasteRow& taste : history->tastings) {
            kept[taste.note] = taste.scores.size();
            EXPECT_EQ(taste.scores.size(), static_cast<std::size_t>(tapsPerSheet));
        }
    }
    for (const auto& [sheet, taps] : said.taps) {
        EXPECT_GE(kept[sheet], static_cast<std::size_t>(taps)) << sheet;
    }
}

void expectEntries(Cellar& cellar, const Acknowledged& said)
{
    std::set<EntryId> here;
    ASSERT_TRUE(cellar.database().each(
        [&](const ledger::Row& row) {
            here.insert(row.id<EntryId>(0));
            return Result<void>();
        },
        "SELECT id FROM entry"));
    for (const EntryId& id : said.entries) {
        EXPECT_TRUE(here.contains(id)) << id.hex();
    }
}

void expectRecordingGoesOn(Cellar& cellar)
{
    const auto known = barrelAndPerson(cellar);
    ASSERT_TRUE(known) << support::textOf(known.error());
    const auto draw = recordDraw(
        cellar, {.barrel = known->first, .volume = millilitres(1), .method = "sample hole"});
    EXPECT_TRUE(draw) << support::textOf(draw.error());
}

struct Moments {
    std::uint64_t seed;
    int kills;
    std::uint32_t longestUs;
};

// Kills one cellar's recorder `kills` times; returns how much was acknowledged in all.
std::size_t killRepeatedly(const Moments& moments)
{
    support::TempFolder folder;
    SeededRandom random(moments.seed);
    Acknowledged said;
    for (int kill = 0; kill < moments.kills; ++kill) {
        SCOPED_TRACE("seed " + std::to_string(moments.seed) + ", kill " + std::to_string(kill));
        const std::chrono::microseconds delay(random.below(moments.longestUs));
        const auto killed = runAndKill(delay, [&](const Acknowledge& acknowledge) {
            return recordUntilKilled(folder.path(), acknowledge);
        });
        EXPECT_FALSE(killed.ended) << "the recorder gave up with " << killed.status;
        takeDown(killed.acknowledged, said);
        RealDevice device(folder.path());
        auto cellar = Cellar::open(device.cellarFolder, device.outside());
        if (!cellar && said.entries.empty()) {
            continue;  // killed while it was made; the next recorder must be able to make it
        }
        EXPECT_TRUE(cellar) << support::textOf(cellar.error());
        if (!cellar) {
            break;
        }
        expectEntries(**cellar, said);
        expectTaps(**cellar, said);
        EXPECT_EQ(support::problemsOf(**cellar), "");
        expectRecordingGoesOn(**cellar);
        if (testing::Test::HasFailure()) {
            break;
        }
    }
    return said.entries.size();
}

}  // namespace

TEST(Fault05_KilledRecorder, LosesNothingThatItAcknowledgedAtFiftyMoments)
{
    std::size_t acknowledged = 0;
    for (std::uint64_t seed = 1; seed <= 5; ++seed) {
        acknowledged += killRepeatedly({seed, 10, 150'000});
    }
    EXPECT_GE(acknowledged, 50U);  // else it was killed before it did anything
}

TEST(Fault05_KilledRecorder, CanBeMadeAgainIfItWasKilledWhileItWasMade)
{
    for (std::uint64_t seed = 100; seed < 110; ++seed) {
        killRepeatedly({seed, 3, 12'000});
    }
}

TEST(Fault05_KilledRecorder, IsSeenWhenItDoesLoseSomething)
{
    // The proof of the harness: entries and taps that were never saved are missed.
    support::TestDevice device(1);
    const auto cellar = device.newCellar();
    Acknowledged said;
    takeDown(message('E', sha256(asBytes("never saved")).bytes(), 0), said);
    EXPECT_NONFATAL_FAILURE(expectEntries(*cellar, said), "");
    Acknowledged taps;
    takeDown(message('T', device.ids.next().bytes(), 1), taps);
    EXPECT_NONFATAL_FAILURE(expectTaps(*cellar, taps), "");
}

}  // namespace spile::cellar
