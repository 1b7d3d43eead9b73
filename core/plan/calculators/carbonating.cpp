// carbonate, residual, prime, flat: carbon dioxide in the beer.
#include "core/gas/carbonation.hpp"
#include "core/gas/solubility.hpp"
#include "core/plan/calculators/parts.hpp"

namespace spile::plan {

namespace {

constexpr std::string_view page = "numbers-carbonating.md";

constexpr CalculatorInput co2Input(std::string_view name, std::string_view label, Usual usual,
                                   double least, double most)
{
    return plainInput(name, label, Measurand::CarbonDioxideVolumes, usual, least, most, "vol", 0.1);
}
constexpr AnswerSpec co2Answer(std::string_view name, std::string_view label)
{
    return {name, label, Measurand::CarbonDioxideVolumes, "vol", "vol", 3};
}
constexpr AnswerSpec gramsAnswer(std::string_view name, std::string_view label)
{
    return {name, label, Measurand::Concentration, "g/L", "g/L", 3};
}

constexpr FormulaSource residualSource{"carbon dioxide left after fermentation",
                                       "home brewers' priming tables; author not known"};

// --- carbonate

constexpr std::array<std::string_view, 3> howWords = {"standing", "shaken", "stone"};

constexpr std::array carbonateInputs = {
    temperatureInput("temperature", "Temperature of the beer", 4, 0, 30),
    co2Input("target", "Carbon dioxide wanted", 2.4, 1, 5),
    co2Input("now", "Carbon dioxide in it now", 0.8, 0, 5),
    optional(
        pressureInput("pressure", "Pressure at the keg, gauge, if it is another", none, -1e5, 1e6)),
    wordInput("how", "How the gas gets in", howWords)};

constexpr std::array carbonateAnswers = {
    pressureAnswer("keg-pressure", "Keg pressure for it, gauge"),
    gramsAnswer("grams", "That is, in grams"),
    co2Answer("volumes", "It comes to, at the pressure given"),
    AnswerSpec{"time", "Time until it is nearly there (95 % of the way)", Measurand::Duration, "h",
               "h", 2},
    AnswerSpec{"time-to-target", "Time to what is wanted", Measurand::Duration, "h", "h", 2}};

constexpr std::array carbonateSources = {
    FormulaSource{"keg pressure", "the trade's keg chart, polynomial fit; author not known"},
    FormulaSource{"how fast it gets in", practice}};

gas::Carbonating howOf(const Given& given)
{
    const std::string word = given.word("how");
    return word == "shaken"  ? gas::Carbonating::Shaken
           : word == "stone" ? gas::Carbonating::Stone
                             : gas::Carbonating::Standing;
}

Result<std::vector<Answer>> runCarbonate(const Given& given)
{
    const Temperature t = temperatureOf(given);
    const double target = number(given, "target");
    const double now = number(given, "now");
    const Duration constant = gas::usualTimeConstant(howOf(given));
    SPILE_ASSIGN(pressure, gas::kegPressure(target, t));
    SPILE_ASSIGN(grams, gas::co2Dissolved(target));
    AnswerList answers(carbonateAnswers);
    answers.add("keg-pressure", pressure.si());
    answers.add("grams", grams.si());
    double last = target;
    if (given.has("pressure")) {
        SPILE_ASSIGN(volumes, gas::kegVolumes(pressureOf(given), t));
        answers.add("volumes", volumes);
        last = volumes;
    }
    constexpr double nearly = 0.95;
    SPILE_ASSIGN(time, gas::timeToVolumes(now, last, now + nearly * (last - now), constant));
    answers.add("time", time.si());
    // Not where that pressure never leads to it.
    if (const auto toTarget = gas::timeToVolumes(now, last, target, constant);
        toTarget && given.has("pressure")) {
        answers.add("time-to-target", toTarget->si());
    }
    return answers.done();
}

// --- residual

constexpr std::array residualInputs = {
    temperatureInput("temperature", "Warmest since fermentation", 20, 0, 30)};

constexpr std::array residualAnswers = {co2Answer("volumes", "Carbon dioxide in the beer"),
                                        gramsAnswer("grams", "That is, in grams")};

constexpr std::array residualSources = {residualSource};

Result<std::vector<Answer>> runResidual(const Given& given)
{
    SPILE_ASSIGN(volumes, gas::residualVolumes(temperatureOf(given)));
    SPILE_ASSIGN(grams, gas::co2Dissolved(volumes));
    AnswerList answers(residualAnswers);
    answers.add("volumes", volumes);
    answers.add("grams", grams.si());
    return answers.done();
}

// --- prime

constexpr std::array<std::string_view, 3> sugarWords = {"sucrose", "glucose",
                                                        "dextrose monohydrate"};

constexpr std::array primeInputs = {
    wordInput("sugar", "Sugar", sugarWords),
    volumeInput("volume", "Volume of the beer", none, 1e-4, 100),
    co2Input("target", "Carbon dioxide wanted", 2.4, 0, 5),
    temperatureInput("temperature", "Warmest since fermentation", 20, 0, 30),
    optional(co2Input("now", "Carbon dioxide in it now, if it was measured", none, 0, 5)),
    temperatureInput("storage", "Warmest that the bottles will be kept", 25, 0, 40)};

constexpr std::array primeAnswers = {
    AnswerSpec{"sugar", "Sugar", Measurand::Mass, "g", "oz", 4},
    gramsAnswer("sugar-per-litre", "Sugar in each litre"),
    co2Answer("now", "Carbon dioxide taken as there already"),
    pressureAnswer("bottle-pressure", "Pressure in the bottles when warmest, gauge")};

constexpr std::array primeSources = {
    FormulaSource{"carbon dioxide from sugar", "fermentation by molar masses (Gay-Lussac 1815)"},
    residualSource,
    FormulaSource{"carbon dioxide dissolved",
                  "Weiss, Marine Chemistry 2 (1974) 203; 0.93 of it in beer"},
    FormulaSource{"3 volumes as a limit for usual bottles", practice}};

gas::Sugar sugarOf(const Given& given)
{
    const std::string word = given.word("sugar");
    return word == "glucose"                ? gas::Sugar::Glucose
           : word == "dextrose monohydrate" ? gas::Sugar::DextroseMonohydrate
                                            : gas::Sugar::Sucrose;
}

Result<std::vector<Answer>> runPrime(const Given& given)
{
    const Volume beer = volumeOf(given);
    const double target = number(given, "target");
    SPILE_ASSIGN(left, gas::residualVolumes(temperatureOf(given)));
    const double now = given.number("now").value_or(left);
    if (now > target) {
        return fail(ErrorCode::OutOfRange, "target", std::to_string(target) + " vol",
                    "at least the " + std::to_string(now) + " vol in it now");
    }
    SPILE_ASSIGN(sugar, gas::primingSugar(sugarOf(given), beer, now, target));
    SPILE_ASSIGN(pressure, gas::bottlePressure(target, temperatureOf(given, "storage")));
    AnswerList answers(primeAnswers);
    answers.add("sugar", sugar.si());
    answers.add("sugar-per-litre", sugar.si() / beer.si());
    answers.add("now", now);
    answers.add("bottle-pressure", pressure.si()).caution = target > gas::bottleVolumesCaution;
    return answers.done();
}

// --- flat

constexpr std::string_view flatText = "Flat enough for a closed barrel.";
constexpr std::string_view livelyText =
    "Too lively: let it stand warm and open, or leave the barrel vented.";
constexpr std::array flatTexts = {flatText, livelyText};

constexpr std::array flatInputs = {
    co2Input("now", "Carbon dioxide in the beer", none, 0, 5),
    temperatureInput("temperature", "Warmest that the barrel will get", 20, 0, 30)};

constexpr std::array flatAnswers = {wordAnswer("flat", "For a barrel"),
                                    co2Answer("most", "It holds, under its own gas, at most")};

constexpr std::array flatSources = {residualSource,
                                    FormulaSource{"no more than that for a barrel", practice}};

Result<std::vector<Answer>> runFlat(const Given& given)
{
    const Temperature t = temperatureOf(given);
    SPILE_ASSIGN(isFlat, gas::isFlatEnough(number(given, "now"), t));
    SPILE_ASSIGN(most, gas::residualVolumes(t));
    AnswerList answers(flatAnswers);
    answers.say("flat", isFlat ? flatText : livelyText, !isFlat);
    answers.add("most", most);
    return answers.done();
}

constexpr std::array all = {
    Calculator{"carbonate",
               "Carbonating in a keg",
               "The pressure for a carbonation, what a pressure leads to, and how long it takes.",
               carbonateInputs,
               carbonateAnswers,
               {},
               carbonateSources,
               "Never above the pressure the keg is made for, and never in a barrel.",
               page,
               runCarbonate},
    Calculator{"residual",
               "Carbon dioxide left after fermentation",
               "What beer holds of its own gas before it is carbonated.",
               residualInputs,
               residualAnswers,
               {},
               residualSources,
               "After months in wood beer holds less, from memory 0.3 to 0.9 volumes: measure it.",
               page,
               runResidual},
    Calculator{"prime",
               "Priming with sugar",
               "Sugar for a carbonation in bottle or keg.",
               primeInputs,
               primeAnswers,
               {},
               primeSources,
               "Too much sugar, or sugar left by a stuck fermentation, bursts bottles. Above 3 "
               "volumes use bottles made for it. Strong aged beer needs fresh yeast.",
               page,
               runPrime},
    Calculator{"flat", "Flat enough for a barrel",
               "Whether beer would push at bung and heads of a closed barrel.", flatInputs,
               flatAnswers, flatTexts, flatSources, "", page, runFlat}};

}  // namespace

std::span<const Calculator> carbonatingCalculators() { return all; }

}  // namespace spile::plan
