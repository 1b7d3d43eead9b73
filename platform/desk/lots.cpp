// show lots, show lot, hold, clear: what is on its way to packages.
#include "core/cellar/acts/packing.hpp"
#include "core/trace/account.hpp"
#include "platform/desk/commands.hpp"
#include "platform/desk/lot_forms.hpp"
#include "platform/desk/rows.hpp"

#include <algorithm>

namespace spile::desk {

using cellar::LotHistory;
using nlohmann::json;

namespace {

json fact(const cellar::FactRow& row, Instant now)
{
    json made = {{"at", toIsoTime(row.at)}, {"entry", row.entry.hex()}};
    made["person"] = row.person.empty() ? json() : json(row.person);
    made["note"] = row.note.empty() ? json() : json(row.note);
    addTimeRemark(made, row, now);
    return made;
}

template <class Row, class Make>
json listOf(const std::vector<Row>& rows, Instant now, Make make)
{
    json list = json::array();
    for (const Row& row : rows) {
        json made = fact(row, now);
        made.update(make(row));
        list.push_back(std::move(made));
    }
    return list;
}

template <class T>
json orNull(const std::optional<T>& value)
{
    return value ? json(*value) : json();
}

json volumeOrNull(const std::optional<Volume>& volume)
{
    return volume ? json(litresOf(*volume)) : json();
}

json dayOrNull(const std::optional<Instant>& at) { return at ? json(toIsoDate(*at)) : json(); }

json comingJson(const LotHistory& lot, Instant now)
{
    return {{"transfers", listOf(lot.transfers, now,
                                 [](const cellar::TransferRow& row) {
                                     return json{{"from", row.fromName},
                                                 {"from_lot", row.fromLot},
                                                 {"beer", row.beer},
                                                 {"volume_l", litresOf(row.volume)},
                                                 {"abv", orNull(row.alcoholByVolume)},
                                                 {"sg", orNull(row.specificGravity)},
                                                 {"method", row.method}};
                                 })},
            {"finishes", listOf(lot.finishes, now,
                                [](const cellar::FinishRow& row) {
                                    return json{{"substance", row.substance},
                                                {"mass_kg",
                                                 row.mass ? json(inKilograms(*row.mass)) : json()},
                                                {"volume_l", volumeOrNull(row.volume)},
                                                {"allergen", row.allergen},
                                                {"until", dayOrNull(row.until)},
                                                {"taken_out", dayOrNull(row.takenOut)}};
                                })},
            {"treatments", listOf(lot.treatments, now,
                                  [](const cellar::TreatmentRow& row) {
                                      return json{{"method", row.method}};
                                  })},
            {"carbonations", listOf(lot.carbonations, now, [](const cellar::CarbonationRow& row) {
                 return json{{"method", row.method}, {"volumes", row.volumes}};
             })}};
}

json goingJson(const LotHistory& lot, Instant now)
{
    return {
        {"packages", listOf(lot.packages, now, packageJson)},
        {"releases", listOf(lot.releases, now, releaseJson)},
        {"holds", listOf(lot.holds, now,
                         [](const cellar::HoldRow& row) {
                             return json{{"reason", row.reason},
                                         {"cleared", dayOrNull(row.cleared)},
                                         {"result", row.outcome}};
                         })},
        {"other_ways_out", listOf(lot.waysOut, now, [](const cellar::WayOutRow& row) {
             return json{{"kind", row.kind}, {"volume_l", litresOf(row.volume)}, {"to", row.to}};
         })}};
}

// The lines of a lot's page, one a fact, in order of time.
class LotPage {
public:
    LotPage(const LotHistory& lot, Instant now) : now_(now)
    {
        for (const auto& row : lot.transfers) {
            add(row, "came in",
                volumeText(row.volume, 1) + " from " + row.fromName +
                    (row.beer.empty() ? "" : ", " + row.beer) + ", " +
                    strengthText(row.alcoholByVolume));
        }
        for (const auto& row : lot.finishes) {
            addFinish(row);
        }
        for (const auto& row : lot.treatments) {
            add(row, "treated", row.method);
        }
        for (const auto& row : lot.carbonations) {
            add(row, "carbonated", row.method);
        }
        addGoing(lot);
    }
    std::string text()
    {
        std::stable_sort(lines_.begin(), lines_.end());  // ISO times sort as text
        return table(lines_);
    }

private:
    void add(const cellar::FactRow& row, const std::string& what, const std::string& value)
    {
        lines_.push_back({toIsoTime(row.at), what, value, row.person, timeRemark(row, now_)});
    }
    void addFinish(const cellar::FinishRow& row)
    {
        std::string said = row.substance;
        said += row.mass     ? ", " + massText(*row.mass)
                : row.volume ? ", " + volumeText(row.volume, 2)
                             : "";
        said += row.allergen.empty() ? "" : ", ALLERGEN " + row.allergen;
        said += row.takenOut ? ", taken out " + toIsoDate(*row.takenOut)
                : row.until  ? ", to be taken out by " + toIsoDate(*row.until)
                             : "";
        add(row, "finish", said);
    }
    void addGoing(const LotHistory& lot)
    {
        for (const auto& row : lot.packages) {
            add(row, "packaged",
                row.lotCode + ": " + countsText(row.packages) + "; left: " + countsText(row.left) +
                    (row.whileHeld ? "; WHILE HELD by another device" : ""));
        }
        for (const auto& row : lot.releases) {
            add(row, "released", countsText(row.packages) + " to " + row.to);
        }
        for (const auto& row : lot.holds) {
            add(row, "held",
                row.reason + (row.cleared
                                  ? "; result " + toIsoDate(*row.cleared) + ": " + row.outcome
                                  : "; no result yet"));
        }
        for (const auto& row : lot.waysOut) {
            add(row, row.kind, volumeText(row.volume, 1) + ", " + row.to);
        }
    }

