#include "tests/support/simulated_pulling.hpp"

#include <algorithm>
#include <cmath>

namespace spile::test {

namespace {

using outlook::Course;
using outlook::CourseModel;
using outlook::Foreseen;

constexpr double weekMonths = 12.0 / 52;
constexpr int tasters = 2;
constexpr double knownBias = 0.3 * 0.3 + 0.5 * 0.5;  // what is left of the house's, and their own
constexpr double sigmaMedian = 0.8;
constexpr double sigmaDeviation = 0.2;
constexpr double firstMonth = 6;
constexpr double lastMonth = 30;  // a window begins between these two
constexpr double endMonth = 36;   // pulled at the latest
constexpr double leastOpen = 3;   // months: a shorter window is none
constexpr int searchFrom = 13;    // weeks: the first tasting is looked for from three months on
constexpr int searchTo = 43;
constexpr std::size_t weeksAhead = 79;  // odd: every second one is computed

// One barrel: an attribute of it is a simulated barrel of its own with the same times.
struct Cask {
    std::vector<SimulatedBarrel> attributes;
    double opens = 0, closes = 0;
};

bool isInside(const PullingSetting& setting, const Cask& cask, double age)
{
    for (std::size_t a = 0; a < setting.aims.size(); ++a) {
        const double level = cask.attributes[a].level(age);
        const auto& window = setting.aims[a].window;
        if (level < window.low || level > window.high) {
            return false;
        }
    }
    return true;
}

Cask drawCask(const PullingSetting& setting, Draws& draws)
{
    const outlook::CoursePrior usual;
    Cask cask;
    for (const Aim& aim : setting.aims) {
        const double start = draws.normal(aim.start, usual.start.deviation);
        const double end = draws.normal(aim.end, usual.end.deviation);
        const double rate =
            setting.trueRateRatio * aim.rate * std::exp(draws.normal(0, usual.logRate.deviation));
        SimulatedBarrel one;
        one.course = [=](double age) {
            return start + (end - start) * (1 - std::exp(-rate * age));
        };
        one.sigma = sigmaMedian * std::exp(draws.normal(0, sigmaDeviation));
        for (int i = 0; i < tasters; ++i) {
            one.bias.push_back(draws.normal(0, std::sqrt(knownBias)));
            one.panelBias += one.bias.back() / tasters;
        }
        cask.attributes.push_back(std::move(one));
    }
    return cask;
}

// Finds when the barrel's window opens and closes; false if it does not open between the two
// months and stay open for a while.
bool findWindow(const PullingSetting& setting, Cask& cask)
{
    for (double age = 0; age <= lastMonth && cask.opens == 0; age += weekMonths) {
        cask.opens = isInside(setting, cask, age) ? age : 0;
    }
    cask.closes = cask.opens;
    while (cask.closes < endMonth && isInside(setting, cask, cask.closes)) {
        cask.closes += weekMonths;
    }
    return cask.opens >= firstMonth && cask.closes - cask.opens >= leastOpen;
}

Cask drawCaskWithWindow(const PullingSetting& setting, Draws& draws)
{
    Cask cask = drawCask(setting, draws);
    while (!findWindow(setting, cask)) {
        cask = drawCask(setting, draws);
    }
    return cask;
}

// A week between its neighbours: levels go slowly, and this halves the time.
void setBetween(Foreseen& one, std::size_t week)
{
    const auto middle = [](double a, double b) { return (a + b) / 2; };
    const outlook::Standing& before = one.standing[week - 1];
    const outlook::Standing& after = one.standing[week + 1];
    one.mean[week] = middle(one.mean[week - 1], one.mean[week + 1]);
    one.variance[week] = middle(one.variance[week - 1], one.variance[week + 1]);
    one.standing[week] = {{middle(before.sides.below, after.sides.below),
                           middle(before.sides.within, after.sides.within),
                           middle(before.sides.above, after.sides.above)},
                          one.mean[week]};
}

class Brewer {
public:
    Brewer(const PullingSetting& setting, Policy policy, const outlook::TastingRule& rule)
        : setting_(setting), policy_(policy), rule_(rule)
    {
        for (const Aim& aim : setting.aims) {
            CourseModel model;
            model.prior = outlook::priorBetween(aim.start, aim.end, aim.rate);
            model.noise = {sigmaMedian, sigmaDeviation, 0.5};
            model.tasters = outlook::unknownTasters(tasters, knownBias);
            models_.push_back(model);
        }
    }

