// spile: the touch app.
#include "platform/app/ending.hpp"
#include "platform/app/scratch_cellar.hpp"
#include "platform/app/translations.hpp"
#include "platform/files/standard_places.hpp"
#include "platform/system/disk_file_system.hpp"
#include "platform/system/file_key_store.hpp"
#include "platform/system/system_clock.hpp"
#include "platform/system/system_random.hpp"
#include "qml/theme/typefaces.hpp"
#include "qml/viewmodels/app_view_model.hpp"

#include <QDir>
#include <QFileOpenEvent>
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQmlExtensionPlugin>
#include <QQuickWindow>
#include <QSysInfo>
#include <cstdio>

Q_IMPORT_QML_PLUGIN(Spile_ThemePlugin)
Q_IMPORT_QML_PLUGIN(Spile_ComponentsPlugin)
Q_IMPORT_QML_PLUGIN(Spile_ViewModelsPlugin)
Q_IMPORT_QML_PLUGIN(Spile_ScreensPlugin)

namespace spile::app {

namespace {

/// A day file that the system asks to open, on those systems that do it by an event.
class FileOpener : public QObject {
public:
    explicit FileOpener(viewmodels::AppViewModel& app) : app_(app) {}

    bool eventFilter(QObject* watched, QEvent* event) override
    {
        if (event->type() == QEvent::FileOpen) {
            app_.takeInFile(static_cast<QFileOpenEvent*>(event)->file());
            return true;
        }
        return QObject::eventFilter(watched, event);
    }

private:
    viewmodels::AppViewModel& app_;
};

// The camera's backend: the one that later versions of Qt take by themselves, and that asks for no
// plugins. Read when the camera is first opened.
void chooseCameraBackend()
{
    if (!qEnvironmentVariableIsSet("QT_MEDIA_BACKEND")) {
        qputenv("QT_MEDIA_BACKEND", "ffmpeg");
    }
}

int run(QGuiApplication& application, const Options& options)
{
    system::SystemClock clock;
    system::DiskFileSystem disk;
    system::SystemRandom random;
    Uuid7Source ids{clock, random};
    const Path folder = options.cellar.toStdString();
    system::FileKeyStore keys{disk, folder};
    const Outside outside{clock, disk, random, ids, keys};
    files::StandardPlaces places(folder);
    QDir().mkpath(QFileInfo(options.settings).absolutePath());

    viewmodels::AppViewModel app(outside, places,
                                 {folder, options.settings, QSysInfo::machineHostName()});
    Translations translations(*app.settings());
    FileOpener opener(app);
    application.installEventFilter(&opener);

    theme::Typefaces::load();  // before any text is laid out
    QQmlApplicationEngine engine;
    bool complained = false;
    QObject::connect(&engine, &QQmlEngine::warnings, &app, [&complained] { complained = true; });
    engine.addImportPath(QStringLiteral("qrc:/qt-project.org/imports"));
    engine.addImportPath(QCoreApplication::applicationDirPath() + QStringLiteral("/qml_modules"));
    translations.follow(engine);
    engine.setInitialProperties({{QStringLiteral("app"), QVariant::fromValue(&app)},
                                 {QStringLiteral("standIn"), options.standIn},
                                 {QStringLiteral("width"), options.size.width()},
                                 {QStringLiteral("height"), options.size.height()}});
    engine.load(QUrl(QStringLiteral("qrc:/qt-project.org/imports/Spile/Screens/Main.qml")));
    if (engine.rootObjects().isEmpty()) {
        return 2;
    }
    auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
    QObject::connect(&application, &QGuiApplication::applicationStateChanged, &app,
                     &viewmodels::AppViewModel::applicationStateChanged);
    app.start();
    if (!options.dayFile.isEmpty()) {
        app.takeInFile(options.dayFile);
    }
    if (options.selfTest || !options.pictures.isEmpty()) {
        return goThroughScreens(app, *window, options, complained);
    }
    if (options.quitAtFirstRows) {
        endAtFirstRows(app, *window);
    }
    return QGuiApplication::exec();
}

}  // namespace

}  // namespace spile::app

int main(int argc, char** argv)
{
    spile::app::chooseCameraBackend();
    QGuiApplication application(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("spile"));
    QCoreApplication::setApplicationVersion(QStringLiteral("0.1.0"));
    auto options = spile::app::readOptions(application);
    if (!options.selfTest && options.pictures.isEmpty()) {
        return spile::app::run(application, options);
    }
    const spile::app::ScratchCellar scratch(options.cellar);
    if (!scratch.problem().isEmpty()) {
        std::fprintf(stderr, "spile: %s\n", qPrintable(scratch.problem()));
        return 3;
    }
    options.cellar = scratch.folder();
    options.settings = scratch.folder() + QStringLiteral(".ini");
    return spile::app::run(application, options);
}
