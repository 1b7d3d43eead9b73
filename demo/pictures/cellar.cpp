#include "demo/pictures/cellar.hpp"

#include <cmath>

namespace spile::demo {

static constexpr double wallDepth = 1900.0;  // [mm]
static constexpr double beamDepth = 90.0;
static constexpr double beamTop = 316.0;
static constexpr double beamHeight = 64.0;

static constexpr Rgb stone{0.030, 0.026, 0.022};
static constexpr Rgb mortar{0.019, 0.017, 0.014};
static constexpr Rgb paint{0.030, 0.033, 0.035};
static constexpr Rgb filament{1.0, 0.58, 0.22};

Cellar::Cellar(SeededRandom& random) : post_(between(random, 330.0, 350.0))
{
    const int count = static_cast<int>(between(random, 0.0, 3.0));
    for (int i = 0; i < count; ++i) {
        const double side = random.unit() < 0.5 ? -1.0 : 1.0;
        lamps_.push_back({side * between(random, 700.0, 1500.0), between(random, -1300.0, -650.0),
                          between(random, 28.0, 60.0), between(random, 0.3, 0.8)});
    }
}

/// Return 1 within [from, to], 0 well outside, and what defocus makes of the edges.
static double softBand(double from, double to, double softness, double x)
{
    return ramp(from - softness, from + softness, x) *
           (1.0 - ramp(to - softness, to + softness, x));
}

Rgb Cellar::behind(Vec3 from, Vec3 ray, const Noise& noise) const
{
    if (ray.z <= 0.05) {
        return {};
    }
    const Vec3 wall = from + ((wallDepth - from.z) / ray.z) * ray;
    const double course = wall.y / 150.0 + 40.0;
    const double shifted = wall.x / 330.0 + 40.0 + 0.5 * std::fmod(std::floor(course), 2.0);
    const auto joint = [](double place) {
        const double part = place - std::floor(place);
        return 1.0 - ramp(0.0, 0.34, std::min(part, 1.0 - part));
    };
    const double seams = std::max(joint(course), 0.7 * joint(shifted));
    const double tone = 0.75 + 0.5 * noise.at(std::floor(shifted) * 3.7, std::floor(course) * 5.1);
    Rgb light = tone * (0.6 + 0.8 * noise.fractal(wall.x / 260.0, wall.y / 260.0, 3)) *
                mix(stone, mortar, seams);
    for (const FarLamp& lamp : lamps_) {
        const double far = flatLength(wall.x - lamp.x, wall.y - lamp.y) / lamp.size;
        const double disc = 1.0 - ramp(0.8, 1.2, far);  // out of focus: a disc, not a point
        light = light + (lamp.strength * (disc + 0.16 / (1.0 + 0.09 * far * far))) * filament;
    }

    const Vec3 beam = from + ((beamDepth - from.z) / ray.z) * ray;
    const double lengthways = softBand(beamTop, beamTop + beamHeight, 2.5, beam.y);
    const double upright = softBand(post_ - 18.0, post_ + 18.0, 2.5, std::abs(beam.x));
    if (lengthways + upright <= 0.0) {
        return light;
    }
    const double worn = 0.7 + 0.6 * noise.fractal(beam.x / 50.0, beam.y / 30.0, 3);
    const double edge = std::exp(-std::abs(beam.y - beamTop - 4.0) / 3.0) * lengthways;
    light = mix(light, (0.7 * worn) * paint, upright);
    return mix(light, (worn + 1.2 * edge) * paint, lengthways);
}

}  // namespace spile::demo
