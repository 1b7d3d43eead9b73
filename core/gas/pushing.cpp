#include "core/gas/pushing.hpp"

#include "core/gas/checks.hpp"
#include "core/gas/friction.hpp"

#include <cmath>
#include <numbers>

namespace spile::gas {

namespace {

Result<void> needGauge(Pressure gauge, double most)
{
    return needBetween("gauge_bar", inBars(gauge), 0, most);
}

Result<void> needVolume(Volume volume) { return needBetween("volume_l", inLitres(volume), 0, 1e5); }

Result<void> needLine(const BeerLine& line)
{
    SPILE_TRY(needBetween("bore_mm", inMillimetres(line.bore), 2, 100));
    SPILE_TRY(needBetween("hose_m", line.length.si(), 0, 200));
    return needBetween("losses", line.losses, 1, 100);
}

// The pressure that is left to move the beer.
Result<Pressure> driveOf(Pressure gauge, Length lift, Density liquid)
{
    SPILE_TRY(needGauge(gauge, 10));
    SPILE_ASSIGN(held, liftPressure(lift, liquid));
    if (!(gauge > held)) {
        return failBetween("gauge_bar", inBars(gauge), inBars(held), unbounded);
    }
    return gauge - held;
}

// m3/s under a drive in Pa.
double flowUnder(const BeerLine& line, double drive, double density)
{
    const double section = std::numbers::pi / 4 * line.bore.si() * line.bore.si();
    const auto massFlow = [&](double factor) {
        return section *
               std::sqrt(2 * density * drive / (line.losses + factor * (line.length / line.bore)));
    };
    return flowWithFriction(line.bore.si(), beerViscosity, massFlow) / density;
}

}  // namespace

Result<PushCaution> pushCaution(Pressure gauge)
{
    SPILE_TRY(needGauge(gauge, 100));
    if (gauge > pushLimit) {
        return PushCaution::Refuse;
    }
    return gauge > pushWarning ? PushCaution::Warn : PushCaution::Fine;
}

Result<Force> headForce(Length diameter, Pressure gauge)
{
    SPILE_TRY(needBetween("diameter_mm", inMillimetres(diameter), 0, 3000));
    SPILE_TRY(needGauge(gauge, 100));
    return newtons(std::numbers::pi / 4 * diameter.si() * diameter.si() * gauge.si());
}

Result<Pressure> liftPressure(Length height, Density liquid)
{
    SPILE_TRY(needBetween("height_m", height.si(), -50, 50));
    SPILE_TRY(needBetween("density_kg_m3", liquid.si(), 500, 2000));
    return pascals(liquid.si() * factor::standardGravity * height.si());
}

Result<VolumeFlow> beerFlow(const BeerLine& line, Pressure gauge, Length lift, Density liquid)
{
    SPILE_TRY(needLine(line));
    SPILE_ASSIGN(drive, driveOf(gauge, lift, liquid));
    return cubicMetresPerSecond(flowUnder(line, drive.si(), liquid.si()));
}

Result<Duration> emptyingTime(const BeerLine& line, Pressure gauge, Length first, Length last,
                              Volume volume, Density liquid)
{
    SPILE_TRY(needLine(line));
    SPILE_TRY(needVolume(volume));
    SPILE_ASSIGN(driveFirst, driveOf(gauge, first, liquid));
    SPILE_ASSIGN(driveLast, driveOf(gauge, last, liquid));
    // The time is the mean of 1/flow over the drive. Over the drive's logarithm it is smooth, even
    // where the beer comes nearly to rest: Simpson's rule.
    constexpr int steps = 64;
    const double span = std::log(driveLast / driveFirst);
    double sum = 0;
    for (int i = 0; i <= steps; ++i) {
        const double drive = driveFirst.si() * std::exp(span * i / steps);
        const double weight = i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2;
        sum += weight * drive / flowUnder(line, drive, liquid.si());
    }
    const double mean = sum / (3 * steps);
    // span / (last - first), which is 1 / drive where both are the same.
    const double growth = driveLast / driveFirst - 1;
    const double perDrive = (growth == 0 ? 1 : span / growth) / driveFirst.si();
    const double time = volume.si() * mean * perDrive;
    if (!std::isfinite(time)) {  // hardly anything drives it
        return fail(ErrorCode::OutOfRange, "gauge_bar", std::to_string(inBars(gauge)),
                    "enough to move the beer");
    }
    return seconds(time);
}

Result<Duration> pumpingTime(Volume volume, VolumeFlow flow)
{
    SPILE_TRY(needVolume(volume));
    SPILE_TRY(needBetween("flow_l_min", inLitresPerMinute(flow), 0.01, 1e5));
    return seconds(volume.si() / flow.si());
}

}  // namespace spile::gas
