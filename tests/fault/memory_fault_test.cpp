// SQLite gets no memory at some point of an act: the act says so or is whole, and what was saved
// stays.
//
// A program of its own, since SQLite's memory is the whole process's.
#include "tests/fault/acts_without_memory.hpp"

#include <sqlite3.h>

// A connection that failed is left open on purpose: closing it could write.
extern "C" const char* __lsan_default_suppressions();
extern "C" const char* __lsan_default_suppressions() { return "leak:libsqlite3"; }

namespace spile::cellar {

namespace {

// SQLite's memory, which runs out after so many requests: for one of them, or from then on.
class Memory {
public:
    static void install()
    {
        sqlite3_config(SQLITE_CONFIG_GETMALLOC, &real_);
        sqlite3_mem_methods scarce = real_;
        scarce.xMalloc = [](int bytes) -> void* {
            return isOut() ? nullptr : real_.xMalloc(bytes);
        };
        scarce.xRealloc = [](void* block, int bytes) -> void* {
            return isOut() ? nullptr : real_.xRealloc(block, bytes);
        };
        sqlite3_config(SQLITE_CONFIG_MALLOC, &scarce);
        sqlite3_config(SQLITE_CONFIG_LOOKASIDE, 0, 0);  // it would hide small requests
    }
    static void runOutAfter(std::int64_t requests, bool lasting)
    {
        left_ = requests;
        lasting_ = lasting;
        ranOut_ = false;
    }
    static void isPlentyAgain() { left_ = -1; }
    static bool ranOut() { return ranOut_; }

private:
    static bool isOut()
    {
        if (left_ < 0) {
            return false;
        }
        if (left_ > 0) {
            --left_;
            return false;
        }
        ranOut_ = true;
        left_ = lasting_ ? 0 : -1;
        return true;
    }

    static inline sqlite3_mem_methods real_{};
    static inline std::int64_t left_ = -1;
    static inline bool lasting_ = false;
    static inline bool ranOut_ = false;
};

// Memory runs out once in the act, and the process goes on, or ends; then it is started anew.
void look(Prepared& prepared, const Act& act, std::int64_t after, bool lasting, bool& ranOut)
{
    auto cellar = prepared.renewed();
    const std::int64_t before = support::entryCount(*cellar);
    Memory::runOutAfter(after, lasting);
    const auto done = act(prepared, *cellar);
    ranOut = Memory::ranOut();
    Memory::isPlentyAgain();
    std::int64_t saved = done.value_or(0);
    const auto next = recordDraw(
        *cellar,
        {.barrel = prepared.small.barrel, .volume = millilitres(1), .method = "sample hole"});
    saved += next ? 1 : 0;
    cellar.reset();

    cellar = prepared.device.reopen();
    ASSERT_EQ(support::problemsOf(*cellar), "");
    const std::int64_t here = support::entryCount(*cellar);
    ASSERT_GE(here, before + saved) << "a record that was saved is lost";
    const auto again = act(prepared, *cellar);
    ASSERT_TRUE(again) << "with enough memory: " << support::textOf(again.error());
    ASSERT_EQ(support::problemsOf(*cellar), "");
}

void runOutEverywhere(const Act& act, std::int64_t step)
{
#ifdef SPILE_SANITIZED
    step *= 4;
#endif
    static Prepared prepared;
    refuseEverywhere(step, [&](std::int64_t after, bool lasting, bool& ranOut) {
        look(prepared, act, after, lasting, ranOut);
    });
}

}  // namespace

TEST(Fault11_MemoryRunsOut, WhileSomethingIsRecorded) { runOutEverywhere(drawAndTaste, 23); }

TEST(Fault11_MemoryRunsOut, InATakeIn) { runOutEverywhere(takeDayFileIn, 41); }

TEST(Fault11_MemoryRunsOut, InAHandOut) { runOutEverywhere(handDayFileOut, 41); }

}  // namespace spile::cellar

int main(int argc, char** argv)
{
    spile::cellar::Memory::install();
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
