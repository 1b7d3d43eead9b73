// show tasters: what each taster is like beside the others, and how far they agree.
#include "core/plan/tasters.hpp"

#include "platform/desk/commands.hpp"
#include "platform/desk/rows.hpp"

#include <cmath>

namespace spile::desk {

using nlohmann::json;
using panel::Advice;
using panel::AdviceKind;
using panel::Measured;
using plan::TastersOfCellar;

namespace {

using Lines = std::vector<std::vector<std::string>>;

// What an advice's measured number is, and how much of the line one of it is.
struct Unit {
    const char* word;
    double points;
};
constexpr Unit steps{"steps", panel::pointsPerStep};
constexpr Unit stepsPerYear{"steps a year", panel::pointsPerStep};

struct Wording {
    const char* word;
    std::optional<Unit> unit;  // none: nothing is measured
};

Wording wordingOf(AdviceKind kind)
{
    switch (kind) {
        case AdviceKind::TooFew:
            return {"too few", {}};
        case AdviceKind::Steady:
            return {"steady", {}};
        case AdviceKind::ReadsHigh:
            return {"reads high", steps};
        case AdviceKind::ReadsLow:
            return {"reads low", steps};
        case AdviceKind::Wide:
            return {"wide", Unit{"times the others' scatter", 1}};
        case AdviceKind::NarrowRange:
            return {"narrow range", Unit{"times the others' range", 1}};
        case AdviceKind::WideRange:
            return {"wide range", Unit{"times the others' range", 1}};
        case AdviceKind::Drifting:
            return {"drifting", stepsPerYear};
        case AdviceKind::OutOfLineLately:
            return {"out of line lately", steps};
    }
    return {"", {}};
}

const char* wordOf(panel::Judgement judgement)
{
    switch (judgement) {
        case panel::Judgement::Judged:
            return "judged";
        case panel::Judgement::TooFew:
            return "too few";
        case panel::Judgement::SamplesDoNotDiffer:
            return "the beers do not differ";
        case panel::Judgement::NothingScatters:
            return "nothing scatters";
    }
    return "";
}

const std::string& attributeOf(const TastersOfCellar& told, int number)
{
    return told.attributes[static_cast<std::size_t>(number)];
}

const std::string& nameOf(const TastersOfCellar& told, const panel::TasterReport& taster)
{
    return told.people[static_cast<std::size_t>(taster.taster)].name;
}

double rounded(double value) { return std::round(value * 1e3) / 1e3; }
double inSteps(double points) { return rounded(points / panel::pointsPerStep); }

// The error of a Wide is relative in the report; here it has the unit of its value.
double errorOf(const Advice& advice)
{
    return advice.measured.error * (advice.kind == AdviceKind::Wide ? advice.measured.value : 1.0);
}

json toJson(const TastersOfCellar& told, const Advice& advice)
{
    const Wording wording = wordingOf(advice.kind);
    json made = {{"advice", wording.word}};
    made[advice.kind == AdviceKind::TooFew ? "beers_missing" : "beers"] = advice.beers;
    if (wording.unit) {
        made["measured"] = rounded(advice.measured.value / wording.unit->points);
        made["standard_error"] = rounded(errorOf(advice) / wording.unit->points);
        made["limit"] = rounded(advice.limit / wording.unit->points);
        made["unit"] = wording.unit->word;
    }
    if (advice.attribute) {
        made["attribute"] = attributeOf(told, *advice.attribute);
    }
    return made;
}

json measured(const std::optional<Measured>& value, double points)
{
    return value ? json{{"value", rounded(value->value / points)},
                        {"standard_error", rounded(value->error / points)}}
                 : json();
}

json toJson(const TastersOfCellar& told, const panel::TasterOnAttribute& one)
{
    json spread;
    if (one.spread) {
        spread = {
            {"value", inSteps(one.spread->deviation)},
            {"others", one.spread->othersFreedom > 0 ? json(inSteps(one.spread->others)) : json()},
            {"from_repeats", one.spread->fromRepeats}};
    }
    return {{"attribute", attributeOf(told, one.attribute)},
            {"scores", one.scores},
            {"beers", one.beers},
            {"bias_steps", measured(one.bias, panel::pointsPerStep)},
            {"spread_steps", spread},
            {"gain", measured(one.gain, 1)},
            {"drift_steps_a_year", measured(one.driftPerYear, panel::pointsPerStep)}};
}

json toJson(const TastersOfCellar& told, const panel::PanelOnAttribute& panel)
{
    json made = {{"attribute", attributeOf(told, panel.attribute)},
                 {"judgement", wordOf(panel.judgement)},
                 {"tasters", panel.tasters},
                 {"beers", panel.beers},
                 {"agreement", json()},
                 {"repeatability_steps",
                  panel.repeatability ? json(inSteps(*panel.repeatability)) : json()}};
    if (panel.agreement) {
        made["agreement"] = {{"one", rounded(panel.agreement->one)},
                             {"of_mean", rounded(panel.agreement->ofMean)},
                             {"tasters", panel.agreement->tasters}};
    }
    return made;
}

json toJson(const TastersOfCellar& told)
{
    json made = {{"tasters", json::array()}, {"attributes", json::array()}};
    for (const panel::TasterReport& taster : told.report.tasters) {
        json advices = json::array();
        for (const Advice& advice : taster.advice) {
            advices.push_back(toJson(told, advice));
        }
        json attributes = json::array();
        for (const panel::TasterOnAttribute& one : taster.attributes) {
            attributes.push_back(toJson(told, one));
        }
        made["tasters"].push_back({{"name", nameOf(told, taster)},
                                   {"scores", taster.scores},
                                   {"beers", taster.beers},
                                   {"advice", advices},
                                   {"attributes", attributes}});
    }
    for (const panel::PanelOnAttribute& panel : told.report.attributes) {
        made["attributes"].push_back(toJson(told, panel));
    }
    return made;
}

std::string decimals(double value, int places = 1)
{
    const double parts = std::pow(10, places);
    return fixed(std::round(value * parts) / parts + 0.0, places);  // no "-0.0"
}

std::string text(const std::optional<Measured>& value, double points)
{
    return value ? decimals(value->value / points) + " (+-" + decimals(value->error / points) + ")"
                 : "?";
}

std::string because(const TastersOfCellar& told, const Advice& advice)
{
    const Wording wording = wordingOf(advice.kind);
    if (advice.kind == AdviceKind::TooFew) {
        return std::to_string(advice.beers) + " more beers tasted with others are needed";
    }
    if (!wording.unit) {
        return "";
    }
    return (advice.attribute ? attributeOf(told, *advice.attribute) + ": " : "") +
           text(Measured{advice.measured.value, errorOf(advice)}, wording.unit->points) + " " +
           wording.unit->word;
}

std::string spreadText(const std::optional<panel::Spread>& spread)
{
    if (!spread) {
        return "?";
    }
    return decimals(spread->deviation / panel::pointsPerStep) +
           (spread->othersFreedom > 0
                ? " (others " + decimals(spread->others / panel::pointsPerStep) + ")"
                : "") +
           (spread->fromRepeats ? ", from repeats" : "");
}

std::string tastersText(const TastersOfCellar& told)
{
    Lines advices = {{"taster", "scores", "beers", "advice", "because"}};
    Lines numbers = {
        {"taster", "attribute", "scores", "beers", "bias", "spread", "gain", "drift a year"}};
    for (const panel::TasterReport& taster : told.report.tasters) {
        for (const Advice& advice : taster.advice) {
            advices.push_back({nameOf(told, taster), std::to_string(taster.scores),
                               std::to_string(taster.beers), wordingOf(advice.kind).word,
                               because(told, advice)});
        }
        for (const panel::TasterOnAttribute& one : taster.attributes) {
            numbers.push_back({nameOf(told, taster), attributeOf(told, one.attribute),
                               std::to_string(one.scores), std::to_string(one.beers),
                               text(one.bias, panel::pointsPerStep), spreadText(one.spread),
                               text(one.gain, 1), text(one.driftPerYear, panel::pointsPerStep)});
        }
    }
    return table(advices) +
           "\nBias, spread and drift in steps of the ladder; with standard errors:\n" +
           table(numbers);
}

std::string attributesText(const TastersOfCellar& told)
{
    Lines lines = {{"attribute", "tasters", "beers", "agreement", "of one", "of the mean",
                    "blind repeats differ by"}};
    for (const panel::PanelOnAttribute& panel : told.report.attributes) {
        const auto& agreement = panel.agreement;
        lines.push_back(
            {attributeOf(told, panel.attribute), std::to_string(panel.tasters),
             std::to_string(panel.beers), wordOf(panel.judgement),
             agreement ? decimals(agreement->one, 2) : "",
             agreement
                 ? decimals(agreement->ofMean, 2) + " of " + std::to_string(agreement->tasters)
                 : "",
             panel.repeatability ? decimals(*panel.repeatability / panel::pointsPerStep) + " steps"
                                 : ""});
    }
    return table(lines);
}

}  // namespace

int showTasters(const Session& session, cellar::Cellar& cellar)
{
    const auto told = plan::tastersOf(cellar.database(), session.job("tasters"));
    if (!told) {
        return session.refuse(told.error());
    }
    session.answer(toJson(*told), told->people.empty()
                                      ? "Nobody has scored yet.\n"
                                      : tastersText(*told) + "\n" + attributesText(*told));
    return Done;
}

}  // namespace spile::desk
