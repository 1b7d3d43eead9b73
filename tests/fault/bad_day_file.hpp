#pragma once

#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/photographing.hpp"
#include "tests/support/day_file.hpp"
#include "tests/support/small_cellar.hpp"

#include <gtest/gtest.h>

namespace spile::cellar {

using support::DayFile;
using support::textOf;

// A phone has handed out a day file of two draws and a photo, and the desk has not seen it yet.
class BadDayFile : public testing::Test {
protected:
    support::TestDevice deskDevice{41};
    support::TestDevice phoneDevice{42};
    std::unique_ptr<Cellar> desk = deskDevice.newCellar();
    std::unique_ptr<Cellar> phone;
    support::SmallCellar small = support::fillSmallCellar(*desk);
    Path file = phoneDevice.folder.path() / "day.spile";
    Path bad = deskDevice.folder.path() / "bad.spile";
    Sha256 before;

    void SetUp() override
    {
        const Path start = deskDevice.folder.path() / "start.spile";
        ASSERT_TRUE(handOut(*desk, start, {}));
        phone = phoneDevice.join(start);
        support::admitDevice(*desk, *phone);
        for (int i = 0; i < 3; ++i) {
            ASSERT_TRUE(recordDraw(
                *phone,
                {.barrel = small.barrel, .volume = millilitres(100), .method = "sample hole"}));
        }
        const Bytes picture = support::smallPicture();
        ASSERT_TRUE(
            recordPhoto(*phone, {.barrel = small.barrel, .picture = picture, .purpose = "colour"}));
        // The phone knows what the desk holds, so that only its own records are in the file.
        support::carry(*desk, *phone, start);
        ASSERT_TRUE(handOut(*phone, file, desk->ledger().device()));
        before = support::storedBytes(deskDevice.cellarFolder());
    }

    ledger::SigningKey phoneKey()
    {
        return ledger::SigningKey(**phoneDevice.keys.load(KeyName::Device));
    }

    void expectRefused(const Path& path, ErrorCode code)
    {
        const auto taken = takeIn(*desk, path);
        ASSERT_FALSE(taken);
        EXPECT_EQ(taken.error().code, code) << textOf(taken.error());
        expectUnchanged();
    }
    void expectUnchanged() { EXPECT_EQ(support::storedBytes(deskDevice.cellarFolder()), before); }
    // A change that the phone itself, or who has its key, made and sealed properly.
    void expectForgeryRefused(DayFile& forged, ErrorCode code = ErrorCode::Damaged)
    {
        forged.seal(phoneKey());
        forged.write(bad);
        expectRefused(bad, code);
    }
};

}  // namespace spile::cellar
