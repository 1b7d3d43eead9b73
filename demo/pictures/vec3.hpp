#pragma once

#include <cmath>

namespace spile::demo {

/// A place or a direction; in the pictures' scenes in millimetres.
struct Vec3 {
    double x = 0.0;
    double y = 0.0;
    double z = 0.0;

    friend constexpr Vec3 operator+(Vec3 a, Vec3 b) { return {a.x + b.x, a.y + b.y, a.z + b.z}; }
    friend constexpr Vec3 operator-(Vec3 a, Vec3 b) { return {a.x - b.x, a.y - b.y, a.z - b.z}; }
    friend constexpr Vec3 operator*(double k, Vec3 a) { return {k * a.x, k * a.y, k * a.z}; }
};

/// Return the length of a flat vector. std::hypot guards against overflow, which costs more than
/// all of the rest of a pixel, and nothing here is that large.
[[nodiscard]] inline double flatLength(double x, double y) { return std::sqrt(x * x + y * y); }

[[nodiscard]] constexpr double dot(Vec3 a, Vec3 b) { return a.x * b.x + a.y * b.y + a.z * b.z; }
[[nodiscard]] inline double length(Vec3 a) { return std::sqrt(dot(a, a)); }
[[nodiscard]] inline Vec3 unitOf(Vec3 a) { return (1.0 / length(a)) * a; }

/// Turn `v` about the unit vector `axis` by `angle` [rad].
[[nodiscard]] inline Vec3 turned(Vec3 v, Vec3 axis, double angle)
{
    const double c = std::cos(angle);
    const double s = std::sin(angle);
    const Vec3 cross{axis.y * v.z - axis.z * v.y, axis.z * v.x - axis.x * v.z,
                     axis.x * v.y - axis.y * v.x};
    return c * v + s * cross + ((1.0 - c) * dot(axis, v)) * axis;
}

/// A turn about the z axis, its sine and cosine found once.
class Spin {
public:
    explicit Spin(double angle) : cos_(std::cos(angle)), sin_(std::sin(angle)) {}  // [rad]

    [[nodiscard]] Vec3 of(Vec3 v) const
    {
        return {cos_ * v.x - sin_ * v.y, sin_ * v.x + cos_ * v.y, v.z};
    }

private:
    double cos_;
    double sin_;
};

}  // namespace spile::demo
