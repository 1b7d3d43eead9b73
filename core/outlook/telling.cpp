// From the courses of a barrel's attributes to what is told of it.
#include "core/cellar/barrel_summary.hpp"
#include "core/outlook/next_tasting.hpp"
#include "core/outlook/scene.hpp"
#include "core/panel/line.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

namespace spile::outlook {

namespace {

using std::chrono::days;
using std::chrono::weeks;

constexpr auto courseStep = weeks(4);
constexpr double early = 0.1;
constexpr double middle = 0.5;
constexpr double late = 0.9;
constexpr double lowEnd = 0.05;
constexpr double highEnd = 0.95;
constexpr double doubtful = 0.5;
constexpr int leastBefore = 2;  // sittings, before the last one may be odd
constexpr std::size_t weeksBeforeFirst = 13;
constexpr std::size_t weeksToFirst = 43;
constexpr std::size_t weeksForNext = 70;  // that the choice of the next tasting looks at
constexpr auto atTheFill = days(7);       // a tasting so early is of the beer as it went in

struct Fitted {
    std::string attribute;
    StayData data;
    Course course;
    WindowNow window;
    bool rising = true;
};

Fitted fit(const Scene& scene, const std::string& attribute)
{
    const BarrelKind kind = kindOf(scene.barrel, scene.stay);
    const CoursePrior prior = priorOf(scene.learned, attribute, kind);
    StayData data = stayData(scene.learned, scene.stay, attribute, prior, scene.aging);
    if (scene.added) {
        data.barrel.data.replaced.push_back(*scene.added);
        const auto level = scene.addedLevels.find(attribute);
        if (level != scene.addedLevels.end()) {
            data.barrel.data.added = level->second;
        }
    }
    Course course = courseOf(scene.learned, attribute, scene.stay.fill, data.barrel);
    const auto window = scene.windows.find(attribute);
    WindowNow now = window == scene.windows.end() ? WindowNow{} : window->second;
    const double begin = course.levelAt(0).mean();
    const bool rising = now.window ? begin <= (now.window->low + now.window->high) / 2
                                   : prior.end.mean >= prior.start.mean;
    return {attribute, std::move(data), std::move(course), now, rising};
}

Foreseen foresee(const Scene& scene, const Fitted& fitted, Instant from, std::size_t count,
                 std::size_t tasters)
{
    Foreseen foreseen;
    const double share = Noise().sessionShare;
    foreseen.window = *fitted.window.window;
    foreseen.rising = fitted.rising;
    foreseen.sittingVariance =
        fitted.course.noiseVariance() * (1 / static_cast<double>(tasters) + share * share);
    foreseen.resize(count);
    Mixture level;
    for (std::size_t week = 0; week < count; ++week) {
        fitted.course.levelAt(scene.aging.ageAt(from + weeks(week)), level);
        foreseen.set(week, level);
    }
    return foreseen;
}

// How many usually taste together: of the last sitting, at least one.
std::size_t tastersOf(const cellar::Stay& stay)
{
    std::set<SubjectId> persons;
    for (const cellar::StayScore& score : stay.scores) {
        if (score.at > stay.scores.back().at - days(1)) {
            persons.insert(score.person);
        }
    }
    return std::max<std::size_t>(1, persons.size());
}

std::optional<Instant> lastTasted(const cellar::Stay& stay)
{
    return stay.scores.empty() || stay.scores.back().at - stay.filled <= atTheFill
               ? std::nullopt
               : std::optional(stay.scores.back().at);
}

// A tasting through the bunghole, or a sample that is much of a small barrel, has to tell more.
double costOf(const cellar::Stay& stay)
{
    constexpr double fromAbove = 0.3;
    constexpr double byValve = 0.15;
    constexpr double perShare = 8;
    constexpr double most = 1.6;
    if (stay.draws.empty()) {
        return 1;
    }
    const cellar::StayDraw& last = stay.draws.back();
    const double share = stay.volume ? last.volume / *stay.volume : 0;
    const double air = last.method == "bunghole" ? fromAbove : last.method == "valve" ? byValve : 0;
    return std::min(most, 1 + air + perShare * share);
}

TastingRule ruleFor(const cellar::Stay& stay)
{
    TastingRule rule;
    rule.decides = rule.decides * costOf(stay);
    if (!lastTasted(stay)) {
        rule.leastWeeks = weeksBeforeFirst;
        rule.mostWeeks = weeksToFirst;
    }
    return rule;
}

NextTasting byHabit(const cellar::Stay& stay)
{
    cellar::BarrelFacts facts;
    facts.filled = true;
    facts.filledAt = stay.filled;
    facts.lastTasted = lastTasted(stay);
    return {cellar::nextStep(facts).due.value_or(stay.filled), TastingReason::Habit, 0};
}

NextTasting nextTasting(const std::vector<Foreseen>& sinceLast, const cellar::Stay& stay,
                        Instant from)
{
    const Decision decision = decide(sinceLast, ruleFor(stay));
    constexpr std::array reasons = {TastingReason::Decides, TastingReason::BeforeTooFar,
                                    TastingReason::LooksAgain};
    return {from + weeks(decision.week), reasons.at(static_cast<std::size_t>(decision.why)),
            decision.decides};
}

// Merges the parts that differ only in their noise, for what is drawn: a fifth of the parts.
void coarsen(Mixture& level)
{
    constexpr std::size_t atOnce = 5;
    std::vector<Mixture::Part> merged;
    for (std::size_t from = 0; from < level.parts.size(); from += atOnce) {
        Mixture some;
        double weight = 0;
        for (std::size_t i = from; i < std::min(from + atOnce, level.parts.size()); ++i) {
            some.parts.push_back(level.parts[i]);
            weight += level.parts[i].weight;
        }
        if (weight <= 0) {
            continue;
        }
        for (Mixture::Part& part : some.parts) {
            part.weight /= weight;
        }
        merged.push_back({weight, some.mean(), std::sqrt(some.variance())});
    }
    level.parts = std::move(merged);
}

void drawCourse(const Scene& scene, const Fitted& fitted, AttributeOutlook& out)
{
    Mixture level;
    const auto point = [&](Instant at) {
        fitted.course.levelAt(scene.aging.ageAt(at), level);
        const double within = out.window ? level.within(out.window->low, out.window->high) : 1;
        coarsen(level);
        const auto shown = [&](double p) {
            return std::clamp(level.quantile(p), lineLow, lineHigh);
        };
        out.course.push_back({at, shown(lowEnd), shown(middle), shown(highEnd), within});
    };
    for (Instant at = scene.stay.filled; at < scene.now; at += courseStep) {
        point(at);
    }
    for (Instant at = scene.now; at <= scene.horizon; at += courseStep) {
        point(at);
    }
}

void tellEntry(const Foreseen& foreseen, Instant from, AttributeOutlook& out)
{
    double most = 0;
    for (std::size_t week = 0; week < foreseen.standing.size(); ++week) {
        const auto& sides = foreseen.standing[week].sides;
        most = std::max(most, 1 - (out.rising ? sides.below : sides.above));
        const Instant at = from + weeks(week);
        if (most >= early && !out.entryEarly) {
            out.entryEarly = at;
        }
        if (most >= middle && !out.entryMiddle) {
            out.entryMiddle = at;
        }
        if (most >= late && !out.entryLate) {
            out.entryLate = at;
        }
    }
    out.neverByHorizon = 1 - most;
}

void tellDoubt(const Fitted& fitted, AttributeOutlook& out)
{
    const std::vector<Suspect> suspects = fitted.course.suspects();
    if (suspects.empty() || suspects.front().what == Suspect::What::Nothing ||
        suspects.front().chance < doubtful) {
        return;
    }
    out.doubt = suspects.front().chance;
    for (std::size_t i = 0; i < fitted.data.used.size(); ++i) {
        const bool meant =
            suspects.front().what == Suspect::What::Score
                ? static_cast<int>(i) == suspects.front().which
                : fitted.data.barrel.data.scores[i].session == suspects.front().which;
        if (meant) {
            out.doubtfulScore = fitted.data.used[i]->taste;
            return;
        }
    }
}

// The last sitting, as it was foreseen by those before it.
void tellLast(const Scene& scene, const Fitted& fitted, AttributeOutlook& out)
{
    SharedBarrel before = fitted.data.barrel;
    auto& scores = before.data.scores;
    if (scores.empty() || scores.back().session < leastBefore) {
        return;
    }
    const int last = scores.back().session;
    const double age = scores.back().age;
    double sum = 0;
    double count = 0;
    for (const Scored& score : scores) {
        sum += score.session == last ? score.line : 0;
        count += score.session == last ? 1 : 0;
    }
    std::erase_if(scores, [&](const Scored& score) { return score.session == last; });
    const Course course = courseOf(scene.learned, fitted.attribute, scene.stay.fill, before);
    Mixture level = course.levelAt(age);
    const double share = Noise().sessionShare;
    const double noise = course.noiseVariance() * (1 / count + share * share);
    for (Mixture::Part& part : level.parts) {
        part.deviation = std::sqrt(part.deviation * part.deviation + noise);
    }
    out.lastMean = sum / count;
    out.lastForeseen = level.mean();
    const double below = level.below(out.lastMean);
    out.lastTail = 2 * std::min(below, 1 - below);
}

double shareOfPrior(const Scene& scene, const Fitted& fitted)
{
    SharedBarrel nothing;
    nothing.prior = fitted.data.barrel.prior;
    const double age = scene.aging.ageAt(scene.now);
    const Course before = courseOf(scene.learned, fitted.attribute, scene.stay.fill, nothing);
    return std::min(1.0, fitted.course.levelAt(age).variance() / before.levelAt(age).variance());
}

AttributeOutlook tell(const Scene& scene, const Fitted& fitted)
{
    AttributeOutlook out;
    out.attribute = fitted.attribute;
    out.source = fitted.window.source;
    out.window = fitted.window.window;
    out.directions = fitted.window.wishes;
    out.rising = fitted.rising;
    for (const cellar::StayScore* score : fitted.data.used) {
        const auto name = scene.names.find(score->person);
        out.scores.push_back({score->taste, score->at, score->person,
                              name == scene.names.end() ? std::string() : name->second,
                              panel::lineOf(score->score)});
    }
    out.priorShare = fitted.data.used.empty() ? 1 : shareOfPrior(scene, fitted);
    drawCourse(scene, fitted, out);
    tellDoubt(fitted, out);
    tellLast(scene, fitted, out);
    return out;
}

// The chances of all windowed attributes together, and what follows from them.
void tellTogether(const Scene& scene, const std::vector<Fitted>& windowed, BarrelOutlook& out)
{
    const std::size_t tasters = tastersOf(scene.stay);
    const Instant from = lastTasted(scene.stay).value_or(scene.stay.filled);
    std::vector<Foreseen> fromNow;
    std::vector<Foreseen> sinceLast;
    for (std::size_t i = 0; i < windowed.size(); ++i) {
        fromNow.push_back(foresee(scene, windowed[i], scene.now, weeksForeseen + 1, tasters));
        sinceLast.push_back(foresee(scene, windowed[i], from, weeksForNext, tasters));
        tellEntry(fromNow.back(), scene.now, out.attributes[i]);
    }
    std::vector<double> within;
    for (std::size_t week = 0; week <= weeksForeseen; ++week) {
        double all = 1;
        double notPast = 1;
        for (const Foreseen& one : fromNow) {
            const Mixture::Sides& sides = one.standing[week].sides;
            all *= sides.within;
            notPast *= 1 - (one.rising ? sides.above : sides.below);
        }
        within.push_back(all);
        out.chances.push_back({scene.now + weeks(week), all, 1 - notPast});
    }
    const Span span = bestSpan(within);
    out.bestFrom = scene.now + weeks(span.from);
    out.best = scene.now + weeks(span.best);
    out.bestTo = scene.now + weeks(span.to);
    out.chanceNow = within.front();
    out.bestChance = within[span.best];
    double least = 2;
    for (std::size_t i = 0; i < fromNow.size(); ++i) {
        const double chance = fromNow[i].standing[span.best].sides.within;
        if (chance < least) {
            least = chance;
            out.weakest = windowed[i].attribute;
        }
    }
    const Decision decision = decide(fromNow, TastingRule{});
    out.advice = decision.pastSaving ? Advice::TooFar : decision.pull ? Advice::Pull : Advice::Wait;
    out.next = nextTasting(sinceLast, scene.stay, from);
}

// The attributes to tell of: windowed ones first, then all others that were scored.
std::vector<std::string> attributesOf(const Scene& scene)
{
    std::vector<std::string> attributes;
    for (const auto& [attribute, window] : scene.windows) {
        attributes.push_back(attribute);
    }
    for (const cellar::StayScore& score : scene.stay.scores) {
        if (std::find(attributes.begin(), attributes.end(), score.attribute) == attributes.end()) {
            attributes.push_back(score.attribute);
        }
    }
    return attributes;
}

}  // namespace

BarrelOutlook tellAll(const Scene& scene)
{
    BarrelOutlook out;
    out.barrel = scene.barrel.barrel;
    out.filled = scene.stay.filled;
    out.now = scene.now;
    out.horizon = scene.horizon;
    std::vector<Fitted> windowed;
    for (const std::string& attribute : attributesOf(scene)) {
        if (scene.brief && !scene.windows.contains(attribute)) {
            continue;
        }
        Fitted fitted = fit(scene, attribute);
        out.attributes.push_back(scene.brief ? AttributeOutlook{} : tell(scene, fitted));
        if (fitted.window.window) {
            windowed.push_back(std::move(fitted));
        }
    }
    if (windowed.empty()) {
        out.bestFrom = out.best = out.bestTo = scene.now;
        out.next = byHabit(scene.stay);
        return out;
    }
    tellTogether(scene, windowed, out);
    return out;
}

}  // namespace spile::outlook
