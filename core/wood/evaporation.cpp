#include "core/wood/evaporation.hpp"

#include "core/units/checks.hpp"
#include "core/wood/loss_step.hpp"

#include <cmath>

namespace spile::wood {

Result<void> checkWood(const Wood& wood)
{
    SPILE_TRY(needBetween("inner_m2", wood.inner.si(), 0.01, 100.0));
    SPILE_TRY(needBetween("stave_m", wood.stave.si(), 0.003, 0.1));
    SPILE_TRY(needBetween("permeance_kg_m2_s_pa", wood.permeance, 0.0, 1e-8));
    return needBetween("ethanol_share", wood.ethanolShare, 0.0, 1.0);
}

Result<void> checkClimate(const Climate& climate)
{
    SPILE_TRY(
        needCelsiusBetween("temperature_c", climate.temperature, coldestCelsius, warmestCelsius));
    return needBetween("relative_humidity", climate.relativeHumidity, 0.0, 1.0);
}

Result<Rates> lossRates(const liquor::Liquor& liquor, const Wood& wood, const Climate& climate)
{
    SPILE_TRY(liquor::describe(liquor));
    SPILE_TRY(checkWood(wood));
    SPILE_ASSIGN(air, drying(climate));
    return ratesUnchecked(liquor, conductance(wood), air);
}

Result<void> lossCourse(const liquor::Liquor& start, const Wood& wood,
                        std::span<const Climate> days, std::span<CourseDay> out)
{
    if (out.size() != days.size()) {
        return fail(ErrorCode::OutOfRange, "rows", std::to_string(out.size()),
                    std::to_string(days.size()));
    }
    SPILE_TRY(liquor::describe(start));
    SPILE_TRY(checkWood(wood));
    const Conductance through = conductance(wood);
    liquor::Liquor liquor = start;
    DryingByDay air;
    CourseDescriber describer;
    for (std::size_t i = 0; i < days.size(); ++i) {
        SPILE_TRY(air.turnTo(days[i]));
        if (!dry(liquor, through, air.now(), factor::day)) {
            return failDry();
        }
        out[i] = describer.describe(liquor);
    }
    return {};
}

Result<Volume> evaporated(const liquor::Liquor& start, const Wood& wood, const Climate& climate,
                          Duration time)
{
    constexpr double longest = 100.0 * factor::year / factor::day;
    SPILE_TRY(needBetween("time_d", inDays(time), 0.0, longest));
    SPILE_ASSIGN(before, liquor::describe(start));
    SPILE_TRY(checkWood(wood));
    SPILE_ASSIGN(air, drying(climate));
    const Conductance through = conductance(wood);
    liquor::Liquor liquor = start;
    // Equal steps of a day at most, so that the answer has no jumps over the time.
    const auto steps = static_cast<int>(std::ceil(inDays(time)));
    for (int i = 0; i < steps; ++i) {
        if (!dry(liquor, through, air, time.si() / steps)) {
            return failDry();
        }
    }
    return before.volume - liquor::describeUnchecked(liquor).volume;
}

}  // namespace spile::wood
