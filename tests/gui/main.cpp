#include <QtQml/qqmlextensionplugin.h>
#include <QtQuickTest>

Q_IMPORT_QML_PLUGIN(Spile_ComponentsPlugin)
Q_IMPORT_QML_PLUGIN(Spile_GalleryPlugin)
Q_IMPORT_QML_PLUGIN(Spile_TestsPlugin)
Q_IMPORT_QML_PLUGIN(Spile_ThemePlugin)

QUICK_TEST_MAIN(gui)
