#include "qml/components/drawing.hpp"

#include <QPainter>
#include <QPen>
#include <QRegularExpression>
#include <QStringList>

namespace spile::components {

namespace {

// Adds one letter with its numbers to `path`; false if they do not fit together.
bool addPart(QPainterPath& path, QChar letter, const QList<qreal>& n)
{
    const QPointF at = path.currentPosition();
    switch (letter.unicode()) {
        case 'M':
            return n.size() == 2 && (path.moveTo(n[0], n[1]), true);
        case 'L':
            return n.size() == 2 && (path.lineTo(n[0], n[1]), true);
        case 'H':
            return n.size() == 1 && (path.lineTo(n[0], at.y()), true);
        case 'V':
            return n.size() == 1 && (path.lineTo(at.x(), n[0]), true);
        case 'C':
            return n.size() == 6 && (path.cubicTo(n[0], n[1], n[2], n[3], n[4], n[5]), true);
        case 'Z':
            return n.isEmpty() && (path.closeSubpath(), true);
        default:
            return false;
    }
}

}  // namespace

QPainterPath pathOf(const QString& text)
{
    static const QRegularExpression part(QStringLiteral("([A-Z])([^A-Z]*)"));
    static const QRegularExpression space(QStringLiteral("\\s+"));
    QPainterPath path;
    for (const auto& match : part.globalMatch(text)) {
        QList<qreal> numbers;
        bool isNumber = true;
        for (const QString& word : match.captured(2).split(space, Qt::SkipEmptyParts)) {
            bool understood = false;
            numbers.append(word.toDouble(&understood));
            isNumber = isNumber && understood;
        }
        if (!isNumber || !addPart(path, match.captured(1).front(), numbers)) {
            return {};
        }
    }
    return path;
}

Drawing::Drawing(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    connect(this, &Drawing::changed, this, [this] { update(); });
}

void Drawing::paint(QPainter* painter)
{
    painter->scale(width() / grid_.width(), height() / grid_.height());
    QPen pen(stroke_, strokeWidth_, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
    painter->setPen(strokeWidth_ > 0 ? pen : QPen(Qt::NoPen));
    painter->setBrush(fill_);
    painter->drawPath(pathOf(path_));
}

}  // namespace spile::components
