#pragma once

#include "core/cellar/devices.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/part_rows.hpp"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// The devices of the cellar, and cutting one off that is lost.
class DevicesViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(spile::viewmodels::PartRows* devices READ devices CONSTANT FINAL)
    Q_PROPERTY(bool loaded READ isLoaded NOTIFY changed FINAL)
    /// Whether this device may cut others off and let others in.
    Q_PROPERTY(bool desk READ isDesk NOTIFY changed FINAL)
    /// The device that is to be cut off, and why.
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> reasons READ reasons NOTIFY changed FINAL)
    Q_PROPERTY(int reason READ reason NOTIFY changed FINAL)
    Q_PROPERTY(QString own READ own WRITE setOwn NOTIFY changed FINAL)
    Q_PROPERTY(QString error READ error NOTIFY changed FINAL)

public:
    explicit DevicesViewModel(Context& context, QObject* parent = nullptr);

    void refresh();
    /// The page is left: it follows the records no longer.
    void leave() { loaded_ = false; }
    /// Ask about the device at that place of the list.
    Q_INVOKABLE void choose(int index);
    /// Look at the clock of the device at that place.
    Q_INVOKABLE void openClock(int index);
    Q_INVOKABLE void chooseReason(int index);
    Q_INVOKABLE void cutOff();

    [[nodiscard]] PartRows* devices() { return &rows_; }
    [[nodiscard]] bool isLoaded() const { return loaded_; }
    [[nodiscard]] bool isDesk() const { return desk_; }
    [[nodiscard]] QString name() const { return QString::fromStdString(chosen_.name); }
    [[nodiscard]] QStringList reasons() const;
    [[nodiscard]] int reason() const { return reason_; }
    [[nodiscard]] QString own() const { return own_; }
    void setOwn(const QString& own);
    [[nodiscard]] QString error() const { return error_; }

signals:
    void changed();
    void chosen();
    void cut(const QString& said);
    void clockWanted(const spile::DeviceId& device);

private:
    [[nodiscard]] static QString standingOf(const cellar::DeviceRow& device);
    [[nodiscard]] bool mayCut(const cellar::DeviceRow& device) const;
    void take(cellar::Devices devices);

    Context& context_;
    PartRows rows_;
    std::vector<cellar::DeviceRow> devices_;
    cellar::DeviceRow chosen_;
    QString own_, error_;
    int reason_ = -1;
    bool desk_ = false;
    bool loaded_ = false;
    bool busy_ = false;
};

}  // namespace spile::viewmodels
