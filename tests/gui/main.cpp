#include <QtQml/qqmlextensionplugin.h>
#include <QtQuickTest>

Q_IMPORT_QML_PLUGIN(Spile_ThemePlugin)

QUICK_TEST_MAIN(gui)
