#include "core/vessel/measuring.hpp"
#include "core/vessel/presets.hpp"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <numbers>
#include <vector>

namespace spile::vessel {

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();
constexpr Barrel spiritBarrel{Profile::Parabola, millimetres(776), millimetres(600),
                              millimetres(520), 1};

template <class T>
void expectRefused(const Result<T>& result, ErrorCode code, const std::string& subject)
{
    ASSERT_FALSE(result.has_value());
    EXPECT_EQ(result.error().code, code);
    EXPECT_EQ(result.error().subject, subject);
}

Barrel with(void (*change)(Barrel&))
{
    Barrel barrel = spiritBarrel;
    change(barrel);
    return barrel;
}

}  // namespace

TEST(Barrel, IsRefusedByTheMeasureThatIsWrong)
{
    expectRefused(fullVolume(with([](Barrel& b) { b.length = millimetres(99); })),
                  ErrorCode::OutOfRange, "length_mm");
    expectRefused(fullVolume(with([](Barrel& b) { b.bilge = metres(3.1); })), ErrorCode::OutOfRange,
                  "bilge_mm");
    expectRefused(innerArea(with([](Barrel& b) { b.head = millimetres(601); })),
                  ErrorCode::OutOfRange, "head_mm");
    expectRefused(innerArea(with([](Barrel& b) { b.head = metres(notANumber); })),
                  ErrorCode::NotFinite, "head_mm");
    expectRefused(fullVolume(with([](Barrel& b) { b.calibration = 0; })), ErrorCode::OutOfRange,
                  "calibration");
    // An arc of a circle cannot bend to a head that is narrower by more than the length.
    expectRefused(fullVolume(with([](Barrel& b) {
                      b.length = millimetres(100);
                      b.head = millimetres(499);
                  })),
                  ErrorCode::OutOfRange, "head_mm");
}

TEST(Barrel, SaysWhatADipOrAVolumeShouldBe)
{
    const auto tooDeep = lyingVolume(spiritBarrel, millimetres(601));
    expectRefused(tooDeep, ErrorCode::OutOfRange, "dip_mm");
    EXPECT_EQ(tooDeep.error().value, "601");
    EXPECT_EQ(tooDeep.error().limit, "0 to 600");
    const auto tooMuch = lyingDip(spiritBarrel, litres(201));
    expectRefused(tooMuch, ErrorCode::OutOfRange, "volume_l");
    EXPECT_EQ(tooMuch.error().limit, "0 to 200.686");
    expectRefused(lyingVolume(spiritBarrel, millimetres(300), 0.2), ErrorCode::OutOfRange,
                  "tilt_rad");
    expectRefused(lyingVolume(spiritBarrel, millimetres(300), -0.2), ErrorCode::OutOfRange,
                  "tilt_rad");
    expectRefused(wettedArea(spiritBarrel, millimetres(-1)), ErrorCode::OutOfRange, "dip_mm");
    expectRefused(standingVolume(spiritBarrel, millimetres(777)), ErrorCode::OutOfRange,
                  "depth_mm");
    expectRefused(standingDepth(spiritBarrel, litres(notANumber)), ErrorCode::NotFinite,
                  "volume_l");
    expectRefused(headLevel(spiritBarrel, litres(-1)), ErrorCode::OutOfRange, "volume_l");
}

TEST(Barrel, KeepsSomethingAtADipOfNothingWhenItLeans)
{
    const double tilt = 5 * tiltMost / 10;
    const Volume rest = *lyingVolume(spiritBarrel, Length(), tilt);
    EXPECT_GT(rest, litres(0.1));
    EXPECT_EQ(*lyingDip(spiritBarrel, rest, tilt), Length());
    expectRefused(lyingDip(spiritBarrel, 0.5 * rest, tilt), ErrorCode::OutOfRange, "volume_l");
}

TEST(Barrel, CountsItsVolumesByTheCalibration)
{
    const Barrel larger = with([](Barrel& b) { b.calibration = 1.02; });
    EXPECT_NEAR(
        *lyingVolume(larger, millimetres(200)) / *lyingVolume(spiritBarrel, millimetres(200)), 1.02,
        1e-14);
    EXPECT_EQ(*innerArea(larger), *innerArea(spiritBarrel));
}

TEST(HeadLevel, IsSeenOnTheHeadAlone)
{
    // The head begins 40 mm above the bilge's stave and ends 40 mm below the bung.
    const auto levelAtDip = [](double mm) {
        return *headLevel(spiritBarrel, *lyingVolume(spiritBarrel, millimetres(mm)));
    };
    EXPECT_EQ(levelAtDip(39), 0);
    EXPECT_NEAR(levelAtDip(40 + 130), 0.25, 1e-12);
    EXPECT_NEAR(levelAtDip(40 + 390), 0.75, 1e-12);
    EXPECT_EQ(levelAtDip(561), 1);
}

