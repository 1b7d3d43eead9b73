#include "core/plan/sheet.hpp"

#include <algorithm>
#include <charconv>
#include <map>

namespace spile::plan {

namespace {

std::string_view trimmed(std::string_view text)
{
    const auto first = text.find_first_not_of(" \t\r");
    if (first == std::string_view::npos) {
        return {};
    }
    return text.substr(first, text.find_last_not_of(" \t\r") - first + 1);
}

bool isName(std::string_view text)
{
    return !text.empty() && std::all_of(text.begin(), text.end(), [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_';
    });
}

tl::unexpected<Error> malformed(std::string_view line, std::string wrong)
{
    return fail(ErrorCode::Malformed, "sheet", std::string(line), std::move(wrong));
}

// Calls `take(line)` for each line that says something.
template <class Take>
Result<void> eachLine(std::string_view text, Take take)
{
    while (!text.empty()) {
        const auto end = std::min(text.find('\n'), text.size());
        const std::string_view line = trimmed(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
        if (!line.empty() && line.front() != '#') {
            SPILE_TRY(take(line));
        }
    }
    return {};
}

// "a | b | c" without the blanks around.
std::vector<std::string> cells(std::string_view line)
{
    std::vector<std::string> found;
    while (true) {
        const auto bar = line.find('|');
        found.emplace_back(trimmed(line.substr(0, bar)));
        if (bar == std::string_view::npos) {
            return found;
        }
        line.remove_prefix(bar + 1);
    }
}

Result<Condition> parseCondition(std::string_view text)
{
    Condition condition;
    const auto equals = text.find('=');
    if (equals == std::string_view::npos || equals == 0) {
        return malformed(text, "VALUE=WORD or VALUE!=WORD");
    }
    condition.differs = text[equals - 1] == '!';
    condition.value = trimmed(text.substr(0, equals - (condition.differs ? 1 : 0)));
    condition.word = trimmed(text.substr(equals + 1));
    if (!isName(condition.value) || condition.word.empty()) {
        return malformed(text, "VALUE=WORD or VALUE!=WORD");
    }
    return condition;
}

Result<Part> parsePart(std::string_view text)
{
    constexpr std::string_view when = " when ";
    const auto at = text.find(when);
    Part part{std::string(trimmed(text.substr(0, at))), {}};
    if (!isName(part.name)) {
        return malformed(text, "a name of lower-case letters, digits and _");
    }
    if (at != std::string_view::npos) {
        SPILE_ASSIGN(condition, parseCondition(trimmed(text.substr(at + when.size()))));
        part.when = condition;
    }
    return part;
}

Result<Timer> parseTimer(std::string_view text)
{
    if (isName(text) && !(text.front() >= '0' && text.front() <= '9')) {
        return Timer{0, std::string(text)};
    }
    Timer timer;
    const char* const end = text.data() + text.size();
    const auto read = std::from_chars(text.data(), end, timer.minutes);
    const std::string_view unit = trimmed({read.ptr, static_cast<std::size_t>(end - read.ptr)});
    constexpr double minutesPerHour = 60;
    if (read.ec != std::errc() || timer.minutes <= 0 || (unit != "min" && unit != "h")) {
        return malformed(text, "minutes or hours: 30 min, 24 h");
    }
    timer.minutes *= unit == "h" ? minutesPerHour : 1;
    return timer;
}

// Takes the lines of one sheet.
class Reader {
public:
    Result<void> take(std::string_view line)
    {
        const auto colon = line.find(':');
        if (colon == std::string_view::npos) {
            return malformed(line, "key: value");
        }
        const std::string_view key = trimmed(line.substr(0, colon));
        const std::string_view value = trimmed(line.substr(colon + 1));
        if (value.empty()) {
            return malformed(line, "a value after the colon");
        }
        if (key == "step") {
            return beginStep(line, value);
        }
        return sheet_.steps.empty() ? takeOwn(line, key, value)
                                    : takeOfStep(line, key, value, sheet_.steps.back());
    }

    Result<Sheet> end()
    {
        if (sheet_.name.empty() || sheet_.title.empty() || sheet_.steps.empty()) {
            return malformed(sheet_.name, "a name, a title and a step");
        }
        for (const Step& step : sheet_.steps) {
            if (step.say.empty()) {
                return malformed(step.name, "a step says something");
            }
        }
        return std::move(sheet_);
    }

private:
    Result<void> beginStep(std::string_view line, std::string_view name)
    {
        const bool known = std::any_of(sheet_.steps.begin(), sheet_.steps.end(),
                                       [&](const Step& step) { return step.name == name; });
        if (!isName(name) || known) {
            return malformed(line, "a name that no other step has");
        }
        sheet_.steps.emplace_back().name = name;
        return {};
    }

    static std::optional<SheetFor> forWhat(std::string_view word)
    {
        static const std::map<std::string_view, SheetFor> words = {{"any", SheetFor::Any},
                                                                   {"empty", SheetFor::Empty},
                                                                   {"full", SheetFor::Full},
                                                                   {"lot", SheetFor::Lot}};
        const auto found = words.find(word);
        return found == words.end() ? std::nullopt : std::optional(found->second);
    }

    Result<void> takeOwn(std::string_view line, std::string_view key, std::string_view value)
    {
        if (key == "sheet" && isName(value)) {
            sheet_.name = value;
        } else if (key == "title") {
            sheet_.title = value;
        } else if (key == "only" && isName(value)) {
            sheet_.only = value;
        } else if (const auto barrels = forWhat(value); key == "for" && barrels) {
            sheet_.barrels = *barrels;
        } else {
            return malformed(line, "sheet, title, for: empty, full, any or lot, only, or a step");
        }
        return {};
    }

    static Result<void> takeOfStep(std::string_view line, std::string_view key,
                                   std::string_view value, Step& step)
    {
        if (key == "say") {
            step.say = value;
        } else if (key == "hint") {
            step.hint = value;
        } else if (key == "close") {
            step.close = value;
        } else if (key == "hold" && value == "yes") {
            step.hold = true;
        } else if (key == "caution" && isName(value)) {
            step.cautions.emplace_back(value);
        } else if (key == "record" && isName(value)) {
            step.records.emplace_back(value);
        } else {
            return takePart(line, key, value, step);
        }
        return {};
    }

    static Result<void> takePart(std::string_view line, std::string_view key,
                                 std::string_view value, Step& step)
    {
        if (key == "tick") {
            const auto parts = cells(value);
            if (parts.size() != 2 || !isName(parts[0]) || parts[1].empty()) {
                return malformed(line, "NAME | WORDS");
            }
            step.ticks.push_back({parts[0], parts[1]});
        } else if (key == "ask" || key == "fact") {
            SPILE_ASSIGN(part, parsePart(value));
            (key == "ask" ? step.asks : step.facts).push_back(std::move(part));
        } else if (key == "timer") {
            SPILE_ASSIGN(timer, parseTimer(value));
            step.timer = timer;
        } else if (key == "when") {
            SPILE_ASSIGN(condition, parseCondition(value));
            step.when = condition;
        } else {
            return malformed(line, "a key that a step has");
        }
        return {};
    }

    Sheet sheet_;
};

}  // namespace

Result<Sheet> parseSheet(std::string_view text)
{
    Reader reader;
    SPILE_TRY(eachLine(text, [&](std::string_view line) { return reader.take(line); }));
    return reader.end();
}

Result<std::vector<Caution>> parseCautions(std::string_view text)
{
    std::vector<Caution> cautions;
    SPILE_TRY(eachLine(text, [&](std::string_view line) -> Result<void> {
        const auto parts = cells(line);
        if (parts.size() != 3 || !isName(parts[0]) || parts[1].empty() || parts[2].empty()) {
            return malformed(line, "name | words | source");
        }
        cautions.push_back({parts[0], parts[1], parts[2]});
        return {};
    }));
    return cautions;
}

Result<std::vector<Label>> parseLabels(std::string_view text)
{
    std::vector<Label> labels;
    SPILE_TRY(eachLine(text, [&](std::string_view line) -> Result<void> {
        const auto parts = cells(line);
        if (parts.size() != 2 || !isName(parts[0]) || parts[1].empty()) {
            return malformed(line, "name | label");
        }
        labels.push_back({parts[0], parts[1]});
        return {};
    }));
    return labels;
}

std::vector<std::string> namesIn(std::string_view words)
{
    std::vector<std::string> names;
    for (auto open = words.find('{'); open != std::string_view::npos;
         open = words.find('{', open + 1)) {
        const auto close = words.find('}', open);
        if (close == std::string_view::npos) {
            break;
        }
        names.emplace_back(words.substr(open + 1, close - open - 1));
    }
    return names;
}

}  // namespace spile::plan
