#include "core/gas/carbonation.hpp"
#include "core/gas/flow.hpp"
#include "core/gas/isopropanol.hpp"
#include "core/gas/oxygen.hpp"
#include "core/gas/purging.hpp"
#include "core/gas/pushing.hpp"
#include "core/gas/room.hpp"
#include "core/gas/solubility.hpp"

#include <gtest/gtest.h>
#include <limits>

namespace spile::gas {

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();
constexpr PurgeLine usualLine{psi(5), millimetres(6), Length()};
constexpr Density beer = kilogramsPerCubicMetre(1030);

template <class T>
void expectRefused(const Result<T>& result, ErrorCode code, const std::string& subject)
{
    ASSERT_FALSE(result.has_value());
    EXPECT_EQ(result.error().code, code);
    EXPECT_EQ(result.error().subject, subject);
}

}  // namespace

TEST(Solubility, RefusesWhatItsFitDoesNotCover)
{
    expectRefused(co2InWater(celsius(-0.1), atmosphere), ErrorCode::OutOfRange, "temperature_c");
    expectRefused(co2InBeer(celsius(41), atmosphere), ErrorCode::OutOfRange, "temperature_c");
    expectRefused(co2InBeer(celsius(10), bars(-1)), ErrorCode::OutOfRange, "pressure_bar");
    expectRefused(co2Volumes(gramsPerLitre(notANumber)), ErrorCode::NotFinite, "co2_g_per_l");
    expectRefused(oxygenSaturation(celsius(notANumber)), ErrorCode::NotFinite, "temperature_c");
    expectRefused(oxygenTakenUp(litres(5), 1.1, litres(200), celsius(20)), ErrorCode::OutOfRange,
                  "exchanged");
}

TEST(KegChart, SaysWhichPressuresItReaches)
{
    const auto tooHigh = kegVolumes(psi(200), celsius(5));
    expectRefused(tooHigh, ErrorCode::OutOfRange, "gauge_psi");
    EXPECT_EQ(tooHigh.error().value, "200");
    EXPECT_LT(*kegPressure(1, celsius(0)), Pressure());  // held without pressure
    expectRefused(kegPressure(0.9, celsius(5)), ErrorCode::OutOfRange, "co2_volumes");
    expectRefused(kegPressure(2.5, celsius(31)), ErrorCode::OutOfRange, "temperature_c");
}

TEST(Carbonating, NeverQuiteArrives)
{
    const Duration constant = usualTimeConstant(Carbonating::Standing);
    EXPECT_EQ(*timeToVolumes(1, 2.5, 1, constant), Duration());
    EXPECT_EQ(*timeToVolumes(1, 1, 1, constant), Duration());
    expectRefused(timeToVolumes(1, 2.5, 2.5, constant), ErrorCode::OutOfRange, "target_volumes");
    expectRefused(timeToVolumes(1, 2.5, 0.9, constant), ErrorCode::OutOfRange, "target_volumes");
    // A week or so to nine tenths, as brewers who only wait say.
    EXPECT_NEAR(inDays(*timeToVolumes(1, 2.5, 2.35, constant)), 7, 0.2);
    EXPECT_LT(usualTimeConstant(Carbonating::Shaken), usualTimeConstant(Carbonating::Stone));
    EXPECT_LT(usualTimeConstant(Carbonating::Stone), constant);
}

TEST(Flatness, IsWhatTheBeerHoldsByItselfWhenWarmest)
{
    EXPECT_TRUE(*isFlatEnough(0.8, celsius(20)));
    EXPECT_FALSE(*isFlatEnough(1.2, celsius(20)));
    EXPECT_TRUE(*isFlatEnough(1.2, celsius(8)));
    expectRefused(isFlatEnough(-1, celsius(8)), ErrorCode::OutOfRange, "co2_volumes");
}

