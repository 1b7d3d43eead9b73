#pragma once

#include "core/trace/finding.hpp"
#include "platform/desk/session.hpp"

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

/// The forms in which the desk shows lots and packages.
namespace spile::desk {

/// "10.2 % vol"; "?" if it is not known.
[[nodiscard]] std::string strengthText(const std::optional<double>& strength);
/// A volume of cost: "12.50".
[[nodiscard]] std::string moneyText(double amount);
/// "12.500 kg"
[[nodiscard]] std::string massText(Mass mass);

/// "120 x bottle 330 mL, 6 x keg 20 L"; "none".
[[nodiscard]] std::string countsText(const std::vector<cellar::PackageCount>& packages);
[[nodiscard]] nlohmann::json countsJson(const std::vector<cellar::PackageCount>& packages);
[[nodiscard]] nlohmann::json packageJson(const cellar::PackageRow& row);
[[nodiscard]] nlohmann::json releaseJson(const cellar::ReleaseRow& row);
[[nodiscard]] nlohmann::json lotJson(const cellar::LotRow& lot);
[[nodiscard]] std::string lotTable(const std::vector<cellar::LotRow>& lots);

[[nodiscard]] Result<std::vector<cellar::LotRow>> allLots(ledger::Database& database);
/// The lot that is called so; of several the newest, which is said.
///
/// Errors    NotFound; those of every query.
[[nodiscard]] Result<cellar::LotRow> findLot(ledger::Database& database, const std::string& typed);

}  // namespace spile::desk
