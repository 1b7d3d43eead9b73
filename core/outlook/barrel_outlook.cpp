#include "core/outlook/barrel_outlook.hpp"

#include "core/outlook/scene.hpp"

#include <cmath>

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

// A barrel's beer and how it has aged until now.
struct BeerNow {
    cellar::BarrelStays barrel;
    Aging aging;
};
Result<BeerNow> beerNow(ledger::Database& database, const SubjectId& barrel, Instant now)
{
    SPILE_ASSIGN(stays, cellar::staysOf(database, barrel));
    if (stays.stays.empty() || stays.stays.back().ended) {
        return fail(ErrorCode::NotFound, "fill", barrel.hex(), "a barrel that holds beer");
    }
    PlaceAir air(database);
    SPILE_ASSIGN(aging, agingOf(air, stays, stays.stays.back().filled, now, now));
    return BeerNow{std::move(stays), std::move(aging)};
}

LevelNow levelOf(const CellarModel::Learned& learned, const BeerNow& beer,
                 const std::string& attribute, Instant now)
{
    const cellar::Stay& stay = beer.barrel.stays.back();
    const CoursePrior prior = priorOf(learned, attribute, kindOf(beer.barrel, stay));
    const StayData data = stayData(learned, stay, attribute, prior, beer.aging);
    const Mixture level =
        courseOf(learned, attribute, stay.fill, data.barrel).levelAt(beer.aging.ageAt(now));
    return {level.mean(), std::sqrt(level.variance()),
            static_cast<int>(data.barrel.data.scores.size())};
}

// The levels of the other barrel's beer now, of all attributes that were scored.
Result<std::map<std::string, Belief>> levelsNow(ledger::Database& database,
                                                const CellarModel::Learned& learned,
                                                const SubjectId& barrel, Instant now)
{
    SPILE_ASSIGN(beer, beerNow(database, barrel, now));
    std::map<std::string, Belief> levels;
    for (const cellar::StayScore& score : beer.barrel.stays.back().scores) {
        if (!levels.contains(score.attribute)) {
            const LevelNow level = levelOf(learned, beer, score.attribute, now);
            levels[score.attribute] = {level.mean, level.deviation};
        }
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

Result<std::vector<LevelNow>> levelsOf(ledger::Database& database, const CellarModel& model,
                                       const SubjectId& barrel,
                                       std::span<const std::string> attributes, Instant now)
{
    SPILE_ASSIGN(beer, beerNow(database, barrel, now));
    std::vector<LevelNow> levels;
    for (const std::string& attribute : attributes) {
        levels.push_back(levelOf(model.learned(), beer, attribute, now));
    }
    return levels;
}

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
