#pragma once

#include <array>

/// How the taste of the wood comes into beer: curves that are linear in their two amounts once
/// their rates are given. An age is in months at the reference temperature (effective_age.hpp).
///
/// Each function returns what the two amounts are multiplied with; an age below zero counts as
/// zero.
///
/// Accuracy  none claimed for beer: shapes that wine and spirit in oak are known to follow.
/// Source    saturating: first-order release from a finite store (J. Crank, "The Mathematics of
///           Diffusion", 2nd ed. 1975, ch. 14, surface evaporation; from memory); linear for old
///           wood: Rous & Alderson, American Journal of Enology and Viticulture 34 (1983) 211-215;
///           rise and fall: two such steps in a row (Bateman's equation, from memory); delayed:
///           the logistic function. The choice of the four: common practice, no source.
namespace spile::wood {

using Basis = std::array<double, 2>;

/// {start, end}: e^(-rate age) and 1 - e^(-rate age). `rate` in 1/month, above 0.
[[nodiscard]] Basis saturatingBasis(double rate, double age);

/// {start, change in a year}: 1 and age/12.
[[nodiscard]] Basis linearBasis(double age);

/// {start, height}: what was there decays with `fall`; what comes rises with `rise` and decays with
/// `fall`, and is 1 at its highest. Requires rise > fall > 0, in 1/month.
[[nodiscard]] Basis risingFallingBasis(double rise, double fall, double age);

/// {start, end}: 1 - S and S, S a logistic curve of this middle and width in months, moved and
/// stretched to be 0 at age 0. Requires a width above 0.
[[nodiscard]] Basis delayedBasis(double middle, double width, double age);

}  // namespace spile::wood
