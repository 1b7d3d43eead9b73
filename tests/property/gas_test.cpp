#include "core/gas/carbonation.hpp"
#include "core/gas/flow.hpp"
#include "core/gas/isopropanol.hpp"
#include "core/gas/oxygen.hpp"
#include "core/gas/purging.hpp"
#include "core/gas/pushing.hpp"
#include "core/gas/room.hpp"
#include "core/gas/solubility.hpp"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <rapidcheck/gtest.h>

namespace spile::gas {

namespace {

rc::Gen<double> between(double least, double most)
{
    constexpr int whole = 1'000'000'000;
    return rc::gen::map(rc::gen::inRange(0, whole + 1), [=](int n) {
        return least + (most - least) * (static_cast<double>(n) / whole);
    });
}

rc::Gen<double> anyDouble()
{
    using Limits = std::numeric_limits<double>;
    return rc::gen::oneOf(
        rc::gen::arbitrary<double>(), between(-1, 10), between(0, 1e-9), between(200, 400),
        between(0, 2e6),
        rc::gen::element(Limits::quiet_NaN(), Limits::infinity(), -Limits::infinity(), -0.0, 0.0,
                         Limits::max(), Limits::lowest(), Limits::denorm_min(), 0.2, 0.006, 1.0,
                         101325.0, 273.15, 293.15, 1030.0));
}

template <class T>
bool isFiniteOrError(const Result<T>& result)
{
    if constexpr (std::is_arithmetic_v<T>) {
        return !result || std::isfinite(static_cast<double>(*result));
    } else {
        return !result || std::isfinite(result->si());
    }
}

rc::Gen<PurgeLine> anyLine()
{
    return rc::gen::map(
        rc::gen::tuple(between(0.02, 3), between(2, 20),
                       rc::gen::oneOf(rc::gen::just(0.0), between(0.1, 20)), between(0, 40)),
        [](const auto& drawn) {
            const auto& [gauge, bore, hose, degrees] = drawn;
            return PurgeLine{bars(gauge), millimetres(bore), metres(hose), celsius(degrees)};
        });
}

rc::Gen<Room> anyRoom()
{
    return rc::gen::map(
        rc::gen::tuple(between(20, 1000), rc::gen::oneOf(rc::gen::just(0.0), between(0, 10)),
                       between(0, 0.01), between(0, 0.002)),
        [](const auto& drawn) {
            const auto& [volume, changes, before, outside] = drawn;
            const Volume room = cubicMetres(volume);
            return Room{room, airChanges(room, changes).value(), outside + before, outside};
        });
}

}  // namespace

RC_GTEST_PROP(KegChart, GivesBackTheVolumes, ())
{
    const double volumes = *between(1, 5);
    const Temperature t = celsius(*between(0, 30));
    RC_ASSERT(std::abs(*kegVolumes(*kegPressure(volumes, t), t) - volumes) < 1e-12);
}

RC_GTEST_PROP(KegChart, RisesWithVolumesAndTemperature, ())
{
    const double low = *between(1, 5);
    const double high = *between(1, 5);
    const double cold = *between(0, 30);
    const double warm = *between(0, 30);
    RC_PRE((low < high && cold < warm));
    RC_ASSERT(*kegPressure(low, celsius(cold)) < *kegPressure(high, celsius(cold)));
    RC_ASSERT(*kegPressure(low, celsius(cold)) < *kegPressure(low, celsius(warm)));
    RC_ASSERT(*residualVolumes(celsius(warm)) < *residualVolumes(celsius(cold)));
    RC_ASSERT(*co2InBeer(celsius(warm), atmosphere) < *co2InBeer(celsius(cold), atmosphere));
    RC_ASSERT(*oxygenSaturation(celsius(warm)) < *oxygenSaturation(celsius(cold)));
}

RC_GTEST_PROP(Carbonating, ComesToTheTargetWhenItSays, ())
{
    const double first = *between(0, 5);
    const double last = *between(0, 5);
    const double target = first + *between(0, 0.999) * (last - first);
    const Duration constant = hours(*between(0.1, 200));
    RC_PRE(std::abs(first - last) > 1e-6);
    const Duration time = *timeToVolumes(first, last, target, constant);
    RC_ASSERT(time >= Duration());
    RC_ASSERT(std::abs(*volumesAfter(first, last, time, constant) - target) < 1e-12);
}

RC_GTEST_PROP(Priming, GivesAllItsGasToTheBeer, ())
{
    const auto sugar =
        *rc::gen::element(Sugar::Sucrose, Sugar::Glucose, Sugar::DextroseMonohydrate);
    const double residual = *between(0, 2);
    const double target = residual + *between(0, 3);
    const Volume beer = litres(*between(1, 1000));
    const Mass gas = co2PerSugar(sugar) * *primingSugar(sugar, beer, residual, target);
    const double volumes = *co2Volumes(gramsPerLitre(inGrams(gas) / inLitres(beer)));
    RC_ASSERT(std::abs(volumes + residual - target) < 1e-12);
}

RC_GTEST_PROP(Flow, RisesWithThePressureBehindAndTheBore, ())
{
    const PurgeLine line = *anyLine();
    const auto flow = [&](double gauge, double bore) {
        return *lineFlow(atmosphere + gauge * line.gauge, atmosphere, bore * line.bore, line.hose,
                         line.temperature);
    };
    RC_ASSERT(flow(1, 1) < flow(1.01, 1));
    RC_ASSERT(flow(1, 1) < flow(1, 1.01));
    RC_ASSERT(*lineFlow(atmosphere, atmosphere, line.bore, line.hose, line.temperature) ==
              MassFlow());
}

RC_GTEST_PROP(Flow, FallsAlongAHoseAndNeverRisesWithThePressureAhead, ())
{
    const PurgeLine line = *anyLine();
    const Pressure up = atmosphere + line.gauge;
    const Length hose = metres(*between(0.01, 50));
    const double ahead = *between(0.02, 1);
    const auto flow = [&](double part, double length) {
        return *hoseFlow(up, part * up, line.bore, length * hose, line.temperature);
    };
    RC_ASSERT(flow(0.5, 1) > flow(0.5, 1.01));
    RC_ASSERT((1 + 1e-12) * flow(0.99 * ahead, 1) >= flow(ahead, 1));
    RC_ASSERT(orificeFlow(up, 0.99 * ahead * up, line.bore, line.temperature)->si() >=
              orificeFlow(up, ahead * up, line.bore, line.temperature)->si());
}

RC_GTEST_PROP(Purging, LeavesLessWithTimeAndReachesItsTarget, ())
{
    const PurgeLine line = *anyLine();
    const Volume barrel = litres(*between(20, 600));
    const Duration time = minutes(*between(0, 20));
    const Purge purge = *purgeFor(line, barrel, time);
    const Purge longer = *purgeFor(line, barrel, time + seconds(1));
    // After a thousand turnovers it is too small for a double.
    RC_ASSERT((longer.residualOxygen < purge.residualOxygen || purge.turnovers > 700));
    RC_ASSERT(longer.gas > purge.gas);
    const double target = *between(1e-6, 0.2);
    const Purge reached = *purgeTo(line, barrel, target);
    RC_ASSERT(std::abs(reached.residualOxygen / target - 1) < 1e-11);
    RC_ASSERT(std::abs(purgeFor(line, barrel, reached.time)->residualOxygen / target - 1) < 1e-11);
    RC_ASSERT(std::abs(*dilutedOxygen(*turnoversTo(target)) / target - 1) < 1e-14);
}

// What came in is in the barrel or went out with the air: the oxygen that leaves in small steps is
// the oxygen that is missing at the end.
RC_GTEST_PROP(Purging, BalancesItsOxygen, ())
{
    const PurgeLine line = *anyLine();
    const Volume barrel = litres(*between(20, 600));
    const Purge purge = *purgeTo(line, barrel, 0.01);
    constexpr int steps = 2000;
    double gone = 0;  // by the midpoint rule: gas out by the oxygen in it
    for (int i = 0; i < steps; ++i) {
        const double turnovers = purge.turnovers * (i + 0.5) / steps;
        gone += *dilutedOxygen(turnovers) * purge.turnovers / steps;
    }
    RC_ASSERT(std::abs(gone - (oxygenInDryAir - 0.01)) < 1e-6);
    RC_ASSERT(std::abs(*volumeAtOneAtmosphere(purge.gas, line.temperature) / barrel -
                       purge.turnovers) < 1e-12);
    const double ofAir = oxygenInAir(line.temperature)->si() * barrel.si();
    RC_ASSERT(std::abs(purge.oxygenLeft.si() / (ofAir * 0.01 / oxygenInDryAir) - 1) < 1e-9);
}

RC_GTEST_PROP(PressureCycling, TakesTheFewestCycles, ())
{
    const double target = *between(1e-4, 0.2);
    const Pressure gauge = bars(*between(0.1, 3));
    const PressureCycles cycles = *cyclesTo(target, gauge, litres(50), celsius(20));
    RC_ASSERT(cycles.residualOxygen <= target * (1 + 1e-6));
    RC_PRE(cycles.count > 0);
    RC_ASSERT(cyclesOf(cycles.count - 1, gauge, litres(50), celsius(20))->residualOxygen > target);
}

// A room's gas is what was there and came in, less what went out, which the mean tells.
RC_GTEST_PROP(RoomAirCourse, BalancesItsGas, ())
{
    const Room room = *anyRoom();
    const Release release{litresPerMinute(*between(0, 300)), minutes(*between(1, 20))};
    const Duration workday = hours(8);
    const double mean = exposureTo(room, release)->eightHourMean;
    const double left = (roomCo2(room, release, workday).value() - room.before) * room.volume.si();
    const double in = release.gas.si() * release.time.si();
    const double out = room.ventilation.si() * workday.si() * (mean - room.outside);
    RC_ASSERT(std::abs(left - (in - out)) < 1e-9);
}

RC_GTEST_PROP(RoomAirCourse, PeaksAboveEveryMean, ())
{
    const Room room = *anyRoom();
    const Release release{litresPerMinute(*between(0, 300)), minutes(*between(1, 60))};
    const Exposure exposure = *exposureTo(room, release);
    RC_ASSERT(exposure.peak * (1 + 1e-12) >= exposure.shortTermMean);
    // No other quarter of an hour is worse: windows that begin each half minute.
    for (int begin = 0; begin < 150; ++begin) {
        double sum = 0;
        for (int i = 0; i < 90; ++i) {
            const Duration at = minutes(begin / 2.0 + (i + 0.5) / 6);
            const double co2 = *roomCo2(room, release, at);
            RC_ASSERT(co2 <= exposure.peak * (1 + 1e-12));
            sum += co2 / 90;
        }
        RC_ASSERT(sum <= exposure.shortTermMean * (1 + 1e-3));
    }
}

RC_GTEST_PROP(Pushing, TakesLongerFromASmallerDrive, ())
{
    const BeerLine line{millimetres(*between(6, 40)), metres(*between(0, 20)), 1.5};
    const Density beer = kilogramsPerCubicMetre(1030);
    const Length low = metres(*between(-2, 0));
    const Length high = low + metres(*between(0.001, 0.6));
    const Volume volume = litres(200);
    const Pressure gauge = psi(2);
    const Duration time = *emptyingTime(line, gauge, low, high, volume, beer);
    const double fast = volume.si() / beerFlow(line, gauge, low, beer)->si();
    const double slow = volume.si() / beerFlow(line, gauge, high, beer)->si();
    RC_ASSERT((time.si() >= fast * (1 - 1e-9) && time.si() <= slow * (1 + 1e-9)));
    RC_ASSERT(*beerFlow(line, gauge, low, beer) > *beerFlow(line, gauge, high, beer));
    RC_ASSERT(std::abs(*emptyingTime(line, gauge, low, low, volume, beer) / seconds(fast) - 1) <
              1e-12);
}

RC_GTEST_PROP(Gas, AnswersEveryDoubleWithAFiniteNumberOrAnError, ())
{
    const double a = *anyDouble();
    const double b = *anyDouble();
    const double c = *anyDouble();
    const double d = *anyDouble();
    const double e = *anyDouble();
    RC_ASSERT(isFiniteOrError(co2InWater(kelvins(a), pascals(b))));
    RC_ASSERT(isFiniteOrError(co2InBeer(kelvins(a), pascals(b))));
    RC_ASSERT(isFiniteOrError(co2MoleFractionInWater(kelvins(a), pascals(b))));
    RC_ASSERT(isFiniteOrError(co2Volumes(Density::fromSi(a))));
    RC_ASSERT(isFiniteOrError(co2Dissolved(a)));
    RC_ASSERT(isFiniteOrError(oxygenSaturation(kelvins(a))));
    RC_ASSERT(isFiniteOrError(oxygenInAir(kelvins(a), pascals(b))));
    RC_ASSERT(isFiniteOrError(oxygenTakenUp(cubicMetres(a), b, cubicMetres(c), kelvins(d))));
    RC_ASSERT(isFiniteOrError(kegPressure(a, kelvins(b))));
    RC_ASSERT(isFiniteOrError(kegVolumes(pascals(a), kelvins(b))));
    RC_ASSERT(isFiniteOrError(volumesAfter(a, b, seconds(c), seconds(d))));
    RC_ASSERT(isFiniteOrError(timeToVolumes(a, b, c, seconds(d))));
    RC_ASSERT(isFiniteOrError(residualVolumes(kelvins(a))));
    RC_ASSERT(isFiniteOrError(isFlatEnough(a, kelvins(b))));
    RC_ASSERT(isFiniteOrError(primingSugar(Sugar::Glucose, cubicMetres(a), b, c)));
    RC_ASSERT(isFiniteOrError(bottlePressure(a, kelvins(b))));
    RC_ASSERT(isFiniteOrError(orificeFlow(pascals(a), pascals(b), metres(c), kelvins(d), e)));
    RC_ASSERT(isFiniteOrError(hoseFlow(pascals(a), pascals(b), metres(c), metres(e), kelvins(d))));
    RC_ASSERT(isFiniteOrError(volumeAtOneAtmosphere(kilograms(a), kelvins(b))));
    RC_ASSERT(isFiniteOrError(dilutedOxygen(a, b)));
    RC_ASSERT(isFiniteOrError(turnoversTo(a, b)));
    const auto purge = purgeFor({pascals(a), metres(c), metres(e), kelvins(d)}, cubicMetres(b),
                                seconds(*anyDouble()));
    RC_ASSERT((!purge || std::isfinite(purge->gas.si() + purge->oxygenLeft.si())));
    const auto cycles = cyclesTo(a, pascals(b), cubicMetres(c), kelvins(d));
    RC_ASSERT((!cycles || std::isfinite(cycles->gas.si() + cycles->oxygenLeft.si())));
    RC_ASSERT(isFiniteOrError(cylinderLeft(kilograms(a), kilograms(b))));
    RC_ASSERT(isFiniteOrError(purgesLeft(kilograms(a), kilograms(b))));
    const Room room{cubicMetres(a), VolumeFlow::fromSi(b), c, d};
    const Release release{VolumeFlow::fromSi(e), seconds(*anyDouble())};
    const auto exposure = exposureTo(room, release);
    RC_ASSERT((!exposure ||
               std::isfinite(exposure->peak + exposure->shortTermMean + exposure->eightHourMean)));
    RC_ASSERT(isFiniteOrError(roomCo2(room, release, seconds(*anyDouble()))));
    RC_ASSERT(isFiniteOrError(airChanges(cubicMetres(a), b)));
    RC_ASSERT(isFiniteOrError(co2Added(cubicMetres(a), kilograms(b), kelvins(c))));
    RC_ASSERT(isFiniteOrError(headForce(metres(a), pascals(b))));
    RC_ASSERT(isFiniteOrError(liftPressure(metres(a), Density::fromSi(b))));
    const BeerLine line{metres(a), metres(b), c};
    RC_ASSERT(isFiniteOrError(beerFlow(line, pascals(d), metres(e), gramsPerLitre(1030))));
    RC_ASSERT(isFiniteOrError(emptyingTime(line, pascals(d), metres(e), metres(*anyDouble()),
                                           litres(a), gramsPerLitre(1030))));
    RC_ASSERT(isFiniteOrError(pumpingTime(cubicMetres(a), VolumeFlow::fromSi(b))));
    RC_ASSERT(isFiniteOrError(airAtLowerLimit(cubicMetres(a))));
}

}  // namespace spile::gas
