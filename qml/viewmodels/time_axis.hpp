#pragma once

#include "qml/viewmodels/formats.hpp"

#include <QList>
#include <QString>

namespace spile::viewmodels {

/// The months of an axis of time, which runs in days from its beginning.
struct TimeAxis {
    QList<QString> words;
    QList<qreal> places;
};

/// Return the first days of months between `from` and `to`: each, or each second, third, sixth or
/// twelfth, so that there are at most `most`. The first and each January are named with the year.
[[nodiscard]] TimeAxis monthsBetween(Instant from, Instant to, int most, const Formats& formats);

/// Days from `from` to `at`, with their fraction.
[[nodiscard]] inline qreal daysSince(Instant from, Instant at)
{
    return std::chrono::duration<qreal, std::chrono::days::period>(at - from).count();
}
/// The moment so many days after `from`.
[[nodiscard]] inline Instant daysAfter(Instant from, qreal days)
{
    return from + std::chrono::round<Milliseconds>(
                      std::chrono::duration<qreal, std::chrono::days::period>(days));
}

}  // namespace spile::viewmodels
