#pragma once

#include "qml/components/chart_scale.hpp"

#include <QColor>
#include <QPolygonF>
#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

namespace spile::components {

/// The area between two courses, point by point the lower and the upper, and its edges. A pair of
/// which one is no number breaks the band there; what one course has more than the other is left
/// out.
class ChartBand : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QList<QPointF> lower MEMBER lower_ NOTIFY changed FINAL)
    Q_PROPERTY(QList<QPointF> upper MEMBER upper_ NOTIFY changed FINAL)
    Q_PROPERTY(QRectF range MEMBER range_ NOTIFY changed FINAL)
    Q_PROPERTY(QColor fill MEMBER fill_ NOTIFY changed FINAL)
    Q_PROPERTY(QColor edge MEMBER edge_ NOTIFY changed FINAL)
    Q_PROPERTY(qreal edgeThickness MEMBER edgeThickness_ NOTIFY changed FINAL)

public:
    explicit ChartBand(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

    /// Return the closed areas, in pixels.
    [[nodiscard]] QList<QPolygonF> areas() const;
    /// Return the edges, in pixels: of each area the upper and the lower, of a pair that stands
    /// alone the line between them.
    [[nodiscard]] QList<QPolygonF> edges() const;

signals:
    void changed();

private:
    struct Run {
        QPolygonF lower, upper;
    };
    [[nodiscard]] QList<Run> runs() const;

    QList<QPointF> lower_, upper_;
    QRectF range_;
    QColor fill_, edge_;
    qreal edgeThickness_ = 1;
};

}  // namespace spile::components
