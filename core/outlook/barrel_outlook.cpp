#include "core/outlook/barrel_outlook.hpp"

#include "core/outlook/scene.hpp"

#include <cmath>
#include <set>

namespace spile::outlook {

namespace {

constexpr auto horizonAfter = std::chrono::weeks(weeksForeseen);

Result<std::map<std::string, WindowNow>> windowsOf(ledger::Database& database,
                                                   const CellarModel::Learned& learned,
                                                   const cellar::BarrelStays& barrel,
                                                   const cellar::Stay& stay)
{
    std::map<std::string, WindowNow> windows;
    for (const auto& [key, taught] : learned.windows) {
        if (key.first == stay.beer) {
            windows[key.second] = {taught.window, WindowSource::Taught, taught.wishes};
        }
    }
    SPILE_ASSIGN(byHand, cellar::windowsOfBarrel(database, barrel.barrel));
    for (const cellar::Window& window : byHand) {
        WindowNow& now = windows[window.attribute];
        now.window = windowOfScores(window.low, window.high);
        now.source = WindowSource::ByHand;
    }
    return windows;
}

Result<std::map<SubjectId, std::string>> namesOf(ledger::Database& database,
                                                 const cellar::Stay& stay)
{
    std::map<SubjectId, std::string> names;
    for (const cellar::StayScore& score : stay.scores) {
        if (!names.contains(score.person)) {
            SPILE_ASSIGN(name, cellar::nameOfPerson(database, score.person));
            names[score.person] = name;
        }
    }
    return names;
}

// The levels of the other barrel's beer now, by attribute.
Result<std::map<std::string, Belief>> levelsNow(ledger::Database& database,
                                                const CellarModel::Learned& learned,
                                                const SubjectId& barrel, Instant now)
{
    SPILE_ASSIGN(stays, cellar::staysOf(database, barrel));
    std::map<std::string, Belief> levels;
    if (stays.stays.empty() || stays.stays.back().ended) {
        return fail(ErrorCode::NotFound, "fill", barrel.hex(), "a barrel that holds beer");
    }
    const cellar::Stay& stay = stays.stays.back();
    PlaceAir air(database);
    SPILE_ASSIGN(aging, agingOf(air, stays, stay.filled, now, now));
    std::set<std::string> attributes;
    for (const cellar::StayScore& score : stay.scores) {
        attributes.insert(score.attribute);
    }
    for (const std::string& attribute : attributes) {
        const CoursePrior prior = priorOf(learned, attribute, kindOf(stays, stay));
        const StayData data = stayData(learned, stay, attribute, prior, aging);
        const Mixture level =
            courseOf(learned, attribute, stay.fill, data.barrel).levelAt(aging.ageAt(now));
        levels[attribute] = {level.mean(), std::sqrt(level.variance())};
    }
    return levels;
}

Result<BarrelOutlook> outlookWith(ledger::Database& database, const CellarModel::Learned& learned,
                                  const SubjectId& barrel, Instant now, const WhatIf& change,
                                  bool brief)
{
    SPILE_ASSIGN(stays, cellar::staysOf(database, barrel));
    if (stays.stays.empty() || stays.stays.back().ended) {
        return fail(ErrorCode::NotFound, "fill", barrel.hex(), "a barrel that holds beer");
    }
    const cellar::Stay& stay = stays.stays.back();
    const Instant horizon = now + horizonAfter;
    PlaceAir air(database);
    SPILE_ASSIGN(aging, agingOf(air, stays, stay.filled, now, horizon, change.temperature));
    SPILE_ASSIGN(windows, windowsOf(database, learned, stays, stay));
    SPILE_ASSIGN(names, namesOf(database, stay));
    Scene scene{learned,          stays, stay,    aging, std::move(windows),
                std::move(names), now,   horizon, {},    {}};
    const double share =
        change.blendedWith ? change.blendedShare : change.replacedFraction.value_or(0);
    if (share < 0 || share > 1 || !std::isfinite(share)) {
        return fail(ErrorCode::OutOfRange, "share", std::to_string(share), "0 to 1");
    }
    if (share > 0) {
        scene.added = Replaced{aging.ageAt(now), share};
    }
    if (change.blendedWith) {
        SPILE_ASSIGN(levels, levelsNow(database, learned, *change.blendedWith, now));
        scene.addedLevels = std::move(levels);
    }
    scene.brief = brief;
    return tellAll(scene);
}

}  // namespace

Result<BarrelOutlook> outlookOf(ledger::Database& database, const CellarModel& model,
                                const SubjectId& barrel, Instant now)
{
    return outlookIf(database, model, barrel, now, {});
}

Result<BarrelOutlook> outlookIf(ledger::Database& database, const CellarModel& model,
                                const SubjectId& barrel, Instant now, const WhatIf& change)
{
    return outlookWith(database, model.learned(), barrel, now, change, false);
}

Result<BarrelOutlook> briefOutlook(ledger::Database& database, const CellarModel& model,
                                   const SubjectId& barrel, Instant now)
{
    return outlookWith(database, model.learned(), barrel, now, {}, true);
}

}  // namespace spile::outlook
