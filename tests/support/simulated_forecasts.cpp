#include "tests/support/simulated_forecasts.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

namespace spile::test {

namespace {

using outlook::Course;
using outlook::Mixture;

constexpr double readyLevel = 4.5;
constexpr double latest = 18;  // months after the last sitting

double square(double x) { return x * x; }

void note(Horizons& horizons, const Course& course, const SimulatedBarrel& barrel, double share)
{
    Mixture level;
    for (std::size_t i = 0; i < monthsAhead.size(); ++i) {
        const double age = barrel.lastAge + monthsAhead.at(i);
        course.levelAt(age, level);
        const double below = level.below(barrel.level(age));
        const double off = 2 * std::abs(below - 0.5);
        Calibration& one = horizons.at(i);
        one.inside50 += off < 0.50 ? share : 0;
        one.inside80 += off < 0.80 ? share : 0;
        one.inside95 += off < 0.95 ? share : 0;
        const auto bin = static_cast<std::size_t>(below * Calibration::bins);
        ++one.counts.at(std::min(bin, Calibration::bins - 1));
    }
}

struct Line {
    double level = 0, slope = 0;  // at age 0, and in a month
    [[nodiscard]] double at(double age) const { return level + slope * age; }
};

// Least squares; level through a single mean.
Line lineThrough(const std::vector<SittingMean>& means)
{
    const auto n = static_cast<double>(means.size());
    double age = 0;
    double mean = 0;
    for (const SittingMean& one : means) {
        age += one.age / n;
        mean += one.mean / n;
    }
    double together = 0;
    double spread = 0;
    for (const SittingMean& one : means) {
        together += (one.age - age) * (one.mean - mean);
        spread += square(one.age - age);
    }
    const double slope = spread > 0 ? together / spread : 0;
    return {mean - slope * age, slope};
}

// Months from `now` until the line comes to the level.
double readyBy(const Line& line, double now)
{
    if (line.at(now) >= readyLevel) {
        return 0;
    }
    return line.slope > 0 ? std::min((readyLevel - line.at(now)) / line.slope, latest) : latest;
}

double trulyReady(const SimulatedBarrel& barrel)
{
    constexpr double step = 0.05;
    double ahead = 0;
    while (ahead <= latest && barrel.level(barrel.lastAge + ahead) < readyLevel) {
        ahead += step;
    }
    return ahead;
}

// When the chance of being there or past comes to 10, 50 and 90 %.
std::array<double, 3> foreseenReady(const Course& course, double now)
{
    constexpr double step = 0.25;
    constexpr std::array chances = {0.1, 0.5, 0.9};
    std::array<double, 3> ready = {latest, latest, latest};
    std::size_t next = 0;
    Mixture level;
    for (double ahead = 0; ahead < latest && next < chances.size(); ahead += step) {
        course.levelAt(now + ahead, level);
        const double there = 1 - level.below(readyLevel);
        for (; next < chances.size() && there >= chances.at(next); ++next) {
            ready.at(next) = ahead;
        }
    }
    return ready;
}

double median(std::vector<double> values)
{
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

// A barrel that is not ready at its last sitting and comes to be within the time.
SimulatedBarrel drawRising(bool mixed, int sittings, Draws& draws)
{
    constexpr int known = static_cast<int>(truths.size()) - 1;
    for (;;) {
        const int tasters = draws.whole(2, 4);
        const Truth truth = mixed ? truths.at(static_cast<std::size_t>(draws.whole(0, known - 1)))
                                  : Truth::Saturating;
        SimulatedBarrel barrel = drawBarrel(drawCourse(truth, draws), tasters, sittings, draws);
        const double ready = trulyReady(barrel);
        if (ready > 0 && ready <= latest) {
            return barrel;
        }
    }
}

}  // namespace

double Calibration::chiSquare() const
{
    double all = 0;
    for (const int count : counts) {
        all += count;
    }
    const double expected = all / bins;
    double sum = 0;
    for (const int count : counts) {
        sum += square(count - expected) / expected;
    }
    return sum;
}

Horizons calibrate(int barrels, std::uint64_t seed)
{
    Draws draws(seed);
    Horizons horizons;
    for (int i = 0; i < barrels; ++i) {
        const int tasters = draws.whole(1, 4);
        const int sittings = draws.whole(0, 8);
        const outlook::CourseModel model = modelFor(static_cast<std::size_t>(tasters));
        const SimulatedBarrel barrel =
            drawBarrel(drawFromPrior(model.prior, draws), tasters, sittings, draws);
        note(horizons, Course(model, barrel.data), barrel, 1.0 / barrels);
    }
    return horizons;
}

TruthErrors foresee(Truth truth, int barrels, std::uint64_t seed)
{
    Draws draws(seed);
    TruthErrors errors;
    double outlook = 0;
    double last = 0;
    double line = 0;
    for (int i = 0; i < barrels; ++i) {
        const int tasters = draws.whole(2, 4);
        const int sittings = draws.whole(3, 8);
        const SimulatedBarrel barrel =
            drawBarrel(drawCourse(truth, draws), tasters, sittings, draws);
        const Course course(modelFor(static_cast<std::size_t>(tasters)), barrel.data);
        note(errors.horizons, course, barrel, 1.0 / barrels);
        const std::vector<SittingMean> means = sittingMeans(barrel.data);
        const double age = barrel.lastAge + monthsAhead.at(threeMonths);
        const double level = barrel.level(age);
        outlook += square(course.levelAt(age).mean() - level);
        last += square(means.back().mean - level);
        line += square(lineThrough(means).at(age) - level);
    }
    errors.outlook = std::sqrt(outlook / barrels);
    errors.lastValue = std::sqrt(last / barrels);
    errors.line = std::sqrt(line / barrels);
    return errors;
}

DateErrors readyDates(bool mixed, int sittings, int barrels, std::uint64_t seed)
{
    constexpr double nearEnough = 0.25;  // the step at which the outlook is asked
    Draws draws(seed);
    std::vector<double> outlook;
    std::vector<double> last;
    std::vector<double> two;
    std::vector<double> line;
    int inside = 0;
    for (int i = 0; i < barrels; ++i) {
        const SimulatedBarrel barrel = drawRising(mixed, sittings, draws);
        const double ready = trulyReady(barrel);
        const Course course(modelFor(barrel.bias.size()), barrel.data);
        const auto [early, middle, late] = foreseenReady(course, barrel.lastAge);
        inside += early <= ready + nearEnough && ready <= late ? 1 : 0;
        const std::vector<SittingMean> means = sittingMeans(barrel.data);
        const auto error = [&](const Line& by) {
            return std::abs(readyBy(by, barrel.lastAge) - ready);
        };
        outlook.push_back(std::abs(middle - ready));
        last.push_back(error({means.back().mean, 0}));
        two.push_back(error(lineThrough({means.end() - 2, means.end()})));
        line.push_back(error(lineThrough(means)));
    }
    return {median(outlook), median(last), median(two), median(line),
            static_cast<double>(inside) / barrels};
}

}  // namespace spile::test
