// Lots: what comes in, what is taken, and what stands in the way.
#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/lots.hpp"
#include "core/cellar/acts/packing.hpp"
#include "core/cellar/acts/tending.hpp"
#include "core/cellar/lots.hpp"
#include "tests/support/small_cellar.hpp"

#include <gmock/gmock.h>

namespace spile::cellar {

using testing::ElementsAre;

namespace {

struct Tank {
    support::TestDevice device{91};
    std::unique_ptr<Cellar> cellar = device.newCellar();
    support::SmallCellar small = support::fillSmallCellar(*cellar);
    SubjectId lot = *registerLot(*cellar, {.name = "Tank 2"});

    EntryId transfer(double l = 180)
    {
        const auto made = recordTransfer(*cellar, {.lot = lot,
                                                   .from = small.barrel,
                                                   .volume = litres(l),
                                                   .alcoholByVolume = 0.112,
                                                   .method = "pump",
                                                   .circumstance = {{}, small.person, {}}});
        EXPECT_TRUE(made) << (made ? "" : support::textOf(made.error()));
        return made.value_or(EntryId());
    }
    [[nodiscard]] std::int64_t mixes()
    {
        return *cellar->database().integer(-1, "SELECT count(*) FROM state_mix");
    }
    [[nodiscard]] NewPackage bottles(const std::string& code, std::int64_t count = 300) const
    {
        return {.lot = lot,
                .lotCode = code,
                .packages = {{"bottle 330 mL", millilitres(330), count}},
                .lost = litres(2),
                .labelStrength = 0.112};
    }
    void pass(std::chrono::hours time) { device.clock.pass(time); }
};

std::string subjectOf(const Result<EntryId>& result)
{
    return result ? "" : result.error().subject;
}

}  // namespace

TEST(Lots, SayWhatCameInAndWhatIsLeft)
{
    Tank tank;
    tank.transfer();
    ASSERT_TRUE(
        recordFinish(*tank.cellar, {.lot = tank.lot,
                                    .substance = "coconut",
                                    .mass = kilograms(1.5),
                                    .allergen = "coconut",
                                    .until = tank.device.clock.now() + std::chrono::days(5)}));
    ASSERT_TRUE(recordPackage(*tank.cellar, tank.bottles("330A")));
    const auto row = lotById(tank.cellar->database(), tank.lot);
    ASSERT_TRUE(row && *row);
    EXPECT_EQ((*row)->name, "Tank 2");
    EXPECT_NEAR(inLitres((*row)->in), 180, 1e-9);
    EXPECT_NEAR(inLitres((*row)->out), 300 * 0.33 + 2, 1e-9);
    EXPECT_EQ((*row)->packagings, 1);
    const auto history = lotHistory(tank.cellar->database(), tank.lot);
    ASSERT_TRUE(history);
    ASSERT_EQ(history->transfers.size(), 1U);
    EXPECT_EQ(history->transfers[0].fromName, "Rum 3");
    EXPECT_EQ(history->transfers[0].beer, "Night Ferry");
    EXPECT_FALSE(history->transfers[0].fromLot);
    EXPECT_EQ(history->transfers[0].person, "Ada");
    EXPECT_THAT(history->allergens(), ElementsAre("coconut"));
    ASSERT_EQ(history->packages.size(), 1U);
    EXPECT_EQ(history->packages[0].left[0].count, 300);
    EXPECT_FALSE(history->packages[0].whileHeld);
    EXPECT_EQ(support::problemsOf(*tank.cellar), "");
}

TEST(Lots, MakeANewMixOnlyWhenSomethingCameIn)
{
    Tank tank;
    EXPECT_EQ(subjectOf(mixOf(*tank.cellar, tank.lot)), "lot");
    const EntryId transfer = tank.transfer();
    const auto first = mixOf(*tank.cellar, tank.lot);
    ASSERT_TRUE(first);
    EXPECT_EQ(*mixOf(*tank.cellar, tank.lot), *first);
    EXPECT_EQ(tank.mixes(), 1);
    ASSERT_TRUE(
        recordFinish(*tank.cellar, {.lot = tank.lot, .substance = "cacao", .mass = grams(400)}));
    const auto second = mixOf(*tank.cellar, tank.lot);
    EXPECT_NE(*second, *first);
    ASSERT_TRUE(voidEntry(*tank.cellar, transfer));
    EXPECT_NE(*mixOf(*tank.cellar, tank.lot), *second);
}

TEST(Lots, CannotBeTheirOwnSource)
{
    Tank tank;
    const EntryId transfer = tank.transfer();
    EXPECT_EQ(subjectOf(recordTransfer(*tank.cellar,
                                       {.lot = tank.lot, .from = tank.lot, .volume = litres(1)})),
              "lot");
    // Nor by a correction of what a mix was made of: the act refuses it, and one that another
    // program wrote changes nothing.
    const auto mix = mixOf(*tank.cellar, tank.lot);
    ASSERT_TRUE(mix);
    const ledger::Fields forged = {
        {static_cast<std::uint32_t>(Field::Sources),
         ledger::List{ledger::Value(ledger::List{ledger::Value(*mix)})}}};
    EXPECT_EQ(subjectOf(amend(*tank.cellar, *mix, forged)), "sources");
    ledger::NewEntry entry;
    entry.kind = amendKind;
    entry.subject = tank.lot;
    entry.target = *mix;
    entry.fields = forged;
    ASSERT_TRUE(recordOne(*tank.cellar, entry));
    EXPECT_EQ(*tank.cellar->database().integer(
                  0, "SELECT count(*) FROM state_mix_sources WHERE entry = ? AND source = ?", *mix,
                  transfer),
              1);
    EXPECT_EQ(subjectOf(voidEntry(*tank.cellar, *mix)), "void");
}

TEST(Lots, ThatAreHeldAreNeitherPackagedNorReleased)
{
    Tank tank;
    tank.transfer();
    const auto packed = recordPackage(*tank.cellar, tank.bottles("330A"));
    ASSERT_TRUE(packed);
    tank.pass(std::chrono::hours(1));
    const auto hold = recordHold(*tank.cellar, tank.lot, "wild yeast?");
    ASSERT_TRUE(hold);
    const auto refused = recordPackage(*tank.cellar, tank.bottles("330B", 10));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().subject, "hold");
    EXPECT_EQ(refused.error().value, "wild yeast?");
    const NewRelease release{.package = *packed,
                             .to = "The Anchor",
                             .packages = {{"bottle 330 mL", millilitres(330), 24}}};
    EXPECT_EQ(subjectOf(recordRelease(*tank.cellar, release)), "hold");
    EXPECT_TRUE((*lotById(tank.cellar->database(), tank.lot))->held);

