// Each page of the gallery in each palette is what it was when somebody last looked at it:
// tests/fixtures/gui, 390 x 844 at two pixels to one, painted by the software renderer with the
// fonts of the app. Not a pixel differs.
//
// SPILE_NEW_PICTURES=1 writes them anew. Look at what changed before it is kept.
#include "demo/gallery/pictures.hpp"

#include <QDir>
#include <QTest>

namespace spile::gallery {

class PicturesTest : public QObject {
    Q_OBJECT

private slots:
    void eachPageIsAsItWas_data();
    void eachPageIsAsItWas();
    void theFiveEdgesDifferInGrey_data();
    void theFiveEdgesDifferInGrey();

private:
    Pictures pictures_;
};

static QString fixture(const QString& page, const QString& palette)
{
    return QStringLiteral(SPILE_SOURCE_DIR "/tests/fixtures/gui/%1-%2.png")
        .arg(page.toLower(), palette);
}

static int differingPixels(const QImage& one, const QImage& other)
{
    int count = 0;
    for (int y = 0; y < one.height(); ++y) {
        for (int x = 0; x < one.width(); ++x) {
            count += one.pixel(x, y) != other.pixel(x, y) ? 1 : 0;
        }
    }
    return count;
}

void PicturesTest::eachPageIsAsItWas_data()
{
    QTest::addColumn<int>("page");
    QTest::addColumn<int>("palette");
    for (int page = 0; page < pictures_.pages().size(); ++page) {
        for (int palette = 0; palette < Pictures::palettes().size(); ++palette) {
            QTest::addRow("%s, %s", qPrintable(pictures_.pages()[page]),
                          qPrintable(Pictures::palettes()[palette]))
                << page << palette;
        }
    }
}

void PicturesTest::eachPageIsAsItWas()
{
    QFETCH(const int, page);
    QFETCH(const int, palette);
    pictures_.show(page, palette, {390, 844});
    const QImage now = pictures_.grab().convertToFormat(QImage::Format_RGB32);
    QCOMPARE(now.size(), QSize(780, 1688));
    const QString file = fixture(pictures_.pages()[page], Pictures::palettes()[palette]);
    if (qEnvironmentVariableIsSet("SPILE_NEW_PICTURES")) {
        constexpr int smallest = 0;  // of PNG: the most effort
        QVERIFY(QDir().mkpath(QFileInfo(file).path()) && now.save(file, "PNG", smallest));
    }
    const QImage before = QImage(file).convertToFormat(QImage::Format_RGB32);
    QVERIFY2(!before.isNull(), qPrintable(file));
    QCOMPARE(before.size(), now.size());
    const int differing = differingPixels(now, before);
    if (differing > 0) {
        const QString seen = QDir::temp().filePath(QFileInfo(file).fileName());
        now.save(seen);
        QFAIL(qPrintable(QStringLiteral("%1 pixels differ; see %2").arg(differing).arg(seen)));
    }
}

void PicturesTest::theFiveEdgesDifferInGrey_data()
{
    QTest::addColumn<int>("palette");
    for (int palette = 0; palette < Pictures::palettes().size(); ++palette) {
        QTest::addRow("%s", qPrintable(Pictures::palettes()[palette])) << palette;
    }
}

void PicturesTest::theFiveEdgesDifferInGrey()
{
    QFETCH(const int, palette);
    const QQuickItem* root =
        pictures_.show(static_cast<int>(pictures_.pages().indexOf("Glyphs")), palette, {390, 844});
    const QImage page = pictures_.grab().convertToFormat(QImage::Format_Grayscale8);
    QList<QImage> edges;
    for (int standing = 0; standing < 5; ++standing) {
        const auto* edge = root->findChild<QQuickItem*>(QStringLiteral("edge%1").arg(standing));
        QVERIFY(edge != nullptr);
        const QRectF place = edge->mapRectToScene(edge->boundingRect());
        edges.append(page.copy(QRectF(place.topLeft() * 2, place.size() * 2).toRect()));
        // Black where it is cut away: a tint of its own must not be what tells it apart.
        edges.last() = edges.last().createMaskFromColor(edges.last().pixel(1, 1), Qt::MaskOutColor);
    }
    for (qsizetype one = 0; one < edges.size(); ++one) {
        for (qsizetype other = one + 1; other < edges.size(); ++other) {
            const int differing = differingPixels(edges[one], edges[other]);
            QVERIFY2(
                differing > 0.05 * edges[one].width() * edges[one].height(),
                qPrintable(QStringLiteral("%1 and %2: %3").arg(one).arg(other).arg(differing)));
        }
    }
}

}  // namespace spile::gallery

QTEST_MAIN(spile::gallery::PicturesTest)
#include "pictures_test.moc"
