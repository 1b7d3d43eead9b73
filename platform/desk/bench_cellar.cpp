// bench --target: which of the cellar's own barrels come nearest to a beer's windows.
#include "core/plan/bench_answers.hpp"
#include "core/scan/barrel_code.hpp"
#include "platform/desk/bench_job.hpp"
#include "platform/desk/bench_spec.hpp"
#include "platform/desk/commands.hpp"
#include "platform/desk/finding.hpp"
#include "platform/desk/rows.hpp"

#include <cmath>

namespace spile::desk {

using nlohmann::json;
using plan::Bench;
using plan::BenchAnswer;

namespace {

constexpr int targetsMost = 1000;

std::string nameOf(const cellar::BarrelRow& row)
{
    return row.mark.empty() ? scan::shown(row.code) : row.mark;
}

Result<cellar::NamedRow> targetNamed(ledger::Database& database, const std::string& name)
{
    SPILE_ASSIGN(targets, cellar::named(database, "target", {}, targetsMost));
    std::string names;
    for (const cellar::NamedRow& target : targets) {
        if (target.name == name) {
            return target;
        }
        names += (names.empty() ? "" : "; ") + target.name;
    }
    return fail(ErrorCode::NotFound, "target", name,
                names.empty() ? "no beer has windows yet" : "one of: " + names);
}

Result<plan::BenchAsk> askOf(cellar::Cellar& cellar, const CellarBenchOptions& options)
{
    plan::BenchAsk ask;
    SPILE_ASSIGN(target, targetNamed(cellar.database(), options.target));
    SPILE_ASSIGN(windows, cellar::windowsOfTarget(cellar.database(), target.subject));
    if (windows.empty()) {
        return fail(ErrorCode::NotFound, "target", options.target, "one that has windows");
    }
    for (const cellar::Window& window : windows) {
        ask.wishes.push_back({window.attribute, window.low, window.high});
    }
    for (const std::string& code : options.keep) {
        SPILE_ASSIGN(rows, findBarrel(cellar, code));
        for (const cellar::BarrelRow& row : rows) {
            ask.keptBack.insert(row.barrel);
        }
    }
    ask.barrelsMost = options.most;
    ask.partsMost = options.part ? 1 : 0;
    ask.least = litres(options.volumeMin.value_or(0));
    if (options.volumeMax) {
        ask.most = litres(*options.volumeMax);
    }
    const auto fraction = [](const std::optional<double>& percent) {
        return percent ? std::optional(*percent / perCent) : std::nullopt;
    };
    ask.strengthLeast = fraction(options.abvMin);
    ask.strengthMost = fraction(options.abvMax);
    return ask;
}

json rangeJson(double low, double middle, double high)
{
    return {{"low", low}, {"middle", middle}, {"high", high}};
}

json toJson(const Bench& bench, const BenchAnswer& answer)
{
    json barrels = json::array();
    for (const plan::RecipeStep& step : answer.recipe.steps) {
        const blend::Share& share = answer.blend.shares[step.part];
        const plan::BenchBarrel& barrel = bench.barrels[share.barrel];
        barrels.push_back({{"code", barrel.row.code},
                           {"mark", barrel.row.mark},
                           {"beer", barrel.row.beer},
                           {"volume_l", share.amount / litres(1).si()},
                           {"bench_ml", step.millilitres}});
    }
    json left = json::array();
    for (const plan::Ullaged& one : answer.ullaged) {
        left.push_back({{"code", bench.barrels[one.barrel].row.code},
                        {"taken_l", inLitres(one.taken)},
                        {"left_l", inLitres(one.left)}});
    }
    json levels = json::object();
    for (std::size_t i = 0; i < bench.problem.wishes.size(); ++i) {
        levels[bench.problem.wishes[i].attribute] = {{"mean", answer.blend.mean[i]},
                                                     {"sd", answer.blend.deviation[i]},
                                                     {"chance_in_window", answer.chances[i]}};
    }
    return {
        {"barrels", barrels},
        {"volume_l", rangeJson(inLitres(answer.volume.low), inLitres(answer.volume.median),
                               inLitres(answer.volume.high))},
        {"strength_abv", rangeJson(answer.strength.low * perCent, answer.strength.median * perCent,
                                   answer.strength.high * perCent)},
        {"levels", levels},
        {"chance_in_window", answer.blend.chance},
        {"expected_square_distance", answer.blend.distance},
        {"left_in_part", left},
        {"beers", answer.beers},
        {"oldest_fill", answer.oldest ? json(toIsoDate(*answer.oldest)) : json()},
        {"youngest_fill", answer.youngest ? json(toIsoDate(*answer.youngest)) : json()},
        {"bench_rounding", answer.recipe.rounding}};
}

const char* wordOf(plan::LeftOut::Why why)
{
    return why == plan::LeftOut::Why::Suspect ? "suspect"
           : why == plan::LeftOut::Why::Sour  ? "sour"
                                              : "volume unknown";
}

std::string nameOf(const Bench& bench, const blend::InTheWay& way)
{
    return way.what == blend::InTheWay::What::Attribute  ? bench.problem.wishes[way.wish].attribute
           : way.what == blend::InTheWay::What::Strength ? "strength_abv"
                                                         : "volume_l";
}

// In the unit that is shown.
double shown(const blend::InTheWay& way, double value)
{
    return way.what == blend::InTheWay::What::Strength ? value * perCent
           : way.what == blend::InTheWay::What::Amount ? value / litres(1).si()
                                                       : value;
}

json toJson(const Bench& bench, const blend::Found& found, const std::vector<BenchAnswer>& answers)
{
    json all = json::array();
    for (const BenchAnswer& answer : answers) {
        all.push_back(toJson(bench, answer));
    }
    json ways = json::array();
    for (const blend::InTheWay& way : found.inTheWay) {
        ways.push_back({{"what", nameOf(bench, way)},
                        {"reached", shown(way, way.reached)},
                        {"bound", shown(way, way.bound)}});
    }
    json out = json::array();
    for (const plan::LeftOut& one : bench.leftOut) {
        out.push_back({{"code", one.row.code}, {"why", wordOf(one.why)}});
    }
    return {{"answers", all},
            {"bound", found.blends.empty() ? json() : json(found.bound)},
            {"proven", found.proven},
            {"in_the_way", ways},
            {"left_out", out}};
}

std::string lineOf(const Bench& bench, const BenchAnswer& answer)
{
    std::string shares;
    for (const plan::RecipeStep& step : answer.recipe.steps) {
        const blend::Share& share = answer.blend.shares[step.part];
        shares += (shares.empty() ? "" : ", ") + nameOf(bench.barrels[share.barrel].row) + " (" +
                  fixed(share.amount / litres(1).si(), 0) + "; " + fixed(step.millilitres, 1) + ")";
    }
    for (const plan::Ullaged& one : answer.ullaged) {
        shares += "; " + nameOf(bench.barrels[one.barrel].row) + " keeps " +
                  fixed(inLitres(one.left), 0) + " L";
    }
    return shares;
}

std::string textOf(const Bench& bench, const blend::Found& found,
                   const std::vector<BenchAnswer>& answers)
{
    std::string text;
    if (answers.empty()) {
        text = "No blend keeps all bounds. In the way, for the one that comes nearest:\n";
        for (const blend::InTheWay& way : found.inTheWay) {
            text += "  " + nameOf(bench, way) + " comes to " + fixed(shown(way, way.reached), 2) +
                    ", asked for " + fixed(shown(way, way.bound), 2) + "\n";
        }
    } else {
        std::vector<std::vector<std::string>> lines{{"chance", "off by (points)", "strength",
                                                     "litres", "beers",
                                                     "barrels (litres; mL in a glass of 100)"}};
        for (const BenchAnswer& answer : answers) {
            const auto& strength = answer.strength;
            lines.push_back(
                {chanceText(answer.blend.chance), fixed(std::sqrt(answer.blend.distance), 2),
                 fixed(strength.median * perCent, 1) + " % (" + fixed(strength.low * perCent, 1) +
                     " to " + fixed(strength.high * perCent, 1) + ")",
                 fixed(inLitres(answer.volume.median), 0) + " (" +
                     fixed(inLitres(answer.volume.low), 0) + " to " +
                     fixed(inLitres(answer.volume.high), 0) + ")",
                 std::to_string(answer.beers), lineOf(bench, answer)});
        }
        text = table(lines) +
               (found.proven ? "\nEvery set of barrels was looked at: none comes nearer than " +
                                   fixed(std::sqrt(found.blends.front().distance), 2) + " points.\n"
                             : "\nStopped before all were looked at: none comes nearer than " +
                                   fixed(std::sqrt(found.bound), 2) + " points.\n") +
               "Ranges are 8 in 10. Pour the glass, cool and carbonate it, and taste it before any "
               "barrel is opened.\n";
    }
    for (const plan::LeftOut& one : bench.leftOut) {
        text += "Left out: " + nameOf(one.row) + " (" + wordOf(one.why) + ")\n";
    }
    return text;
}

}  // namespace

int benchOfCellar(Session& session, const CellarBenchOptions& options)
{
    auto cellar = session.open();
    if (!cellar) {
        return session.refuse(cellar.error());
    }
    const auto ask = askOf(**cellar, options);
    if (!ask) {
        return session.refuse(ask.error());
    }
    const Instant now = session.clock().now();
    ledger::Database& database = (*cellar)->database();
    const auto model = outlook::CellarModel::learn(database, now, session.job("learning"));
    if (!model) {
        return session.refuse(model.error());
    }
    const auto bench = plan::benchOf(database, *model, *ask, now, session.job("barrels"));
    if (!bench) {
        return session.refuse(bench.error());
    }
    const BenchJob limited(session, options.seconds);
    const auto found = plan::blendsOf(*bench, limited.job());
    if (!found) {
        return session.refuse(found.error());
    }
    const auto answers = plan::answersOf(*bench, *found);
    if (!answers) {
        return session.refuse(answers.error());
    }
    session.answer(toJson(*bench, *found, *answers), textOf(*bench, *found, *answers));
    return Done;
}

}  // namespace spile::desk
