// Beer is traced up to where it came from and down to where it went.
#include "core/trace/trace.hpp"

#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/lots.hpp"
#include "core/cellar/acts/packing.hpp"
#include "core/cellar/acts/tending.hpp"
#include "core/trace/account.hpp"
#include "tests/support/small_cellar.hpp"

#include <algorithm>
#include <gmock/gmock.h>
#include <numeric>

namespace spile::trace {

using cellar::Circumstance;
using testing::Contains;
using testing::ElementsAre;
using testing::UnorderedElementsAre;

namespace {

// Two barrels of two beers, each with a past.
struct House {
    support::TestDevice device{17};
    std::unique_ptr<cellar::Cellar> cellar = device.newCellar();
    support::SmallCellar small = support::fillSmallCellar(*cellar);
    SubjectId bo = *cellar::registerPerson(*cellar, "Bo");
    SubjectId second = *cellar::registerBatch(*cellar, {"Low Tide"});
    SubjectId rye =
        cellar::registerBarrel(
            *cellar, {.mark = "Rye 1", .spirit = "rye", .size = litres(200), .fillsBefore = 1})
            ->barrel;

    House()
    {
        fill(rye, second, 200);
        pass();
        must(cellar::recordEmpty(*cellar, {.barrel = rye, .circumstance = {{}, bo, {}}}));
        pass();
        must(cellar::recordDose(
            *cellar, {.barrel = rye, .substance = "spirit of the same kind", .volume = litres(2)}));
        pass();
        fill(rye, small.batch, 200);
        pass();
    }

