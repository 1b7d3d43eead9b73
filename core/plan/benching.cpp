#include "core/plan/benching.hpp"

#include "core/cellar/searching.hpp"
#include "core/liquor/extract.hpp"
#include "core/outlook/readiness.hpp"
#include "core/plan/flights.hpp"
#include "core/plan/watching.hpp"

#include <algorithm>
#include <cmath>

namespace spile::plan {

namespace {

// What mixing may take from the sum of volumes, and add to strength, beyond a bound that was met.
constexpr double readingError = 1e-3;

// One standard deviation of a strength: found by gravities or distilling, and of a barrel of which
// nobody wrote it down. Common practice, no source.
constexpr double readStrengthError = 0.002;
constexpr double assumedStrengthError = 0.015;

Result<std::vector<blend::Wish>> wishesOf(const BenchAsk& ask)
{
    std::vector<blend::Wish> wishes;
    for (const BenchWish& wish : ask.wishes) {
        if (wish.low < panel::lowestScore || wish.high > panel::highestScore ||
            wish.low > wish.high) {
            return fail(ErrorCode::OutOfRange, "window of " + wish.attribute,
                        std::to_string(wish.low) + " to " + std::to_string(wish.high),
                        "1 to 9, the lower first");
        }
        const outlook::LineWindow window = outlook::windowOfScores(wish.low, wish.high);
        blend::Wish made{wish.attribute, (panel::lineOf(wish.low) + panel::lineOf(wish.high)) / 2,
                         wish.weight};
        if (wish.low > panel::lowestScore) {
            made.low = window.low;
        }
        if (wish.high < panel::highestScore) {
            made.high = window.high;
        }
        wishes.push_back(std::move(made));
    }
    return wishes;
}

Result<std::vector<cellar::BarrelRow>> fullBarrels(ledger::Database& database, Instant now)
{
    const cellar::BarrelSearch full{{}, cellar::Which::Full, now};
    SPILE_ASSIGN(found, cellar::searchBarrels(database, full, {},
                                              static_cast<int>(blend::candidatesAtMost)));
    return std::move(found.rows);
}

double strengthErrorOf(const WorkFacts& facts)
{
    const auto& fill = facts.history.fills.back();
    const auto& readings = facts.history.readings;
    const bool read =
        fill.alcoholByVolume || std::any_of(readings.begin(), readings.end(), [&](const auto& one) {
            return one.at >= fill.at && one.alcoholByVolume;
        });
    return read ? readStrengthError : assumedStrengthError;
}

// What it holds by its gauges; false if its volume was never recorded.
Result<bool> fillIn(ledger::Database& database, BenchBarrel& barrel, Instant now)
{
    SPILE_ASSIGN(facts, readFacts(database, barrel.row.barrel, now));
    const auto watch = watchOf(facts);
    if (!watch) {
        return watch.error().code == ErrorCode::NotFound ? Result<bool>(false)
                                                         : tl::unexpected(watch.error());
    }
    barrel.volume = watch->volume.median;
    barrel.alcoholByVolume = watch->alcoholByVolume.median;
    SPILE_ASSIGN(strength,
                 liquor::strengthByAlcohol(watch->specificGravity.median, barrel.alcoholByVolume));
    barrel.realExtract = strength.realExtract;
    const auto together = [](double a, double b) { return std::sqrt(a * a + b * b); };
    barrel.volumeDeviation =
        Volume::fromSi(together(wood::deviation(watch->volume).si(), watch->reading.si()));
    const wood::Spread& spread = watch->alcoholByVolume;
    barrel.strengthDeviation =
        together((spread.high - spread.low) / (2 * wood::spreadReach), strengthErrorOf(facts));
    return barrel.volume > Volume{};
}

blend::Barrel candidateOf(const BenchBarrel& barrel)
{
    blend::Barrel made{barrel.row.barrel.hex(), barrel.volume.si(), barrel.alcoholByVolume};
    for (const outlook::LevelNow& level : barrel.levels) {
        made.mean.push_back(level.mean);
        made.deviation.push_back(level.deviation);
    }
    return made;
}

// The bounds that a blend, mixed by mass, does not keep.
std::vector<blend::InTheWay> brokenBy(const BenchAsk& ask, const liquor::Mixed& mixed)
{
    std::vector<blend::InTheWay> broken;
    const auto need = [&](blend::InTheWay::What what, double value, double low, double high) {
        if (value < low * (1 - readingError) || value > high * (1 + readingError)) {
            broken.push_back({what, 0, value, value < low ? low : high});
        }
    };
    need(blend::InTheWay::What::Amount, mixed.volume.si(), ask.least.si(),
         ask.most.value_or(mixed.volume).si());
    need(blend::InTheWay::What::Strength, mixed.alcoholByVolume, ask.strengthLeast.value_or(0),
         ask.strengthMost.value_or(1));
    return broken;
}

// Puts a full barrel on the bench, or among those that are left out.
Result<void> put(ledger::Database& database, const outlook::CellarModel& model,
                 const cellar::BarrelRow& row, const std::vector<std::string>& attributes,
                 Instant now, Bench& bench)
{
    SPILE_ASSIGN(suspicion, suspicionOf(database, row.barrel, now));
    if (suspicion.soundness != panel::Soundness::Clean) {
        const bool sour = suspicion.soundness == panel::Soundness::Sour;
        bench.leftOut.push_back({row, sour ? LeftOut::Why::Sour : LeftOut::Why::Suspect});
        return {};
    }
    BenchBarrel barrel;
    barrel.row = row;
    SPILE_ASSIGN(known, fillIn(database, barrel, now));
    if (!known) {
        bench.leftOut.push_back({row, LeftOut::Why::VolumeUnknown});
        return {};
    }
    SPILE_ASSIGN(levels, outlook::levelsOf(database, model, row.barrel, attributes, now));
    barrel.levels = std::move(levels);
    bench.problem.barrels.push_back(candidateOf(barrel));
    bench.barrels.push_back(std::move(barrel));
    return {};
}

}  // namespace

Result<Bench> benchOf(ledger::Database& database, const outlook::CellarModel& model,
                      const BenchAsk& ask, Instant now, const Job& job)
{
    Bench bench;
    bench.ask = ask;
    SPILE_ASSIGN(wishes, wishesOf(ask));
    std::vector<std::string> attributes;
    attributes.reserve(wishes.size());
    for (const blend::Wish& wish : wishes) {
        attributes.push_back(wish.attribute);
    }
    bench.problem.wishes = std::move(wishes);
    const auto litresOf = [](const std::optional<Volume>& volume) {
        return volume ? std::optional(volume->si()) : std::nullopt;
    };
    bench.problem.limits = {ask.barrelsMost,    ask.partsMost,     ask.leastShare,  ask.least.si(),
                            litresOf(ask.most), ask.strengthLeast, ask.strengthMost};
    SPILE_ASSIGN(rows, fullBarrels(database, now));
    std::uint64_t done = 0;
    for (const cellar::BarrelRow& row : rows) {
        if (!job.advance(done++, rows.size())) {
            return fail(ErrorCode::Cancelled, "bench");
        }
        if (ask.keptBack.contains(row.barrel)) {
            continue;
        }
        SPILE_TRY(put(database, model, row, attributes, now, bench));
    }
    if (bench.barrels.empty()) {
        return fail(ErrorCode::OutOfRange, "barrels", "none", "a full, sound barrel");
    }
    return bench;
}

Result<liquor::Mixed> mixedOf(const Bench& bench, const blend::Blend& blend)
{
    std::vector<liquor::Portion> portions;
    for (const blend::Share& share : blend.shares) {
        const BenchBarrel& barrel = bench.barrels[share.barrel];
        portions.push_back(
            {Volume::fromSi(share.amount), barrel.alcoholByVolume, barrel.realExtract});
    }
    return liquor::mix(portions);
}

Result<blend::Found> blendsOf(const Bench& bench, const Job& job, const blend::OnBetter& onBetter)
{
    SPILE_ASSIGN(found, blend::bestBlends(bench.problem, job, onBetter));
    std::vector<blend::InTheWay> nearest;  // of the first that is left out
    std::erase_if(found.blends, [&](const blend::Blend& blend) {
        const auto mixed = mixedOf(bench, blend);
        if (!mixed) {
            return true;
        }
        auto broken = brokenBy(bench.ask, *mixed);
        if (broken.empty()) {
            return false;
        }
        if (nearest.empty()) {
            nearest = std::move(broken);
        }
        return true;
    });
    if (found.blends.empty() && !nearest.empty()) {
        found.inTheWay = std::move(nearest);
        found.proven = false;  // one that is further off may keep them
    }
    return std::move(found);
}

}  // namespace spile::plan
