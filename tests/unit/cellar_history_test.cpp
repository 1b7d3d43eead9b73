// What happened to a barrel besides fills, gauges, draws and tastings; and its latest reading.
#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/tasting.hpp"
#include "core/cellar/queries.hpp"
#include "tests/support/small_cellar.hpp"

#include <gtest/gtest.h>

namespace spile::cellar {

namespace {

class History : public testing::Test {
protected:
    support::TestDevice device{85};
    std::unique_ptr<Cellar> cellar = device.newCellar();
    support::SmallCellar small = support::fillSmallCellar(*cellar);
};

}  // namespace

TEST_F(History, HasChecksMovesVerdictsAndEmptyings)
{
    const SubjectId vault = *registerPlace(*cellar, "Vault");
    const Circumstance by{{}, small.person, "by hand"};
    ASSERT_TRUE(recordCheck(*cellar, {small.barrel, "weeping stave", false, by}));
    ASSERT_TRUE(recordMove(*cellar, small.barrel, vault, by));
    ASSERT_TRUE(recordVerdict(*cellar, {small.barrel, "ready", {}, by}));
    ASSERT_TRUE(recordEmpty(*cellar, {small.barrel, litres(180), "refill at once", by}));
    const auto others = historyOf(cellar->database(), small.barrel)->others;
    ASSERT_EQ(others.size(), 4U);
    std::map<std::string, std::string> said;
    for (const OtherRow& other : others) {
        said[other.kind] = other.text;
        EXPECT_EQ(other.person, "Ada");
        EXPECT_EQ(other.note, "by hand");
    }
    EXPECT_EQ(said, (std::map<std::string, std::string>{{"check", "weeping stave"},
                                                        {"move", "Vault"},
                                                        {"verdict", "ready"},
                                                        {"empty", "refill at once"}}));
}

TEST_F(History, HasTheLatestReading)
{
    EXPECT_FALSE(*lastReading(cellar->database(), small.barrel));
    const auto measure = [&](double ph) {
        device.clock.pass(std::chrono::days(1));
        return recordReading(*cellar, {.barrel = small.barrel, .ph = ph});
    };
    ASSERT_TRUE(measure(4.2));
    const auto latest = measure(4.1);
    EXPECT_EQ((*lastReading(cellar->database(), small.barrel))->ph, 4.1);
    ASSERT_TRUE(voidEntry(*cellar, *latest));
    EXPECT_EQ((*lastReading(cellar->database(), small.barrel))->ph, 4.2);
}

TEST_F(History, NamesAPerson)
{
    EXPECT_EQ(*nameOfPerson(cellar->database(), small.person), "Ada");
    EXPECT_EQ(*nameOfPerson(cellar->database(), small.barrel), "");
}

TEST_F(History, DirectionsAreAmendedByTheirFields)
{
    NewTaste taste{small.barrel, {{"oak", 5}}};
    taste.circumstance.person = small.person;
    const EntryId tasting = *recordTaste(*cellar, taste);
    const auto said = recordDirections(*cellar, small.barrel, tasting, {{"oak", Direction::More}});
    ASSERT_TRUE(said);
    ASSERT_TRUE(amend(*cellar, *said, directionFields({{"oak", Direction::TooMuch}})));
    EXPECT_EQ(*cellar->database().integer(
                  9, "SELECT direction FROM state_direction_directions WHERE entry = ?", *said),
              -1);
}

}  // namespace spile::cellar
