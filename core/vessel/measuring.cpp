#include "core/vessel/measuring.hpp"

#include "core/units/checks.hpp"

#include <cmath>
#include <numbers>

namespace spile::vessel {

namespace {

Result<void> needMillimetres(std::string_view name, Length value, double least, double most)
{
    return needBetween(name, inMillimetres(value), least, most);
}

}  // namespace

Result<Barrel> barrelFromOutside(const OutsideMeasures& outside)
{
    SPILE_TRY(needMillimetres("bilge_girth_mm", outside.bilgeGirth, 300, 9500));
    SPILE_TRY(needMillimetres("chime_girth_mm", outside.chimeGirth, 300, 9500));
    SPILE_TRY(needMillimetres("length_over_all_mm", outside.length, 100, 3500));
    SPILE_TRY(needMillimetres("stave_mm", outside.stave, 5, 80));
    SPILE_TRY(needMillimetres("chime_mm", outside.chime, 0, 150));
    SPILE_TRY(needMillimetres("head_thickness_mm", outside.headThickness, 5, 100));

    Barrel barrel;
    barrel.length = outside.length - 2 * outside.chime - 2 * outside.headThickness;
    barrel.bilge = (1 / std::numbers::pi) * outside.bilgeGirth - 2 * outside.stave;
    const double part = barrel.length / outside.length;
    const Length narrowing = (1 / std::numbers::pi) * (outside.bilgeGirth - outside.chimeGirth);
    barrel.head = barrel.bilge - part * part * narrowing;
    SPILE_TRY(checkBarrel(barrel));
    return barrel;
}

Result<Barrel> calibrated(const Barrel& barrel, Volume full, std::optional<Length> fullDip)
{
    Barrel result = barrel;
    result.bilge = fullDip.value_or(barrel.bilge);
    result.calibration = 1;
    SPILE_ASSIGN(model, fullVolume(result));
    SPILE_TRY(needBetween("full_volume_l", inLitres(full), 0.8 * inLitres(model),
                          1.25 * inLitres(model)));
    result.calibration = full / model;
    return result;
}

Result<Barrel> scaledTo(const Barrel& barrel, Volume full)
{
    SPILE_ASSIGN(model, fullVolume(barrel));
    SPILE_TRY(needPositive("full_volume_l", inLitres(full)));
    const double scale = std::cbrt(full / model);
    Barrel result = barrel;
    result.length = scale * barrel.length;
    result.bilge = scale * barrel.bilge;
    result.head = scale * barrel.head;
    SPILE_TRY(checkBarrel(result));
    return result;
}

}  // namespace spile::vessel