    // Returns the age at which the barrel is pulled.
    double age(Cask& cask, int& tastings, Draws& draws)
    {
        double now = 0;
        if (setting_.fillDay) {
            taste(cask, 0, draws);
        }
        now = policy_ == Policy::Rule ? firstByRule(cask) : firstMonth;
        for (tastings = 1; now < endMonth; ++tastings) {
            taste(cask, now, draws);
            const double wait = waitAfter(cask, now);
            if (wait == 0) {
                return now;
            }
            now += wait;
        }
        --tastings;
        return endMonth;
    }

private:
    static void taste(Cask& cask, double age, Draws& draws)
    {
        for (SimulatedBarrel& one : cask.attributes) {
            sit(one, age, true, draws);
        }
    }

    std::vector<Foreseen> foresee(const Cask& cask, double from, double step, std::size_t weeks)
    {
        std::vector<Foreseen> all(models_.size());
        for (std::size_t a = 0; a < models_.size(); ++a) {
            const Course course(models_[a], cask.attributes[a].data);
            const double share = models_[a].noise.sessionShare;
            all[a].window = setting_.aims[a].window;
            all[a].rising = setting_.aims[a].rising;
            all[a].sittingVariance = course.noiseVariance() * (1.0 / tasters + share * share);
            all[a].resize(weeks);
            for (std::size_t week = 0; week < weeks; week += 2) {
                course.levelAt(from + step * static_cast<double>(week), level_);
                all[a].set(week, level_);
            }
            for (std::size_t week = 1; week + 1 < weeks; week += 2) {
                setBetween(all[a], week);
            }
        }
        return all;
    }

    double firstByRule(const Cask& cask)
    {
        outlook::TastingRule rule = rule_;
        rule.leastWeeks = searchFrom;
        rule.mostWeeks = searchTo;
        const auto all = foresee(cask, 0, weekMonths, weeksAhead);
        return weekMonths * static_cast<double>(decide(all, rule).week);
    }

    // Months until the next tasting; 0 to pull now.
    double waitAfter(const Cask& cask, double now)
    {
        if (policy_ == Policy::RawMonthly) {
            for (std::size_t a = 0; a < models_.size(); ++a) {
                const double mean = sittingMeans(cask.attributes[a].data).back().mean;
                const auto& window = setting_.aims[a].window;
                if (mean < window.low || mean > window.high) {
                    return 1;
                }
            }
            return 0;
        }
        const outlook::Decision decision =
            decide(foresee(cask, now, weekMonths, weeksAhead), rule_);
        if (decision.pull) {
            return 0;
        }
        return policy_ == Policy::ModelMonthly ? 1
                                               : weekMonths * static_cast<double>(decision.week);
    }

    const PullingSetting& setting_;
    Policy policy_;
    outlook::TastingRule rule_;
    std::vector<CourseModel> models_;
    outlook::Mixture level_;
};

}  // namespace

PullingSetting wideWindows()
{
    return {{{1, 6.5, 0.12, {4.2, 6.2}, true},
             {1, 5.5, 0.12, {3, 5.5}, true},
             {5, 2.5, 0.10, {1.5, 4.5}, false}}};
}

PullingSetting tightWindows()
{
    return {{{1, 6.5, 0.12, {4.6, 6}, true},
             {1, 5.5, 0.12, {3.5, 5}, true},
             {5, 2.5, 0.10, {2.5, 4.2}, false}}};
}

PullingResult pullBarrels(const PullingSetting& setting, Policy policy,
                          const outlook::TastingRule& rule)
{
    PullingResult result;
    std::vector<int> counts;
    int inside = 0;
    for (int i = 0; i < setting.barrels; ++i) {
        // Each barrel has numbers of its own: all policies meet the same barrels.
        Draws draws(1'000'003 * setting.seed + static_cast<std::uint64_t>(i));
        Brewer brewer(setting, policy, rule);
        Cask cask = drawCaskWithWindow(setting, draws);
        int tastings = 0;
        const double age = brewer.age(cask, tastings, draws);
        counts.push_back(tastings);
        const double share = 1.0 / setting.barrels;
        result.tastings += share * tastings;
        if (isInside(setting, cask, age)) {
            ++inside;
            result.delayMonths += age - cask.opens;
        } else {
            (age < cask.opens ? result.early : result.late) += share;
        }
    }
    result.inside = static_cast<double>(inside) / setting.barrels;
    result.delayMonths /= std::max(inside, 1);
    std::sort(counts.begin(), counts.end());
    result.tastings90 = counts[counts.size() * 9 / 10];
    return result;
}

}  // namespace spile::test
