#include "qml/components/window_contacts.hpp"

#include <QPointingDevice>
#include <QQuickWindow>
#include <QTouchEvent>
#include <algorithm>

namespace spile::components {

WindowContacts* WindowContacts::of(QQuickWindow* window)
{
    auto* found = window->findChild<WindowContacts*>(QString(), Qt::FindDirectChildrenOnly);
    return found != nullptr ? found : new WindowContacts(window);
}

WindowContacts::WindowContacts(QQuickWindow* window) : QObject(window), window_(window)
{
    window->installEventFilter(this);
}

bool WindowContacts::accepts(const QPointingDevice* device, int id)
{
    if (device == nullptr || device->type() != QInputDevice::DeviceType::TouchScreen) {
        return true;
    }
    const std::size_t which = latest(id);
    if (which == contacts_.size()) {
        return true;
    }
    const Refusal refusal = judgeContact(contacts_, which, window_->width() / unitsPerMm_,
                                         isWet() ? wetLimits : dryLimits);
    if (refusal == Refusal::None) {
        return true;
    }
    ++counts_.at(static_cast<std::size_t>(refusal));
    wetness_.refused(now_);
    emit changed();
    return false;
}

void WindowContacts::dry()
{
    wetness_.dry();
    emit changed();
}

int WindowContacts::count(Refusal refusal) const
{
    return counts_.at(static_cast<std::size_t>(refusal));
}

void WindowContacts::setUnitsPerMm(double units)
{
    if (units > 0 && units != unitsPerMm_) {
        unitsPerMm_ = units;
        emit changed();
    }
}

bool WindowContacts::eventFilter(QObject* watched, QEvent* event)
{
    switch (event->type()) {
        case QEvent::TouchBegin:
        case QEvent::TouchUpdate:
        case QEvent::TouchEnd:
            note(*static_cast<QTouchEvent*>(event));
            break;
        case QEvent::TouchCancel:
            endAll(static_cast<double>(static_cast<QTouchEvent*>(event)->timestamp()));
            break;
        default:
            break;
    }
    return QObject::eventFilter(watched, event);
}

void WindowContacts::note(const QTouchEvent& event)
{
    now_ = static_cast<double>(event.timestamp());
    constexpr double memory = 1000;  // long past any rule
    contacts_.erase(std::remove_if(contacts_.begin(), contacts_.end(),
                                   [&](const Contact& contact) {
                                       return contact.isOver() && now_ - contact.ended > memory;
                                   }),
                    contacts_.end());
    for (const QEventPoint& point : event.points()) {
        note(point, now_);
    }
}

void WindowContacts::note(const QEventPoint& point, double time)
{
    if (point.state() == QEventPoint::Pressed) {
        begin(point, time);
    }
    const std::size_t which = latest(point.id());
    if (which == contacts_.size() || contacts_[which].isOver()) {
        return;
    }
    const QSizeF diameters = point.ellipseDiameters();
    contacts_[which].widest = std::max({contacts_[which].widest, diameters.width() / unitsPerMm_,
                                        diameters.height() / unitsPerMm_});
    if (point.state() == QEventPoint::Released) {
        contacts_[which].ended = time;
    }
}

void WindowContacts::begin(const QEventPoint& point, double time)
{
    Contact contact;
    contact.id = point.id();
    contact.began = time;
    contact.x = point.position().x() / unitsPerMm_;
    contacts_.push_back(contact);
}

void WindowContacts::endAll(double time)
{
    for (Contact& contact : contacts_) {
        if (!contact.isOver()) {
            contact.ended = std::max(time, contact.began);
        }
    }
}

// A screen uses its ids again: the last contact of this id, or the size if there is none.
std::size_t WindowContacts::latest(int id) const
{
    for (std::size_t i = contacts_.size(); i > 0; --i) {
        if (contacts_[i - 1].id == id) {
            return i - 1;
        }
    }
    return contacts_.size();
}

}  // namespace spile::components
