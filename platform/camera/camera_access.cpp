#include "platform/camera/camera_access.hpp"

#include <QtGlobal>

#if QT_VERSION >= QT_VERSION_CHECK(6, 5, 0)
#include <QCoreApplication>
#include <QPermissions>
#endif

namespace spile::camera {

void CameraAccess::ask()
{
#if QT_VERSION >= QT_VERSION_CHECK(6, 5, 0)
    const QCameraPermission camera;
    const Qt::PermissionStatus status = qApp->checkPermission(camera);
    if (status == Qt::PermissionStatus::Undetermined) {
        qApp->requestPermission(camera, this, [this](const QPermission& permission) {
            answer(permission.status() == Qt::PermissionStatus::Granted);
        });
    } else {
        answer(status == Qt::PermissionStatus::Granted);
    }
#else
    answer(true);
#endif
}

bool CameraAccess::isFailureDenial()
{
#if QT_VERSION < QT_VERSION_CHECK(6, 5, 0) && (defined(Q_OS_ANDROID) || defined(Q_OS_IOS))
    return true;
#else
    return false;
#endif
}

bool CameraAccess::focusesWhereTold(const QCamera* camera)
{
    return camera != nullptr &&
           camera->supportedFeatures().testFlag(QCamera::Feature::CustomFocusPoint);
}

void CameraAccess::answer(bool granted)
{
    granted_ = granted;
    denied_ = !granted;
    emit changed();
}

}  // namespace spile::camera
