#include "core/outlook/learning.hpp"

#include <cmath>

namespace spile::outlook {

namespace {

constexpr double meanWeight = 2;  // of what was believed, in barrels
constexpr double deviationWeight = 4;

double square(double x) { return x * x; }

Belief taughtBelief(const Belief& before, std::span<const Shown> barrels, Belief Shown::*which)
{
    const auto count = static_cast<double>(barrels.size());
    double sum = meanWeight * before.mean;
    for (const Shown& shown : barrels) {
        sum += (shown.*which).mean;
    }
    const double mean = sum / (meanWeight + count);
    double squares =
        deviationWeight * square(before.deviation) + meanWeight * square(mean - before.mean);
    for (const Shown& shown : barrels) {
        squares += square((shown.*which).deviation) + square((shown.*which).mean - mean);
    }
    const double deviation = std::sqrt(squares / (deviationWeight + count + 1));
    return {mean, deviation * std::sqrt(1 + 1 / (count + meanWeight))};
}

}  // namespace

Lesson firstLesson(const CoursePrior& usual)
{
    return {{0, usual.start.deviation}, {0, usual.end.deviation}, {0, usual.logRate.deviation}, 0};
}

CoursePrior applied(const CoursePrior& usual, const Lesson& lesson)
{
    CoursePrior prior =
        priorBetween(usual.start.mean + lesson.start.mean, usual.end.mean + lesson.end.mean,
                     std::exp(usual.logRate.mean + lesson.logRate.mean));
    prior.start.deviation = lesson.start.deviation;
    prior.linearStart.deviation = lesson.start.deviation;
    prior.end.deviation = lesson.end.deviation;
    prior.height.deviation = lesson.end.deviation;
    prior.logRate.deviation = lesson.logRate.deviation;
    prior.weight = usual.weight;
    return prior;
}

Shown shownBy(const Course& course, const CoursePrior& usual)
{
    Shown shown{course.saturatingMoment(0), course.saturatingMoment(1), course.saturatingMoment(2)};
    shown.start.mean -= usual.start.mean;
    shown.end.mean -= usual.end.mean;
    shown.logRate.mean -= usual.logRate.mean;
    return shown;
}

Lesson taught(const Lesson& before, std::span<const Shown> barrels)
{
    if (barrels.empty()) {
        return before;
    }
    return {taughtBelief(before.start, barrels, &Shown::start),
            taughtBelief(before.end, barrels, &Shown::end),
            taughtBelief(before.logRate, barrels, &Shown::logRate),
            static_cast<int>(barrels.size())};
}

}  // namespace spile::outlook
