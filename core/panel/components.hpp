#pragma once

#include "core/base/result.hpp"

#include <cstddef>
#include <vector>

/// Of what the differences among scores are made: so much from what was in the glass, so much from
/// who tasted it, and the rest.
///
///     y = mean + sum over the factors of the effect of the score's level + residual
///
/// Each factor's effects, and the residuals, are drawn from normal distributions of their own.
namespace spile::panel {

/// Something by which scores are grouped, as the taster or the glass.
struct Factor {
    std::vector<int> level;  // of each score: 0 to levels - 1; a level may have no score
    int levels = 0;
};

/// A level of a factor.
struct LevelAt {
    std::size_t factor = 0;
    std::size_t level = 0;
};

/// What was found. Effects are the best linear unbiased predictions.
struct Components {
    double mean = 0;
    double residual = 0;             // standard deviation
    std::vector<double> deviations;  // of each factor's effects; exactly 0 where none are seen
    std::vector<std::vector<double>> effects;  // by factor and level
    double criterion = 0;  // -2 log of the restricted likelihood, with its constants

    /// Return the covariance of the errors of two predicted effects.
    [[nodiscard]] double covariance(LevelAt a, LevelAt b) const;

    // How covariance() knows. An effect's error is a sum over the other factors' levels and the
    // mean, by weights, and for the largest factor something of the level's own.
    struct Errors {
        std::size_t largest = 0;                   // the factor that was absorbed
        std::vector<std::size_t> start;            // of each other factor among the others' levels
        std::size_t size = 0;                      // their number, the mean included
        std::vector<double> covariance;            // of the others and the mean; size x size
        std::vector<std::vector<double>> weights;  // of each level of the largest factor
        std::vector<double> own;                   // variance
    };
    Errors errors;
};

/// Return the standard deviations that make the scores likeliest by restricted maximum likelihood,
/// and the effects that they give.
///
/// Requires  that no two factors group the scores alike.
/// Shape     `y` of n scores; each factor with n levels; any design, also with missing scores.
/// Range     at least 1 factor; but for the largest, factors with 1,000 levels in all. A factor of
///           one level is told from nothing and gets 0.
/// Errors    OutOfRange without factors, for fewer than 3 scores, for a level out of range, for too
///           many levels, for a factor whose levels have one score each, and if scores do not
///           differ or leave no residual; Malformed for a factor of another length; NotFinite.
/// Accuracy  deviations to 1e-6 relative to the residual, of the minimum found by moving one
///           deviation at a time; on published data to all printed digits (tests/reference).
/// Limits    the largest factor is absorbed level by level, so that it costs only once; each trial
///           costs the cube of the other factors' levels.
/// Source    D. Bates et al., "Fitting linear mixed-effects models using lme4", Journal of
///           Statistical Software 67 (2015) 1, section 3 (the criterion); C. R. Henderson,
///           Biometrics 31 (1975) 423-447 (the predictions); both from memory.
[[nodiscard]] Result<Components> componentsOf(const std::vector<double>& y,
                                              const std::vector<Factor>& factors);

}  // namespace spile::panel
