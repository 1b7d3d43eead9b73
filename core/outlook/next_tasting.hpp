#pragma once

#include "core/outlook/readiness.hpp"

#include <optional>
#include <span>
#include <vector>

/// When a tasting is worth its beer and its oxygen: as soon as it is likely enough to end in
/// pulling, and before the chance of having gone too far has grown much.
///
/// Accuracy  measured on simulated barrels (tests/bench/outlook_tables): half the tastings of a
///           monthly habit with the same model; .860 of the barrels pulled inside wide windows
///           beside .875, and .768 beside .807 of tight ones.
/// Source    worked out and measured for this program; the decision that it approximates is
///           "optimal stopping with costly information" (a textbook problem; from memory).
namespace spile::outlook {

/// What is foreseen of one windowed attribute, week by week from now on.
struct Foreseen {
    LineWindow window;
    bool rising = true;
    double sittingVariance = 0.5;  // of the mean of one sitting's scores about the level
    std::vector<double> mean, variance;
    std::vector<Standing> standing;

    void resize(std::size_t weeks);
    void set(std::size_t week, const Mixture& level);
};

struct TastingRule {
    double enough = 0.85;   // the chance of all inside at which a barrel is pulled
    double atBest = 0.7;    // the same where no better time is foreseen
    double decides = 0.45;  // the chance of ending in a pull at which a tasting is worth it
    double mayPass = 0.05;  // by how much the chance that its time has gone by may grow
    std::size_t leastWeeks = 3;
    std::size_t mostWeeks = 22;
};

struct Decision {
    bool pull = false;
    bool pastSaving = false;  // probably too far already: pull, or another target
    double enough = 0.8;      // the chance that was asked for
    std::size_t week = 0;     // of the next tasting, from now on
    double decides = 0;       // the chance that it ends in pulling
    enum class Why : std::uint8_t { Decides, BeforeTooFar, LooksAgain } why = Why::LooksAgain;
};

/// Return what to do now, and when to taste next if nothing is pulled.
///
/// Shape     each attribute foreseen for the same number of weeks, at least rule.mostWeeks + 1, the
///           first of them now. The more weeks, the better it is known whether better ones come.
/// Range     one attribute or more.
[[nodiscard]] Decision decide(std::span<const Foreseen> attributes, const TastingRule& rule);

/// The chance that a tasting in that week would let all be pulled: how often the chance of all
/// inside would then be at least `enough`.
[[nodiscard]] double chanceToDecide(std::span<const Foreseen> attributes, std::size_t week,
                                    double enough);

}  // namespace spile::outlook
