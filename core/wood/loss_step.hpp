#pragma once

#include "core/wood/evaporation.hpp"
#include "core/wood/vapour.hpp"

#include <array>

/// The inner step of the courses: no checks, nothing allocated.
namespace spile::wood {

/// What a day's loss takes from the climate alone; made once for each that differs.
struct Drying {
    VapourBasis vapour;
    double relativeHumidity{};
};

/// Errors    NotFinite; OutOfRange unless -15 to 45 °C and relativeHumidity 0 to 1.
[[nodiscard]] Result<Drying> drying(const Climate& climate);

/// How a barrel lets water and ethanol through, in kg/(s Pa).
struct Conductance {
    double water{};
    double ethanol{};
};

/// Requires  checkWood() passed.
[[nodiscard]] Conductance conductance(const Wood& wood) noexcept;

[[nodiscard]] Rates ratesUnchecked(const liquor::Liquor& liquor, const Conductance& wood,
                                   const Drying& air) noexcept;

/// Take from `liquor` what leaves in `seconds`. False, with nothing taken, if it would run dry or
/// pass 44 °P.
[[nodiscard]] bool dry(liquor::Liquor& liquor, const Conductance& wood, const Drying& air,
                       double seconds) noexcept;

/// The error of a dry() that was refused.
[[nodiscard]] tl::unexpected<Error> failDry();

/// The drying of one day after another; made anew only when the climate changes.
class DryingByDay {
public:
    /// Errors    as drying(), which is not called here: its Result would cost as much as the vapour
    ///           pressures.
    [[nodiscard]] Result<void> turnTo(const Climate& climate);
    [[nodiscard]] const Drying& now() const noexcept { return drying_; }

private:
    bool isSet_ = false;
    Climate climate_;
    Drying drying_;
};

/// A cubic in place of a smooth function, laid anew whenever it is asked for beyond its reach: for
/// numbers that move little from one call to the next.
class LocalCubic {
public:
    /// Good for `least` to `most` of the function, `reach` to either side of each centre.
    constexpr LocalCubic(double least, double most, double reach) noexcept
        : least_(least + reach), most_(most - reach), reach_(reach)
    {
    }

    template <class Function>
    [[nodiscard]] double at(double x, const Function& f) noexcept
    {
        if (!(x >= centre_ - reach_ && x <= centre_ + reach_)) {
            lay(x, f);
        }
        const double d = x - centre_;
        return terms_[0] + d * (terms_[1] + d * (terms_[2] + d * terms_[3]));
    }

private:
    // Through four even places, from one end of the reach to the other.
    template <class Function>
    void lay(double x, const Function& f) noexcept
    {
        centre_ = x < least_ ? least_ : x > most_ ? most_ : x;
        const double a = f(centre_ - reach_);
        const double b = f(centre_ - reach_ / 3.0);
        const double c = f(centre_ + reach_ / 3.0);
        const double d = f(centre_ + reach_);
        terms_ = {(9.0 * (b + c) - (a + d)) / 16.0, (27.0 * (c - b) - (d - a)) / (16.0 * reach_),
                  9.0 * ((a + d) - (b + c)) / (16.0 * reach_ * reach_),
                  9.0 * ((d - a) - 3.0 * (c - b)) / (16.0 * reach_ * reach_ * reach_)};
    }

    double least_;
    double most_;
    double reach_;
    double centre_ = -1e9;
    std::array<double, 4> terms_{};
};

/// Describes the liquor of a course, whose strength and extract move little from day to day: the
/// densities of both are read off cubics.
///
/// Accuracy  as liquor::describeUnchecked() within 1e-8, in a fraction of its time.
class CourseDescriber {
public:
    /// Requires  as liquor::describeUnchecked().
    [[nodiscard]] CourseDay describe(const liquor::Liquor& liquor) noexcept;

private:
    LocalCubic alcohol_{0.0, 1.0, 0.0025};    // kg/m3 over the mass fraction
    LocalCubic extract_{-0.05, 44.07, 0.05};  // gravity less 1, over °P
};

}  // namespace spile::wood
