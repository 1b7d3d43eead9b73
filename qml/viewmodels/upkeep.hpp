#pragma once

#include "core/cellar/verifying.hpp"
#include "qml/viewmodels/context.hpp"

#include <QObject>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// Looks after the store while the app is open and nobody waits for it: verifies what is stored,
/// part by part, and keeps room for the day when the disk is full.
class Upkeep : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    /// What is damaged and what helps; empty if all is well as far as is known.
    Q_PROPERTY(QString wrong READ wrong NOTIFY changed FINAL)

public:
    explicit Upkeep(Context& context, QObject* parent = nullptr);

    /// A cellar is open, and its first page shown: begin soon, and go on from time to time.
    void begin();
    /// Do one part now.
    void goOn();

    [[nodiscard]] QString wrong() const { return wrong_; }

signals:
    void changed();

private:
    void verified(const cellar::Round& round);

    Context& context_;
    QTimer next_;
    QString wrong_;
    bool running_ = false;
};

}  // namespace spile::viewmodels
