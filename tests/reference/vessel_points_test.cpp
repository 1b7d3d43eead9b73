// Sources: each point of vessel.csv names its own; most are geometry, evaluated outside the project
// by integrating the sections numerically. Tolerances: half a unit of the last digit printed, or
// what the derivation of the measure claims.
#include "core/vessel/measuring.hpp"
#include "core/vessel/presets.hpp"
#include "tests/support/check_points.hpp"

#include <algorithm>
#include <gtest/gtest.h>
#include <numbers>

namespace spile::vessel {

namespace {

using support::checkPoints;
using support::Formula;
using support::Point;
using support::valueOf;

double in(const Point& point, const std::string& name) { return point.input.at(name); }

Length lengthOf(const Point& point, const std::string& name)
{
    return millimetres(in(point, name));
}

Barrel barrelOf(const Point& point)
{
    static const std::map<std::string, Profile> profiles{{"parabola", Profile::Parabola},
                                                         {"ellipse", Profile::Ellipse},
                                                         {"circle", Profile::Circle}};
    return {profiles.at(point.word.at("profile")), lengthOf(point, "l_mm"),
            lengthOf(point, "bilge_mm"), lengthOf(point, "head_mm"), 1};
}

Preset presetOf(const Point& point)
{
    const auto all = presets();
    const auto found = std::find_if(all.begin(), all.end(), [&](const Preset& preset) {
        return preset.name == point.word.at("name");
    });
    return found != all.end() ? *found : Preset{};
}

double litresOf(const Result<Volume>& volume) { return valueOf(volume.map(inLitres)); }
double squareMetresOf(const Result<Area>& area) { return valueOf(area.map(inSquareMetres)); }

double lyingLitres(const Point& point)
{
    const double degrees = point.input.contains("tilt_deg") ? in(point, "tilt_deg") : 0;
    return litresOf(
        lyingVolume(barrelOf(point), lengthOf(point, "dip_mm"), degrees * std::numbers::pi / 180));
}

double ullageLitres(const Point& point)
{
    const Barrel barrel = barrelOf(point);
    return litresOf(fullVolume(barrel)) -
           litresOf(lyingVolume(barrel, barrel.bilge - lengthOf(point, "ullage_mm")));
}

double wettedPart(const Point& point)
{
    const Barrel barrel = barrelOf(point);
    const auto dip = lyingDip(barrel, in(point, "part") * fullVolume(barrel).value());
    return squareMetresOf(wettedArea(barrel, dip.value())) / squareMetresOf(innerArea(barrel));
}

double outsideLitres(const Point& point)
{
    OutsideMeasures outside;
    outside.length = lengthOf(point, "length_mm");
    outside.bilgeGirth = lengthOf(point, "girth_mm");
    outside.chimeGirth = lengthOf(point, "chime_girth_mm");
    outside.stave = lengthOf(point, "stave_mm");
    if (point.input.contains("chime_mm")) {
        outside.chime = lengthOf(point, "chime_mm");
        outside.headThickness = lengthOf(point, "head_thickness_mm");
    }
    return litresOf(barrelFromOutside(outside).and_then(fullVolume));
}

}  // namespace

TEST(Barrels, MatchPublishedPoints)
{
    checkPoints(
        "vessel.csv",
        {{"full_l", [](const Point& p) { return litresOf(fullVolume(barrelOf(p))); }},
         {"lying_l", lyingLitres},
         {"ullage_l", ullageLitres},
         {"standing_l",
          [](const Point& p) {
              return litresOf(standingVolume(barrelOf(p), lengthOf(p, "depth_mm")));
          }},
         {"inner_area_m2", [](const Point& p) { return squareMetresOf(innerArea(barrelOf(p))); }},
         {"preset_area_m2",
          [](const Point& p) { return squareMetresOf(innerArea(presetOf(p).barrel)); }},
         {"preset_l", [](const Point& p) { return litresOf(fullVolume(presetOf(p).barrel)); }},
         {"wetted_part", wettedPart},
         {"outside_l", outsideLitres}});
}

}  // namespace spile::vessel
