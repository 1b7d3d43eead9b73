// show, due, check: what the cellar holds.
#include "core/cellar/verifying.hpp"
#include "platform/desk/commands.hpp"
#include "platform/desk/finding.hpp"
#include "platform/desk/rows.hpp"

#include <algorithm>
#include <map>

namespace spile::desk {

using cellar::BarrelRow;
using nlohmann::json;

namespace {

constexpr int rowsAtOnce = 500;

Result<std::vector<BarrelRow>> allBarrels(ledger::Database& database)
{
    std::vector<BarrelRow> all;
    cellar::AfterBarrel after;
    for (bool more = true; more;) {
        SPILE_ASSIGN(rows, cellar::barrels(database, after, rowsAtOnce));
        more = rows.size() == rowsAtOnce;
        if (more) {
            after = cellar::afterBarrel(rows.back());
        }
        std::move(rows.begin(), rows.end(), std::back_inserter(all));
    }
    return all;
}

Result<std::vector<BarrelRow>> allDue(ledger::Database& database, Instant until)
{
    std::vector<BarrelRow> all;
    cellar::AfterDue after{instantFromMs(0), SubjectId()};
    for (bool more = true; more;) {
        SPILE_ASSIGN(rows, cellar::barrelsDue(database, until, after, rowsAtOnce));
        more = rows.size() == rowsAtOnce;
        if (more) {
            after = {*rows.back().due, rows.back().barrel};
        }
        std::move(rows.begin(), rows.end(), std::back_inserter(all));
    }
    return all;
}

void answerBarrels(const Session& session, const std::vector<BarrelRow>& barrels,
                   const std::string& none)
{
    json list = json::array();
    for (const BarrelRow& barrel : barrels) {
        list.push_back(toJson(barrel));
    }
    session.answer(list, barrels.empty() ? none : barrelTable(barrels));
}

int showBarrel(const Session& session, cellar::Cellar& cellar, const std::string& typed)
{
    const auto found = findBarrel(cellar, typed);
    if (!found) {
        return session.refuse(found.error());
    }
    if (found->size() > 1) {
        Session::remark("More than one barrel has this code; the first is shown.");
    }
    const auto history = cellar::historyOf(cellar.database(), found->front().barrel);
    if (!history) {
        return session.refuse(history.error());
    }
    json answer = toJson(found->front());
    const Instant now = session.clock().now();
    answer.update(toJson(*history, now));
    session.answer(answer, barrelPage(found->front(), *history, now));
    return Done;
}

int showNamed(const Session& session, cellar::Cellar& cellar, const std::string& kind)
{
    json list = json::array();
    std::vector<std::vector<std::string>> lines = {{"id", "name"}};
    SubjectId after;
    for (bool more = true; more;) {
        const auto rows = cellar::named(cellar.database(), kind, after, rowsAtOnce);
        if (!rows) {
            return session.refuse(rows.error());
        }
        more = rows->size() == rowsAtOnce;
        for (const cellar::NamedRow& row : *rows) {
            after = row.subject;
            list.push_back({{"id", row.subject.hex()}, {"name", row.name}});
            lines.push_back({row.subject.hex(), row.name});
        }
    }
    session.answer(list, table(lines));
    return Done;
}

std::string checkText(const cellar::CheckReport& report)
{
    std::string text = table({{"records", std::to_string(report.entries)},
                              {"waiting", std::to_string(report.waiting)},
                              {"devices", std::to_string(report.devices)},
                              {"barrels", std::to_string(report.barrels)},
                              {"photos", std::to_string(report.photos)},
                              {"photos still elsewhere", std::to_string(report.missingPhotos)},
                              {"records for a newer version", std::to_string(report.unknown)},
                              {"state root", report.stateRoot.hex()}});
    for (const Error& problem : report.problems) {
        text += "PROBLEM  " + problem.subject + ": " + problem.value +
                (problem.limit.empty() ? "" : " (" + problem.limit + ")") + "\n";
    }
    return text + (report.problems.empty() ? "No problem found.\n" : "");
}

}  // namespace

int show(Session& session, const std::string& kind, const std::string& id)
{
    static const std::map<std::string, std::string> named = {
        {"people", "person"}, {"places", "place"}, {"targets", "target"}, {"batches", "batch"}};
    using Show = int (*)(const Session&, cellar::Cellar&);
    static const std::map<std::string, Show> lists = {{"devices", showDevices},
                                                      {"flights", showFlights},
                                                      {"flight", showFlights},
                                                      {"lots", showLots},
                                                      {"tasters", showTasters}};
    auto cellar = session.open();
    if (!cellar) {
        return session.refuse(cellar.error());
    }
    if (kind == "barrel" && !id.empty()) {
        return showBarrel(session, **cellar, id);
    }
    if (const auto plain = named.find(kind); plain != named.end() && id.empty()) {
        return showNamed(session, **cellar, plain->second);
    }
    if (kind == "lot" && !id.empty()) {
        return showLot(session, **cellar, id);
    }
    if (const auto list = lists.find(kind); list != lists.end() && id.empty()) {
        return list->second(session, **cellar);
    }
    if (kind == "barrels" && id.empty()) {
        const auto rows = allBarrels((*cellar)->database());
        if (!rows) {
            return session.refuse(rows.error());
        }
        answerBarrels(session, *rows, "No barrels yet.\n");
        return Done;
    }
    return session.refuse({ErrorCode::Malformed, "show", kind + (id.empty() ? "" : " " + id),
                           "barrels, barrel CODE, lots, lot NAME, flights, batches, people, "
                           "tasters, places, targets or devices"});
}

int due(Session& session, const std::string& on)
{
    auto cellar = session.open();
    if (!cellar) {
        return session.refuse(cellar.error());
    }
    Instant until = session.clock().now();
    if (!on.empty()) {
        const auto day = fromIso(on);
        if (!day) {
            return session.refuse({ErrorCode::Malformed, "--on", on, "a day like 2026-03-14"});
        }
        until = *day + std::chrono::days(1) - Milliseconds(1);
    }
    if (const auto foreseen = foresee(session, **cellar); !foreseen) {
        return session.refuse(foreseen.error());
    }
    const auto rows = allDue((*cellar)->database(), until);
    if (!rows) {
        return session.refuse(rows.error());
    }
    answerBarrels(session, *rows, "Nothing is due.\n");
    return Done;
}

int check(Session& session)
{
    auto cellar = session.open();
    if (!cellar) {
        return session.refuse(cellar.error());
    }
    const auto report = cellar::check(**cellar, session.job("check"));
    if (!report) {
        return session.refuse(report.error());
    }
    if (!(*cellar)->ledger().readsOnly()) {
        // So that the next day file that has them mends them; and it counts as a round of
        // verifying.
        const auto kept = cellar::keepRound(**cellar, *report, session.clock().now());
        if (!kept) {
            return session.refuse(kept.error());
        }
    }
    json problems = json::array();
    for (const Error& problem : report->problems) {
        problems.push_back(
            {{"subject", problem.subject}, {"what", problem.value}, {"remedy", problem.limit}});
    }
    session.answer({{"entries", report->entries},
                    {"waiting", report->waiting},
                    {"devices", report->devices},
                    {"barrels", report->barrels},
                    {"photos", report->photos},
                    {"missing_photos", report->missingPhotos},
                    {"unknown", report->unknown},
                    {"state_root", report->stateRoot.hex()},
                    {"problems", problems}},
                   checkText(*report));
    return report->problems.empty() ? Done : Refused;
}

}  // namespace spile::desk
