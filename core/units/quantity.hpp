#pragma once

#include <compare>

namespace spile::inline units {

/// An amount of one dimension, held as a double in the coherent SI unit.
template <class Dimension>
class Quantity {
public:
    constexpr Quantity() = default;  ///< zero
    [[nodiscard]] static constexpr Quantity fromSi(double value) { return Quantity(value); }
    [[nodiscard]] constexpr double si() const { return value_; }

    friend constexpr auto operator<=>(Quantity, Quantity) = default;
    friend constexpr Quantity operator+(Quantity a, Quantity b)
    {
        return Quantity(a.value_ + b.value_);
    }
    friend constexpr Quantity operator-(Quantity a, Quantity b)
    {
        return Quantity(a.value_ - b.value_);
    }
    friend constexpr Quantity operator*(double k, Quantity a) { return Quantity(k * a.value_); }
    friend constexpr double operator/(Quantity a, Quantity b) { return a.value_ / b.value_; }

private:
    constexpr explicit Quantity(double value) : value_(value) {}
    double value_ = 0.0;
};

/// A position on a scale with an arbitrary zero: compared, moved, subtracted; never scaled.
template <class Dimension>
class Point {
public:
    [[nodiscard]] static constexpr Point fromSi(double value) { return Point(value); }
    [[nodiscard]] constexpr double si() const { return value_; }

    friend constexpr auto operator<=>(Point, Point) = default;
    friend constexpr Point operator+(Point p, Quantity<Dimension> d)
    {
        return Point(p.value_ + d.si());
    }
    friend constexpr Quantity<Dimension> operator-(Point a, Point b)
    {
        return Quantity<Dimension>::fromSi(a.value_ - b.value_);
    }

private:
    constexpr explicit Point(double value) : value_(value) {}
    double value_;
};

}  // namespace spile::inline units
