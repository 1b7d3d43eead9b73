#pragma once

#include "core/gas/room.hpp"
#include "core/plan/calculators/parts.hpp"

/// What gas does to the air of the room; for the files of this folder alone.
namespace spile::plan {

inline constexpr std::string_view clearText = "Below the limit for eight hours.";
inline constexpr std::string_view eightHourText =
    "Above 5,000 ppm over eight hours: open up, and measure.";
inline constexpr std::string_view shortTermText =
    "Above 30,000 ppm for fifteen minutes: stay out until the air is measured.";
inline constexpr std::string_view dangerText =
    "Above 40,000 ppm: danger to life. Let less out, or air the room much more.";

inline constexpr AnswerSpec roomPeak = partsAnswer("room-peak", "Carbon dioxide in the room, most");
inline constexpr AnswerSpec roomShortTerm =
    partsAnswer("room-15-min", "Mean of the worst 15 minutes");
inline constexpr AnswerSpec roomEightHour = partsAnswer("room-8-h", "Mean of eight hours");
inline constexpr AnswerSpec roomClass = wordAnswer("room-air", "Air of the room");

inline constexpr FormulaSource roomSource{"air of one well mixed room", "mass balance"};
inline constexpr FormulaSource eightHourSource{"limit for eight hours",
                                               "OSHA, 29 CFR 1910.1000, table Z-1"};
inline constexpr FormulaSource dangerSource{"limits for 15 minutes and of danger",
                                            "NIOSH Pocket Guide to Chemical Hazards"};

inline constexpr std::string_view roomCaution =
    "Carbon dioxide kills without warning and pools low: near the bung and on the floor it is 3 to "
    "10 times the mean. A model never replaces a monitor.";

constexpr CalculatorInput roomInput(Usual usual)
{
    return {"room", "Volume of the room", Measurand::Volume, usual, 1, 1e6, "m3", "m3", 10, 10, {},
            false};
}
constexpr CalculatorInput airChangesInput()
{
    return plainInput("air-changes", "Air changes: 0.5 shut, 2 windows open", Measurand::AirChanges,
                      0.5 / factor::hour, 0, 100 / factor::hour, "/h", 0.5);
}

/// Add the four answers about a release in the room of the inputs "room" and "air-changes".
[[nodiscard]] Result<void> addRoomAir(AnswerList& answers, const Given& given,
                                      const gas::Release& release);

}  // namespace spile::plan
