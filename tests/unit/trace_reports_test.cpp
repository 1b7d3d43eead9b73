// Reports: the summary for the duty return, losses, and what a litre cost.
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/lots.hpp"
#include "core/cellar/acts/packing.hpp"
#include "core/cellar/acts/tending.hpp"
#include "core/trace/reports.hpp"
#include "tests/support/small_cellar.hpp"

#include <gtest/gtest.h>

namespace spile::trace {

namespace {

// A barrel of 190 L filled on 1 September 2025, emptied into a lot a year later.
struct Year {
    support::TestDevice device{23};
    std::unique_ptr<cellar::Cellar> cellar = device.newCellar();
    support::SmallCellar small = support::fillSmallCellar(*cellar);
    SubjectId tank = *cellar::registerLot(*cellar, {.name = "Tank"});

    Year()
    {
        must(cellar::recordDraw(
            *cellar, {.barrel = small.barrel, .volume = litres(0.5), .method = "sample hole"}));
        must(cellar::recordTopUp(
            *cellar, {.barrel = small.barrel, .volume = litres(4), .batch = small.batch}));
        go("2026-09-10T08:00Z");
        must(cellar::recordTransfer(
            *cellar,
            {.lot = tank, .from = small.barrel, .volume = litres(180), .alcoholByVolume = 0.12}));
        must(cellar::recordEmpty(
            *cellar, {.barrel = small.barrel, .volume = litres(180), .heel = litres(2)}));
        must(cellar::recordDiscard(*cellar, {tank, litres(6), "trub"}));
        go("2026-10-02T08:00Z");
        package = must(
            cellar::recordPackage(*cellar, {.lot = tank,
                                            .lotCode = "A",
                                            .packages = {{"bottle 500 mL", millilitres(500), 300}},
                                            .lost = litres(3),
                                            .labelStrength = 0.12}));
        go("2026-12-01T08:00Z");
        must(cellar::recordRelease(*cellar,
                                   {.package = package,
                                    .to = "The Anchor",
                                    .packages = {{"bottle 500 mL", millilitres(500), 100}}}));
        // What its next beer went through is not of this stay.
        must(cellar::recordFill(*cellar, {.barrel = small.barrel, .volume = litres(100)}));
        must(cellar::recordDraw(
            *cellar, {.barrel = small.barrel, .volume = litres(2), .method = "sample hole"}));
    }
    template <class T>
    T must(const Result<T>& made)
    {
        EXPECT_TRUE(made) << (made ? "" : support::textOf(made.error()));
        return made.value_or(T());
    }
    void go(const char* iso) { device.clock.setWall(*fromIso(iso)); }
    void cost(const SubjectId& subject, double amount, std::optional<Volume> volume = {},
              std::optional<int> fills = {})
    {
        must(cellar::recordCost(*cellar, {.subject = subject,
                                          .cost = amount,
                                          .what = "price",
                                          .forVolume = volume,
                                          .fillsExpected = fills}));
    }
    EntryId package;
};

}  // namespace

TEST(DutySummary, CountsEachPeriodAndItsAlcohol)
{
    Year year;
    const auto rows = dutySummary(year.cellar->database(), *fromIso("2026-09-15"),
                                  *fromIso("2026-12-31"), Period::Month);
    ASSERT_TRUE(rows) << support::textOf(rows.error());
    ASSERT_EQ(rows->size(), 4U);
    const DutyRow& september = rows->at(0);
    EXPECT_EQ(toIsoDate(september.from), "2026-09-01");
    EXPECT_NEAR(inLitres(september.transferred), 180, 1e-9);
    EXPECT_NEAR(inLitres(september.discarded), 6, 1e-9);
    EXPECT_NEAR(inLitres(september.evaporated), 190 + 4 - 0.5 - 180 - 2, 1e-9);
    EXPECT_NEAR(inLitres(rows->at(1).packaged), 150, 1e-9);
    EXPECT_NEAR(inLitres(rows->at(1).packagedAlcohol), 18, 1e-9);
    EXPECT_NEAR(inLitres(rows->at(1).lostPacking), 3, 1e-9);
    EXPECT_NEAR(inLitres(rows->at(2).packaged), 0, 1e-9);
    EXPECT_NEAR(inLitres(rows->at(3).released), 50, 1e-9);
    EXPECT_NEAR(inLitres(rows->at(3).releasedAlcohol), 6, 1e-9);
    EXPECT_FALSE(rows->at(3).strengthMissing);

    const auto quarters = dutySummary(year.cellar->database(), *fromIso("2025-08-01"),
                                      *fromIso("2026-12-31"), Period::Quarter);
    ASSERT_EQ(quarters->size(), 6U);
    EXPECT_EQ(toIsoDate(quarters->front().from), "2025-07-01");
    EXPECT_NEAR(inLitres(quarters->front().filled), 190, 1e-9);
    EXPECT_NEAR(inLitres(quarters->front().drawn), 0.5, 1e-9);
    EXPECT_NEAR(inLitres(quarters->back().packaged), 150, 1e-9);
    const auto years = dutySummary(year.cellar->database(), *fromIso("2026-02-01"),
                                   *fromIso("2026-02-02"), Period::Year);
    ASSERT_EQ(years->size(), 1U);
    EXPECT_EQ(toIsoDate(years->front().to), "2027-01-01");
}

TEST(DutySummary, RefusesTimesThatAreNone)
{
    Year year;
    const Instant day = *fromIso("2026-01-01");
    EXPECT_FALSE(dutySummary(year.cellar->database(), day, day, Period::Month));
    EXPECT_FALSE(dutySummary(year.cellar->database(), *fromIso("1000-01-01"), day, Period::Month));
}

TEST(Costs, GoWithTheBeerAndWhatEvaporatedMakesItDearer)
{
    Year year;
    year.cost(year.small.batch, 388, litres(194));  // 2 a litre
    year.cost(year.small.barrel, 120, {}, 3);
    year.cost(year.tank, 44);
    const auto cost = costOfLot(year.cellar->database(), year.tank);
    ASSERT_TRUE(cost) << support::textOf(cost.error());
    ASSERT_EQ(cost->stays.size(), 1U);
    EXPECT_NEAR(cost->stays[0].beerCost, 2 * 194, 1e-9);
    EXPECT_NEAR(cost->stays[0].barrelCost, 40, 1e-9);
    EXPECT_NEAR(cost->stays[0].perLitre, 428.0 / 180, 1e-9);
    EXPECT_NEAR(inLitres(*cost->stays[0].evaporated), 11.5, 1e-9);
    EXPECT_EQ(cost->stays[0].barrelName, "Rum 3");
    EXPECT_NEAR(cost->whole, 472, 1e-9);
    EXPECT_NEAR(*cost->perLitre, 472.0 / 150, 1e-9);
    EXPECT_TRUE(cost->complete);
}

TEST(Costs, ArePassedOnFromLotToLotAndSayWhatIsMissing)
{
    Year year;
    year.cost(year.small.batch, 388, litres(194));
    const SubjectId other = *cellar::registerLot(*year.cellar, {.name = "Other"});
    year.must(cellar::recordTransfer(*year.cellar,
                                     {.lot = other, .from = year.tank, .volume = litres(18)}));
    const auto cost = costOfLot(year.cellar->database(), other);
    ASSERT_TRUE(cost) << support::textOf(cost.error());
    EXPECT_NEAR(cost->passedOn, 388.0 / 180 * 18, 1e-9);
    EXPECT_FALSE(cost->complete);  // nobody said what the barrel cost
    // And back again: its price is not asked for while it is being added up.
    year.must(cellar::recordTransfer(*year.cellar,
                                     {.lot = year.tank, .from = other, .volume = litres(9)}));
    EXPECT_FALSE(costOfLot(year.cellar->database(), year.tank)->complete);
    EXPECT_FALSE(costOfLot(year.cellar->database(), year.small.barrel));
}

}  // namespace spile::trace