TEST(Priming, TakesNoGasAway)
{
    expectRefused(primingSugar(Sugar::Sucrose, litres(20), 2.5, 2.4), ErrorCode::OutOfRange,
                  "residual_volumes");
    EXPECT_EQ(*primingSugar(Sugar::Sucrose, litres(20), 2.4, 2.4), Mass());
}

TEST(Flow, IsTheSmallerOfBoreAndHose)
{
    const Pressure up = atmosphere + psi(5);
    const auto bore = orificeFlow(up, atmosphere, millimetres(6), celsius(20));
    const auto shortHose = hoseFlow(up, atmosphere, millimetres(6), metres(0.1), celsius(20));
    ASSERT_GT(*shortHose, *bore);
    EXPECT_EQ(*lineFlow(up, atmosphere, millimetres(6), metres(0.1), celsius(20)), *bore);
    EXPECT_LT(*lineFlow(up, atmosphere, millimetres(6), metres(5), celsius(20)), *bore);
}

TEST(Flow, RefusesToRunBackwards)
{
    expectRefused(orificeFlow(atmosphere, atmosphere + psi(1), millimetres(6), celsius(20)),
                  ErrorCode::OutOfRange, "down_bar");
    expectRefused(hoseFlow(bars(2), bars(1), millimetres(6), Length(), celsius(20)),
                  ErrorCode::OutOfRange, "hose_m");
    expectRefused(lineFlow(bars(2), bars(1), millimetres(0.1), metres(1), celsius(20)),
                  ErrorCode::OutOfRange, "bore_mm");
}

// Laminar flow through a long narrow hose has a closed form: pi D^4 (P1^2 - P2^2) / (256 mu L R T).
TEST(Flow, IsThatOfPoiseuilleInALongNarrowHose)
{
    const double mean = 3.141592653589793 * 1e-12 * (1.02e5 * 1.02e5 - 1e10) /
                        (256 * 1.47e-5 * 10 * 188.9241 * 293.15);
    const auto flow = hoseFlow(bars(1.02), bars(1), millimetres(1), metres(10), celsius(20));
    EXPECT_NEAR(flow->si() / mean, 1, 1e-4);
}

TEST(Purging, KnowsWhatItCannotReach)
{
    expectRefused(purgeTo(usualLine, litres(200), 0), ErrorCode::OutOfRange, "target_oxygen");
    expectRefused(purgeTo(usualLine, litres(200), 0.3), ErrorCode::OutOfRange, "target_oxygen");
    expectRefused(purgeFor({Pressure(), millimetres(6), Length()}, litres(200), minutes(1)),
                  ErrorCode::OutOfRange, "gauge_bar");
    expectRefused(purgeFor(usualLine, Volume(), minutes(1)), ErrorCode::OutOfRange, "vessel_l");
    expectRefused(purgeFor(usualLine, litres(200), minutes(-1)), ErrorCode::OutOfRange, "time_s");
    expectRefused(cyclesTo(1e-9, bars(0.01), litres(200), celsius(20)), ErrorCode::OutOfRange,
                  "cycles");
}

TEST(Purging, TakesThreeTimesTheBarrelTillOnePercentAndHalfOfItIfNothingMixes)
{
    const Purge mixed = *purgeTo(usualLine, litres(200), 0.01);
    const Purge lifted = *purgeByDisplacement(usualLine, litres(200));
    EXPECT_NEAR(mixed.turnovers, 3.04, 0.005);
    EXPECT_NEAR(lifted.turnovers, 1.5, 1e-12);
    EXPECT_NEAR(lifted.time / mixed.time, 1.5 / 3.0419, 1e-4);
    const PressureCycles cycles = *cyclesTo(0.01, psi(5), litres(200), celsius(20));
    EXPECT_EQ(cycles.count, 11);  // 10 leave 1.12 %
}

