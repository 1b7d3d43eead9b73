#pragma once

#include <QCamera>
#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace spile::camera {

/// Whether this app may use the camera, and what for. From Qt 6.5 on the app asks; before, phones
/// ask by themselves when the camera opens, and a refusal is only seen as a camera that fails.
class CameraAccess : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool granted READ isGranted NOTIFY changed FINAL)
    Q_PROPERTY(bool denied READ isDenied NOTIFY changed FINAL)
    /// Whether a camera that fails to open was most likely not allowed.
    Q_PROPERTY(bool failureIsDenial READ isFailureDenial CONSTANT FINAL)

public:
    using QObject::QObject;

    Q_INVOKABLE void ask();
    /// Whether a place of its picture can be focused on. QML cannot read the flags that say so.
    [[nodiscard]] Q_INVOKABLE static bool focusesWhereTold(const QCamera* camera);

    [[nodiscard]] bool isGranted() const { return granted_; }
    [[nodiscard]] bool isDenied() const { return denied_; }
    [[nodiscard]] static bool isFailureDenial();

signals:
    void changed();

private:
    void answer(bool granted);

    bool granted_ = false;
    bool denied_ = false;
};

}  // namespace spile::camera
