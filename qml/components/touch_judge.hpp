#pragma once

#include "qml/components/window_contacts.hpp"

#include <QEventPoint>
#include <QPointer>
#include <QPointingDevice>
#include <QQuickItem>
#include <QtQml/qqml.h>

namespace spile::components {

/// Judges whether a contact is a tap or water, palm and grip. Attached to an item, it speaks for
/// the item's window: all items of a window share one judge. It only advises; mouse, keys and
/// assistive presses are never refused.
class TouchJudge : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("TouchJudge is attached to an item")
    QML_ATTACHED(spile::components::TouchJudge)
    /// Three refusals in two seconds; until dry().
    Q_PROPERTY(bool wet READ isWet NOTIFY changed FINAL)
    Q_PROPERTY(qreal unitsPerMm READ unitsPerMm WRITE setUnitsPerMm NOTIFY changed FINAL)
    Q_PROPERTY(int refusedTogether READ refusedTogether NOTIFY changed FINAL)
    Q_PROPERTY(int refusedOutlasted READ refusedOutlasted NOTIFY changed FINAL)
    Q_PROPERTY(int refusedAtTheSide READ refusedAtTheSide NOTIFY changed FINAL)
    Q_PROPERTY(int refusedTooWide READ refusedTooWide NOTIFY changed FINAL)
    Q_PROPERTY(int refusedTooShort READ refusedTooShort NOTIFY changed FINAL)

public:
    explicit TouchJudge(QObject* attachee);
    static TouchJudge* qmlAttachedProperties(QObject* attachee) { return new TouchJudge(attachee); }

    /// Return whether the contact that ends as a tap with `point` is believed.
    Q_INVOKABLE bool accepts(const QEventPoint& point);
    /// The same for contact `id` of `device` that still rests.
    Q_INVOKABLE bool acceptsContact(QPointingDevice* device, int id);
    /// The screen was wiped.
    Q_INVOKABLE void dry();

    [[nodiscard]] bool isWet() const { return contacts_ != nullptr && contacts_->isWet(); }
    [[nodiscard]] qreal unitsPerMm() const { return unitsPerMm_; }
    void setUnitsPerMm(qreal units);
    [[nodiscard]] int refusedTogether() const { return count(Refusal::Together); }
    [[nodiscard]] int refusedOutlasted() const { return count(Refusal::Outlasted); }
    [[nodiscard]] int refusedAtTheSide() const { return count(Refusal::AtTheSide); }
    [[nodiscard]] int refusedTooWide() const { return count(Refusal::TooWide); }
    [[nodiscard]] int refusedTooShort() const { return count(Refusal::TooShort); }

signals:
    void changed();

private:
    void watch(QQuickWindow* window);
    [[nodiscard]] int count(Refusal refusal) const;

    QPointer<WindowContacts> contacts_;
    qreal unitsPerMm_ = 0;  // 0: not said here
};

}  // namespace spile::components
