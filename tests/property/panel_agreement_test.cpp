#include "core/panel/agreement.hpp"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace spile::panel {

namespace {

double anyNumber(int low, int high) { return *rc::gen::inRange(low * 1000, high * 1000) / 1000.0; }

// A table of scores in which targets and judges differ.
Cells anyTable()
{
    const auto targets = *rc::gen::inRange<std::size_t>(2, 9);
    const auto judges = *rc::gen::inRange<std::size_t>(2, 7);
    const auto repeats = *rc::gen::inRange<std::size_t>(1, 4);
    Cells cells(targets, std::vector<std::vector<double>>(judges, std::vector<double>(repeats)));
    for (auto& row : cells) {
        for (auto& cell : row) {
            for (double& score : cell) {
                score = anyNumber(0, 10);
            }
        }
    }
    return cells;
}

// Whether two tables have the same correlations, or both have none.
bool areAlike(const Cells& a, const Cells& b)
{
    const auto first = intraclassOf(anovaOf(a).value());
    const auto second = intraclassOf(anovaOf(b).value());
    if (!first || !second) {
        return first.has_value() == second.has_value();
    }
    const auto near = [](double x, double y) {
        return std::fabs(x - y) <= 1e-7 * (1 + std::fabs(x));
    };
    return near(first->oneWay, second->oneWay) && near(first->oneWayMean, second->oneWayMean) &&
           near(first->agreement, second->agreement) &&
           near(first->agreementMean, second->agreementMean) &&
           near(first->consistency, second->consistency) &&
           near(first->consistencyMean, second->consistencyMean);
}

void shift(Cells& cells, const std::vector<double>& byJudge)
{
    for (auto& row : cells) {
        for (std::size_t j = 0; j < row.size(); ++j) {
            for (double& score : row[j]) {
                score += byJudge[j];
            }
        }
    }
}

}  // namespace

RC_GTEST_PROP(IntraclassCorrelations, StayWhenAllScoresMoveTogether, ())
{
    const Cells cells = anyTable();
    Cells moved = cells;
    shift(moved, std::vector<double>(cells[0].size(), anyNumber(-50, 50)));
    RC_ASSERT(areAlike(cells, moved));
}

RC_GTEST_PROP(IntraclassCorrelations, OfConsistencyStayWhenAJudgeMoves, ())
{
    const Cells cells = anyTable();
    std::vector<double> byJudge(cells[0].size());
    std::generate(byJudge.begin(), byJudge.end(), [] { return anyNumber(-5, 5); });
    Cells moved = cells;
    shift(moved, byJudge);
    const auto before = intraclassOf(anovaOf(cells).value());
    const auto after = intraclassOf(anovaOf(moved).value());
    RC_PRE(before && after);
    RC_ASSERT(std::fabs(before->consistency - after->consistency) < 1e-9);
    RC_ASSERT(std::fabs(before->consistencyMean - after->consistencyMean) <
              1e-9 * (1 + std::fabs(before->consistencyMean)));
}

RC_GTEST_PROP(IntraclassCorrelations, OfAgreementFallWhenOneOfAlikeJudgesMoves, ())
{
    Cells cells = anyTable();
    for (auto& row : cells) {
        std::fill(row.begin(), row.end(), row[0]);
    }
    std::vector<double> byJudge(cells[0].size());
    byJudge[0] = anyNumber(1, 5);
    const auto before = intraclassOf(anovaOf(cells).value());
    shift(cells, byJudge);
    const auto after = intraclassOf(anovaOf(cells).value());
    RC_PRE(before && after);
    RC_ASSERT(std::fabs(before->agreement - 1) < 1e-9);
    RC_ASSERT(after->agreement < 1);
    RC_ASSERT(std::fabs(after->consistency - 1) < 1e-9);
}

RC_GTEST_PROP(IntraclassCorrelations, DoNotKnowTheOrderOfTargetsAndJudges, ())
{
    const Cells cells = anyTable();
    Cells turned = cells;
    std::rotate(turned.begin(), turned.begin() + 1, turned.end());
    std::swap(turned.front(), turned.back());
    for (auto& row : turned) {
        std::rotate(row.begin(), row.begin() + 1, row.end());
        std::swap(row.front(), row.back());
        std::reverse(row.front().begin(), row.front().end());
    }
    RC_ASSERT(areAlike(cells, turned));
}

RC_GTEST_PROP(IntraclassCorrelations, NeverExceedOne, ())
{
    const auto icc = intraclassOf(anovaOf(anyTable()).value());
    RC_PRE(icc.has_value());
    for (const double one : {icc->oneWay, icc->oneWayMean, icc->agreement, icc->agreementMean,
                             icc->consistency, icc->consistencyMean}) {
        RC_ASSERT(one <= 1 + 1e-12);
    }
}

RC_GTEST_PROP(Anova, SharesOutAllSquares, ())
{
    const Cells cells = anyTable();
    const Anova anova = anovaOf(cells).value();
    double all = 0;
    int scores = 0;
    for (const auto& row : cells) {
        for (const auto& cell : row) {
            for (const double score : cell) {
                all += (score - anova.mean) * (score - anova.mean);
                ++scores;
            }
        }
    }
    const double shares =
        anova.targets.sum + anova.judges.sum + anova.interaction.sum + anova.repeats.sum;
    RC_ASSERT(std::fabs(all - shares) < 1e-9 * (1 + all));
    RC_ASSERT(anova.targets.freedom + anova.judges.freedom + anova.interaction.freedom +
                  anova.repeats.freedom ==
              scores - 1);
}

}  // namespace spile::panel
