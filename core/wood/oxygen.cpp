#include "core/wood/oxygen.hpp"

#include "core/gas/oxygen.hpp"
#include "core/units/checks.hpp"
#include "core/wood/evaporation.hpp"

#include <array>

namespace spile::wood {

namespace {

constexpr double mostVolume = 1e3;  // m3

// A used 53 gallon barrel, mg/(L yr), and its surface per volume.
constexpr Spread usedBarrelRate{4, 8, 16};
constexpr double usedBarrelSurface = 1.83 / 0.2006268;  // 1/m

constexpr Spread exchangePerOpening{0.1, 0.2, 0.3};

OxygenTaken times(double k, const Spread& s)
{
    return {kilograms(k * s.low), kilograms(k * s.median), kilograms(k * s.high)};
}

Result<void> needVolume(std::string_view name, Volume volume)
{
    return needBetween(name, volume.si(), 0.0, mostVolume);
}

}  // namespace

Result<double> scaledOxygenRate(double rate, double fromSurfacePerVolume, Length fromStave,
                                double toSurfacePerVolume, Length toStave)
{
    SPILE_TRY(needBetween("rate", rate, 0.0, 1e6));
    SPILE_TRY(needBetween("from_surface_per_m", fromSurfacePerVolume, 0.01, 1000.0));
    SPILE_TRY(needBetween("from_stave_m", fromStave.si(), 0.003, 0.1));
    SPILE_TRY(needBetween("to_surface_per_m", toSurfacePerVolume, 0.01, 1000.0));
    SPILE_TRY(needBetween("to_stave_m", toStave.si(), 0.003, 0.1));
    return rate * (toSurfacePerVolume / fromSurfacePerVolume) * (fromStave / toStave);
}

Result<OxygenTaken> throughWood(Area inner, Length stave, Duration time)
{
    SPILE_TRY(checkWood({inner, stave}));
    constexpr double longest = 100.0 * factor::year / factor::day;
    SPILE_TRY(needBetween("time_d", inDays(time), 0.0, longest));
    constexpr double milligramPerLitre = 1e-3;  // kg/m3
    const double volumes = inner.si() / usedBarrelSurface * (standardStave / stave);
    const double years = time.si() / factor::year;
    return times(milligramPerLitre * volumes * years, usedBarrelRate);
}

Result<OxygenTaken> opened(Volume headSpace, Temperature air)
{
    SPILE_TRY(needVolume("head_space_m3", headSpace));
    SPILE_ASSIGN(oxygen, gas::oxygenInAir(air));
    return times(headSpace.si() * oxygen.si(), exchangePerOpening);
}

Result<OxygenTaken> drawn(DrawMethod method, Volume beer, Volume headSpace, Temperature air)
{
    SPILE_TRY(needVolume("drawn_m3", beer));
    SPILE_TRY(needVolume("head_space_m3", headSpace));
    SPILE_ASSIGN(oxygen, gas::oxygenInAir(air));
    const double inAir = beer.si() * oxygen.si();
    switch (method) {
        case DrawMethod::SampleHole:
            return times(inAir, {0.0, 0.5, 1.0});
        case DrawMethod::Valve:
            return times(inAir, {0.5, 0.75, 1.0});
        case DrawMethod::Bunghole: {
            SPILE_ASSIGN(fromAbove, opened(headSpace, air));
            const std::array both{times(inAir, {1.0, 1.0, 1.0}), fromAbove};
            return total(both);
        }
    }
    return fail(ErrorCode::OutOfRange, "draw_method");
}

Result<OxygenTaken> handled(Handling handling, Volume beer)
{
    SPILE_TRY(needVolume("beer_m3", beer));
    const double perMilligramPerLitre = beer.si() * 1e-3;
    switch (handling) {
        case Handling::Transfer:
            return times(perMilligramPerLitre, {3.0, 4.0, 5.0});
        case Handling::TransferBelow:
            return times(perMilligramPerLitre, {0.9, 1.0, 1.1});
        case Handling::ToppingUp:
            return times(perMilligramPerLitre, {0.2, 0.3, 0.5});
    }
    return fail(ErrorCode::OutOfRange, "handling");
}

OxygenTaken total(std::span<const OxygenTaken> ledger) noexcept
{
    OxygenTaken sum;
    for (const OxygenTaken& taken : ledger) {
        sum = {sum.low + taken.low, sum.median + taken.median, sum.high + taken.high};
    }
    return sum;
}

}  // namespace spile::wood
