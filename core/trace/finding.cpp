#include "core/trace/finding.hpp"

#include "core/cellar/folding.hpp"
#include "core/cellar/searching.hpp"

#include <algorithm>

namespace spile::trace {

namespace {

constexpr int page = 200;

std::string trimmed(const std::string& text)
{
    const auto from = text.find_first_not_of(" \t");
    return from == std::string::npos ? std::string()
                                     : text.substr(from, text.find_last_not_of(" \t") - from + 1);
}

// A code as it is compared: written with a hyphen or without.
std::string plainCode(std::string code)
{
    std::erase(code, '-');
    return cellar::folded(code);
}

Result<void> addPackages(ledger::Database& database, const std::string& code,
                         std::vector<Named>& all)
{
    std::string upper = code;
    std::transform(upper.begin(), upper.end(), upper.begin(),
                   [](char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 32) : c; });
    for (const std::string& one : {code, upper}) {
        SPILE_ASSIGN(rows, cellar::packagedAs(database, one));
        for (const cellar::PackageRow& row : rows) {
            all.push_back({row.lotCode, row.entry, {Start::What::Lot, row.lot, {}, {}}});
        }
        if (!rows.empty()) {
            break;
        }
    }
    return {};
}

Result<void> addBarrels(ledger::Database& database, const std::string& text,
                        std::vector<Named>& all)
{
    const std::string wanted = cellar::folded(text);
    cellar::BarrelSearch search;
    search.text = text;
    cellar::AfterBarrel after;
    for (bool more = true; more;) {
        SPILE_ASSIGN(found, cellar::searchBarrels(database, search, after, page));
        for (const cellar::BarrelRow& row : found.rows) {
            if (cellar::folded(row.mark) == wanted || plainCode(row.code) == plainCode(text)) {
                all.push_back({row.mark.empty() ? row.code : row.mark,
                               {},
                               {Start::What::Barrel, row.barrel, {}, {}}});
            }
        }
        more = !found.complete;
        after = found.after;
    }
    return {};
}

Result<void> addBatches(ledger::Database& database, const std::string& text,
                        std::vector<Named>& all)
{
    const std::string wanted = cellar::folded(text);
    SubjectId after;
    for (bool more = true; more;) {
        SPILE_ASSIGN(rows, cellar::named(database, "batch", after, page));
        for (const cellar::NamedRow& row : rows) {
            after = row.subject;
            if (cellar::folded(row.name) == wanted) {
                all.push_back({row.name, {}, {Start::What::Batch, row.subject, {}, {}}});
            }
        }
        more = rows.size() == page;
    }
    return {};
}

// It stands in finishes by its own word, so it is tried.
Result<void> addSubstance(ledger::Database& database, const std::string& text,
                          std::vector<Named>& all)
{
    const Start start{Start::What::Substance, {}, {}, text};
    SPILE_ASSIGN(reached, down(database, start));
    if (!reached.lots.empty()) {
        all.push_back({text, {}, start});
    }
    return {};
}

}  // namespace

Result<std::vector<cellar::LotRow>> findLots(ledger::Database& database, const std::string& text)
{
    const std::string typed = trimmed(text);
    std::vector<cellar::LotRow> all;
    if (const auto id = SubjectId::fromHex(typed)) {
        SPILE_ASSIGN(lot, cellar::lotById(database, *id));
        if (lot) {
            all.push_back(std::move(*lot));
            return all;
        }
    }
    const std::string wanted = cellar::folded(typed);
    cellar::AfterLot after;
    for (bool more = !wanted.empty(); more;) {
        SPILE_ASSIGN(rows, cellar::lots(database, after, page));
        for (const cellar::LotRow& row : rows) {
            if (cellar::folded(row.name) == wanted) {
                all.push_back(row);
            }
        }
        more = rows.size() == page;
        after = rows.empty() ? after : cellar::AfterLot{rows.back().at, rows.back().lot};
    }
    return all;
}

Result<std::vector<Named>> findNamed(ledger::Database& database, const std::string& text)
{
    const std::string typed = trimmed(text);
    std::vector<Named> all;
    if (typed.empty()) {
        return all;
    }
    SPILE_TRY(addPackages(database, typed, all));
    SPILE_ASSIGN(lots, findLots(database, typed));
    for (const cellar::LotRow& lot : lots) {
        all.push_back({lot.name, {}, {Start::What::Lot, lot.lot, {}, {}}});
    }
    SPILE_TRY(addBarrels(database, typed, all));
    SPILE_TRY(addBatches(database, typed, all));
    SPILE_TRY(addSubstance(database, typed, all));
    return all;
}

}  // namespace spile::trace
