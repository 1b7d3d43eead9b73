// SQLite gets no memory at some point of an act: the act says so or is whole, and what was saved
// stays.
//
// A program of its own, since SQLite's memory is the whole process's.
#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/photographing.hpp"
#include "core/cellar/acts/sheet.hpp"
#include "core/cellar/checking.hpp"
#include "tests/support/small_cellar.hpp"

#include <cstdlib>
#include <functional>
#include <gtest/gtest.h>
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

// A desk, and a day file of its phone that it has not seen.
struct Prepared {
    support::TestDevice device{301};
    support::TempFolder copy;
    support::SmallCellar small;
    Path dayFile = copy.path() / "day.spile";

    Prepared()
    {
        auto desk = device.newCellar();
        small = support::fillSmallCellar(*desk);
        support::TestDevice phoneDevice(302);
        const Path start = device.folder.path() / "start.spile";
        EXPECT_TRUE(handOut(*desk, start, {}));
        auto phone = phoneDevice.join(start);
        support::admitDevice(*desk, *phone);
        support::carry(*desk, *phone, start);
        for (int i = 0; i < 5; ++i) {
            EXPECT_TRUE(recordDraw(
                *phone,
                {.barrel = small.barrel, .volume = millilitres(20), .method = "sample hole"}));
        }
        const Bytes picture = support::smallPicture();
        EXPECT_TRUE(
            recordPhoto(*phone, {.barrel = small.barrel, .picture = picture, .purpose = "colour"}));
        EXPECT_TRUE(handOut(*phone, dayFile, desk->ledger().device()));
        EXPECT_TRUE(std::filesystem::remove(start));
        desk.reset();
        std::filesystem::copy(device.cellarFolder(), copy.path() / "cellar",
                              std::filesystem::copy_options::recursive);
    }
    std::unique_ptr<Cellar> renewed()
    {
        std::filesystem::remove_all(device.cellarFolder());
        std::filesystem::copy(copy.path() / "cellar", device.cellarFolder(),
                              std::filesystem::copy_options::recursive);
        return device.reopen();
    }
};

// What an act did: the records it added, none if it failed.
using Act = std::function<Result<std::int64_t>(Prepared&, Cellar&)>;

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

// With SPILE_CRASHES each request is refused, else some, spread over all.
void runOutEverywhere(const Act& act, std::int64_t step)
{
#ifdef SPILE_SANITIZED
    step *= 4;
#endif
    step = std::getenv("SPILE_CRASHES") == nullptr ? step : 1;
    static Prepared prepared;
    int looked = 0;
    for (const bool lasting : {false, true}) {
        bool ranOut = true;
        for (std::int64_t after = 0; ranOut; after += step) {
            SCOPED_TRACE("request " + std::to_string(after) + (lasting ? " and all after" : ""));
            look(prepared, act, after, lasting, ranOut);
            if (testing::Test::HasFatalFailure()) {
                return;
            }
            looked += ranOut ? 1 : 0;
        }
    }
    testing::Test::RecordProperty("requests", looked);
    EXPECT_GE(looked, 10);
}

Result<std::int64_t> drawAndTaste(Prepared& prepared, Cellar& cellar)
{
    const auto& small = prepared.small;
    SPILE_TRY(recordDraw(
        cellar, {.barrel = small.barrel, .volume = millilitres(5), .method = "sample hole"}));
    SPILE_ASSIGN(sheet, openSheet(cellar, small.barrel, small.person));
    SPILE_TRY(tapScore(cellar, sheet, "oak", 4));
    SPILE_TRY(tapReading(cellar, sheet, Measure::Ph, 3.5));
    SPILE_TRY(closeSheet(cellar, sheet));
    return 3;
}

Result<std::int64_t> takeDayFileIn(Prepared& prepared, Cellar& cellar)
{
    SPILE_ASSIGN(taken, takeIn(cellar, prepared.dayFile));
    return static_cast<std::int64_t>(taken.added);
}

Result<std::int64_t> handDayFileOut(Prepared& prepared, Cellar& cellar)
{
    SPILE_TRY(handOut(cellar, prepared.device.folder.path() / "out.spile", {}));
    return 0;
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
