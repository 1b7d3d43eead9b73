#include "core/picture/header.hpp"
#include "core/scan/barrel_code.hpp"
#include "demo/pictures/head.hpp"
#include "tests/support/film.hpp"
#include "tests/support/symbol_pictures.hpp"
#include "tests/support/thread_time.hpp"

#include <QEventLoop>
#include <QFile>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QQmlExpression>
#include <QQuickItem>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QVideoFrame>
#include <QVideoSink>
#include <QtQml/qqmlextensionplugin.h>
#include <algorithm>
#include <array>
#include <thread>
#include <unistd.h>

Q_IMPORT_QML_PLUGIN(Spile_ThemePlugin)
Q_IMPORT_QML_PLUGIN(Spile_ComponentsPlugin)

using namespace spile;

namespace {

constexpr const char* text = "S1ABCD7K2QFM";

// A film that can be opened, but none of its pictures can be decoded.
Bytes filmWithoutPictures()
{
    Bytes film = support::filmOf({picture::Image{16, 16, picture::PixelFormat::Rgb8,
                                                 std::vector<std::uint8_t>(16 * 16 * 3, 90)}},
                                 1);
    const std::string_view start = "00dc";
    const auto frame = std::search(film.begin(), film.end(), start.begin(), start.end());
    std::fill(frame + 8, film.end() - 24, std::uint8_t{0});  // up to the index
    return film;
}

// A grey frame in memory.
QVideoFrame frameOf(const picture::Image& symbol)
{
    QVideoFrame frame(
        QVideoFrameFormat(QSize(symbol.width, symbol.height), QVideoFrameFormat::Format_Y8));
    if (frame.map(QVideoFrame::WriteOnly)) {
        for (int y = 0; y < symbol.height; ++y) {
            std::copy_n(symbol.pixels.begin() + std::ptrdiff_t{y} * symbol.width, symbol.width,
                        frame.bits(0) + std::ptrdiff_t{y} * frame.bytesPerLine(0));
        }
        frame.unmap();
    }
    return frame;
}

// What of this process lies in memory.
qint64 residentBytes()
{
    QFile pages(QStringLiteral("/proc/self/statm"));
    if (!pages.open(QIODevice::ReadOnly)) {
        return 0;
    }
    return pages.readAll().split(' ').at(1).toLongLong() * sysconf(_SC_PAGESIZE);
}

// A barrel's head, held by a hand that moves.
Bytes filmOfAHead()
{
    std::vector<picture::Image> frames;
    for (int i = 0; i < 5; ++i) {
        demo::HeadScene scene;
        scene.labelText = text;
        scene.shownCode = "7K2-QFM";
        scene.mark = "Rum 3";
        scene.seed = 4;
        scene.width = 800;
        scene.height = 600;
        scene.distance_m = 0.5;
        scene.tilt_deg = 4.0 * i;
        scene.roll_deg = 1.0 * i;
        frames.push_back(demo::renderHead(scene));
    }
    return support::filmOf(frames, 10);
}

}  // namespace

class CameraViewTest : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void init();
    void cleanup() { view_.reset(); }
    void saysWhetherThereIsACamera();
    void readsACodeInAFilm();
    void readsNothingWhileItIsNotActive();
    void keepsAPhotoOfAFilm();
    void saysThatAFilmCannotBeRead();
    void saysThatNoPictureComes();
    void readsFramesOfAnyThread();
    void dropsFramesOfUnknownFormat();
    void mayGoWhileFramesCome();
    void doesNoWorkInTheThreadOfThePages();
    void needsNoMoreMemoryForManyFrames();

private:
    [[nodiscard]] QString problem() const { return view_->property("problem").toString(); }
    [[nodiscard]] QVideoSink* sink() const;
    void play(const QString& name);
    void write(const QString& name, const Bytes& bytes);
    [[nodiscard]] QString file(const QString& name) const { return folder_.filePath(name); }

    QTemporaryDir folder_;
    QQmlEngine engine_;
    std::unique_ptr<QQuickItem> view_;
};

void CameraViewTest::initTestCase()
{
    engine_.addImportPath(qEnvironmentVariable("SPILE_QML_MODULES"));
    write("head.avi", filmOfAHead());
    write("no-film.avi", {1, 2, 3, 4});
    write("no-pictures.avi", filmWithoutPictures());
}

