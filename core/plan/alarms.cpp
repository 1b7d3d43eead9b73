#include "core/plan/alarms.hpp"

#include "core/cellar/vocabulary.hpp"
#include "core/panel/line.hpp"
#include "core/plan/watching.hpp"
#include "core/wood/gravity_sign.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace spile::plan {

namespace {

using std::chrono::days;
using std::chrono::weeks;

constexpr auto untilSettled = weeks(8);  // spirit lies in layers before: see wood/gravity_sign.hpp
constexpr auto wettedBefore = days(60);
constexpr auto sameSitting = std::chrono::hours(12);
constexpr auto silence = days(152);  // the longest that the outlook lets a barrel be
constexpr double phFall = 0.2;       // over twice what two readings of a small meter differ by
constexpr double phBesideGravity = 0.15;
constexpr std::string_view notMended = "nothing yet";  // of cellar::repairs()
constexpr int loudFault = 3;                           // on the ladder
constexpr double oddTail = 0.01;
constexpr double usualVolume = 0.2;       // m3
constexpr double spiritLeftShare = 0.01;  // of the beer: what wood may still give back later on
constexpr double spiritLeftAbv = 0.6;

struct Gravity {
    Instant at;
    double value = 0;
};

const cellar::FillRow& fillOf(const WorkFacts& facts) { return facts.history.fills.back(); }

bool isFirstUse(const WorkFacts& facts)
{
    if (facts.barrel.fillNumber.value_or(1) <= 1) {
        return true;
    }
    const Instant filled = fillOf(facts).at;
    return std::any_of(facts.history.doses.begin(), facts.history.doses.end(),
                       [&](const cellar::DoseRow& dose) {
                           return dose.at <= filled && dose.at >= filled - wettedBefore &&
                                  dose.alcoholByVolume.value_or(0) > 0;
                       });
}

// When something else was mixed in last: readings before that tell nothing of what came after.
Instant lastMixed(const WorkFacts& facts)
{
    Instant last = fillOf(facts).at;
    for (const cellar::TopUpRow& topUp : facts.history.topUps) {
        last = std::max(last, topUp.at);
    }
    for (const cellar::DoseRow& dose : facts.history.doses) {
        last = std::max(last, dose.at);
    }
    return last;
}

std::vector<Gravity> gravitiesSince(const WorkFacts& facts, Instant from)
{
    std::vector<Gravity> all;
    const cellar::FillRow& fill = fillOf(facts);
    if (fill.at >= from && fill.specificGravity) {
        all.push_back({fill.at, *fill.specificGravity});
    }
    for (const cellar::ReadingRow& reading : facts.history.readings) {
        const auto gravity = gravityAt20(reading);
        if (reading.at >= from && gravity) {
            all.push_back({reading.at, *gravity});
        }
    }
    return all;
}

// pH readings of this fill.
std::vector<Gravity> phSince(const WorkFacts& facts)
{
    std::vector<Gravity> all;
    for (const cellar::ReadingRow& reading : facts.history.readings) {
        if (reading.at >= fillOf(facts).at && reading.ph) {
            all.push_back({reading.at, *reading.ph});
        }
    }
    return all;
}

// How far a fall of gravity goes that is explained; none if it cannot be computed.
std::optional<wood::GravityVerdict> judged(const WorkFacts& facts, const Gravity& from,
                                           const Gravity& to)
{
    const auto lost = lossBetween(facts, from.at, to.at, from.value);
    if (!lost) {
        return std::nullopt;
    }
    wood::GravityCase seen{lost->before, lost->after, {}, to.value - from.value};
    if (isFirstUse(facts)) {
        const Volume held = facts.barrel.volume.value_or(cubicMetres(usualVolume));
        if (const auto spirit = liquor::liquorOf(spiritLeftShare * held, spiritLeftAbv, 0)) {
            seen.spiritMost = *spirit;
        }
    }
    const auto verdict = wood::judgeGravity(seen);
    return verdict ? std::optional(*verdict) : std::nullopt;
}

bool fallGrows(const std::vector<Gravity>& readings)
{
    if (readings.size() < 3) {
        return false;
    }
    const Gravity& c = readings[readings.size() - 1];
    const Gravity& b = readings[readings.size() - 2];
    const Gravity& a = readings[readings.size() - 3];
    const auto pace = [](const Gravity& from, const Gravity& to) {
        const double length = std::chrono::duration<double>(to.at - from.at).count();
        return (from.value - to.value) / std::max(length, 1.0);
    };
    const double error = 2 * std::sqrt(2) * wood::hydrometerDeviation;
    return pace(a, b) > 0 && pace(b, c) > pace(a, b) && a.value - c.value > error;
}

bool phFellBy(const std::vector<Gravity>& readings, double by)
{
    return readings.size() >= 2 && readings.front().value - readings.back().value >= by;
}

void lookForRefermenting(const WorkFacts& facts, std::vector<Alarm>& alarms)
{
    const Instant mixed = lastMixed(facts);
    const bool unsettled = isFirstUse(facts) || mixed > fillOf(facts).at;
    const auto all = gravitiesSince(facts, mixed);
    const auto settled = gravitiesSince(facts, unsettled ? mixed + untilSettled : mixed);
    if (settled.size() >= 2) {
        const Gravity& from = settled.front();
        const Gravity& to = settled.back();
        const auto verdict = judged(facts, from, to);
        if (verdict && verdict->unexplainedFall) {
            alarms.push_back(
                {AlarmKind::Referments, to.at, from.value, to.value,
                 from.value + verdict->byEvaporation + verdict->bySpirit - verdict->readingError});
        }
        return;
    }
    const double error = 2 * std::sqrt(2) * wood::hydrometerDeviation;
    const bool withPh = all.size() >= 2 && all.front().value - all.back().value > error &&
                        phFellBy(phSince(facts), phBesideGravity);
    if (settled.empty() && (fallGrows(all) || withPh)) {
        alarms.push_back({AlarmKind::GravityFalls, all.back().at, all.front().value,
                          all.back().value, all.front().value - error});
    }
}

void lookForSouring(const WorkFacts& facts, const outlook::BarrelOutlook* outlook,
                    std::vector<Alarm>& alarms)
{
    const auto ph = phSince(facts);
    if (phFellBy(ph, phFall)) {
        alarms.push_back({AlarmKind::PhFalls, ph.back().at, ph.front().value, ph.back().value,
                          ph.front().value - phFall});
    }
    if (outlook == nullptr) {
        return;
    }
    for (const outlook::AttributeOutlook& one : outlook->attributes) {
        if (one.attribute == "acidity" && one.lastTail && *one.lastTail < oddTail &&
            one.lastMean > one.lastForeseen) {
            alarms.push_back({AlarmKind::AcidityJumps, one.scores.back().at,
                              panel::scoreOfLine(one.lastForeseen),
                              panel::scoreOfLine(one.lastMean), 0, *one.lastTail});
        }
    }
}

// Faults of the last sitting.
void lookAtFaults(const WorkFacts& facts, std::vector<Alarm>& alarms)
{
    constexpr std::array sour = {"vinegar", "solvent"};
    constexpr std::array oxidised = {"wet cardboard"};
    const auto& tastings = facts.history.tastings;
    const auto isOf = [](const auto& words, const std::string& fault) {
        return std::find(words.begin(), words.end(), fault) != words.end();
    };
    for (const cellar::TasteRow& taste : tastings) {
        if (taste.at < fillOf(facts).at || taste.at + sameSitting < tastings.back().at) {
            continue;
        }
        for (const auto& [fault, strength] : taste.faults) {
            if (strength >= loudFault && (isOf(sour, fault) || isOf(oxidised, fault))) {
                alarms.push_back({isOf(sour, fault) ? AlarmKind::SourFault : AlarmKind::Oxidised,
                                  taste.at, 0, static_cast<double>(strength), loudFault, 0, fault});
            }
        }
    }
}

void lookForLeaks(const WorkFacts& facts, std::vector<Alarm>& alarms)
{
    const auto watch = watchOf(facts);
    if (watch && watch->last && watch->last->sign == wood::LossSign::Leak) {
        alarms.push_back({AlarmKind::Leaks, facts.history.gauges.back().at,
                          inLitres(watch->last->predicted), inLitres(watch->last->measured),
                          inLitres(watch->last->leakAbove)});
    }
    const cellar::OtherRow* last = nullptr;
    for (const cellar::OtherRow& other : facts.history.others) {
        const bool mended = other.kind == "repair" && other.text != notMended;
        const bool tells = other.kind == "check" || mended;
        if (tells && other.at >= fillOf(facts).at && (last == nullptr || other.at >= last->at)) {
            last = &other;
        }
    }
    if (last != nullptr && last->kind == "check" && !cellar::isSound(last->text)) {
        alarms.push_back({AlarmKind::Unsound, last->at, 0, 0, 0, 0, last->text});
    }
}

void lookForSilence(const WorkFacts& facts, std::vector<Alarm>& alarms)
{
    Instant last = fillOf(facts).at;
    const auto look = [&](const auto& rows) {
        for (const auto& row : rows) {
            last = std::max(last, row.at);
        }
    };
    look(facts.history.draws);
    look(facts.history.tastings);
    look(facts.history.gauges);
    look(facts.history.readings);
    look(facts.history.others);
    look(facts.history.topUps);
    const auto quiet = std::chrono::duration_cast<days>(facts.now - last);
    if (quiet > silence) {
        alarms.push_back({AlarmKind::Silent, last, 0, static_cast<double>(quiet.count()),
                          static_cast<double>(days(silence).count())});
    }
}

}  // namespace

std::vector<Alarm> alarmsOf(const WorkFacts& facts, const outlook::BarrelOutlook* outlook)
{
    std::vector<Alarm> alarms;
    if (!facts.barrel.filled || facts.history.fills.empty()) {
        return alarms;
    }
    lookForLeaks(facts, alarms);
    lookForSouring(facts, outlook, alarms);
    lookAtFaults(facts, alarms);
    lookForRefermenting(facts, alarms);
    if (outlook != nullptr && outlook->advice == outlook::Advice::TooFar) {
        alarms.push_back({AlarmKind::TooFar, outlook->now, 0,
                          outlook->chances.empty() ? 1 : outlook->chances.front().past});
    }
    lookForSilence(facts, alarms);
    return alarms;
}

}  // namespace spile::plan