    Instant now_;
    std::vector<std::vector<std::string>> lines_;
};

}  // namespace

int showLots(const Session& session, cellar::Cellar& cellar)
{
    const auto lots = allLots(cellar.database());
    if (!lots) {
        return session.refuse(lots.error());
    }
    json list = json::array();
    for (const cellar::LotRow& lot : *lots) {
        list.push_back(lotJson(lot));
    }
    session.answer(list, lots->empty() ? "No lots yet.\n" : lotTable(*lots));
    return Done;
}

int showLot(const Session& session, cellar::Cellar& cellar, const std::string& typed)
{
    const auto lot = findLot(cellar.database(), typed);
    if (!lot) {
        return session.refuse(lot.error());
    }
    const auto history = cellar::lotHistory(cellar.database(), lot->lot);
    if (!history) {
        return session.refuse(history.error());
    }
    const auto balance = trace::balanceOf(cellar.database(), lot->lot);
    if (!balance) {
        return session.refuse(balance.error());
    }
    const std::optional<double> strength = balance->now && balance->strengthKnown
                                               ? std::optional(balance->now->alcoholByVolume)
                                               : std::nullopt;
    const Instant now = session.clock().now();
    json answer = lotJson(*lot);
    answer["mixed_abv"] = strength ? json(*strength * 100) : json();
    answer["allergens"] = history->allergens();
    answer.update(comingJson(*history, now));
    answer.update(goingJson(*history, now));
    std::string allergens;
    for (const std::string& one : history->allergens()) {
        allergens += (allergens.empty() ? "Allergens: " : ", ") + one;
    }
    session.answer(answer, lotTable({*lot}) +
                               "Strength of what is left, by mass: " + strengthText(strength) +
                               "\n" + (allergens.empty() ? "" : allergens + "\n") + "\n" +
                               LotPage(*history, now).text());
    return Done;
}

int holdLot(Session& session, const std::string& typed, const std::string& reason)
{
    auto cellar = session.open();
    if (!cellar) {
        return session.refuse(cellar.error());
    }
    const auto lot = findLot((*cellar)->database(), typed);
    if (!lot) {
        return session.refuse(lot.error());
    }
    session.doubtClock(**cellar);
    const auto held = cellar::recordHold(**cellar, lot->lot, reason);
    if (!held) {
        return session.refuse(held.error());
    }
    session.answer({{"lot", lot->name}, {"entry", held->hex()}},
                   lot->name + " is held: " + reason + "\n");
    return Done;
}

int clearLot(Session& session, const ClearOptions& options)
{
    auto cellar = session.open();
    if (!cellar) {
        return session.refuse(cellar.error());
    }
    const auto lot = findLot((*cellar)->database(), options.lot);
    if (!lot) {
        return session.refuse(lot.error());
    }
    auto holds = cellar::openHoldsOf((*cellar)->database(), lot->lot);
    if (!holds) {
        return session.refuse(holds.error());
    }
    if (!options.reason.empty()) {
        std::erase_if(*holds, [&](const auto& hold) { return hold.reason != options.reason; });
    }
    if (holds->empty()) {
        return session.refuse({ErrorCode::NotFound, "hold", options.lot, "nothing is held so"});
    }
    if (holds->size() > 1) {
        // The result of one says nothing of the other.
        return session.refuse({ErrorCode::Conflict, "lot", options.lot,
                               "more than one hold is open: say which by --reason"});
    }
    session.doubtClock(**cellar);
    const auto cleared = cellar::recordClear(**cellar, holds->front().entry, options.result);
    if (!cleared) {
        return session.refuse(cleared.error());
    }
    session.answer({{"lot", lot->name}, {"entry", cleared->hex()}},
                   lot->name + ": " + holds->front().reason + ": " + options.result + "\n");
    return Done;
}

}  // namespace spile::desk