    template <class T>
    T must(const Result<T>& made)
    {
        EXPECT_TRUE(made) << (made ? "" : support::textOf(made.error()));
        return made.value_or(T());
    }
    void pass() { device.clock.pass(std::chrono::hours(24)); }
    EntryId fill(const SubjectId& barrel, const SubjectId& batch, double l)
    {
        return must(cellar::recordFill(
            *cellar,
            {.barrel = barrel, .batch = batch, .volume = litres(l), .circumstance = {{}, bo, {}}}));
    }
    SubjectId lot(const std::string& name)
    {
        return must(cellar::registerLot(*cellar, {.name = name}));
    }
    EntryId move(const SubjectId& from, const SubjectId& to, double l,
                 std::optional<double> strength = 0.1)
    {
        pass();
        return must(cellar::recordTransfer(*cellar, {.lot = to,
                                                     .from = from,
                                                     .volume = litres(l),
                                                     .alcoholByVolume = strength,
                                                     .specificGravity = 1.02,
                                                     .circumstance = {{}, small.person, {}}}));
    }
    EntryId bottle(const SubjectId& from, const std::string& code, std::int64_t count)
    {
        pass();
        return must(cellar::recordPackage(*cellar,
                                          {.lot = from,
                                           .lotCode = code,
                                           .packages = {{"bottle 500 mL", millilitres(500), count}},
                                           .circumstance = {{}, small.person, {}}}));
    }
    Upward up(const EntryId& package) { return must(upFromPackage(cellar->database(), package)); }
    Downward downFrom(const Start& start) { return must(down(cellar->database(), start)); }
};

const Stay* stayIn(const Upward& up, const std::string& barrel)
{
    const auto found = std::find_if(up.stays.begin(), up.stays.end(),
                                    [&](const Stay& stay) { return stay.barrelName == barrel; });
    return found == up.stays.end() ? nullptr : &*found;
}

double sumOfShares(const Upward& up)
{
    double sum = 0;
    for (const Beginning& beginning : up.beginnings) {
        sum += beginning.share;
    }
    for (const Addition& addition : up.additions) {
        sum += addition.share;
    }
    return sum;
}

std::vector<std::string> didOf(const Upward& up, const std::string& name)
{
    std::vector<std::string> did;
    for (const Hand& hand : up.hands) {
        if (hand.name == name) {
            did.insert(did.end(), hand.did.begin(), hand.did.end());
        }
    }
    return did;
}

}  // namespace

TEST(TraceUp, NamesBarrelsTheirPastBatchesAdditionsAndHands)
{
    House house;
    const SubjectId tank = house.lot("Tank 2");
    house.move(house.small.barrel, tank, 150);
    house.move(house.rye, tank, 50);
    house.must(cellar::recordFinish(*house.cellar, {.lot = tank,
                                                    .substance = "coconut",
                                                    .mass = kilograms(2),
                                                    .allergen = "coconut",
                                                    .circumstance = {{}, house.bo, {}}}));
    const Upward up = house.up(house.bottle(tank, "330A", 100));
    EXPECT_EQ(up.lotCode, "330A");
    EXPECT_NEAR(inLitres(up.volume), 50, 1e-9);
    ASSERT_EQ(up.stays.size(), 2U);
    const Stay* rum = stayIn(up, "Rum 3");
    const Stay* rye = stayIn(up, "Rye 1");
    ASSERT_TRUE(rum != nullptr && rye != nullptr);
    EXPECT_NEAR(rum->share, 0.75, 1e-12);
    EXPECT_NEAR(rye->share, 0.25, 1e-12);
    EXPECT_EQ(rum->spirit, "rum");
    EXPECT_EQ(rum->fillNumber, 1);
    EXPECT_EQ(rye->fillNumber, 3);
    EXPECT_THAT(rye->heldBefore, ElementsAre("Low Tide"));
    ASSERT_EQ(up.beginnings.size(), 1U);
    EXPECT_EQ(up.beginnings[0].name, "Night Ferry");
    EXPECT_NEAR(sumOfShares(up), 1, 1e-12);
    ASSERT_EQ(up.additions.size(), 2U);
    EXPECT_EQ(up.additions[0].substance, "spirit of the same kind");
    EXPECT_EQ(up.additions[0].into, "Rye 1");
    EXPECT_EQ(up.additions[1].allergen, "coconut");
    EXPECT_THAT(didOf(up, "Bo"), UnorderedElementsAre("fill", "finish"));
    EXPECT_THAT(didOf(up, "Ada"), Contains("transfer"));
    EXPECT_THAT(didOf(up, "Ada"), Contains("package"));
    EXPECT_TRUE(up.oddities.empty());
}

TEST(TraceUp, GoesThroughLotsBarrelsAndTopUps)
{
    House house;
    const SubjectId first = house.lot("Tank 1");
    house.move(house.rye, first, 100);
    house.must(cellar::recordEmpty(*house.cellar, {.barrel = house.rye}));
    house.pass();
    house.must(cellar::recordFill(*house.cellar,
                                  {.barrel = house.rye, .volume = litres(60), .lot = first}));
    house.pass();
    house.must(cellar::recordTopUp(
        *house.cellar, {.barrel = house.rye, .volume = litres(20), .batch = house.second}));
    const SubjectId second = house.lot("Tank 2");
    house.move(house.rye, second, 70, {});  // nobody measured its strength
    const Upward up = house.up(house.bottle(second, "340A", 20));
    EXPECT_THAT(up.lots.size(), 2U);
    EXPECT_EQ(up.lots[0].name, "Tank 2");
    ASSERT_EQ(up.stays.size(), 2U);  // the same barrel, twice
    EXPECT_NEAR(up.stays[0].share, 0.75, 1e-12);
    EXPECT_NEAR(up.stays[1].share, 0.75, 1e-12);
    ASSERT_EQ(up.beginnings.size(), 2U);
    EXPECT_EQ(up.beginnings[0].name, "Night Ferry");
    EXPECT_NEAR(up.beginnings[1].share, 0.25, 1e-12);
    ASSERT_EQ(up.oddities.size(), 1U);
    EXPECT_EQ(up.oddities[0].what, Oddity::What::StrengthUnknown);
    EXPECT_EQ(up.oddities[0].subject, "Tank 2");
}

TEST(TraceUp, BearsBeerThatIsPumpedBackAndForth)
{
    House house;
    const SubjectId one = house.lot("One");
    const SubjectId other = house.lot("Other");
    house.move(house.rye, one, 100);
    house.move(house.small.barrel, other, 100);
    house.move(one, other, 50);
    house.move(other, one, 75);  // half of it: of it a third came from `one`
    const Upward up = house.up(house.bottle(one, "350A", 20));
    EXPECT_NEAR(stayIn(up, "Rye 1")->share, 0.6, 1e-9);  // 50 + 25 of 125
    EXPECT_NEAR(sumOfShares(up), 1, 1e-12);
    const auto balance = balanceOf(house.cellar->database(), one);
    EXPECT_NEAR((balance->passedOn.mass() + balance->packaged.mass() + balance->left.mass()) /
                    balance->in.mass(),
                1, 1e-12);
}

TEST(TraceUp, DoesNotMindDatesThatAreWrong)
{
    House house;
    const SubjectId one = house.lot("One");
    const SubjectId other = house.lot("Other");
    house.move(house.rye, one, 100);
    // It is said to have been passed on before it came in.
    house.must(cellar::recordTransfer(
        *house.cellar,
        {.lot = other,
         .from = one,
         .volume = litres(50),
         .circumstance = {
             ledger::EventTime{house.device.clock.now() - std::chrono::days(9), 0}, {}, {}}}));
    const Upward up = house.up(house.bottle(other, "360A", 20));
    ASSERT_NE(stayIn(up, "Rye 1"), nullptr);
    EXPECT_NEAR(stayIn(up, "Rye 1")->share, 1, 1e-12);
    EXPECT_TRUE(up.oddities.empty());
}

TEST(TraceUp, TakesEarlierPackagesOutBeforeMoreComesIn)
{
    House house;
    const SubjectId tank = house.lot("Tank");
    house.move(house.rye, tank, 100);
    const EntryId first = house.bottle(tank, "1", 100);  // 50 L
    house.move(house.small.barrel, tank, 50);
    const EntryId later = house.bottle(tank, "2", 100);
    EXPECT_EQ(house.up(first).stays.size(), 1U);
    const Upward up = house.up(later);
    EXPECT_NEAR(stayIn(up, "Rye 1")->share, 0.5, 1e-9);
    const Upward left = house.must(upFromLot(house.cellar->database(), tank));
    EXPECT_NEAR(inLitres(left.volume), 50, 1e-9);
    EXPECT_NEAR(stayIn(left, "Rum 3")->share, 0.5, 1e-9);
}

TEST(TraceUp, SaysWhatDoesNotAddUp)
{
    House house;
    const SubjectId tank = house.lot("Tank");
    const EntryId transfer = house.move(house.rye, tank, 40);
    house.move(house.small.barrel, tank, 10);
    const EntryId packed = house.bottle(tank, "1", 120);  // 60 L of 50
    const Upward up = house.up(packed);
    ASSERT_EQ(up.oddities.size(), 1U);
    EXPECT_EQ(up.oddities[0].what, Oddity::What::MoreOutThanIn);
    EXPECT_NEAR(inLitres(up.oddities[0].volume), 10, 1e-6);
    house.must(cellar::voidEntry(*house.cellar, transfer));
    const Upward after = house.up(packed);
    EXPECT_EQ(after.stays.size(), 1U);
    EXPECT_EQ(after.oddities.back().what, Oddity::What::TakenBack);
    EXPECT_FALSE(upFromPackage(house.cellar->database(), transfer));
}

TEST(TraceDown, FindsAllThatHoldsSomeOfIt)
{
    House house;
    const SubjectId tank = house.lot("Tank 2");
    house.move(house.rye, tank, 100);
    house.must(cellar::recordEmpty(*house.cellar, {.barrel = house.rye}));
    house.must(cellar::recordFinish(*house.cellar,
                                    {.lot = tank, .substance = "cacao", .mass = grams(900)}));
    const EntryId packed = house.bottle(tank, "330A", 100);
    house.must(cellar::recordFill(*house.cellar,
                                  {.barrel = house.rye, .volume = litres(30), .lot = tank}));
    house.must(cellar::recordRelease(*house.cellar,
                                     {.package = packed,
                                      .to = "The Anchor",
                                      .packages = {{"bottle 500 mL", millilitres(500), 12}}}));
    const SubjectId other = house.lot("Other");
    house.move(house.small.barrel, other, 100);
    house.bottle(other, "999", 10);

    using What = Start::What;
    const std::vector<Start> starts = {
        {What::Barrel, house.rye}, {What::Lot, tank}, {What::Substance, {}, {}, "cacao"}};
    for (const Start& start : starts) {
        const Downward found = house.downFrom(start);
        ASSERT_EQ(found.packages.size(), 1U);
        EXPECT_EQ(found.packages[0].package.lotCode, "330A");
        EXPECT_EQ(found.packages[0].lotName, "Tank 2");
        EXPECT_EQ(found.packages[0].package.left[0].count, 88);
        ASSERT_EQ(found.packages[0].releases.size(), 1U);
        EXPECT_EQ(found.packages[0].releases[0].to, "The Anchor");
        ASSERT_FALSE(found.barrels.empty());
        EXPECT_TRUE(std::any_of(found.barrels.begin(), found.barrels.end(),
                                [](const InBarrel& barrel) { return barrel.still; }));
        EXPECT_EQ(found.lots.size(), 1U);
    }
    const Downward ofBatch = house.downFrom({What::Batch, house.small.batch});
    EXPECT_EQ(ofBatch.packages.size(), 2U);  // both barrels held it
    EXPECT_TRUE(house.downFrom({What::Substance, {}, {}, "nothing"}).packages.empty());
}

TEST(Balance, KeepsMassAlcoholAndExtract)
{
    House house;
    const SubjectId tank = house.lot("Tank");
    house.move(house.rye, tank, 100, 0.12);
    house.move(house.small.barrel, tank, 50, 0.09);
    house.must(cellar::recordFinish(
        *house.cellar,
        {.lot = tank, .substance = "rum", .volume = litres(2), .alcoholByVolume = 0.4}));
    house.must(cellar::recordPackage(*house.cellar, {.lot = tank,
                                                     .lotCode = "A",
                                                     .packages = {{"keg 30 L", litres(30), 3}},
                                                     .lost = litres(1.5)}));
    house.must(cellar::recordDiscard(*house.cellar, {tank, litres(3), "trub"}));
    const auto balance = balanceOf(house.cellar->database(), tank);
    ASSERT_TRUE(balance);
    const liquor::Liquor out =
        balance->packaged + balance->lost + balance->passedOn + balance->discarded + balance->left;
    EXPECT_NEAR(out.water / balance->in.water, 1, 1e-12);
    EXPECT_NEAR(out.ethanol / balance->in.ethanol, 1, 1e-12);
    EXPECT_NEAR(out.extract / balance->in.extract, 1, 1e-12);
    // By hand: (100 x .12 + 50 x .09 + 2 x .4) / 152 = 11.38 %, before contraction.
    ASSERT_TRUE(balance->now);
    EXPECT_NEAR(balance->now->alcoholByVolume, 0.1138, 0.0002);
    EXPECT_NEAR(inLitres(balance->now->volume), 152 - 94.5, 0.1);
    EXPECT_EQ(balance->missing, Volume{});
}

}  // namespace spile::trace
