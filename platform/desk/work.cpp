// work: the trade's calculators. No cellar is opened.
#include "core/plan/calculators/calculator.hpp"
#include "core/plan/calculators/dip_table.hpp"
#include "platform/desk/commands.hpp"
#include "platform/desk/nearest.hpp"
#include "platform/desk/rows.hpp"
#include "platform/desk/work_forms.hpp"

#include <algorithm>

namespace spile::desk {

using nlohmann::json;
using plan::Answer;
using plan::Calculator;
using plan::CalculatorInput;

namespace {

// One error, said in a sentence of this command's own.
int refuseWork(const Session& session, const Error& error, const std::string& sentence)
{
    Session::remark("spile-desk: " + sentence);
    if (session.json()) {
        session.answer({{"error",
                         {{"code", codeName(error.code)},
                          {"subject", error.subject},
                          {"value", error.value},
                          {"remedy", error.limit}}}},
                       {});
    }
    return exitOf(error);
}

bool isBareNumber(const std::string& text)
{
    return !text.empty() && text.find_first_not_of("+-.0123456789 ") == std::string::npos;
}

// What is wrong with an input, as it was typed.
std::string sentenceOf(const Error& error, const CalculatorInput& input)
{
    const std::string option = "--" + error.subject;
    switch (error.code) {
        case ErrorCode::Malformed:
            if (error.value.empty()) {
                return option + " is missing; expected " + error.limit;
            }
            return option + ": " + error.value +
                   (isBareNumber(error.value) && !input.metricUnit.empty() ? " has no unit"
                                                                           : " is not right") +
                   "; expected " + error.limit;
        case ErrorCode::OutOfRange:
            return option + ": " + error.value + " is outside its range; expected " + error.limit;
        default:
            return option + ": " + worded(error);
    }
}

int refuse(const Session& session, const Calculator& calculator, const Error& error)
{
    const CalculatorInput* input = plan::findInput(calculator, error.subject);
    return input == nullptr ? session.refuse(error)
                            : refuseWork(session, error, sentenceOf(error, *input));
}

int refuseUnknown(const Session& session, const std::string& what, const std::string& name,
                  const std::vector<std::string>& known)
{
    const std::string near = nearest(name, known);
    const Error error{ErrorCode::Malformed, what, name, near};
    return refuseWork(session, error,
                      "there is no " + what + " " + name + "; the nearest: " + near);
}

// --- lists and help

int list(const Session& session)
{
    json all = json::array();
    std::vector<std::vector<std::string>> lines;
    for (const Calculator& calculator : plan::calculators()) {
        all.push_back(
            {{"name", calculator.name}, {"title", calculator.title}, {"use", calculator.use}});
        lines.push_back({std::string(calculator.name), std::string(calculator.use)});
    }
    session.answer(
        all, table(lines) + "\nspile-desk work NAME --help shows what one of them asks for.\n");
    return Done;
}

int help(const Session& session, const Calculator& calculator)
{
    std::vector<std::vector<std::string>> lines;
    for (const CalculatorInput& input : calculator.inputs) {
        lines.push_back({"  --" + std::string(input.name), std::string(input.label), usualOf(input),
                         input.words.empty() ? plan::rangeOf(input) : "", plan::expectedOf(input)});
    }
    session.answer(helpJson(calculator), cautionLines(calculator) + std::string(calculator.title) +
                                             "\n" + std::string(calculator.use) + "\n\n" +
                                             table(lines) + sourceLines(calculator));
    return Done;
}

// --- the command line

struct Typed {
    std::string name;
    std::string value;
    bool isComplete = true;  // false for an option at the end, without a value
};

bool isSwitch(const std::string& word)
{
    return word == "--help" || word == "-h" || word == "--us" || word == "--json";
}

// "--name value", "--name=value" and "name=value"; the switches are passed over.
std::vector<Typed> typedOf(const std::vector<std::string>& words)
{
    std::vector<Typed> all;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (isSwitch(words[i])) {
            continue;
        }
        const bool isOption = words[i].starts_with("--");
        const std::string word = words[i].substr(isOption ? 2 : 0);
        if (const auto equals = word.find('='); equals != std::string::npos) {
            all.push_back({word.substr(0, equals), word.substr(equals + 1)});
        } else if (isOption && i + 1 < words.size()) {
            all.push_back({word, words[++i]});
        } else {
            all.push_back({word, "", false});
        }
    }
    return all;
}

bool has(const std::vector<std::string>& words, std::string_view word)
{
    return std::find(words.begin(), words.end(), word) != words.end();
}

std::vector<std::string> inputNames(const Calculator& calculator)
{
    std::vector<std::string> names;
    for (const CalculatorInput& input : calculator.inputs) {
        names.emplace_back(input.name);
    }
    return names;
}

// Put what was typed into `given`; Done, or the exit of what is wrong with it.
int giveAll(const Session& session, const Calculator& calculator,
            const std::vector<std::string>& words, plan::Given& given)
{
    for (const Typed& typed : typedOf(words)) {
        const CalculatorInput* input = plan::findInput(calculator, typed.name);
        if (input == nullptr) {
            return refuseUnknown(session, "input", typed.name, inputNames(calculator));
        }
        if (!typed.isComplete || typed.value.empty()) {
            return refuse(session, calculator,
                          {ErrorCode::Malformed, typed.name, "", plan::expectedOf(*input)});
        }
        if (const auto taken = plan::giveTyped(given, *input, typed.value); !taken) {
            return refuse(session, calculator, taken.error());
        }
    }
    return Done;
}

int run(const Session& session, const Calculator& calculator, const plan::Given& given, bool us)
{
    const auto filled = plan::filledIn(calculator, given);
    if (!filled) {
        return refuse(session, calculator, filled.error());
    }
    const auto answers = plan::calculate(calculator, given);
    if (!answers) {
        return refuse(session, calculator, answers.error());
    }
    json all = {{"calculator", calculator.name},
                {"inputs", inputsJson(calculator, *filled)},
                {"answers", json::array()},
                {"sources", sourcesJson(calculator)},
                {"caution", calculator.caution}};
    for (const Answer& answer : *answers) {
        all["answers"].push_back(answerJson(answer));
    }
    std::string text = cautionLines(calculator) + answerLines(*answers, us);
    if (calculator.name == "dip-table") {
        const auto rows = plan::dipRowsOf(given);
        if (!rows) {
            return refuse(session, calculator, rows.error());
        }
        all["rows"] = dipJson(*rows);
        text += dipLines(*rows, us);
    }
    session.answer(all, text + sourceLines(calculator));
    return Done;
}

}  // namespace

int work(const Session& session, std::vector<std::string> words)
{
    const auto first = std::find_if_not(words.begin(), words.end(), isSwitch);
    if (first == words.end()) {
        return list(session);
    }
    const std::string name = *first;
    words.erase(first);
    const Calculator* calculator = plan::findCalculator(name);
    if (calculator == nullptr) {
        std::vector<std::string> names;
        for (const Calculator& one : plan::calculators()) {
            names.emplace_back(one.name);
        }
        return refuseUnknown(session, "calculator", name, names);
    }
    if (has(words, "--help") || has(words, "-h")) {
        return help(session, *calculator);
    }
    plan::Given given;
    if (const int wrong = giveAll(session, *calculator, words, given); wrong != Done) {
        return wrong;
    }
    return run(session, *calculator, given, has(words, "--us"));
}

}  // namespace spile::desk
