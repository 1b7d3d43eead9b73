#pragma once

#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/photographing.hpp"
#include "core/cellar/acts/sheet.hpp"
#include "core/cellar/acts/trusting.hpp"
#include "core/cellar/checking.hpp"
#include "tests/support/small_cellar.hpp"

#include <cstdlib>
#include <functional>
#include <gtest/gtest.h>

/// Acts in which the memory runs out, and the cellar that they are done in.
namespace spile::cellar {

/// A desk, and a day file of its phone that it has not seen.
struct Prepared {
    support::TestDevice device{301};
    support::TempFolder copy;
    support::SmallCellar small;
    DeviceId phone;
    Path dayFile = copy.path() / "day.spile";

    Prepared()
    {
        auto desk = device.newCellar();
        small = support::fillSmallCellar(*desk);
        support::TestDevice phoneDevice(302);
        const Path start = device.folder.path() / "start.spile";
        EXPECT_TRUE(handOut(*desk, start, {}));
        auto other = phoneDevice.join(start);
        phone = other->ledger().device();
        support::admitDevice(*desk, *other);
        support::carry(*desk, *other, start);
        for (int i = 0; i < 5; ++i) {
            EXPECT_TRUE(recordDraw(
                *other,
                {.barrel = small.barrel, .volume = millilitres(20), .method = "sample hole"}));
        }
        const Bytes picture = support::smallPicture();
        EXPECT_TRUE(
            recordPhoto(*other, {.barrel = small.barrel, .picture = picture, .purpose = "colour"}));
        EXPECT_TRUE(handOut(*other, dayFile, desk->ledger().device()));
        EXPECT_TRUE(std::filesystem::remove(start));
        desk.reset();
        std::filesystem::copy(device.cellarFolder(), copy.path() / "cellar",
                              std::filesystem::copy_options::recursive);
    }
    /// The cellar as it was at first.
    std::unique_ptr<Cellar> renewed()
    {
        std::filesystem::remove_all(device.cellarFolder());
        std::filesystem::copy(copy.path() / "cellar", device.cellarFolder(),
                              std::filesystem::copy_options::recursive);
        return device.reopen();
    }
};

/// What an act did: the records it added, none if it failed.
using Act = std::function<Result<std::int64_t>(Prepared&, Cellar&)>;

inline Result<std::int64_t> drawAndTaste(Prepared& prepared, Cellar& cellar)
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

inline Result<std::int64_t> cutOffAndReinstate(Prepared& prepared, Cellar& cellar)
{
    const ledger::SigningKey owner(**prepared.device.keys.load(KeyName::Owner));
    auto cut = cutOff(cellar, {.device = prepared.phone, .lastSeq = 0});
    if (!cut && cut.error().code != ErrorCode::Conflict) {  // cut off, where the first run stopped
        return passOn(cut);
    }
    SPILE_TRY(reinstate(cellar, owner, prepared.phone));
    return 2;
}

inline Result<std::int64_t> takeDayFileIn(Prepared& prepared, Cellar& cellar)
{
    SPILE_ASSIGN(taken, takeIn(cellar, prepared.dayFile));
    return static_cast<std::int64_t>(taken.added);
}

inline Result<std::int64_t> handDayFileOut(Prepared& prepared, Cellar& cellar)
{
    SPILE_TRY(handOut(cellar, prepared.device.folder.path() / "out.spile", {}));
    return 0;
}

/// Tries an act with memory for so many requests, once or from then on without; says whether it ran
/// out.
using Trial = std::function<void(std::int64_t after, bool lasting, bool& ranOut)>;

/// With SPILE_CRASHES each request for memory is refused, else every `step`-th.
inline void refuseEverywhere(std::int64_t step, const Trial& trial)
{
    step = std::getenv("SPILE_CRASHES") == nullptr ? step : 1;
    int looked = 0;
    for (const bool lasting : {false, true}) {
        bool ranOut = true;
        for (std::int64_t after = 0; ranOut; after += step) {
            SCOPED_TRACE("request " + std::to_string(after) + (lasting ? " and all after" : ""));
            trial(after, lasting, ranOut);
            if (testing::Test::HasFatalFailure()) {
                return;
            }
            looked += ranOut ? 1 : 0;
        }
    }
    testing::Test::RecordProperty("requests", looked);
    EXPECT_GE(looked, 10);
}

}  // namespace spile::cellar
