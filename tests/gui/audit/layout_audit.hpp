#pragma once

#include <QObject>
#include <QQuickItem>
#include <QRectF>
#include <QStringList>
#include <QtQml/qqmlregistration.h>
#include <vector>

namespace spile::tests {

/// Finds what is wrong with the layout of a page: text that is cut, runs out of its pad or over
/// other text, pads that are too small or too close.
///
/// What lies in a Flickable may lie outside of what it shows, since that scrolls, but must not be
/// wider. Pads are all items with a signal fired() or held(). Sizes are in pixels; 0 asks for
/// nothing.
class LayoutAudit : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(qreal leastPadHeight MEMBER leastPadHeight_ FINAL)
    Q_PROPERTY(qreal leastPadWidth MEMBER leastPadWidth_ FINAL)
    Q_PROPERTY(qreal leastGap MEMBER leastGap_ FINAL)

public:
    using QObject::QObject;

    /// Return a sentence for each thing found in what is visible of `root`; none if all is well.
    Q_INVOKABLE QStringList findings(QQuickItem* root);

private:
    // A text or a pad, where it is in the scene.
    struct Thing {
        QQuickItem* item;
        QRectF whole;           // as it is laid out
        QRectF seen;            // without what the items around it cut away
        QQuickItem* flickable;  // the innermost one around it, or none
    };

    void collect(QQuickItem* item, const QRectF& clip, QQuickItem* flickable);
    void auditText(const Thing& text, const QRectF& page);
    void auditPad(const Thing& pad);
    void auditPads(const Thing& one, const Thing& other);
    void auditTexts(const Thing& one, const Thing& other);
    void found(const QString& what);

    std::vector<Thing> texts_, pads_;
    QStringList findings_;
    qreal leastPadHeight_ = 0, leastPadWidth_ = 0, leastGap_ = 0;
};

}  // namespace spile::tests
