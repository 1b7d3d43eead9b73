// The power is lost at any moment: what was told to be saved is saved, and what remains is sound.
//
// The calls that the disk gets are recorded once; then each moment is looked at with what a disk
// may have left of what was not synced.
#include "core/cellar/acts/exchanging.hpp"
#include "core/ledger/schema.hpp"
#include "tests/fault/recorded_cellar.hpp"
#include "tests/support/old_store.hpp"

#include <map>

namespace spile::cellar {

namespace {

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

// A file that was handed out is whole, or it is the one before, or none.
namespace {

constexpr const char* dayFile = "day.spile";

std::string wrongAfterHandOut(const Recorded& recorded, const Crash& crash, const Path& folder)
{
    if (std::string wrong = wrongAfter(recorded, crash, folder); !wrong.empty()) {
        return wrong;
    }
    const std::vector<DiskCall>& calls = recorded.disk->calls();
    const auto said = std::count_if(
        calls.begin(), calls.begin() + static_cast<std::ptrdiff_t>(crash.after),
        [](const DiskCall& call) { return call.kind == DiskCall::Kind::Acknowledge; });
    const Path file = folder / dayFile;
    if (!std::filesystem::exists(file)) {
        return said == 0 ? "" : "a day file that was handed out is gone";
    }
    support::TestDevice other(crash.seed + 9);
    auto joined = Cellar::join(other.cellarFolder(), other.outside(), file, {});
    return joined ? "" : "a torn day file: " + support::textOf(joined.error());
}

}  // namespace

TEST(Fault03_PowerLossInAHandOut, LeavesTheWholeFileOrTheOneBefore)
{
    auto recorded = std::make_unique<Recorded>(105);
    {
        auto made = recorded->device.newCellar();
        static_cast<void>(support::fillSmallCellar(*made));
    }
    recorded->record();
    auto cellar = recorded->open();
    ASSERT_TRUE(cellar);
    const Path file = recorded->device.folder.path() / dayFile;
    for (int round = 0; round < 3; ++round) {
        const auto drawn =
            recordDraw(**cellar, {.barrel = barrels((*cellar)->database(), {}, 1)->at(0).barrel,
                                  .volume = millilitres(20),
                                  .method = "sample hole"});
        ASSERT_TRUE(drawn);
        ASSERT_TRUE(handOut(**cellar, file, {}));
        recorded->disk->acknowledge(drawn->bytes());
    }
    expectNothingWrong(lookAt(*recorded, wrongAfterHandOut));
}

namespace {

Sha256 rootOf(Cellar& cellar)
{
    const auto root = cellar.state().root(cellar.database());
    EXPECT_TRUE(root);
    return root.value_or(Sha256());
}

// What a desk that takes in a phone's file comes to when nothing goes wrong.
struct Exchange {
    Recorded desk{106};
    support::TempFolder other;
    Path file = other.path() / dayFile;
    Sha256 whole;

