#pragma once

#include "demo/pictures/beer.hpp"
#include "demo/pictures/camera.hpp"
#include "demo/pictures/light.hpp"
#include "demo/pictures/noise.hpp"
#include "demo/pictures/vec3.hpp"

namespace spile::demo {

/// The glass's sizes and place [mm]: it stands upright on y = 0, and y points down.
struct GlassShape {
    double x = -34.0;  // of its axis; z = 0
    double radius = 37.0;
    double wall = 2.3;
    double base = 9.0;
    double height = 122.0;
    double level = 80.0;  // of the beer, above the table

    [[nodiscard]] double bore() const { return radius - wall; }
};

/// All but the glass: the grey sweep of the ground, the card with the two patches, the shadows,
/// and the room that shows in reflections.
class Tabletop {
public:
    Tabletop(SeededRandom& random, const GlassShape& glass, const BeerColour& beer,
             double gradient);

    /// Return the light that comes along a ray from whatever it meets outside the glass.
    [[nodiscard]] Seen seen(Vec3 from, Vec3 ray, const Noise& noise) const;
    [[nodiscard]] const Light& light() const { return light_; }

private:
    [[nodiscard]] static Seen card(double u, double v, const Noise& noise);
    [[nodiscard]] Rgb lampThrough(Vec3 place) const;
    [[nodiscard]] Seen beyond(Vec3 from, Vec3 ray, const Noise& noise) const;
    [[nodiscard]] double reflector(Vec3 from, Vec3 ray) const;
    [[nodiscard]] double lampPastCard(Vec3 place) const;

    GlassShape glass_;
    BeerColour beer_;
    Light light_;
    double cardX_;
    double cardZ_;
};

}  // namespace spile::demo
