#pragma once

#include "core/outlook/mixture.hpp"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

/// When a barrel's windowed attributes are inside together.
namespace spile::outlook {

/// A target range on the 0-10 line; from 0 or to 10 it has no limit there.
struct LineWindow {
    double low = lineLow;
    double high = lineHigh;
};

/// The window that a range of scores of the ladder stands for: half a step beyond either end, since
/// a score stands for what lies nearest to it; 1 and 9 have no limit beyond them.
///
/// Requires  1 <= low <= high <= 9.
[[nodiscard]] LineWindow windowOfScores(int low, int high);

/// One attribute's chances at a time.
struct Standing {
    Mixture::Sides sides;
    double mean = 0;
};

/// All windowed attributes at a time.
struct Together {
    double within = 1;        // all inside together: the product of their chances
    double entered = 1;       // none is still on the side that it comes from
    double past = 0;          // at least one has left its window on the side that it goes to
    std::size_t weakest = 0;  // the one with the smallest chance
};

/// Return what the standings say together. `rising` says of each attribute which side it comes
/// from; with none, all is inside.
///
/// Accuracy  the product takes the attributes as independent. Where their errors go together it is
///           a little low (measured: .673 foreseen, .689 came true, in the reference's simulation
///           of five attributes with a correlation of .5); never above the smallest chance.
[[nodiscard]] Together together(std::span<const Standing> standings, std::span<const bool> rising);

/// The span around the highest chance, of a course of chances over time: from the first to the last
/// point beside it with at least `share` of the highest.
struct Span {
    std::size_t from = 0, best = 0, to = 0;
};
[[nodiscard]] Span bestSpan(std::span<const double> chances, double share = 0.9);

/// The first time that a chance of having come to its window reaches `p`, of a course of chances
/// below the window (for what rises) or above it (for what falls): each is the chance of not being
/// there yet, and the running minimum counts. None if it does not within the course.
[[nodiscard]] std::optional<double> entryAt(std::span<const double> ages,
                                            std::span<const double> notThere, double p);

}  // namespace spile::outlook
