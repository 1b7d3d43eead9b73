#include "qml/viewmodels/notice.hpp"

#include <chrono>

namespace spile::viewmodels {

Notice::Notice(QObject* parent) : QObject(parent)
{
    fades_.setSingleShot(true);
    fades_.setInterval(std::chrono::seconds(10));
    connect(&fades_, &QTimer::timeout, this, &Notice::clear);
}

void Notice::show(const QString& text, std::function<void()> undo, bool refused)
{
    text_ = text;
    undo_ = std::move(undo);
    refused_ = refused;
    if (refused_) {
        fades_.stop();
    } else {
        fades_.start();
    }
    emit changed();
}

void Notice::tell(const QString& text, std::function<void()> undo)
{
    show(text, std::move(undo), false);
}

void Notice::refuse(const QString& text) { show(text, {}, true); }

void Notice::forgetRefusal()
{
    if (refused_) {
        clear();
    }
}

void Notice::undo()
{
    const auto undo = std::exchange(undo_, {});
    clear();
    if (undo) {
        undo();
    }
}

void Notice::clear()
{
    if (isShown()) {
        fades_.stop();
        text_.clear();
        undo_ = {};
        refused_ = false;
        emit changed();
    }
}

}  // namespace spile::viewmodels
