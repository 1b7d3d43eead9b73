#pragma once

#include <QColor>
#include <QPainterPath>
#include <QQuickPaintedItem>
#include <QSizeF>
#include <QString>
#include <QtQml/qqmlregistration.h>

namespace spile::components {

/// Return the path that `text` describes; empty if the text is not understood.
///
/// Shape     letters M (begin at x y), L (line to x y), H (to x), V (to y), C (curve by two
/// controls to x y), Z (close),
///           each with its numbers after it, all from the same origin: a part of the path data of
///           SVG 1.1, section 8.3.
[[nodiscard]] QPainterPath pathOf(const QString& text);

/// A path drawn on a grid that is stretched over the item. Painted by Qt's painter and not as
/// QtQuick.Shapes, whose edges are uneven without multisampling, and which the software renderer of
/// Qt 6.4 does not clip when all of a shape lies outside of what scrolls.
class Drawing : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString path MEMBER path_ NOTIFY changed FINAL)
    Q_PROPERTY(QSizeF grid MEMBER grid_ NOTIFY changed FINAL)
    Q_PROPERTY(QColor fill MEMBER fill_ NOTIFY changed FINAL)
    Q_PROPERTY(QColor stroke MEMBER stroke_ NOTIFY changed FINAL)
    /// In units of the grid.
    Q_PROPERTY(qreal strokeWidth MEMBER strokeWidth_ NOTIFY changed FINAL)

public:
    explicit Drawing(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    QString path_;
    QSizeF grid_{1, 1};
    QColor fill_{Qt::transparent}, stroke_{Qt::transparent};
    qreal strokeWidth_ = 0;
};

}  // namespace spile::components
