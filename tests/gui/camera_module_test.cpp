// Starting the app must not load Qt Multimedia and what it brings: the camera's module does, with
// the first page that needs it. This program links neither.
#include <QFile>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QTest>
#include <QtQml/qqmlextensionplugin.h>

Q_IMPORT_QML_PLUGIN(Spile_ThemePlugin)
Q_IMPORT_QML_PLUGIN(Spile_ComponentsPlugin)

class CameraModuleTest : public QObject {
    Q_OBJECT

private slots:
    void isLoadedWithItsFirstUse();
};

static bool isMapped(const QByteArray& library)
{
    QFile maps(QStringLiteral("/proc/self/maps"));
    return maps.open(QIODevice::ReadOnly) && maps.readAll().contains(library);
}

void CameraModuleTest::isLoadedWithItsFirstUse()
{
    QQmlEngine engine;
    engine.addImportPath(qEnvironmentVariable("SPILE_QML_MODULES"));
    QQmlComponent other(&engine);
    other.setData("import QtQuick\nimport Spile.Components\nimport Spile.Theme\nFrameSource {}",
                  {});
    const std::unique_ptr<QObject> source(other.create());
    QVERIFY2(source != nullptr, qPrintable(other.errorString()));
    QVERIFY(isMapped("libQt6Quick"));
    QVERIFY(!isMapped("libQt6Multimedia"));

    QQmlComponent camera(&engine);
    camera.setData("import Spile.Camera\nCameraView {}", {});
    const std::unique_ptr<QObject> view(camera.create());
    QVERIFY2(view != nullptr, qPrintable(camera.errorString()));
    QVERIFY(isMapped("libQt6Multimedia"));
}

QTEST_MAIN(CameraModuleTest)
#include "camera_module_test.moc"
