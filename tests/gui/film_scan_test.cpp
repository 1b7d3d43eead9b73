// The whole way of a live scan, all of it real: a film of a barrel's head is played by Qt
// Multimedia; its frames are tapped and read; the label's barrel is found in the records.
#include "core/picture/transform.hpp"
#include "core/scan/barrel_code.hpp"
#include "core/scan/zxing_reading.hpp"
#include "qml/viewmodels/scan_view_model.hpp"
#include "tests/gui/view_model_world.hpp"
#include "tests/support/head_film.hpp"

#include <QFile>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QSignalSpy>
#include <QtQml/qqmlextensionplugin.h>
#include <algorithm>

Q_IMPORT_QML_PLUGIN(Spile_ThemePlugin)
Q_IMPORT_QML_PLUGIN(Spile_ComponentsPlugin)

using namespace spile;
using support::HeadFilm;
using viewmodels::ScanViewModel;

Q_DECLARE_METATYPE(HeadFilm)

class FilmScanTest : public QObject {
    Q_OBJECT

private slots:
    void aHardFilmIsNotReadByZxingAlone();
    void findsTheBarrelOfAFilm_data();
    void findsTheBarrelOfAFilm();
};

void FilmScanTest::aHardFilmIsNotReadByZxingAlone()
{
    const auto isRead = [](const picture::Image& frame) {
        const picture::Image grey = picture::toGrey(frame);
        return !scan::readByZxing(viewOf(grey), {}).empty();
    };
    const scan::LabelText label{"ABCD", "7K2QFM"};
    const auto clear = support::headFrames(label, "Rum 3", HeadFilm::Clear);
    QVERIFY(std::all_of(clear.begin(), clear.end(), isRead));
    const auto hard = support::headFrames(label, "Rum 3", HeadFilm::Hard);
    QVERIFY(std::none_of(hard.begin(), hard.end(), isRead));
}

void FilmScanTest::findsTheBarrelOfAFilm_data()
{
    QTest::addColumn<HeadFilm>("kind");
    QTest::newRow("clear") << HeadFilm::Clear;
    QTest::newRow("stained, in poor light") << HeadFilm::Hard;
}

void FilmScanTest::findsTheBarrelOfAFilm()
{
    QFETCH(const HeadFilm, kind);
    support::ViewModelWorld world;
    QVERIFY(world.waitUntilOpen());
    const QString file = QString::fromStdString((world.device.folder.path() / "head.avi").string());
    QFile film(file);
    QVERIFY(film.open(QIODevice::WriteOnly));
    const Bytes bytes = support::headFilm({world.mark, world.small.code}, "Rum 3", kind);
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
    QSignalSpy read(view.get(), SIGNAL(codesRead()));
    scan.begin();
    view->setProperty("source", QUrl::fromLocalFile(file));
    view->setProperty("active", true);
    QTRY_VERIFY_WITH_TIMEOUT(!read.isEmpty(), 20000);
    scan.offer(view->property("texts").toStringList(), view->property("formats").toStringList());
    QTRY_COMPARE_WITH_TIMEOUT(found.size(), 1, 20000);
    QCOMPARE(found.at(0).at(0).toString().toStdString(), world.small.barrel.hex());
    QCOMPARE(scan.name(), "Rum 3");
}

QTEST_MAIN(FilmScanTest)
#include "film_scan_test.moc"
