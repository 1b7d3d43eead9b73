#include "core/panel/components.hpp"

#include "core/panel/reduced_design.hpp"

#include <algorithm>
#include <cmath>
#include <set>
#include <string>

namespace spile::panel {

// Of all factors but the largest, together: one dense matrix of that size.
static constexpr int mostOtherLevels = 1000;

static Result<void> checkFactor(const Factor& factor, std::size_t scores)
{
    if (factor.level.size() != scores) {
        return fail(ErrorCode::Malformed, "factor", std::to_string(factor.level.size()),
                    std::to_string(scores));
    }
    for (const int level : factor.level) {
        if (level < 0 || level >= factor.levels) {
            return fail(ErrorCode::OutOfRange, "level", std::to_string(level),
                        "0 to " + std::to_string(factor.levels - 1));
        }
    }
    const std::set<int> used(factor.level.begin(), factor.level.end());
    if (used.size() == scores) {
        return fail(ErrorCode::OutOfRange, "factor", std::to_string(scores),
                    "a level must have two scores");
    }
    return {};
}

static Result<void> checkData(const std::vector<double>& y, const std::vector<Factor>& factors)
{
    if (factors.empty() || y.size() < 3) {
        return fail(ErrorCode::OutOfRange, factors.empty() ? "factors" : "scores",
                    std::to_string(y.size()), ">= 3 scores, >= 1 factor");
    }
    if (!std::all_of(y.begin(), y.end(), [](double value) { return std::isfinite(value); })) {
        return fail(ErrorCode::NotFinite, "score");
    }
    int most = 0;
    long long all = 0;
    for (const Factor& factor : factors) {
        SPILE_TRY(checkFactor(factor, y.size()));
        most = std::max(most, factor.levels);
        all += factor.levels;
    }
    if (all - most > mostOtherLevels) {
        return fail(ErrorCode::OutOfRange, "levels", std::to_string(all - most),
                    "<= " + std::to_string(mostOtherLevels));
    }
    const auto [low, high] = std::minmax_element(y.begin(), y.end());
    if (*high - *low <= 1e-12 * std::max(std::fabs(*low), std::fabs(*high))) {
        return fail(ErrorCode::OutOfRange, "scores", {}, "they must differ");
    }
    return {};
}

namespace {

// Looks for the ratios of the deviations to the residual's with the least criterion, moving one at
// a time. A ratio from 0 to infinity is searched as t = ratio / (1 + ratio).
class Search {
public:
    Search(const ReducedDesign& design, std::size_t factors)
        : design_(design), ratios_(factors, 1), least_(design.criterionOf(ratios_))
    {
    }

    const std::vector<double>& run()
    {
        constexpr int mostSweeps = 200;
        constexpr double settled = 1e-9;
        for (int sweep = 0; sweep < mostSweeps; ++sweep) {
            double moved = 0;
            for (std::size_t f = 0; f < ratios_.size(); ++f) {
                const double before = ratios_[f];
                move(f, sweep == 0);
                moved = std::max(moved, std::fabs(ratios_[f] - before) / (1 + before));
            }
            if (moved < settled) {
                break;
            }
        }
        return ratios_;
    }

private:
    static constexpr double farthest = 0.9999;  // a deviation of 10,000 residuals

    double at(std::size_t f, double t)
    {
        const double kept = ratios_[f];
        ratios_[f] = t / (1 - t);
        const double criterion = design_.criterionOf(ratios_);
        ratios_[f] = kept;
        return criterion;
    }

    void move(std::size_t f, bool everywhere)
    {
        // The first time over the whole range, as there may be more than one valley; then near by.
        double middle = ratios_[f] / (1 + ratios_[f]);
        double reach = 0.05;
        if (everywhere) {
            constexpr int parts = 20;
            reach = farthest / parts;
            double least = at(f, middle);
            for (int i = 0; i <= parts; ++i) {
                if (const double criterion = at(f, i * reach); criterion < least) {
                    least = criterion;
                    middle = i * reach;
                }
            }
        }
        const double t =
            valley(f, std::max(0.0, middle - reach), std::min(farthest, middle + reach));
        // A deviation that is no better than none is none.
        const double none = at(f, 0);
        const double some = at(f, t);
        const bool isNone = none <= some + 1e-10 * std::max(1.0, std::fabs(some));
        if (isNone) {
            ratios_[f] = 0;
            least_ = none;
        } else if (some < least_) {
            ratios_[f] = t / (1 - t);
            least_ = some;
        }
    }

    // The place of the least value in [low, high], by golden sections.
    double valley(std::size_t f, double low, double high)
    {
        constexpr double golden = 0.6180339887498949;
        constexpr double fine = 2e-9;
        double left = high - golden * (high - low);
        double right = low + golden * (high - low);
        double atLeft = at(f, left);
        double atRight = at(f, right);
        while (high - low > fine) {
            if (atLeft <= atRight) {
                high = right;
                right = left;
                atRight = atLeft;
                left = high - golden * (high - low);
                atLeft = at(f, left);
            } else {
                low = left;
                left = right;
                atLeft = atRight;
                right = low + golden * (high - low);
                atRight = at(f, right);
            }
        }
        return (low + high) / 2;
    }

    const ReducedDesign& design_;
    std::vector<double> ratios_;
    double least_;
};

}  // namespace

Result<Components> componentsOf(const std::vector<double>& y, const std::vector<Factor>& factors)
{
    SPILE_TRY(checkData(y, factors));
    const ReducedDesign design(y, factors);
    Components found = design.componentsAt(Search(design, factors.size()).run());
    // At the end of what is searched, the factors explain all there is.
    if (std::any_of(found.deviations.begin(), found.deviations.end(),
                    [&](double deviation) { return !(deviation < 5000 * found.residual); })) {
        return fail(ErrorCode::OutOfRange, "residual", std::to_string(found.residual),
                    "scores must leave one");
    }
    return found;
}

double Components::covariance(LevelAt a, LevelAt b) const
{
    const auto weightsOf = [this](LevelAt at) {
        if (at.factor == errors.largest) {
            return errors.weights[at.level];
        }
        std::vector<double> one(errors.size);
        one[errors.start[at.factor] + at.level] = 1;
        return one;
    };
    const std::vector<double> ofA = weightsOf(a);
    const std::vector<double> ofB = weightsOf(b);
    double sum = 0;
    for (std::size_t i = 0; i < errors.size; ++i) {
        for (std::size_t j = 0; j < errors.size && ofA[i] != 0; ++j) {
            sum += ofA[i] * errors.covariance[i * errors.size + j] * ofB[j];
        }
    }
    const bool isSame = a.factor == b.factor && a.level == b.level;
    return sum + (isSame && a.factor == errors.largest ? errors.own[a.level] : 0);
}

}  // namespace spile::panel
