#include <QtQml/qqmlextensionplugin.h>
#include <QtQuickTest>

Q_IMPORT_QML_PLUGIN(Spile_ThemePlugin)
Q_IMPORT_QML_PLUGIN(Spile_ComponentsPlugin)
Q_IMPORT_QML_PLUGIN(Spile_ViewModelsPlugin)
Q_IMPORT_QML_PLUGIN(Spile_ScreensPlugin)
Q_IMPORT_QML_PLUGIN(Spile_TestAppPlugin)

QUICK_TEST_MAIN(app)
