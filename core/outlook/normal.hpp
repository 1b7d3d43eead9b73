#pragma once

/// The normal distribution.
///
/// Source    M. Abramowitz and I. A. Stegun, "Handbook of Mathematical Functions" (1964), 26.2
///           (from memory); the inverse: P. J. Acklam's rational approximation, improved by one
///           step of Halley's method (from memory; checked against the distribution itself).
namespace spile::outlook {

/// The density and the distribution function of the standard normal.
[[nodiscard]] double normalDensity(double z);
[[nodiscard]] double normalBelow(double z);
/// The distribution function by interpolation in a table, ten times as fast: to 1e-9.
[[nodiscard]] double quickNormalBelow(double z);
/// The logarithm of normalBelow, also far out where that is 0.
[[nodiscard]] double logNormalBelow(double z);
/// normalDensity / normalBelow, also far out. The mean of a standard normal above -z.
[[nodiscard]] double millsRatio(double z);
/// The z with normalBelow(z) = p. Requires 0 < p < 1. To 1e-12 relative to p.
[[nodiscard]] double normalQuantile(double p);

}  // namespace spile::outlook
