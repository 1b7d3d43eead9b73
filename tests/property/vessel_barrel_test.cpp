#include "core/vessel/barrel.hpp"
#include "core/vessel/measuring.hpp"
#include "core/vessel/presets.hpp"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <numbers>
#include <rapidcheck/gtest.h>
#include <vector>

namespace spile::vessel {

namespace {

rc::Gen<double> between(double least, double most)
{
    constexpr int whole = 1'000'000'000;
    return rc::gen::map(rc::gen::inRange(0, whole + 1), [=](int n) {
        return least + (most - least) * (static_cast<double>(n) / whole);
    });
}

rc::Gen<double> part() { return between(0, 1); }

rc::Gen<Profile> anyProfile()
{
    return rc::gen::element(Profile::Parabola, Profile::Ellipse, Profile::Circle);
}

// Barrels as coopers make them, rounder ones and long tubes, in which a leaning surface meets the
// staves below and above.
rc::Gen<Barrel> anyBarrel()
{
    return rc::gen::map(rc::gen::tuple(anyProfile(), between(0.2, 1.2),
                                       rc::gen::oneOf(between(0.8, 2.5), between(0.8, 15)),
                                       between(0.5, 1), between(0.9, 1.1)),
                        [](const auto& drawn) {
                            const auto& [profile, bilge, length, head, calibration] = drawn;
                            return Barrel{profile, metres(std::min(bilge * length, 3.0)),
                                          metres(bilge), metres(bilge * head), calibration};
                        });
}

rc::Gen<double> anyTilt() { return rc::gen::oneOf(rc::gen::just(0.0), between(-0.174, 0.174)); }

rc::Gen<double> anyDouble()
{
    using Limits = std::numeric_limits<double>;
    return rc::gen::oneOf(
        rc::gen::arbitrary<double>(), between(-1, 4), between(0, 1e-9),
        rc::gen::element(Limits::quiet_NaN(), Limits::infinity(), -Limits::infinity(), -0.0, 0.0,
                         Limits::max(), Limits::lowest(), Limits::denorm_min(), 0.1, 0.52, 0.6,
                         0.776, 1.0, 3.0, tiltMost));
}

template <class T>
bool isFiniteOrError(const Result<T>& result)
{
    return !result || std::isfinite(result->si());
}

}  // namespace

RC_GTEST_PROP(Barrels, GiveBackTheDipOfEachVolume, ())
{
    const Barrel barrel = *anyBarrel();
    const double tilt = *anyTilt();
    const Length dip = *part() * barrel.bilge;
    const Volume volume = *lyingVolume(barrel, dip, tilt);
    const Length back = *lyingDip(barrel, volume, tilt);
    // 2e-8 m: where a double hardly holds what is missing to the full barrel.
    const double allowed = dip.si() > 0.999 * barrel.bilge.si() ? 2e-8 : 1e-9 * barrel.bilge.si();
    RC_ASSERT(std::abs((back - dip).si()) <= allowed);
    const Volume again = *lyingVolume(barrel, back, tilt);
    RC_ASSERT(std::abs((again - volume).si()) <= 1e-9 * fullVolume(barrel)->si());
}

RC_GTEST_PROP(Barrels, GiveBackTheVolumeOfEachDip, ())
{
    const Barrel barrel = *anyBarrel();
    const Volume volume = *part() * *fullVolume(barrel);
    const Length dip = *lyingDip(barrel, volume);
    RC_ASSERT(std::abs((*lyingVolume(barrel, dip) - volume).si()) <= 1e-12);
    const Length depth = *standingDepth(barrel, volume);
    RC_ASSERT(std::abs((*standingVolume(barrel, depth) - volume).si()) <= 1e-12);
}

RC_GTEST_PROP(Barrels, HoldMoreAtAHigherDip, ())
{
    const Barrel barrel = *anyBarrel();
    const double tilt = *anyTilt();
    const double low = *part();
    const double high = *part();
    RC_PRE(high - low > 1e-7);
    RC_ASSERT(*lyingVolume(barrel, low * barrel.bilge, tilt) <
              *lyingVolume(barrel, high * barrel.bilge, tilt));
    RC_ASSERT(*standingVolume(barrel, low * barrel.length) <
              *standingVolume(barrel, high * barrel.length));
    RC_ASSERT(*wettedArea(barrel, low * barrel.bilge) < *wettedArea(barrel, high * barrel.bilge));
}

RC_GTEST_PROP(Barrels, AreHalfFullAtHalfTheBilgeHoweverTheyLean, ())
{
    const Barrel barrel = *anyBarrel();
    const double half = fullVolume(barrel)->si() / 2;
    RC_ASSERT(std::abs(lyingVolume(barrel, 0.5 * barrel.bilge, *anyTilt())->si() - half) <=
              1e-9 * half);
    RC_ASSERT(std::abs(standingVolume(barrel, 0.5 * barrel.length)->si() - half) <= 1e-12 * half);
    RC_ASSERT(std::abs(*wettedArea(barrel, 0.5 * barrel.bilge) / *innerArea(barrel) - 0.5) <= 1e-8);
}

RC_GTEST_PROP(Barrels, AreTheSameLeaningEitherWayAndUpsideDown, ())
{
    const Barrel barrel = *anyBarrel();
    const double tilt = *anyTilt();
    const Length dip = *part() * barrel.bilge;
    const Volume volume = *lyingVolume(barrel, dip, tilt);
    RC_ASSERT(volume == *lyingVolume(barrel, dip, -tilt));
    const Volume empty = *lyingVolume(barrel, barrel.bilge - dip, tilt);
    RC_ASSERT(std::abs((volume + empty - *fullVolume(barrel)).si()) <= 1e-13);
}

RC_GTEST_PROP(Barrels, AreEmptyAndFullAtTheEnds, ())
{
    const Barrel barrel = *anyBarrel();
    const Volume full = *fullVolume(barrel);
    RC_ASSERT(*lyingVolume(barrel, Length()) == Volume());
    RC_ASSERT(*lyingVolume(barrel, barrel.bilge) == full);
    RC_ASSERT(*lyingDip(barrel, Volume()) == Length());
    RC_ASSERT(*lyingDip(barrel, full) == barrel.bilge);
    RC_ASSERT(*wettedArea(barrel, Length()) == Area());
    RC_ASSERT(*wettedArea(barrel, barrel.bilge) == *innerArea(barrel));
    RC_ASSERT(*headLevel(barrel, Volume()) == 0);
    RC_ASSERT(*headLevel(barrel, full) == 1);
    RC_ASSERT(*standingVolume(barrel, barrel.length) == full);
}

// A cylinder between the head's and the bilge's, and no profile is far from the others.
RC_GTEST_PROP(Barrels, LieBetweenTheirCylinders, ())
{
    const Barrel barrel = *anyBarrel();
    const double length = barrel.length.si() * barrel.calibration * std::numbers::pi / 4;
    const double full = fullVolume(barrel)->si();
    const double bilge = barrel.bilge.si();
    const double head = barrel.head.si();
    RC_ASSERT(full <= length * bilge * bilge * (1 + 1e-14));
    RC_ASSERT(full >= length * head * head * (1 - 1e-14));
}

// Simpson's rule over the sections shares the sections with the code, not the integration.
RC_GTEST_PROP(Barrels, AgreeWithManyThinSlicesOfAParabola, ())
{
    Barrel barrel = *anyBarrel();
    barrel.profile = Profile::Parabola;
    const double slope = std::tan(*between(-0.17, 0.17));
    const double dip = *part() * barrel.bilge.si();
    const double R = barrel.bilge.si() / 2;
    const double l = barrel.length.si() / 2;
    constexpr int slices = 20'000;
    double sum = 0;
    for (int i = 0; i < slices; ++i) {
        const double x = l * ((2 * i + 1.0) / slices - 1);
        const double r = R - (barrel.bilge - barrel.head).si() / 2 * (x / l) * (x / l);
        const double y = std::clamp((dip - R + x * slope) / r, -1.0, 1.0);
        sum += r * r * (std::acos(-y) + y * std::sqrt(1 - y * y));
    }
    const double volume = barrel.calibration * sum * 2 * l / slices;
    RC_ASSERT(std::abs(volume - lyingVolume(barrel, metres(dip), std::atan(slope))->si()) <=
              2e-7 * fullVolume(barrel)->si());
}

RC_GTEST_PROP(DipTable, RisesFromEmptyToFullAndAgreesWithEachDip, ())
{
    const Barrel barrel = *anyBarrel();
    const Length step = *between(0.002, 0.1) * barrel.bilge;
    std::vector<DipRow> rows(*dipTableRows(barrel, step));
    RC_ASSERT(dipTable(barrel, step, rows).has_value());
    RC_ASSERT(rows.front().volume == Volume());
    RC_ASSERT(rows.back().dip == barrel.bilge);
    RC_ASSERT(rows.back().volume == *fullVolume(barrel));
    for (std::size_t i = 1; i < rows.size(); ++i) {
        RC_ASSERT(rows[i - 1].dip < rows[i].dip);
        RC_ASSERT(rows[i - 1].volume < rows[i].volume);
        RC_ASSERT(rows[i].volume == *lyingVolume(barrel, rows[i].dip));
    }
}

RC_GTEST_PROP(HeadLevel, NeverFallsAsTheBarrelFills, ())
{
    const Barrel barrel = *anyBarrel();
    const Volume full = *fullVolume(barrel);
    const double low = *part();
    const double high = *part();
    RC_PRE(low < high);
    RC_ASSERT(*headLevel(barrel, low * full) <= *headLevel(barrel, high * full));
    RC_ASSERT(std::abs(*headLevel(barrel, 0.5 * full) - 0.5) < 1e-9);
}

RC_GTEST_PROP(Measuring, CalibratesAndScalesToTheVolumeAskedFor, ())
{
    const Barrel barrel = *anyBarrel();
    Barrel plain = barrel;
    plain.calibration = 1;
    const Volume full = *between(0.81, 1.24) * *fullVolume(plain);
    RC_ASSERT(std::abs(*fullVolume(*calibrated(barrel, full)) / full - 1) < 1e-14);
    const Volume wanted = litres(*between(1, 1000));
    const auto similar = similarTo(wanted);
    if (similar) {  // the smallest have no measures of a barrel
        RC_ASSERT(std::abs(*fullVolume(*similar) / wanted - 1) < 1e-13);
    }
    RC_ASSERT((similar.has_value() || wanted < litres(1.5)));
}

RC_GTEST_PROP(Barrels, AnswerEveryDoubleWithAFiniteNumberOrAnError, ())
{
    const Barrel barrel{*anyProfile(), metres(*anyDouble()), metres(*anyDouble()),
                        metres(*anyDouble()), *anyDouble()};
    const Barrel sound = *anyBarrel();
    const double any = *anyDouble();
    const double tilt = *anyDouble();
    for (const Barrel& one : {barrel, sound}) {
        RC_ASSERT(isFiniteOrError(fullVolume(one)));
        RC_ASSERT(isFiniteOrError(innerArea(one)));
        RC_ASSERT(isFiniteOrError(wettedArea(one, metres(any))));
        RC_ASSERT(isFiniteOrError(lyingVolume(one, metres(any), tilt)));
        RC_ASSERT(isFiniteOrError(lyingDip(one, cubicMetres(any), tilt)));
        RC_ASSERT(isFiniteOrError(standingVolume(one, metres(any))));
        RC_ASSERT(isFiniteOrError(standingDepth(one, cubicMetres(any))));
        const auto level = headLevel(one, cubicMetres(any));
        RC_ASSERT((!level || (*level >= 0 && *level <= 1)));
        const auto other = calibrated(one, cubicMetres(any), metres(*anyDouble()));
        RC_ASSERT((!other || checkBarrel(*other).has_value()));
    }
    const auto measured =
        barrelFromOutside({metres(any), metres(*anyDouble()), metres(*anyDouble()),
                           metres(*anyDouble()), metres(*anyDouble()), metres(*anyDouble())});
    RC_ASSERT((!measured || checkBarrel(*measured).has_value()));
}

}  // namespace spile::vessel
