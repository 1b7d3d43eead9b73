#pragma once

#include "core/vessel/barrel.hpp"

/// The solid inside a barrel, unchecked and in metres: what barrel.hpp computes with. x runs along
/// the axis from mid-length.
namespace spile::vessel {

/// Return the area of a circle of radius `r` below a chord that stands `depth` above its lowest
/// point: r^2 (a - sin a cos a) for half the angle a. Nearly empty circles keep all their digits.
[[nodiscard]] double segmentArea(double r, double depth) noexcept;

/// Return half the angle, 0 to pi, under which the wet arc of that circle is seen.
[[nodiscard]] double halfAngle(double r, double depth) noexcept;

class Shape {
public:
    /// Requires  checkBarrel(barrel).
    explicit Shape(const Barrel& barrel) noexcept;

    [[nodiscard]] double halfLength() const { return l_; }
    [[nodiscard]] double bilgeRadius() const { return R_; }
    [[nodiscard]] double headRadius() const { return R_ - s_; }
    [[nodiscard]] double sagitta() const { return s_; }

    /// How much nearer to the axis the staves are at `x` than at the bilge.
    [[nodiscard]] double drop(double x) const noexcept;
    [[nodiscard]] double radius(double x) const noexcept;
    /// The volume between mid-length and the section at `x`; negative for negative x.
    [[nodiscard]] double volumeTo(double x) const noexcept;
    [[nodiscard]] double fullVolume() const noexcept { return 2 * volumeTo(l_); }
    /// The inner area of the staves, without heads.
    [[nodiscard]] double staveArea() const noexcept;

    /// For the barrel on its side and `h` in [0, R]; `t` >= 0 is the slope of the surface against
    /// the axis. The upper half is the lower one upside down.
    [[nodiscard]] double volumeBelow(double h, double t) const noexcept;
    [[nodiscard]] double surfaceArea(double h, double t) const noexcept;
    [[nodiscard]] double wetStaveArea(double h) const noexcept;

private:
    struct Span {
        double left, right;
    };
    struct Sections {
        Span roots;    // where the surface leaves the staves below or above, or would beyond heads
        Span partial;  // between the heads; the sections that are neither dry nor full
        bool isFullBeyond;  // from the right end of `partial` to the right head
    };
    [[nodiscard]] double band(double x) const noexcept;
    [[nodiscard]] Span bottomRoots(double h, double t) const noexcept;
    [[nodiscard]] Sections sections(double h, double t) const noexcept;
    template <class Function>
    [[nodiscard]] double overSections(const Sections& sections, double t,
                                      const Function& f) const noexcept;

    Profile profile_;
    double l_, R_, s_;
    double k_ = 0;    // parabola: R - r = k x^2; ellipse: R^2 - r^2 = k x^2
    double rho_ = 0;  // circle: its radius
};

}  // namespace spile::vessel
