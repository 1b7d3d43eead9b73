#include "core/gas/room.hpp"

#include "core/gas/checks.hpp"
#include "core/gas/flow.hpp"

#include <algorithm>
#include <cmath>

namespace spile::gas {

namespace {

Result<void> needRoom(Volume room) { return needBetween("room_m3", room.si(), 1, 1e6); }

Result<void> needAll(const Room& room, const Release& release)
{
    SPILE_TRY(needRoom(room.volume));
    SPILE_TRY(needBetween("ventilation_m3_h", room.ventilation.si() * factor::hour, 0, 1e5));
    SPILE_TRY(needBetween("outside", room.outside, 0, 1));
    SPILE_TRY(needBetween("before", room.before, room.outside, 1));
    SPILE_TRY(needBetween("gas_l_min", inLitresPerMinute(release.gas), 0, 600'000));
    return needTime(release.time);
}

// (1 - e^-x) / x, and (1 - that) / x: 1 and 1/2 where nothing is renewed.
double meanDecay(double x) { return x > 0 ? -std::expm1(-x) / x : 1; }
double meanRise(double x)
{
    return x > 0.01 ? (x + std::expm1(-x)) / (x * x)
                    : 0.5 - x * (1.0 / 6 - x * (1.0 / 24 - x * (1.0 / 120 - x / 720)));
}

// What the room has more than the outside air.
class Excess {
public:
    Excess(const Room& room, const Release& release)
        : rate_(room.ventilation.si() / room.volume.si()),
          rise_(release.gas.si() / room.volume.si()),
          first_(room.before - room.outside),
          end_(release.time.si())
    {
    }
    [[nodiscard]] double at(double t) const
    {
        const double released = std::min(t, end_);
        const double there =
            first_ * std::exp(-rate_ * released) + rise_ * released * meanDecay(rate_ * released);
        return there * std::exp(-rate_ * (t - released));
    }
    [[nodiscard]] double mean(double from, double to) const
    {
        return (integralTo(to) - integralTo(from)) / (to - from);
    }
    [[nodiscard]] double peak() const { return std::max(first_, at(end_)); }

    // The highest mean of a window: it begins at once where the room only clears, else where it
    // begins and ends at the same height.
    [[nodiscard]] double highestMean(double window) const
    {
        double low = 0;
        double high = end_;
        for (int i = 0; i < 60; ++i) {
            const double middle = (low + high) / 2;
            (at(middle + window) > at(middle) ? low : high) = middle;
        }
        return mean(high, high + window);
    }

private:
    [[nodiscard]] double integralTo(double t) const
    {
        const double released = std::min(t, end_);
        const double after = t - released;
        const double x = rate_ * released;
        return released * (first_ * meanDecay(x) + rise_ * released * meanRise(x)) +
               at(released) * after * meanDecay(rate_ * after);
    }

    double rate_, rise_, first_, end_;
};

double fraction(double outside, double excess) { return std::min(outside + excess, 1.0); }

}  // namespace

Result<VolumeFlow> airChanges(Volume room, double perHour)
{
    SPILE_TRY(needRoom(room));
    SPILE_TRY(needBetween("air_changes", perHour, 0, 100));
    return cubicMetresPerSecond(room.si() * perHour / factor::hour);
}

Result<double> roomCo2(const Room& room, const Release& release, Duration at)
{
    SPILE_TRY(needAll(room, release));
    SPILE_TRY(needTime(at));
    return fraction(room.outside, Excess(room, release).at(at.si()));
}

Result<Exposure> exposureTo(const Room& room, const Release& release)
{
    SPILE_TRY(needAll(room, release));
    constexpr double shortTerm = 15 * factor::minute;
    constexpr double workday = 8 * factor::hour;
    const Excess excess(room, release);
    return Exposure{fraction(room.outside, excess.peak()),
                    fraction(room.outside, excess.highestMean(shortTerm)),
                    fraction(room.outside, excess.mean(0, workday))};
}

RoomAir roomAir(const Exposure& exposure)
{
    if (exposure.peak > co2DangerLimit) {
        return RoomAir::AboveDanger;
    }
    if (exposure.shortTermMean > co2ShortTermLimit) {
        return RoomAir::AboveShortTerm;
    }
    return exposure.eightHourMean > co2EightHourLimit ? RoomAir::AboveEightHour : RoomAir::Clear;
}

Result<double> co2Added(Volume room, Mass gas, Temperature t)
{
    SPILE_TRY(needRoom(room));
    SPILE_ASSIGN(volume, volumeAtOneAtmosphere(gas, t));
    return std::min(volume / room, 1.0);
}

}  // namespace spile::gas
