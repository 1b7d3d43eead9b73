#include "core/gas/purging.hpp"

#include "core/gas/checks.hpp"
#include "core/gas/flow.hpp"

#include <cmath>

namespace spile::gas {

namespace {

constexpr double targetLeast = 1e-9;
constexpr int cyclesMost = 1000;

Result<void> needTarget(double target, double start)
{
    return needBetween("target_oxygen", target, targetLeast, start);
}

Result<void> needGauge(Pressure gauge) { return needBetween("gauge_bar", inBars(gauge), 0.01, 10); }

Result<void> needCylinder(Mass held) { return needBetween("cylinder_kg", held.si(), 0, 1000); }

Mass oxygenIn(Volume vessel, double fraction, Temperature t)
{
    return kilograms(fraction * oxygenMolarMass * atmosphere.si() * vessel.si() /
                     (gasConstant * t.si()));
}

Result<MassFlow> flowOf(const PurgeLine& line, Volume barrel)
{
    SPILE_TRY(needVessel(barrel));
    SPILE_TRY(needGauge(line.gauge));
    return lineFlow(atmosphere + line.gauge, atmosphere, line.bore, line.hose, line.temperature);
}

Result<Purge> purgeTurning(const PurgeLine& line, Volume barrel, double turnovers)
{
    SPILE_ASSIGN(flow, flowOf(line, barrel));
    const double density = atmosphere.si() / (co2SpecificGas * line.temperature.si());
    return purgeFor(line, barrel, seconds(turnovers * barrel.si() * density / flow.si()));
}

}  // namespace

Result<double> dilutedOxygen(double turnovers, double start)
{
    SPILE_TRY(needBetween("turnovers", turnovers, 0, unbounded));
    SPILE_TRY(needBetween("start_oxygen", start, 0, 1));
    return start * std::exp(-turnovers);
}

Result<double> turnoversTo(double target, double start)
{
    SPILE_TRY(needBetween("start_oxygen", start, targetLeast, 1));
    SPILE_TRY(needTarget(target, start));
    return std::log(start / target);
}

Result<Purge> purgeFor(const PurgeLine& line, Volume barrel, Duration time)
{
    SPILE_TRY(needTime(time));
    SPILE_ASSIGN(flow, flowOf(line, barrel));
    Purge purge;
    purge.time = time;
    purge.gas = kilograms(flow.si() * time.si());
    SPILE_ASSIGN(volume, volumeAtOneAtmosphere(purge.gas, line.temperature));
    purge.gasAt1Atm = volume;
    purge.turnovers = volume / barrel;
    purge.residualOxygen = oxygenInDryAir * std::exp(-purge.turnovers);
    purge.oxygenLeft = oxygenIn(barrel, purge.residualOxygen, line.temperature);
    return purge;
}

Result<Purge> purgeTo(const PurgeLine& line, Volume barrel, double target)
{
    SPILE_ASSIGN(turnovers, turnoversTo(target));
    return purgeTurning(line, barrel, turnovers);
}

Result<Purge> purgeByDisplacement(const PurgeLine& line, Volume barrel)
{
    return purgeTurning(line, barrel, displacementTurnovers);
}

Result<PressureCycles> cyclesOf(int count, Pressure gauge, Volume vessel, Temperature t)
{
    SPILE_TRY(needVessel(vessel));
    SPILE_TRY(needGauge(gauge));
    SPILE_TRY(needBetween("cycles", count, 0, cyclesMost));
    SPILE_TRY(needGasTemperature(t));
    PressureCycles cycles;
    cycles.count = count;
    cycles.gas = kilograms(count * gauge.si() * vessel.si() / (co2SpecificGas * t.si()));
    cycles.residualOxygen = oxygenInDryAir * std::pow(atmosphere / (atmosphere + gauge), count);
    cycles.oxygenLeft = oxygenIn(vessel, cycles.residualOxygen, t);
    return cycles;
}

Result<PressureCycles> cyclesTo(double target, Pressure gauge, Volume vessel, Temperature t)
{
    SPILE_TRY(needTarget(target, oxygenInDryAir));
    SPILE_TRY(needGauge(gauge));
    const double needed = std::log(oxygenInDryAir / target) / std::log1p(gauge / atmosphere);
    // A billionth of a cycle is the rounding of a target that whole cycles reach.
    const double count = std::ceil(needed - 1e-9);
    return cyclesOf(static_cast<int>(count), gauge, vessel, t);
}

Result<Mass> cylinderLeft(Mass held, Mass used)
{
    SPILE_TRY(needCylinder(held));
    SPILE_TRY(needBetween("gas_kg", used.si(), 0, held.si()));
    return held - used;
}

Result<int> purgesLeft(Mass held, Mass each)
{
    SPILE_TRY(needCylinder(held));
    SPILE_TRY(needBetween("gas_kg", each.si(), 1e-3, 1000));
    return static_cast<int>(std::floor(held / each));
}

}  // namespace spile::gas
