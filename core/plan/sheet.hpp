#pragma once

#include "core/base/result.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Work sheets: lists of steps that are worked through one at a time. A sheet is a text in
/// assets/sheets, a line a fact, "key: value"; an empty line and a line that begins with # say
/// nothing. What it says of itself comes first, then its steps.
///
///     sheet: NAME        title: WORDS        for: empty | full | any | lot        only: SWITCH
///     step: NAME         a new step
///     say: WORDS         the instruction; {number} stands for a number of this barrel
///     hint: WORDS        what else there is to know
///     caution: NAME      of cautions.txt, shown before the step begins
///     tick: NAME | WORDS something to see to and tick off
///     ask: NAME [when VALUE=WORD]    something to fill in (asks.hpp)
///     fact: NAME [when VALUE=WORD]   a number of this barrel, with its label (numbers.hpp)
///     timer: NUMBER min | NUMBER h | NAME of a number
///     hold: yes          it is begun by a press that is held
///     close: WORDS       what to close when the worker stops here
///     record: NAME       what is recorded when the step is done (recording.hpp)
///     when: VALUE=WORD or VALUE!=WORD    the step is left out unless it holds
///
/// Names are lower-case words joined by _; they stand in the records and never change.
namespace spile::plan {

/// A comparison with a word that was filled in before.
struct Condition {
    std::string value;
    std::string word;
    bool differs = false;  // != instead of =

    friend bool operator==(const Condition&, const Condition&) = default;
};

/// The name of an ask or a fact, and when it is shown.
struct Part {
    std::string name;
    std::optional<Condition> when;
};

struct Tick {
    std::string name;
    std::string words;
};

/// How long a step takes: minutes, or a number of the barrel.
struct Timer {
    double minutes = 0;
    std::string number;  // if not empty, it stands for the minutes
};

struct Step {
    std::string name;
    std::string say;
    std::string hint;
    std::vector<std::string> cautions;
    std::vector<Tick> ticks;
    std::vector<Part> asks;
    std::vector<Part> facts;
    std::optional<Timer> timer;
    bool hold = false;
    std::string close;
    std::vector<std::string> records;
    std::optional<Condition> when;
};

/// What a sheet is for: any barrel, an empty or a full one, or a lot.
enum class SheetFor : std::uint8_t { Any, Empty, Full, Lot };

struct Sheet {
    std::string name;
    std::string title;
    SheetFor barrels = SheetFor::Any;
    std::string only;  // the switch that lets it be offered; empty: it always is
    std::vector<Step> steps;
};

/// Read a sheet.
///
/// Errors    Malformed: subject "sheet", value the line, limit what is wrong with it.
[[nodiscard]] Result<Sheet> parseSheet(std::string_view text);

/// A caution, where it is from, and its name.
struct Caution {
    std::string name;
    std::string words;
    std::string source;
};
/// Read cautions.txt: "name | words | source" a line.
[[nodiscard]] Result<std::vector<Caution>> parseCautions(std::string_view text);

/// Read labels.txt: "name | label" a line.
struct Label {
    std::string name;
    std::string words;
};
[[nodiscard]] Result<std::vector<Label>> parseLabels(std::string_view text);

/// The names in braces in `words`: "to {full}, then" has "full".
[[nodiscard]] std::vector<std::string> namesIn(std::string_view words);

}  // namespace spile::plan
