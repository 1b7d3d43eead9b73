#include "tests/gui/audit/layout_audit.hpp"

#include <QMetaObject>
#include <algorithm>

namespace spile::tests {

namespace {

constexpr qreal slack = 1;  // pixels; what rounding may do

bool isText(const QQuickItem* item)
{
    return (item->inherits("QQuickText") || item->inherits("QQuickTextEdit") ||
            item->inherits("QQuickTextInput")) &&
           !item->property("text").toString().isEmpty();
}

bool isPad(const QQuickItem* item)
{
    const QMetaObject* type = item->metaObject();
    return type->indexOfSignal("fired()") >= 0 || type->indexOfSignal("held()") >= 0;
}

QRectF inScene(const QQuickItem* item, const QRectF& rect) { return item->mapRectToScene(rect); }

// Where the letters of a text are, and not only the item.
QRectF painted(const QQuickItem* text)
{
    const qreal width = text->property("contentWidth").toReal();
    const qreal height = text->property("contentHeight").toReal();
    const qreal left = text->property("leftPadding").toReal();
    const qreal right = text->property("rightPadding").toReal();
    const qreal top = text->property("topPadding").toReal();
    const qreal roomAcross = text->width() - left - right - width;
    const qreal roomDown = text->height() - top - text->property("bottomPadding").toReal() - height;
    const int across = text->property("effectiveHorizontalAlignment").toInt();
    const int down = text->property("verticalAlignment").toInt();
    const qreal x = (across & Qt::AlignRight) != 0     ? roomAcross
                    : (across & Qt::AlignHCenter) != 0 ? roomAcross / 2
                                                       : 0;
    const qreal y = (down & Qt::AlignBottom) != 0    ? roomDown
                    : (down & Qt::AlignVCenter) != 0 ? roomDown / 2
                                                     : 0;
    return inScene(text, QRectF(left + x, top + y, width, height));
}

QString nameOf(const QQuickItem* item)
{
    for (const char* property : {"text", "name", "title"}) {
        if (const QString words = item->property(property).toString(); !words.isEmpty()) {
            return QStringLiteral("\"%1\"").arg(words.left(40));
        }
    }
    return item->objectName().isEmpty() ? QString::fromLatin1(item->metaObject()->className())
                                        : item->objectName();
}

QQuickItem* padAround(QQuickItem* item)
{
    QQuickItem* around = item->parentItem();
    while (around != nullptr && !isPad(around)) {
        around = around->parentItem();
    }
    return around;
}

bool isInside(const QRectF& inner, const QRectF& outer)
{
    return outer.adjusted(-slack, -slack, slack, slack).contains(inner);
}

bool isInsideAcross(const QRectF& inner, const QRectF& outer)
{
    return inner.left() >= outer.left() - slack && inner.right() <= outer.right() + slack;
}

bool liesOver(const QRectF& one, const QRectF& other)
{
    const QRectF common = one.intersected(other);
    return common.width() > slack && common.height() > slack;
}

qreal distance(qreal firstBegin, qreal firstEnd, qreal secondBegin, qreal secondEnd)
{
    return std::max(secondBegin - firstEnd, firstBegin - secondEnd);
}

}  // namespace

QStringList LayoutAudit::findings(QQuickItem* root)
{
    texts_.clear();
    pads_.clear();
    findings_.clear();
    const QRectF page = inScene(root, root->boundingRect());
    collect(root, page, nullptr);
    for (const Thing& text : texts_) {
        auditText(text, page);
    }
    for (const Thing& pad : pads_) {
        auditPad(pad);
    }
    for (std::size_t i = 0; i < texts_.size(); ++i) {
        for (std::size_t j = i + 1; j < texts_.size(); ++j) {
            auditTexts(texts_[i], texts_[j]);
        }
    }
    for (std::size_t i = 0; i < pads_.size(); ++i) {
        for (std::size_t j = i + 1; j < pads_.size(); ++j) {
            auditPads(pads_[i], pads_[j]);
        }
    }
    return findings_;
}

void LayoutAudit::collect(QQuickItem* item, const QRectF& clip, QQuickItem* flickable)
{
    if (!item->isVisible() || item->opacity() == 0) {
        return;
    }
    QRectF inner = clip;
    if (isText(item)) {
        const QRectF whole = painted(item);
        texts_.push_back({item, whole, whole.intersected(clip), flickable});
    }
    if (isPad(item)) {
        const QRectF whole = inScene(item, item->boundingRect());
        pads_.push_back({item, whole, whole.intersected(clip), flickable});
    }
    if (item->clip()) {
        inner = clip.intersected(inScene(item, item->boundingRect()));
    }
    QQuickItem* const around = item->inherits("QQuickFlickable") ? item : flickable;
    for (QQuickItem* child : item->childItems()) {
        collect(child, inner, around);
    }
}

void LayoutAudit::auditText(const Thing& text, const QRectF& page)
{
    if (text.item->property("truncated").toBool()) {
        found(QStringLiteral("%1 is cut").arg(nameOf(text.item)));
    }
    if (QQuickItem* pad = padAround(text.item)) {
        if (!isInside(text.whole, inScene(pad, pad->boundingRect()))) {
            found(QStringLiteral("%1 runs out of its pad").arg(nameOf(text.item)));
        }
    }
    if (text.flickable == nullptr) {
        if (!isInside(text.whole, page) || !isInside(text.whole, text.seen)) {
            found(QStringLiteral("%1 runs out of the page").arg(nameOf(text.item)));
        }
    } else if (!isInsideAcross(text.whole,
                               inScene(text.flickable, text.flickable->boundingRect()))) {
        found(QStringLiteral("%1 is wider than what scrolls").arg(nameOf(text.item)));
    }
}

void LayoutAudit::auditPad(const Thing& pad)
{
    if (pad.whole.height() < leastPadHeight_ - slack / 2) {
        found(QStringLiteral("%1 is %2 high").arg(nameOf(pad.item)).arg(pad.whole.height()));
    }
    if (pad.whole.width() < leastPadWidth_ - slack / 2) {
        found(QStringLiteral("%1 is %2 wide").arg(nameOf(pad.item)).arg(pad.whole.width()));
    }
    if (pad.flickable == nullptr && !isInside(pad.whole, pad.seen)) {
        found(QStringLiteral("%1 runs out of the page").arg(nameOf(pad.item)));
    }
}

void LayoutAudit::auditTexts(const Thing& one, const Thing& other)
{
    const bool together = one.flickable == other.flickable;
    if (together ? liesOver(one.whole, other.whole) : liesOver(one.seen, other.seen)) {
        found(QStringLiteral("%1 lies over %2").arg(nameOf(one.item), nameOf(other.item)));
    }
}

void LayoutAudit::auditPads(const Thing& one, const Thing& other)
{
    if (one.item->isAncestorOf(other.item)) {
        return;  // a row that can be opened may hold a pad
    }
    const bool together = one.flickable == other.flickable;
    const QRectF& a = together ? one.whole : one.seen;
    const QRectF& b = together ? other.whole : other.seen;
    if (a.isEmpty() || b.isEmpty()) {
        return;
    }
    const qreal gap = std::max(distance(a.left(), a.right(), b.left(), b.right()),
                               distance(a.top(), a.bottom(), b.top(), b.bottom()));
    if (gap < (leastGap_ > 0 ? leastGap_ - slack / 2 : -slack)) {
        found(QStringLiteral("%1 and %2 are %3 apart")
                  .arg(nameOf(one.item), nameOf(other.item))
                  .arg(gap));
    }
}

void LayoutAudit::found(const QString& what) { findings_.append(what); }

}  // namespace spile::tests
