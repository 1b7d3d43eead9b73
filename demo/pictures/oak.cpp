#include "demo/pictures/oak.hpp"

#include "demo/pictures/vec3.hpp"

#include <cmath>
#include <numbers>

namespace spile::demo {

static constexpr Rgb paleOak{0.44, 0.29, 0.15};
static constexpr Rgb darkOak{0.17, 0.090, 0.038};
static constexpr Rgb weathered{0.27, 0.245, 0.21};
static constexpr Rgb knotWood{0.050, 0.025, 0.012};

OakBoard::OakBoard(SeededRandom& random)
    : offset_(between(random, 0.0, 5000.0)),
      pith_(between(random, -60.0, 60.0)),
      depth_(between(random, 6.0, 60.0)),
      slope_(between(random, -0.06, 0.06)),
      spacing_(between(random, 2.6, 5.4)),
      contrast_(between(random, 0.45, 1.0)),
      fleck_(between(random, -1.0, 1.0)),
      tone_(between(random, 0.74, 1.16)),
      grey_(between(random, 0.0, 0.45))
{
}

void OakBoard::addKnot(double u, double v, double size) { knots_.push_back({u, v, size}); }

double OakBoard::knotDarkness(double u, double v, const Noise& noise) const
{
    double darkness = 0.0;
    for (const Knot& knot : knots_) {
        const double ragged = 0.8 + 0.4 * noise.fractal(u / 9.0, v / 9.0, 2);
        const double q = ragged * flatLength(u - knot.u, 1.5 * (v - knot.v)) / knot.size;
        if (q < 2.5) {
            const double core = 1.0 - ramp(0.85, 1.1, q);
            const double rings = 0.94 - 0.24 * ramp(0.1, 0.8, q) + 0.05 * std::cos(13.0 * q);
            darkness = std::max(darkness, std::max(core * rings, 0.45 * (1.0 - ramp(0.9, 2.2, q))));
        }
    }
    return darkness;
}

Rgb OakBoard::albedo(double u, double v, const Noise& noise) const
{
    const double knot = knots_.empty() ? 0.0 : knotDarkness(u, v, noise);
    double bentV = v;
    for (const Knot& k : knots_) {
        const double q = flatLength((u - k.u) / 2.2, v - k.v) / k.size;
        bentV -= 0.75 * (v - k.v) * std::exp(-0.5 * q * q);
    }
    const double a = u + offset_;
    const double b = bentV + 0.37 * offset_;

    // Where the place lay in the trunk, with the trunk's own bends.
    const double bend = 13.0 * (noise.at(a / 170.0, b / 60.0) - 0.5);
    const double wobble = 2.2 * (noise.at(a / 45.0 + 9.0, b / 11.0) - 0.5);
    const double radius =
        flatLength(bentV - pith_ + bend, depth_ + slope_ * u + 1.6 * bend) + wobble;
    const double age = radius / spacing_ + 1.3 * noise.at(radius / 11.0, offset_);
    const double ring = std::floor(age);
    const double part = age - ring;
    // Early wood is dark and porous; its edge to last year's wood is the sharp one.
    const double early = ramp(0.0, 0.16, part) * (1.0 - ramp(0.16, 0.95, part));
    const double year = 0.35 + 0.65 * noise.at(ring * 7.7, offset_);

    const double fibre = noise.at(a / 34.0, b / 0.75) - 0.5;
    const double streak = noise.fractal(a / 260.0, b / 17.0, 2) - 0.5;
    const double pore = ramp(0.60, 0.80, noise.at(a / 10.0 + 31.0, b / 0.95 + 77.0));
    const double fleck =
        fleck_ <= 0.0
            ? 0.0
            : fleck_ *
                  ramp(0.62, 0.9, noise.at((0.8 * a + 0.6 * b) / 3.6, (0.8 * b - 0.6 * a) / 12.0));

    const double dark = 0.34 + contrast_ * year * 0.52 * early + 0.26 * fibre + 0.55 * streak +
                        pore * (0.10 + 0.34 * early) - 0.16 * fleck;
    const Rgb clean = mix(paleOak, darkOak, std::clamp(dark, 0.0, 1.15));
    const double age2 = std::clamp(grey_ + 0.5 * streak, 0.0, 0.6);
    const Rgb aged = mix(clean, (1.15 - 0.75 * dark) * weathered, age2);
    return mix(tone_ * aged, knotWood, knot);
}

Rgb endGrain(double x, double y, double tone, double slant, const Noise& noise)
{
    const double across = 0.8 * (y + slant * x) + 5.0 * noise.at(x / 17.0 + tone * 91.0, y / 13.0);
    const double part = across / 3.1 - std::floor(across / 3.1);
    const double early = ramp(0.0, 0.2, part) * (1.0 - ramp(0.2, 0.9, part));
    const double pore = ramp(0.62, 0.85, noise.at(x / 0.9 + tone * 53.0, y / 0.9));
    const double wear = noise.fractal(x / 30.0 + tone * 17.0, y / 12.0, 3);
    const double dark = 0.42 + 0.2 * early + 0.34 * pore + 0.6 * (wear - 0.5);
    return tone * mix(mix(paleOak, darkOak, std::clamp(dark, 0.0, 1.1)), weathered, 0.4);
}

HeadBoards::HeadBoards(SeededRandom& random, double radius)
{
    const double angle = between(random, 0.0, std::numbers::pi);
    cos_ = std::cos(angle);
    sin_ = std::sin(angle);
    double at = -radius - between(random, 0.0, 25.0);
    while (at < radius) {
        const double width = between(random, 58.0, 118.0);
        boards_.push_back({at, at + width, OakBoard(random)});
        at += width;
    }
    const int knots = static_cast<int>(between(random, 1.0, 5.0));
    for (int i = 0; i < knots; ++i) {
        const auto index =
            static_cast<std::size_t>(random.unit() * static_cast<double>(boards_.size()));
        Placed& placed = boards_[index];
        const double half = 0.5 * (placed.to - placed.from);
        placed.board.addKnot(between(random, -0.85, 0.85) * radius,
                             between(random, -0.6, 0.6) * half, between(random, 6.0, 15.0));
    }
}

Rgb HeadBoards::albedo(double x, double y, const Noise& noise) const
{
    const double u = cos_ * x + sin_ * y;
    const double v = cos_ * y - sin_ * x;
    std::size_t i = 0;
    while (i + 1 < boards_.size() && v >= boards_[i].to) {
        ++i;
    }
    const Placed& placed = boards_[i];
    const Rgb wood = placed.board.albedo(u, v - 0.5 * (placed.from + placed.to), noise);
    // The joint is a hair wide, opens and closes along the board, and holds dirt.
    const double open = 0.35 + 0.9 * noise.at(u / 70.0, placed.from);
    const double edge = std::min(v - placed.from, placed.to - v);
    const double gap = 1.0 - ramp(0.3 * open, open + 0.35, edge);
    const double dirt = 0.35 * std::exp(-edge / 2.6);
    return ((1.0 - 0.86 * gap) * (1.0 - dirt)) * wood;
}

}  // namespace spile::demo
