#include "core/plan/bench_answers.hpp"

#include "core/plan/watching.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <set>

namespace spile::plan {

namespace {

constexpr double meterError = 0.005;  // of a part that is measured out
constexpr double nearlyAll = 0.95;

bool isPart(const BenchBarrel& barrel, const blend::Share& share)
{
    constexpr double inAmounts = 1e-9;
    return share.amount < barrel.volume.si() * (1 - inAmounts);
}

wood::Spread spreadAround(double middle, double variance)
{
    const double reach = wood::spreadReach * std::sqrt(variance);
    return {std::max(0.0, middle - reach), middle, middle + reach};
}

// Ranges of volume and strength: each barrel's errors, and that of its share in the strength.
void addRanges(const Bench& bench, BenchAnswer& answer)
{
    double volume = 0;
    double strength = 0;
    for (const blend::Share& share : answer.blend.shares) {
        const BenchBarrel& barrel = bench.barrels[share.barrel];
        const double amountError =
            isPart(barrel, share) ? meterError * share.amount : barrel.volumeDeviation.si();
        const double part = share.amount / answer.blend.amount;
        const double byStrength = part * barrel.strengthDeviation;
        const double byAmount =
            (barrel.alcoholByVolume - answer.blend.strength) * amountError / answer.blend.amount;
        volume += amountError * amountError;
        strength += byStrength * byStrength + byAmount * byAmount;
    }
    const wood::Spread litres = spreadAround(answer.mixed.volume.si(), volume);
    answer.volume = {Volume::fromSi(litres.low), Volume::fromSi(litres.median),
                     Volume::fromSi(litres.high)};
    answer.strength = spreadAround(answer.mixed.alcoholByVolume, strength);
}

void addCosts(const Bench& bench, BenchAnswer& answer)
{
    std::set<std::string> named;
    for (const blend::Share& share : answer.blend.shares) {
        const BenchBarrel& barrel = bench.barrels[share.barrel];
        if (isPart(barrel, share)) {
            const Volume taken = Volume::fromSi(share.amount);
            answer.ullaged.push_back({share.barrel, taken, barrel.volume - taken});
        }
        if (barrel.row.beer.empty()) {
            ++answer.beers;
        } else {
            named.insert(barrel.row.beer);
        }
        if (const auto filled = barrel.row.filledAt) {
            answer.oldest = std::min(answer.oldest.value_or(*filled), *filled);
            answer.youngest = std::max(answer.youngest.value_or(*filled), *filled);
        }
    }
    answer.beers += named.size();
}

// Whether of the first's barrels at least one in two is not in the second.
bool differs(const blend::Blend& blend, const blend::Blend& from)
{
    const auto own =
        std::count_if(blend.shares.begin(), blend.shares.end(), [&](const blend::Share& share) {
            return std::none_of(from.shares.begin(), from.shares.end(),
                                [&](const auto& other) { return other.barrel == share.barrel; });
        });
    return 2 * static_cast<std::size_t>(own) >= blend.shares.size();
}

}  // namespace

Recipe recipeOf(const std::vector<double>& amounts)
{
    const double all = std::accumulate(amounts.begin(), amounts.end(), 0.0);
    const auto parts = static_cast<int>(std::lround(recipeMillilitres / recipeStep));
    std::vector<double> exact;
    std::vector<int> rounded;
    for (const double amount : amounts) {
        exact.push_back(parts * amount / all);
        rounded.push_back(std::max(1, static_cast<int>(std::floor(exact.back()))));
    }
    // What is missing goes to those that lost most; what is too much was given to the least.
    const auto lost = [&](std::size_t i) { return exact[i] - rounded[i]; };
    std::vector<std::size_t> order(amounts.size());
    std::iota(order.begin(), order.end(), 0U);
    const auto byLost = [&](std::size_t a, std::size_t b) { return lost(a) < lost(b); };
    for (int sum = std::accumulate(rounded.begin(), rounded.end(), 0); sum != parts;) {
        if (sum < parts) {
            ++rounded[*std::max_element(order.begin(), order.end(), byLost)];
            ++sum;
        } else {
            --*std::max_element(rounded.begin(), rounded.end());
            --sum;
        }
    }
    Recipe recipe;
    for (const std::size_t i : order) {
        recipe.steps.push_back({i, rounded[i] * recipeStep});
        recipe.rounding = std::max(recipe.rounding, std::abs(rounded[i] / exact[i] - 1));
    }
    std::stable_sort(recipe.steps.begin(), recipe.steps.end(),
                     [](const auto& a, const auto& b) { return a.millilitres > b.millilitres; });
    return recipe;
}

Result<BenchAnswer> answerOf(const Bench& bench, const blend::Blend& blend)
{
    BenchAnswer answer;
    answer.blend = blend;
    SPILE_ASSIGN(mixed, mixedOf(bench, blend));
    answer.mixed = mixed;
    addRanges(bench, answer);
    addCosts(bench, answer);
    for (std::size_t i = 0; i < bench.problem.wishes.size(); ++i) {
        answer.chances.push_back(
            blend::chanceWithin(bench.problem.wishes[i], blend.mean[i], blend.deviation[i]));
    }
    std::vector<double> amounts;
    for (const blend::Share& share : blend.shares) {
        amounts.push_back(share.amount);
    }
    answer.recipe = recipeOf(amounts);
    return answer;
}

Result<std::vector<BenchAnswer>> answersOf(const Bench& bench, const blend::Found& found)
{
    std::vector<BenchAnswer> answers;
    const std::vector<blend::Blend> blends = blend::byChance(found.blends);
    for (const blend::Blend& blend : blends) {
        const bool another =
            std::all_of(answers.begin(), answers.end(),
                        [&](const BenchAnswer& before) { return differs(blend, before.blend); });
        if (another) {
            SPILE_ASSIGN(answer, answerOf(bench, blend));
            answers.push_back(std::move(answer));
            if (answers.size() == answersMost) {
                break;
            }
        }
    }
    if (answers.size() < answersLeast && blends.size() >= answersLeast) {
        SPILE_ASSIGN(second, answerOf(bench, blends[1]));
        answers.push_back(std::move(second));
    }
    return answers;
}

bool TankPart::whole() const { return held && portion.volume >= nearlyAll * *held; }
bool TankPart::tooLittle() const { return !filled || (held && *held < nearlyAll * portion.volume); }

Result<std::vector<TankPart>> tankPartsOf(ledger::Database& database,
                                          const cellar::BenchGlass& glass, Instant now)
{
    std::vector<TankPart> parts;
    for (const cellar::BenchPortion& portion : glass.portions) {
        TankPart part{portion, false, {}};
        SPILE_ASSIGN(row, cellar::barrelById(database, portion.barrel));
        if (row && row->filled) {
            part.filled = true;
            SPILE_ASSIGN(facts, readFacts(database, portion.barrel, now));
            if (const auto watch = watchOf(facts)) {
                part.held = watch->volume.median;
            }
        }
        parts.push_back(std::move(part));
    }
    std::stable_sort(parts.begin(), parts.end(), [](const TankPart& a, const TankPart& b) {
        return a.portion.volume > b.portion.volume;
    });
    return parts;
}

}  // namespace spile::plan
