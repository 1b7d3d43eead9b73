#pragma once

#include "core/wood/extraction.hpp"

#include <array>
#include <cstdint>
#include <string_view>
#include <vector>

/// The shapes that the course of an attribute may have, and what is believed of their amounts
/// before anything is tasted. Levels are on the 0-10 line, rates in 1/month of effective age.
namespace spile::outlook {

/// A normal distribution.
struct Belief {
    double mean = 0;
    double deviation = 1;
};

enum class Family : std::uint8_t { Saturating, Linear, RiseAndFall, Delayed };
inline constexpr std::size_t families = 4;

/// What is believed of an attribute's course in a barrel of one kind.
///
/// Source    the values for beer in spirit barrels: assumed; the cellar's own finished barrels
///           teach better ones (learning.hpp).
struct CoursePrior {
    Belief start{1, 0.8};          // how the beer tastes as it goes in
    Belief end{6, 1.7};            // where it tends to
    Belief logRate{-2.1202, 0.6};  // of the saturating shape; e^-2.1202 = 0.12
    Belief linearStart{1, 1};
    Belief slopePerYear{3, 1.7};
    Belief height{5.5, 1.7};       // of rise and fall
    Belief logRise{-1.6094, 0.5};  // 0.2
    Belief logFall{-3.5066, 0.5};  // 0.03
    std::array<double, families> weight{0.4, 0.11, 0.26, 0.23};
};

/// Return the prior of a course from `start` to `end` with the usual spreads: the linear, peaked
/// and delayed shapes are stated from the same two levels.
[[nodiscard]] CoursePrior priorBetween(double start, double end, double rate);

/// How fine the grid of shapes is.
struct CourseGrid {
    int ratePoints = 15;
    double rateReach = 2.7;  // standard deviations of logRate to either side
    int noisePoints = 5;
    double noiseReach = 2.5;
};

/// One shape with its rates given: the level is basis(age) times two amounts.
struct Shape {
    Family family = Family::Saturating;
    double first = 0;   // rate; -; rise; middle
    double second = 0;  // -; -; fall; width
    double logPrior = 0;
    std::array<Belief, 2> amounts;

    [[nodiscard]] wood::Basis basis(double age) const;
};

/// All shapes of a prior; their prior weights add to 1. Families of weight 0 are left out.
[[nodiscard]] std::vector<Shape> shapesOf(const CoursePrior& prior, const CourseGrid& grid);

/// Points of a standard normal from -reach to reach with weights proportional to its density, that
/// add to 1. Requires points >= 1; one point lies in the middle.
struct GridPoint {
    double z = 0;
    double weight = 1;
};
[[nodiscard]] std::vector<GridPoint> normalGrid(int points, double reach);

}  // namespace spile::outlook
