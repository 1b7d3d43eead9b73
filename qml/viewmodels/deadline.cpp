#include "qml/viewmodels/deadline.hpp"

#include <algorithm>
#include <utility>

namespace spile::viewmodels {

Deadline::Deadline(const Clock& clock, QObject* parent) : QObject(parent), clock_(clock)
{
    ticks_.setInterval(std::chrono::milliseconds(250));
    connect(&ticks_, &QTimer::timeout, this, &Deadline::look);
}

void Deadline::start(Milliseconds time)
{
    const Milliseconds wait = std::max(time, Milliseconds(0));
    begin({clock_.now() + wait, clock_.sinceBoot() + wait, clock_.bootId()});
}

void Deadline::resume(Instant wallEnd, Milliseconds bootEnd, const BootId& bootId)
{
    begin({wallEnd, bootEnd, bootId});
}

void Deadline::begin(const End& end)
{
    end_ = end;
    told_ = false;
    ticks_.start();
    look();
}

void Deadline::stop()
{
    ticks_.stop();
    end_.reset();
    shown_.clear();
    emit changed();
}

Milliseconds Deadline::left() const
{
    return clock_.bootId() == end_->bootId ? end_->boot - clock_.sinceBoot()
                                           : end_->wall - clock_.now();
}

void Deadline::look()
{
    if (!end_) {
        return;
    }
    if (const QString now = text(); now != shown_) {
        shown_ = now;
        emit changed();
    }
    if (isOver() && !std::exchange(told_, true)) {
        emit reached();
    }
}

QString Deadline::text() const { return end_ ? written(left()) : QString(); }

QString Deadline::written(Milliseconds left)
{
    // Whole seconds: none is left only when it is over.
    const bool over = left <= Milliseconds(0);
    const auto seconds = over ? std::chrono::floor<std::chrono::seconds>(-left).count()
                              : std::chrono::ceil<std::chrono::seconds>(left).count();
    constexpr int secondsPerMinute = 60;
    return QStringLiteral("%1%2:%3")
        .arg(over && seconds > 0 ? QStringLiteral("+") : QString())
        .arg(seconds / secondsPerMinute)
        .arg(seconds % secondsPerMinute, 2, 10, QLatin1Char('0'));
}

}  // namespace spile::viewmodels
