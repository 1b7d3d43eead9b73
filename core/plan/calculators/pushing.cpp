// push: moving beer out of a barrel.
#include "core/gas/pushing.hpp"

#include "core/liquor/ethanol_water.hpp"
#include "core/plan/calculators/parts.hpp"

namespace spile::plan {

namespace {

constexpr std::string_view fineText = "Gentle enough for sound heads.";
constexpr std::string_view warnText = "Watch the heads, stand aside, and keep a relief valve on.";
constexpr std::string_view refuseText =
    "Not on a barrel: above 5 psi no head can be trusted. Use a pump.";
constexpr std::array texts = {fineText, warnText, refuseText};

constexpr std::array inputs = {
    pressureInput("pressure", "Pressure on the barrel, gauge", 2 * factor::psi, 0, 1e6),
    lengthInput("head", "Diameter of the heads", 0.52, 0.05, 3),
    lengthInput("hose-bore", "Bore of the hose", 0.012, 0.002, 0.1),
    longInput("hose-length", "Length of the hose", 3.0, 0, 200),
    longInput("lift", "Height of its end above the beer, below 0 under it", 0.5, -50, 50),
    longInput("depth", "Depth of the beer in the barrel", 0.6, 0, 3),
    volumeInput("volume", "Volume to move", 0.19, 0, 100),
    gravityInput("gravity", "Gravity of the beer", 1.015, 0.78, 1.3)};

constexpr std::array answerSpecs = {
    wordAnswer("pressure", "Pressure"),
    AnswerSpec{"head-force", "Force on each head", Measurand::Force, "kN", "lbf", 2},
    pressureAnswer("least", "Pressure that just lifts the beer to the end"),
    minutesAnswer("time", "Time to empty it"),
    AnswerSpec{"flow", "Flow at the beginning", Measurand::VolumeFlow, "L/min", "gal/min", 2}};

constexpr std::array sources = {
    FormulaSource{"flow of beer", "Bernoulli (1738); friction by Darcy and Weisbach"},
    FormulaSource{"2 and 5 psi as limits for a barrel", practice}};

// A millimetre of beer: with less the last of it hardly runs.
constexpr Pressure leastDrive = pascals(10);

std::string inBarText(Pressure pressure)
{
    constexpr int digits = 3;
    return formatQuantity(pressure.si(), Measurand::Pressure, "bar", digits).value_or("");
}

Result<std::vector<Answer>> run(const Given& given)
{
    const Pressure gauge = pressureOf(given);
    SPILE_ASSIGN(caution, gas::pushCaution(gauge));
    SPILE_ASSIGN(force, gas::headForce(lengthOf(given, "head"), gauge));
    const bool isRefused = caution == gas::PushCaution::Refuse;
    AnswerList answers(answerSpecs);
    answers.say("pressure",
                isRefused                           ? refuseText
                : caution == gas::PushCaution::Warn ? warnText
                                                    : fineText,
                caution != gas::PushCaution::Fine);
    answers.add("head-force", force.si()).caution = isRefused;
    if (isRefused) {
        return answers.done();
    }
    const Density beer =
        kilogramsPerCubicMetre(number(given, "gravity") * liquor::waterDensityAt20);
    const Length first = lengthOf(given, "lift");
    const Length last = first + lengthOf(given, "depth");
    SPILE_ASSIGN(least, gas::liftPressure(last, beer));
    if (gauge < least + leastDrive) {
        return fail(
            ErrorCode::OutOfRange, "pressure", inBarText(gauge),
            "above " + inBarText(std::max(least, Pressure())) + ", or the end of the hose lower");
    }
    answers.add("least", std::max(0.0, least.si()));
    const gas::BeerLine line{lengthOf(given, "hose-bore"), lengthOf(given, "hose-length")};
    SPILE_ASSIGN(time, gas::emptyingTime(line, gauge, first, last, volumeOf(given), beer));
    SPILE_ASSIGN(flow, gas::beerFlow(line, gauge, first, beer));
    answers.add("time", time.si());
    answers.add("flow", flow.si());
    return answers.done();
}

constexpr std::array all = {
    Calculator{"push", "Pushing beer out by gas",
               "Force on the heads and time to empty a barrel by gas, or by its fall alone at no "
               "pressure.",
               inputs, answerSpecs, texts, sources,
               "No rating of barrel heads is published: 5 psi on a head of 52 cm are the weight of "
               "750 kg. A relief valve belongs on the barrel.",
               "numbers-pushing.md", run}};

}  // namespace

std::span<const Calculator> pushingCalculators() { return all; }

}  // namespace spile::plan
