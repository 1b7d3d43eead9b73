// purge, purge-cycles: driving the air out.
#include "core/gas/purging.hpp"

#include "core/plan/calculators/room_air.hpp"

namespace spile::plan {

namespace {

constexpr std::string_view page = "numbers-gas-and-purging.md";
constexpr double targetMost = gas::oxygenInDryAir;
constexpr double usualTarget = 1e-3;  // common practice

constexpr CalculatorInput targetInput()
{
    return {"target",
            "Oxygen wanted in the gas",
            Measurand::Share,
            usualTarget,
            1e-6,
            targetMost,
            "%",
            "%",
            0.01,
            0.01,
            {},
            false};
}

// --- purge

constexpr std::string_view shortText = "The cylinder does not hold enough.";

constexpr std::array purgeInputs = {
    volumeInput("volume", "Full volume of the barrel", spiritBarrel, 1e-3, 100),
    pressureInput("pressure", "Pressure at the regulator, gauge", 5 * factor::psi, 1e3, 1e6),
    lengthInput("hose-bore", "Narrowest bore of hose and fittings", 0.006, 0.0005, 0.1),
    longInput("hose-length", "Length of the hose; 0 for none", 3.0, 0, 200),
    temperatureInput("temperature", "Temperature of the gas", 15, 0, 50),
    targetInput(),
    optional(CalculatorInput{"time",
                             "Time, instead of the oxygen wanted",
                             Measurand::Duration,
                             none,
                             0,
                             factor::day,
                             "min",
                             "min",
                             1,
                             1,
                             {},
                             false}),
    optional(massInput("cylinder", "Gas in the cylinder", none, 0, 1000)),
    optional(roomInput(none)),
    airChangesInput()};

constexpr std::array purgeAnswers = {
    minutesAnswer("time", "Time"),
    massAnswer("gas", "Gas used"),
    volumeAnswer("gas-volume", "Its volume at one atmosphere", 3),
    countAnswer("turnovers", "Times the barrel's volume", 2),
    shareAnswer("oxygen", "Oxygen left in the gas", 2),
    oxygenAnswer("oxygen-mass", "Oxygen left in the barrel"),
    minutesAnswer("slow-time", "Time, if it comes in slowly at the bottom and lifts the air"),
    massAnswer("cylinder-left", "Left in the cylinder"),
    countAnswer("purges-left", "Such purges in the cylinder"),
    wordAnswer("cylinder", "Cylinder"),
    roomPeak,
    roomShortTerm,
    roomEightHour,
    roomClass};

constexpr std::array purgeTexts = {shortText, clearText, eightHourText, shortTermText, dangerText};

constexpr std::array purgeSources = {
    FormulaSource{"flow through a bore", "Saint-Venant and Wantzel (1839)"},
    FormulaSource{"flow through a hose", "Perry's Chemical Engineers' Handbook, section 6"},
    FormulaSource{"oxygen left in a well mixed vessel", "mass balance"},
    FormulaSource{"0.1 % as a target; one and a half turnovers from below", practice},
    eightHourSource,
    dangerSource};

Result<void> addCylinder(AnswerList& answers, const Given& given, Mass used)
{
    const Mass held = massOf(given, "cylinder");
    if (used > held) {
        answers.say("cylinder", shortText, true);
        return {};
    }
    SPILE_ASSIGN(left, gas::cylinderLeft(held, used));
    answers.add("cylinder-left", left.si());
    if (const auto purges = gas::purgesLeft(held, used)) {  // not for less than a gram
        answers.add("purges-left", *purges);
    }
    return {};
}

Result<std::vector<Answer>> runPurge(const Given& given)
{
    const gas::PurgeLine line{pressureOf(given), lengthOf(given, "hose-bore"),
                              lengthOf(given, "hose-length"), temperatureOf(given)};
    const Volume barrel = volumeOf(given);
    SPILE_ASSIGN(purge, given.has("time") ? gas::purgeFor(line, barrel, durationOf(given))
                                          : gas::purgeTo(line, barrel, number(given, "target")));
    AnswerList answers(purgeAnswers);
    answers.add("time", purge.time.si());
    answers.add("gas", purge.gas.si());
    answers.add("gas-volume", purge.gasAt1Atm.si());
    answers.add("turnovers", purge.turnovers);
    answers.add("oxygen", purge.residualOxygen);
    answers.add("oxygen-mass", purge.oxygenLeft.si());
    if (const auto slow = gas::purgeByDisplacement(line, barrel); slow && !given.has("time")) {
        answers.add("slow-time", slow->time.si());
    }
    if (given.has("cylinder")) {
        SPILE_TRY(addCylinder(answers, given, purge.gas));
    }
    if (given.has("room")) {
        // All of it goes into the room: the careful case.
        const Duration time = std::max(purge.time, seconds(1));
        SPILE_TRY(addRoomAir(answers, given,
                             {cubicMetresPerSecond(purge.gasAt1Atm.si() / time.si()), time}));
    }
    return answers.done();
}

// --- purge-cycles

constexpr std::array cycleInputs = {
    volumeInput("volume", "Volume of the keg or tank", 0.02, 1e-4, 1000),
    pressureInput("pressure", "Pressure it is filled to, gauge", 1e5, 1e3, 1e6),
    temperatureInput("temperature", "Temperature", 15, 0, 50), targetInput(),
    optional(countInput("cycles", "Cycles, instead of the oxygen wanted", none, 1000))};

constexpr std::array cycleAnswers = {countAnswer("cycles", "Cycles"), massAnswer("gas", "Gas used"),
                                     shareAnswer("oxygen", "Oxygen left in the gas", 2),
                                     oxygenAnswer("oxygen-mass", "Oxygen left in it")};

constexpr std::array cycleSources = {
    FormulaSource{"what each cycle leaves: atmosphere over atmosphere and gauge", "mass balance"}};

Result<std::vector<Answer>> runCycles(const Given& given)
{
    const Pressure gauge = pressureOf(given);
    const Volume vessel = volumeOf(given);
    const Temperature t = temperatureOf(given);
    SPILE_ASSIGN(done,
                 given.has("cycles")
                     ? gas::cyclesOf(static_cast<int>(number(given, "cycles")), gauge, vessel, t)
                     : gas::cyclesTo(number(given, "target"), gauge, vessel, t));
    AnswerList answers(cycleAnswers);
    answers.add("cycles", done.count);
    answers.add("gas", done.gas.si());
    answers.add("oxygen", done.residualOxygen);
    answers.add("oxygen-mass", done.oxygenLeft.si());
    return answers.done();
}

constexpr std::array all = {
    Calculator{"purge", "Purging a barrel",
               "How long to blow carbon dioxide through an open barrel, what it takes, and what it "
               "does to the room.",
               purgeInputs, purgeAnswers, purgeTexts, purgeSources,
               "The barrel is open: never purge a closed one so. Carbon dioxide kills without "
               "warning and pools low. A model never replaces a monitor.",
               page, runPurge},
    Calculator{"purge-cycles",
               "Purging by pressure and release",
               "How often a keg or tank is filled with carbon dioxide and let off.",
               cycleInputs,
               cycleAnswers,
               {},
               cycleSources,
               "For kegs and tanks only: a barrel's heads bear little. Stay below the pressure the "
               "vessel is made for.",
               page,
               runCycles}};

}  // namespace

std::span<const Calculator> purgingCalculators() { return all; }

}  // namespace spile::plan
