// How a take-in shares the one writer with other work: it commits in slices and lets others in
// between them.
#include "core/cellar/acts/exchanging.hpp"
#include "tests/support/small_cellar.hpp"
#include "tests/support/test_device.hpp"

#include <algorithm>
#include <gtest/gtest.h>

namespace spile::cellar {

namespace {

constexpr int records = 6000;

// Goes on by a millisecond at each look.
class TickingClock final : public Clock {
public:
    [[nodiscard]] Instant now() const override { return *fromIso("2025-09-01T08:00Z"); }
    [[nodiscard]] Milliseconds sinceBoot() const override { return ++sinceBoot_; }
    [[nodiscard]] BootId bootId() const override { return {}; }

private:
    mutable Milliseconds sinceBoot_{0};
};

class Slices : public testing::Test {
protected:
    support::TestDevice desk{81}, phone{82};
    Path beginning = desk.folder.path() / "beginning.spile";
    Path all = desk.folder.path() / "all.spile";

    void SetUp() override
    {
        const auto cellar = desk.newCellar();
        const support::SmallCellar small = support::fillSmallCellar(*cellar);
        ASSERT_TRUE(handOut(*cellar, beginning, {}));
        auto change = cellar->ledger().change();
        for (int i = 0; i < records; ++i) {
            ledger::NewEntry entry;
            entry.kind = "check";
            entry.subject = small.barrel;
            entry.fields = {{static_cast<std::uint32_t>(Field::Finding), std::string("dry")},
                            {static_cast<std::uint32_t>(Field::Sound), true}};
            ASSERT_TRUE(change->record(std::move(entry)));
        }
        ASSERT_TRUE(change->commit());
        ASSERT_TRUE(handOut(*cellar, all, {}));
    }

    // Takes all in on a device with `clock` and returns how many entries came with each commit.
    std::vector<std::int64_t> slices(const Clock& clock, const Job::Waits& waits)
    {
        const Outside outside{clock, phone.files, phone.random, phone.ids, phone.keys};
        auto cellar = Cellar::join(phone.cellarFolder(), outside, beginning, {});
        const auto stored = [&] {
            return *(**cellar).database().integer(0, "SELECT count(*) FROM entry");
        };
        std::int64_t seen = stored();
        std::vector<std::int64_t> sizes;
        const Job job(
            [&](std::uint64_t, std::uint64_t) {
                const std::int64_t now = stored();
                if (now > seen) {
                    sizes.push_back(now - seen);
                    seen = now;
                }
            },
            nullptr, waits);
        EXPECT_TRUE(takeIn(**cellar, all, job));
        return sizes;
    }
};

}  // namespace

TEST_F(Slices, GrowWhileCommitsAreQuickAndNobodyWaits)
{
    const auto sizes = slices(TickingClock(), [] { return false; });
    ASSERT_GE(sizes.size(), 4U);
    EXPECT_LT(sizes[0], 300);
    EXPECT_GT(sizes[1], sizes[0]);
    EXPECT_GT(sizes[3], 1500);
}

TEST_F(Slices, EndAfter20MillisecondsWhenOtherWorkWaits)
{
    const auto sizes = slices(TickingClock(), [] { return true; });
    constexpr std::int64_t looksAtClockEvery = 16;
    EXPECT_LE(*std::max_element(sizes.begin(), sizes.end()), (20 + 1) * looksAtClockEvery);
}

TEST_F(Slices, EndAfter20MillisecondsWhereNobodyCanTellWhoWaits)
{
    const auto sizes = slices(TickingClock(), {});
    EXPECT_GE(sizes.size(), 15U);
}

}  // namespace spile::cellar
