#include "demo/gallery/pictures.hpp"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QQmlComponent>
#include <QtQml/qqmlextensionplugin.h>
#include <algorithm>

Q_IMPORT_QML_PLUGIN(Spile_ComponentsPlugin)
Q_IMPORT_QML_PLUGIN(Spile_GalleryPlugin)
Q_IMPORT_QML_PLUGIN(Spile_ThemePlugin)

namespace spile::gallery {

// Whether `item` or one inside it is a photo that is still being read.
static bool isLoading(const QQuickItem* item)
{
    constexpr int loading = 2;  // Image.Loading
    const auto inside = item->childItems();
    return (item->inherits("QQuickImageBase") && item->property("status").toInt() == loading) ||
           std::any_of(inside.begin(), inside.end(), isLoading);
}

Pictures::Pictures()
{
    QQmlComponent component(&engine_);
    component.setData(
        "import QtQuick\n"
        "import Spile.Gallery\n"
        "import Spile.Theme\n"
        // The pixels of a phone of 460 dots per inch, so that the pictures are those of each
        // machine.
        "Gallery { barShown: false; Binding { target: Theme; property: 'unitsPerMm'; value: 6.04 } "
        "}\n",
        QUrl(QStringLiteral("qrc:/pictures.qml")));
    root_.reset(qobject_cast<QQuickItem*>(component.create()));
    if (root_ == nullptr) {
        qFatal("%s", qPrintable(component.errorString()));
    }
    root_->setParentItem(window_.contentItem());
}

QStringList Pictures::pages() const { return root_->property("pages").toStringList(); }

QStringList Pictures::palettes() { return {"dark", "light", "night"}; }

QQuickItem* Pictures::show(int page, int palette, QSize size, double textScale, bool mirrored)
{
    window_.resize(size);
    window_.show();
    root_->setSize(size);
    root_->setProperty("page", page);
    root_->setProperty("palette", palette);
    root_->setProperty("textScale", textScale);
    root_->setProperty("mirrored", mirrored);
    QCoreApplication::processEvents();
    waitForPhotos();
    window_.grabWindow();  // what is placed while it is drawn is in its place after that
    return root_.get();
}

QImage Pictures::grab() { return window_.grabWindow(); }

void Pictures::waitForPhotos() const
{
    QElapsedTimer clock;
    clock.start();
    while (isLoading(root_.get()) && clock.elapsed() < 5000) {
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 50);
    }
}

}  // namespace spile::gallery
