#pragma once

#include "core/outlook/dictionary.hpp"
#include "core/outlook/mixture.hpp"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

/// The course of one attribute in one barrel, from its scores: a mixture over curve shapes and
/// noises, each of which is linear and normal, so that all of it is exact given the grid.
///
///     score = f(age) + u of the taster + s of the session + e
///     level = f(age) + the reference panel's mean u
///
/// Shapes    see dictionary.hpp. Scores that lie at an end of the line are taken as "there or
///           beyond" (a normal distribution cut off, by expectation propagation); at most one score
///           or session may be wrong, which is weighed beside all being right.
/// Accuracy  exact given the grid but for ends; a grid of twice the density moves the mean of a
///           level by 0.001 in the middle of simulated barrels, by 0.03 in one of twenty
///           (tests/property).
/// Source    linear regression with normal priors: A. Gelman et al., "Bayesian Data Analysis", 3rd
///           ed. 2013, ch. 14; cut-off scores: T. P. Minka, "Expectation propagation for
///           approximate Bayesian inference" (2001); both from memory. The model: worked out for
///           this program.
namespace spile::outlook {

/// A score on the 0-10 line.
struct Scored {
    double age = 0;   // effective months
    int session = 0;  // scores of one sitting share it; any numbers, equal ones side by side
    int taster = 0;   // an index into TasterBelief
    double line = 0;
    bool cut = true;  // whether an end of the line means "there or beyond"

    [[nodiscard]] bool isCut() const { return cut && (line <= lineLow || line >= lineHigh); }
};

/// Part of the beer was replaced: a top-up.
struct Replaced {
    double age = 0;
    double fraction = 0;  // 0 to 1
};

/// What is believed of the tasters in this barrel: each one's bias, with what is their own in it.
struct TasterBelief {
    std::vector<double> mean;
    std::vector<double> covariance;  // square, row by row
    std::vector<double> scatter;     // each one's noise, relative to the usual
    std::vector<double> panel;       // the weights of the reference panel; add to 1

    [[nodiscard]] std::size_t size() const { return mean.size(); }
};
/// Tasters of whom nothing is known, each with the same weight in the panel.
[[nodiscard]] TasterBelief unknownTasters(std::size_t tasters, double variance);

/// How much scores scatter.
struct Noise {
    double median = 0.9;  // of the standard deviation of one score
    double logDeviation = 0.35;
    double sessionShare = 0.5;  // the session's own deviation, relative to that
};

/// That one score or one whole session is wrong.
struct Wrongs {
    double chance = 0;  // of each; 0: not looked for
    double scoreVariance = 9;
    double sessionVariance = 6.25;
};

/// What the level is multiplied from at an age: the shape's two amounts and the added beer's level.
///
/// After a top-up the beer is thinner by its fraction, and the wood goes on giving what it would
/// have given; where it `recovers`, it gives again until the same end (saturating shapes only).
[[nodiscard]] std::array<double, 3> courseRow(const Shape& shape, bool recovers,
                                              std::span<const Replaced> replaced, double age);

/// All that a course is made from.
struct CourseData {
    std::vector<Scored> scores;
    std::vector<Replaced> replaced;  // in order of age
    Belief added{1, 1.5};            // the level of the beer that was added
};

struct CourseModel {
    CoursePrior prior;
    CourseGrid grid;
    Noise noise;
    TasterBelief tasters;
    Wrongs wrongs;
    bool recovers = true;  // a top-up over 5 %: whether the wood may give again, beside not
};

/// What was suspected: nothing, one score (its index) or one session (its number).
struct Suspect {
    enum class What : std::uint8_t { Nothing, Score, Session };
    What what = What::Nothing;
    int which = 0;
    double chance = 0;
};

class Course {
public:
    /// Fit `data`. Deterministic; allocates only in the beginning.
    ///
    /// Requires  ages and lines that are finite, tasters that are in the model, replaced in order.
    Course(const CourseModel& model, const CourseData& data);

    /// The level on the reference panel's scale at an age. `out` is overwritten.
    void levelAt(double age, Mixture& out) const;
    [[nodiscard]] Mixture levelAt(double age) const;

    [[nodiscard]] double logEvidence() const { return logEvidence_; }
    [[nodiscard]] std::size_t parts() const { return weights_.size(); }
    [[nodiscard]] double familyWeight(Family family) const;
    /// What may be wrong, the likeliest first; their chances add to 1.
    [[nodiscard]] std::vector<Suspect> suspects() const { return suspects_; }
    /// The mean of the noise's variance, of a score.
    [[nodiscard]] double noiseVariance() const;

    /// The tasters' biases after this barrel: means and covariance, as in TasterBelief.
    void tasters(std::span<double> mean, std::span<double> covariance) const;

    /// Mean and variance of an amount of the saturating shapes: 0 start, 1 end, 2 log rate.
    [[nodiscard]] Belief saturatingMoment(std::size_t amount) const;

private:
    friend class CourseFit;
    void collapse();
    struct ShapeNow {
        Shape shape;
        bool recovers = false;  // a top-up: the wood gives again
    };
    std::vector<ShapeNow> shapes_;
    std::vector<Replaced> replaced_;
    std::vector<double> panel_;
    std::size_t dimension_ = 0;  // amounts and tasters of a part
    std::size_t amounts_ = 2;
    // Part by part.
    std::vector<double> weights_, noises_, means_, covariances_;
    std::vector<double> slim_;  // mean and covariance of the amounts and the panel's bias
    std::vector<std::uint32_t> shapeOf_;
    std::vector<Suspect> suspects_;
    double logEvidence_ = 0;
};

}  // namespace spile::outlook
