#pragma once

#include "core/panel/cholesky.hpp"
#include "core/panel/components.hpp"

#include <map>
#include <optional>
#include <vector>

/// The equations of a mixed model with its largest factor absorbed. Private to components.cpp.
///
/// A level of the largest factor with n scores shrinks by the same rule as all levels with n
/// scores, so their sums of squares are kept together: a trial of other deviations then costs the
/// same for ten levels and for ten thousand.
namespace spile::panel {

class ReducedDesign {
public:
    /// Requires what componentsOf() has checked. `y` is taken relative to its mean.
    ReducedDesign(const std::vector<double>& y, const std::vector<Factor>& factors);

    /// The equations for given deviations, each relative to the residual's.
    struct Trial {
        std::vector<double> scale;  // of each of the others' levels; 1 for the mean
        Cholesky factor;
        std::vector<double> solution;  // the others' effects and the mean
        double squares = 0;            // penalised and restricted
        double logDeterminant = 0;
    };
    [[nodiscard]] std::optional<Trial> trialOf(const std::vector<double>& ratios) const;
    /// The criterion of a trial; infinite where the equations have no solution.
    [[nodiscard]] double criterionOf(const std::vector<double>& ratios) const;

    [[nodiscard]] Components componentsAt(const std::vector<double>& ratios) const;
    [[nodiscard]] double totalSquares() const { return squares_; }

private:
    struct Level {  // of the largest factor
        int scores = 0;
        double sum = 0;
        std::vector<std::size_t> others;  // each score's levels of the other factors and the mean
    };
    struct Group {  // all levels with equally many scores
        int levels = 0;
        double squares = 0;
        std::vector<double> cross;   // sum of c c', c a level's counts of the others
        std::vector<double> pulled;  // sum of c times the level's sum of y
    };

    void arrange(const std::vector<double>& y, const std::vector<Factor>& factors);
    void gather(const std::vector<double>& y);
    [[nodiscard]] std::vector<double> countsOf(const Level& level) const;
    void addAbsorbed(const Trial& trial, double ratio, double variance, Components& found) const;

    double mean_ = 0;
    std::size_t scores_ = 0, largest_ = 0, size_ = 1;
    std::vector<std::size_t> start_;     // of each factor among the others; unused for the largest
    std::vector<std::size_t> factorOf_;  // of each of the others; the mean's is factors.size()
    std::vector<std::vector<std::size_t>> othersOf_;  // by score
    std::vector<Level> levels_;
    std::map<int, Group> groups_;
    std::vector<double> cross_, pulled_;  // of the others among themselves and with y
    double squares_ = 0;
};

}  // namespace spile::panel
