#include "qml/components/touch_judge.hpp"

#include <QQuickWindow>

namespace spile::components {

TouchJudge::TouchJudge(QObject* attachee) : QObject(attachee)
{
    if (auto* item = qobject_cast<QQuickItem*>(attachee)) {
        connect(item, &QQuickItem::windowChanged, this, &TouchJudge::watch);
        watch(item->window());
    }
}

bool TouchJudge::accepts(const QEventPoint& point)
{
    return contacts_ == nullptr || contacts_->accepts(point.device(), point.id());
}

bool TouchJudge::acceptsContact(QPointingDevice* device, int id)
{
    return contacts_ == nullptr || contacts_->accepts(device, id);
}

void TouchJudge::dry()
{
    if (contacts_ != nullptr) {
        contacts_->dry();
    }
}

void TouchJudge::setUnitsPerMm(qreal units)
{
    unitsPerMm_ = units;
    if (contacts_ != nullptr) {
        contacts_->setUnitsPerMm(units);
    }
    emit changed();
}

void TouchJudge::watch(QQuickWindow* window)
{
    if (contacts_ != nullptr) {
        disconnect(contacts_, nullptr, this, nullptr);
    }
    contacts_ = window != nullptr ? WindowContacts::of(window) : nullptr;
    if (contacts_ != nullptr) {
        if (unitsPerMm_ > 0) {
            contacts_->setUnitsPerMm(unitsPerMm_);
        }
        connect(contacts_, &WindowContacts::changed, this, &TouchJudge::changed);
    }
    emit changed();
}

int TouchJudge::count(Refusal refusal) const
{
    return contacts_ != nullptr ? contacts_->count(refusal) : 0;
}

}  // namespace spile::components
