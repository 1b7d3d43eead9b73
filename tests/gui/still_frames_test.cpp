#include "qml/viewmodels/still_frames.hpp"

#include "core/picture/encode.hpp"
#include "tests/support/symbol_pictures.hpp"

#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

using namespace spile;
using viewmodels::StillFrames;

class StillFramesTest : public QObject {
    Q_OBJECT

private slots:
    void readsThePicturesOfAFolderAgainAndAgain();
    void readsOneFile();
    void isStillWhileItIsNotActive();
    void saysThatThereIsNoPicture();
    void saysThatAPictureCannotBeRead();
    void takesACopyAsAPhoto();
    void failsToTakeAPhotoOfNothing();

private:
    static QString put(const QTemporaryDir& folder, const QString& name, const Bytes& bytes);
    static Bytes pictureOf(const char* text);
};

QString StillFramesTest::put(const QTemporaryDir& folder, const QString& name, const Bytes& bytes)
{
    QFile file(folder.filePath(name));
    if (file.open(QIODevice::WriteOnly)) {
        file.write(reinterpret_cast<const char*>(bytes.data()),
                   static_cast<qsizetype>(bytes.size()));
    }
    return file.fileName();
}

Bytes StillFramesTest::pictureOf(const char* text)
{
    return picture::encodePng(support::drawSymbol(text)).value();
}

void StillFramesTest::readsThePicturesOfAFolderAgainAndAgain()
{
    const QTemporaryDir folder;
    put(folder, "a.png", pictureOf("first"));
    put(folder, "b.PNG", pictureOf("second"));
    put(folder, "c.txt", pictureOf("not a picture by its name"));
    StillFrames stills;
    QSignalSpy read(&stills, &StillFrames::codesRead);
    stills.setSource(QUrl::fromLocalFile(folder.path()));
    stills.setActive(true);
    QTRY_VERIFY(read.size() >= 3);
    QCOMPARE(read.at(0).at(0).toStringList(), QStringList{"first"});
    QCOMPARE(read.at(0).at(1).toStringList(), QStringList{"qr"});
    QCOMPARE(read.at(1).at(0).toStringList(), QStringList{"second"});
    QCOMPARE(read.at(2).at(0).toStringList(), QStringList{"first"});
    QCOMPARE(stills.problem(), "");
    QVERIFY(QFile::exists(stills.current().toLocalFile()));
}

void StillFramesTest::readsOneFile()
{
    const QTemporaryDir folder;
    StillFrames stills;
    QSignalSpy read(&stills, &StillFrames::codesRead);
    stills.setActive(true);
    stills.setSource(QUrl::fromLocalFile(put(folder, "a.png", pictureOf("only"))));
    QTRY_VERIFY(read.size() >= 2);
    QCOMPARE(read.at(1).at(0).toStringList(), QStringList{"only"});
}

void StillFramesTest::isStillWhileItIsNotActive()
{
    const QTemporaryDir folder;
    StillFrames stills;
    QSignalSpy read(&stills, &StillFrames::codesRead);
    stills.setSource(QUrl::fromLocalFile(put(folder, "a.png", pictureOf("only"))));
    QTest::qWait(600);  // longer than a picture is shown
    QCOMPARE(read.size(), 0);
    QCOMPARE(stills.problem(), "");
    stills.setActive(true);
    QTRY_VERIFY(!read.isEmpty());
    stills.setActive(false);
    read.clear();
    QTest::qWait(600);
    QCOMPARE(read.size(), 0);
    QVERIFY(stills.current().isEmpty());
}

void StillFramesTest::saysThatThereIsNoPicture()
{
    const QTemporaryDir folder;
    StillFrames stills;
    stills.setSource(QUrl::fromLocalFile(folder.path()));
    stills.setActive(true);
    QCOMPARE(stills.problem(), "absent");
    stills.setSource(QUrl::fromLocalFile(folder.filePath("none.png")));
    QCOMPARE(stills.problem(), "absent");
}

void StillFramesTest::saysThatAPictureCannotBeRead()
{
    const QTemporaryDir folder;
    StillFrames stills;
    stills.setSource(QUrl::fromLocalFile(put(folder, "a.jpg", {1, 2, 3, 4})));
    stills.setActive(true);
    QTRY_COMPARE(stills.problem(), "unreadable");
}

void StillFramesTest::takesACopyAsAPhoto()
{
    const QTemporaryDir folder;
    const QTemporaryDir photos;
    const QString source = put(folder, "a.png", pictureOf("only"));
    StillFrames stills;
    QSignalSpy taken(&stills, &StillFrames::photoTaken);
    stills.setSource(QUrl::fromLocalFile(source));
    stills.setActive(true);
    QTRY_VERIFY(!stills.current().isEmpty());
    stills.takePhoto(photos.path());
    QTRY_COMPARE(taken.size(), 1);
    QFile copy(taken.at(0).at(0).toString());
    QVERIFY(copy.fileName().startsWith(photos.path()));
    QFile original(source);
    QVERIFY(copy.open(QIODevice::ReadOnly) && original.open(QIODevice::ReadOnly));
    QCOMPARE(copy.readAll(), original.readAll());
}

void StillFramesTest::failsToTakeAPhotoOfNothing()
{
    const QTemporaryDir photos;
    StillFrames stills;
    QSignalSpy failed(&stills, &StillFrames::photoFailed);
    stills.takePhoto(photos.path());
    QTRY_COMPARE(failed.size(), 1);
    QVERIFY(QDir(photos.path()).isEmpty());
}

QTEST_GUILESS_MAIN(StillFramesTest)
#include "still_frames_test.moc"
