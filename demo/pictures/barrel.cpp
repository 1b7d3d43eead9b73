#include "demo/pictures/barrel.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <numbers>
#include <optional>

namespace spile::demo {

static constexpr double flare = 0.13;        // how much the side widens towards the bilge
static constexpr double sideLength = 320.0;  // beyond it the barrel is lost in the dark [mm]
static constexpr double hoopWidth = 38.0;
static constexpr double secondHoop = 105.0;
static constexpr double fullTurn = 2.0 * std::numbers::pi;

static constexpr Rgb steel{0.078, 0.077, 0.076};
static constexpr Rgb rustBrown{0.16, 0.072, 0.030};
static constexpr Rgb char0{0.018, 0.014, 0.012};
static constexpr Rgb tideBrown{0.55, 0.36, 0.24};

Barrel::Barrel(SeededRandom& random)
    : head_(random, headRadius),
      scorchX_(between(random, -1.0, 1.0) * headRadius),
      scorchY_(between(random, -1.0, 1.0) * headRadius),
      scorch_(between(random, 0.35, 1.0)),
      tide_(between(random, 0.3, 1.0)),
      rust_(between(random, 0.2, 0.9))
{
    double angle = 0.0;
    while (angle < fullTurn) {
        staves_.push_back(
            {angle, between(random, 0.62, 1.0), between(random, -0.8, 0.8), OakBoard(random)});
        angle += between(random, 0.15, 0.32);
    }
}

static std::optional<Vec3> meetPlane(Vec3 from, Vec3 ray, double z)
{
    if (ray.z <= 1e-6) {
        return std::nullopt;
    }
    return from + ((z - from.z) / ray.z) * ray;
}

/// Find the nearer (or the farther) meeting with the cone of radius `radius` + `widening` * z.
static std::optional<Vec3> meetCone(Vec3 from, Vec3 ray, double radius, double widening,
                                    bool nearer)
{
    const double here = radius + widening * from.z;
    const double a = ray.x * ray.x + ray.y * ray.y - widening * widening * ray.z * ray.z;
    const double b = from.x * ray.x + from.y * ray.y - widening * ray.z * here;
    const double c = from.x * from.x + from.y * from.y - here * here;
    const double root = b * b - a * c;
    if (root < 0.0 || std::abs(a) < 1e-12) {
        return std::nullopt;
    }
    const double t = (-b + (nearer ? -1.0 : 1.0) * std::sqrt(root)) / a;
    if (t <= 0.0) {
        return std::nullopt;
    }
    return from + t * ray;
}

Hit Barrel::meet(Vec3 from, Vec3 ray)
{
    const auto front = meetPlane(from, ray, 0.0);
    if (!front) {
        return {};
    }
    const double r = flatLength(front->x, front->y);
    if (r > hoopRadius) {
        const auto side = meetCone(from, ray, hoopRadius, flare, true);
        const bool seen = side && side->z > 0.0 && side->z < sideLength;
        return seen ? Hit{Part::Side, *side} : Hit{};
    }
    if (r > chimeRadius) {
        return {Part::HoopEdge, *front};
    }
    if (r > headRadius) {
        return {Part::Chime, *front};
    }
    const Vec3 back = *meetPlane(from, ray, headDepth);
    if (flatLength(back.x, back.y) <= headRadius) {
        return {Part::Head, back};
    }
    const auto wall = meetCone(from, ray, headRadius, 0.0, false);
    return {Part::Wall, wall ? *wall : back};
}

Barrel::StavePlace Barrel::staveAt(double x, double y) const
{
    const double signedAngle = std::atan2(y, x);
    const double angle = signedAngle < 0.0 ? signedAngle + fullTurn : signedAngle;
    const auto next =
        std::upper_bound(staves_.begin(), staves_.end(), angle,
                         [](double value, const Stave& stave) { return value < stave.from; });
    const Stave& stave = *std::prev(next);  // the first begins at 0, so there is one before
    const double end = next == staves_.end() ? fullTurn : next->from;
    const double r = flatLength(x, y);
    const double arc = (angle - stave.from) * r;
    return {&stave, arc, std::min(arc, (end - angle) * r)};
}

Rgb Barrel::headAlbedo(double x, double y, const Noise& noise) const
{
    Rgb wood = head_.albedo(x, y, noise);
    const double r = flatLength(x, y);

    // What seeped at the croze, and hands: the rim of the head is darker and ragged.
    const double ragged = noise.fractal(x / 55.0 + 70.0, y / 55.0, 4);
    const double dirty = ramp(0.42, 1.08, r / headRadius + 1.0 * (ragged - 0.5));
    wood = (1.0 - 0.62 * dirty) * wood;

    // A spill that dried: tinted inside, with a darker tide line.
    const double spill = noise.fractal(x / 190.0 + 11.0, y / 210.0 + 5.0, 4);
    const double line = std::exp(-std::pow((spill - 0.56) / 0.010, 2));
    const double wet = ramp(0.555, 0.60, spill);
    wood = mix(wood, wood * tideBrown, tide_ * std::min(1.0, 0.6 * wet + 0.55 * line));

    // Scorch, as a flame leaves it: strongest at one place, eating along the grain.
    const double far = flatLength(x - scorchX_, y - scorchY_) / 150.0;
    const double burnt = ramp(0.35, 1.1, 1.2 - far + 1.5 * (ragged - 0.5)) * scorch_;
    return mix(wood, char0, 0.8 * burnt);
}

double Barrel::lampOnHead(Vec3 place, const Light& light)
{
    const double share = place.z / (place.z - light.lamp.z);
    const Vec3 crossing = place + share * (light.lamp - place);
    return 1.0 - ramp(headRadius - 5.0, headRadius + 5.0, flatLength(crossing.x, crossing.y));
}

Rgb Barrel::shadedChime(Vec3 place, const Light& light, const Noise& noise) const
{
    const double r = flatLength(place.x, place.y);
    const StavePlace at = staveAt(place.x, place.y);
    // The inner edge is cut to a slope, the outer one is worn round.
    const double lean = 0.95 * ramp(chimeRadius - 4.0, chimeRadius, r) -
                        1.0 * (1.0 - ramp(headRadius + 7.0, headRadius + 12.0, r));
    const Vec3 normal = unitOf({lean * place.x / r, lean * place.y / r, -1.0});
    const Rgb wood = endGrain(at.arc, r - headRadius, at.stave->tone, at.stave->slant, noise);
    const double gap = 1.0 - ramp(0.25, 1.1, at.joint);
    const double dirt = 0.4 * std::exp(-at.joint / 3.0) +
                        0.5 * ramp(0.5, 0.75, noise.fractal(place.x / 40.0, place.y / 40.0, 3));
    return light.on(((1.0 - 0.85 * gap) * (1.0 - dirt)) * wood, place, normal, 1.0, 1.0);
}

Rgb Barrel::shadedSteel(Vec3 place, Vec3 normal, Vec3 ray, const Light& light,
                        const Noise& noise) const
{
    const double arc = std::atan2(place.y, place.x) * hoopRadius;
    const double patch = noise.fractal(arc / 28.0, place.z / 14.0 + 3.0, 4);
    const double rusty = rust_ * ramp(0.48, 0.72, patch);
    const double brushed = 0.85 + 0.3 * noise.at(arc / 22.0, place.z / 0.8);
    const Rgb matt = light.on(mix(brushed * steel, rustBrown, rusty), place, normal, 1.0, 1.0);
    const double glint = (1.0 - rusty) * brushed * light.glint(place, normal, -1.0 * ray, 14.0);
    return matt + (0.17 * glint) * light.lampColour;
}

Rgb Barrel::shadedSide(Vec3 place, Vec3 ray, const Light& light, const Noise& noise) const
{
    const double r = flatLength(place.x, place.y);
    const Vec3 normal = unitOf({place.x / r, place.y / r, -flare});
    const bool first = place.z < hoopWidth;
    const bool second = place.z > secondHoop && place.z < secondHoop + hoopWidth;
    if (first || second) {
        return shadedSteel(place, normal, ray, light, noise);
    }
    const StavePlace at = staveAt(place.x, place.y);
    const double underHoop = std::exp(
        -(place.z < secondHoop ? place.z - hoopWidth : place.z - secondHoop - hoopWidth) / 5.0);
    const double gap = 1.0 - ramp(0.2, 1.0, at.joint);
    const Rgb wood = (0.8 * at.stave->tone) * at.stave->board.albedo(place.z, at.arc - 35.0, noise);
    return light.on(((1.0 - 0.7 * gap) * (1.0 - 0.6 * underHoop)) * wood, place, normal, 0.8, 1.0);
}

Rgb Barrel::shade(const Hit& hit, Vec3 ray, const Light& light, const Noise& noise,
                  const Spin& turn) const
{
    const Vec3 place = hit.place;
    switch (hit.part) {
        case Part::Head: {
            const Vec3 wood = turn.of(place);
            const double r = flatLength(place.x, place.y);
            const double open = 1.0 - 0.62 * std::exp((r - headRadius) / 11.0);
            return light.on(headAlbedo(wood.x, wood.y, noise), place, {0.0, 0.0, -1.0}, open,
                            lampOnHead(place, light) * open);
        }
        case Part::Wall: {
            const double r = flatLength(place.x, place.y);
            const StavePlace at = staveAt(place.x, place.y);
            const Rgb wood = at.stave->board.albedo(place.z, at.arc, noise);
            const double gap = 1.0 - ramp(0.2, 1.0, at.joint);
            const double open = mix(0.85, 0.35, place.z / headDepth);
            return light.on((0.7 * (1.0 - 0.8 * gap)) * wood, place,
                            {-place.x / r, -place.y / r, 0.0}, open, open);
        }
        case Part::Chime:
            return shadedChime(place, light, noise);
        case Part::HoopEdge: {
            const double r = flatLength(place.x, place.y);
            const Vec3 normal = unitOf({0.5 * place.x / r, 0.5 * place.y / r, -1.0});
            const double seam = ramp(0.0, 0.9, r - chimeRadius);
            return (0.2 + 0.8 * seam) * shadedSteel(place, normal, ray, light, noise);
        }
        case Part::Side:
            return shadedSide(place, ray, light, noise);
        case Part::Cellar:
            break;
    }
    return {};
}

}  // namespace spile::demo
