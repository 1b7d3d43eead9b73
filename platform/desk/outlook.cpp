// outlook: what the scores say of each barrel's time, in short for all or the whole of one.
#include "core/panel/line.hpp"
#include "core/plan/foreseen.hpp"
#include "core/scan/barrel_code.hpp"
#include "platform/desk/commands.hpp"
#include "platform/desk/finding.hpp"
#include "platform/desk/rows.hpp"

#include <cmath>

namespace spile::desk {

using nlohmann::json;
using outlook::Advice;
using outlook::AttributeOutlook;
using outlook::BarrelOutlook;
using outlook::CalendarRow;

namespace {

double rounded(double value, double parts) { return std::round(value * parts) / parts; }
double chanceOf(double value) { return rounded(value, 1e3); }
double scoreOf(double line) { return rounded(panel::scoreOfLine(line), 1e2); }

std::string scoreText(double line) { return fixed(panel::scoreOfLine(line), 1); }

json timeOrNull(const std::optional<Instant>& at) { return at ? json(toIsoTime(*at)) : json(); }

const char* sourceWord(outlook::WindowSource source)
{
    switch (source) {
        case outlook::WindowSource::None:
            return "none";
        case outlook::WindowSource::ByHand:
            return "by hand";
        case outlook::WindowSource::Taught:
            return "taught";
    }
    return "none";
}

json toJson(const outlook::NextTasting& next)
{
    return {{"at", toIsoTime(next.at)},
            {"reason", plan::wordOf(next.reason)},
            {"decides", chanceOf(next.decides)}};
}

// What a calendar row and a whole outlook say alike.
template <class Outlook>
json shortJson(const Outlook& row)
{
    const bool windows = row.advice != Advice::NoWindows;
    const auto known = [&](const json& value) { return windows ? value : json(); };
    return {{"advice", plan::wordOf(row.advice)},
            {"chance_now", known(chanceOf(row.chanceNow))},
            {"best_chance", known(chanceOf(row.bestChance))},
            {"best_from", known(toIsoTime(row.bestFrom))},
            {"best_at", known(toIsoTime(row.best))},
            {"best_to", known(toIsoTime(row.bestTo))},
            {"horizon", toIsoTime(row.horizon)},
            {"next_tasting", toJson(row.next)}};
}

json windowJson(const AttributeOutlook& attribute)
{
    if (!attribute.window) {
        return {};
    }
    return {{"low_score", scoreOf(attribute.window->low)},
            {"high_score", scoreOf(attribute.window->high)},
            {"source", sourceWord(attribute.source)},
            {"directions", attribute.directions},
            {"entry_early", timeOrNull(attribute.entryEarly)},
            {"entry_middle", timeOrNull(attribute.entryMiddle)},
            {"entry_late", timeOrNull(attribute.entryLate)},
            {"never_by_horizon", chanceOf(attribute.neverByHorizon)}};
}

json toJson(const AttributeOutlook& attribute)
{
    json scores = json::array();
    for (const outlook::SeenScore& score : attribute.scores) {
        scores.push_back({{"entry", score.taste.hex()},
                          {"at", toIsoTime(score.at)},
                          {"person", score.name},
                          {"score", scoreOf(score.line)}});
    }
    json course = json::array();
    for (const outlook::LevelPoint& point : attribute.course) {
        course.push_back({{"at", toIsoTime(point.at)},
                          {"low_score", scoreOf(point.low)},
                          {"middle_score", scoreOf(point.middle)},
                          {"high_score", scoreOf(point.high)},
                          {"inside", attribute.window ? json(chanceOf(point.within)) : json()}});
    }
    json doubtful;
    if (attribute.doubtfulScore) {
        doubtful = {{"entry", attribute.doubtfulScore->hex()},
                    {"chance", chanceOf(attribute.doubt)}};
    }
    return {{"attribute", attribute.attribute},
            {"window", windowJson(attribute)},
            {"rising", attribute.rising},
            {"prior_share", chanceOf(attribute.priorShare)},
            {"doubtful", doubtful},
            {"scores", scores},
            {"course", course}};
}

json toJson(const cellar::BarrelRow& barrel, const BarrelOutlook& outlook)
{
    json made = shortJson(outlook);
    made["code"] = barrel.code;
    made["mark"] = barrel.mark.empty() ? json() : json(barrel.mark);
    made["beer"] = barrel.beer.empty() ? json() : json(barrel.beer);
    made["filled_at"] = toIsoTime(outlook.filled);
    made["now"] = toIsoTime(outlook.now);
    made["limited_by"] = outlook.weakest.empty() ? json() : json(outlook.weakest);
    made["attributes"] = json::array();
    for (const AttributeOutlook& attribute : outlook.attributes) {
        made["attributes"].push_back(toJson(attribute));
    }
    made["chances"] = json::array();
    for (const outlook::ChancePoint& point : outlook.chances) {
        made["chances"].push_back({{"at", toIsoTime(point.at)},
                                   {"inside", chanceOf(point.within)},
                                   {"past", chanceOf(point.past)}});
    }
    return made;
}

template <class Outlook>
std::string bestText(const Outlook& row)
{
    return row.advice == Advice::NoWindows
               ? ""
               : toIsoDate(row.bestFrom) + " to " + toIsoDate(row.bestTo);
}

std::string calendarText(const std::vector<CalendarRow>& rows)
{
    std::vector<std::vector<std::string>> lines = {{"code", "mark", "beer", "advice", "inside now",
                                                    "best", "inside then", "taste next", "why"}};
    for (const CalendarRow& row : rows) {
        const bool windows = row.advice != Advice::NoWindows;
        lines.push_back({scan::shown(row.code), row.mark, row.beer, plan::wordOf(row.advice),
                         windows ? chanceText(row.chanceNow) : "", bestText(row),
                         windows ? chanceText(row.bestChance) : "", toIsoDate(row.next.at),
                         plan::wordOf(row.next.reason)});
    }
    return table(lines);
}

// The point of the course at or next after `at`.
const outlook::LevelPoint* pointAt(const AttributeOutlook& attribute, Instant at)
{
    for (const outlook::LevelPoint& point : attribute.course) {
        if (point.at >= at) {
            return &point;
        }
    }
    return attribute.course.empty() ? nullptr : &attribute.course.back();
}

std::vector<std::string> attributeLine(const AttributeOutlook& attribute, Instant now, Instant best)
{
    const auto level = [&](Instant at) {
        const outlook::LevelPoint* point = pointAt(attribute, at);
        return point == nullptr ? ""
                                : scoreText(point->middle) + " (" + scoreText(point->low) + " to " +
                                      scoreText(point->high) + ")";
    };
    const std::string window = attribute.window ? scoreText(attribute.window->low) + " to " +
                                                      scoreText(attribute.window->high)
                                                : "";
    return {attribute.attribute,
            std::to_string(attribute.scores.size()),
            level(now),
            level(best),
            window,
            attribute.window ? sourceWord(attribute.source) : "",
            attribute.priorShare > 0.5 ? "mostly what is usual" : "",
            attribute.doubtfulScore ? "a score may be off, " + chanceText(attribute.doubt) : ""};
}

std::string outlookText(const cellar::BarrelRow& barrel, const BarrelOutlook& outlook)
{
    const bool windows = outlook.advice != Advice::NoWindows;
    std::vector<std::vector<std::string>> facts = {
        {"barrel", scan::shown(barrel.code) + (barrel.mark.empty() ? "" : ", " + barrel.mark) +
                       (barrel.beer.empty() ? "" : ", " + barrel.beer)},
        {"advice", plan::wordOf(outlook.advice)}};
    if (windows) {
        facts.push_back({"inside now", chanceText(outlook.chanceNow)});
        facts.push_back({"best", bestText(outlook) + ", " + chanceText(outlook.bestChance)});
        facts.push_back({"limited by", outlook.weakest});
    }
    facts.push_back(
        {"taste next", toIsoDate(outlook.next.at) + ", " + plan::wordOf(outlook.next.reason)});
    std::vector<std::vector<std::string>> lines = {{"attribute", "scores", "now (5 to 95 %)",
                                                    windows ? "then" : "at the horizon", "window",
                                                    "from"}};
    for (const AttributeOutlook& attribute : outlook.attributes) {
        lines.push_back(
            attributeLine(attribute, outlook.now, windows ? outlook.best : outlook.horizon));
    }
    return table(facts) + "\n" + (outlook.attributes.empty() ? "Never scored.\n" : table(lines));
}

int showCalendar(const Session& session, cellar::Cellar& cellar, const outlook::CellarModel& model)
{
    const auto rows = outlook::calendarOf(cellar.database(), model, session.clock().now(),
                                          session.job("outlook"));
    if (!rows) {
        return session.refuse(rows.error());
    }
    json list = json::array();
    for (const CalendarRow& row : *rows) {
        json made = shortJson(row);
        made["code"] = row.code;
        made["mark"] = row.mark.empty() ? json() : json(row.mark);
        made["beer"] = row.beer.empty() ? json() : json(row.beer);
        list.push_back(std::move(made));
    }
    session.answer(list, rows->empty() ? "No barrel is full.\n" : calendarText(*rows));
    return Done;
}

int showOutlook(const Session& session, cellar::Cellar& cellar, const outlook::CellarModel& model,
                const std::string& typed)
{
    const auto found = findBarrel(cellar, typed);
    if (!found) {
        return session.refuse(found.error());
    }
    if (found->size() > 1) {
        Session::remark("More than one barrel has this code; the first is shown.");
    }
    const cellar::BarrelRow& barrel = found->front();
    const auto outlook =
        outlook::outlookOf(cellar.database(), model, barrel.barrel, session.clock().now());
    if (!outlook) {
        return session.refuse(outlook.error());
    }
    session.answer(toJson(barrel, *outlook), outlookText(barrel, *outlook));
    return Done;
}

}  // namespace

int outlook(Session& session, const std::string& barrel)
{
    auto cellar = session.open();
    if (!cellar) {
        return session.refuse(cellar.error());
    }
    const auto model = outlook::CellarModel::learn((*cellar)->database(), session.clock().now(),
                                                   session.job("learning"));
    if (!model) {
        return session.refuse(model.error());
    }
    return barrel.empty() ? showCalendar(session, **cellar, *model)
                          : showOutlook(session, **cellar, *model, barrel);
}

Result<void> foresee(const Session& session, cellar::Cellar& cellar)
{
    const Instant now = session.clock().now();
    SPILE_ASSIGN(model,
                 outlook::CellarModel::learn(cellar.database(), now, session.job("learning")));
    SPILE_ASSIGN(kept, plan::foreseenOf(cellar.database(), model, now, session.job("outlook")));
    SPILE_TRY(cellar::keepOutlooks(cellar, kept));
    return cellar::forgetOutlooks(cellar, now);
}

}  // namespace spile::desk
