#include "demo/pictures/scribbles.hpp"

#include "demo/pictures/vec3.hpp"

#include <array>
#include <cmath>

namespace spile::demo {

static constexpr double dotsPerMm = 2.0;
static constexpr double burntY = -172.0;
static constexpr double nailRadius = 4.2;

static constexpr Rgb burn{0.030, 0.020, 0.014};
static constexpr Rgb chalkWhite{0.55, 0.55, 0.53};
static constexpr Rgb steel{0.36, 0.36, 0.37};

Scribbles::Scribbles(SeededRandom& random)
    : burnt_(200, 200),
      chalk_(300, 170),
      burntX_(between(random, -50.0, 50.0)),
      chalkX_(between(random, -150.0, -70.0)),
      chalkY_(between(random, 110.0, 140.0)),
      nailX_(between(random, -20.0, 60.0)),
      nailY_(between(random, 88.0, 120.0)),
      run_(between(random, 0.35, 1.0))
{
    drawSign(random);
    drawTally(random);
}

/// Draw a cooper's sign: a leaning square with dots in it by chance, as no real one need look.
void Scribbles::drawSign(SeededRandom& random)
{
    constexpr double middle = 100.0;
    constexpr double reach = 78.0;
    constexpr std::array<std::array<double, 2>, 5> corners = {
        {{0.0, -reach}, {reach, 0.0}, {0.0, reach}, {-reach, 0.0}, {0.0, -reach}}};
    for (std::size_t i = 1; i < corners.size(); ++i) {
        drawStroke(burnt_, middle + corners[i - 1][0], middle + corners[i - 1][1],
                   middle + corners[i][0], middle + corners[i][1], 8.0);
    }
    constexpr double step = 19.0;
    for (int row = -1; row <= 1; ++row) {
        for (int column = -1; column <= 1; ++column) {
            if (random.unit() < 0.45) {
                const double x = middle + step * (row + column);
                const double y = middle + step * (row - column);
                drawStroke(burnt_, x, y, x, y, 13.0);
            }
        }
    }
}

/// Draw strokes by a quick hand: four upright, the fifth across them.
void Scribbles::drawTally(SeededRandom& random)
{
    const int drawn = static_cast<int>(between(random, 0.0, 9.0));
    const int count = drawn < 3 ? 0 : drawn;
    const auto shaky = [&random] { return between(random, -7.0, 7.0); };
    double x = 40.0;
    for (int i = 1; i <= count; ++i) {
        if (i % 5 == 0) {
            drawStroke(chalk_, x - 112.0 + shaky(), 120.0 + shaky(), x - 14.0 + shaky(),
                       55.0 + shaky(), 6.0);
            x += 18.0;
        } else {
            drawStroke(chalk_, x + 0.6 * shaky(), 45.0 + shaky(), x + shaky(), 130.0 + shaky(),
                       6.0);
            x += 25.0;
        }
    }
}

Rgb Scribbles::nail(Rgb wood, double x, double y, const Light& light, const Noise& noise) const
{
    const double dx = x - nailX_;
    const double dy = y - nailY_;
    const double far = flatLength(dx, dy);
    // What was drawn here has run down, widening and fading.
    const double sway = 7.0 * (noise.at(y / 40.0, nailX_) - 0.5);
    const double width = 4.0 + 0.035 * std::max(dy, 0.0) + 3.0 * noise.at(y / 9.0, 3.0);
    const double across = std::abs(dx - (dy > 0.0 ? sway * std::min(dy / 40.0, 1.0) : 0.0));
    const double below = dy > 0.0 ? std::exp(-dy / (60.0 + 180.0 * run_)) : 0.0;
    const double trace = std::max(below * (1.0 - ramp(0.55, 1.35, across / width)),
                                  1.0 - ramp(5.0, 17.0, far + 8.0 * noise.at(x / 7.0, y / 7.0)));
    wood = mix(wood, Rgb{0.30, 0.22, 0.17} * wood, run_ * trace);

    const Vec3 toLamp = unitOf(light.lamp - Vec3{x, y, 22.0});
    const double shadow =
        1.0 - ramp(-1.0, 1.0, flatLength(dx + 3.0 * toLamp.x, dy + 3.0 * toLamp.y) - nailRadius);
    wood = (1.0 - 0.7 * shadow) * wood;
    if (far > nailRadius) {
        return wood;
    }
    const double rise = 0.8 / nailRadius;
    const Vec3 normal = unitOf({rise * dx, rise * dy, -1.0});
    const Vec3 place{x, y, 20.0};
    return light.on(steel, place, normal, 1.0, 1.0) +
           (0.5 * light.glint(place, normal, {0.0, 0.0, -1.0}, 30.0)) * light.lampColour;
}

Rgb Scribbles::over(Rgb wood, double x, double y, const Light& light, const Noise& noise) const
{
    const double sign =
        burnt_.sample((x - burntX_ + 50.0) * dotsPerMm, (y - burntY + 50.0) * dotsPerMm);
    if (sign > 0.0) {
        const double ragged = noise.fractal(x / 9.0, y / 9.0, 4);
        wood = mix(wood, burn * wood + 0.12 * wood, sign * ramp(0.05, 0.5, ragged));
    }
    const double chalk = chalk_.sample((x - chalkX_) * dotsPerMm, (y - chalkY_) * dotsPerMm);
    if (chalk > 0.0) {
        const Rgb white = light.on(chalkWhite, {x, y, 24.0}, {0.0, 0.0, -1.0}, 1.0, 1.0);
        const double rubbed = noise.fractal(x / 1.2, y / 1.2, 2);
        wood = mix(wood, white, 0.75 * chalk * ramp(0.22, 0.60, rubbed));
    }
    const bool nearNail = std::abs(x - nailX_) < 30.0 && y > nailY_ - 20.0;
    return nearNail ? nail(wood, x, y, light, noise) : wood;
}

}  // namespace spile::demo
