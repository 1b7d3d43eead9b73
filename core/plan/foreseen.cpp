#include "core/plan/foreseen.hpp"

#include "core/plan/alarms.hpp"

#include <cmath>

namespace spile::plan {

const char* wordOf(outlook::TastingReason reason)
{
    switch (reason) {
        case outlook::TastingReason::Decides:
            return cellar::tastingReason::decides;
        case outlook::TastingReason::BeforeTooFar:
            return cellar::tastingReason::beforeTooFar;
        case outlook::TastingReason::LooksAgain:
            return cellar::tastingReason::looksAgain;
        case outlook::TastingReason::Habit:
            return cellar::tastingReason::habit;
        case outlook::TastingReason::AtOnce:
            return cellar::tastingReason::atOnce;
    }
    return cellar::tastingReason::habit;
}

const char* wordOf(outlook::Advice advice)
{
    switch (advice) {
        case outlook::Advice::Wait:
            return cellar::advice::wait;
        case outlook::Advice::Pull:
            return cellar::advice::pull;
        case outlook::Advice::TooFar:
            return cellar::advice::tooFar;
        case outlook::Advice::NoWindows:
            return cellar::advice::noWindows;
    }
    return cellar::advice::noWindows;
}

namespace {

// A silent barrel is due by its date already, and one past its time by its advice.
bool asksForALook(AlarmKind kind) { return kind != AlarmKind::Silent && kind != AlarmKind::TooFar; }

// An alarm that was not looked after since asks for a tasting at once.
Result<outlook::NextTasting> nextOf(ledger::Database& database, const outlook::CalendarRow& row,
                                    Instant now)
{
    SPILE_ASSIGN(facts, readFacts(database, row.barrel, now));
    outlook::NextTasting next = row.next;
    for (const Alarm& alarm : alarmsOf(facts, nullptr)) {
        if (asksForALook(alarm.kind) && alarm.at < next.at) {
            next = {alarm.at, outlook::TastingReason::AtOnce, 0};
        }
    }
    return next;
}

}  // namespace

Result<std::vector<cellar::KeptOutlook>> foreseenOf(ledger::Database& database,
                                                    const outlook::CellarModel& model, Instant now,
                                                    const Job& job)
{
    SPILE_ASSIGN(fingerprints, cellar::outlookFingerprints(database));
    SPILE_ASSIGN(rows, outlook::calendarOf(database, model, now, job));
    std::vector<cellar::KeptOutlook> kept;
    for (const outlook::CalendarRow& row : rows) {
        const auto fingerprint = fingerprints.find(row.barrel);
        if (fingerprint == fingerprints.end()) {
            continue;  // filled meanwhile
        }
        cellar::KeptOutlook& one = kept.emplace_back();
        one.barrel = row.barrel;
        one.fingerprint = fingerprint->second;
        SPILE_ASSIGN(next, nextOf(database, row, now));
        one.nextTasting = next.at;
        one.reason = wordOf(next.reason);
        one.advice = wordOf(row.advice);
        if (row.advice != outlook::Advice::NoWindows) {
            one.best = cellar::KeptOutlook::Best{row.chanceNow, row.bestChance, row.bestFrom,
                                                 row.best, row.bestTo};
        }
        one.horizon = row.horizon;
        one.made = now;
    }
    return kept;
}

int inTen(double chance) { return static_cast<int>(std::lround(10.0 * chance)); }

}  // namespace spile::plan
