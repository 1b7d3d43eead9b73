// The whole way of a live scan, all of it real: a film of a barrel's head is played by Qt
// Multimedia; its frames are tapped and read; the label's barrel is found in the records.
#include "core/scan/barrel_code.hpp"
#include "demo/pictures/head.hpp"
#include "qml/viewmodels/scan_view_model.hpp"
#include "tests/gui/view_model_world.hpp"
#include "tests/support/film.hpp"

#include <QFile>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QSignalSpy>
#include <QtQml/qqmlextensionplugin.h>

Q_IMPORT_QML_PLUGIN(Spile_ThemePlugin)
Q_IMPORT_QML_PLUGIN(Spile_ComponentsPlugin)

using namespace spile;
using viewmodels::ScanViewModel;

class FilmScanTest : public QObject {
    Q_OBJECT

private slots:
    void findsTheBarrelOfAFilm();
};

// The hand turns the phone away from the head and back.
static Bytes filmOfHead(const std::string& mark, const support::SmallCellar& cellar)
{
    std::vector<picture::Image> frames;
    for (int i = 0; i < 6; ++i) {
        demo::HeadScene scene;
        scene.labelText = scan::labelText({mark, cellar.code});
        scene.shownCode = scan::shown(cellar.code);
        scene.mark = "Rum 3";
        scene.seed = 11;
        scene.width = 800;
        scene.height = 600;
        scene.distance_m = 0.52;
        scene.tilt_deg = 4.0 * i;
        scene.roll_deg = 1.5 * i;
        frames.push_back(demo::renderHead(scene));
    }
    return support::filmOf(frames, 12);
}

void FilmScanTest::findsTheBarrelOfAFilm()
{
    support::ViewModelWorld world;
    QVERIFY(world.waitUntilOpen());
    const QString file = QString::fromStdString((world.device.folder.path() / "head.avi").string());
    QFile film(file);
    QVERIFY(film.open(QIODevice::WriteOnly));
    const Bytes bytes = filmOfHead(world.mark, world.small);
    film.write(reinterpret_cast<const char*>(bytes.data()), static_cast<qsizetype>(bytes.size()));
    film.close();

    QQmlEngine engine;
    engine.addImportPath(qEnvironmentVariable("SPILE_QML_MODULES"));
    QQmlComponent component(&engine);
    component.setData("import Spile.Camera\nCameraView { width: 320; height: 240 }", {});
    const std::unique_ptr<QObject> view(component.create());
    QVERIFY2(view != nullptr, qPrintable(component.errorString()));

    ScanViewModel scan(world.context);
    QSignalSpy found(&scan, &ScanViewModel::found);
    connect(view.get(), SIGNAL(codeRead(QString, QString)), &scan, SLOT(offer(QString, QString)));
    scan.begin();
    view->setProperty("source", QUrl::fromLocalFile(file));
    view->setProperty("active", true);
    QTRY_COMPARE_WITH_TIMEOUT(found.size(), 1, 20000);
    QCOMPARE(found.at(0).at(0).toString().toStdString(), world.small.barrel.hex());
    QCOMPARE(scan.name(), "Rum 3");
}

QTEST_MAIN(FilmScanTest)
#include "film_scan_test.moc"
