#include "platform/desk/lot_forms.hpp"

#include "platform/desk/rows.hpp"

#include <array>
#include <cstdio>

namespace spile::desk {

using nlohmann::json;

namespace {

template <class... Values>
std::string printed(const char* form, Values... values)
{
    std::array<char, 64> text{};
    std::snprintf(text.data(), text.size(), form, values...);
    return text.data();
}

}  // namespace

std::string strengthText(const std::optional<double>& strength)
{
    return strength ? printed("%.2f %% vol", *strength * 100) : "?";
}

std::string moneyText(double amount) { return printed("%.2f", amount); }

std::string massText(Mass mass) { return printed("%.3f kg", inKilograms(mass)); }

std::string countsText(const std::vector<cellar::PackageCount>& packages)
{
    std::string text;
    for (const cellar::PackageCount& one : packages) {
        if (one.count > 0) {
            text += (text.empty() ? "" : ", ") + std::to_string(one.count) + " x " + one.package;
        }
    }
    return text.empty() ? "none" : text;
}

json countsJson(const std::vector<cellar::PackageCount>& packages)
{
    json list = json::array();
    for (const cellar::PackageCount& one : packages) {
        list.push_back(
            {{"package", one.package}, {"content_l", litresOf(one.content)}, {"count", one.count}});
    }
    return list;
}

json packageJson(const cellar::PackageRow& row)
{
    json made = {{"at", toIsoTime(row.at)},
                 {"entry", row.entry.hex()},
                 {"lot_code", row.lotCode},
                 {"packages", countsJson(row.packages)},
                 {"left", countsJson(row.left)},
                 {"volume_l", litresOf(row.volume)},
                 {"person", row.person.empty() ? json() : json(row.person)}};
    made["label_abv"] = row.labelStrength ? json(*row.labelStrength * 100) : json();
    made["measured_abv"] = row.alcoholByVolume ? json(*row.alcoholByVolume * 100) : json();
    made["best_before"] = row.bestBefore ? json(toIsoDate(*row.bestBefore)) : json();
    made["lost_l"] = row.lost ? json(litresOf(*row.lost)) : json();
    if (row.whileHeld) {
        made["while_held"] = true;
    }
    return made;
}

json releaseJson(const cellar::ReleaseRow& row)
{
    return {{"at", toIsoTime(row.at)},
            {"to", row.to},
            {"packages", countsJson(row.packages)},
            {"package_entry", row.package.hex()},
            {"person", row.person.empty() ? json() : json(row.person)}};
}

json lotJson(const cellar::LotRow& lot)
{
    return {{"id", lot.lot.hex()},        {"name", lot.name},
            {"at", toIsoTime(lot.at)},    {"in_l", litresOf(lot.in)},
            {"out_l", litresOf(lot.out)}, {"left_l", litresOf(lot.left())},
            {"held", lot.held},           {"packagings", lot.packagings}};
}

std::string lotTable(const std::vector<cellar::LotRow>& lots)
{
    std::vector<std::vector<std::string>> lines = {
        {"begun", "name", "in", "out", "left", "packaged", "", "id"}};
    for (const cellar::LotRow& lot : lots) {
        lines.push_back({toIsoDate(lot.at), lot.name, volumeText(lot.in, 1), volumeText(lot.out, 1),
                         volumeText(lot.left(), 1), std::to_string(lot.packagings),
                         lot.held ? "held" : "", lot.lot.hex()});
    }
    return table(lines);
}

Result<std::vector<cellar::LotRow>> allLots(ledger::Database& database)
{
    constexpr int page = 500;
    std::vector<cellar::LotRow> all;
    cellar::AfterLot after;
    for (bool more = true; more;) {
        SPILE_ASSIGN(rows, cellar::lots(database, after, page));
        more = rows.size() == page;
        if (more) {
            after = {rows.back().at, rows.back().lot};
        }
        std::move(rows.begin(), rows.end(), std::back_inserter(all));
    }
    return all;
}

Result<cellar::LotRow> findLot(ledger::Database& database, const std::string& typed)
{
    SPILE_ASSIGN(found, trace::findLots(database, typed));
    if (found.empty()) {
        return fail(ErrorCode::NotFound, "lot", typed, "show lots lists them");
    }
    if (found.size() > 1) {
        Session::remark("More than one lot has this name; the newest is taken.");
    }
    return found.front();
}

}  // namespace spile::desk
