#include "core/vessel/barrel.hpp"

#include "core/units/checks.hpp"
#include "core/vessel/root.hpp"
#include "core/vessel/shape.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

namespace spile::vessel {

namespace {

using std::numbers::pi;

// Limits are compared in metres, so that the bilge itself is never a digit too long, and told in
// millimetres.
Result<void> needLength(std::string_view name, Length value, Length least, Length most)
{
    if (!(value >= least && value <= most)) {
        return failBetween(name, inMillimetres(value), inMillimetres(least), inMillimetres(most));
    }
    return {};
}

Result<void> needVolume(Volume value, Volume least, Volume most)
{
    if (!(value >= least && value <= most)) {
        return failBetween("volume_l", inLitres(value), inLitres(least), inLitres(most));
    }
    return {};
}

Result<double> slopeOf(double tiltRadians)
{
    SPILE_TRY(needBetween("tilt_rad", tiltRadians, -tiltMost, tiltMost));
    return std::tan(std::abs(tiltRadians));
}

// The barrel is its own mirror image: above the axis the empty part is computed instead.
double volumeAt(const Shape& shape, double dip, double slope)
{
    const double R = shape.bilgeRadius();
    return dip <= R ? shape.volumeBelow(dip, slope)
                    : shape.fullVolume() - shape.volumeBelow(2 * R - dip, slope);
}

// The dip of a volume of at most half the barrel. The square root of the volume is nearly straight
// in the dip, where the volume itself starts out flat.
double dipOf(const Shape& shape, double volume, double slope)
{
    const double R = shape.bilgeRadius();
    const double sought = std::sqrt(volume);
    const double start = R * sought / std::sqrt(shape.fullVolume() / 2);
    return rootOfRising(0, R, start, [&](double dip) {
        const double root = std::sqrt(shape.volumeBelow(dip, slope));
        return Rise{root - sought, shape.surfaceArea(dip, slope) / (2 * root)};
    });
}

}  // namespace

Result<void> checkBarrel(const Barrel& barrel)
{
    const Length least = millimetres(100);
    const Length most = metres(3);
    SPILE_TRY(needLength("length_mm", barrel.length, least, most));
    SPILE_TRY(needLength("bilge_mm", barrel.bilge, least, most));
    SPILE_TRY(needLength("head_mm", barrel.head, std::max(Length(), barrel.bilge - barrel.length),
                         barrel.bilge));
    return needBetween("calibration", barrel.calibration, 0.5, 2);
}

Result<Volume> fullVolume(const Barrel& barrel)
{
    SPILE_TRY(checkBarrel(barrel));
    return cubicMetres(barrel.calibration * Shape(barrel).fullVolume());
}

Result<Area> innerArea(const Barrel& barrel)
{
    SPILE_TRY(checkBarrel(barrel));
    const Shape shape(barrel);
    return squareMetres(shape.staveArea() + 2 * pi * shape.headRadius() * shape.headRadius());
}

Result<Area> wettedArea(const Barrel& barrel, Length dip)
{
    SPILE_ASSIGN(whole, innerArea(barrel));
    SPILE_TRY(needLength("dip_mm", dip, Length(), barrel.bilge));
    const Shape shape(barrel);
    const double R = shape.bilgeRadius();
    const double lower = std::min(dip.si(), 2 * R - dip.si());
    const Area wet = squareMetres(shape.wetStaveArea(lower) +
                                  2 * segmentArea(shape.headRadius(), lower - shape.sagitta()));
    return dip.si() <= R ? wet : whole - wet;
}

Result<Volume> lyingVolume(const Barrel& barrel, Length dip, double tiltRadians)
{
    SPILE_TRY(checkBarrel(barrel));
    SPILE_TRY(needLength("dip_mm", dip, Length(), barrel.bilge));
    SPILE_ASSIGN(slope, slopeOf(tiltRadians));
    return cubicMetres(barrel.calibration * volumeAt(Shape(barrel), dip.si(), slope));
}

Result<Length> lyingDip(const Barrel& barrel, Volume volume, double tiltRadians)
{
    SPILE_TRY(checkBarrel(barrel));
    SPILE_ASSIGN(slope, slopeOf(tiltRadians));
    const Shape shape(barrel);
    const double full = shape.fullVolume();
    const double least = shape.volumeBelow(0, slope);
    const double calibration = barrel.calibration;
    const Volume empty = cubicMetres(calibration * least);
    const Volume most = cubicMetres(calibration * (full - least));
    SPILE_TRY(needVolume(volume, empty, most));
    if (volume == empty || volume == most) {  // the division below would round
        return volume == empty ? Length() : barrel.bilge;
    }
    const double held = std::clamp(volume.si() / calibration, least, full - least);
    const double lower = std::min(held, full - held);
    const double dip = lower > least ? dipOf(shape, lower, slope) : 0;
    return metres(held <= full - held ? dip : 2 * shape.bilgeRadius() - dip);
}

Result<Volume> standingVolume(const Barrel& barrel, Length depth)
{
    SPILE_TRY(checkBarrel(barrel));
    SPILE_TRY(needLength("depth_mm", depth, Length(), barrel.length));
    const Shape shape(barrel);
    const double l = shape.halfLength();
    return cubicMetres(barrel.calibration * (shape.volumeTo(l) + shape.volumeTo(depth.si() - l)));
}

Result<Length> standingDepth(const Barrel& barrel, Volume volume)
{
    SPILE_TRY(checkBarrel(barrel));
    const Shape shape(barrel);
    const double full = shape.fullVolume();
    SPILE_TRY(needVolume(volume, Volume(), cubicMetres(barrel.calibration * full)));
    const double l = shape.halfLength();
    const double sought = std::min(volume.si() / barrel.calibration, full) - full / 2;
    const double x = rootOfRising(-l, l, l * sought / (full / 2), [&](double at) {
        const double r = shape.radius(at);
        return Rise{shape.volumeTo(at) - sought, pi * r * r};
    });
    return metres(std::clamp(x + l, 0.0, 2 * l));
}

Result<double> headLevel(const Barrel& barrel, Volume held)
{
    SPILE_ASSIGN(dip, lyingDip(barrel, held));
    const Shape shape(barrel);
    const double above = dip.si() - shape.sagitta();
    const double diameter = 2 * shape.headRadius();
    if (!(above > 0)) {
        return 0.0;
    }
    return above < diameter ? above / diameter : 1.0;
}

Result<std::size_t> dipTableRows(const Barrel& barrel, Length step)
{
    SPILE_TRY(checkBarrel(barrel));
    SPILE_TRY(needLength("step_mm", step, millimetres(0.1), barrel.bilge));
    // A last step of a billionth is the rounding of a bilge that is a whole number of steps.
    return static_cast<std::size_t>(std::ceil(barrel.bilge / step - 1e-9)) + 1;
}

Result<void> dipTable(const Barrel& barrel, Length step, std::span<DipRow> rows)
{
    SPILE_ASSIGN(count, dipTableRows(barrel, step));
    if (rows.size() != count) {
        return fail(ErrorCode::OutOfRange, "rows", std::to_string(rows.size()),
                    std::to_string(count));
    }
    const Shape shape(barrel);
    for (std::size_t i = 0; i + 1 < count; ++i) {
        const Length dip = static_cast<double>(i) * step;
        rows[i] = {dip, cubicMetres(barrel.calibration * volumeAt(shape, dip.si(), 0))};
    }
    rows[count - 1] = {barrel.bilge, cubicMetres(barrel.calibration * shape.fullVolume())};
    return {};
}

}  // namespace spile::vessel
