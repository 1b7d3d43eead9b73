// The calculators with any input, typed or not: an error that says where, or answers that are
// finite and lie in their own ranges. Nothing else, and no crash.
#include "core/plan/calculators/calculator.hpp"
#include "core/plan/calculators/dip_table.hpp"
#include "tests/fuzz/input.hpp"

#include <algorithm>
#include <cmath>
#include <cstring>

namespace {

using namespace spile;
using namespace spile::plan;
using fuzz::Input;

double anyDouble(Input& bytes)
{
    const std::uint64_t bits = bytes.number(8);
    double value = 0;
    std::memcpy(&value, &bits, sizeof value);
    return value;
}

double share(Input& bytes)
{
    const double whole = bytes.byte();
    return (whole + bytes.byte() / 256.0) / 255.99609375;
}

void stop(const Calculator& calculator, const Given& given, std::string_view why)
{
    std::cerr << calculator.name << ": " << why << '\n';
    for (const std::string& name : given.names()) {
        std::cerr << "  " << name << " = " << given.word(name);
        if (const auto number = given.number(name)) {
            std::cerr << std::hexfloat << *number << " (" << std::defaultfloat << *number << ')';
        }
        std::cerr << '\n';
    }
    std::abort();
}

void fillWord(Given& given, const CalculatorInput& input, Input& bytes)
{
    const std::size_t which = bytes.byte() % (input.words.size() + 1);
    given.setWord(input.name,
                  which < input.words.size() ? std::string(input.words[which]) : bytes.text(16));
}

// Mostly within the range, for that is where the formulas are.
void fill(Given& given, const CalculatorInput& input, Input& bytes)
{
    const unsigned how = bytes.byte() % 16U;
    if (how < 5) {
        return;
    }
    if (!input.words.empty()) {
        return fillWord(given, input, bytes);
    }
    if (how < 12) {
        const double part = how < 7 ? std::pow(share(bytes), 4) : share(bytes);
        given.set(input.name, input.least + part * (input.most - input.least));
    } else if (how == 12) {
        given.set(input.name, bytes.byte() % 2U == 0 ? input.least : input.most);
    } else if (how == 13) {
        const auto taken = giveTyped(given, input, bytes.text(16));
        if (!taken && taken.error().subject != input.name) {
            std::cerr << input.name << ": an error that names another\n";
            std::abort();
        }
    } else if (how == 14 && input.usual) {
        given.set(input.name, *input.usual);
    } else {
        given.set(input.name, anyDouble(bytes));
    }
}

bool isInItsRange(const Answer& answer)
{
    const double room = 1e-9 * (std::abs(answer.value) + std::abs(answer.low.value_or(0)) +
                                std::abs(answer.high.value_or(0)));
    return answer.low.value_or(answer.value) <= answer.value + room &&
           answer.value <= answer.high.value_or(answer.value) + room;
}

// calculate() has a net for what a formula never should give; here it is a fault to get into it.
bool isCaught(const Calculator& calculator, const Error& error)
{
    return error.code == ErrorCode::NotFinite && findInput(calculator, error.subject) == nullptr &&
           std::any_of(calculator.answers.begin(), calculator.answers.end(),
                       [&](const AnswerSpec& spec) { return spec.name == error.subject; });
}

void checkAnswers(const Calculator& calculator, const Given& given,
                  const std::vector<Answer>& answers)
{
    for (const Answer& answer : answers) {
        if (!std::isfinite(answer.value)) {
            stop(calculator, given, "not finite: " + answer.name);
        }
        if (!isInItsRange(answer)) {
            stop(calculator, given, "outside its own range: " + answer.name);
        }
    }
}

void check(const Calculator& calculator, const Given& given)
{
    const auto answers = calculate(calculator, given);
    if (answers) {
        checkAnswers(calculator, given, *answers);
    } else if (answers.error().subject.empty()) {
        stop(calculator, given, "an error without a name");
    } else if (isCaught(calculator, answers.error())) {
        stop(calculator, given, "not finite: " + answers.error().subject);
    }
    if (answers && calculator.name == "dip-table" && !dipRowsOf(given)) {
        stop(calculator, given, "answers, but no rows");
    }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    Input bytes(data, size);
    const auto all = calculators();
    const Calculator& calculator = all[bytes.byte() % all.size()];
    Given given;
    for (const CalculatorInput& input : calculator.inputs) {
        fill(given, input, bytes);
    }
    check(calculator, given);
    return 0;
}
