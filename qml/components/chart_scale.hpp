#pragma once

#include <QList>
#include <QPointF>
#include <QRectF>
#include <QSizeF>
#include <cmath>

namespace spile::components {

/// Where data of `range` lies in a picture of `size` pixels, whose y runs down. A range without
/// extent lies in the middle.
class ChartScale {
public:
    ChartScale(const QRectF& range, const QSizeF& size) : range_(range), size_(size) {}

    [[nodiscard]] QPointF place(const QPointF& data) const
    {
        return {share(data.x() - range_.x(), range_.width()) * size_.width(),
                (1 - share(data.y() - range_.y(), range_.height())) * size_.height()};
    }

private:
    static qreal share(qreal part, qreal whole) { return whole > 0 ? part / whole : 0.5; }

    QRectF range_;
    QSizeF size_;
};

inline bool isDrawn(const QPointF& point)
{
    return std::isfinite(point.x()) && std::isfinite(point.y());
}

}  // namespace spile::components
