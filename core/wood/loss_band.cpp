#include "core/wood/loss_band.hpp"

#include "core/units/checks.hpp"
#include "core/wood/loss_step.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace spile::wood {

namespace {

constexpr std::size_t causes = 3;
constexpr std::size_t runs = 1 + 2 * causes;  // the middle one, then low and high of each cause

Result<void> needOrder(const Spread& s)
{
    constexpr double infinite = std::numeric_limits<double>::infinity();
    SPILE_TRY(needBetween("spread", s.low, 0.0, infinite));
    SPILE_TRY(needBetween("spread", s.median, s.low, infinite));
    return needBetween("spread", s.high, s.median, infinite);
}

struct Run {
    liquor::Liquor liquor;
    Conductance through;
    double soakage = 0;  // m3 in the end
    CourseDay end;
    CourseDescriber describer;
};

// A day of one barrel: what evaporates, then what the wood drinks of it.
bool passDay(Run& run, const Drying& air, double soakedToday) noexcept
{
    const double share = run.soakage * soakedToday / run.end.volume.si();
    if (!(share < 1) || !dry(run.liquor, run.through, air, factor::day)) {
        return false;
    }
    run.liquor = (1.0 - share) * run.liquor;
    run.end = run.describer.describe(run.liquor);
    return true;
}

using Runs = std::array<Run, runs>;

// `of` takes the number from a run's end of day.
template <class Of>
Spread spreadOver(const Runs& all, Of of) noexcept
{
    const double middle = of(all[0].end);
    double below = 0;
    double above = 0;
    for (std::size_t cause = 0; cause < causes; ++cause) {
        const double a = of(all[1 + 2 * cause].end) - middle;
        const double b = of(all[2 + 2 * cause].end) - middle;
        const double least = std::min({a, b, 0.0});
        const double most = std::max({a, b, 0.0});
        below += least * least;
        above += most * most;
    }
    return {middle - std::sqrt(below), middle, middle + std::sqrt(above)};
}

Result<Runs> startRuns(const liquor::Liquor& start, const WoodPrior& wood, const Spread& soakage)
{
    SPILE_TRY(needOrder(wood.permeance));
    SPILE_TRY(needOrder(wood.ethanolShare));
    SPILE_TRY(needOrder(soakage));
    SPILE_TRY(liquor::describe(start));
    Runs all;
    for (std::size_t i = 0; i < runs; ++i) {
        const auto pick = [i](const Spread& s, std::size_t cause) {
            return i == 1 + 2 * cause ? s.low : i == 2 + 2 * cause ? s.high : s.median;
        };
        const Wood one{wood.inner, wood.stave, pick(wood.permeance, 0), pick(wood.ethanolShare, 1)};
        SPILE_TRY(checkWood(one));
        all[i] = {start, conductance(one), pick(soakage, 2), {}, {}};
        all[i].end = all[i].describer.describe(start);
    }
    return all;
}

}  // namespace

Result<void> lossBand(const liquor::Liquor& start, const WoodPrior& wood,
                      const VolumeSpread& soakage, std::span<const Climate> days,
                      std::span<BandDay> out)
{
    if (out.size() != days.size()) {
        return fail(ErrorCode::OutOfRange, "rows", std::to_string(out.size()),
                    std::to_string(days.size()));
    }
    const Spread soaked{soakage.low.si(), soakage.median.si(), soakage.high.si()};
    SPILE_ASSIGN(all, startRuns(start, wood, soaked));
    // exp(-t / 10 d), day by day.
    const double keep = std::exp(-0.1);
    double dryYet = 1;
    DryingByDay air;
    for (std::size_t i = 0; i < days.size(); ++i) {
        SPILE_TRY(air.turnTo(days[i]));
        const double soakedToday = dryYet * (1.0 - keep);
        dryYet *= keep;
        for (Run& run : all) {
            if (!passDay(run, air.now(), soakedToday)) {
                return failDry();
            }
        }
        const Spread volume = spreadOver(all, [](const auto& m) { return m.volume.si(); });
        out[i] = {{cubicMetres(volume.low), cubicMetres(volume.median), cubicMetres(volume.high)},
                  spreadOver(all, [](const auto& m) { return m.alcoholByVolume; }),
                  spreadOver(all, [](const auto& m) { return m.specificGravity; })};
    }
    return {};
}

}  // namespace spile::wood
