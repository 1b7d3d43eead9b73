// Alone in its program, for it replaces operator new; where gcc inlines only the delete, it errs.
#pragma GCC diagnostic ignored "-Wmismatched-new-delete"

#include "core/scan/live_reader.hpp"
#include "core/scan/redraw.hpp"
#include "tests/bench/counted.hpp"
#include "tests/support/damaged_labels.hpp"
#include "tests/support/symbol_pictures.hpp"

#include <gtest/gtest.h>

namespace spile::scan {

// Frames that are not read, so that all there is to try is tried: covered labels, noise, nothing.
static std::vector<picture::Image> unreadableFrames()
{
    std::vector<picture::Image> frames;
    for (int i = 0; i < 4; ++i) {
        picture::Image symbol = support::drawSymbol("S1K4TN7K2QFM", {.quarterTurns = i});
        support::cover(symbol, 8, 0, 10, 25, 30);
        picture::Image frame = support::plainPicture(960, 540, 90);
        support::paste(frame, symbol, 300 + 50 * i, 200);
        support::addNoise(frame, 3 * i, 7);
        frames.push_back(std::move(frame));
    }
    frames.push_back(support::noiseOnly(960, 540, 3));
    frames.push_back(support::plainPicture(960, 540));
    return frames;
}

TEST(Redrawer, AllocatesNothingOnceItIsWarm)
{
    const auto frames = unreadableFrames();
    Redrawer redrawer;
    const auto readAll = [&] {
        for (const picture::Image& frame : frames) {
            EXPECT_TRUE(redrawer.read(viewOf(frame)).empty());
        }
    };
    readAll();
    const long before = bench::allocations;
    EXPECT_GT(before, 0);
    readAll();
    readAll();
    EXPECT_EQ(bench::allocations - before, 0);
}

}  // namespace spile::scan
