#pragma once

#include <algorithm>

namespace spile::panel {

/// The ladder: a score is one of nine steps, 1 to 9, read as points on the line from 0 to 10.
inline constexpr int lowestScore = 1;
inline constexpr int highestScore = 9;
inline constexpr double pointsPerStep = 1.25;
inline constexpr double lineLength = (highestScore - lowestScore) * pointsPerStep;

/// The variance of what rounding to a step leaves: an even error of up to half a step.
inline constexpr double stepVariance = pointsPerStep * pointsPerStep / 12;

/// Return where a score stands on the line. Requires 1 <= score <= 9.
[[nodiscard]] constexpr double lineOf(int score) { return (score - lowestScore) * pointsPerStep; }

/// Return where a point of the line stands on the ladder, between the steps too; what lies beyond
/// an end counts as lying there.
[[nodiscard]] constexpr double scoreOfLine(double line)
{
    return lowestScore + std::clamp(line, 0.0, lineLength) / pointsPerStep;
}

/// Whether a score stands at an end of the line, where it means "there or beyond".
[[nodiscard]] constexpr bool isEnd(int score)
{
    return score <= lowestScore || score >= highestScore;
}

}  // namespace spile::panel