void CameraViewTest::write(const QString& name, const Bytes& bytes)
{
    QFile out(file(name));
    QVERIFY(out.open(QIODevice::WriteOnly));
    out.write(reinterpret_cast<const char*>(bytes.data()), static_cast<qsizetype>(bytes.size()));
}

void CameraViewTest::init()
{
    QQmlComponent component(&engine_);
    component.setData("import Spile.Camera\nCameraView { width: 320; height: 240 }", {});
    view_.reset(qobject_cast<QQuickItem*>(component.create()));
    QVERIFY2(view_ != nullptr, qPrintable(component.errorString()));
}

void CameraViewTest::play(const QString& name)
{
    view_->setProperty("source", QUrl::fromLocalFile(file(name)));
    view_->setProperty("active", true);
}

QVideoSink* CameraViewTest::sink() const
{
    for (QQuickItem* item : view_->childItems()) {
        if (auto* found = item->property("videoSink").value<QVideoSink*>()) {
            return found;
        }
    }
    return nullptr;
}

void CameraViewTest::saysWhetherThereIsACamera()
{
    QQmlComponent devices(&engine_);
    devices.setData("import QtMultimedia\nMediaDevices { property int count: videoInputs.length }",
                    {});
    const std::unique_ptr<QObject> found(devices.create());
    QVERIFY(found != nullptr);
    const bool hasCamera = found->property("count").toInt() > 0;
    QCOMPARE(problem(), "");
    view_->setProperty("active", true);
    if (hasCamera) {
        QTest::qWait(100);
        QVERIFY(problem() != "absent");
        return;
    }
    QTRY_COMPARE(problem(), "absent");
    QSignalSpy failed(view_.get(), SIGNAL(photoFailed()));
    QMetaObject::invokeMethod(view_.get(), "takePhoto", Q_ARG(QString, folder_.path()));
    QTRY_COMPARE(failed.size(), 1);
}

void CameraViewTest::readsACodeInAFilm()
{
    QSignalSpy read(view_.get(), SIGNAL(codesRead()));
    play("head.avi");
    QTRY_VERIFY_WITH_TIMEOUT(read.size() > 0, 20000);
    // A head may have both of its symbols in view.
    QStringList texts = view_->property("texts").toStringList();
    QStringList formats = view_->property("formats").toStringList();
    QCOMPARE(formats.size(), texts.size());
    texts.removeDuplicates();
    formats.removeDuplicates();
    QCOMPARE(texts, QStringList{text});
    QCOMPARE(formats, QStringList{"qr"});
    QCOMPARE(problem(), "");
}

void CameraViewTest::readsNothingWhileItIsNotActive()
{
    QSignalSpy read(view_.get(), SIGNAL(codesRead()));
    const picture::Image symbol = support::drawSymbol(text);
    sink()->setVideoFrame(frameOf(symbol));
    QTest::qWait(300);
    QCOMPARE(read.size(), 0);
    view_->setProperty("active", true);
    sink()->setVideoFrame(frameOf(symbol));
    QTRY_COMPARE(read.size(), 1);
}

void CameraViewTest::keepsAPhotoOfAFilm()
{
    QSignalSpy read(view_.get(), SIGNAL(codesRead()));
    QSignalSpy taken(view_.get(), SIGNAL(photoTaken(QString)));
    play("head.avi");
    QTRY_VERIFY_WITH_TIMEOUT(read.size() > 0, 20000);
    const QTemporaryDir photos;
    QMetaObject::invokeMethod(view_.get(), "takePhoto", Q_ARG(QString, photos.path()));
    QTRY_COMPARE(taken.size(), 1);
    QFile photo(taken.at(0).at(0).toString());
    QVERIFY(photo.open(QIODevice::ReadOnly));
    const QByteArray bytes = photo.readAll();
    const auto header = picture::readHeader({reinterpret_cast<const std::uint8_t*>(bytes.data()),
                                             static_cast<std::size_t>(bytes.size())});
    QVERIFY(header.has_value());
    QCOMPARE(header->width, 800);
}

void CameraViewTest::saysThatAFilmCannotBeRead()
{
    play("no-film.avi");
    QTRY_COMPARE_WITH_TIMEOUT(problem(), "unreadable", 10000);
}

