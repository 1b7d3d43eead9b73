#include "core/outlook/dictionary.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace spile::outlook {

namespace {

constexpr int peakPoints = 5;
constexpr double peakReach = 2;
constexpr double fallBelowRise = 0.9;  // closer together the two rates are hardly told apart
constexpr std::array middles = {4.0, 6.5, 9.0, 11.5, 14.0};
constexpr std::array widths = {1.2, 2.2, 3.5};

// Adds the shapes of one family, whose weights are relative, with the family's weight.
void addFamily(std::vector<Shape>& all, std::vector<Shape> family, double weight)
{
    if (weight <= 0) {
        return;
    }
    const double sum = std::accumulate(
        family.begin(), family.end(), 0.0,
        [](double so, const Shape& shape) { return so + std::exp(shape.logPrior); });
    for (Shape& shape : family) {
        shape.logPrior += std::log(weight / sum);
        all.push_back(shape);
    }
}

std::vector<Shape> saturating(const CoursePrior& prior, const CourseGrid& grid)
{
    std::vector<Shape> shapes;
    for (const GridPoint& point : normalGrid(grid.ratePoints, grid.rateReach)) {
        shapes.push_back({Family::Saturating,
                          std::exp(prior.logRate.mean + point.z * prior.logRate.deviation),
                          0,
                          std::log(point.weight),
                          {prior.start, prior.end}});
    }
    return shapes;
}

std::vector<Shape> rising(const CoursePrior& prior)
{
    std::vector<Shape> shapes;
    const std::vector<GridPoint> grid = normalGrid(peakPoints, peakReach);
    for (const GridPoint& rise : grid) {
        const double up = std::exp(prior.logRise.mean + rise.z * prior.logRise.deviation);
        for (const GridPoint& fall : grid) {
            const double down = std::exp(prior.logFall.mean + fall.z * prior.logFall.deviation);
            if (down <= fallBelowRise * up) {
                shapes.push_back({Family::RiseAndFall,
                                  up,
                                  down,
                                  std::log(rise.weight * fall.weight),
                                  {prior.start, prior.height}});
            }
        }
    }
    return shapes;
}

std::vector<Shape> delayed(const CoursePrior& prior)
{
    std::vector<Shape> shapes;
    for (const double middle : middles) {
        for (const double width : widths) {
            shapes.push_back({Family::Delayed, middle, width, 0, {prior.start, prior.end}});
        }
    }
    return shapes;
}

}  // namespace

CoursePrior priorBetween(double start, double end, double rate)
{
    constexpr double slopeShare = 0.6;   // of the way, in the first year
    constexpr double heightShare = 1.1;  // a peak passes a little beyond
    constexpr double leastHeight = 2;    // what falls in the end may have risen first
    CoursePrior prior;
    const double way = end - start;
    prior.start.mean = start;
    prior.linearStart.mean = start;
    prior.end.mean = end;
    prior.logRate.mean = std::log(rate);
    prior.slopePerYear.mean = slopeShare * way;
    prior.height.mean = std::max(heightShare * way, leastHeight);
    return prior;
}

wood::Basis Shape::basis(double age) const
{
    switch (family) {
        case Family::Saturating:
            return wood::saturatingBasis(first, age);
        case Family::Linear:
            return wood::linearBasis(age);
        case Family::RiseAndFall:
            return wood::risingFallingBasis(first, second, age);
        case Family::Delayed:
            return wood::delayedBasis(first, second, age);
    }
    return {};
}

std::vector<Shape> shapesOf(const CoursePrior& prior, const CourseGrid& grid)
{
    const auto weightOf = [&](Family family) {
        return prior.weight.at(static_cast<std::size_t>(family));
    };
    std::vector<Shape> all;
    addFamily(all, saturating(prior, grid), weightOf(Family::Saturating));
    addFamily(all, {{Family::Linear, 0, 0, 0, {prior.linearStart, prior.slopePerYear}}},
              weightOf(Family::Linear));
    addFamily(all, rising(prior), weightOf(Family::RiseAndFall));
    addFamily(all, delayed(prior), weightOf(Family::Delayed));
    const double sum = std::accumulate(
        all.begin(), all.end(), 0.0,
        [](double so, const Shape& shape) { return so + std::exp(shape.logPrior); });
    for (Shape& shape : all) {
        shape.logPrior -= std::log(sum);
    }
    return all;
}

std::vector<GridPoint> normalGrid(int points, double reach)
{
    std::vector<GridPoint> grid;
    grid.reserve(static_cast<std::size_t>(points));
    double sum = 0;
    for (int i = 0; i < points; ++i) {
        const double z = points == 1 ? 0 : reach * (2.0 * i / (points - 1) - 1);
        grid.push_back({z, std::exp(-z * z / 2)});
        sum += grid.back().weight;
    }
    for (GridPoint& point : grid) {
        point.weight /= sum;
    }
    return grid;
}

}  // namespace spile::outlook
