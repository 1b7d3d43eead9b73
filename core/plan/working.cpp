#include "core/plan/working.hpp"

#include "core/cellar/acts/drawing.hpp"
#include "core/cellar/acts/filling.hpp"
#include "core/cellar/acts/tasting.hpp"
#include "core/cellar/acts/tending.hpp"
#include "core/cellar/vocabulary.hpp"
#include "core/plan/asks.hpp"
#include "core/units/scaled.hpp"

#include <algorithm>
#include <array>

namespace spile::plan {

using cellar::Circumstance;
using cellar::WorkValues;

namespace {

std::optional<std::int64_t> numberIn(const WorkValues& values, const std::string& name)
{
    const auto found = values.find(name);
    return found == values.end() ? std::nullopt : found->second.number;
}

std::string textIn(const WorkValues& values, const std::string& name)
{
    const auto found = values.find(name);
    return found == values.end() ? std::string() : found->second.text;
}

std::optional<double> fractionIn(const WorkValues& values, const std::string& name)
{
    const auto found = numberIn(values, name);
    return found ? std::optional(static_cast<double>(*found) / 1e4) : std::nullopt;
}

std::optional<Volume> volumeIn(const WorkValues& values, const std::string& name)
{
    const auto found = numberIn(values, name);
    return found ? std::optional(volumeFromMl(*found)) : std::nullopt;
}

std::optional<Mass> massIn(const WorkValues& values, const std::string& name)
{
    const auto found = numberIn(values, name);
    return found ? std::optional(massFromGrams(*found)) : std::nullopt;
}

std::optional<Temperature> temperatureIn(const WorkValues& values, const std::string& name)
{
    const auto found = numberIn(values, name);
    return found ? std::optional(temperatureFromMilliCelsius(*found)) : std::nullopt;
}

Result<std::int64_t> needDays(const WorkValues& values)
{
    const auto days = numberIn(values, "empty_days");
    return days ? Result<std::int64_t>(*days)
                : Result<std::int64_t>(fail(ErrorCode::Malformed, "empty_days", "nothing", "days"));
}

// What a step records is made from what is known, what was filled in, and who did it.
struct Recording {
    cellar::Cellar& cellar;
    const WorkFacts& facts;
    Circumstance by;

