// More files that an earlier program wrote and every later one has to read: corrections, photos,
// devices that were cut off and renewed, what is not understood, a gap, and a whole store. Made
// by SPILE_MAKE_GOLDEN=FOLDER and this test, of format 1; a store for each schema since 3.
#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/photographing.hpp"
#include "core/cellar/acts/sheet.hpp"
#include "core/cellar/acts/trusting.hpp"
#include "core/cellar/checking.hpp"
#include "core/cellar/queries.hpp"
#include "core/ledger/schema.hpp"
#include "tests/support/day_file.hpp"
#include "tests/support/fleet.hpp"
#include "tests/support/libzip_archives.hpp"

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <gmock/gmock.h>

namespace spile::cellar {

namespace {

using testing::ElementsAre;
using testing::UnorderedElementsAre;

constexpr const char* passphrase = "KEPT-FOR-EVER-AS-IT-WAS";
// Over all records as they were signed: they are stored as they came, whatever becomes of them.
constexpr const char* recordsOfAll =
    "ae452fe1f324b36dd0bb1751b41db439d71b98291ed2e1fedb07a799d12cd7f9";
constexpr const char* recordsWithBetween =
    "2744a07f667012f80afc08091f92beaca8bd5928ad20facf312eb0375504556e";

Path golden(const std::string& name)
{
    return Path(SPILE_SOURCE_DIR) / "tests/fixtures/golden" / name;
}

EntryId draw(support::Fleet& fleet, std::size_t device, int ml)
{
    fleet.at(device).clock.pass(std::chrono::minutes(7));
    const auto made =
        recordDraw(fleet.cellar(device),
                   {.barrel = fleet.small().barrel, .volume = millilitres(ml), .method = "valve"});
    EXPECT_TRUE(made) << support::textOf(made.error());
    return *made;
}

void correct(support::Fleet& fleet)
{
    Cellar& desk = fleet.cellar(0);
    const EntryId amended = draw(fleet, 0, 100);
    const auto volume = static_cast<std::uint32_t>(Field::VolumeMl);
    ASSERT_TRUE(amend(desk, amended, {{volume, std::int64_t{110}}}));
    ASSERT_TRUE(amend(desk, amended, {{volume, std::int64_t{111}}}));
    ASSERT_TRUE(voidEntry(desk, draw(fleet, 0, 200)));
    const auto hidden = voidEntry(desk, draw(fleet, 0, 300));
    ASSERT_TRUE(hidden);
    ASSERT_TRUE(voidEntry(desk, *hidden));
    const Bytes picture = support::smallPicture();
    ASSERT_TRUE(recordPhoto(
        desk, {.barrel = fleet.small().barrel, .picture = picture, .purpose = "colour"}));
    auto change = *desk.ledger().change();
    ASSERT_TRUE(change.record({"barrel.sing",
                               fleet.small().barrel,
                               {{900U, "la"}, {901U, ledger::List{std::int64_t{1}}}},
                               {},
                               {},
                               {},
                               {}}));
    ASSERT_TRUE(change.commit());
}

// Phone 1 is lost and goes on, and one of its records is adopted; phone 2 is set back to an earlier
// state and gets a new key.
void loseAndSetBack(support::Fleet& fleet)
{
    ASSERT_TRUE(cutOff(fleet.cellar(0),
                       {.device = fleet.cellar(1).ledger().device(), .reason = "left in a cab"}));
    const EntryId found = draw(fleet, 1, 400);
    draw(fleet, 1, 500);
    fleet.exchangeAll();
    ASSERT_TRUE(adopt(fleet.cellar(0), {found}));
    fleet.backUp(2);
    draw(fleet, 2, 600);
    fleet.exchangeAll();
    ASSERT_TRUE(fleet.restore(2));
    draw(fleet, 2, 700);
    fleet.exchangeUntilQuiet();
}

void makeDayFiles(const Path& folder)
{
    support::Fleet fleet(3);
    fleet.exchangeAll();
    correct(fleet);
    loseAndSetBack(fleet);
    ASSERT_TRUE(handOut(fleet.cellar(0), folder / "all-1.spile", {}));
    ASSERT_TRUE(handOut(fleet.cellar(0), folder / "all-sealed-1.spile", {}, {}, passphrase));
    std::printf("all: %s\n", support::recordBytes(fleet.cellar(0)).hex().c_str());
    const DeviceId phone = fleet.cellar(2).ledger().device();
    draw(fleet, 0, 800);
    ASSERT_TRUE(handOut(fleet.cellar(0), folder / "between-1.spile", phone));
    fleet.takeIn(2, fleet.handOut(0, 2));
    fleet.takeIn(0, fleet.handOut(2, 0));
    draw(fleet, 0, 900);
    ASSERT_TRUE(handOut(fleet.cellar(0), folder / "gap-1.spile", phone));
    std::printf("with between: %s\n", support::recordBytes(fleet.cellar(0)).hex().c_str());
}

// What is drawn from the one barrel, in mL, as far as it counts.
std::vector<int> drawn(Cellar& cellar)
{
    std::vector<int> volumes;
    const auto rows = *barrels(cellar.database(), {}, 10);
    EXPECT_EQ(rows.size(), 1U);
    const auto history = historyOf(cellar.database(), rows.at(0).barrel);
    for (const DrawRow& row : history->draws) {
        volumes.push_back(static_cast<int>(std::lround(inMillilitres(row.volume))));
    }
    return volumes;
}

void expectAll(Cellar& cellar)
{
    const auto report = check(cellar, {});
    ASSERT_TRUE(report);
    EXPECT_THAT(report->problems, testing::IsEmpty());
    EXPECT_EQ(report->photos, 1U);
    EXPECT_EQ(report->missingPhotos, 0U);
    EXPECT_EQ(report->unknown, 1U);
    EXPECT_EQ(report->waiting, 0U);
    EXPECT_THAT(drawn(cellar), UnorderedElementsAre(111, 300, 400, 600, 700));
    EXPECT_EQ(*cellar.database().integer(0, "SELECT count(*) FROM set_aside"), 1);
    EXPECT_EQ(support::recordBytes(cellar).hex(), recordsOfAll);
}

support::MemoryKeyStore keysOfStore()
{
    support::MemoryKeyStore keys;
    EXPECT_TRUE(keys.save(KeyName::Device, *KeySeed::fromBytes(Bytes(32, 0x5a))));
    return keys;
}

void makeStore(const Path& folder)
{
    support::TestDevice device(4);
    device.keys = keysOfStore();
    auto cellar = device.newCellar();
    const support::SmallCellar small = support::fillSmallCellar(*cellar);
    ASSERT_TRUE(recordDraw(
        *cellar, {.barrel = small.barrel, .volume = millilitres(120), .method = "valve"}));
    const SubjectId sheet = *openSheet(*cellar, small.barrel, small.person);
    ASSERT_TRUE(tapScore(*cellar, sheet, "oak", 7));
    ASSERT_TRUE(cellar->database().checkpoint(0));
    cellar.reset();
    const Bytes store = support::contentOf(device.cellarFolder() / "ledger.db");
    support::overwrite(
        folder / ("ledger-" + std::to_string(ledger::schemaVersion) + ".zip"),
        support::libzipArchive({{"ledger.db", std::string(asText(store))}}, {.deflate = true}));
}

void makeOnce()
{
    if (const char* folder = std::getenv("SPILE_MAKE_GOLDEN")) {
        makeDayFiles(folder);
        makeStore(folder);
    }
}

}  // namespace

TEST(GoldenCorpus, DayFileWithCorrectionsPhotosAndLostDevices)
{
    makeOnce();
    support::TestDevice device(2);
    const auto cellar = device.join(golden("all-1.spile"));
    ASSERT_TRUE(cellar);
    expectAll(*cellar);
    // What it hands on is the same, also what it does not understand.
    const Path onward = device.folder.path() / "onward.spile";
    ASSERT_TRUE(handOut(*cellar, onward, {}));
    support::TestDevice other(5);
    expectAll(*other.join(onward));
}

TEST(GoldenCorpus, TheSameSealed)
{
    support::TestDevice device(3);
    auto cellar = Cellar::join(device.cellarFolder(), device.outside(),
                               golden("all-sealed-1.spile"), {}, {}, passphrase);
    ASSERT_TRUE(cellar) << support::textOf(cellar.error());
    expectAll(**cellar);
}

TEST(GoldenCorpus, DayFileAfterAGapWaitsForTheOneBetween)
{
    support::TestDevice device(2);
    const auto cellar = device.join(golden("all-1.spile"));
    ASSERT_TRUE(cellar);
    const auto gap = takeIn(*cellar, golden("gap-1.spile"));
    ASSERT_TRUE(gap) << support::textOf(gap.error());
    EXPECT_EQ(gap->added, 0U);
    EXPECT_EQ(gap->waiting, 1U);
    const auto between = takeIn(*cellar, golden("between-1.spile"));
    ASSERT_TRUE(between) << support::textOf(between.error());
    EXPECT_THAT(drawn(*cellar), UnorderedElementsAre(111, 300, 400, 600, 700, 800, 900));
    EXPECT_EQ(support::problemsOf(*cellar), "");
    EXPECT_EQ(support::recordBytes(*cellar).hex(), recordsWithBetween);
}

class GoldenStore : public testing::TestWithParam<const char*> {};

TEST_P(GoldenStore, OpensAndGoesOn)
{
    support::TestDevice device(6);
    device.keys = keysOfStore();
    const auto members = support::libzipContents(support::contentOf(golden(GetParam())), true);
    ASSERT_EQ(members.size(), 1U);
    for (const char* part : {"", "photos", "outbox"}) {
        ASSERT_TRUE(device.files.makeFolder(device.cellarFolder() / part));
    }
    support::overwrite(device.cellarFolder() / "ledger.db", asBytes(members.front().second));
    const auto cellar = device.reopen();
    ASSERT_TRUE(cellar);
    EXPECT_EQ(support::problemsOf(*cellar), "");
    EXPECT_THAT(drawn(*cellar), ElementsAre(120));
    const auto sheets = openSheets(*cellar);
    ASSERT_EQ(sheets->size(), 1U);
    EXPECT_EQ(readSheet(*cellar, sheets->front().sheet)->taste.scores.at("oak"), 7);
    ASSERT_TRUE(recordDraw(
        *cellar, {.barrel = sheets->front().barrel, .volume = millilitres(50), .method = "valve"}));
    const Path file = device.folder.path() / "day.spile";
    ASSERT_TRUE(handOut(*cellar, file, {}));
    support::TestDevice other(7);
    const auto joined = other.join(file);
    ASSERT_TRUE(joined);
    EXPECT_THAT(drawn(*joined), UnorderedElementsAre(120, 50));
}

INSTANTIATE_TEST_SUITE_P(OfEachSchema, GoldenStore,
                         testing::Values("ledger-3.zip", "ledger-4.zip"));

}  // namespace spile::cellar