TEST(Cylinder, LeavesWhatIsNotUsed)
{
    EXPECT_EQ(*cylinderLeft(kilograms(10), kilograms(3.5)), kilograms(6.5));
    expectRefused(cylinderLeft(kilograms(3), kilograms(3.5)), ErrorCode::OutOfRange, "gas_kg");
    EXPECT_EQ(*purgesLeft(kilograms(10), kilograms(3.5)), 2);
}

TEST(RoomAir, TellsTheWorst)
{
    EXPECT_EQ(roomAir({0.004, 0.004, 0.004}), RoomAir::Clear);
    EXPECT_EQ(roomAir({0.04, 0.03, 0.005}), RoomAir::Clear);  // at the limits
    EXPECT_EQ(roomAir({0.02, 0.02, 0.0051}), RoomAir::AboveEightHour);
    EXPECT_EQ(roomAir({0.035, 0.031, 0.004}), RoomAir::AboveShortTerm);
    EXPECT_EQ(roomAir({0.041, 0.031, 0.006}), RoomAir::AboveDanger);
}

TEST(RoomAir, IsDangerousInASmallClosedCellarAndNotInALargeAiredOne)
{
    const Release release{litresPerMinute(192.7), minutes(10)};
    EXPECT_EQ(roomAir(*exposureTo({cubicMetres(30), VolumeFlow()}, release)), RoomAir::AboveDanger);
    EXPECT_EQ(roomAir(*exposureTo({cubicMetres(200), *airChanges(cubicMetres(200), 2)}, release)),
              RoomAir::Clear);
}

TEST(RoomAir, IsAllGasAtMost)
{
    const Room cupboard{cubicMetres(1), VolumeFlow()};
    const Release release{litresPerMinute(200), minutes(20)};
    EXPECT_EQ(exposureTo(cupboard, release)->peak, 1);
    EXPECT_EQ(*co2Added(cubicMetres(1), kilograms(5), celsius(20)), 1);
    EXPECT_EQ(*roomCo2(cupboard, release, Duration()), co2InAir);
    expectRefused(exposureTo({cubicMetres(50), VolumeFlow(), 300e-6, 400e-6}, release),
                  ErrorCode::OutOfRange, "before");
    expectRefused(exposureTo({Volume(), VolumeFlow()}, release), ErrorCode::OutOfRange, "room_m3");
}

TEST(Pushing, WarnsAboveTwoAndRefusesAboveFivePsi)
{
    EXPECT_EQ(*pushCaution(psi(2)), PushCaution::Fine);
    EXPECT_EQ(*pushCaution(psi(2.1)), PushCaution::Warn);
    EXPECT_EQ(*pushCaution(psi(5)), PushCaution::Warn);
    EXPECT_EQ(*pushCaution(psi(5.1)), PushCaution::Refuse);
    expectRefused(pushCaution(psi(-1)), ErrorCode::OutOfRange, "gauge_bar");
}

TEST(Pushing, NeedsThePressureToReachTheEnd)
{
    const BeerLine line{millimetres(19), metres(5)};
    expectRefused(beerFlow(line, psi(1), metres(1), beer), ErrorCode::OutOfRange, "gauge_bar");
    expectRefused(emptyingTime(line, psi(1), metres(0.2), metres(0.8), litres(200), beer),
                  ErrorCode::OutOfRange, "gauge_bar");
    EXPECT_TRUE(beerFlow(line, Pressure(), metres(-1), beer));  // by its own fall
    EXPECT_EQ(inMinutes(*pumpingTime(litres(200), litresPerMinute(20))), 10);
    expectRefused(pumpingTime(litres(200), VolumeFlow()), ErrorCode::OutOfRange, "flow_l_min");
}

TEST(Isopropanol, RefusesWhatNobodySprays)
{
    expectRefused(airAtLowerLimit(litres(-1)), ErrorCode::OutOfRange, "liquid_l");
    EXPECT_LT(isopropanolFlashPoint, sprayedMetalMost);
}

}  // namespace spile::gas
