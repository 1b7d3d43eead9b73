#include "tests/support/simulated_barrels.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace spile::test {

namespace {

constexpr double firstSitting = 6;
constexpr double attendance = 0.55;
constexpr double sessionShare = 0.5;

double drawRate(double median, double deviation, Draws& draws)
{
    return median * std::exp(draws.normal(0, deviation));
}

TrueCourse between(double start, double end, const std::function<double(double)>& share)
{
    return [=](double age) { return start + (end - start) * share(age); };
}

TrueCourse sigmoid(double start, double end, double middle, double width)
{
    return [=](double age) {
        const wood::Basis basis = wood::delayedBasis(middle, width, age);
        return basis[0] * start + basis[1] * end;
    };
}

TrueCourse peak(double start, double height, double rise, double fall)
{
    return [=](double age) {
        const wood::Basis basis = wood::risingFallingBasis(rise, fall, age);
        return basis[0] * start + basis[1] * height;
    };
}

TrueCourse drawPeak(double start, const outlook::Belief& height, Draws& draws)
{
    double rise = 0;
    double fall = 1;
    while (fall > 0.9 * rise) {
        rise = drawRate(0.2, 0.5, draws);
        fall = drawRate(0.03, 0.5, draws);
    }
    return peak(start, draws.normal(height.mean, height.deviation), rise, fall);
}

}  // namespace

double Draws::uniform(double low, double high)
{
    constexpr double steps = 9007199254740992.0;  // 2^53
    return low + (high - low) * (static_cast<double>(engine_() >> 11U) + 0.5) / steps;
}

double Draws::normal(double mean, double deviation)
{
    const double radius = std::sqrt(-2 * std::log(uniform()));
    return mean + deviation * radius * std::cos(2 * std::numbers::pi * uniform());
}

int Draws::whole(int low, int high)
{
    return std::min(high, low + static_cast<int>(uniform() * (high - low + 1)));
}

std::string_view nameOf(Truth truth)
{
    switch (truth) {
        case Truth::Saturating:
            return "saturating";
        case Truth::Diffusing:
            return "tanh sqrt(t)";
        case Truth::FastAndSlow:
            return "fast + slow";
        case Truth::Linear:
            return "linear";
        case Truth::Sigmoid:
            return "sigmoid";
        case Truth::RiseThenFall:
            return "rise then fall";
        case Truth::UnloggedTopUp:
            return "unlogged top-up";
    }
    return "";
}

TrueCourse drawCourse(Truth truth, Draws& draws)
{
    const outlook::CoursePrior usual;
    const double start = draws.normal(usual.start.mean, usual.start.deviation);
    const double end = draws.normal(usual.end.mean, usual.end.deviation);
    const double rate = drawRate(0.12, usual.logRate.deviation, draws);
    switch (truth) {
        case Truth::Saturating:
            return between(start, end, [=](double age) { return 1 - std::exp(-rate * age); });
        case Truth::Diffusing:
            return between(start, end,
                           [=](double age) { return std::tanh(std::sqrt(rate * age / 2)); });
        case Truth::FastAndSlow:
            return between(start, end, [=](double age) {
                return 1 - 0.4 * std::exp(-6 * rate * age) - 0.6 * std::exp(-0.7 * rate * age);
            });
        case Truth::Linear: {
            const double slope = draws.normal(3, 1) / 12;
            return [=](double age) { return start + slope * age; };
        }
        case Truth::Sigmoid:
            return sigmoid(start, end, draws.uniform(4, 14), draws.uniform(1.2, 3.5));
        case Truth::RiseThenFall:
            return drawPeak(start, usual.height, draws);
        case Truth::UnloggedTopUp: {
            const bool recovers = draws.uniform() < 0.5;
            return [=](double age) {
                const outlook::Shape shape{
                    outlook::Family::Saturating, rate, 0, 0, {{{start, 1}, {end, 1}}}};
                const std::array replaced = {outlook::Replaced{10, 0.15}};
                const auto row = outlook::courseRow(shape, recovers, replaced, age);
                return row[0] * start + row[1] * end + row[2] * start;
            };
        }
    }
    return {};
}

TrueCourse drawFromPrior(const outlook::CoursePrior& prior, Draws& draws)
{
    const double start = draws.normal(prior.start.mean, prior.start.deviation);
    const double choice = draws.uniform();
    double reached = prior.weight[0];
    if (choice < reached) {
        const double end = draws.normal(prior.end.mean, prior.end.deviation);
        const double rate = std::exp(draws.normal(prior.logRate.mean, prior.logRate.deviation));
        return between(start, end, [=](double age) { return 1 - std::exp(-rate * age); });
    }
    reached += prior.weight[1];
    if (choice < reached) {
        const double begin = draws.normal(prior.linearStart.mean, prior.linearStart.deviation);
        const double slope =
            draws.normal(prior.slopePerYear.mean, prior.slopePerYear.deviation) / 12;
        return [=](double age) { return begin + slope * age; };
    }
    reached += prior.weight[2];
    if (choice < reached) {
        return drawPeak(start, prior.height, draws);
    }
    constexpr std::array middles = {4.0, 6.5, 9.0, 11.5, 14.0};
    constexpr std::array widths = {1.2, 2.2, 3.5};
    return sigmoid(start, draws.normal(prior.end.mean, prior.end.deviation),
                   middles.at(static_cast<std::size_t>(draws.whole(0, 4))),
                   widths.at(static_cast<std::size_t>(draws.whole(0, 2))));
}

SimulatedBarrel drawBarrel(TrueCourse course, int tasters, int sessions, Draws& draws)
{
    SimulatedBarrel barrel;
    barrel.course = std::move(course);
    barrel.sigma = drawRate(0.9, 0.35, draws);
    for (int i = 0; i < tasters; ++i) {
        barrel.bias.push_back(draws.normal(0, std::sqrt(biasVariance)));
        barrel.panelBias += barrel.bias.back() / tasters;
    }
    for (int session = 0; session < sessions; ++session) {
        sit(barrel, firstSitting + session, false, draws);
    }
    return barrel;
}

void sit(SimulatedBarrel& barrel, double age, bool all, Draws& draws)
{
    const double shared = draws.normal(0, sessionShare * barrel.sigma);
    const int session = barrel.data.scores.empty() ? 0 : barrel.data.scores.back().session + 1;
    const auto tasters = static_cast<int>(barrel.bias.size());
    const int sure = draws.whole(0, tasters - 1);
    for (int i = 0; i < tasters; ++i) {
        if (!all && i != sure && draws.uniform() > attendance) {
            continue;
        }
        const double line = barrel.course(age) + barrel.bias[static_cast<std::size_t>(i)] + shared +
                            draws.normal(0, barrel.sigma);
        barrel.data.scores.push_back({age, session, i, line, false});
    }
    barrel.lastAge = age;
}

std::vector<SittingMean> sittingMeans(const outlook::CourseData& data)
{
    std::vector<SittingMean> means;
    int last = -1;
    int count = 0;
    for (const outlook::Scored& score : data.scores) {
        if (means.empty() || score.session != last) {
            means.push_back({score.age, 0});
            last = score.session;
            count = 0;
        }
        ++count;
        means.back().mean += (score.line - means.back().mean) / count;
    }
    return means;
}

outlook::CourseModel modelFor(std::size_t tasters)
{
    outlook::CourseModel model;
    model.tasters = outlook::unknownTasters(tasters, biasVariance);
    return model;
}

}  // namespace spile::test
