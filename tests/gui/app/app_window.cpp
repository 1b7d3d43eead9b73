#include "tests/gui/app/app_window.hpp"

#include <QQmlComponent>
#include <QTest>
#include <QtQml/qqmlextensionplugin.h>

Q_IMPORT_QML_PLUGIN(Spile_ThemePlugin)
Q_IMPORT_QML_PLUGIN(Spile_ComponentsPlugin)
Q_IMPORT_QML_PLUGIN(Spile_ViewModelsPlugin)
Q_IMPORT_QML_PLUGIN(Spile_ScreensPlugin)

namespace spile::support {

namespace {

constexpr int longestWaitMs = 20'000;
constexpr int touchMs = 60;     // a finger stays about as long
constexpr int lockOutMs = 260;  // of a pad against bouncing

QQuickItem* findIn(QQuickItem* item, const QString& name)
{
    if (!item->isVisible()) {
        return nullptr;
    }
    if (item->objectName() == name) {
        return item;
    }
    for (QQuickItem* child : item->childItems()) {
        if (QQuickItem* found = findIn(child, name)) {
            return found;
        }
    }
    return nullptr;
}

QPointingDevice& touchScreen()
{
    static QPointingDevice* device = QTest::createTouchDevice();
    return *device;
}

// Scrolls what the item lies in, so that it can be touched.
void bringIntoView(QQuickItem* item)
{
    for (QQuickItem* flickable = item->parentItem(); flickable != nullptr;
         flickable = flickable->parentItem()) {
        if (!flickable->inherits("QQuickFlickable")) {
            continue;
        }
        auto* content = flickable->property("contentItem").value<QQuickItem*>();
        const double top = item->mapToItem(content, QPointF()).y();
        const double y = flickable->property("contentY").toDouble();
        if (top < y || top + item->height() > y + flickable->height()) {
            const double most =
                flickable->property("contentHeight").toDouble() - flickable->height();
            flickable->setProperty("contentY", std::max(0.0, std::min(top, most)));
        }
        return;
    }
}

}  // namespace

AppWindow::AppWindow(viewmodels::AppViewModel& app, QSize size) : app_(app)
{
    engine_.addImportPath(QStringLiteral("qrc:/qt-project.org/imports"));
    engine_.addImportPath(qEnvironmentVariable("SPILE_QML_MODULES"));  // where the camera lies
    window_.resize(size);
    QQmlComponent component(&engine_);
    component.setData("import Spile.Screens\nShell {}", QUrl(QStringLiteral("qrc:/shell.qml")));
    QObject* made =
        component.createWithInitialProperties({{QStringLiteral("app"), QVariant::fromValue(&app)}});
    shell_.reset(qobject_cast<QQuickItem*>(made));
    if (!shell_) {
        qFatal("%s", qPrintable(component.errorString()));
    }
    shell_->setParentItem(window_.contentItem());
    resize(size);
    window_.show();
    shell_->forceActiveFocus();
}

void AppWindow::resize(QSize size)
{
    window_.resize(size);
    shell_->setSize(size);
}

QQuickItem* AppWindow::find(const QString& name) const { return findIn(shell_.get(), name); }

bool AppWindow::settle()
{
    return QTest::qWaitFor(
        [this] {
            return !app_.workers().isBusy() && app_.stage() != viewmodels::AppViewModel::Opening;
        },
        longestWaitMs);
}

bool AppWindow::tap(const QString& name)
{
    if (!settle() || !QTest::qWaitFor([&] { return find(name) != nullptr; }) ||
        !QTest::qWaitFor([&] { return find(name)->isEnabled(); })) {
        return false;
    }
    QQuickItem* item = find(name);
    bringIntoView(item);
    QTest::qWait(1);
    const QPoint middle =
        item->mapToScene(QPointF(item->width() / 2, item->height() / 2)).toPoint();
    QTest::touchEvent(&window_, &touchScreen()).press(0, middle, &window_);
    QTest::qWait(touchMs);
    QTest::touchEvent(&window_, &touchScreen()).release(0, middle, &window_);
    const bool settled = settle();
    QTest::qWait(lockOutMs);
    return settled;
}

}  // namespace spile::support
