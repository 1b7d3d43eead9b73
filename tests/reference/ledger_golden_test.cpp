// Files that an earlier program wrote, kept as they are: every later one has to read them. Made
// once by SPILE_MAKE_GOLDEN=FOLDER and this test, of format 1 and, sealed, of form 1.
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/tasting.hpp"
#include "core/cellar/checking.hpp"
#include "core/cellar/queries.hpp"
#include "core/cellar/state_schema.hpp"
#include "tests/support/small_cellar.hpp"
#include "tests/support/test_device.hpp"

#include <cstdlib>
#include <ctime>
#include <gtest/gtest.h>
#include <locale>

namespace spile::cellar {

namespace {

constexpr const char* passphrase = "KEPT-FOR-EVER-AS-IT-WAS";

Path golden(const std::string& name)
{
    return Path(SPILE_SOURCE_DIR) / "tests/fixtures/golden" / name;
}

void make(const Path& folder)
{
    support::TestDevice device(1);
    const auto cellar = device.newCellar();
    const support::SmallCellar small = support::fillSmallCellar(*cellar);
    device.clock.pass(std::chrono::days(200));
    ASSERT_TRUE(recordDraw(*cellar, {.barrel = small.barrel,
                                     .volume = millilitres(120),
                                     .method = "sample hole",
                                     .circumstance = {.person = small.person}}));
    ASSERT_TRUE(recordTaste(*cellar, {.barrel = small.barrel,
                                      .scores = {{"oak", 6}, {"rum", std::nullopt}},
                                      .circumstance = {.person = small.person}}));
    ASSERT_TRUE(handOut(*cellar, folder / "format-1.spile", {}));
    ASSERT_TRUE(handOut(*cellar, folder / "sealed-1.spile", {}, {}, passphrase));
}

// What is in them, whichever of the two it was read from.
void expectWhatWasRecorded(Cellar& cellar)
{
    EXPECT_EQ(cellar.identity().name, "Test cellar");
    EXPECT_EQ(support::problemsOf(cellar), "");
    const auto rows = *barrels(cellar.database(), {}, 10);
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(rows.front().mark, "Rum 3");
    const auto history = *historyOf(cellar.database(), rows.front().barrel);
    ASSERT_EQ(history.draws.size(), 1U);
    EXPECT_NEAR(inMillilitres(history.draws.front().volume), 120, 1e-9);
    EXPECT_EQ(toIsoTime(history.draws.front().at), "2026-03-20T08:00:00Z");
    ASSERT_EQ(history.tastings.size(), 1U);
    EXPECT_EQ(history.tastings.front().scores.at("oak"), 6);
    EXPECT_EQ(history.tastings.front().scores.at("rum"), std::nullopt);
}

}  // namespace

TEST(Golden, DayFileOfFormat1IsReadAsItWasWritten)
{
    if (const char* folder = std::getenv("SPILE_MAKE_GOLDEN")) {
        make(folder);
    }
    support::TestDevice device(2);
    const auto cellar = device.join(golden("format-1.spile"));
    ASSERT_TRUE(cellar);
    expectWhatWasRecorded(*cellar);
}

TEST(Golden, SealedDayFileOfForm1IsReadAsItWasWritten)
{
    support::TestDevice device(3);
    auto cellar = Cellar::join(device.cellarFolder(), device.outside(), golden("sealed-1.spile"),
                               {}, {}, passphrase);
    ASSERT_TRUE(cellar) << support::textOf(cellar.error());
    expectWhatWasRecorded(**cellar);
}

// The root of the state that format-1.spile gives: by version 11 of the state. A change of it
// without a new version is a fault. tests/machines compares whole cellars on machines of other
// kinds.
constexpr const char* rootOfFormat1 =
    "e80d2bae1e44df546ed6a68b3e724b0857ead5d04395f606f911b16474fdb755";

class DecimalCommas : public std::numpunct<char> {
    char do_decimal_point() const override { return ','; }
    char do_thousands_sep() const override { return '.'; }
    std::string do_grouping() const override { return "\3"; }
};

TEST(Fault68_OtherMachinesAndLocales, GiveTheSameStateRoot)
{
    ASSERT_EQ(stateVersion, 11);
    const std::locale before;
    const char* zone = std::getenv("TZ");
    const std::string zoneBefore = zone == nullptr ? "" : zone;
    std::uint64_t seed = 10;
    for (const char* there : {"", "Asia/Kolkata", "Pacific/Chatham"}) {
        setenv("TZ", there, 1);
        tzset();
        for (const bool commas : {false, true}) {
            std::locale::global(commas ? std::locale(before, new DecimalCommas) : before);
            support::TestDevice device(seed++);
            const auto cellar = device.join(golden("format-1.spile"));
            ASSERT_TRUE(cellar);
            EXPECT_EQ(stateRoot(*cellar)->hex(), rootOfFormat1) << there;
        }
    }
    std::locale::global(before);
    setenv("TZ", zoneBefore.c_str(), 1);
    tzset();
}

}  // namespace spile::cellar
