#include "core/gas/flow.hpp"

#include "core/gas/carbon_dioxide.hpp"
#include "core/gas/checks.hpp"
#include "core/gas/friction.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace spile::gas {

namespace {

Result<void> needLine(Pressure up, Pressure down, Length bore, Temperature t)
{
    SPILE_TRY(needBetween("up_bar", inBars(up), 0.5, 70));
    SPILE_TRY(needBetween("down_bar", inBars(down), 0.01, inBars(up)));
    SPILE_TRY(needBetween("bore_mm", inMillimetres(bore), 0.5, 100));
    return needGasTemperature(t);
}

double sectionOf(Length bore) { return std::numbers::pi / 4 * bore.si() * bore.si(); }

// By how much the pressure must fall along a hose of friction fL/D for its end to choke: where more
// outflow would need a higher pressure there. q^2 - 1 - 2 ln q = fL/D, Newton's steps from above.
double chokingRatio(double friction)
{
    double q = 1 + std::sqrt(1 + friction);
    for (int i = 0; i < 60; ++i) {
        const double step = (q * q - 1 - 2 * std::log(q) - friction) / (2 * q - 2 / q);
        if (!(step > 1e-14 * q)) {
            break;
        }
        q -= step;
    }
    return q;
}

}  // namespace

Result<MassFlow> orificeFlow(Pressure up, Pressure down, Length bore, Temperature t,
                             double discharge)
{
    SPILE_TRY(needLine(up, down, bore, t));
    SPILE_TRY(needBetween("discharge", discharge, 0.1, 1));
    constexpr double g = co2HeatRatio;
    const double choked = std::pow(2 / (g + 1), g / (g - 1));
    const double r = std::max(down / up, choked);
    const double squared =
        2 * g / (g - 1) * std::pow(r, 2 / g) * -std::expm1((g - 1) / g * std::log(r));
    return kilogramsPerSecond(discharge * sectionOf(bore) * up.si() *
                              std::sqrt(squared / (co2SpecificGas * t.si())));
}

Result<MassFlow> hoseFlow(Pressure up, Pressure down, Length bore, Length hose, Temperature t)
{
    SPILE_TRY(needLine(up, down, bore, t));
    SPILE_TRY(needBetween("hose_m", hose.si(), 1e-3, 200));
    const double first = up.si();
    const auto flowAt = [&](double factor) {
        const double friction = factor * (hose / bore);
        const double last = std::max(down.si(), first / chokingRatio(friction));
        return sectionOf(bore) *
               std::sqrt((first - last) * (first + last) /
                         (co2SpecificGas * t.si() * (friction + 2 * std::log(first / last))));
    };
    return kilogramsPerSecond(flowWithFriction(bore.si(), co2Viscosity, flowAt));
}

Result<MassFlow> lineFlow(Pressure up, Pressure down, Length bore, Length hose, Temperature t)
{
    SPILE_ASSIGN(throughBore, orificeFlow(up, down, bore, t));
    if (hose == Length()) {
        return throughBore;
    }
    SPILE_ASSIGN(throughHose, hoseFlow(up, down, bore, hose, t));
    return std::min(throughBore, throughHose);
}

Result<Volume> volumeAtOneAtmosphere(Mass gas, Temperature t)
{
    SPILE_TRY(needBetween("gas_kg", gas.si(), 0, 1000));
    SPILE_TRY(needGasTemperature(t));
    return cubicMetres(gas.si() * co2SpecificGas * t.si() / atmosphere.si());
}

}  // namespace spile::gas
