#include "qml/viewmodels/clock_view_model.hpp"

#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/observing.hpp"
#include "core/cellar/settling.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/open_flights_view_model.hpp"

#include <QDateTime>

namespace spile::viewmodels {

ClockViewModel::ClockViewModel(Context& context, QObject* parent)
    : QObject(parent), context_(context)
{
    connect(&context_.workers, &Workers::changed, this, [this] {
        if (loaded_) {
            refresh();
        }
        if (watched_) {
            look();
        }
    });
}

Result<ClockViewModel::Read> ClockViewModel::read(cellar::Cellar& cellar, const DeviceId& device)
{
    Read found;
    found.own = device == cellar.ledger().device();
    SPILE_ASSIGN(name, cellar::nameOfDevice(cellar.database(), device));
    found.name = std::move(name);
    SPILE_ASSIGN(clock, cellar::clockOfDevice(cellar.database(), device));
    found.clock = clock;
    return found;
}

void ClockViewModel::begin(const DeviceId& device)
{
    device_ = device;
    name_.clear();
    clock_.reset();
    own_ = false;
    loaded_ = false;
    error_.clear();
    said_ = std::chrono::floor<std::chrono::minutes>(context_.formats.now());
    emit changed();
    refresh();
    emit opened();
}

void ClockViewModel::refresh()
{
    context_.workers.read(
        this, [device = device_](cellar::Cellar& cellar) { return read(cellar, device); },
        [this](Result<Read> found) {
            if (found) {
                name_ = QString::fromStdString(found->name);
                own_ = found->own;
                clock_ = found->clock;
                loaded_ = true;
            } else {
                error_ = textOf(found.error());
            }
            emit changed();
        });
}

void ClockViewModel::watch(bool watched)
{
    watched_ = watched;
    if (watched) {
        look();
    }
}

void ClockViewModel::look()
{
    context_.workers.look(
        this,
        [&clock = context_.outside.clock](ledger::Database& database) {
            return cellar::clockDoubt(database, clock);
        },
        [this](const Result<cellar::ClockDoubt>& found) {
            const QString said = found ? worded(*found) : QString();
            if (said != doubt_) {
                doubt_ = said;
                emit changed();
            }
            const bool other = found && !found->behindOwn && !found->jumped && found->ahead;
            doubted_ = other ? found->ahead->device : DeviceId();
        });
}

QString ClockViewModel::span(Milliseconds time)
{
    using std::chrono::days;
    using std::chrono::hours;
    using std::chrono::minutes;
    const Milliseconds length = std::chrono::abs(time);
    if (length >= days(2)) {
        return tr("%n day(s)", "", static_cast<int>(std::chrono::floor<days>(length).count()));
    }
    return length >= hours(2)
               ? tr("%n hour(s)", "", static_cast<int>(std::chrono::floor<hours>(length).count()))
               : tr("%n minute(s)", "",
                    static_cast<int>(std::chrono::floor<minutes>(length).count()));
}

QString ClockViewModel::worded(const cellar::ClockDoubt& doubt) const
{
    if (doubt.behindOwn) {
        return tr("This device's clock stands before its own newest record, of %1. Set it before "
                  "you record.")
            .arg(context_.formats.dateAndTime(*doubt.behindOwn));
    }
    if (doubt.jumped) {
        return (doubt.jumped->count() < 0
                    ? tr("This device's clock was set back by %1 since the last record.")
                    : tr("This device's clock was set forward by %1 since the last record."))
            .arg(span(*doubt.jumped));
    }
    return doubt.ahead
               ? tr("%1 has recorded at %2, later than now: its clock is ahead, or this one's is "
                    "behind.",
                    "a device, when")
                     .arg(QString::fromStdString(doubt.ahead->name),
                          context_.formats.dateAndTime(doubt.ahead->recorded))
               : QString();
}

void ClockViewModel::openDoubt()
{
    if (!doubted_.isZero()) {
        begin(doubted_);
        return;
    }
    context_.workers.read(
        this, [](cellar::Cellar& cellar) -> Result<DeviceId> { return cellar.ledger().device(); },
        [this](const Result<DeviceId>& own) {
            if (own) {
                begin(*own);
            }
        });
}

QString ClockViewModel::newest() const
{
    return clock_ ? context_.formats.dateAndTime(clock_->newest) : QString();
}

QString ClockViewModel::known() const
{
    if (!clock_ || !clock_->truly) {
        return {};
    }
    const Milliseconds off = clock_->newest - *clock_->truly;
    if (std::chrono::abs(off) < cellar::clockTolerance) {
        return tr("It was looked at since it was started, and is right.");
    }
    return (off.count() < 0 ? tr("It was behind by %1. What it recorded since it was started has "
                                 "its true time.")
                            : tr("It was ahead by %1. What it recorded since it was started has "
                                 "its true time."))
        .arg(span(off));
}

// By this device's calendar, as a person counts months and days.
void ClockViewModel::step(Unit unit, int count)
{
    constexpr qint64 secondsPerMinute = 60, secondsPerHour = 3600;
    QDateTime at = QDateTime::fromMSecsSinceEpoch(toMs(said_));
    switch (unit) {
        case Month:
            at = at.addMonths(count);
            break;
        case Day:
            at = at.addDays(count);
            break;
        case Hour:
            at = at.addSecs(count * secondsPerHour);
            break;
        case Minute:
            at = at.addSecs(count * secondsPerMinute);
            break;
    }
    said_ = instantFromMs(at.toMSecsSinceEpoch());
    error_.clear();
    emit changed();
}

void ClockViewModel::save()
{
    if (busy_ || !loaded_) {
        return;
    }
    busy_ = true;
    error_.clear();
    const auto person = holderOf(context_);
    const ledger::EventTime said = Formats::eventTime(said_);
    const ledger::EventTime now = Formats::eventTime(context_.formats.now());
    context_.workers.act(
        this,
        [=, own = own_, device = device_](cellar::Cellar& cellar) {
            return own ? cellar::observeOwnClock(cellar, said, person)
                       : cellar::observeClock(cellar, device, said.time, now, person);
        },
        [this](const Result<EntryId>& result) {
            ended(result, own_ ? tr("Kept. Set this device's own clock too.")
                               : tr("Kept. Set the clock of %1 too.").arg(name_));
        });
}

void ClockViewModel::takeBack()
{
    if (busy_ || !clock_ || !clock_->valid) {
        return;
    }
    busy_ = true;
    error_.clear();
    context_.workers.act(
        this,
        [entry = *clock_->valid](cellar::Cellar& cellar) {
            return cellar::voidEntry(cellar, entry);
        },
        [this](const Result<EntryId>& result) {
            ended(result, tr("Taken back. The records have the times of the clock again."));
        });
}

void ClockViewModel::ended(const Result<EntryId>& result, const QString& said)
{
    busy_ = false;
    if (result) {
        emit done(said);
    } else {
        error_ = worded(result.error());
    }
    emit changed();
}

QString ClockViewModel::worded(const Error& error) const
{
    if (!own_ && error.code == ErrorCode::NotFound && error.subject == "record") {
        return tr("No record of it is here. Take in a day file from it first.");
    }
    if (!own_ && error.code == ErrorCode::Conflict && error.subject == "clock") {
        return tr("That is before its newest record, of %1 by its own clock. If its clock was set "
                  "since, say the right time on it.")
            .arg(newest());
    }
    return textOf(error);
}

}  // namespace spile::viewmodels
