// trace: where beer came from and where it went; the recall list.
#include "platform/desk/commands.hpp"
#include "platform/desk/lot_forms.hpp"
#include "platform/desk/rows.hpp"

namespace spile::desk {

using nlohmann::json;
using trace::Downward;
using trace::Upward;

namespace {

std::string joined(const std::vector<std::string>& words)
{
    std::string text;
    for (const std::string& word : words) {
        text += (text.empty() ? "" : ", ") + word;
    }
    return text;
}

std::string percent(double share) { return fixed(share * 100, 1) + " %"; }

const char* oddText(trace::Oddity::What what)
{
    switch (what) {
        case trace::Oddity::What::MoreOutThanIn:
            return "more went out than came in";
        case trace::Oddity::What::StrengthUnknown:
            return "a strength is not known: taken as water";
        case trace::Oddity::What::FillUnknown:
            return "something came in out of a fill that is not recorded";
        case trace::Oddity::What::TakenBack:
            return "a record of what came in was taken back";
    }
    return "";
}

json barrelsJson(const Upward& up)
{
    json list = json::array();
    for (const trace::Stay& stay : up.stays) {
        list.push_back({{"barrel", stay.barrelName},
                        {"code", stay.code},
                        {"spirit", stay.spirit},
                        {"fill_number", stay.fillNumber ? json(*stay.fillNumber) : json()},
                        {"fill", stay.fill.hex()},
                        {"beer", stay.beer},
                        {"held_before", stay.heldBefore},
                        {"filled", toIsoTime(stay.filled)},
                        {"emptied", stay.emptied ? json(toIsoTime(*stay.emptied)) : json()},
                        {"share", stay.share},
                        {"volume_l", litresOf(stay.share * up.volume)}});
    }
    return list;
}

json upJson(const Upward& up)
{
    json answer = {{"lot", up.name},
                   {"lot_code", up.lotCode.empty() ? json() : json(up.lotCode)},
                   {"volume_l", litresOf(up.volume)},
                   {"barrels", barrelsJson(up)},
                   {"beers", json::array()},
                   {"lots", json::array()},
                   {"additions", json::array()},
                   {"people", json::array()},
                   {"oddities", json::array()}};
    for (const trace::Beginning& one : up.beginnings) {
        answer["beers"].push_back(
            {{"name", one.name.empty() ? json() : json(one.name)}, {"share", one.share}});
    }
    for (const trace::LotPassed& one : up.lots) {
        answer["lots"].push_back({{"lot", one.name}, {"id", one.lot.hex()}, {"share", one.share}});
    }
    for (const trace::Addition& one : up.additions) {
        answer["additions"].push_back(
            {{"substance", one.substance},
             {"into", one.into},
             {"allergen", one.allergen.empty() ? json() : json(one.allergen)},
             {"mass_kg", one.mass ? json(inKilograms(*one.mass)) : json()},
             {"volume_l", one.volume ? json(litresOf(*one.volume)) : json()},
             {"at", toIsoTime(one.at)},
             {"share", one.share}});
    }
    for (const trace::Hand& one : up.hands) {
        answer["people"].push_back({{"name", one.name}, {"did", one.did}});
    }
    for (const trace::Oddity& one : up.oddities) {
        answer["oddities"].push_back({{"lot", one.subject},
                                      {"what", oddText(one.what)},
                                      {"volume_l", litresOf(one.volume)}});
    }
    return answer;
}

std::string putInText(const Upward& up)
{
    std::vector<std::vector<std::string>> lines = {
        {"put in", "how much", "into", "allergen", "on"}};
    for (const trace::Addition& one : up.additions) {
        lines.push_back({one.substance,
                         one.mass     ? massText(*one.mass)
                         : one.volume ? volumeText(one.volume, 2)
                                      : "?",
                         one.into, one.allergen, toIsoDate(one.at)});
    }
    return up.additions.empty() ? "" : "\n" + table(lines);
}

std::string handsText(const Upward& up)
{
    std::vector<std::vector<std::string>> lines = {{"person", "did"}};
    for (const trace::Hand& one : up.hands) {
        lines.push_back({one.name, joined(one.did)});
    }
    return "\n" + table(lines);
}

std::string upText(const Upward& up)
{
    std::string text = (up.lotCode.empty() ? "The lot " + up.name
                                           : "Packages " + up.lotCode + " of the lot " + up.name) +
                       ", " + volumeText(up.volume, 1) + "\n\n";
    std::vector<std::vector<std::string>> lines = {
        {"share", "volume", "barrel", "code", "fill", "beer", "held before", "filled", "emptied"}};
    for (const trace::Stay& stay : up.stays) {
        std::vector<std::string> before = stay.heldBefore;
        if (!stay.spirit.empty()) {
            before.insert(before.begin(), stay.spirit);
        }
        lines.push_back(
            {percent(stay.share), volumeText(stay.share * up.volume, 1), stay.barrelName, stay.code,
             stay.fillNumber ? std::to_string(*stay.fillNumber) : "", stay.beer, joined(before),
             toIsoDate(stay.filled), stay.emptied ? toIsoDate(*stay.emptied) : ""});
    }
    text += table(lines) + "\n";
    lines = {{"share", "beer"}};
    for (const trace::Beginning& one : up.beginnings) {
        lines.push_back({percent(one.share), one.name.empty() ? "not known" : one.name});
    }
    text += table(lines);
    text += putInText(up) + handsText(up);
    for (const trace::Oddity& one : up.oddities) {
        text += "ODD  " + one.subject + ": " + oddText(one.what) + "\n";
    }
    return text;
}

json downJson(const std::string& name, const Downward& down)
{
    json answer = {{"of", name},
                   {"packages", json::array()},
                   {"lots", json::array()},
                   {"barrels", json::array()}};
    for (const trace::Reached& one : down.packages) {
        json package = packageJson(one.package);
        package["lot"] = one.lotName;
        package["releases"] = json::array();
        for (const cellar::ReleaseRow& release : one.releases) {
            package["releases"].push_back(releaseJson(release));
        }
        answer["packages"].push_back(std::move(package));
    }
    for (const trace::LotPassed& one : down.lots) {
        answer["lots"].push_back({{"lot", one.name}, {"id", one.lot.hex()}});
    }
    for (const trace::InBarrel& one : down.barrels) {
        answer["barrels"].push_back({{"barrel", one.barrelName}, {"still", one.still}});
    }
    return answer;
}

// The packages, to whom they went, and what is left of them.
std::string packagesText(const Downward& down)
{
    std::string text;
    for (const trace::Reached& one : down.packages) {
        text += one.package.lotCode + " of " + one.lotName + ", " + toIsoDate(one.package.at) +
                ": " + countsText(one.package.packages) + "\n";
        for (const cellar::ReleaseRow& release : one.releases) {
            text += "  to " + release.to + ", " + toIsoDate(release.at) + ": " +
                    countsText(release.packages) + "\n";
        }
        text += "  in the house: " + countsText(one.package.left) + "\n";
    }
    return text.empty() ? "Nothing of it has been packaged.\n" : text;
}

std::string downText(const std::string& name, const Downward& down)
{
    std::string text = "Where " + name + " went\n\n";
    for (const trace::LotPassed& one : down.lots) {
        text += "Lot " + one.name + "\n";
    }
    for (const trace::InBarrel& one : down.barrels) {
        text += "Barrel " + one.barrelName + (one.still ? ", lies there yet\n" : "\n");
    }
    return text + packagesText(down);
}

std::string recallText(const std::string& name, const Downward& down, Instant now)
{
    std::string text = "Recall list: " + name + ", made " + toIsoTime(now) + "\n\n";
    text += packagesText(down);
    for (const trace::InBarrel& one : down.barrels) {
        text += one.still ? "Still in the barrel " + one.barrelName + "\n" : "";
    }
    return text;
}

int traceUp(const Session& session, ledger::Database& database, const trace::Named& named)
{
    const auto up = named.package ? trace::upFromPackage(database, *named.package)
                                  : trace::upFromLot(database, named.start.subject);
    if (!up) {
        return session.refuse(up.error());
    }
    session.answer(upJson(*up), upText(*up));
    return Done;
}

}  // namespace

int traceBeer(Session& session, const TraceOptions& options)
{
    auto cellar = session.open();
    if (!cellar) {
        return session.refuse(cellar.error());
    }
    ledger::Database& database = (*cellar)->database();
    const auto found = trace::findNamed(database, options.what);
    if (!found) {
        return session.refuse(found.error());
    }
    if (found->empty()) {
        return session.refuse({ErrorCode::NotFound, "trace", options.what,
                               "a lot code, lot, barrel, beer, or what was put in"});
    }
    if (found->size() > 1) {
        Session::remark("More than one thing is called so; the first is traced.");
    }
    const trace::Named& named = found->front();
    // Only packages and lots have a way up.
    if (named.start.what == trace::Start::What::Lot && !options.down && !options.recall) {
        return traceUp(session, database, named);
    }
    const auto down = trace::down(database, named.start);
    if (!down) {
        return session.refuse(down.error());
    }
    session.answer(downJson(named.name, *down),
                   options.recall ? recallText(named.name, *down, session.clock().now())
                                  : downText(named.name, *down));
    return Done;
}

}  // namespace spile::desk
