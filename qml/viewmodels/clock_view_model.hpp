#pragma once

#include "core/cellar/clocks.hpp"
#include "qml/viewmodels/context.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// A device's clock: what is known of it, and saying that it was wrong.
class ClockViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(bool loaded READ isLoaded NOTIFY changed FINAL)
    /// It is this device; else another one, whose clock this one's holder looks at.
    Q_PROPERTY(bool own READ isOwn NOTIFY changed FINAL)
    /// Its newest record here, by its clock; empty: there is none.
    Q_PROPERTY(QString newest READ newest NOTIFY changed FINAL)
    /// What was said of it since it was started; empty: nothing.
    Q_PROPERTY(QString known READ known NOTIFY changed FINAL)
    /// What is being said: the right time, or what the other one shows.
    Q_PROPERTY(QString date READ date NOTIFY changed FINAL)
    Q_PROPERTY(QString time READ time NOTIFY changed FINAL)
    Q_PROPERTY(QString said READ said NOTIFY changed FINAL)
    Q_PROPERTY(QString error READ error NOTIFY changed FINAL)
    /// Why a clock is doubtful; empty: none is.
    Q_PROPERTY(QString doubt READ doubt NOTIFY changed FINAL)

public:
    enum Unit { Month, Day, Hour, Minute };
    Q_ENUM(Unit)

    /// The length of a time in days, hours or minutes, whichever says it best.
    [[nodiscard]] static QString span(Milliseconds time);

    explicit ClockViewModel(Context& context, QObject* parent = nullptr);

    /// Show the clock of that device.
    void begin(const DeviceId& device);
    /// The page is left: it follows the records no longer.
    void leave() { loaded_ = false; }
    /// Look for doubts, or no longer.
    void watch(bool watched);

    Q_INVOKABLE void step(spile::viewmodels::ClockViewModel::Unit unit, int count);
    Q_INVOKABLE void save();
    Q_INVOKABLE void takeBack();
    /// Show the clock that is doubtful.
    Q_INVOKABLE void openDoubt();

    [[nodiscard]] QString name() const { return name_; }
    [[nodiscard]] bool isLoaded() const { return loaded_; }
    [[nodiscard]] bool isOwn() const { return own_; }
    [[nodiscard]] QString newest() const;
    [[nodiscard]] QString known() const;
    [[nodiscard]] QString date() const { return context_.formats.date(said_); }
    [[nodiscard]] QString time() const { return context_.formats.time(said_); }
    [[nodiscard]] QString said() const { return context_.formats.dateAndTime(said_); }
    [[nodiscard]] QString error() const { return error_; }
    [[nodiscard]] QString doubt() const { return doubt_; }

signals:
    void changed();
    void opened();
    void done(const QString& said);

private:
    struct Read {
        std::string name;
        bool own = false;
        std::optional<cellar::DeviceClock> clock;
    };
    [[nodiscard]] static Result<Read> read(cellar::Cellar& cellar, const DeviceId& device);
    void refresh();
    void look();
    void ended(const Result<EntryId>& result, const QString& said);
    [[nodiscard]] QString worded(const Error& error) const;
    [[nodiscard]] QString worded(const cellar::ClockDoubt& doubt) const;

    Context& context_;
    DeviceId device_, doubted_;
    QString name_, error_, doubt_;
    std::optional<cellar::DeviceClock> clock_;
    Instant said_{};
    bool own_ = false;
    bool loaded_ = false;
    bool watched_ = false;
    bool busy_ = false;
};

}  // namespace spile::viewmodels