    tank.pass(std::chrono::hours(24));
    ASSERT_TRUE(recordClear(*tank.cellar, *hold, "clean"));
    EXPECT_EQ(subjectOf(recordClear(*tank.cellar, *hold, "clean")), "hold");
    EXPECT_FALSE((*lotById(tank.cellar->database(), tank.lot))->held);
    ASSERT_TRUE(recordRelease(*tank.cellar, release));
    ASSERT_TRUE(recordPackage(*tank.cellar, tank.bottles("330B", 10)));
}

TEST(Lots, ReleaseNoMoreThanIsLeft)
{
    Tank tank;
    tank.transfer();
    const auto packed = recordPackage(*tank.cellar, tank.bottles("330A", 100));
    ASSERT_TRUE(packed);
    NewRelease release{.package = *packed,
                       .to = "The Anchor",
                       .packages = {{"bottle 330 mL", millilitres(330), 60}}};
    ASSERT_TRUE(recordRelease(*tank.cellar, release));
    const auto refused = recordRelease(*tank.cellar, release);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().limit, "at most 40");
    release.packages[0].count = 40;
    ASSERT_TRUE(recordRelease(*tank.cellar, release));
    const auto row = packagedBy(tank.cellar->database(), *packed);
    EXPECT_EQ((*row)->left[0].count, 0);
    EXPECT_EQ(releasesOf(tank.cellar->database(), *packed)->size(), 2U);
    EXPECT_EQ(subjectOf(recordPackage(*tank.cellar, tank.bottles("330A", 10))), "lot_code");
}

