// What goes wrong on one device: damage on its disk, two programs at once, strange text, a fault in
// an earlier version.
#include "core/base/sha256.hpp"
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/photographing.hpp"
#include "core/cellar/checking.hpp"
#include "core/cellar/exporting.hpp"
#include "core/cellar/queries.hpp"
#include "tests/support/small_cellar.hpp"

#include <cmath>
#include <fstream>
#include <gtest/gtest.h>

namespace spile::cellar {

namespace {

class OneDevice : public testing::Test {
protected:
    support::TestDevice device{301};
    std::unique_ptr<Cellar> cellar = device.newCellar();
    support::SmallCellar small = support::fillSmallCellar(*cellar);

    Result<EntryId> draw(const std::string& note = {})
    {
        return recordDraw(*cellar, {.barrel = small.barrel,
                                    .volume = millilitres(50),
                                    .method = "sample hole",
                                    .circumstance = {{}, {}, note}});
    }
    std::string noteOfLastDraw()
    {
        return historyOf(cellar->database(), small.barrel)->draws.back().note;
    }
};

using Fault13_TwoProgramsOnOneCellar = OneDevice;
using Fault14_BitFlipInTheDatabase = OneDevice;
using Fault43_HugePhoto = OneDevice;
using Fault44_MalformedPicture = OneDevice;
using Fault45_StrangeText = OneDevice;
using Fault46_SqlInText = OneDevice;
using Fault47_FormulaInAnExport = OneDevice;
using Fault49_NumbersBeyondTheirRange = OneDevice;
using Fault65_TakeInThatIsStopped = OneDevice;
using Fault67_FaultyStateOfAnEarlierVersion = OneDevice;

}  // namespace

TEST_F(Fault13_TwoProgramsOnOneCellar, RefusesTheSecond)
{
    support::TestDevice other(302);
    const auto second = Cellar::open(device.cellarFolder(), other.outside());
    ASSERT_FALSE(second);
    EXPECT_EQ(second.error().code, ErrorCode::Locked);
    EXPECT_TRUE(draw());
}

TEST_F(Fault14_BitFlipInTheDatabase, IsFoundWhereverItChangesARecord)
{
    for (int i = 0; i < 20; ++i) {
        ASSERT_TRUE(draw("note " + std::to_string(i)));
    }
    ASSERT_TRUE(cellar->database().checkpoint(0));
    const Bytes core = **cellar->database().first(
        [](const ledger::Row& row) { return Bytes(row.blob(0).begin(), row.blob(0).end()); },
        "SELECT core FROM entry ORDER BY n DESC LIMIT 1");
    cellar.reset();
    std::filesystem::remove(device.cellarFolder() / "ledger.db-wal");  // all of it is moved
    // Every eighth bit of one record's core, as it lies in the file.
    const Path path = device.cellarFolder() / "ledger.db";
    std::ifstream in(path, std::ios::binary);
    const std::string whole(std::istreambuf_iterator<char>(in), {});
    const std::size_t at = whole.find(std::string(core.begin(), core.end()));
    ASSERT_NE(at, std::string::npos);
    for (std::size_t byte = 0; byte < core.size(); byte += 16) {
        std::string flipped = whole;
        flipped[at + byte] = static_cast<char>(flipped[at + byte] ^ (1 << byte % 8));
        std::ofstream(path, std::ios::binary) << flipped;
        cellar = device.reopen();
        EXPECT_NE(support::problemsOf(*cellar), "") << byte;
        cellar.reset();
    }
    std::ofstream(path, std::ios::binary) << whole;
    cellar = device.reopen();
    EXPECT_EQ(support::problemsOf(*cellar), "");
}

TEST_F(Fault43_HugePhoto, IsRefusedBeforeItIsRead)
{
    const Sha256 hash = sha256(Bytes{1});
    bool read = false;
    const auto added = cellar->ledger().photos().addStreamed(
        hash, std::uint64_t{1} << 40U, [&](std::uint64_t, std::span<std::uint8_t>) {
            read = true;
            return Result<void>();
        });
    ASSERT_FALSE(added);
    EXPECT_EQ(added.error().code, ErrorCode::TooLarge);
    EXPECT_FALSE(read);
}

TEST_F(Fault44_MalformedPicture, IsRefusedAndRecordsNothing)
{
    const std::int64_t before = support::entryCount(*cellar);
    Bytes picture = support::smallPicture();
    picture.resize(picture.size() / 2);
    for (const Bytes& bad : {picture, Bytes{}, Bytes{0xff, 0xd8, 0xff}, Bytes(5000, 0x42)}) {
        EXPECT_FALSE(
            recordPhoto(*cellar, {.barrel = small.barrel, .picture = bad, .purpose = "colour"}));
    }
    EXPECT_EQ(support::entryCount(*cellar), before);
    EXPECT_EQ(support::problemsOf(*cellar), "");
}

TEST_F(Fault45_StrangeText, IsKeptAsTypedOrRefused)
{
    for (const std::string& text :
         {std::string("e\xCC\x81 and \xC3\xA9"), std::string("\xE2\x80\xAEright to left"),
          std::string("zero\xE2\x80\x8Bwidth"), std::string("\xF0\x9F\x8D\xBA"),
          std::string("nul\0inside", 10)}) {
        ASSERT_TRUE(draw(text));
        EXPECT_EQ(noteOfLastDraw(), text);
    }
    for (const std::string text : {"\xED\xA0\x80", "\xFF", "\xC3", "\xC0\xAF"}) {
        const auto refused = draw(text);
        ASSERT_FALSE(refused);
        EXPECT_EQ(refused.error().code, ErrorCode::Malformed);
    }
    EXPECT_EQ(support::problemsOf(*cellar), "");
}

TEST_F(Fault46_SqlInText, IsOnlyText)
{
    for (const std::string text : {"'; DROP TABLE entry; --", "\" OR 1=1", "Robert'); DELETE",
                                   "%' UNION SELECT * FROM meta --"}) {
        ASSERT_TRUE(draw(text));
        EXPECT_EQ(noteOfLastDraw(), text);
    }
    EXPECT_EQ(support::problemsOf(*cellar), "");
}

TEST_F(Fault47_FormulaInAnExport, IsOnlyText)
{
    EXPECT_EQ(csvCell(std::string("=cmd|' /C calc'!A0")), "\"'=cmd|' /C calc'!A0\"");
    for (const char* begins : {"+1", "-1", "@sum", "\t=1", "\r=1"}) {
        EXPECT_EQ(csvCell(std::string(begins)), "\"'" + std::string(begins) + "\"");
    }
    EXPECT_EQ(csvCell(std::string("say \"ah\"")), "\"say \"\"ah\"\"\"");
    EXPECT_EQ(csvCell(std::int64_t{-5}), "-5");  // a number is no text
    EXPECT_EQ(csvCell(Cell()), "");
    ASSERT_TRUE(draw("=1+1"));
    bool found = false;
    for (const ExportedTable& table : exportedTables()) {
        ASSERT_TRUE(eachRow(cellar->database(), table, [&](std::span<const Cell> cells) {
            for (const Cell& cell : cells) {
                found |= csvCell(cell) == "\"'=1+1\"";
            }
            return Result<void>();
        }));
    }
    EXPECT_TRUE(found);
}

TEST_F(Fault49_NumbersBeyondTheirRange, AreRefusedByName)
{
    for (const double litresTooMany : {1e6, 1e300, -1.0, 0.0}) {
        const auto refused = recordDraw(
            *cellar,
            {.barrel = small.barrel, .volume = litres(litresTooMany), .method = "sample hole"});
        ASSERT_FALSE(refused) << litresTooMany;
        EXPECT_NE(refused.error().subject, "");
    }
    EXPECT_FALSE(recordDraw(
        *cellar,
        {.barrel = small.barrel, .volume = litres(std::nan("")), .method = "sample hole"}));
    EXPECT_EQ(support::problemsOf(*cellar), "");
}

TEST_F(Fault65_TakeInThatIsStopped, IsFinishedByTheNext)
{
    for (int i = 0; i < 60; ++i) {
        ASSERT_TRUE(draw());
    }
    const Path file = device.folder.path() / "day.spile";
    ASSERT_TRUE(handOut(*cellar, file, {}));
    support::TestDevice other(303);
    auto joined = other.join(file);
    for (int i = 0; i < 60; ++i) {
        ASSERT_TRUE(draw());
    }
    ASSERT_TRUE(handOut(*cellar, file, {}));
    // At the first report, at the second, and so on, until it is not stopped any more.
    int stoppedAt = 0;
    for (bool done = false; !done;) {
        ++stoppedAt;
        CancelToken stop;
        int reports = 0;
        const Job job(
            [&](std::uint64_t, std::uint64_t) {
                if (++reports == stoppedAt) {
                    stop.cancel();
                }
            },
            &stop);
        const auto taken = takeIn(*joined, file, job);
        done = taken.has_value();
        EXPECT_TRUE(done || taken.error().code == ErrorCode::Cancelled);
        ASSERT_EQ(support::problemsOf(*joined), "");
    }
    EXPECT_GT(stoppedAt, 1);
    ASSERT_TRUE(takeIn(*joined, file));
    EXPECT_EQ(stateRoot(*joined), stateRoot(*cellar));
}

TEST_F(Fault67_FaultyStateOfAnEarlierVersion, IsFoundAndMadeAnew)
{
    ASSERT_TRUE(draw());
    const auto right = stateRoot(*cellar);
    ASSERT_TRUE(cellar->database().run("UPDATE state_draw SET volume_ml = volume_ml + 1;"));
    EXPECT_NE(stateRoot(*cellar), right);
    EXPECT_NE(support::problemsOf(*cellar), "");
    ASSERT_TRUE(
        cellar->database().run("UPDATE meta SET value = value - 1 WHERE key = 'projection';"));
    cellar.reset();
    cellar = device.reopen();
    EXPECT_EQ(stateRoot(*cellar), right);
    EXPECT_EQ(support::problemsOf(*cellar), "");
}

}  // namespace spile::cellar
