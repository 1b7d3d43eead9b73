#pragma once

#include "core/outlook/readiness.hpp"

#include <optional>
#include <span>

/// How taps of more, right and too much teach the window of an attribute.
namespace spile::outlook {

enum class Wish : std::int8_t { TooMuch = -1, Right = 0, More = 1 };

/// What was wished of a level that was believed to lie there then.
struct Wished {
    Wish wish = Wish::Right;
    double level = 0;      // its mean, on the 0-10 line
    double deviation = 0;  // how unsure that was
};

struct TaughtWindow {
    LineWindow window;
    int wishes = 0;
};

/// Return the window that the wishes speak for: of all windows, the mean of those that would have
/// been answered so. None before a "right" or two wishes of any kind.
///
/// Range     any number of wishes, any levels that are finite.
/// Accuracy  none claimed; it tightens with the wishes (tests/property).
/// Source    Bayes' rule over windows a half point apart; a person answers with an error of 0.8
///           points; windows of about 3 points in the middle are the likeliest before. Assumed.
[[nodiscard]] std::optional<TaughtWindow> windowTaughtBy(std::span<const Wished> wishes);

}  // namespace spile::outlook
