#pragma once

#include "core/units/units.hpp"

#include <span>

/// How old beer in wood is for its taste: time counted faster when it is warm.
namespace spile::wood {

inline constexpr double daysOfMonth = 30.4375;  // a twelfth of the Julian year
inline constexpr Temperature referenceTemperature = celsius(15);
/// By how much faster with 10 K more. Extraction limited by diffusion is rather slower; a wrong
/// value costs little (see the handbook's page on the outlook).
inline constexpr double usualQ10 = 2;

/// How many days at the reference temperature one day at `temperature` is worth:
/// q10^((T - Tref) / 10 K).
///
/// Range     q10 above 0.
/// Accuracy  none claimed for beer in wood.
/// Source    J. H. van 't Hoff's rule, as in any textbook of chemical kinetics (from memory);
///           q10 = 2: common practice, no source.
[[nodiscard]] double paceAt(Temperature temperature, double q10 = usualQ10);

/// Return the effective age in months after each of the days, whose mean temperatures are
/// `dayTemperatures`, summed up: the first value is after the first day.
///
/// Shape     `ages` of the same length as `dayTemperatures`.
void effectiveAges(std::span<const Temperature> dayTemperatures, std::span<double> ages,
                   double q10 = usualQ10);

}  // namespace spile::wood
