#pragma once

#include "core/outlook/next_tasting.hpp"
#include "tests/support/simulated_barrels.hpp"

#include <string>
#include <vector>

/// Many simulated barrels, each tasted and pulled by a rule: how often they end inside their
/// windows, and how many tastings that took.
namespace spile::test {

struct Aim {
    double start, end, rate;  // medians of what the model believes
    outlook::LineWindow window;
    bool rising;
};

/// Oak, vanilla and the heat of the spirit, two tasters whose biases are known well.
struct PullingSetting {
    std::vector<Aim> aims;
    double trueRateRatio = 1;  // how much faster the barrels really are than is believed
    bool fillDay = true;       // a tasting of the beer as it goes in, which costs nothing
    int barrels = 2000;
    std::uint64_t seed = 3;
};
[[nodiscard]] PullingSetting wideWindows();
[[nodiscard]] PullingSetting tightWindows();

enum class Policy : std::uint8_t {
    RawMonthly,    // monthly from the sixth month, pulled when the raw means lie inside
    ModelMonthly,  // monthly from the sixth month, pulled by the model
    Rule           // dates and pulling by outlook::decide()
};

struct PullingResult {
    double inside = 0, early = 0, late = 0;  // shares of the barrels
    double tastings = 0;                     // mean, the fill day's not counted
    int tastings90 = 0;                      // of ten barrels, nine need at most so many
    double delayMonths = 0;                  // from the window's beginning to pulling, if inside
};
[[nodiscard]] PullingResult pullBarrels(const PullingSetting& setting, Policy policy,
                                        const outlook::TastingRule& rule);

}  // namespace spile::test