    [[nodiscard]] const SubjectId& barrel() const { return facts.barrel.barrel; }
    [[nodiscard]] const WorkValues& values() const { return facts.values; }
};

using Made = Result<std::optional<ledger::NewEntry>>;

Made made(Result<ledger::NewEntry> entry)
{
    SPILE_TRY(entry);
    return std::optional(std::move(*entry));
}

Made checked(const Recording& r, const std::string& finding)
{
    return made(
        cellar::checkEntry(r.cellar, {r.barrel(), finding, cellar::isSound(finding), r.by}));
}

// A beer by its name: the one that is known, or a new one.
Result<std::optional<SubjectId>> batchOf(const Recording& r)
{
    const std::string name = textIn(r.values(), "batch");
    if (name.empty()) {
        return std::optional<SubjectId>();
    }
    SPILE_ASSIGN(batch, cellar::batchNamed(r.cellar, name));
    return std::optional(batch);
}

Result<Volume> needVolume(const Recording& r, const std::string& way)
{
    const auto volume = volumeByWay(way, r.facts);
    if (!volume) {
        return fail(ErrorCode::Malformed, "volume_ml", way, "all that the volume follows from");
    }
    return *volume;
}

Made recordedFill(const Recording& r)
{
    SPILE_ASSIGN(volume, needVolume(r, textIn(r.values(), "fill_way")));
    SPILE_ASSIGN(batch, batchOf(r));
    return made(cellar::fillEntry(
        r.cellar, {r.barrel(), batch, volume, fractionIn(r.values(), "abv_e2"), {}, r.by}));
}

Made recordedGauge(const Recording& r)
{
    const std::string way = textIn(r.values(), "gauge_way");
    SPILE_ASSIGN(volume, needVolume(r, way));
    cellar::NewGauge gauge{r.barrel(), volume, way, {}, {}, {}, r.by};
    if (way == "dip") {
        gauge.dip = millimetres(static_cast<double>(numberIn(r.values(), "dip_mm").value_or(0)));
    } else if (way == "weight") {
        gauge.mass = massIn(r.values(), "mass_g");
    } else if (way == "nail") {
        gauge.bound = textIn(r.values(), "nail_runs") == "yes" ? cellar::Bound::AtLeast
                                                               : cellar::Bound::AtMost;
    }
    return made(cellar::gaugeEntry(r.cellar, gauge));
}

Made recordedReading(const Recording& r)
{
    cellar::NewReading reading;
    reading.barrel = r.barrel();
    if (const auto gravity = fractionIn(r.values(), "sg_e4")) {
        reading.specificGravity = gravity;
        reading.sampleTemperature = temperatureIn(r.values(), "sample_temp_mc");
        if (reading.sampleTemperature) {
            reading.hydrometerReference = hydrometerReference(r.values());
        }
    }
    if (const auto ph = numberIn(r.values(), "ph_e2")) {
        reading.ph = static_cast<double>(*ph) / 1e2;
    }
    reading.temperature = temperatureIn(r.values(), "temp_mc");
    reading.circumstance = r.by;
    return made(cellar::readingEntry(reading));
}

Made recordedDraw(const Recording& r, const char* method)
{
    return made(cellar::drawEntry(
        r.cellar,
        {r.barrel(), volumeIn(r.values(), "draw_ml").value_or(Volume()), method, {}, {}, r.by}));
}

Made recordedDose(const Recording& r)
{
    const std::string substance = textIn(r.values(), "substance");
    if (substance.empty()) {  // the spirit was skipped
        return std::optional<ledger::NewEntry>();
    }
    return made(cellar::doseEntry(r.cellar, {r.barrel(),
                                             substance,
                                             volumeIn(r.values(), "spirit_ml"),
                                             volumeIn(r.values(), "drained_ml"),
                                             {},
                                             fractionIn(r.values(), "spirit_abv_e2"),
                                             r.by}));
}

Made recordedTopUp(const Recording& r)
{
    SPILE_ASSIGN(batch, batchOf(r));
    return made(cellar::topUpEntry(r.cellar, {r.barrel(),
                                              volumeIn(r.values(), "top_up_ml").value_or(Volume()),
                                              {},
                                              batch,
                                              fractionIn(r.values(), "abv_e2"),
                                              r.by}));
}

// Measures correct the registration; they are an act of their own, before the step's.
Made recordedMeasures(const Recording& r)
{
    SPILE_ASSIGN(measures, measuresFromTape(r.facts));
    SPILE_TRY(cellar::recordMeasures(r.cellar, r.barrel(), measures));
    return std::optional<ledger::NewEntry>();
}

Made recordedTare(const Recording& r)
{
    cellar::BarrelMeasures measures;
    measures.tare = massIn(r.values(), "tare_g");
    SPILE_TRY(cellar::recordMeasures(r.cellar, r.barrel(), measures));
    return std::optional<ledger::NewEntry>();
}

Made recordedEmptied(const Recording& r)
{
    SPILE_ASSIGN(days, needDays(r.values()));
    cellar::BarrelMeasures measures;
    measures.emptied = r.facts.now - std::chrono::days(days);
    SPILE_TRY(cellar::recordMeasures(r.cellar, r.barrel(), measures));
    return std::optional<ledger::NewEntry>();
}

constexpr std::string_view tasting = "taste";

struct Recorder {
    std::string_view name;
    Made (*make)(const Recording&);
};
constexpr std::array recorders = {
    Recorder{"check", [](const Recording& r) { return checked(r, textIn(r.values(), "finding")); }},
    Recorder{"check_after",
             [](const Recording& r) { return checked(r, textIn(r.values(), "finding_after")); }},
    Recorder{"repair",
             [](const Recording& r) {
                 return made(cellar::repairEntry(r.cellar,
                                                 {r.barrel(), textIn(r.values(), "repair"), r.by}));
             }},
    Recorder{"fill", recordedFill},
    Recorder{"gauge", recordedGauge},
    Recorder{"reading", recordedReading},
    Recorder{"draw_hole", [](const Recording& r) { return recordedDraw(r, "sample hole"); }},
    Recorder{"draw_bung", [](const Recording& r) { return recordedDraw(r, "bunghole"); }},
    Recorder{"dose", recordedDose},
    Recorder{"top_up", recordedTopUp},
    Recorder{"measures", recordedMeasures},
    Recorder{"tare", recordedTare},
    Recorder{"emptied", recordedEmptied},
    Recorder{tasting, [](const Recording&) { return Made(std::nullopt); }},
};

const Recorder* findRecorder(std::string_view name)
{
    const auto* const found = std::find_if(recorders.begin(), recorders.end(),
                                           [&](const Recorder& one) { return one.name == name; });
    return found == recorders.end() ? nullptr : found;
}

Result<std::vector<ledger::NewEntry>> entriesOf(const Step& step, const Recording& recording)
{
    std::vector<ledger::NewEntry> entries;
    for (const std::string& name : step.records) {
        const Recorder* recorder = findRecorder(name);
        if (recorder == nullptr) {
            return fail(ErrorCode::NotFound, "sheet", name, "something that a step can record");
        }
        SPILE_ASSIGN(entry, recorder->make(recording));
        if (entry) {
            entries.push_back(std::move(*entry));
        }
    }
    return entries;
}

// What was filled in at this step and is a number; a tick is 1.
std::map<std::string, std::int64_t> numbersOf(const Step& step, const WorkValues& values)
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

bool knowsRecord(std::string_view name) { return findRecorder(name) != nullptr; }

bool tastes(const Step& step)
{
    return std::find(step.records.begin(), step.records.end(), tasting) != step.records.end();
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
    end.values = numbersOf(*step, work.values);
    end.words = wordsOf(*step, work.values);
    end.nextStep = next == nullptr ? std::string() : next->name;
    end.person = finish.person;
    SPILE_ASSIGN(entry, cellar::endStep(cellar, run, end, std::move(entries)));
    return Finished{entry, end.nextStep};
}

}  // namespace spile::plan
