// room-air: what carbon dioxide does to the air of a room.
#include "core/plan/calculators/room_air.hpp"

#include "core/gas/flow.hpp"

namespace spile::plan {

namespace {

constexpr std::array inputs = {
    optional(CalculatorInput{"flow",
                             "Gas let out",
                             Measurand::MassFlow,
                             none,
                             0,
                             1,
                             "kg/min",
                             "lb/min",
                             0.01,
                             0.02,
                             {},
                             false}),
    optional(massInput("mass", "Gas let out in that time", none, 0, 1000)),
    CalculatorInput{"time",
                    "Time in which it is let out",
                    Measurand::Duration,
                    10 * factor::minute,
                    1,
                    30 * factor::day,
                    "min",
                    "min",
                    1,
                    1,
                    {},
                    false},
    roomInput(100.0),
    airChangesInput(),
    temperatureInput("temperature", "Temperature of the room", 15, 0, 50)};

constexpr std::array answerSpecs = {
    massAnswer("gas", "Gas let out"),
    AnswerSpec{"gas-volume", "Its volume in the room", Measurand::Volume, "m3", "m3", 3},
    roomPeak,
    roomShortTerm,
    roomEightHour,
    roomClass,
    partsAnswer("without-air", "Added if no air is changed")};

constexpr std::array texts = {clearText, eightHourText, shortTermText, dangerText};
constexpr std::array sources = {roomSource, eightHourSource, dangerSource};

Result<std::vector<Answer>> run(const Given& given)
{
    SPILE_TRY(needOneOf(given, {"mass", "flow"}));
    const Duration time = durationOf(given);
    const Temperature t = temperatureOf(given);
    const Mass gas =
        given.has("mass") ? massOf(given, "mass") : kilograms(number(given, "flow") * time.si());
    SPILE_ASSIGN(volume, gas::volumeAtOneAtmosphere(gas, t));
    AnswerList answers(answerSpecs);
    answers.add("gas", gas.si());
    answers.add("gas-volume", volume.si());
    SPILE_TRY(addRoomAir(answers, given, {cubicMetresPerSecond(volume.si() / time.si()), time}));
    // Not where there is more gas than room.
    if (const auto added = gas::co2Added(volumeOf(given, "room"), gas, t)) {
        answers.add("without-air", *added);
    }
    return answers.done();
}

constexpr std::array all = {
    Calculator{"room-air", "Carbon dioxide in the room",
               "What those who stay in a room breathe when gas is let out in it.", inputs,
               answerSpecs, texts, sources, roomCaution, "numbers-room-air.md", run}};

}  // namespace

std::span<const Calculator> roomAirCalculators() { return all; }

Result<void> addRoomAir(AnswerList& answers, const Given& given, const gas::Release& release)
{
    const Volume room = volumeOf(given, "room");
    SPILE_ASSIGN(ventilation, gas::airChanges(room, number(given, "air-changes") * factor::hour));
    SPILE_ASSIGN(exposure, gas::exposureTo({room, ventilation}, release));
    answers.add("room-peak", exposure.peak).caution = exposure.peak > gas::co2DangerLimit;
    answers.add("room-15-min", exposure.shortTermMean).caution =
        exposure.shortTermMean > gas::co2ShortTermLimit;
    answers.add("room-8-h", exposure.eightHourMean).caution =
        exposure.eightHourMean > gas::co2EightHourLimit;
    const gas::RoomAir air = gas::roomAir(exposure);
    const std::string_view text = air == gas::RoomAir::Clear            ? clearText
                                  : air == gas::RoomAir::AboveEightHour ? eightHourText
                                  : air == gas::RoomAir::AboveShortTerm ? shortTermText
                                                                        : dangerText;
    answers.say("room-air", text, air != gas::RoomAir::Clear);
    return {};
}

}  // namespace spile::plan
