// The C++ allocator gives no memory at some point of an act: the act throws or answers with an
// error, what was saved stays, and the same process goes on.
//
// A program of its own, since operator new is the whole process's; not under sanitizers, which
// replace it themselves.
#include "tests/fault/acts_without_memory.hpp"
#include "tests/support/scarce_memory.hpp"

#include <new>

namespace spile::cellar {

namespace {

struct Tried {
    std::int64_t saved = 0;  // records
    bool done = false;
    bool ranOut = false;
};

// `after` allocations are given; as for a program that catches what is thrown at its top.
Tried tryWith(const Act& act, Prepared& prepared, Cellar& cellar, std::int64_t after, bool lasting)
{
    Tried tried;
    support::refuseMemoryAfter(after, lasting);
    try {
        const auto done = act(prepared, cellar);
        tried.ranOut = support::giveMemory() > 0;
        tried.saved = done.value_or(0);
        tried.done = done.has_value();
    } catch (const std::bad_alloc&) {
        tried.ranOut = support::giveMemory() > 0;
    }
    return tried;
}

// Refused at one point of the act; then the process goes on with enough, and starts anew.
void look(Prepared& prepared, const Act& act, std::int64_t after, bool lasting, bool& ranOut)
{
    auto cellar = prepared.renewed();
    const std::int64_t before = support::entryCount(*cellar);
    const Tried tried = tryWith(act, prepared, *cellar, after, lasting);
    ranOut = tried.ranOut;
    ASSERT_TRUE(tried.done || tried.ranOut);
    // SQLite was given all it asked for, so nothing is left half done in this process.
    const auto next = recordDraw(
        *cellar,
        {.barrel = prepared.small.barrel, .volume = millilitres(1), .method = "sample hole"});
    ASSERT_TRUE(next) << support::textOf(next.error());
    const Sha256 root = *stateRoot(*cellar);
    cellar.reset();

    cellar = prepared.device.reopen();
    ASSERT_EQ(support::problemsOf(*cellar), "");
    ASSERT_EQ(*stateRoot(*cellar), root);
    ASSERT_GE(support::entryCount(*cellar), before + tried.saved + 1) << "a saved record is lost";
    const auto again = act(prepared, *cellar);
    ASSERT_TRUE(again) << "with enough memory: " << support::textOf(again.error());
}

void runOutEverywhere(const Act& act, std::int64_t step)
{
    static Prepared prepared;
    refuseEverywhere(step, [&](std::int64_t after, bool lasting, bool& ranOut) {
        look(prepared, act, after, lasting, ranOut);
    });
}

}  // namespace

TEST(Fault11_NoMoreMemory, WhileSomethingIsRecorded) { runOutEverywhere(drawAndTaste, 1); }

TEST(Fault11_NoMoreMemory, WhereTheOwnersKeySigns) { runOutEverywhere(cutOffAndReinstate, 1); }

TEST(Fault11_NoMoreMemory, InATakeIn) { runOutEverywhere(takeDayFileIn, 37); }

TEST(Fault11_NoMoreMemory, InAHandOut) { runOutEverywhere(handDayFileOut, 37); }

}  // namespace spile::cellar