TEST(Lots, TellWhatIsToBeTakenOut)
{
    Tank tank;
    const Instant now = tank.device.clock.now();
    const auto put = [&](const std::string& substance, int days) {
        return *recordFinish(*tank.cellar, {.lot = tank.lot,
                                            .substance = substance,
                                            .mass = grams(300),
                                            .until = now + std::chrono::days(days)});
    };
    const EntryId vanilla = put("vanilla", 7);
    put("oak cubes", 3);
    put("spice", 30);
    const auto due = finishesDue(tank.cellar->database(), now + std::chrono::days(10), 10);
    ASSERT_EQ(due->size(), 2U);
    EXPECT_EQ(due->at(0).substance, "oak cubes");
    EXPECT_EQ(due->at(1).lotName, "Tank 2");
    ASSERT_TRUE(recordTakeOut(*tank.cellar, vanilla));
    EXPECT_EQ(subjectOf(recordTakeOut(*tank.cellar, vanilla)), "finish");
    EXPECT_EQ(finishesDue(tank.cellar->database(), now + std::chrono::days(10), 10)->size(), 1U);
    EXPECT_EQ(subjectOf(recordFinish(*tank.cellar, {.lot = tank.lot, .substance = "air"})),
              "finish");
}

TEST(Lots, FillBarrelsAndKnowIt)
{
    Tank tank;
    tank.transfer();
    ASSERT_TRUE(
        recordEmpty(*tank.cellar, {.barrel = tank.small.barrel,
                                   .volume = litres(180),
                                   .nextUse = "refill at once",
                                   .heel = litres(3),
                                   .until = tank.device.clock.now() + std::chrono::days(2)}));
    const auto empty = barrelById(tank.cellar->database(), tank.small.barrel);
    EXPECT_EQ((*empty)->nextUse, "refill at once");
    EXPECT_EQ((*empty)->nextStep, "fill");
    EXPECT_TRUE((*empty)->due.has_value());
    EXPECT_FALSE((*empty)->sour);
    tank.pass(std::chrono::hours(2));
    ASSERT_TRUE(recordFill(*tank.cellar, {.barrel = tank.small.barrel,
                                          .volume = litres(150),
                                          .lot = tank.lot,
                                          .programme = "sour"}));
    EXPECT_TRUE((*barrelById(tank.cellar->database(), tank.small.barrel))->sour);
    ASSERT_TRUE(recordTopUp(*tank.cellar,
                            {.barrel = tank.small.barrel, .volume = litres(5), .lot = tank.lot}));
    ASSERT_TRUE(recordDiscard(*tank.cellar, {tank.lot, litres(4), "trub"}));
    const auto history = lotHistory(tank.cellar->database(), tank.lot);
    ASSERT_EQ(history->waysOut.size(), 3U);
    EXPECT_EQ(history->waysOut[0].kind, "fill");
    EXPECT_EQ(history->waysOut[0].to, "Rum 3");
    EXPECT_EQ(history->waysOut[2].to, "trub");
    EXPECT_NEAR(inLitres((*lotById(tank.cellar->database(), tank.lot))->left()), 180 - 159, 1e-9);
    EXPECT_EQ(support::problemsOf(*tank.cellar), "");
}

TEST(Lots, AreListedTheNewestFirstPageByPage)
{
    Tank tank;
    for (int i = 0; i < 5; ++i) {
        tank.pass(std::chrono::hours(1));
        ASSERT_TRUE(registerLot(*tank.cellar, {.name = "Lot " + std::to_string(i)}));
    }
    const auto first = lots(tank.cellar->database(), {}, 4);
    ASSERT_EQ(first->size(), 4U);
    EXPECT_EQ(first->front().name, "Lot 4");
    const auto rest = lots(tank.cellar->database(), {first->back().at, first->back().lot}, 4);
    ASSERT_EQ(rest->size(), 2U);
    EXPECT_EQ(rest->back().name, "Tank 2");
    EXPECT_EQ(*lotNamed(*tank.cellar, "Tank 2"), tank.lot);
    EXPECT_NE(*lotNamed(*tank.cellar, "Tank 9"), tank.lot);
}

}  // namespace spile::cellar
