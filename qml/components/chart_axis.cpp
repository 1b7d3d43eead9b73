#include "qml/components/chart_axis.hpp"

#include <QFontMetricsF>
#include <algorithm>

namespace spile::components {

qsizetype ChartAxis::count() const { return std::min(words_.size(), places_.size()); }

// How much of the axis each word takes.
QList<qreal> ChartAxis::extents() const
{
    const QFontMetricsF metrics(font_);
    QList<qreal> extents;
    for (qsizetype i = 0; i < count(); ++i) {
        extents.append(upright_ ? metrics.height() : metrics.horizontalAdvance(words_[i]));
    }
    return extents;
}

qreal ChartAxis::widest() const
{
    const QFontMetricsF metrics(font_);
    qreal widest = 0;
    for (const QString& word : words_) {
        widest = std::max(widest, metrics.horizontalAdvance(word));
    }
    return widest;
}

QList<qreal> ChartAxis::marks() const
{
    QList<qreal> marks;
    for (qsizetype i = 0; i < count(); ++i) {
        const qreal share = extent_ > 0 ? (places_[i] - from_) / extent_ : 0.5;
        marks.append((upright_ ? 1 - share : share) * length_);
    }
    return marks;
}

QList<qreal> ChartAxis::begins() const
{
    const QList<qreal> taken = extents();
    QList<qreal> begins = marks();
    for (qsizetype i = 0; i < begins.size(); ++i) {
        const qreal last = std::max(0.0, length_ - taken[i]);
        begins[i] = std::clamp(begins[i] - taken[i] / 2, 0.0, last);
    }
    return begins;
}

int ChartAxis::every() const
{
    const QList<qreal> taken = extents();
    const QList<qreal> first = begins();
    const auto apart = [&](qsizetype one, qsizetype next) {
        return first[one] < first[next] ? first[one] + taken[one] + gap_ <= first[next]
                                        : first[next] + taken[next] + gap_ <= first[one];
    };
    for (qsizetype step = 1; step < first.size(); ++step) {
        bool roomy = true;
        for (qsizetype i = 0; i + step < first.size(); i += step) {
            roomy = roomy && apart(i, i + step);
        }
        if (roomy) {
            return static_cast<int>(step);
        }
    }
    return std::max(1, static_cast<int>(first.size()));
}

}  // namespace spile::components
