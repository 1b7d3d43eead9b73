#include "core/vessel/shape.hpp"

#include "core/vessel/quadrature.hpp"

#include <cmath>
#include <limits>
#include <numbers>

namespace spile::vessel {

namespace {

using std::numbers::pi;
constexpr double infinite = std::numeric_limits<double>::infinity();

// a - sin a cos a for small angles, where the difference would lose its digits: with x = 2 a the
// half of x - sin x = x^3/6 - x^5/120 + ...
double smallSegment(double angle)
{
    const double x = 2 * angle;
    const double y = x * x;
    return x * y / 12 *
           (1 -
            y / 20 * (1 - y / 42 * (1 - y / 72 * (1 - y / 110 * (1 - y / 156 * (1 - y / 210))))));
}

double square(double x) { return x * x; }

}  // namespace

double halfAngle(double r, double depth) noexcept
{
    if (!(depth > 0)) {
        return 0;
    }
    if (depth >= 2 * r) {
        return pi;
    }
    return depth <= r ? 2 * std::asin(std::sqrt(depth / (2 * r)))
                      : pi - 2 * std::asin(std::sqrt(1 - depth / (2 * r)));
}

double segmentArea(double r, double depth) noexcept
{
    const double angle = halfAngle(r, depth);
    if (angle < 0.25) {
        return r * r * smallSegment(angle);
    }
    if (depth >= 2 * r) {
        return pi * r * r;
    }
    const double sine = std::sqrt(depth * (2 * r - depth)) / r;
    const double cosine = 1 - depth / r;
    return r * r * (angle - sine * cosine);
}

Shape::Shape(const Barrel& barrel) noexcept
    : profile_(barrel.profile),
      l_(barrel.length.si() / 2),
      R_(barrel.bilge.si() / 2),
      s_((barrel.bilge - barrel.head).si() / 2)
{
    if (s_ == 0) {
        profile_ = Profile::Parabola;  // all three are the same cylinder, and k is 0
    }
    switch (profile_) {
        case Profile::Parabola:
            k_ = s_ / square(l_);
            break;
        case Profile::Ellipse:
            k_ = s_ * (2 * R_ - s_) / square(l_);
            break;
        case Profile::Circle:
            rho_ = (square(l_) + square(s_)) / (2 * s_);
            break;
    }
}

double Shape::drop(double x) const noexcept
{
    switch (profile_) {
        case Profile::Parabola:
            return k_ * x * x;
        case Profile::Ellipse:
            return k_ * x * x / (R_ + std::sqrt(std::max(0.0, R_ * R_ - k_ * x * x)));
        case Profile::Circle:
            break;
    }
    return x * x / (rho_ + std::sqrt(std::max(0.0, rho_ * rho_ - x * x)));
}

double Shape::radius(double x) const noexcept { return R_ - drop(x); }

double Shape::volumeTo(double x) const noexcept
{
    const double y = k_ * x * x;
    switch (profile_) {
        case Profile::Parabola:
            return pi * x * (R_ * R_ - 2 * R_ * y / 3 + y * y / 5);
        case Profile::Ellipse:
            return pi * x * (R_ * R_ - y / 3);
        case Profile::Circle:
            break;
    }
    // The closed form loses all digits where the staves are nearly straight.
    const double end = std::abs(x);
    const double half =
        evenIntegralBetweenRoots(end, rho_, [this](double at) { return square(radius(at)); });
    return std::copysign(pi * half / 2, x);
}

// The area of the staves per length of axis, over 2 pi: r sqrt(1 + r'^2).
double Shape::band(double x) const noexcept
{
    const double r = radius(x);
    switch (profile_) {
        case Profile::Parabola:
            return r * std::hypot(1, 2 * k_ * x);
        case Profile::Ellipse:
            return std::hypot(r, k_ * x);
        case Profile::Circle:
            break;
    }
    return r * rho_ / std::sqrt((rho_ - x) * (rho_ + x));
}

double Shape::staveArea() const noexcept
{
    const double root = profile_ == Profile::Circle ? rho_ : 4 * l_;
    return 2 * pi * evenIntegralBetweenRoots(l_, root, [this](double x) { return band(x); });
}

// Where the surface meets the lowest line of the staves: h + x t = drop(x), for h of [0, 2R]. Both
// sides squared where the drop has a root; what squaring adds is taken out again.
Shape::Span Shape::bottomRoots(double h, double t) const noexcept
{
    double a = k_;  // a x^2 - 2 b x - c = 0
    double b = t / 2;
    double c = h;
    double turn = -infinite;  // a root is one where turn + x t <= 0
    if (profile_ == Profile::Ellipse) {
        turn = h - R_;
        a = k_ + t * t;
        b = -turn * t;
        c = h * (2 * R_ - h);
    } else if (profile_ == Profile::Circle) {
        turn = h - rho_;
        a = 1 + t * t;
        b = -turn * t;
        c = h * (2 * rho_ - h);
    }
    const double sum = std::abs(b) + std::sqrt(b * b + a * c);
    if (!(sum > 0)) {  // level, and empty or full to the bung
        return h > 0 ? Span{-infinite, infinite} : Span{0, 0};
    }
    const double other = a > 0 ? sum / a : infinite;
    Span span = b >= 0 ? Span{-c / sum, other} : Span{-other, c / sum};
    if (turn + span.left * t > 0) {
        span.left = -infinite;
    }
    if (turn + span.right * t > 0) {
        span.right = infinite;
    }
    return span;
}

Shape::Sections Shape::sections(double h, double t) const noexcept
{
    const Span below = bottomRoots(h, t);
    const Span mirrored = bottomRoots(2 * R_ - h, t);  // the empty part, upside down and turned
    const Span above{-mirrored.right, -mirrored.left};
    const double left = std::max(below.left, above.left);
    const double right = std::min(below.right, above.right);
    // A root far beyond the heads does no harm, and an infinite one cannot be divided by.
    const double far = 4 * l_;
    return {{std::max(left, -far), std::min(right, far)},
            {std::max(left, -l_), std::min(right, l_)},
            above.right < l_};
}

// The integral of f over the sections that are neither dry nor full.
template <class Function>
double Shape::overSections(const Sections& sections, double t, const Function& f) const noexcept
{
    const Span& partial = sections.partial;
    const Span& roots = sections.roots;
    if (!(partial.left < partial.right)) {
        return 0;
    }
    if (t == 0) {
        return evenIntegralBetweenRoots(partial.right, roots.right, f);
    }
    return integralBetweenRoots(partial.left, partial.right, roots.left, roots.right, f);
}

double Shape::volumeBelow(double h, double t) const noexcept
{
    const Sections found = sections(h, t);
    const double full =
        found.isFullBeyond ? volumeTo(l_) - volumeTo(std::max(found.partial.right, -l_)) : 0;
    return full + overSections(found, t, [&](double x) {
               return segmentArea(radius(x), h + x * t - drop(x));
           });
}

double Shape::surfaceArea(double h, double t) const noexcept
{
    return overSections(sections(h, t), t, [&](double x) {
        const double depth = h + x * t - drop(x);
        const double dry = 2 * radius(x) - depth;
        return depth > 0 && dry > 0 ? 2 * std::sqrt(depth * dry) : 0;
    });
}

double Shape::wetStaveArea(double h) const noexcept
{
    return overSections(sections(h, 0), 0,
                        [&](double x) { return 2 * halfAngle(radius(x), h - drop(x)) * band(x); });
}

}  // namespace spile::vessel
