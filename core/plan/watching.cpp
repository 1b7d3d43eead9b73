#include "core/plan/watching.hpp"

#include "core/liquor/extract.hpp"
#include "core/plan/barrel_shape.hpp"
#include "core/wood/climate_days.hpp"
#include "core/wood/soakage.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

namespace spile::plan {

namespace {

// Beer whose readings nobody wrote down: a strong one. Common practice, no source.
constexpr double usualAbv = 0.10;
constexpr double usualGravity = 1.015;
constexpr auto dayLength = std::chrono::days(1);
constexpr double daysMost = 36'500;

// A volume that is known at a time.
struct Known {
    Instant at;
    Volume volume;
    std::optional<wood::GaugeMethod> method;  // none: written down at the fill
};

struct Stay {
    Known begin;  // the fill
    Duration emptyBefore;
    std::vector<Known> gauges;  // exact ones, since the fill
    double alcoholByVolume = usualAbv;
    double realExtract = 0;
};

wood::GaugeMethod methodOf(const std::string& word)
{
    return word == "weight"        ? wood::GaugeMethod::Weight
           : word == "meter"       ? wood::GaugeMethod::Meter
           : word == "filled full" ? wood::GaugeMethod::FilledFull
                                   : wood::GaugeMethod::Dip;
}

Duration between(Instant from, Instant to)
{
    return seconds(std::chrono::duration<double>(to - from).count());
}

// The last reading of gravity or strength since `from`, if there is one.
template <class Get>
std::optional<double> lastSince(const std::vector<cellar::ReadingRow>& readings, Instant from,
                                Get get)
{
    std::optional<double> last;
    for (const cellar::ReadingRow& reading : readings) {
        if (reading.at >= from && get(reading)) {
            last = get(reading);
        }
    }
    return last;
}

Result<Stay> stayOf(const WorkFacts& facts)
{
    const auto& fills = facts.history.fills;
    if (!facts.barrel.filled || fills.empty()) {
        return fail(ErrorCode::NotFound, "fill", "nothing", "a barrel that holds beer");
    }
    const cellar::FillRow& fill = fills.back();
    Stay stay;
    for (const cellar::GaugeRow& gauge : facts.history.gauges) {
        if (gauge.at >= fill.at && gauge.bound == cellar::Bound::None) {
            stay.gauges.push_back({gauge.at, gauge.volume, methodOf(gauge.method)});
        }
    }
    if (!fill.volume && stay.gauges.empty()) {
        return fail(ErrorCode::NotFound, "volume_ml", "nothing", "a fill or a gauge with a volume");
    }
    stay.begin = fill.volume ? Known{fill.at, *fill.volume, {}} : stay.gauges.front();
    Instant emptied = facts.barrel.emptiedAt.value_or(fill.at);
    for (const cellar::OtherRow& other : facts.history.others) {
        if (other.kind == "empty" && other.at < fill.at) {
            emptied = other.at;
        }
    }
    stay.emptyBefore = between(std::min(emptied, fill.at), fill.at);
    stay.alcoholByVolume = lastSince(facts.history.readings, fill.at, [](const auto& reading) {
                               return reading.alcoholByVolume;
                           }).value_or(fill.alcoholByVolume.value_or(usualAbv));
    const double gravity = lastSince(facts.history.readings, fill.at, [](const auto& reading) {
                               return gravityAt20(reading);
                           }).value_or(fill.specificGravity.value_or(usualGravity));
    auto strength = liquor::strengthByAlcohol(gravity, stay.alcoholByVolume);
    if (!strength) {  // a gravity that does not go with the strength: the usual one
        strength = liquor::strengthByAlcohol(usualGravity, usualAbv);
        stay.alcoholByVolume = usualAbv;
    }
    stay.realExtract = strength->realExtract;
    return stay;
}

// Draws less top-ups between two times.
Volume takenBetween(const WorkFacts& facts, Instant from, Instant to)
{
    Volume taken;
    for (const cellar::DrawRow& draw : facts.history.draws) {
        if (draw.at >= from && draw.at < to) {
            taken = taken + draw.volume;
        }
    }
    for (const cellar::TopUpRow& topUp : facts.history.topUps) {
        if (topUp.at >= from && topUp.at < to) {
            taken = taken - topUp.volume;
        }
    }
    return taken;
}

// What the barrel and its place are to evaporation.
struct Surroundings {
    wood::WoodPrior wood;
    wood::VolumeSpread soakage;  // of the whole stay
    std::vector<wood::ClimateRecord> records;
    Volume full;
};

Result<Surroundings> surroundingsOf(const WorkFacts& facts, const Stay& stay)
{
    SPILE_ASSIGN(shape, shapeOf(facts.measures, facts.barrel.size));
    SPILE_ASSIGN(inner, vessel::innerArea(shape));
    SPILE_ASSIGN(full, vessel::fullVolume(shape));
    Surroundings all;
    all.full = full;
    all.wood.inner = inner;
    all.wood.stave = facts.measures.stave.value_or(wood::standardStave);
    SPILE_ASSIGN(soakage, wood::soakagePrior(inner, stay.emptyBefore));
    all.soakage = soakage;
    for (const cellar::ClimateRow& row : facts.climate) {
        all.records.push_back({toMs(row.at) / 1000, {row.temperature, row.relativeHumidity}});
    }
    return all;
}

Result<std::vector<wood::Climate>> climateBetween(const Surroundings& all, Instant from, Instant to)
{
    const double wanted = std::chrono::duration<double, std::ratio<86'400>>(to - from).count();
    std::vector<wood::Climate> days(
        static_cast<std::size_t>(std::clamp(std::ceil(wanted), 1.0, daysMost)));
    SPILE_TRY(wood::climateDays(all.records, toMs(from) / 1000, days));
    return days;
}

// What is left to soak in: the law is exponential, so that it begins anew at any time.
Result<wood::VolumeSpread> soakageLeft(const Surroundings& all, const Stay& stay, Instant from)
{
    SPILE_ASSIGN(done, wood::soakedBy(between(stay.begin.at, std::max(from, stay.begin.at))));
    return (1 - done) * all.soakage;
}

Result<Volume> deviationOf(const Known& known, Volume full)
{
    return wood::readingDeviation(known.method.value_or(wood::GaugeMethod::FilledFull), full);
}

// What two gauges say of the rate.
Result<wood::LossSeen> seenBetween(const WorkFacts& facts, const Surroundings& all,
                                   const Stay& stay, const wood::LossRate& rate, const Known& from,
                                   const Known& to)
{
    SPILE_ASSIGN(days, climateBetween(all, from.at, to.at));
    SPILE_ASSIGN(start, liquor::liquorOf(from.volume, stay.alcoholByVolume, stay.realExtract));
    const wood::Wood wood{all.wood.inner, all.wood.stave, std::exp(rate.logMedian),
                          all.wood.ethanolShare.median};
    std::vector<wood::CourseDay> course(days.size());
    SPILE_TRY(wood::lossCourse(start, wood, days, course));
    SPILE_ASSIGN(soakage, soakageLeft(all, stay, from.at));
    SPILE_ASSIGN(soaked, wood::soakedBy(between(from.at, to.at)));
    SPILE_ASSIGN(first, deviationOf(from, all.full));
    SPILE_ASSIGN(second, deviationOf(to, all.full));
    const Volume unsureSoakage = soaked * wood::deviation(soakage);
    const Volume gauges = wood::deviationOfLoss(first, second);
    return wood::LossSeen{
        from.volume - course.back().volume,
        from.volume - to.volume - takenBetween(facts, from.at, to.at) - soaked * soakage.median,
        wood::deviationOfLoss(gauges, unsureSoakage)};
}

}  // namespace

Result<Watch> watchOf(const WorkFacts& facts)
{
    SPILE_ASSIGN(stay, stayOf(facts));
    SPILE_ASSIGN(all, surroundingsOf(facts, stay));
    Watch watch;
    watch.rate = wood::lossRatePrior();
    Known at = stay.begin;
    for (const Known& gauge : stay.gauges) {
        if (gauge.at - at.at >= dayLength) {  // a shorter time teaches nothing
            SPILE_ASSIGN(seen, seenBetween(facts, all, stay, watch.rate, at, gauge));
            SPILE_ASSIGN(verdict, wood::judgeLoss(watch.rate, seen));
            watch.last = verdict;
            if (const auto rate = wood::updated(watch.rate, seen)) {
                watch.rate = *rate;  // else a gain that nobody wrote down: it teaches nothing
            }
        }
        at = gauge;
    }
    all.wood.permeance = wood::spreadOf(watch.rate);
    SPILE_ASSIGN(days, climateBetween(all, at.at, std::max(facts.now, at.at)));
    SPILE_ASSIGN(start, liquor::liquorOf(at.volume, stay.alcoholByVolume, stay.realExtract));
    SPILE_ASSIGN(soakage, soakageLeft(all, stay, at.at));
    std::vector<wood::BandDay> band(days.size());
    SPILE_TRY(wood::lossBand(start, all.wood, soakage, days, band));
    const wood::BandDay& now = band.back();
    const Volume taken = takenBetween(facts, at.at, facts.now + dayLength);
    const auto left = [&](Volume volume) { return std::max(volume - taken, Volume()); };
    watch.volume = {left(now.volume.low), left(now.volume.median), left(now.volume.high)};
    watch.alcoholByVolume = now.alcoholByVolume;
    watch.specificGravity = now.specificGravity;
    watch.since = at.at;
    SPILE_ASSIGN(reading, deviationOf(at, all.full));
    watch.reading = reading;
    return watch;
}

Result<Lost> lossBetween(const WorkFacts& facts, Instant from, Instant to, double specificGravity)
{
    SPILE_ASSIGN(stay, stayOf(facts));
    SPILE_ASSIGN(all, surroundingsOf(facts, stay));
    SPILE_ASSIGN(strength, liquor::strengthByAlcohol(specificGravity, stay.alcoholByVolume));
    SPILE_ASSIGN(days, climateBetween(all, from, to));
    SPILE_ASSIGN(start,
                 liquor::liquorOf(stay.begin.volume, stay.alcoholByVolume, strength.realExtract));
    const wood::Wood wood{all.wood.inner, all.wood.stave, std::exp(wood::lossRatePrior().logMedian),
                          all.wood.ethanolShare.median};
    std::vector<wood::CourseDay> course(days.size());
    SPILE_TRY(wood::lossCourse(start, wood, days, course));
    const wood::CourseDay& end = course.back();
    SPILE_ASSIGN(after, liquor::liquorOf(end.volume, end.alcoholByVolume, end.realExtract));
    return Lost{start, after};
}

}  // namespace spile::plan
