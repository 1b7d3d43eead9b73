#pragma once

#include "core/plan/calculators/calculator.hpp"
#include "core/vessel/barrel.hpp"

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

/// The forms in which the desk shows what the calculators ask and answer. JSON has decimals in the
/// metric unit named beside them; text is in metric or US units.
namespace spile::desk {

[[nodiscard]] nlohmann::json answerJson(const plan::Answer& answer);
[[nodiscard]] nlohmann::json inputsJson(const plan::Calculator& calculator,
                                        const plan::Given& given);
[[nodiscard]] nlohmann::json sourcesJson(const plan::Calculator& calculator);
[[nodiscard]] nlohmann::json dipJson(const std::vector<vessel::DipRow>& rows);
/// What a calculator asks for.
[[nodiscard]] nlohmann::json helpJson(const plan::Calculator& calculator);

[[nodiscard]] std::string sourceLines(const plan::Calculator& calculator);
[[nodiscard]] std::string cautionLines(const plan::Calculator& calculator);
/// A caution has a "!" before it.
[[nodiscard]] std::string answerLines(const std::vector<plan::Answer>& answers, bool us);
[[nodiscard]] std::string dipLines(const std::vector<vessel::DipRow>& rows, bool us);
/// "usual: 6.000 mm", "must be given", "may be left out"
[[nodiscard]] std::string usualOf(const plan::CalculatorInput& input);

}  // namespace spile::desk
