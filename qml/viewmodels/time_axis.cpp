#include "qml/viewmodels/time_axis.hpp"

#include <QDateTime>
#include <array>

namespace spile::viewmodels {

TimeAxis monthsBetween(Instant from, Instant to, int most, const Formats& formats)
{
    const QDate first = QDateTime::fromMSecsSinceEpoch(toMs(from)).date();
    const QDate begin =
        first.day() == 1 ? first : QDate(first.year(), first.month(), 1).addMonths(1);
    const QDate end = QDateTime::fromMSecsSinceEpoch(toMs(to)).date();
    constexpr int inYear = 12;
    const int months = (end.year() - begin.year()) * inYear + end.month() - begin.month() + 1;
    int every = inYear;
    for (const int step : {1, 2, 3, 6}) {
        if (months <= step * most) {
            every = step;
            break;
        }
    }
    TimeAxis axis;
    for (QDate month = begin; month <= end; month = month.addMonths(1)) {
        if ((month.month() - 1) % every == 0) {
            const Instant at = instantFromMs(month.startOfDay().toMSecsSinceEpoch());
            const bool named = axis.words.isEmpty() || month.month() == 1;
            axis.words << (named ? formats.monthAndYear(at) : formats.month(at));
            axis.places << daysSince(from, at);
        }
    }
    return axis;
}

}  // namespace spile::viewmodels
