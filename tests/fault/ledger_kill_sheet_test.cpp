// The process is killed at any moment while full sheets are tapped and closed: what it was told is
// kept, is kept, and no tasting is without its reading and its photo.
#include "core/cellar/acts/sheet.hpp"
#include "core/cellar/queries.hpp"
#include "tests/support/killed_process.hpp"
#include "tests/support/real_device.hpp"
#include "tests/support/small_cellar.hpp"

#include <algorithm>
#include <gtest/gtest-spi.h>
#include <gtest/gtest.h>

namespace spile::cellar {

using support::Acknowledge;
using support::RealDevice;

namespace {

// How far a sheet had come when it said so.
enum class Said : std::uint8_t { Scored = 1, Measured, Photographed, Thrown, Closed };

constexpr std::size_t messageBytes = 1 + SubjectId::size;

void say(const Acknowledge& acknowledge, const SubjectId& sheet, Said said)
{
    Bytes message(messageBytes);
    message[0] = static_cast<std::uint8_t>(said);
    std::copy(sheet.bytes().begin(), sheet.bytes().end(), message.begin() + 1);
    acknowledge(message);
}

// The note is the sheet's id, so that its tasting can be told from the others. One of four sheets
// is thrown away.
Result<void> fillSheet(Cellar& cellar, const SubjectId& barrel, const SubjectId& person, int round,
                       const Acknowledge& acknowledge)
{
    SPILE_ASSIGN(sheet, openSheet(cellar, barrel, person));
    SPILE_TRY(writeNote(cellar, sheet, sheet.hex()));
    SPILE_TRY(tapScore(cellar, sheet, "oak", 5));
    say(acknowledge, sheet, Said::Scored);
    SPILE_TRY(tapReading(cellar, sheet, Measure::Ph, 4.2));
    SPILE_TRY(keepStep(cellar, sheet, "photo"));
    say(acknowledge, sheet, Said::Measured);
    SPILE_TRY(keepPhoto(cellar, sheet,
                        support::smallPicture(static_cast<std::uint8_t>(round % 250)), "colour"));
    say(acknowledge, sheet, Said::Photographed);
    constexpr int throwEvery = 4;
    if (round % throwEvery == 0) {
        SPILE_TRY(discardSheet(cellar, sheet));
        say(acknowledge, sheet, Said::Thrown);
        return {};
    }
    SPILE_TRY(closeSheet(cellar, sheet));
    say(acknowledge, sheet, Said::Closed);
    return {};
}

int fillUntilKilled(const Path& folder, const Acknowledge& acknowledge)
{
    RealDevice device(folder);
    auto cellar = device.openOrMake();
    if (!cellar) {
        return 1;
    }
    const auto known = support::barrelAndPerson(**cellar);
    if (!known) {
        return 2;
    }
    for (int round = 1;; ++round) {
        if (!fillSheet(**cellar, known->first, known->second, round, acknowledge)) {
            return 3;
        }
    }
}

using Sheets = std::map<std::string, Said>;  // how far each had come, by its id

void takeDown(const Bytes& said, Sheets& into)
{
    ASSERT_EQ(said.size() % messageBytes, 0U);
    for (std::size_t at = 0; at < said.size(); at += messageBytes) {
        const ByteView one = ByteView(said).subspan(at, messageBytes);
        into[toHex(one.subspan(1))] = static_cast<Said>(one[0]);
    }
}

void expectOnSheet(const SheetContent& content, const OpenSheet& sheet, Said said)
{
    EXPECT_EQ(content.taste.scores.count("oak"), 1U);
    EXPECT_TRUE(said < Said::Measured || (content.reading.ph && sheet.step == "photo"));
    EXPECT_TRUE(said < Said::Photographed || content.photos.size() == 1);
    EXPECT_LT(said, Said::Thrown);
}

// The note of each tasting, how many readings and photos answer it.
std::map<std::string, std::pair<int, int>> closedSheets(Cellar& cellar)
{
    std::map<std::string, std::pair<int, int>> found;
    EXPECT_TRUE(cellar.database().each(
        [&](const ledger::Row& row) {
            found[row.text(0)] = {static_cast<int>(row.integer(1)),
                                  static_cast<int>(row.integer(2))};
            return Result<void>();
        },
        "SELECT note, (SELECT count(*) FROM entry AS r WHERE r.target = t.entry AND r.kind = "
        "'reading'), (SELECT count(*) FROM entry AS p JOIN entry_photo USING(n) JOIN photo "
        "USING(sha256) WHERE p.target = t.entry AND p.kind = 'photo' AND present = 1) "
        "FROM state_taste AS t"));
    return found;
}

void expectAll(Cellar& cellar, const Sheets& said)
{
    const auto closed = closedSheets(cellar);
    for (const auto& [note, answers] : closed) {
        EXPECT_EQ(answers, std::pair(1, 1)) << note;
    }
    const auto open = openSheets(cellar);
    ASSERT_TRUE(open);
    for (const auto& [id, how] : said) {
        SCOPED_TRACE(id);
        const std::string name = id;  // clang 14 lets no lambda see a structured binding
        const auto sheet = std::find_if(open->begin(), open->end(), [&](const OpenSheet& one) {
            return one.sheet.hex() == name;
        });
        if (sheet != open->end()) {
            expectOnSheet(*readSheet(cellar, sheet->sheet), *sheet, how);
        } else if (how < Said::Photographed || how == Said::Closed) {
            EXPECT_EQ(closed.count(id), 1U) << "lost";
        } else if (how == Said::Thrown) {
            EXPECT_EQ(closed.count(id), 0U);
        }
    }
}

}  // namespace

TEST(Fault05_KilledTaster, LosesNothingOfASheetAtFiftyMoments)
{
    std::size_t sheets = 0;
    for (std::uint64_t seed = 1; seed <= 5; ++seed) {
        support::TempFolder folder;
        SeededRandom random(seed);
        Sheets said;
        for (int kill = 0; kill < 10; ++kill) {
            SCOPED_TRACE("seed " + std::to_string(seed) + ", kill " + std::to_string(kill));
            const std::chrono::microseconds delay(20'000 + random.below(150'000));
            const auto killed = support::runAndKill(delay, [&](const Acknowledge& acknowledge) {
                return fillUntilKilled(folder.path(), acknowledge);
            });
            EXPECT_FALSE(killed.ended) << "the taster gave up with " << killed.status;
            takeDown(killed.acknowledged, said);
            RealDevice device(folder.path());
            auto cellar = Cellar::open(device.cellarFolder, device.outside());
            if (!cellar && said.empty()) {
                continue;  // killed while it was made
            }
            ASSERT_TRUE(cellar) << support::textOf(cellar.error());
            expectAll(**cellar, said);
            EXPECT_EQ(support::problemsOf(**cellar), "");
            ASSERT_FALSE(testing::Test::HasFailure());
        }
        sheets += said.size();
    }
    EXPECT_GE(sheets, 50U);  // else it was killed before it did anything
}

TEST(Fault05_KilledTaster, IsSeenWhenItDoesLoseSomething)
{
    support::TestDevice device(88);
    const auto cellar = device.newCellar();
    const support::SmallCellar small = support::fillSmallCellar(*cellar);
    EXPECT_NONFATAL_FAILURE(expectAll(*cellar, {{"never kept", Said::Closed}}), "lost");
    NewTaste bare{small.barrel, {{"oak", 5}}};
    bare.circumstance.person = small.person;
    ASSERT_TRUE(recordTaste(*cellar, bare));
    EXPECT_NONFATAL_FAILURE(expectAll(*cellar, {}), "");
}

}  // namespace spile::cellar
