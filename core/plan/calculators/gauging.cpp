// gauge, dip-table, barrel: what a barrel holds.
#include "core/liquor/weighing.hpp"
#include "core/plan/calculators/barrel_inputs.hpp"
#include "core/plan/calculators/dip_table.hpp"
#include "core/vessel/measuring.hpp"
#include "core/vessel/presets.hpp"

#include <cmath>

namespace spile::plan {

namespace {

constexpr std::string_view page = "numbers-gauging.md";

constexpr std::array shapeSources = {shapeSource, sizeSource};
constexpr std::array gaugeSources = {shapeSource, sizeSource,
                                     FormulaSource{"weighing in air", "OIML D 28 (2004)"}};

// --- gauge

constexpr std::string_view lyingWord = "lying";
constexpr std::array<std::string_view, 2> positionWords = {lyingWord, "standing"};
constexpr std::string_view overfullText =
    "More than a barrel of this size holds: check size, tare and gravity.";
constexpr std::array gaugeTexts = {overfullText};
constexpr double slopeMost = 0.1763;  // ten degrees

constexpr std::array gaugeInputs = {
    sizeInput(),
    insideLengthInput(),
    bilgeInput(),
    headInput(),
    fullInput(),
    wordInput("position", "How it lies", positionWords),
    optional(lengthInput("dip", "Wet length of the stick", none, 0, 3)),
    shareInput("slope", "Slope of a lying barrel, rise over length", 0.0, 0, slopeMost),
    optional(massInput("gross", "Weight of the barrel with its beer", none, 0, 5000)),
    optional(massInput("tare", "Weight of the barrel empty", none, 0, 1000)),
    gravityInput("gravity", "Gravity of the beer, for weighing", 1.015, 0.78, 1.3)};

constexpr std::array gaugeAnswers = {
    volumeAnswer("volume", "In the barrel"),
    volumeAnswer("full", "Full, it holds"),
    volumeAnswer("ullage", "Empty space"),
    shareAnswer("share", "Share that is filled"),
    lengthAnswer("dip", "Dip that goes with it"),
    shareAnswer("head-level", "Level on the head, of its diameter from below"),
    wordAnswer("check", "Check")};

Result<Volume> byDip(const vessel::Barrel& barrel, const Given& given, bool isLying)
{
    const Length dip = lengthOf(given, "dip");
    const double slope = number(given, "slope");
    if (!isLying) {
        if (slope > 0) {
            return fail(ErrorCode::Conflict, "slope", "a standing barrel",
                        "a slope is for a lying one");
        }
        return vessel::standingVolume(barrel, dip);
    }
    return vessel::lyingVolume(barrel, dip, std::min(std::atan(slope), vessel::tiltMost));
}

Result<Volume> byWeight(const Given& given)
{
    if (!given.has("tare")) {
        return fail(ErrorCode::Malformed, "tare", {}, "the weight of the empty barrel");
    }
    const Mass gross = massOf(given, "gross");
    const Mass tare = massOf(given, "tare");
    if (tare > gross) {
        return fail(ErrorCode::OutOfRange, "tare", std::to_string(tare.si()) + " kg",
                    "at most gross");
    }
    return liquor::volumeByWeight(gross - tare, number(given, "gravity"));
}

Result<std::vector<Answer>> runGauge(const Given& given)
{
    SPILE_TRY(needOneOf(given, {"dip", "gross"}));
    SPILE_ASSIGN(barrel, barrelOf(given));
    SPILE_ASSIGN(full, vessel::fullVolume(barrel));
    const bool isLying = given.word("position") == lyingWord;
    SPILE_ASSIGN(held, given.has("dip") ? byDip(barrel, given, isLying) : byWeight(given));
    AnswerList answers(gaugeAnswers);
    answers.add("volume", held.si());
    answers.add("full", full.si());
    if (held > full) {
        answers.say("check", overfullText, true);
        return answers.done();
    }
    answers.add("ullage", (full - held).si());
    answers.add("share", held / full);
    if (!given.has("dip")) {
        SPILE_ASSIGN(
            dip, isLying ? vessel::lyingDip(barrel, held) : vessel::standingDepth(barrel, held));
        answers.add("dip", dip.si());
    }
    if (isLying && number(given, "slope") == 0) {
        SPILE_ASSIGN(level, vessel::headLevel(barrel, held));
        answers.add("head-level", level);
    }
    return answers.done();
}

// --- dip-table

constexpr std::array tableInputs = {
    sizeInput(), insideLengthInput(), bilgeInput(),
    headInput(), fullInput(),         lengthInput("step", "Step of the table", 0.01, 0.001, 0.2)};

constexpr std::array tableAnswers = {volumeAnswer("full", "Full, it holds"),
                                     lengthAnswer("bilge", "Dip when it is full"),
                                     countAnswer("rows", "Rows of the table"),
                                     volumeAnswer("quarter", "At a quarter of that dip"),
                                     volumeAnswer("half", "At half of it"),
                                     volumeAnswer("three-quarters", "At three quarters of it")};

Result<std::vector<Answer>> runTable(const Given& given)
{
    SPILE_ASSIGN(barrel, barrelOf(given));
    SPILE_ASSIGN(full, vessel::fullVolume(barrel));
    SPILE_ASSIGN(rows, vessel::dipTableRows(barrel, lengthOf(given, "step")));
    AnswerList answers(tableAnswers);
    answers.add("full", full.si());
    answers.add("bilge", barrel.bilge.si());
    answers.add("rows", static_cast<double>(rows));
    constexpr std::array<std::pair<std::string_view, double>, 3> parts = {
        {{"quarter", 0.25}, {"half", 0.5}, {"three-quarters", 0.75}}};
    for (const auto& [name, part] : parts) {
        SPILE_ASSIGN(held, vessel::lyingVolume(barrel, part * barrel.bilge));
        answers.add(name, held.si());
    }
    return answers.done();
}

// --- barrel

constexpr std::array tapeInputs = {
    lengthInput("bilge-girth", "Girth around the middle", none, 0.3, 9.5),
    lengthInput("chime-girth", "Girth around the ends", none, 0.3, 9.5),
    lengthInput("length", "Length over all", none, 0.1, 3.5),
    lengthInput("stave", "Thickness of the staves", 0.026, 0.005, 0.08),
    lengthInput("chime", "From the end of a stave to the head", vessel::usualChime.si(), 0, 0.15),
    lengthInput("head-thickness", "Thickness of the heads", vessel::usualHeadThickness.si(), 0.005,
                0.1)};

constexpr std::array tapeAnswers = {
    volumeAnswer("full", "Full, it holds"),
    lengthAnswer("length", "Length inside"),
    lengthAnswer("bilge", "Diameter inside at the bilge"),
    lengthAnswer("head", "Diameter of the heads"),
    AnswerSpec{"area", "Inner surface", Measurand::Area, "m2", "ft2", 3},
    AnswerSpec{"area-per-litre", "Inner surface for each litre", Measurand::Area, "cm2", "in2", 3}};

constexpr std::array tapeSources = {
    shapeSource, FormulaSource{"chime and thickness of the heads, where not measured", practice}};

Result<std::vector<Answer>> runTape(const Given& given)
{
    const vessel::OutsideMeasures outside{
        lengthOf(given, "bilge-girth"), lengthOf(given, "chime-girth"),
        lengthOf(given, "length"),      lengthOf(given, "stave"),
        lengthOf(given, "chime"),       lengthOf(given, "head-thickness")};
    SPILE_ASSIGN(barrel, vessel::barrelFromOutside(outside));
    SPILE_ASSIGN(full, vessel::fullVolume(barrel));
    SPILE_ASSIGN(area, vessel::innerArea(barrel));
    constexpr double tapeError = 0.03;  // barrelFromOutside()'s accuracy
    AnswerList answers(tapeAnswers);
    answers.add("full", full.si(), (1 - tapeError) * full.si(), (1 + tapeError) * full.si());
    answers.add("length", barrel.length.si());
    answers.add("bilge", barrel.bilge.si());
    answers.add("head", barrel.head.si());
    answers.add("area", area.si());
    answers.add("area-per-litre", area.si() / inLitres(full));
    return answers.done();
}

constexpr std::array all = {
    Calculator{"gauge", "Gauging a barrel",
               "What stands in a barrel, from a wet dip or from its weight.", gaugeInputs,
               gaugeAnswers, gaugeTexts, gaugeSources,
               "Ease the pressure before you pull the bung, and keep flames away.", page, runGauge},
    Calculator{"dip-table",
               "Dip table",
               "What stands in a lying barrel at each dip, to print and hang beside it.",
               tableInputs,
               tableAnswers,
               {},
               shapeSources,
               "",
               page,
               runTable},
    Calculator{"barrel",
               "Measuring a barrel",
               "Measures inside, volume and surface from what a tape shows outside.",
               tapeInputs,
               tapeAnswers,
               {},
               tapeSources,
               "",
               page,
               runTape}};

}  // namespace

std::span<const Calculator> gaugingCalculators() { return all; }

Result<vessel::Barrel> barrelOf(const Given& given)
{
    const int measures = countGiven(given, {"length", "bilge", "head"});
    if (measures == 0) {
        return vessel::similarTo(volumeOf(given, given.has("full") ? "full" : "size"));
    }
    if (measures < 3) {
        return fail(ErrorCode::Malformed, "length", {},
                    "length, bilge and head: all three or none");
    }
    const vessel::Barrel measured{vessel::Profile::Parabola, lengthOf(given, "length"),
                                  lengthOf(given, "bilge"), lengthOf(given, "head"), 1};
    return given.has("full") ? vessel::calibrated(measured, volumeOf(given, "full"))
                             : Result<vessel::Barrel>(measured);
}

Result<Area> innerAreaOf(const Given& given)
{
    SPILE_ASSIGN(barrel, vessel::similarTo(volumeOf(given, "size")));
    return vessel::innerArea(barrel);
}

Result<Length> staveOf(const Given& given)
{
    if (given.has("stave")) {
        return lengthOf(given, "stave");
    }
    SPILE_ASSIGN(preset, vessel::nearestPreset(volumeOf(given, "size")));
    return preset.stave;
}

Result<std::vector<vessel::DipRow>> dipRowsOf(const Given& given)
{
    const Calculator& table = all[1];
    SPILE_ASSIGN(filled, filledIn(table, given));
    SPILE_ASSIGN(barrel, barrelOf(filled));
    const Length step = lengthOf(filled, "step");
    SPILE_ASSIGN(count, vessel::dipTableRows(barrel, step));
    std::vector<vessel::DipRow> rows(count);
    SPILE_TRY(vessel::dipTable(barrel, step, rows));
    return rows;
}

}  // namespace spile::plan
