#include "qml/components/chart_axis.hpp"
#include "qml/components/chart_band.hpp"
#include "qml/components/chart_line.hpp"
#include "qml/components/drawing.hpp"

#include <QFontMetricsF>
#include <QImage>
#include <QPainter>
#include <QTest>
#include <limits>

namespace spile::components {

constexpr qreal nan = std::numeric_limits<qreal>::quiet_NaN();

class ChartTest : public QObject {
    Q_OBJECT

private slots:
    void aPointLiesWhereItsNumbersSay();
    void aRangeWithoutExtentLiesInTheMiddle();
    void aLineBreaksWhereThereIsNoNumber();
    void aPointAloneIsAMark();
    void allPointsAreMarksIfOnlyMarksAreAskedFor();
    void marksOfDifferentKindsLookDifferent();
    void nothingIsDrawnOfNothing();
    void fiveHundredPointsAreOneLine();
    void aBandIsClosedAndHasTwoEdges();
    void aBandBreaksWhereOneSideHasNoNumber();
    void aPairAloneIsALine();
    void allWordsOfAnAxisHaveRoomOrEachSecond();
    void wordsAtTheEndsAreHeldInside();
    void anUprightAxisRunsUp();
    void aPathIsUnderstoodOrEmpty();
};

static QList<QPolygonF> linesOf(const QList<QPointF>& points)
{
    ChartLine line;
    line.setSize({200, 100});
    line.setProperty("range", QRectF(0, 0, 10, 10));
    line.setProperty("points", QVariant::fromValue(points));
    return line.lines();
}

static QList<QPointF> marksOf(const QList<QPointF>& points, bool marksOnly)
{
    ChartLine line;
    line.setSize({200, 100});
    line.setProperty("range", QRectF(0, 0, 10, 10));
    line.setProperty("points", QVariant::fromValue(points));
    line.setProperty("marksOnly", marksOnly);
    return line.marks();
}

static void fill(ChartBand& band, const QList<QPointF>& lower, const QList<QPointF>& upper)
{
    band.setSize({200, 100});
    band.setProperty("range", QRectF(0, 0, 10, 10));
    band.setProperty("lower", QVariant::fromValue(lower));
    band.setProperty("upper", QVariant::fromValue(upper));
}

static void lay(ChartAxis& axis, const QStringList& words, const QList<qreal>& places, qreal length)
{
    QFont font;
    font.setPixelSize(20);
    axis.setProperty("font", font);
    axis.setProperty("words", words);
    axis.setProperty("places", QVariant::fromValue(places));
    axis.setProperty("from", 0);
    axis.setProperty("extent", 10);
    axis.setProperty("length", length);
    axis.setProperty("gap", 5);
}

void ChartTest::aPointLiesWhereItsNumbersSay()
{
    const ChartScale scale(QRectF(10, 1, 20, 8), QSizeF(200, 100));
    QCOMPARE(scale.place({10, 1}), QPointF(0, 100));
    QCOMPARE(scale.place({30, 9}), QPointF(200, 0));
    QCOMPARE(scale.place({15, 3}), QPointF(50, 75));
}

void ChartTest::aRangeWithoutExtentLiesInTheMiddle()
{
    const ChartScale scale(QRectF(10, 1, 0, 0), QSizeF(200, 100));
    QCOMPARE(scale.place({10, 1}), QPointF(100, 50));
}

void ChartTest::aLineBreaksWhereThereIsNoNumber()
{
    const auto lines =
        linesOf({{0, 0}, {1, 1}, {2, nan}, {3, 3}, {nan, 4}, {5, 5}, {6, 6}, {7, 7}});
    QCOMPARE(lines.size(), 2);
    QCOMPARE(lines[0], QPolygonF({{0, 100}, {20, 90}}));
    QCOMPARE(lines[1].size(), 3);
}

void ChartTest::aPointAloneIsAMark()
{
    QCOMPARE(marksOf({{5, 5}}, false), QList<QPointF>({{100, 50}}));
    QCOMPARE(marksOf({{0, 0}, {1, nan}, {5, 5}, {6, 6}}, false), QList<QPointF>({{0, 100}}));
}

void ChartTest::allPointsAreMarksIfOnlyMarksAreAskedFor()
{
    QCOMPARE(marksOf({{0, 0}, {1, nan}, {5, 5}, {10, 10}}, true),
             QList<QPointF>({{0, 100}, {100, 50}, {200, 0}}));
}

static QImage markOf(ChartLine::MarkShape shape)
{
    ChartLine line;
    line.setSize({40, 40});
    line.setProperty("range", QRectF(0, 0, 1, 1));
    line.setProperty("points", QVariant::fromValue(QList<QPointF>{{0.5, 0.5}}));
    line.setProperty("tint", QColor(Qt::black));
    line.setProperty("markSize", 16);
    line.setProperty("markShape", shape);
    QImage image(40, 40, QImage::Format_ARGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    line.paint(&painter);
    return image;
}

void ChartTest::marksOfDifferentKindsLookDifferent()
{
    const auto black = [](const QImage& image, int x, int y) {
        return qGray(image.pixel(x, y)) < 100;
    };
    const QImage diamond = markOf(ChartLine::Diamond);
    const QImage disc = markOf(ChartLine::Disc);
    const QImage triangle = markOf(ChartLine::Triangle);
    const QImage ring = markOf(ChartLine::Ring);
    for (const QImage& filled : {diamond, disc, triangle}) {
        QVERIFY(black(filled, 20, 20));
        QVERIFY(!black(filled, 20, 6));
    }
    QVERIFY(black(disc, 25, 15) && !black(diamond, 25, 15));   // a disc is fuller
    QVERIFY(black(triangle, 26, 26) && !black(disc, 26, 26));  // a triangle stands on its base
    QVERIFY(!black(ring, 20, 20) && black(ring, 20, 4));       // a ring is open, and around a mark
}

void ChartTest::nothingIsDrawnOfNothing()
{
    QVERIFY(linesOf({}).isEmpty());
    QVERIFY(linesOf({{nan, nan}}).isEmpty());
    QVERIFY(marksOf({{nan, nan}}, true).isEmpty());
}

void ChartTest::fiveHundredPointsAreOneLine()
{
    QList<QPointF> points;
    for (int i = 0; i < 500; ++i) {
        points.append({i / 50.0, 5.0});
    }
    const auto lines = linesOf(points);
    QCOMPARE(lines.size(), 1);
    QCOMPARE(lines[0].size(), 500);
}

void ChartTest::aBandIsClosedAndHasTwoEdges()
{
    ChartBand band;
    fill(band, {{0, 1}, {10, 2}}, {{0, 3}, {10, 6}});
    QCOMPARE(band.areas().size(), 1);
    QCOMPARE(band.areas()[0], QPolygonF({{0, 70}, {200, 40}, {200, 80}, {0, 90}, {0, 70}}));
    QCOMPARE(band.edges(), QList<QPolygonF>({{{0, 70}, {200, 40}}, {{0, 90}, {200, 80}}}));
}

void ChartTest::aBandBreaksWhereOneSideHasNoNumber()
{
    ChartBand band;
    fill(band, {{0, 1}, {1, 1}, {2, nan}, {3, 1}, {4, 1}},
         {{0, 3}, {1, 3}, {2, 3}, {3, 3}, {4, 3}, {5, 3}});
    QCOMPARE(band.areas().size(), 2);
    QCOMPARE(band.edges().size(), 4);
}

void ChartTest::aPairAloneIsALine()
{
    ChartBand band;
    fill(band, {{5, 1}}, {{5, 3}});
    QVERIFY(band.areas().isEmpty());
    QCOMPARE(band.edges(), QList<QPolygonF>({{{100, 90}, {100, 70}}}));
}

void ChartTest::allWordsOfAnAxisHaveRoomOrEachSecond()
{
    const QStringList months{"Oct", "Dec", "Feb", "Apr", "Jun", "Aug"};
    const QList<qreal> places{0, 2, 4, 6, 8, 10};
    ChartAxis axis;
    lay(axis, months, places, 1000);
    QCOMPARE(axis.every(), 1);
    lay(axis, months, places, 5 * axis.widest());
    QCOMPARE(axis.every(), 2);
    lay(axis, months, places, 1);
    QCOMPARE(axis.every(), 6);
    lay(axis, {}, {}, 100);
    QCOMPARE(axis.every(), 1);
    QCOMPARE(axis.widest(), 0.0);
}

void ChartTest::wordsAtTheEndsAreHeldInside()
{
    ChartAxis axis;
    lay(axis, {"October", "August"}, {0, 10}, 300);
    QCOMPARE(axis.marks(), QList<qreal>({0, 300}));
    QCOMPARE(axis.begins()[0], 0.0);
    const QFontMetricsF metrics(axis.property("font").value<QFont>());
    QCOMPARE(axis.begins()[1], 300 - metrics.horizontalAdvance("August"));
}

void ChartTest::anUprightAxisRunsUp()
{
    ChartAxis axis;
    axis.setProperty("upright", true);
    lay(axis, {"none", "clear", "dominant"}, {0, 5, 10}, 300);
    QCOMPARE(axis.marks(), QList<qreal>({300, 150, 0}));
    QCOMPARE(axis.every(), 1);
}

void ChartTest::aPathIsUnderstoodOrEmpty()
{
    QPainterPath wanted;
    wanted.moveTo(1, 2);
    wanted.lineTo(3.5, 4);
    wanted.lineTo(6, 4);
    wanted.lineTo(6, -7);
    wanted.cubicTo(1, 2, 3, 4, 5, 6);
    wanted.closeSubpath();
    QCOMPARE(pathOf("M1 2 L3.5 4 H6 V-7 C1 2 3 4 5 6 Z"), wanted);
    for (const char* wrong : {"L", "M1", "M1 2 3", "M1 x", "Q1 2", "Z1"}) {
        QVERIFY2(pathOf(wrong).isEmpty(), wrong);
    }
}

}  // namespace spile::components

QTEST_MAIN(spile::components::ChartTest)
#include "chart_test.moc"
