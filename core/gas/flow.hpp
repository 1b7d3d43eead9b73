#pragma once

#include "core/base/result.hpp"
#include "core/units/units.hpp"

/// How much carbon dioxide flows from a regulator through a bore and a hose. All pressures are
/// absolute here.
///
/// Errors    of all functions: NotFinite; OutOfRange. `subject` is "up_bar", "down_bar", "bore_mm",
///           "hose_m", "temperature_c" or "discharge".
namespace spile::gas {

/// Of a sharp-edged bore. Source: common practice, 0.6.
inline constexpr double usualDischarge = 0.6;

/// Return the flow through a bore, choked or not.
///
/// Shape     rises with `up` and `bore`; falls with `down`, and no more below 0.547 of `up`.
/// Range     `up` 0.5 to 70 bar; `down` 0.01 bar to `up`; `bore` 0.5 to 100 mm; `t`, of the gas, 0
///           to 50 °C; `discharge` 0.1 to 1.
/// Accuracy  10 %, for the discharge of an unknown fitting.
/// Source    isentropic flow of an ideal gas through a nozzle (Saint-Venant and Wantzel, 1839).
[[nodiscard]] Result<MassFlow> orificeFlow(Pressure up, Pressure down, Length bore, Temperature t,
                                           double discharge = usualDischarge);

/// Return the flow through a hose whose ends are at `up` and `down`.
///
/// Shape     rises with `up` and `bore`; falls with `down` and `hose`.
/// Range     as orificeFlow(); `hose` 1 mm to 200 m.
/// Accuracy  10 %: smooth hose, Blasius's friction, of one temperature. Where it chokes at its end,
///           the flow is that at the choking pressure.
/// Source    isothermal flow with friction, as in Perry's Chemical Engineers' Handbook, section 6.
[[nodiscard]] Result<MassFlow> hoseFlow(Pressure up, Pressure down, Length bore, Length hose,
                                        Temperature t);

/// Return the smaller of both: what a regulator's bore and a hose of the same bore let through.
/// `hose` 0 is no hose.
[[nodiscard]] Result<MassFlow> lineFlow(Pressure up, Pressure down, Length bore, Length hose,
                                        Temperature t);

/// Return the volume of a mass of carbon dioxide at `t` and one atmosphere, as an ideal gas, 0.5 %
/// too much.
///
/// Range     `gas` 0 to 1000 kg; `t` 0 to 50 °C.
/// Errors    `subject` is "gas_kg" or "temperature_c".
[[nodiscard]] Result<Volume> volumeAtOneAtmosphere(Mass gas, Temperature t);

}  // namespace spile::gas
