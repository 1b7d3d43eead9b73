#pragma once

#include "core/plan/calculators/calculator.hpp"

#include <algorithm>
#include <gtest/gtest.h>
#include <string>
#include <utility>
#include <vector>

/// Calculators as they are typed, for tests: what does not come fails the test.
namespace spile::support {

using plan::Answer;
using plan::Calculator;
using plan::CalculatorInput;
using plan::Given;

using Typed = std::vector<std::pair<std::string, std::string>>;

inline const Calculator& calculator(std::string_view name)
{
    const Calculator* found = plan::findCalculator(name);
    EXPECT_NE(found, nullptr) << name;
    return found == nullptr ? plan::calculators().front() : *found;
}

inline Given typed(const Calculator& of, const Typed& inputs)
{
    Given given;
    for (const auto& [name, text] : inputs) {
        const CalculatorInput* input = plan::findInput(of, name);
        if (input == nullptr) {
            ADD_FAILURE() << of.name << " has no input " << name;
            continue;
        }
        const auto taken = plan::giveTyped(given, *input, text);
        EXPECT_TRUE(taken) << name << '=' << text;
    }
    return given;
}

inline Result<std::vector<Answer>> answered(std::string_view name, const Typed& inputs)
{
    const Calculator& of = calculator(name);
    return plan::calculate(of, typed(of, inputs));
}

inline const Answer* find(const std::vector<Answer>& answers, std::string_view name)
{
    const auto found = std::find_if(answers.begin(), answers.end(),
                                    [&](const Answer& answer) { return answer.name == name; });
    return found == answers.end() ? nullptr : &*found;
}

// One answer of a calculator, in SI; a failed test if it does not come.
inline Answer answer(std::string_view of, const Typed& inputs, std::string_view name)
{
    const auto answers = answered(of, inputs);
    if (!answers) {
        ADD_FAILURE() << of << ": " << answers.error().subject << ' ' << answers.error().value
                      << ' ' << answers.error().limit;
        return {};
    }
    const Answer* found = find(*answers, name);
    EXPECT_NE(found, nullptr) << of << " does not answer " << name;
    return found == nullptr ? Answer{} : *found;
}

inline double value(std::string_view of, const Typed& inputs, std::string_view name)
{
    return answer(of, inputs, name).value;
}

inline Error refusal(std::string_view name, const Typed& inputs)
{
    const auto answers = answered(name, inputs);
    EXPECT_FALSE(answers) << name;
    return answers ? Error{} : answers.error();
}

}  // namespace spile::support
