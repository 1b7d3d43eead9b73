#include "core/panel/agreement.hpp"

#include "core/panel/least_squares.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <string>

namespace spile::panel {

static Result<void> checkCells(const Cells& cells)
{
    if (cells.size() < 2) {
        return fail(ErrorCode::OutOfRange, "targets", std::to_string(cells.size()), ">= 2");
    }
    const std::size_t judges = cells[0].size();
    if (judges < 2) {
        return fail(ErrorCode::OutOfRange, "judges", std::to_string(judges), ">= 2");
    }
    const std::size_t repeats = cells[0][0].size();
    if (repeats < 1) {
        return fail(ErrorCode::OutOfRange, "repeats", "0", ">= 1");
    }
    for (const auto& row : cells) {
        if (row.size() != judges) {
            return fail(ErrorCode::Malformed, "judges", std::to_string(row.size()),
                        std::to_string(judges));
        }
        for (const auto& cell : row) {
            if (cell.size() != repeats) {
                return fail(ErrorCode::Malformed, "repeats", std::to_string(cell.size()),
                            std::to_string(repeats));
            }
            if (!std::all_of(cell.begin(), cell.end(), [](double y) { return std::isfinite(y); })) {
                return fail(ErrorCode::NotFinite, "score");
            }
        }
    }
    return {};
}

static double square(double x) { return x * x; }

// The sum of squares of all that is left when a cell's mean and what makes it are taken away.
static void sumWithin(const Cells& cells, const std::vector<std::vector<double>>& cellMeans,
                      Anova& anova)
{
    for (std::size_t i = 0; i < cells.size(); ++i) {
        for (std::size_t j = 0; j < cells[i].size(); ++j) {
            const double expected = anova.targetMeans[i] + anova.judgeMeans[j] - anova.mean;
            anova.interaction.sum += anova.repeatCount * square(cellMeans[i][j] - expected);
            for (const double y : cells[i][j]) {
                anova.repeats.sum += square(y - cellMeans[i][j]);
            }
        }
    }
}

Result<Anova> anovaOf(const Cells& cells)
{
    SPILE_TRY(checkCells(cells));
    Anova anova;
    const int n = anova.targetCount = static_cast<int>(cells.size());
    const int k = anova.judgeCount = static_cast<int>(cells[0].size());
    const int r = anova.repeatCount = static_cast<int>(cells[0][0].size());

    std::vector<std::vector<double>> cellMeans;
    for (const auto& row : cells) {
        cellMeans.emplace_back();
        std::transform(row.begin(), row.end(), std::back_inserter(cellMeans.back()), meanOf);
        anova.targetMeans.push_back(meanOf(cellMeans.back()));
    }
    anova.mean = meanOf(anova.targetMeans);
    anova.judgeMeans.assign(cells[0].size(), 0);
    for (const auto& row : cellMeans) {
        for (std::size_t j = 0; j < row.size(); ++j) {
            anova.judgeMeans[j] += row[j] / n;
        }
    }
    for (const double mean : anova.targetMeans) {
        anova.targets.sum += k * r * square(mean - anova.mean);
    }
    for (const double mean : anova.judgeMeans) {
        anova.judges.sum += n * r * square(mean - anova.mean);
    }
    sumWithin(cells, cellMeans, anova);
    anova.targets.freedom = n - 1;
    anova.judges.freedom = k - 1;
    anova.interaction.freedom = (n - 1) * (k - 1);
    anova.repeats.freedom = n * k * (r - 1);
    return anova;
}

Result<IntraclassCorrelations> intraclassOf(const Anova& anova)
{
    // The paper's names: mean squares between targets, within targets, of judges, of the error.
    const double bms = anova.targets.mean();
    const double jms = anova.judges.mean();
    const double ems = anova.interaction.mean();
    const double wms = (anova.judges.sum + anova.interaction.sum) /
                       (anova.judges.freedom + anova.interaction.freedom);
    const double n = anova.targetCount;
    const double k = anova.judgeCount;

    // Rounding alone makes targets differ by this much.
    const double rounding =
        16 * std::numeric_limits<double>::epsilon() * (std::fabs(anova.mean) + std::sqrt(wms));
    const double meanBelow = bms + (jms - ems) / n;
    if (!(bms > n * k * square(rounding)) || !(meanBelow > 0)) {
        return fail(ErrorCode::OutOfRange, "targets", std::to_string(bms), "they must differ");
    }
    IntraclassCorrelations icc;
    icc.oneWay = (bms - wms) / (bms + (k - 1) * wms);
    icc.oneWayMean = (bms - wms) / bms;
    icc.agreement = (bms - ems) / (bms + (k - 1) * ems + k * (jms - ems) / n);
    icc.agreementMean = (bms - ems) / meanBelow;
    icc.consistency = (bms - ems) / (bms + (k - 1) * ems);
    icc.consistencyMean = (bms - ems) / bms;
    return icc;
}

}  // namespace spile::panel
