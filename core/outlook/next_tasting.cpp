#include "core/outlook/next_tasting.hpp"

#include "core/outlook/normal.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <memory>

namespace spile::outlook {

namespace {

constexpr std::size_t draws = 128;
constexpr std::array primes = {2U, 3U, 5U, 7U, 11U, 13U, 17U, 19U, 23U, 29U, 31U, 37U};
constexpr double entered = 0.5;    // a barrel at its best is pulled if it is probably in
constexpr double reachable = 0.9;  // of the best that two more tastings could show
constexpr double tooFar = 0.9;
constexpr double aboutAsMuch = 0.8;
constexpr int moreTastings = 2;

// J. H. Halton, Numerische Mathematik 2 (1960) 84-90 (from memory): evenly spread in [0, 1).
double radicalInverse(unsigned index, unsigned base)
{
    double value = 0;
    double digit = 1;
    for (; index > 0; index /= base) {
        digit /= base;
        value += digit * (index % base);
    }
    return value;
}

using NormalDraws = std::array<std::array<double, primes.size()>, draws>;

const NormalDraws& normalDraws()
{
    static const NormalDraws table = [] {
        NormalDraws made{};
        for (unsigned i = 0; i < draws; ++i) {
            for (std::size_t a = 0; a < primes.size(); ++a) {
                made.at(i).at(a) = normalQuantile(radicalInverse(i + 1, primes.at(a)));
            }
        }
        return made;
    }();
    return table;
}

double insideNormal(const LineWindow& window, double mean, double deviation)
{
    const double above =
        window.high >= lineHigh ? 1 : normalBelow((window.high - mean) / deviation);
    const double below = window.low <= lineLow ? 0 : normalBelow((window.low - mean) / deviation);
    return above - below;
}

// The best chance that could be known after two more tastings, all levels in the middle.
double bestReachable(std::span<const Foreseen> attributes, std::size_t week)
{
    double all = 1;
    for (const Foreseen& one : attributes) {
        const double v = one.variance[week];
        const double left = v * one.sittingVariance / (one.sittingVariance + moreTastings * v);
        const double low = one.window.low <= lineLow ? lineLow - lineHigh : one.window.low;
        const double high = one.window.high >= lineHigh ? 2 * lineHigh : one.window.high;
        all *= insideNormal(one.window, (low + high) / 2, std::sqrt(left));
    }
    return all;
}

// The chance that all were in and something has gone too far since. What goes too far before the
// rest has come cannot be helped by a tasting.
double lost(const Together& at) { return at.past * at.entered; }

// The first week that may well decide; else the last of those that tell about as much as the best.
void chooseWeek(std::span<const Foreseen> attributes, const TastingRule& rule, std::size_t last,
                Decision& decision)
{
    std::vector<double> chances(last + 1);
    for (std::size_t week = rule.leastWeeks; week <= last; ++week) {
        chances[week] = chanceToDecide(attributes, week, decision.enough);
        if (chances[week] >= rule.decides) {
            decision.week = week;
            decision.decides = chances[week];
            decision.why = Decision::Why::Decides;
            return;
        }
    }
    const double best = *std::max_element(chances.begin(), chances.end());
    for (std::size_t week = rule.leastWeeks; week <= last; ++week) {
        if (chances[week] >= aboutAsMuch * best) {
            decision.week = week;
            decision.decides = chances[week];
        }
    }
}

std::vector<Together> allTogether(std::span<const Foreseen> attributes)
{
    const std::size_t weeks = attributes.front().mean.size();
    std::vector<Together> course(weeks);
    std::vector<Standing> standings(attributes.size());
    // A std::vector<bool> holds no bools. NOLINTNEXTLINE(modernize-avoid-c-arrays)
    const auto rising = std::make_unique<bool[]>(attributes.size());
    for (std::size_t a = 0; a < attributes.size(); ++a) {
        rising[a] = attributes[a].rising;
    }
    for (std::size_t week = 0; week < weeks; ++week) {
        for (std::size_t a = 0; a < attributes.size(); ++a) {
            standings[a] = attributes[a].standing[week];
        }
        course[week] = together(standings, {rising.get(), attributes.size()});
    }
    return course;
}

}  // namespace

void Foreseen::resize(std::size_t weeks)
{
    mean.resize(weeks);
    variance.resize(weeks);
    standing.resize(weeks);
}

void Foreseen::set(std::size_t week, const Mixture& level)
{
    mean[week] = level.mean();
    variance[week] = level.variance();
    standing[week] = {level.sides(window.low, window.high), mean[week]};
}

double chanceToDecide(std::span<const Foreseen> attributes, std::size_t week, double enough)
{
    const std::size_t count = std::min(attributes.size(), primes.size());
    std::size_t hits = 0;
    for (const auto& draw : normalDraws()) {
        double all = 1;
        for (std::size_t a = 0; a < count && all >= enough; ++a) {
            const Foreseen& one = attributes[a];
            const double v = one.variance[week];
            const double left = v * one.sittingVariance / (v + one.sittingVariance);
            all *= insideNormal(one.window, one.mean[week] + draw[a] * std::sqrt(v - left),
                                std::sqrt(left));
        }
        hits += all >= enough ? 1 : 0;
    }
    return static_cast<double>(hits) / static_cast<double>(draws);
}

Decision decide(std::span<const Foreseen> attributes, const TastingRule& rule)
{
    const std::vector<Together> course = allTogether(attributes);
    Decision decision;
    double reach = 0;
    double later = 0;
    for (std::size_t week = 0; week < course.size(); ++week) {
        reach = std::max(reach, bestReachable(attributes, week));
        later = week == 0 ? 0 : std::max(later, course[week].within);
    }
    decision.enough = std::min(rule.enough, reachable * reach);
    const Together& now = course.front();
    decision.pastSaving = now.past > tooFar;
    std::size_t last = std::min(rule.mostWeeks, course.size() - 1);
    const std::size_t longest = last;
    while (last > rule.leastWeeks && lost(course[last]) - lost(now) > rule.mayPass) {
        --last;
    }
    const bool atItsBest = now.within >= later && now.entered > entered;
    decision.pull = now.within >= decision.enough || decision.pastSaving ||
                    (atItsBest && (now.within >= rule.atBest || last == rule.leastWeeks));
    chooseWeek(attributes, rule, last, decision);
    if (decision.decides < rule.decides) {
        decision.why = last < longest ? Decision::Why::BeforeTooFar : Decision::Why::LooksAgain;
    }
    return decision;
}

}  // namespace spile::outlook
