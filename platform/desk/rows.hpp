#pragma once

#include "core/cellar/queries.hpp"

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

/// The forms in which the desk shows what the queries return.
namespace spile::desk {

/// "2025-09-14", or only "2025-09" or "2025" if no more is known.
[[nodiscard]] std::string dateText(Instant t, cellar::DatePrecision precision);

[[nodiscard]] nlohmann::json toJson(const cellar::BarrelRow& barrel);
[[nodiscard]] nlohmann::json toJson(const cellar::BarrelHistory& history, Instant now);

/// Litres to the millilitre that is recorded, without the tail of binary fractions.
[[nodiscard]] double litresOf(Volume v);
/// "12.50 L"; "?" if it is not known.
[[nodiscard]] std::string volumeText(const std::optional<Volume>& volume, int decimals);

/// "in the future", "its clock said ..., set right"; empty if there is nothing to say.
[[nodiscard]] std::string timeRemark(const cellar::FactRow& row, Instant now);
/// Add the same to the row in JSON: `in_future`, `clock_said`.
void addTimeRemark(nlohmann::json& made, const cellar::FactRow& row, Instant now);

/// "7 in 10"; below half of one and above nine and a half "less than 1", "more than 9 in 10".
[[nodiscard]] std::string chanceText(double chance);

/// Lines of columns, each as wide as its widest cell; the first line is the heading.
[[nodiscard]] std::string table(const std::vector<std::vector<std::string>>& lines);
[[nodiscard]] std::string barrelTable(const std::vector<cellar::BarrelRow>& barrels);
[[nodiscard]] std::string barrelPage(const cellar::BarrelRow& barrel,
                                     const cellar::BarrelHistory& history, Instant now);

}  // namespace spile::desk
