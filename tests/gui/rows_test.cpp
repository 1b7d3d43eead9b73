// A list changes row by row, and its signals are what a view can follow.
#include "qml/viewmodels/barrel_rows.hpp"
#include "qml/viewmodels/navigator.hpp"
#include "qml/viewmodels/sheet_steps.hpp"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <QTest>

namespace spile::viewmodels {

static std::vector<BarrelLine> linesNamed(const QStringList& names)
{
    std::vector<BarrelLine> lines;
    for (const QString& name : names) {
        BarrelLine line;
        line.id = name.left(1);
        line.title = name;
        lines.push_back(line);
    }
    return lines;
}

class RowsTest : public QObject {
    Q_OBJECT

private slots:
    void replacesOnlyWhatDiffers_data()
    {
        QTest::addColumn<QStringList>("before");
        QTest::addColumn<QStringList>("after");
        QTest::addColumn<int>("signalsSent");
        QTest::newRow("from nothing") << QStringList{} << QStringList{"a", "b"} << 1;
        QTest::newRow("same") << QStringList{"a", "b"} << QStringList{"a", "b"} << 0;
        QTest::newRow("one changed")
            << QStringList{"a", "b", "c"} << QStringList{"a", "bb", "c"} << 1;
        QTest::newRow("one gone") << QStringList{"a", "b", "c"} << QStringList{"a", "c"} << 1;
        QTest::newRow("one moved") << QStringList{"a", "b", "c"} << QStringList{"c", "a", "b"} << 1;
        QTest::newRow("one new in the middle")
            << QStringList{"a", "c"} << QStringList{"a", "b", "c"} << 1;
        QTest::newRow("all others") << QStringList{"a", "b"} << QStringList{"c"} << 3;
    }

    void replacesOnlyWhatDiffers()
    {
        QFETCH(const QStringList, before);
        QFETCH(const QStringList, after);
        QFETCH(const int, signalsSent);
        BarrelRows rows;
        const QAbstractItemModelTester tester(
            &rows, QAbstractItemModelTester::FailureReportingMode::QtTest);
        rows.replace(linesNamed(before));
        const QSignalSpy inserted(&rows, &QAbstractItemModel::rowsInserted);
        const QSignalSpy removed(&rows, &QAbstractItemModel::rowsRemoved);
        const QSignalSpy moved(&rows, &QAbstractItemModel::rowsMoved);
        const QSignalSpy changed(&rows, &QAbstractItemModel::dataChanged);
        const QSignalSpy reset(&rows, &QAbstractItemModel::modelReset);
        rows.replace(linesNamed(after));
        QCOMPARE(rows.rowCount(), after.size());
        for (int i = 0; i < after.size(); ++i) {
            QCOMPARE(rows.data(rows.index(i), BarrelRows::Title).toString(), after.at(i));
        }
        QCOMPARE(inserted.count() + removed.count() + moved.count() + changed.count(), signalsSent);
        QCOMPARE(reset.count(), 0);
    }

    void stepsAreFoundAgainByName()
    {
        SheetSteps steps({"oak", "dried fruit"});
        QVERIFY(steps.isFirst());
        for (int i = 0; i < steps.count(); ++i) {
            SheetSteps other({"oak", "dried fruit"});
            other.goTo(steps.name());
            QCOMPARE(other.index(), steps.index());
            steps.next();
        }
        QVERIFY(steps.isLast());
        steps.goTo("no such step");
        QVERIFY(steps.isLast());
    }

    void thereIsOneWayBack()
    {
        Navigator navigator;
        QVERIFY(!navigator.back());
        navigator.open(Navigator::Barrel);
        navigator.open(Navigator::Draw);
        navigator.replace(Navigator::Taste);
        navigator.open(Navigator::Photo);
        QVERIFY(navigator.back());
        QCOMPARE(navigator.page(), Navigator::Taste);
        navigator.open(Navigator::Barrel);  // it lies below already
        QCOMPARE(navigator.pages(), (QList<Navigator::Page>{Navigator::Due, Navigator::Barrel}));
        navigator.go(Navigator::Today);
        QVERIFY(!navigator.canGoBack());
        QCOMPARE(navigator.listPage(), Navigator::Today);
    }
};

}  // namespace spile::viewmodels

QTEST_GUILESS_MAIN(spile::viewmodels::RowsTest)
#include "rows_test.moc"
