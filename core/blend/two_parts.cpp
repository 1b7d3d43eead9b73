#include "core/blend/two_parts.hpp"

#include <algorithm>

namespace spile::blend {

namespace {

struct Point {
    double s, t;
};

// h0 + h1 s + h2 t >= 0
struct HalfPlane {
    double h0, h1, h2;
    [[nodiscard]] double at(const Point& p) const { return h0 + h1 * p.s + h2 * p.t; }
};

// The corners of what shares may be, in their order; fewer than one if nothing keeps the bounds.
class Polygon {
public:
    explicit Polygon(double least) : corners_{{least, least}, {1, least}, {1, 1}, {least, 1}} {}

    void cut(const HalfPlane& plane)
    {
        std::vector<Point> kept;
        kept.reserve(corners_.size() + 1);
        for (std::size_t i = 0; i < corners_.size(); ++i) {
            const Point& from = corners_[i];
            const Point& to = corners_[(i + 1) % corners_.size()];
            const double inFrom = plane.at(from);
            const double inTo = plane.at(to);
            if (inFrom >= 0) {
                kept.push_back(from);
            }
            if ((inFrom < 0) != (inTo < 0)) {
                const double way = inFrom / (inFrom - inTo);
                kept.push_back({from.s + way * (to.s - from.s), from.t + way * (to.t - from.t)});
            }
        }
        corners_ = std::move(kept);
    }

    [[nodiscard]] const std::vector<Point>& corners() const { return corners_; }

private:
    std::vector<Point> corners_;
};

Polygon allowed(const Sums& sums, const SetSums& set, const TwoParts& parts, std::size_t first,
                std::size_t second)
{
    Polygon polygon(std::min(sums.leastShare, 1.0));
    const double least = sums.amountLeast * (1 - Sums::slack);
    const double most = sums.amountMost * (1 + Sums::slack);
    polygon.cut({parts.v - least, parts.w0, parts.w1});
    polygon.cut({most - parts.v, -parts.w0, -parts.w1});
    for (std::size_t k = 0; k < sums.rows && !polygon.corners().empty(); ++k) {
        polygon.cut({set.bounds[k] + Sums::slack * parts.v,
                     sums.bounds(first)[k] + Sums::slack * parts.w0,
                     sums.bounds(second)[k] + Sums::slack * parts.w1});
    }
    return polygon;
}

// Where the slope is nought: the solution of G (1, s, t) ~ (v, w0, w1).
std::optional<Point> flat(const TwoParts& p)
{
    const double m00 = p.c00 * p.c11 - p.c01 * p.c01;
    const double m01 = p.c01 * p.b1 - p.b0 * p.c11;
    const double m02 = p.b0 * p.c01 - p.c00 * p.b1;
    const double whole = m00 * p.v + m01 * p.w0 + m02 * p.w1;
    if (!(whole > 0)) {
        return std::nullopt;
    }
    const double m11 = p.a * p.c11 - p.b1 * p.b1;
    const double m12 = p.b0 * p.b1 - p.a * p.c01;
    const double m22 = p.a * p.c00 - p.b0 * p.b0;
    return Point{(m01 * p.v + m11 * p.w0 + m12 * p.w1) / whole,
                 (m02 * p.v + m12 * p.w0 + m22 * p.w1) / whole};
}

bool isInside(const std::vector<Point>& corners, const Point& point)
{
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const Point& from = corners[i];
        const Point& to = corners[(i + 1) % corners.size()];
        if ((to.s - from.s) * (point.t - from.t) - (to.t - from.t) * (point.s - from.s) < 0) {
            return false;
        }
    }
    return corners.size() > 2;
}

// The best place on the edge between two corners.
Point bestOn(const TwoParts& p, const Point& from, const Point& to)
{
    const double ds = to.s - from.s;
    const double dt = to.t - from.t;
    const double a = p.a + 2 * (p.b0 * from.s + p.b1 * from.t) + p.c00 * from.s * from.s +
                     2 * p.c01 * from.s * from.t + p.c11 * from.t * from.t;
    const double b = p.b0 * ds + p.b1 * dt + p.c00 * from.s * ds +
                     p.c01 * (from.s * dt + from.t * ds) + p.c11 * from.t * dt;
    const double c = p.c00 * ds * ds + 2 * p.c01 * ds * dt + p.c11 * dt * dt;
    const double v = p.v + p.w0 * from.s + p.w1 * from.t;
    const double w = p.w0 * ds + p.w1 * dt;
    const double up = a * w - b * v;
    const double down = c * v - b * w;
    if (!(down > 0)) {
        return p.at(from.s, from.t) < p.at(to.s, to.t) ? from : to;
    }
    const double way = std::clamp(up / down, 0.0, 1.0);
    return {from.s + way * ds, from.t + way * dt};
}

}  // namespace

TwoParts::TwoParts(const Sums& sums, const SetSums& set, std::size_t first, std::size_t second,
                   const std::vector<double>& pairs)
    : a(set.numerator),
      b0(pairs[first]),
      b1(pairs[second]),
      c00(sums.own[first]),
      c01(sums.pairs(first)[second]),
      c11(sums.own[second]),
      v(set.amount),
      w0(sums.amount[first]),
      w1(sums.amount[second])
{
}

// The least of z'Gz with (v, w0, w1) z = 1 is det G over what its adjugate makes of (v, w0, w1).
bool TwoParts::mayFallBelow(double limit) const
{
    const double m00 = c00 * c11 - c01 * c01;
    const double m01 = c01 * b1 - b0 * c11;
    const double m02 = b0 * c01 - c00 * b1;
    const double m11 = a * c11 - b1 * b1;
    const double m12 = b0 * b1 - a * c01;
    const double m22 = a * c00 - b0 * b0;
    const double determinant = a * m00 + b0 * m01 + b1 * m02;
    const double form = v * v * m00 + w0 * w0 * m11 + w1 * w1 * m22 +
                        2 * (v * w0 * m01 + v * w1 * m02 + w0 * w1 * m12);
    // What rounding leaves of nought says nothing.
    const double scale = a * c00 * c11;
    constexpr double rounding = 1e-12;
    return determinant < limit * form || !(determinant > rounding * scale);
}

double TwoParts::at(double s, double t) const
{
    const double amount = v + w0 * s + w1 * t;
    return (a + 2 * (b0 * s + b1 * t) + c00 * s * s + 2 * c01 * s * t + c11 * t * t) /
           (amount * amount);
}

std::optional<std::array<double, 2>> bestTwoShares(const Sums& sums, const SetSums& set,
                                                   std::size_t first, std::size_t second,
                                                   const std::vector<double>& pairs)
{
    const TwoParts parts(sums, set, first, second, pairs);
    const Polygon polygon = allowed(sums, set, parts, first, second);
    const std::vector<Point>& corners = polygon.corners();
    std::optional<Point> best;
    double least = 0;
    const auto consider = [&](const Point& point) {
        if (!(parts.v + parts.w0 * point.s + parts.w1 * point.t > 0)) {
            return;  // nothing is taken at all
        }
        const double value = parts.at(point.s, point.t);
        if (!best || value < least) {
            best = point;
            least = value;
        }
    };
    if (const auto point = flat(parts); point && isInside(corners, *point)) {
        consider(*point);
    }
    for (std::size_t i = 0; i < corners.size(); ++i) {
        consider(bestOn(parts, corners[i], corners[(i + 1) % corners.size()]));
        consider(corners[i]);
    }
    return best ? std::optional(std::array{best->s, best->t}) : std::nullopt;
}

}  // namespace spile::blend
