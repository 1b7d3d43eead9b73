#pragma once

#include <algorithm>
#include <array>
#include <cmath>

/// Integrals of what a barrel's sections are made of. Both functions evaluate `f` 16 times and
/// allocate nothing.
namespace spile::vessel {

namespace gauss16 {

struct Node {
    double at, weight;
};
// Half of the nodes on [-1, 1]; the others are their mirror images. Legendre's polynomial of degree
// 16, solved in 40 digits; as in Abramowitz and Stegun, table 25.4.
inline constexpr std::array<Node, 8> nodes = {{{0.095012509837637440, 0.189450610455068496},
                                               {0.281603550779258913, 0.182603415044923589},
                                               {0.458016777657227386, 0.169156519395002538},
                                               {0.617876244402643748, 0.149595988816576732},
                                               {0.755404408355003034, 0.124628971255533872},
                                               {0.865631202387831744, 0.095158511682492785},
                                               {0.944575023073232576, 0.062253523938647893},
                                               {0.989400934991649933, 0.027152459411754095}}};

}  // namespace gauss16

/// Return the integral of `f` from `a` to `b`: exact for polynomials up to degree 31.
template <class Function>
[[nodiscard]] double integral(double a, double b, const Function& f) noexcept
{
    const double middle = (a + b) / 2;
    const double half = (b - a) / 2;
    double sum = 0;
    for (const gauss16::Node& node : gauss16::nodes) {
        sum += node.weight * (f(middle + half * node.at) + f(middle - half * node.at));
    }
    return half * sum;
}

/// The same where f(x) is a smooth function of x and of the square root of (x - left)(right - x):
/// with x = m + H sin(phi) that root is H cos(phi), and all is smooth again. A surface that leaves
/// a head or the bilge makes such roots, at the ends of [a, b] or shortly beyond them.
///
/// Requires  left <= a <= b <= right, left < right.
template <class Function>
[[nodiscard]] double integralBetweenRoots(double a, double b, double left, double right,
                                          const Function& f) noexcept
{
    const double m = (left + right) / 2;
    const double H = (right - left) / 2;
    const double first = std::asin(std::clamp((a - m) / H, -1.0, 1.0));
    const double last = std::asin(std::clamp((b - m) / H, -1.0, 1.0));
    return integral(first, last,
                    [&](double phi) { return f(m + H * std::sin(phi)) * H * std::cos(phi); });
}

/// The same for an even `f` from -b to b between the roots -right and right, in 8 evaluations.
template <class Function>
[[nodiscard]] double evenIntegralBetweenRoots(double b, double right, const Function& f) noexcept
{
    const double last = std::asin(std::min(b / right, 1.0));
    double sum = 0;
    for (const gauss16::Node& node : gauss16::nodes) {
        const double phi = last * node.at;
        sum += node.weight * f(right * std::sin(phi)) * std::cos(phi);
    }
    return 2 * last * right * sum;
}

}  // namespace spile::vessel
