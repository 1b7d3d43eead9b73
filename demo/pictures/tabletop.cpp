#include "demo/pictures/tabletop.hpp"

#include <cmath>
#include <limits>

namespace spile::demo {

static constexpr double backWall = 430.0;  // where the sweep stands upright [mm]
static constexpr double sweepRadius = 170.0;
static constexpr double cardWidth = 50.0;
static constexpr double cardHeight = 100.0;
static constexpr double cardFrame = 3.5;
static constexpr double reflectorGap = 165.0;
static constexpr double reflectorLight = 3.6;
static constexpr double groundGrey = 0.36;

static constexpr Rgb whitePatch{0.84, 0.84, 0.83};
static constexpr Rgb greyPatch{0.18, 0.18, 0.18};
static constexpr Rgb cardStock{0.085, 0.086, 0.090};

Tabletop::Tabletop(SeededRandom& random, const GlassShape& glass, const BeerColour& beer,
                   double gradient)
    : glass_(glass),
      beer_(beer),
      cardX_(glass.x + glass.radius + between(random, 17.0, 24.0)),
      cardZ_(between(random, 0.0, 22.0))
{
    light_.lamp = {between(random, -430.0, -250.0), between(random, -640.0, -480.0),
                   between(random, -320.0, -120.0)};
    light_.unevenness = gradient;
    light_.reference = length(light_.lamp);
    light_.lampColour = mix(Rgb{1.0, 0.985, 0.95}, Rgb{1.0, 0.94, 0.84}, random.unit());
    light_.roomColour = {0.34, 0.345, 0.36};
}

/// Return what the card gives back, as light, at a place from its left upper corner.
Seen Tabletop::card(double u, double v, const Noise& noise)
{
    const double side = cardWidth - 2.0 * cardFrame;
    const double second = cardHeight - cardFrame - side;
    const bool within = u > cardFrame && u < cardFrame + side;
    const double mottle = 0.97 + 0.06 * noise.fractal(u / 4.0, v / 4.0, 3);
    if (within && v > cardFrame && v < cardFrame + side) {
        return {mottle * whitePatch, 2};
    }
    if (within && v > second && v < second + side) {
        return {mottle * greyPatch, 3};
    }
    return {mottle * cardStock, 4};
}

/// Return what the glass and its beer leave of the lamp at a place: a coloured glow inside the
/// shadow, since a round glass gathers the light, and dark flanks that pay for it.
Rgb Tabletop::lampThrough(Vec3 place) const
{
    const Vec3 way = light_.lamp - place;
    const double flat = way.x * way.x + way.z * way.z;
    const double t = std::max(0.0, ((glass_.x - place.x) * way.x - place.z * way.z) / flat);
    const double miss = flatLength(place.x + t * way.x - glass_.x, place.z + t * way.z);
    const double height = -(place.y + t * way.y);
    const double penumbra = 1.5 + 9.0 * t;
    const double cover = (1.0 - ramp(glass_.radius - penumbra, glass_.radius + 0.5, miss)) *
                         (1.0 - ramp(glass_.height - 2.0 * penumbra, glass_.height, height));
    if (cover <= 0.0) {
        return {1.0, 1.0, 1.0};
    }
    const double offAxis = std::min(miss / glass_.radius, 1.0);
    const double chord = 2.0 * glass_.bore() * std::sqrt(1.0 - 0.9 * offAxis * offAxis);
    const double gathered = 0.20 + 0.95 * (1.0 - ramp(0.0, 0.85, offAxis));
    const double beside = 1.0 - ramp(glass_.level - 3.0, glass_.level + 3.0, height);
    const double emptyGlass = 0.80 - 0.45 * ramp(0.80, 0.97, offAxis);
    const Rgb tinted =
        mix(Rgb{emptyGlass, emptyGlass, emptyGlass}, gathered * beer_.passed(0.8 * chord), beside);
    return mix({1.0, 1.0, 1.0}, tinted, cover);
}

double Tabletop::lampPastCard(Vec3 place) const
{
    const double t = (cardZ_ - place.z) / (light_.lamp.z - place.z);
    if (t <= 0.0 || t >= 1.0) {
        return 1.0;
    }
    const double x = place.x + t * (light_.lamp.x - place.x) - cardX_;
    const double y = place.y + t * (light_.lamp.y - place.y);
    const double soft = 0.5 + 16.0 * t;
    const double across =
        ramp(-soft, soft, x) * (1.0 - ramp(cardWidth - soft, cardWidth + soft, x));
    return 1.0 - across * (1.0 - ramp(cardHeight - soft, cardHeight + soft, -y));
}

/// The room behind the camera, as a glass mirrors it: dim.
static Rgb room(Vec3 ray)
{
    const double dim = 0.10 + 0.10 * std::max(-ray.y, 0.0);
    return {dim, dim, dim};
}

/// Return the share of a ray that ends on the white reflector, which stands at the glass's left
/// just out of the picture: the stripe that it leaves on a glass is what makes it look like one.
double Tabletop::reflector(Vec3 from, Vec3 ray) const
{
    const double t = (glass_.x - reflectorGap - from.x) / ray.x;
    if (ray.x >= 0.0 || t <= 0.0) {
        return 0.0;
    }
    const Vec3 met = from + t * ray;
    return ramp(-175.0, -160.0, met.z) * (1.0 - ramp(-75.0, -55.0, met.z)) *
           ramp(2.0, 70.0, -met.y) * (1.0 - ramp(185.0, 200.0, -met.y));
}

Seen Tabletop::beyond(Vec3 from, Vec3 ray, const Noise& noise) const
{
    constexpr double never = std::numeric_limits<double>::max();
    const auto reach = [](double gap, double speed) {
        const double t = gap / speed;
        return speed != 0.0 && t > 1e-6 ? t : never;
    };
    const double toCard = reach(cardZ_ - from.z, ray.z);
    const double toGround = reach(-from.y, ray.y);
    const double toWall = reach(backWall - from.z, ray.z);

    const Vec3 onCard = from + toCard * ray;
    if (toCard < std::min(toGround, toWall) && onCard.y > -cardHeight && onCard.x > cardX_ &&
        onCard.x < cardX_ + cardWidth) {
        Seen met = card(onCard.x - cardX_, onCard.y + cardHeight, noise);
        met.light = light_.on(met.light, onCard, {0.0, 0.0, -1.0}, 0.9, 1.0);
        return met;
    }
    if (std::min(toGround, toWall) == never) {
        return {room(ray)};
    }
    const Vec3 place = from + std::min(toGround, toWall) * ray;
    if (place.z < -900.0) {
        return {room(ray)};
    }
    // The sweep turns from lying to standing over its radius, which only the normal shows.
    const double upright = toWall < toGround
                               ? 0.5 + 0.5 * ramp(0.0, sweepRadius, -place.y)
                               : 0.5 * ramp(backWall - sweepRadius, backWall, place.z);
    const Vec3 normal = unitOf({0.0, -(1.0 - upright), -upright});
    const double fromGlass = flatLength(place.x - glass_.x, place.z) - glass_.radius;
    const double open = 1.0 - 0.55 * std::exp(-std::max(fromGlass, 0.0) / 7.0) * (1.0 - upright);
    const double fleck = noise.fractal(place.x / 1.3, (place.z + place.y) / 1.3, 2) - 0.5;
    const double cloud = noise.fractal(place.x / 120.0, (place.z + place.y) / 120.0, 3) - 0.5;
    const double grey = groundGrey * (1.0 + 0.10 * fleck + 0.10 * cloud);
    const Rgb lamp = lampPastCard(place) * lampThrough(place);
    const Rgb matt{grey, grey, grey};
    const Rgb dark = (open * matt) * light_.roomColour;
    return {dark + light_.on(matt, place, normal, 0.0, 1.0) * lamp, 1};
}

Seen Tabletop::seen(Vec3 from, Vec3 ray, const Noise& noise) const
{
    const Seen met = beyond(from, ray, noise);
    const double share = reflector(from, ray);
    return {mix(met.light, {reflectorLight, reflectorLight, reflectorLight}, share), met.subject};
}

}  // namespace spile::demo
