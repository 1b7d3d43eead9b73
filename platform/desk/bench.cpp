// bench: which barrels come nearest to a target. No cellar is opened.
#include "core/blend/bench.hpp"

#include "platform/desk/bench_job.hpp"
#include "platform/desk/bench_spec.hpp"
#include "platform/desk/commands.hpp"
#include "platform/desk/rows.hpp"

#include <algorithm>
#include <cmath>

namespace spile::desk {

using blend::Blend;
using blend::InTheWay;
using blend::Problem;
using nlohmann::json;

namespace {

constexpr std::uint64_t longestSpec = 16'000'000;  // bytes
constexpr double recipe = 100;                     // mL, of the bench glass

bool hasWindows(const Problem& problem)
{
    return std::any_of(problem.wishes.begin(), problem.wishes.end(),
                       [](const blend::Wish& wish) { return wish.low || wish.high; });
}

json toJson(const Problem& problem, const Blend& blend)
{
    json barrels = json::array();
    for (const blend::Share& share : blend.shares) {
        barrels.push_back({{"name", problem.barrels[share.barrel].name},
                           {"volume_l", share.amount},
                           {"bench_ml", recipe * share.amount / blend.amount}});
    }
    json mean = json::object();
    json deviation = json::object();
    for (std::size_t i = 0; i < problem.wishes.size(); ++i) {
        mean[problem.wishes[i].attribute] = blend.mean[i];
        deviation[problem.wishes[i].attribute] = blend.deviation[i];
    }
    return {{"barrels", barrels},
            {"volume_l", blend.amount},
            {"mean", mean},
            {"sd", deviation},
            {"expected_square_distance", blend.distance},
            {"chance_in_window", hasWindows(problem) ? json(blend.chance) : json()},
            {"strength_abv", blend.strength * perCent}};
}

std::string nameOf(const Problem& problem, const InTheWay& way)
{
    switch (way.what) {
        case InTheWay::What::Attribute:
            return problem.wishes[way.wish].attribute;
        case InTheWay::What::Strength:
            return "strength_abv";
        case InTheWay::What::Amount:
            return "volume_l";
    }
    return {};
}

double unitOf(const InTheWay& way) { return way.what == InTheWay::What::Strength ? perCent : 1; }

json toJson(const Problem& problem, const InTheWay& way)
{
    return {{"what", nameOf(problem, way)},
            {"reached", way.reached * unitOf(way)},
            {"bound", way.bound * unitOf(way)}};
}

// Each blend: its distance as a root, so that it is in points; then what to pour.
std::string tableOf(const Problem& problem, const std::vector<Blend>& blends)
{
    std::vector<std::vector<std::string>> lines{{"off by (points)", "chance", "strength", "litres",
                                                 "barrels (litres; mL in a glass of 100)"}};
    for (const Blend& blend : blends) {
        std::string shares;
        for (const blend::Share& share : blend.shares) {
            const blend::Barrel& barrel = problem.barrels[share.barrel];
            shares += (shares.empty() ? "" : ", ") + barrel.name + " (" + fixed(share.amount, 1) +
                      "; " + fixed(recipe * share.amount / blend.amount, 1) + ")";
        }
        lines.push_back({fixed(std::sqrt(blend.distance), 2),
                         hasWindows(problem) ? chanceText(blend.chance) : "",
                         fixed(blend.strength * perCent, 1) + " %", fixed(blend.amount, 0),
                         shares});
    }
    return table(lines);
}

std::string textOf(const Problem& problem, const blend::Found& found,
                   const std::vector<Blend>& shown)
{
    if (!found.blends.empty()) {
        return tableOf(problem, shown) +
               (found.proven ? "\nNo blend of these barrels comes nearer than the first.\n"
                             : "\nStopped before all were looked at: none comes nearer than " +
                                   fixed(std::sqrt(found.bound), 2) + " points.\n") +
               "Pour the glass, cool and carbonate it, and taste it before any barrel is opened.\n";
    }
    std::string text = "No blend keeps all bounds. In the way, for the one that comes nearest:\n";
    for (const InTheWay& way : found.inTheWay) {
        text += "  " + nameOf(problem, way) + " comes to " + fixed(way.reached * unitOf(way), 2) +
                ", asked for " + fixed(way.bound * unitOf(way), 2) + "\n";
    }
    return text;
}

}  // namespace

int bench(Session& session, const BenchOptions& options)
{
    const auto bytes = readWhole(session.files(), options.spec, longestSpec);
    if (!bytes) {
        return session.refuse(bytes.error());
    }
    const auto problem =
        readBenchSpec({reinterpret_cast<const char*>(bytes->data()), bytes->size()});
    if (!problem) {
        return session.refuse(problem.error());
    }
    const BenchJob limited(session, options.seconds);
    const auto found = blend::bestBlends(*problem, limited.job());
    if (!found) {
        return session.refuse(found.error());
    }
    std::vector<Blend> shown = found->blends;
    shown.resize(std::min(shown.size(), options.answers));
    json answers = json::array();
    for (const Blend& blend : shown) {
        answers.push_back(toJson(*problem, blend));
    }
    json ways = json::array();
    for (const InTheWay& way : found->inTheWay) {
        ways.push_back(toJson(*problem, way));
    }
    session.answer({{"answers", answers},
                    {"bound", found->blends.empty() ? json() : json(found->bound)},
                    {"proven", found->proven},
                    {"in_the_way", ways}},
                   textOf(*problem, *found, shown));
    return Done;
}

}  // namespace spile::desk
