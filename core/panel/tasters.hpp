#pragma once

#include "core/base/result.hpp"
#include "core/panel/line.hpp"

#include <cstdint>
#include <optional>
#include <vector>

/// What the tasters of a cellar are like, each beside the others.
///
/// Words     a beer: what one barrel held at one sitting; all its glasses are the same. A taster is
///           compared only on beers that others tasted too; the expected score of such a beer is
///           what the others' scores of it, less their biases, foretell.
/// Limits    a taster is measured against the panel, so one who is far off moves the rest a little
///           the other way: by his share in it. Scores at an end of the line are taken as they are,
///           which narrows the spread and the gain of a panel that is often there. Scores of
///           repeats count as independent.
namespace spile::panel {

/// One score of one taster. Numbers name things: any will do.
struct Score {
    int taster = 0;
    int attribute = 0;
    int session = 0;
    int barrel = 0;
    int repeat = 0;     // which glass of that beer: blind repeats differ in nothing else
    double months = 0;  // when, from any beginning
    double line = 0;    // 0 to 10
};

/// A number and its standard error.
struct Measured {
    double value = 0;
    double error = 0;
};

/// How much a taster's scores scatter, and the others' beside it, found in the same way.
struct Spread {
    double deviation = 0;
    int freedom = 0;
    double others = 0;
    int othersFreedom = 0;  // 0: there are none to compare with
    bool fromRepeats = false;
};

/// One taster on one attribute. What there are too few scores for is missing.
struct TasterOnAttribute {
    int attribute = 0;
    int scores = 0;
    int beers = 0;                 // tasted by others too
    std::optional<Measured> bias;  // against the panel's mean; drawn towards 0 while unsure
    std::optional<Spread> spread;  // of blind repeats alone from 5 on, else about the expected
    std::optional<Measured> gain;  // 1: uses the line as the others do; 0.5: half of it
    std::optional<Measured> driftPerYear;  // of the bias
    std::optional<Measured> latest;        // how far the latest sitting lay off the earlier ones

    /// The standardised mean residual of the latest sitting.
    [[nodiscard]] std::optional<double> latestStandardised() const
    {
        return latest ? std::optional(latest->value / latest->error) : std::nullopt;
    }
};

enum class AdviceKind : std::uint8_t {
    TooFew,           ///< nothing can be said before `beers` more have been tasted with others
    Steady,           ///< none of the below
    ReadsHigh,        ///< bias [points]
    ReadsLow,         ///< bias [points]
    Wide,             ///< scatters more than the others: times theirs
    NarrowRange,      ///< gain
    WideRange,        ///< gain
    Drifting,         ///< points a year
    OutOfLineLately,  ///< the latest sitting [points]; not said of one who drifts
};

/// What to tell a taster, and why. The attribute is the worst one.
struct Advice {
    AdviceKind kind{};
    std::optional<int> attribute;
    Measured measured;  // of Wide the error is relative
    double limit = 0;   // that was passed
    int beers = 0;      // on which it rests; of TooFew: how many more
};

/// When an advice is given: a value beyond its limit, and beyond half of it by so many standard
/// errors, be it one attribute's or the mean of all. The limits: common practice, no source. The
/// gain: P. M. Brockhoff and I. M. Skovgaard, "Modelling individual differences between assessors
/// in sensory evaluations", Food Quality and Preference 5 (1994) 215-224 (memory).
inline constexpr int beersNeeded = 10;
inline constexpr int repeatsNeeded = 5;
inline constexpr double biasLimit = pointsPerStep;
inline constexpr double wideLimit = 1.5;
inline constexpr double narrowGain = 0.6;
inline constexpr double wideGain = 1.6;
inline constexpr double driftLimit = pointsPerStep;
inline constexpr double latestLimit = pointsPerStep;
inline constexpr double sureOfOne = 3;    // standard errors, of the worst attribute
inline constexpr double sureOfAll = 2.5;  // of the mean of all attributes
inline constexpr double haloShare = 0.5;  // correlation of a taster's errors among attributes

struct TasterReport {
    int taster = 0;
    int scores = 0;
    int beers = 0;  // of the attribute that was tasted most
    std::vector<TasterOnAttribute> attributes;
    std::vector<Advice> advice;  // at least one; TooFew and Steady stand alone
};

/// Whether the panel's agreement on an attribute can be told.
enum class Judgement : std::uint8_t {
    Judged,
    TooFew,              ///< fewer than 2 tasters or 5 beers that two or more tasted
    SamplesDoNotDiffer,  ///< the beers do not differ beyond chance: agreement cannot be judged
    NothingScatters,     ///< the tasters differ in nothing but their levels
};

/// How far the panel agrees on an attribute: the share of the beers in the variance of scores.
struct Agreement {
    double one = 0;     // of one taster's score: as the intraclass correlation (2,1)
    double ofMean = 0;  // of the mean of `tasters` scores
    int tasters = 0;    // that taste a beer, on average
};

/// The panel on one attribute.
struct PanelOnAttribute {
    int attribute = 0;
    Judgement judgement{};
    int tasters = 0;
    int beers = 0;
    // Standard deviations; missing if TooFew or NothingScatters, or if all scores are the same.
    struct Deviations {
        double beers = 0, tasters = 0, residual = 0;
    };
    std::optional<Deviations> deviations;
    std::optional<Agreement> agreement;   // only if Judged
    std::optional<double> repeatability;  // deviation between blind repeats, from 5 on
};

struct PanelReport {
    std::vector<PanelOnAttribute> attributes;  // by number
    std::vector<TasterReport> tasters;         // by number
};

/// Return what the scores tell of the panel and of each taster.
///
/// Shape     any number of scores in any order, which changes nothing.
/// Errors    NotFinite; OutOfRange for a line outside [0, 10]; Conflict if a taster scored the same
///           attribute of the same glass twice.
/// Accuracy  none claimed; simulated tasters get the advice they were made for (tests/unit).
/// Source    bias, agreement, repeatability and what they are told from: ISO 11132:2021 and ISO
///           5492:2008 with Amd 1:2016, in our words; the intraclass correlation: Shrout and Fleiss
///           1979 (agreement.hpp); whether beers differ: the likelihood ratio with a variance at
///           its bound, S. G. Self and K.-Y. Liang, Journal of the American Statistical Association
///           82 (1987) 605-610 (memory); the expected score: regression calibration, R. J. Carroll
///           et al., "Measurement Error in Nonlinear Models", 2nd ed. 2006, ch. 4 (memory).
[[nodiscard]] Result<PanelReport> panelReportOf(std::vector<Score> scores);

}  // namespace spile::panel
