#include "core/plan/calculators/calculator.hpp"

#include "core/liquor/extract.hpp"
#include "core/liquor/gravity.hpp"
#include "core/plan/calculators/parts.hpp"

#include <cmath>

namespace spile::plan {

namespace {

std::vector<Calculator> collected()
{
    std::vector<Calculator> all;
    for (const auto part : {strengthCalculators(), mixingCalculators(), gaugingCalculators(),
                            purgingCalculators(), roomAirCalculators(), pushingCalculators(),
                            carbonatingCalculators(), lossCalculators(), explainingCalculators(),
                            wettingCalculators(), oxygenCalculators(), packingCalculators()}) {
        all.insert(all.end(), part.begin(), part.end());
    }
    return all;
}

std::string inUnit(double si, const CalculatorInput& input, bool us)
{
    constexpr int digits = 6;
    const auto text =
        formatQuantity(si, input.measurand, us ? input.usUnit : input.metricUnit, digits);
    if (!text) {
        return std::to_string(si);
    }
    // "100.000 mm" says no more than "100 mm".
    const auto blank = std::min(text->find(' '), text->size());
    std::string number = text->substr(0, blank);
    if (number.find('.') != std::string::npos && number.find('e') == std::string::npos) {
        number.erase(number.find_last_not_of('0') + 1);
        if (number.back() == '.') {
            number.pop_back();
        }
    }
    return number + text->substr(blank);
}

std::string choiceOf(std::span<const std::string_view> words)
{
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i) {
        text += i == 0 ? "" : i + 1 == words.size() ? " or " : ", ";
        text += words[i];
    }
    return text;
}

Result<void> fillWord(Given& filled, const CalculatorInput& input)
{
    if (!filled.has(input.name)) {
        if (!input.mayBeLeftOut) {
            filled.setWord(input.name, std::string(input.words.front()));
        }
        return {};
    }
    const std::string word = filled.word(input.name);
    if (std::find(input.words.begin(), input.words.end(), word) == input.words.end()) {
        return fail(ErrorCode::Malformed, std::string(input.name), word, choiceOf(input.words));
    }
    return {};
}

Result<void> fillNumber(Given& filled, const CalculatorInput& input)
{
    if (!filled.has(input.name) && input.usual) {
        filled.set(input.name, *input.usual);
    }
    const auto value = filled.number(input.name);
    if (!value) {
        return input.mayBeLeftOut && !filled.has(input.name)
                   ? Result<void>()
                   : fail(ErrorCode::Malformed, std::string(input.name), {}, expectedOf(input));
    }
    if (!std::isfinite(*value)) {
        return fail(ErrorCode::NotFinite, std::string(input.name), {}, expectedOf(input));
    }
    // A limit that was typed in another unit may differ from it in its last digit.
    const double rounding = 1e-12 * std::max(std::abs(input.least), std::abs(input.most));
    if (*value < input.least - rounding || *value > input.most + rounding) {
        return fail(ErrorCode::OutOfRange, std::string(input.name), inUnit(*value, input, false),
                    rangeOf(input));
    }
    filled.set(input.name, std::clamp(*value, input.least, input.most));
    return {};
}

}  // namespace

void Given::clear(std::string_view name)
{
    numbers_.erase(std::string(name));
    words_.erase(std::string(name));
}

std::optional<double> Given::number(std::string_view name) const
{
    const auto found = numbers_.find(name);
    return found == numbers_.end() ? std::nullopt : std::optional(found->second);
}

std::string Given::word(std::string_view name) const
{
    const auto found = words_.find(name);
    return found == words_.end() ? std::string() : found->second;
}

bool Given::has(std::string_view name) const
{
    return numbers_.contains(name) || words_.contains(name);
}

std::vector<std::string> Given::names() const
{
    std::vector<std::string> all;
    for (const auto& [name, value] : numbers_) {
        all.push_back(name);
    }
    for (const auto& [name, value] : words_) {
        all.push_back(name);
    }
    return all;
}

std::span<const Calculator> calculators()
{
    static const std::vector<Calculator> all = collected();
    return all;
}

const Calculator* findCalculator(std::string_view name)
{
    const auto all = calculators();
    const auto found = std::find_if(all.begin(), all.end(),
                                    [&](const Calculator& one) { return one.name == name; });
    return found == all.end() ? nullptr : &*found;
}

const CalculatorInput* findInput(const Calculator& calculator, std::string_view name)
{
    const auto found =
        std::find_if(calculator.inputs.begin(), calculator.inputs.end(),
                     [&](const CalculatorInput& input) { return input.name == name; });
    return found == calculator.inputs.end() ? nullptr : &*found;
}