TEST(DipTable, HasARowForEachStepAndOneForTheBung)
{
    EXPECT_EQ(*dipTableRows(spiritBarrel, millimetres(1)), 601U);
    EXPECT_EQ(*dipTableRows(spiritBarrel, millimetres(7)), 87U);  // 85 steps of 7, one of 5
    EXPECT_EQ(*dipTableRows(spiritBarrel, spiritBarrel.bilge), 2U);
    // A bilge of a whole number of steps has no further row, however its ratio rounds.
    for (int steps = 350; steps < 1000; ++steps) {
        Barrel barrel = spiritBarrel;
        barrel.bilge = millimetres(0.3 * steps);
        barrel.head = barrel.bilge;
        EXPECT_EQ(*dipTableRows(barrel, millimetres(0.3)), static_cast<std::size_t>(steps) + 1);
    }
    std::vector<DipRow> rows(87);
    ASSERT_TRUE(dipTable(spiritBarrel, millimetres(7), rows));
    EXPECT_NEAR(inMillimetres(rows[85].dip), 595, 1e-9);
    EXPECT_EQ(rows[86].dip, spiritBarrel.bilge);
}

TEST(DipTable, RefusesAStepOrRowsThatDoNotFitAndLeavesThemAlone)
{
    expectRefused(dipTableRows(spiritBarrel, Length()), ErrorCode::OutOfRange, "step_mm");
    expectRefused(dipTableRows(spiritBarrel, metres(notANumber)), ErrorCode::NotFinite, "step_mm");
    std::vector<DipRow> rows(600, DipRow{metres(7), litres(7)});
    expectRefused(dipTable(spiritBarrel, millimetres(1), rows), ErrorCode::OutOfRange, "rows");
    EXPECT_EQ(rows[0].dip, metres(7));
    rows.resize(602);
    expectRefused(dipTable(spiritBarrel, millimetres(1), rows), ErrorCode::OutOfRange, "rows");
}

TEST(Presets, AreSortedAndHoldWhatTheyAreCalled)
{
    Volume last;
    for (const Preset& preset : presets()) {
        EXPECT_GT(preset.volume, last) << preset.name;
        last = preset.volume;
        EXPECT_NEAR(*fullVolume(preset.barrel) / preset.volume, 1, 2e-3) << preset.name;
    }
}

TEST(Presets, HaveAShapeForEachBarrelThatIsRegistered)
{
    for (const double held : {18.927, 37.854, 40.0, 56.781, 200.0, 225.0, 250.0, 300.0, 500.0}) {
        EXPECT_NEAR(inLitres(*fullVolume(*similarTo(litres(held)))), held, 1e-9);
    }
    EXPECT_EQ(nearestPreset(litres(200))->name, "53 gallon");
    EXPECT_EQ(nearestPreset(litres(40))->name, "10 gallon");
    EXPECT_EQ(nearestPreset(litres(1000))->basis, Basis::SimilarTo225);
    expectRefused(similarTo(litres(0.5)), ErrorCode::OutOfRange, "full_volume_l");
    expectRefused(similarTo(litres(notANumber)), ErrorCode::NotFinite, "full_volume_l");
}

TEST(Measuring, TakesTheBilgeFromTheStick)
{
    const Barrel barrel = *calibrated(spiritBarrel, litres(205), millimetres(605));
    EXPECT_EQ(barrel.bilge, millimetres(605));
    EXPECT_NEAR(inLitres(*lyingVolume(barrel, millimetres(605))), 205, 1e-12);
    expectRefused(calibrated(spiritBarrel, litres(100)), ErrorCode::OutOfRange, "full_volume_l");
    expectRefused(calibrated(spiritBarrel, litres(200), millimetres(500)), ErrorCode::OutOfRange,
                  "head_mm");
}

TEST(Measuring, FindsTheHeadWhereTheStavesHaveWidened)
{
    const auto girth = [](double mm) { return millimetres(std::numbers::pi * mm); };
    const Barrel barrel = *barrelFromOutside({girth(660), girth(560), millimetres(1000),
                                              millimetres(30), millimetres(100), millimetres(50)});
    EXPECT_NEAR(inMillimetres(barrel.length), 700, 1e-9);
    EXPECT_NEAR(inMillimetres(barrel.bilge), 600, 1e-9);
    EXPECT_NEAR(inMillimetres(barrel.head), 600 - 100 * 0.7 * 0.7, 1e-9);
}

TEST(Measuring, RefusesWhatATapeDoesNotShow)
{
    OutsideMeasures outside{millimetres(2070), millimetres(1720), millimetres(890),
                            millimetres(27)};
    EXPECT_TRUE(barrelFromOutside(outside));
    outside.bilgeGirth = inches(26);  // the diameter, printed as the girth by some
    expectRefused(barrelFromOutside(outside), ErrorCode::OutOfRange, "head_mm");
    outside.bilgeGirth = metres(notANumber);
    expectRefused(barrelFromOutside(outside), ErrorCode::NotFinite, "bilge_girth_mm");
}

}  // namespace spile::vessel
