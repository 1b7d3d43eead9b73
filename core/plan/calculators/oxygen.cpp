// oxygen: what a barrel of beer has taken up.
#include "core/gas/oxygen.hpp"

#include "core/plan/calculators/barrel_inputs.hpp"
#include "core/wood/oxygen.hpp"

#include <cmath>

namespace spile::plan {

namespace {

constexpr std::array<std::string_view, 3> methodWords = {"sample hole", "valve", "bunghole"};
constexpr std::string_view pumpedWord = "once";
constexpr std::string_view belowWord = "once from below";
constexpr std::array<std::string_view, 3> transferWords = {"none", pumpedWord, belowWord};

constexpr std::array inputs = {
    sizeInput(),
    staveInput(),
    daysInput("time", "Time in the barrel", 182.0, 0, 3650),
    countInput("draws", "Draws", 3.0, 1000),
    smallVolumeInput("draw", "Volume of each draw", 150e-6, 0, 0.1),
    wordInput("method", "Drawn by", methodWords),
    countInput("openings", "Openings of the bung besides", 0.0, 1000),
    volumeInput("head-space", "Space above the beer", 4e-3, 0, 1),
    wordInput("transfer", "Moved by pump or gas", transferWords),
    countInput("top-ups", "Top-ups", 0.0, 1000),
    temperatureInput("temperature", "Temperature of the cellar", 15, 0, 40)};

constexpr std::array answerSpecs = {
    oxygenAnswer("wood", "Through the wood"),
    oxygenAnswer("by-draws", "By draws"),
    oxygenAnswer("by-openings", "By openings"),
    oxygenAnswer("by-top-ups", "By top-ups"),
    oxygenAnswer("by-transfer", "By moving it"),
    oxygenAnswer("total", "All together"),
    AnswerSpec{"per-litre", "In each litre", Measurand::Concentration, "mg/L", "mg/L", 2},
    AnswerSpec{"saturation", "What a litre of water under air holds, to compare",
               Measurand::Concentration, "mg/L", "mg/L", 3}};

constexpr std::array sources = {
    FormulaSource{"through the wood of a used barrel",
                  "memory; of a new one: Junqua, Zeng and "
                  "Pons, OENO One 55(3) (2021)"},
    FormulaSource{"draws, openings, top-ups, transfers", practice},
    FormulaSource{"oxygen in air", "ideal gas, 20.946 % by volume"},
    FormulaSource{"oxygen in water", "Benson and Krause, Limnology and Oceanography 29 (1984) 620"},
    sizeSource};

wood::OxygenTaken times(double count, const wood::OxygenTaken& taken)
{
    return {count * taken.low, count * taken.median, count * taken.high};
}

wood::DrawMethod methodOf(const Given& given)
{
    const std::string word = given.word("method");
    return word == "valve"      ? wood::DrawMethod::Valve
           : word == "bunghole" ? wood::DrawMethod::Bunghole
                                : wood::DrawMethod::SampleHole;
}

Result<wood::OxygenTaken> transferred(const Given& given, Volume beer)
{
    const std::string word = given.word("transfer");
    if (word == pumpedWord) {
        return wood::handled(wood::Handling::Transfer, beer);
    }
    return word == belowWord ? wood::handled(wood::Handling::TransferBelow, beer)
                             : Result<wood::OxygenTaken>(wood::OxygenTaken{});
}

Result<std::vector<Answer>> run(const Given& given)
{
    const Volume beer = volumeOf(given, "size");
    const Volume headSpace = volumeOf(given, "head-space");
    const Temperature t = temperatureOf(given);
    SPILE_ASSIGN(inner, innerAreaOf(given));
    SPILE_ASSIGN(stave, staveOf(given));
    SPILE_ASSIGN(wood, wood::throughWood(inner, stave, durationOf(given)));
    SPILE_ASSIGN(draw, wood::drawn(methodOf(given), volumeOf(given, "draw"), headSpace, t));
    SPILE_ASSIGN(opening, wood::opened(headSpace, t));
    SPILE_ASSIGN(topUp, wood::handled(wood::Handling::ToppingUp, beer));
    SPILE_ASSIGN(transfer, transferred(given, beer));
    SPILE_ASSIGN(saturation, gas::oxygenSaturation(t));
    const std::array ledger{wood, times(number(given, "draws"), draw),
                            times(number(given, "openings"), opening),
                            times(number(given, "top-ups"), topUp), transfer};
    const wood::OxygenTaken total = wood::total(ledger);
    AnswerList answers(answerSpecs);
    for (std::size_t i = 0; i < ledger.size(); ++i) {
        answers.addSpread(answerSpecs.at(i).name, ledger.at(i));
    }
    answers.addSpread("total", total);
    answers.add("per-litre", total.median.si() / beer.si(), total.low.si() / beer.si(),
                total.high.si() / beer.si());
    answers.add("saturation", saturation.si());
    return answers.done();
}

constexpr std::array all = {
    Calculator{"oxygen",
               "Oxygen taken up",
               "What beer takes up through the wood and each time the barrel is opened.",
               inputs,
               answerSpecs,
               {},
               sources,
               "All oxygen that comes in is taken as absorbed. None of these figures was measured "
               "in barrels of strong beer.",
               "numbers-oxygen.md",
               run}};

}  // namespace

std::span<const Calculator> oxygenCalculators() { return all; }

}  // namespace spile::plan