void CameraViewTest::saysThatNoPictureComes()
{
    view_->setProperty("patience", 50);
    play("no-pictures.avi");
    QTRY_COMPARE(problem(), "busy");
    sink()->setVideoFrame(frameOf(support::plainPicture(64, 64)));
    QTRY_COMPARE(problem(), "");  // one has come after all
    view_->setProperty("active", false);
    view_->setProperty("active", true);
    QTRY_COMPARE(problem(), "busy");
}

void CameraViewTest::readsFramesOfAnyThread()
{
    play("head.avi");
    QSignalSpy read(view_.get(), SIGNAL(codesRead()));
    std::thread other([sink = sink()] {
        for (int i = 0; i < 50; ++i) {
            sink->setVideoFrame(frameOf(support::plainPicture(64, 64)));
        }
    });
    other.join();
    QTRY_VERIFY_WITH_TIMEOUT(read.size() > 0, 20000);
}

void CameraViewTest::dropsFramesOfUnknownFormat()
{
    view_->setProperty("patience", 60000);
    play("no-pictures.avi");
    const QVideoFrame unknown(QVideoFrameFormat(QSize(64, 64), QVideoFrameFormat::Format_AYUV));
    QVERIFY(unknown.isValid());
    sink()->setVideoFrame(unknown);
    QTRY_COMPARE(problem(), "unreadable");
    sink()->setVideoFrame(frameOf(support::plainPicture(64, 64)));
    QTRY_COMPARE(problem(), "");
}

void CameraViewTest::mayGoWhileFramesCome()
{
    for (int i = 0; i < 3; ++i) {
        QSignalSpy read(view_.get(), SIGNAL(codesRead()));
        play("head.avi");
        QTRY_VERIFY_WITH_TIMEOUT(read.size() > 0, 20000);
        init();
    }
}

// What this thread does for a frame is little beside copying its luminance once.
void CameraViewTest::doesNoWorkInTheThreadOfThePages()
{
    constexpr int times = 50;
    const picture::Image large = support::plainPicture(3840, 2160);
    const std::array frames = {frameOf(large), frameOf(large)};  // a sink passes over an equal one
    QSignalSpy nothing(view_.get(), SIGNAL(nothingRead(QString)));
    view_->setProperty("active", true);
    const double copying = support::threadSeconds([&] {
        for (int i = 0; i < times; ++i) {
            picture::Image copy = large;
            QVERIFY(copy.pixels[static_cast<std::size_t>(i)] == 220);
        }
    });
    const double offering = support::threadSeconds([&] {
        for (int i = 0; i < times; ++i) {
            sink()->setVideoFrame(frames[static_cast<std::size_t>(i) % 2]);
            QCoreApplication::processEvents();
        }
    });
    QTRY_VERIFY_WITH_TIMEOUT(!nothing.isEmpty(), 20000);
    QVERIFY2(
        4 * offering < copying,
        qPrintable(QStringLiteral("%1 s beside %2 s").arg(offering / times).arg(copying / times)));
}

void CameraViewTest::needsNoMoreMemoryForManyFrames()
{
    constexpr int frames = 5000;
    constexpr qint64 spare = 1 << 20;
    const picture::Image symbol = support::drawSymbol(text);
    const picture::Image plain = support::plainPicture(symbol.width, symbol.height);
    QSignalSpy read(view_.get(), SIGNAL(codesRead()));
    QSignalSpy nothing(view_.get(), SIGNAL(nothingRead(QString)));
    QEventLoop answered;
    connect(view_.get(), SIGNAL(codesRead()), &answered, SLOT(quit()));
    connect(view_.get(), SIGNAL(nothingRead(QString)), &answered, SLOT(quit()));
    view_->setProperty("active", true);
    qint64 before = 0;
    for (int i = 1; i <= frames; ++i) {
        sink()->setVideoFrame(frameOf(i % 4 == 0 ? plain : symbol));
        answered.exec();
        if (i == frames / 10) {
            before = residentBytes();
        }
    }
    QCOMPARE(read.size() + nothing.size(), frames);
    QCOMPARE(nothing.size(), frames / 4);
    const qint64 grown = residentBytes() - before;
    QVERIFY2(grown < spare, qPrintable(QString::number(grown)));
}

QTEST_MAIN(CameraViewTest)
#include "camera_view_test.moc"
