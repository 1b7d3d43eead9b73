// An older program takes in what it does not understand, and a newer one on the same store does.
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/tasting.hpp"
#include "core/cellar/checking.hpp"
#include "core/ledger/hand_out.hpp"
#include "core/ledger/take_in.hpp"
#include "tests/support/small_cellar.hpp"
#include "tests/support/test_device.hpp"

#include <gtest/gtest.h>

namespace spile::cellar {

namespace {

// The state of a version that did not know a kind yet.
class OlderState final : public ledger::Projection {
public:
    explicit OlderState(std::string newer) : newer_(std::move(newer)) {}

    [[nodiscard]] std::int64_t version() const override { return state_.version() - 1; }
    [[nodiscard]] Result<void> create(ledger::Database& database, bool temporary) override
    {
        return state_.create(database, temporary);
    }
    [[nodiscard]] Result<void> drop(ledger::Database& database) override
    {
        return state_.drop(database);
    }
    [[nodiscard]] Result<void> apply(ledger::Database& database,
                                     const ledger::CountedEntry& entry) override
    {
        ledger::CountedEntry seen = entry;
        if (seen.core.kind == newer_) {
            seen.core.kindVersion = 1000;
        }
        return state_.apply(database, seen);
    }
    [[nodiscard]] Result<void> withdraw(ledger::Database& database,
                                        const ledger::CountedEntry& entry) override
    {
        return state_.withdraw(database, entry);
    }
    [[nodiscard]] Result<void> settle(ledger::Database& database) override
    {
        return state_.settle(database);
    }
    void forget() override { state_.forget(); }
    [[nodiscard]] Result<Sha256> root(ledger::Database& database) override
    {
        return state_.root(database);
    }

private:
    State state_;
    std::string newer_;
};

}  // namespace

TEST(Fault51_OldProgramThenUpgraded, UnderstandsWhatItHadTakenIn)
{
    support::TestDevice desk(1);
    support::TestDevice phone(2);
    support::TestDevice fresh(3);
    const auto cellar = desk.newCellar();
    const support::SmallCellar small = support::fillSmallCellar(*cellar);
    desk.clock.pass(std::chrono::days(200));
    ASSERT_TRUE(recordDraw(
        *cellar, {.barrel = small.barrel, .volume = millilitres(120), .method = "valve"}));
    ASSERT_TRUE(recordTaste(*cellar, {.barrel = small.barrel,
                                      .scores = {{"oak", 6}},
                                      .circumstance = {.person = small.person}}));
    const Path file = desk.folder.path() / "all.spile";
    ASSERT_TRUE(handOut(*cellar, file, {}));
    {
        OlderState older("draw");
        const auto id = cellar->identity().id;
        const auto old =
            ledger::Ledger::createReplica(phone.cellarFolder(), phone.outside(), older, id);
        ASSERT_TRUE(old) << support::textOf(old.error());
        ASSERT_TRUE(ledger::takeIn(**old, file, ledger::SignatureCheck::EveryEntry, Job()));
        EXPECT_EQ(*(*old)->database().integer(0, "SELECT count(*) FROM state_draw"), 0);
        EXPECT_EQ(*(*old)->database().integer(0, "SELECT count(*) FROM state_unknown"), 1);
        // What it hands on is whole: another device takes all of it from there.
        const Path onward = phone.folder.path() / "onward.spile";
        ASSERT_TRUE(ledger::handOut(**old, onward, {}, "older", Job()));
        const auto third = fresh.join(onward);
        ASSERT_TRUE(third);
        EXPECT_EQ(stateRoot(*third), stateRoot(*cellar));
    }
    const auto upgraded = phone.reopen();
    ASSERT_TRUE(upgraded);
    EXPECT_EQ(*upgraded->database().integer(0, "SELECT count(*) FROM state_draw"), 1);
    EXPECT_EQ(stateRoot(*upgraded), stateRoot(*cellar));
    EXPECT_EQ(support::problemsOf(*upgraded), "");
}

}  // namespace spile::cellar