std::string expectedOf(const CalculatorInput& input)
{
    if (!input.words.empty()) {
        return choiceOf(input.words);
    }
    if (input.measurand == Measurand::SpecificGravity) {
        return "a gravity such as 1.084 or 20P";
    }
    if (input.measurand == Measurand::Count) {
        return "a whole number";
    }
    return "a number with one of " + expectedUnits(input.measurand);
}

std::string rangeOf(const CalculatorInput& input, bool us)
{
    std::string least = inUnit(input.least, input, us);
    const std::string most = inUnit(input.most, input, us);
    const auto blank = least.find(' ');
    return least.substr(0, blank) + " to " + most;
}

Result<double> parseInput(const CalculatorInput& input, std::string_view text)
{
    const auto refuse = [&] {
        return fail(ErrorCode::Malformed, std::string(input.name), std::string(text),
                    expectedOf(input));
    };
    if (!input.words.empty()) {
        return refuse();
    }
    auto value = parseQuantity(text, input.measurand, input.name);
    if (value || value.error().code != ErrorCode::Malformed) {
        return value;
    }
    if (input.measurand == Measurand::SpecificGravity) {
        if (const auto plato = parseQuantity(text, Measurand::DegreesPlato, input.name)) {
            auto gravity = liquor::specificGravityOfPlato(*plato);
            if (!gravity) {
                return fail(ErrorCode::OutOfRange, std::string(input.name), std::string(text),
                            rangeOf(input));
            }
            return gravity;
        }
    }
    return refuse();
}

Result<void> giveTyped(Given& given, const CalculatorInput& input, std::string_view text)
{
    if (input.words.empty()) {
        SPILE_ASSIGN(value, parseInput(input, text));
        given.set(input.name, value);
        return {};
    }
    const auto isSame = [&](std::string_view word) {
        return std::equal(word.begin(), word.end(), text.begin(), text.end(), [](char a, char b) {
            return a == b || (a == ' ' && (b == '-' || b == '_'));
        });
    };
    const auto found = std::find_if(input.words.begin(), input.words.end(), isSame);
    if (found == input.words.end()) {
        return fail(ErrorCode::Malformed, std::string(input.name), std::string(text),
                    choiceOf(input.words));
    }
    given.setWord(input.name, std::string(*found));
    return {};
}

Result<Given> filledIn(const Calculator& calculator, const Given& given)
{
    for (const std::string& name : given.names()) {
        if (findInput(calculator, name) == nullptr) {
            return fail(ErrorCode::Malformed, name, {},
                        "an input of " + std::string(calculator.name));
        }
    }
    Given filled = given;
    for (const CalculatorInput& input : calculator.inputs) {
        SPILE_TRY(input.words.empty() ? fillNumber(filled, input) : fillWord(filled, input));
    }
    return filled;
}

Result<std::vector<Answer>> calculate(const Calculator& calculator, const Given& given)
{
    SPILE_ASSIGN(filled, filledIn(calculator, given));
    auto answers = calculator.run(filled);
    if (!answers) {
        return answers;
    }
    for (const Answer& answer : *answers) {
        if (!std::isfinite(answer.value) || !std::isfinite(answer.low.value_or(0)) ||
            !std::isfinite(answer.high.value_or(0))) {
            return fail(ErrorCode::NotFinite, answer.name);
        }
    }
    return answers;
}

Result<void> needOneOf(const Given& given, std::initializer_list<std::string_view> names)
{
    if (countGiven(given, names) == 1) {
        return {};
    }
    std::string all;
    std::string found;
    for (const std::string_view name : names) {
        all += (all.empty() ? "" : ", ") + std::string(name);
        if (given.has(name)) {
            found += (found.empty() ? "" : " and ") + std::string(name);
        }
    }
    return fail(ErrorCode::Malformed, std::string(*names.begin()), found, "exactly one of " + all);
}

Result<double> realExtractOf(const Given& given, std::string_view abvName,
                             std::string_view gravityName)
{
    const auto gravity = given.number(gravityName);
    if (!gravity) {
        return 0.0;
    }
    constexpr double beerMost = 0.25;
    const double abv = number(given, abvName);
    if (abv > beerMost) {
        return fail(ErrorCode::Conflict, std::string(gravityName), "with more than 25 % by volume",
                    "leave it out for a spirit");
    }
    SPILE_ASSIGN(beer, liquor::strengthByAlcohol(*gravity, abv));
    return beer.realExtract;
}

}  // namespace spile::plan
