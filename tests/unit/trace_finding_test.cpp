// What is typed is found: lot codes, lots, barrels, beers, what was put in.
#include "core/cellar/acts/lots.hpp"
#include "core/cellar/acts/packing.hpp"
#include "core/trace/finding.hpp"
#include "tests/support/small_cellar.hpp"

#include <gtest/gtest.h>

namespace spile::trace {

using What = Start::What;

namespace {

struct House {
    support::TestDevice device{23};
    std::unique_ptr<cellar::Cellar> cellar = device.newCellar();
    support::SmallCellar small = support::fillSmallCellar(*cellar);
    SubjectId lot = *cellar::registerLot(*cellar, {.name = "Früh Tank"});

    House()
    {
        EXPECT_TRUE(cellar::recordTransfer(
            *cellar, {.lot = lot, .from = small.barrel, .volume = litres(100)}));
        EXPECT_TRUE(cellar::recordFinish(*cellar,
                                         {.lot = lot, .substance = "cacao", .mass = kilograms(1)}));
        EXPECT_TRUE(cellar::recordPackage(
            *cellar, {.lot = lot, .lotCode = "L-7A", .packages = {{"keg 20 L", litres(20), 2}}}));
    }
    std::vector<Named> find(const std::string& text)
    {
        const auto found = findNamed(cellar->database(), text);
        EXPECT_TRUE(found) << support::textOf(found.error());
        return found.value_or(std::vector<Named>());
    }
    // That one thing is found, of that kind.
    void expectOne(const std::string& text, What what, const std::string& name)
    {
        SCOPED_TRACE(text);
        const auto found = find(text);
        ASSERT_EQ(found.size(), 1U);
        EXPECT_EQ(found[0].start.what, what);
        EXPECT_EQ(found[0].name, name);
        EXPECT_EQ(found[0].package.has_value(), name == "L-7A");
    }
};

}  // namespace

TEST(TraceFinding, KnowsAllThatHasANameHoweverItIsTyped)
{
    House house;
    house.expectOne("L-7A", What::Lot, "L-7A");
    house.expectOne(" l-7a ", What::Lot, "L-7A");
    house.expectOne("fruh TANK", What::Lot, "Früh Tank");
    house.expectOne(house.lot.hex(), What::Lot, "Früh Tank");
    house.expectOne("rum 3", What::Barrel, "Rum 3");
    house.expectOne(house.small.code, What::Barrel, "Rum 3");
    house.expectOne(house.small.code.substr(0, 3) + "-" + house.small.code.substr(3), What::Barrel,
                    "Rum 3");
    house.expectOne("night ferry", What::Batch, "Night Ferry");
    house.expectOne("cacao", What::Substance, "cacao");
}

TEST(TraceFinding, FindsNothingInAPartOfAName)
{
    House house;
    for (const char* text : {"", "  ", "L-7", "Früh", "Rum", "Night", "coconut"}) {
        EXPECT_TRUE(house.find(text).empty()) << text;
    }
}

TEST(TraceFinding, TellsAllLotsOfOneNameTheNewestFirst)
{
    House house;
    house.device.clock.pass(std::chrono::hours(1));
    const SubjectId second = *cellar::registerLot(*house.cellar, {.name = "früh tank"});
    const auto lots = findLots(house.cellar->database(), "Früh Tank");
    ASSERT_TRUE(lots);
    ASSERT_EQ(lots->size(), 2U);
    EXPECT_EQ((*lots)[0].lot, second);
    EXPECT_EQ((*lots)[1].lot, house.lot);
}

}  // namespace spile::trace
