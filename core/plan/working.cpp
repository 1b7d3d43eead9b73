#include "core/plan/working.hpp"

#include "core/plan/asks.hpp"
#include "core/plan/recording.hpp"
#include "core/plan/work_values.hpp"

#include <algorithm>
#include <array>

namespace spile::plan {

namespace {

// What was filled in at this step and is a number; a tick is 1.
std::map<std::string, std::int64_t> filledInAt(const Step& step, const WorkValues& values)
{
    std::map<std::string, std::int64_t> numbers;
    const auto take = [&](const std::string& name) {
        if (const auto number = numberIn(values, name)) {
            numbers[name] = *number;
        }
    };
    for (const Tick& tick : step.ticks) {
        take(tick.name);
    }
    for (const std::string& name : shownNames(step.asks, values)) {
        take(name);
    }
    return numbers;
}

// The words that were chosen at this step.
std::map<std::string, std::string> wordsOf(const Step& step, const WorkValues& values)
{
    std::map<std::string, std::string> words;
    for (const std::string& name : shownNames(step.asks, values)) {
        if (std::string word = textIn(values, name); !word.empty()) {
            words[name] = std::move(word);
        }
    }
    return words;
}

}  // namespace

const Step* findStep(const Sheet& sheet, std::string_view name)
{
    const auto found = std::find_if(sheet.steps.begin(), sheet.steps.end(),
                                    [&](const Step& step) { return step.name == name; });
    return found == sheet.steps.end() ? nullptr : &*found;
}

bool holds(const std::optional<Condition>& condition, const WorkValues& values)
{
    if (!condition) {
        return true;
    }
    const std::string said = textIn(values, condition->value);
    return condition->differs ? !said.empty() && said != condition->word : said == condition->word;
}

const Step* firstStep(const Sheet& sheet, const WorkValues& values)
{
    const auto found = std::find_if(sheet.steps.begin(), sheet.steps.end(),
                                    [&](const Step& step) { return holds(step.when, values); });
    return found == sheet.steps.end() ? nullptr : &*found;
}

const Step* stepAfter(const Sheet& sheet, std::string_view name, const WorkValues& values)
{
    const auto at = std::find_if(sheet.steps.begin(), sheet.steps.end(),
                                 [&](const Step& step) { return step.name == name; });
    if (at == sheet.steps.end()) {
        return nullptr;
    }
    const auto found = std::find_if(std::next(at), sheet.steps.end(),
                                    [&](const Step& step) { return holds(step.when, values); });
    return found == sheet.steps.end() ? nullptr : &*found;
}

Place placeOf(const Sheet& sheet, std::string_view name, const WorkValues& values)
{
    Place place;
    for (const Step& step : sheet.steps) {
        place.steps += holds(step.when, values) ? 1 : 0;
        if (step.name == name) {
            place.step = place.steps;
        }
    }
    return place;
}

std::vector<std::string> shownNames(const std::vector<Part>& parts, const WorkValues& values)
{
    std::vector<std::string> names;
    for (const Part& part : parts) {
        if (holds(part.when, values)) {
            names.push_back(part.name);
        }
    }
    return names;
}

std::string missingOf(const Step& step, const WorkValues& values)
{
    for (const Tick& tick : step.ticks) {
        if (!numberIn(values, tick.name)) {
            return tick.name;
        }
    }
    for (const std::string& name : shownNames(step.asks, values)) {
        const AskSpec* ask = findAsk(name);
        const auto value = values.find(name);
        const bool filledIn =
            value != values.end() && (value->second.number || !value->second.text.empty());
        if (ask != nullptr && !ask->optional && !filledIn) {
            return name;
        }
    }
    return {};
}

std::string refusalOf(const Step& step, const WorkFacts& facts)
{
    for (const std::string& name : shownNames(step.facts, facts.values)) {
        if (numberOf(name, facts).refuses) {
            return name;
        }
    }
    return {};
}

std::vector<std::string> numbersOf(const Step& step, const WorkValues& values,
                                   const std::vector<std::string>& alsoIn)
{
    std::vector<std::string> names = shownNames(step.facts, values);
    const auto addFrom = [&](const std::string& words) {
        const auto more = namesIn(words);
        names.insert(names.end(), more.begin(), more.end());
    };
    addFrom(step.say);
    addFrom(step.hint);
    std::for_each(alsoIn.begin(), alsoIn.end(), addFrom);
    if (step.timer && !step.timer->number.empty()) {
        names.push_back(step.timer->number);
    }
    std::sort(names.begin(), names.end());
    names.erase(std::unique(names.begin(), names.end()), names.end());
    return names;
}

std::span<const std::string_view> skipReasons()
{
    static constexpr std::array<std::string_view, 5> reasons = {"not needed today", "done before",
                                                                "no tool at hand", "not safe here",
                                                                "not as it should be"};
    return reasons;
}

Result<Finished> finishStep(cellar::Cellar& cellar, const Sheet& sheet, const SubjectId& run,
                            const Finish& finish)
{
    SPILE_ASSIGN(work, cellar::readWork(cellar, run));
    const Step* step = findStep(sheet, work.step);
    if (step == nullptr) {
        return fail(ErrorCode::NotFound, "sheet", work.step, "a step of the sheet " + sheet.name);
    }
    const bool skipped = finish.outcome == cellar::outcome::skipped;
    if (const std::string missing = missingOf(*step, work.values); !skipped && !missing.empty()) {
        return fail(ErrorCode::Malformed, missing, "nothing", "fill it in, or skip the step");
    }
    SPILE_ASSIGN(facts, readFacts(cellar.database(), work.barrel, cellar.outside().clock.now()));
    facts.values = work.values;
    if (const std::string refusal = refusalOf(*step, facts); !skipped && !refusal.empty()) {
        return fail(ErrorCode::Conflict, refusal, numberOf(refusal, facts).word,
                    "change it, or skip the step");
    }
    std::vector<ledger::NewEntry> entries;
    if (!skipped) {
        const Recording recording{cellar, facts, {{}, finish.person.value_or(work.person), {}}};
        SPILE_ASSIGN(recorded, entriesOf(*step, recording));
        entries = std::move(recorded);
    }
    const Step* next = stepAfter(sheet, work.step, work.values);
    cellar::StepEnd end;
    end.outcome = finish.outcome;
    end.reason = finish.reason;
    end.values = filledInAt(*step, work.values);
    end.words = wordsOf(*step, work.values);
    end.nextStep = next == nullptr ? std::string() : next->name;
    end.person = finish.person;
    SPILE_ASSIGN(entry, cellar::endStep(cellar, run, end, std::move(entries)));
    return Finished{entry, end.nextStep};
}

}  // namespace spile::plan
