// What a device says it holds decides only what is left out of the next day file for it, and never
// for good.
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/checking.hpp"
#include "core/cellar/queries.hpp"
#include "tests/support/day_file.hpp"
#include "tests/support/fleet.hpp"

#include <gtest/gtest.h>

namespace spile::cellar {

namespace {

using support::Fleet;

class Acknowledgements : public testing::Test {
protected:
    Fleet fleet{3};

    void SetUp() override { fleet.exchangeAll(); }
    EntryId draw(std::size_t device)
    {
        fleet.at(device).clock.pass(std::chrono::minutes(1));
        return *recordDraw(
            fleet.cellar(device),
            {.barrel = fleet.small().barrel, .volume = millilitres(80), .method = "valve"});
    }
    std::size_t draws(std::size_t device)
    {
        return historyOf(fleet.cellar(device).database(), fleet.small().barrel)->draws.size();
    }
    // A day file of `device` that says it holds these heads, signed with its own key.
    Path claiming(std::size_t device, const std::vector<ledger::Head>& heads)
    {
        const Path file = fleet.handOut(device, std::nullopt);
        support::DayFile forged(file);
        ledger::BundleHeader header = forged.header();
        header.have = heads;
        forged.setHeader(header);
        forged.seal(fleet.cellar(device).ledger().key());
        forged.write(file);
        return file;
    }
    std::vector<ledger::Head> headsOf(std::size_t device)
    {
        return support::DayFile(fleet.handOut(device, std::nullopt)).header().have;
    }
};
using Fault62_ForgedAcknowledgement = Acknowledgements;

}  // namespace

TEST_F(Fault62_ForgedAcknowledgement, OfWhatADeviceNeverHadKeepsNothingFromOthers)
{
    draw(1);
    fleet.takeIn(0, claiming(2, headsOf(1)));  // phone 2 never had the draw
    fleet.takeIn(0, fleet.handOut(1, std::nullopt));
    EXPECT_EQ(draws(0), 1U);
    // The file for the liar leaves it out; the one for all does not, and neither does the next one
    // for it once it says what it holds.
    fleet.takeIn(2, fleet.handOut(0, 2));
    EXPECT_EQ(draws(2), 0U);
    fleet.takeIn(0, fleet.handOut(2, std::nullopt));
    fleet.takeIn(2, fleet.handOut(0, 2));
    EXPECT_EQ(draws(2), 1U);
    EXPECT_EQ(stateRoot(fleet.cellar(0)), stateRoot(fleet.cellar(2)));
}

TEST_F(Fault62_ForgedAcknowledgement, OfAnUnknownHeadIsNoHarm)
{
    draw(1);
    auto heads = headsOf(2);
    for (ledger::Head& head : heads) {
        head.seq += 1000;
        head.id = EntryId({0xbe});
    }
    fleet.takeIn(1, claiming(2, heads));
    fleet.takeIn(2, fleet.handOut(1, 2));
    EXPECT_EQ(draws(2), 1U) << "what is not known to be held is sent";
    fleet.takeIn(2, fleet.handOut(1, 2));  // and again
    EXPECT_EQ(draws(2), 1U);
    EXPECT_EQ(support::problemsOf(fleet.cellar(2)), "");
}

TEST_F(Fault62_ForgedAcknowledgement, OfADeskThatWasSetBackIsTakenBackByItsNextFile)
{
    fleet.backUp(0);
    draw(1);
    fleet.takeIn(0, fleet.handOut(1, 0));
    fleet.takeIn(1, fleet.handOut(0, 1));  // the desk says that it has the draw
    ASSERT_TRUE(fleet.restore(0));
    EXPECT_EQ(draws(0), 0U);
    fleet.takeIn(1, fleet.handOut(0, std::nullopt));  // and now that it has not
    fleet.takeIn(0, fleet.handOut(1, 0));
    EXPECT_EQ(draws(0), 1U);
    fleet.exchangeUntilQuiet();
    EXPECT_EQ(stateRoot(fleet.cellar(0)), stateRoot(fleet.cellar(1)));
}

}  // namespace spile::cellar
