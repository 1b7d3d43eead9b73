#pragma once

#include "core/outlook/course.hpp"

#include <span>
#include <vector>

/// What finished barrels teach of the courses to come: by how much they lay off what is usual.
///
/// Source    empirical Bayes by expectation and maximisation: A. P. Dempster, N. M. Laird and D. B.
///           Rubin, Journal of the Royal Statistical Society B 39 (1977) 1-38 (from memory). The
///           weights of what was believed before: assumed.
namespace spile::outlook {

/// What is believed of a barrel's start, end and rate, as differences from the usual prior.
struct Lesson {
    Belief start, end, logRate;
    int barrels = 0;  // that taught it
};

/// The lesson of a prior that nothing has taught: no difference, its own deviations.
[[nodiscard]] Lesson firstLesson(const CoursePrior& usual);

/// The prior that a lesson makes of the usual one.
[[nodiscard]] CoursePrior applied(const CoursePrior& usual, const Lesson& lesson);

/// What one finished barrel showed, as differences from its usual prior, with what is unsure.
struct Shown {
    Belief start, end, logRate;
};
[[nodiscard]] Shown shownBy(const Course& course, const CoursePrior& usual);

/// Return the lesson of barrels that showed this, from what was believed before. The order of the
/// barrels does not matter; none leave `before` as it is; deviations stay above 0.
[[nodiscard]] Lesson taught(const Lesson& before, std::span<const Shown> barrels);

}  // namespace spile::outlook
