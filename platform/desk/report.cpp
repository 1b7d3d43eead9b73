// report: what an authority or a brewer asks for at the end of a time.
#include "core/trace/reports.hpp"
#include "platform/desk/commands.hpp"
#include "platform/desk/lot_forms.hpp"
#include "platform/desk/rows.hpp"

#include <map>

namespace spile::desk {

using nlohmann::json;
using trace::DutyRow;

namespace {

// Packaged or released, in all units of returns.
json dutyVolume(Volume volume, Volume alcohol)
{
    return {{"volume_l", litresOf(volume)},
            {"volume_hl", litresOf(volume) / 100},
            {"volume_us_bbl", inUsBeerBarrels(volume)},
            {"alcohol_l", litresOf(alcohol)}};
}

std::vector<std::string> dutyLine(const DutyRow& row, const std::string& what, Volume volume,
                                  Volume alcohol)
{
    return {toIsoDate(row.from),
            toIsoDate(row.to - Milliseconds(1)),
            what,
            fixed(inLitres(volume), 1),
            fixed(inLitres(volume) / 100, 3),
            fixed(inUsBeerBarrels(volume), 3),
            fixed(inLitres(alcohol), 2),
            row.strengthMissing ? "a strength is not known" : ""};
}

void reportDuty(const Session& session, const std::vector<DutyRow>& rows)
{
    json list = json::array();
    std::vector<std::vector<std::string>> lines = {
        {"from", "to", "", "litres", "hL", "US barrels", "litres of alcohol", ""}};
    for (const DutyRow& row : rows) {
        list.push_back({{"from", toIsoDate(row.from)},
                        {"to", toIsoDate(row.to - Milliseconds(1))},
                        {"packaged", dutyVolume(row.packaged, row.packagedAlcohol)},
                        {"released", dutyVolume(row.released, row.releasedAlcohol)},
                        {"strength_missing", row.strengthMissing}});
        lines.push_back(dutyLine(row, "packaged", row.packaged, row.packagedAlcohol));
        lines.push_back(dutyLine(row, "released", row.released, row.releasedAlcohol));
    }
    session.answer(list, table(lines) + "What is due, and on what, the authority says.\n");
}

int reportLosses(const Session& session, ledger::Database& database,
                 const std::vector<DutyRow>& rows, Instant from, Instant to)
{
    const auto stays = cellar::staysEnded(database, from, to);
    if (!stays) {
        return session.refuse(stays.error());
    }
    json answer = {{"periods", json::array()}, {"barrels", json::array()}};
    std::vector<std::vector<std::string>> lines = {
        {"from", "to", "not explained", "drawn", "lost in packing", "poured away"}};
    for (const DutyRow& row : rows) {
        answer["periods"].push_back({{"from", toIsoDate(row.from)},
                                     {"to", toIsoDate(row.to - Milliseconds(1))},
                                     {"evaporated_l", litresOf(row.evaporated)},
                                     {"drawn_l", litresOf(row.drawn)},
                                     {"lost_packing_l", litresOf(row.lostPacking)},
                                     {"discarded_l", litresOf(row.discarded)}});
        lines.push_back({toIsoDate(row.from), toIsoDate(row.to - Milliseconds(1)),
                         volumeText(row.evaporated, 1), volumeText(row.drawn, 1),
                         volumeText(row.lostPacking, 1), volumeText(row.discarded, 1)});
    }
    std::string text = table(lines);
    lines = {{"emptied", "barrel", "beer", "filled with", "not explained"}};
    for (const cellar::EndedStay& stay : *stays) {
        const auto lost = trace::unexplainedLoss(stay);
        answer["barrels"].push_back({{"barrel", stay.barrelName},
                                     {"code", stay.code},
                                     {"beer", stay.beer},
                                     {"filled", toIsoDate(stay.filled)},
                                     {"emptied", toIsoDate(stay.emptied)},
                                     {"in_l", stay.in ? json(litresOf(*stay.in)) : json()},
                                     {"lost_l", lost ? json(litresOf(*lost)) : json()}});
        lines.push_back({toIsoDate(stay.emptied), stay.barrelName, stay.beer,
                         volumeText(stay.in, 1), volumeText(lost, 1)});
    }
    session.answer(answer, text + (stays->empty() ? "" : "\n" + table(lines)));
    return Done;
}

json costJson(const trace::LotCost& lot)
{
    json stays = json::array();
    for (const trace::StayCost& stay : lot.stays) {
        stays.push_back(
            {{"barrel", stay.barrelName},
             {"beer", stay.beer},
             {"volume_l", litresOf(stay.into)},
             {"evaporated_l", stay.evaporated ? json(litresOf(*stay.evaporated)) : json()},
             {"beer_cost", stay.beerCost},
             {"barrel_cost", stay.barrelCost},
             {"per_litre", stay.perLitre}});
    }
    return {{"lot", lot.name},
            {"id", lot.lot.hex()},
            {"in_l", litresOf(lot.in)},
            {"packaged_l", litresOf(lot.packaged)},
            {"barrels", stays},
            {"from_other_lots", lot.passedOn},
            {"own", lot.own},
            {"whole", lot.whole},
            {"per_litre", lot.perLitre ? json(*lot.perLitre) : json()},
            {"complete", lot.complete}};
}

void addCostLines(const trace::LotCost& lot, std::vector<std::vector<std::string>>& lines)
{
    for (const trace::StayCost& stay : lot.stays) {
        lines.push_back({lot.name, stay.barrelName, stay.beer, volumeText(stay.into, 1),
                         volumeText(stay.evaporated, 1), moneyText(stay.perLitre), ""});
    }
    lines.push_back({lot.name, "in all", moneyText(lot.whole),
                     volumeText(lot.packaged > Volume{} ? lot.packaged : lot.in, 1), "",
                     lot.perLitre ? moneyText(*lot.perLitre) : "?",
                     lot.complete ? "" : "not all costs are recorded"});
}

// Lots begun in that time, with what each barrel's beer cost.
int reportCosts(const Session& session, ledger::Database& database, Instant from, Instant to)
{
    const auto lots = allLots(database);
    if (!lots) {
        return session.refuse(lots.error());
    }
    json list = json::array();
    std::vector<std::vector<std::string>> lines = {
        {"lot", "barrel", "beer", "volume", "evaporated", "per litre", ""}};
    for (const cellar::LotRow& row : *lots) {
        if (row.at < from || row.at >= to) {
            continue;
        }
        const auto lot = trace::costOfLot(database, row.lot);
        if (!lot) {
            return session.refuse(lot.error());
        }
        list.push_back(costJson(*lot));
        addCostLines(*lot, lines);
    }
    session.answer(list, list.empty() ? "No lots in that time.\n" : table(lines));
    return Done;
}

int reportLots(const Session& session, ledger::Database& database, Instant from, Instant to)
{
    auto lots = allLots(database);
    if (!lots) {
        return session.refuse(lots.error());
    }
    std::erase_if(*lots, [&](const auto& lot) { return lot.at < from || lot.at >= to; });
    json list = json::array();
    for (const cellar::LotRow& lot : *lots) {
        list.push_back(lotJson(lot));
    }
    session.answer(list, lots->empty() ? "No lots in that time.\n" : lotTable(*lots));
    return Done;
}

// The whole last twelve months up to today, if nothing else is said.
struct Time {
    Instant from, to;
};
Result<Time> timeOf(const ReportOptions& options, Instant now)
{
    const std::chrono::sys_days today = std::chrono::floor<std::chrono::days>(now);
    const std::chrono::year_month_day day(today);
    Time time{std::chrono::sys_days((day.year() / day.month() - std::chrono::months(11)) / 1),
              today + std::chrono::days(1)};
    if (!options.to.empty()) {
        const auto to = fromIso(options.to);
        if (!to) {
            return fail(ErrorCode::Malformed, "--to", options.to, "a day like 2026-03-14");
        }
        time.to = std::chrono::floor<std::chrono::days>(*to) + std::chrono::days(1);
    }
    if (!options.from.empty()) {
        const auto from = fromIso(options.from);
        if (!from) {
            return fail(ErrorCode::Malformed, "--from", options.from, "a day like 2026-03-14");
        }
        time.from = *from;
    }
    if (time.to <= time.from) {
        return fail(ErrorCode::OutOfRange, "--to", options.to, "a day after --from");
    }
    return time;
}

}  // namespace

int report(Session& session, const ReportOptions& options)
{
    static const std::map<std::string, trace::Period> periods = {
        {"month", trace::Period::Month},
        {"quarter", trace::Period::Quarter},
        {"year", trace::Period::Year}};
    const auto period = periods.find(options.by);
    if (period == periods.end()) {
        return session.refuse({ErrorCode::Malformed, "--by", options.by, "month, quarter or year"});
    }
    const auto time = timeOf(options, session.clock().now());
    if (!time) {
        return session.refuse(time.error());
    }
    auto cellar = session.open();
    if (!cellar) {
        return session.refuse(cellar.error());
    }
    ledger::Database& database = (*cellar)->database();
    if (options.name == "costs") {
        return reportCosts(session, database, time->from, time->to);
    }
    if (options.name == "lots") {
        return reportLots(session, database, time->from, time->to);
    }
    if (options.name != "duty" && options.name != "losses") {
        return session.refuse(
            {ErrorCode::Malformed, "report", options.name, "duty, losses, costs or lots"});
    }
    const auto rows = trace::dutySummary(database, time->from, time->to, period->second);
    if (!rows) {
        return session.refuse(rows.error());
    }
    if (options.name == "losses") {
        return reportLosses(session, database, *rows, time->from, time->to);
    }
    reportDuty(session, *rows);
    return Done;
}

}  // namespace spile::desk
