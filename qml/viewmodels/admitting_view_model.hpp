#pragma once

#include "core/scan/read_belief.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/join_sighting.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// Letting another device in: by the symbol that it shows, or its code typed.
class AdmittingViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(State state READ state NOTIFY changed FINAL)
    /// Why this device cannot let others in, and who can; empty: it can.
    Q_PROPERTY(QString missing READ missing NOTIFY changed FINAL)
    /// As far as it is typed.
    Q_PROPERTY(QString code READ code WRITE setCode NOTIFY changed FINAL)
    Q_PROPERTY(QString codeError READ codeError NOTIFY changed FINAL)
    /// What was read instead, or why that device cannot be let in.
    Q_PROPERTY(QString message READ message NOTIFY changed FINAL)
    /// The code of the device that asks.
    Q_PROPERTY(QString device READ device NOTIFY changed FINAL)
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY changed FINAL)
    /// Whether it may let others in, too.
    Q_PROPERTY(bool desk READ isDesk WRITE setDesk NOTIFY changed FINAL)
    Q_PROPERTY(QString error READ error NOTIFY changed FINAL)

public:
    enum State { Looking, Asking };
    Q_ENUM(State)

    explicit AdmittingViewModel(Context& context, QObject* parent = nullptr);

    /// Begin anew; with the code of a device it is known which one asks.
    void begin(const QString& code = {});
    /// Take the codes that were read in a frame; see frames::FrameReader.
    Q_INVOKABLE void offer(const QList<QString>& texts, const QList<QString>& formats);
    /// Not this device: look again.
    Q_INVOKABLE void again();
    Q_INVOKABLE void admit();

    [[nodiscard]] State state() const { return state_; }
    [[nodiscard]] QString missing() const { return missing_; }
    [[nodiscard]] QString code() const { return code_; }
    void setCode(const QString& code);
    [[nodiscard]] QString codeError() const { return codeError_; }
    [[nodiscard]] QString message() const { return message_; }
    [[nodiscard]] QString device() const { return device_; }
    [[nodiscard]] QString name() const { return name_; }
    void setName(const QString& name);
    [[nodiscard]] bool isDesk() const { return desk_; }
    void setDesk(bool desk);
    [[nodiscard]] QString error() const { return error_; }

signals:
    void changed();
    void admitted(const QString& said);

private:
    void readWhoCan();
    void ask(const cellar::JoinSymbol& symbol);
    void askTyped(const DeviceId& device);
    void take(const Result<JoinSighting>& found, int asked);
    void tell(const QString& message);
    void forget();

    Context& context_;
    scan::ReadBelief belief_;
    State state_ = Looking;
    QString missing_, code_, codeError_, message_, device_, name_, error_;
    bool desk_ = false;
    bool busy_ = false;
    int asked_ = 0;  // the last question; answers to earlier ones are dropped
};

}  // namespace spile::viewmodels
