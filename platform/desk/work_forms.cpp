// The forms in which the desk shows what the calculators ask and answer.
#include "platform/desk/work_forms.hpp"

#include "core/units/units.hpp"
#include "platform/desk/rows.hpp"
#include "platform/desk/wording.hpp"

#include <cstdlib>

namespace spile::desk {

using nlohmann::json;
using plan::Answer;
using plan::Calculator;
using plan::CalculatorInput;

namespace {

double inUnit(double si, Measurand measurand, std::string_view symbol)
{
    for (const UnitSpec& unit : unitsOf(measurand)) {
        if (unit.symbol == symbol) {
            const double number = (si - unit.offset) / unit.factor;
            // Nine digits: what a person can use of it, without the noise of the conversion.
            const auto text = formatQuantity(number, Measurand::SpecificGravity, "", 9);
            return text ? std::strtod(text->c_str(), nullptr) : number;
        }
    }
    return si;
}

std::string said(double si, const Answer& answer, bool us)
{
    const auto text =
        formatQuantity(si, answer.measurand, us ? answer.usUnit : answer.metricUnit, answer.digits);
    return text.value_or("");
}

std::string countSaid(const Answer& answer)
{
    const bool isWhole = answer.value == static_cast<double>(static_cast<long long>(answer.value));
    return isWhole ? std::to_string(static_cast<long long>(answer.value))
                   : said(answer.value, answer, false);
}

}  // namespace

json answerJson(const Answer& answer)
{
    const auto number = [&](double si) { return inUnit(si, answer.measurand, answer.metricUnit); };
    const bool isText = !answer.text.empty();
    return {{"name", answer.name},
            {"label", answer.label},
            {"value", isText ? json() : json(number(answer.value))},
            {"unit", answer.metricUnit},
            {"low", answer.low ? json(number(*answer.low)) : json()},
            {"high", answer.high ? json(number(*answer.high)) : json()},
            {"text", answer.text},
            {"caution", answer.caution}};
}

json inputsJson(const Calculator& calculator, const plan::Given& given)
{
    json all = json::object();
    for (const CalculatorInput& input : calculator.inputs) {
        if (const auto number = given.number(input.name)) {
            all[std::string(input.name)] = {
                {"value", inUnit(*number, input.measurand, input.metricUnit)},
                {"unit", input.metricUnit}};
        } else if (given.has(input.name)) {
            all[std::string(input.name)] = {{"value", given.word(input.name)}, {"unit", ""}};
        }
    }
    return all;
}

json sourcesJson(const Calculator& calculator)
{
    json all = json::array();
    for (const plan::FormulaSource& source : calculator.sources) {
        all.push_back({{"formula", source.formula}, {"publication", source.publication}});
    }
    return all;
}

std::string sourceLines(const Calculator& calculator)
{
    std::string text = "\nSources\n";
    for (const plan::FormulaSource& source : calculator.sources) {
        text += "  " + std::string(source.formula) + ": " + std::string(source.publication) + "\n";
    }
    return text;
}

std::string cautionLines(const Calculator& calculator)
{
    return calculator.caution.empty() ? "" : "Caution: " + std::string(calculator.caution) + "\n\n";
}

std::string answerLines(const std::vector<Answer>& answers, bool us)
{
    std::vector<std::vector<std::string>> lines;
    for (const Answer& answer : answers) {
        std::string value = !answer.text.empty()                   ? answer.text
                            : answer.measurand == Measurand::Count ? countSaid(answer)
                                                                   : said(answer.value, answer, us);
        if (answer.low && answer.high) {
            value += " (" + said(*answer.low, answer, us) + " to " +
                     said(*answer.high, answer, us) + ")";
        }
        lines.push_back({(answer.caution ? "! " : "  ") + answer.label, value});
    }
    return table(lines);
}

json dipJson(const std::vector<vessel::DipRow>& rows)
{
    json all = json::array();
    for (const vessel::DipRow& row : rows) {
        all.push_back({{"dip_mm", inUnit(row.dip.si(), Measurand::Length, "mm")},
                       {"volume_l", inUnit(row.volume.si(), Measurand::Volume, "L")}});
    }
    return all;
}

std::string dipLines(const std::vector<vessel::DipRow>& rows, bool us)
{
    std::vector<std::vector<std::string>> lines{us ? std::vector<std::string>{"dip in", "gal"}
                                                   : std::vector<std::string>{"dip mm", "L"}};
    for (const vessel::DipRow& row : rows) {
        lines.push_back(
            us ? std::vector{fixed(inInches(row.dip), 3), fixed(inUsGallons(row.volume), 2)}
               : std::vector{fixed(inMillimetres(row.dip), 1), fixed(inLitres(row.volume), 2)});
    }
    return "\n" + table(lines);
}

std::string usualOf(const CalculatorInput& input)
{
    if (!input.words.empty()) {
        return input.mayBeLeftOut ? "may be left out"
                                  : "usual: " + std::string(input.words.front());
    }
    if (input.mayBeLeftOut) {
        return "may be left out";
    }
    if (!input.usual) {
        return "must be given";
    }
    constexpr int digits = 4;
    return "usual: " +
           formatQuantity(*input.usual, input.measurand, input.metricUnit, digits).value_or("");
}

json helpJson(const Calculator& calculator)
{
    json inputs = json::array();
    for (const CalculatorInput& input : calculator.inputs) {
        json one = {{"name", input.name},
                    {"label", input.label},
                    {"unit", input.metricUnit},
                    {"usual", json()},
                    {"may_be_left_out", input.mayBeLeftOut},
                    {"words", json::array()}};
        if (input.usual) {
            one["usual"] = inUnit(*input.usual, input.measurand, input.metricUnit);
        }
        for (const std::string_view word : input.words) {
            one["words"].push_back(word);
        }
        if (input.words.empty()) {
            one["least"] = inUnit(input.least, input.measurand, input.metricUnit);
            one["most"] = inUnit(input.most, input.measurand, input.metricUnit);
        }
        inputs.push_back(std::move(one));
    }
    return {{"calculator", calculator.name},
            {"title", calculator.title},
            {"use", calculator.use},
            {"caution", calculator.caution},
            {"inputs", inputs},
            {"sources", sourcesJson(calculator)},
            {"handbook", calculator.handbook}};
}

}  // namespace spile::desk
