#pragma once

#include "core/base/clock.hpp"

#include <QObject>
#include <QTimer>
#include <QtQml/qqmlregistration.h>
#include <optional>

namespace spile::viewmodels {

/// A time to wait for. It keeps when it is over, not how much has been counted: time that the app
/// was away, and a wall clock that was set meanwhile, do not bend it.
class Deadline : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    /// What is left, "4:05"; after it "+0:12".
    Q_PROPERTY(QString text READ text NOTIFY changed FINAL)
    Q_PROPERTY(bool running READ isRunning NOTIFY changed FINAL)
    Q_PROPERTY(bool over READ isOver NOTIFY changed FINAL)

public:
    explicit Deadline(const Clock& clock, QObject* parent = nullptr);

    /// Begin to wait. Range  `time` of 0 and more.
    void start(Milliseconds time);
    /// Go on with one that was begun before; after a new start of the machine by the wall clock.
    void resume(Instant wallEnd, Milliseconds bootEnd, const BootId& bootId);
    void stop();
    /// Look at the clocks; by itself it does so four times a second.
    void look();

    [[nodiscard]] QString text() const;
    /// A time that is left as it is written: "4:05", or "+0:12" once it is over.
    [[nodiscard]] static QString written(Milliseconds left);
    [[nodiscard]] bool isRunning() const { return end_.has_value(); }
    [[nodiscard]] bool isOver() const { return end_ && left() <= Milliseconds(0); }

signals:
    void changed();
    /// The time is up. Once for each start.
    void reached();

private:
    struct End {
        Instant wall;
        Milliseconds boot;
        BootId bootId;
    };
    [[nodiscard]] Milliseconds left() const;
    void begin(const End& end);

    const Clock& clock_;
    std::optional<End> end_;
    bool told_ = false;
    QString shown_;
    QTimer ticks_;
};

}  // namespace spile::viewmodels