    Exchange()
    {
        support::TestDevice phone(107);
        {
            auto made = desk.device.newCellar();
            static_cast<void>(support::fillSmallCellar(*made));
            const Path ofDesk = other.path() / "desk.spile";
            EXPECT_TRUE(handOut(*made, ofDesk, {}));
            auto joined = phone.join(ofDesk);
            support::admitDevice(*made, *joined);
            EXPECT_TRUE(handOut(*made, ofDesk, {}));
            EXPECT_TRUE(takeIn(*joined, ofDesk));
            Recorded onPhone(107);
            onPhone.disk = std::make_unique<RecordedDisk>(phone.folder.path(), phone.files);
            recordMuch(onPhone, *joined, 6);
            EXPECT_TRUE(handOut(*joined, file, {}));
        }
        desk.record();
        auto cellar = desk.open();
        EXPECT_TRUE(cellar);
        EXPECT_TRUE(takeIn(**cellar, file));
        whole = rootOf(**cellar);
    }
};

Exchange& exchange()
{
    static Exchange one;
    return one;
}

std::string wrongAfterTakeIn(const Recorded& recorded, const Crash& crash, const Path& folder)
{
    support::TestDevice device(crash.seed + 7);
    device.keys = recorded.device.keys;
    auto cellar = Cellar::open(folder / "test.cellar", device.outside());
    if (!cellar) {
        return "it does not open: " + support::textOf(cellar.error());
    }
    if (const auto again = takeIn(**cellar, exchange().file); !again) {
        return "it cannot be taken in again: " + support::textOf(again.error());
    }
    if (rootOf(**cellar) != exchange().whole) {
        return "taken in again, it comes to another state";
    }
    return support::problemsOf(**cellar);
}

}  // namespace

TEST(Fault04_PowerLossInATakeIn, ComesToTheSameStateWhenItIsRunAgain)
{
    expectNothingWrong(lookAt(exchange().desk, wrongAfterTakeIn));
}

namespace {

std::string wrongAfterRenewal(const Recorded& recorded, const Crash& crash, const Path& folder)
{
    std::string wrong = wrongAfter(recorded, crash, folder);
    if (!wrong.empty()) {
        return wrong;
    }
    support::TestDevice device(crash.seed + 8);
    device.keys = recorded.device.keys;
    auto cellar = Cellar::open(folder / "test.cellar", device.outside());
    return cellar && (*cellar)->database().integer(
                         0, "SELECT value FROM meta WHERE key = 'projection'") ==
                         Result<std::int64_t>((*cellar)->state().version())
               ? ""
               : "its state was not brought up to this version";
}

}  // namespace

// The state of an older version is made anew when a cellar is opened.
TEST(Fault53_PowerLossInAMigration, LeavesTheOldStateOrTheNew)
{
    Recorded recorded(108);
    {
        auto made = recorded.device.newCellar();
        static_cast<void>(support::fillSmallCellar(*made));
        ASSERT_TRUE(made->database().run(
            "DROP TABLE state_barrel_now; CREATE TABLE state_barrel_now(subject BLOB PRIMARY KEY, "
            "code TEXT NOT NULL) STRICT, WITHOUT ROWID; UPDATE meta SET value = 1 WHERE key = "
            "'projection';"));
    }
    recorded.record();
    {
        auto cellar = recorded.open();
        ASSERT_TRUE(cellar);
    }
    expectNothingWrong(lookAt(recorded, wrongAfterRenewal));
}

namespace {

std::map<std::int64_t, int> versionsSeen;

std::string wrongAfterNewTable(const Recorded& recorded, const Crash& crash, const Path& folder)
{
    {
        auto left = ledger::Database::open((folder / "test.cellar" / "ledger.db").string(),
                                           ledger::Database::Mode::Read);
        ++versionsSeen[left ? left->integer(0, "PRAGMA user_version").value_or(0) : 0];
    }
    return wrongAfterRenewal(recorded, crash, folder);
}

}  // namespace

// The table of entries itself is made anew.
TEST(Fault53_PowerLossInAMigration, LeavesTheOldTableOfEntriesOrTheNew)
{
    Recorded recorded(109);
    std::set<EntryId> all;
    {
        auto made = recorded.device.newCellar();
        static_cast<void>(support::fillSmallCellar(*made));
        all = entriesIn(*made);
        ASSERT_TRUE(made->database().run(support::backToVersion3));
    }
    recorded.record();
    for (const EntryId& id : all) {
        recorded.disk->acknowledge(id.bytes());
    }
    ASSERT_TRUE(recorded.open());
    versionsSeen.clear();
    expectNothingWrong(lookAt(recorded, wrongAfterNewTable));
    EXPECT_GT(versionsSeen[3], 0) << "the old table was seen";
    EXPECT_GT(versionsSeen[ledger::schemaVersion], 0) << "and the new one";
    EXPECT_EQ(versionsSeen.size(), 2U);
}

}  // namespace spile::cellar
