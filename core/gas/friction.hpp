#pragma once

#include <algorithm>
#include <cmath>
#include <numbers>

/// Friction in smooth round hoses; for gas and beer alike. In SI, unchecked.
namespace spile::gas {

/// Return the friction factor of Darcy and Weisbach: laminar, or Blasius's law where that is more,
/// from a Reynolds number of 1188 on. So it is continuous, and somewhat high up to 3000, where
/// nobody can say which.
///
/// Requires  `reynolds` > 0. Good to 5 % up to 1e5.
/// Source    Hagen-Poiseuille, 64/Re; Blasius (1913), 0.3164/Re^0.25.
[[nodiscard]] inline double frictionFactor(double reynolds) noexcept
{
    return std::max(64 / reynolds, 0.3164 / std::sqrt(std::sqrt(reynolds)));
}

/// Return the mass flow at which `flowAt(friction factor)` and the friction factor of that flow
/// agree. Each round takes off half of the error or more, for the flow goes with the factor's root
/// and the factor with no more than one over the flow.
template <class Function>
[[nodiscard]] double flowWithFriction(double bore, double viscosity,
                                      const Function& flowAt) noexcept
{
    double flow = flowAt(0.02);
    for (int i = 0; i < 60 && flow > 0; ++i) {
        const double reynolds = 4 * flow / (std::numbers::pi * bore * viscosity);
        const double next = flowAt(frictionFactor(reynolds));
        const bool isSettled = std::abs(next - flow) <= 1e-14 * next;
        flow = next;
        if (isSettled) {
            break;
        }
    }
    return flow;
}

}  // namespace spile::gas
