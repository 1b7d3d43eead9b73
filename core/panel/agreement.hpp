#pragma once

#include "core/base/result.hpp"

#include <vector>

/// How far judges agree who have all scored the same targets.
namespace spile::panel {

/// The scores by target, judge and repeat: cells[target][judge][repeat].
using Cells = std::vector<std::vector<std::vector<double>>>;

struct SumOfSquares {
    double sum = 0;
    int freedom = 0;

    [[nodiscard]] double mean() const { return freedom > 0 ? sum / freedom : 0; }
};

/// What the scores' differences are made of.
struct Anova {
    int targetCount = 0, judgeCount = 0, repeatCount = 0;
    double mean = 0;
    std::vector<double> targetMeans, judgeMeans;
    SumOfSquares targets, judges;
    SumOfSquares interaction;  // the error, where nothing was repeated
    SumOfSquares repeats;      // within the cells; without freedom where nothing was repeated
};

/// Return the two-way analysis of variance of a full table.
///
/// Shape     at least 2 targets, each with the same >= 2 judges, each with the same >= 1 repeats.
/// Errors    OutOfRange for fewer targets, judges or repeats; Malformed for rows or cells of
///           unequal size; NotFinite.
/// Source    W. G. Cochran and G. M. Cox, "Experimental Designs" (from memory).
[[nodiscard]] Result<Anova> anovaOf(const Cells& cells);

/// The six intraclass correlations. One score each, and the mean of all judges' scores; where
/// cells are repeated, a score is the mean of a cell.
struct IntraclassCorrelations {
    double oneWay = 0, oneWayMean = 0;        // (1,1) (1,k): every target had other judges
    double agreement = 0, agreementMean = 0;  // (2,1) (2,k): judges' levels count as disagreement
    double consistency = 0, consistencyMean = 0;  // (3,1) (3,k): they do not
};

/// Return the intraclass correlations of an analysis of variance.
///
/// Range     at most 1; below 0 where targets differ less than chance would have it.
/// Errors    OutOfRange if the targets do not differ, or so little that a mean's correlation has
///           no value: agreement cannot be judged on samples that do not differ.
/// Source    P. E. Shrout and J. L. Fleiss, "Intraclass correlations: uses in assessing rater
///           reliability", Psychological Bulletin 86 (1979) 420-428.
[[nodiscard]] Result<IntraclassCorrelations> intraclassOf(const Anova& anova);

}  // namespace spile::panel
