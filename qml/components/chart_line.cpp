#include "qml/components/chart_line.hpp"

#include <QPainter>
#include <QPen>

namespace spile::components {

ChartLine::ChartLine(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    connect(this, &ChartLine::changed, this, [this] { update(); });
}

QList<QPolygonF> ChartLine::runs() const
{
    const ChartScale scale(range_, size());
    QList<QPolygonF> runs;
    bool goesOn = false;
    for (const QPointF& point : points_) {
        const bool drawn = isDrawn(point);
        if (drawn && !goesOn) {
            runs.append(QPolygonF());
        }
        if (drawn) {
            runs.last().append(scale.place(point));
        }
        goesOn = drawn;
    }
    return runs;
}

QList<QPolygonF> ChartLine::lines() const
{
    QList<QPolygonF> lines = runs();
    lines.removeIf([this](const QPolygonF& run) { return marksOnly_ || run.size() < 2; });
    return lines;
}

QList<QPointF> ChartLine::marks() const
{
    QList<QPointF> marks;
    for (const QPolygonF& run : runs()) {
        if (marksOnly_ || run.size() == 1) {
            marks += run;
        }
    }
    return marks;
}

void ChartLine::paintMark(QPainter& painter, const QPointF& at) const
{
    const qreal half = markSize_ / 2;
    painter.setPen(Qt::NoPen);
    painter.setBrush(tint_);
    switch (markShape_) {
        case Diamond:
            painter.drawPolygon(QPolygonF({at + QPointF(0, -half), at + QPointF(half, 0),
                                           at + QPointF(0, half), at + QPointF(-half, 0)}));
            break;
        case Disc:
            painter.drawEllipse(at, half, half);
            break;
        case Triangle:
            painter.drawPolygon(QPolygonF(
                {at + QPointF(0, -half), at + QPointF(half, half), at + QPointF(-half, half)}));
            break;
        case Ring:
            painter.setPen(QPen(tint_, thickness_));
            painter.setBrush(Qt::NoBrush);
            painter.drawEllipse(at, markSize_, markSize_);
            break;
    }
}

void ChartLine::paint(QPainter* painter)
{
    QPen pen(tint_, thickness_, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
    if (!dashes_.isEmpty()) {
        pen.setDashPattern(dashes_);
    }
    painter->setPen(pen);
    for (const QPolygonF& line : lines()) {
        painter->drawPolyline(line);
    }
    for (const QPointF& mark : marks()) {
        paintMark(*painter, mark);
    }
}

}  // namespace spile::components
