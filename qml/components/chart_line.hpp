#pragma once

#include "qml/components/chart_scale.hpp"

#include <QColor>
#include <QPolygonF>
#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

namespace spile::components {

/// A line through points of data. A point that is no number breaks the line there; one that stands
/// alone becomes a mark.
class ChartLine : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QList<QPointF> points MEMBER points_ NOTIFY changed FINAL)
    /// What of the data the item shows.
    Q_PROPERTY(QRectF range MEMBER range_ NOTIFY changed FINAL)
    Q_PROPERTY(QColor tint MEMBER tint_ NOTIFY changed FINAL)
    Q_PROPERTY(qreal thickness MEMBER thickness_ NOTIFY changed FINAL)
    /// Lengths of dash and gap in thicknesses; none: a solid line.
    Q_PROPERTY(QList<qreal> dashes MEMBER dashes_ NOTIFY changed FINAL)
    Q_PROPERTY(qreal markSize MEMBER markSize_ NOTIFY changed FINAL)
    /// Marks at all points, and no line.
    Q_PROPERTY(bool marksOnly MEMBER marksOnly_ NOTIFY changed FINAL)
    Q_PROPERTY(MarkShape markShape MEMBER markShape_ NOTIFY changed FINAL)

public:
    /// What a mark looks like; a ring is open and goes around another mark.
    enum MarkShape { Diamond, Disc, Triangle, Ring };
    Q_ENUM(MarkShape)

    explicit ChartLine(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

    /// Return the lines to draw, in pixels, each of two points or more.
    [[nodiscard]] QList<QPolygonF> lines() const;
    /// Return where marks belong, in pixels.
    [[nodiscard]] QList<QPointF> marks() const;

signals:
    void changed();

private:
    [[nodiscard]] QList<QPolygonF> runs() const;
    void paintMark(QPainter& painter, const QPointF& at) const;

    QList<QPointF> points_;
    QRectF range_;
    QColor tint_;
    qreal thickness_ = 1;
    QList<qreal> dashes_;
    qreal markSize_ = 0;
    bool marksOnly_ = false;
    MarkShape markShape_ = Diamond;
};

}  // namespace spile::components
