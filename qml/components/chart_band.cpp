#include "qml/components/chart_band.hpp"

#include <QPainter>
#include <QPen>
#include <algorithm>

namespace spile::components {

ChartBand::ChartBand(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    connect(this, &ChartBand::changed, this, [this] { update(); });
}

QList<ChartBand::Run> ChartBand::runs() const
{
    const ChartScale scale(range_, size());
    QList<Run> runs;
    bool goesOn = false;
    for (qsizetype i = 0; i < std::min(lower_.size(), upper_.size()); ++i) {
        const bool drawn = isDrawn(lower_[i]) && isDrawn(upper_[i]);
        if (drawn && !goesOn) {
            runs.append(Run());
        }
        if (drawn) {
            runs.last().lower.append(scale.place(lower_[i]));
            runs.last().upper.append(scale.place(upper_[i]));
        }
        goesOn = drawn;
    }
    return runs;
}

QList<QPolygonF> ChartBand::areas() const
{
    QList<QPolygonF> areas;
    for (const Run& run : runs()) {
        if (run.lower.size() > 1) {
            QPolygonF area = run.upper;
            std::for_each(run.lower.crbegin(), run.lower.crend(),
                          [&](const QPointF& point) { area.append(point); });
            area.append(area.first());
            areas.append(area);
        }
    }
    return areas;
}

QList<QPolygonF> ChartBand::edges() const
{
    QList<QPolygonF> edges;
    for (const Run& run : runs()) {
        if (run.lower.size() > 1) {
            edges << run.upper << run.lower;
        } else {
            edges << QPolygonF({run.lower.first(), run.upper.first()});
        }
    }
    return edges;
}

void ChartBand::paint(QPainter* painter)
{
    painter->setPen(Qt::NoPen);
    painter->setBrush(fill_);
    for (const QPolygonF& area : areas()) {
        painter->drawPolygon(area);
    }
    painter->setPen(QPen(edge_, edgeThickness_, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
    for (const QPolygonF& edge : edges()) {
        painter->drawPolyline(edge);
    }
}

}  // namespace spile::components
