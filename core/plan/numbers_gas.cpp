// Gas: how long to purge this barrel, what it takes, and what it does to the room.
#include "core/gas/purging.hpp"
#include "core/gas/pushing.hpp"
#include "core/gas/room.hpp"
#include "core/plan/numbers_parts.hpp"

#include <algorithm>
#include <array>

namespace spile::plan {

namespace {

constexpr double targetOxygen = 1e-3;  // of the gas left in the barrel: common practice

// The gas comes from a cylinder in the room, as cold or warm as that.
Temperature roomTemperature(const WorkFacts& facts)
{
    const Temperature usual = celsius(15);
    return facts.climate.empty()
               ? usual
               : std::clamp(facts.climate.back().temperature, celsius(0), celsius(50));
}

Result<gas::Purge> purge(const WorkFacts& facts)
{
    SPILE_ASSIGN(full, fullVolumeOf(facts));
    SPILE_ASSIGN(pressure, needAnswer(facts, "pressure_pa"));
    SPILE_ASSIGN(bore, needAnswer(facts, "bore_um"));
    SPILE_ASSIGN(hose, needAnswer(facts, "hose_mm"));
    const gas::PurgeLine line{pascals(pressure), millimetres(bore / 1e3), millimetres(hose),
                              roomTemperature(facts)};
    return gas::purgeTo(line, full, targetOxygen);
}

SheetNumber purgeTime(const WorkFacts& facts)
{
    // The flow through an unknown fitting and hose is known to 15 %: purging.hpp says 10 to 20.
    constexpr double flowError = 1.15;
    return numberFrom(purge(facts), [](const gas::Purge& done) {
        return said(Form::Duration, done.time.si(), done.time.si() / flowError,
                    done.time.si() * flowError);
    });
}

SheetNumber purgeGas(const WorkFacts& facts)
{
    return numberFrom(purge(facts),
                      [](const gas::Purge& done) { return said(Form::Mass, done.gas.si()); });
}

SheetNumber oxygenLeft(const WorkFacts& facts)
{
    return numberFrom(purge(facts), [](const gas::Purge& done) {
        return said(Form::Share, done.residualOxygen);
    });
}

SheetNumber cylinderLeft(const WorkFacts& facts)
{
    const auto found = [&]() -> Result<Mass> {
        SPILE_ASSIGN(held, needAnswer(facts, "cylinder_g"));
        SPILE_ASSIGN(done, purge(facts));
        if (done.gas > grams(held)) {
            return Mass();
        }
        return gas::cylinderLeft(grams(held), done.gas);
    }();
    return numberFrom(found, [](Mass left) {
        SheetNumber number = said(Form::Mass, left.si());
        number.caution = left == Mass();
        return number;
    });
}

// All the gas goes into the room: the careful case.
Result<gas::Exposure> exposure(const WorkFacts& facts)
{
    SPILE_ASSIGN(litresOfRoom, needAnswer(facts, "room_l"));
    SPILE_ASSIGN(changes, needAnswer(facts, "air_changes_e2"));
    SPILE_ASSIGN(done, purge(facts));
    const Volume room = litres(litresOfRoom);
    SPILE_ASSIGN(ventilation, gas::airChanges(room, changes / 1e2));
    const double time = std::max(done.time.si(), 1.0);
    return gas::exposureTo({room, ventilation},
                           {cubicMetresPerSecond(done.gasAt1Atm.si() / time), seconds(time)});
}

SheetNumber roomAir(const WorkFacts& facts)
{
    return numberFrom(exposure(facts), [](const gas::Exposure& air) {
        SheetNumber number;
        switch (gas::roomAir(air)) {
            case gas::RoomAir::Clear:
                return inWord("stays below the 8-hour limit, by the model; a monitor decides");
            case gas::RoomAir::AboveEightHour:
                number = inWord("above the 8-hour limit of 5,000 ppm: air the room");
                break;
            case gas::RoomAir::AboveShortTerm:
                number = inWord("would pass 30,000 ppm: do not begin; lead the gas outside");
                break;
            case gas::RoomAir::AboveDanger:
                number = inWord(
                    "would pass 40,000 ppm, danger to life: do not begin; lead the gas outside");
                break;
        }
        number.caution = true;
        return number;
    });
}

SheetNumber purgePressure(const WorkFacts& facts)
{
    return numberFrom(needAnswer(facts, "pressure_pa"),
                      [](double pressure) { return said(Form::Pressure, pressure); });
}

SheetNumber pushWarn(const WorkFacts& /*facts*/)
{
    return said(Form::Pressure, gas::pushWarning.si());
}
SheetNumber pushRefuse(const WorkFacts& /*facts*/)
{
    return said(Form::Pressure, gas::pushLimit.si());
}

constexpr std::array specs = {
    NumberSpec{"purge_time", purgeTime},         NumberSpec{"purge_gas", purgeGas},
    NumberSpec{"purge_pressure", purgePressure}, NumberSpec{"oxygen_left", oxygenLeft},
    NumberSpec{"cylinder_left", cylinderLeft},   NumberSpec{"room_air", roomAir},
    NumberSpec{"push_warn", pushWarn},           NumberSpec{"push_refuse", pushRefuse},
};

}  // namespace

std::span<const NumberSpec> gasNumbers() { return specs; }

}  // namespace spile::plan
