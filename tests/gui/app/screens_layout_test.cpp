// Every screen of the app at several sizes of window and text, in longer words and mirrored: no
// text cut or over another, no pad too small.
#include "core/cellar/settling.hpp"
#include "platform/app/tour.hpp"
#include "tests/gui/app/app_window.hpp"
#include "tests/gui/app/test_app.hpp"
#include "tests/gui/audit/layout_audit.hpp"

#include <QGuiApplication>
#include <QTest>

namespace spile {

namespace {

// One thing of each kind that brings no barrels of its own.
void leaveToSettle(support::TestApp& test)
{
    using cellar::Unsettled;
    for (const Unsettled what :
         {Unsettled::TwoValues, Unsettled::VoidedAndCorrected, Unsettled::Copied,
          Unsettled::SetAside, Unsettled::Waiting, Unsettled::Newer}) {
        test.leaveToSettle(static_cast<int>(what));
    }
}

}  // namespace

class ScreensLayout : public QObject {
    Q_OBJECT

private slots:
    void smallPhone_data() { inEachTextSize({360, 640}); }
    void smallPhone() { nothingIsCutOrCovered(); }
    void phone_data() { inEachTextSize({390, 844}); }
    void phone() { nothingIsCutOrCovered(); }
    void desk_data() { inEachTextSize({1280, 800}); }
    void desk() { nothingIsCutOrCovered(); }

    void otherWays_data()
    {
        addColumns();
        QTest::addRow("two columns") << QSize(700, 960) << 100 << false << false;
        QTest::addRow("long words") << QSize(390, 844) << 100 << true << false;
        QTest::addRow("long words, desk") << QSize(1280, 800) << 100 << true << false;
        QTest::addRow("mirrored") << QSize(390, 844) << 100 << false << true;
        QTest::addRow("mirrored, desk") << QSize(1280, 800) << 100 << false << true;
    }
    void otherWays() { nothingIsCutOrCovered(); }

    // Phones have a bar of the system at the foot and a hand at the sides.
    void padsAreLargeEnoughAndKeepOff()
    {
        for (const QSize& size :
             {QSize(360, 640), QSize(390, 844), QSize(412, 915), QSize(600, 960)}) {
            support::TestApp test;
            test.beginWithBarrels(3, 2);
            leaveToSettle(test);
            support::AppWindow shown(*test.app(), size);
            tests::LayoutAudit audit;
            const double mm = 5.8;  // what the theme takes the offscreen screen for
            const bool low = size.height() < 125 * mm;
            audit.setProperty("leastPadHeight", (low ? 10.4 : 12.9) * mm);
            audit.setProperty("leastGap", 1.9 * mm);
            QStringList findings;
            QVERIFY(app::Tour(*test.app(), shown.window()).run([&](const QString& name) {
                // The four of a stepper share the width of the phone; so do the keys of a code.
                static const QStringList fourInARow{QStringLiteral("draw"),
                                                    QStringLiteral("bench"),
                                                    QStringLiteral("lot-pour-away"),
                                                    QStringLiteral("barrel-cost"),
                                                    QStringLiteral("taste-readings"),
                                                    QStringLiteral("record-gauge"),
                                                    QStringLiteral("record-empty"),
                                                    QStringLiteral("record-fill"),
                                                    QStringLiteral("register-full"),
                                                    QStringLiteral("settings"),
                                                    QStringLiteral("step-caution"),
                                                    QStringLiteral("step-gas"),
                                                    QStringLiteral("step-readings"),
                                                    QStringLiteral("step-gauge"),
                                                    QStringLiteral("empty-way"),
                                                    QStringLiteral("empty-pressure"),
                                                    QStringLiteral("empty-out"),
                                                    QStringLiteral("empty-heel"),
                                                    QStringLiteral("finish-trial"),
                                                    QStringLiteral("finish-contact"),
                                                    QStringLiteral("carbonate-keg"),
                                                    QStringLiteral("carbonate-prime"),
                                                    QStringLiteral("package-plan"),
                                                    QStringLiteral("package-label"),
                                                    QStringLiteral("package-code"),
                                                    QStringLiteral("climate"),
                                                    QStringLiteral("calculate-purge"),
                                                    QStringLiteral("what-if"),
                                                    QStringLiteral("flight-draw"),
                                                    QStringLiteral("labels"),
                                                    QStringLiteral("labels-spare"),
                                                    QStringLiteral("windows"),
                                                    QStringLiteral("clock-0"),
                                                    QStringLiteral("clock-1")};
                // So do three pads of a narrow phone, or of a column that is one.
                const double usual = size.width() < 390 || size.width() >= 600 ? 16.5 : 17;
                audit.setProperty("leastPadWidth", (fourInARow.contains(name) ? 12.1 : usual) * mm);
                for (const QString& finding : audit.findings(&shown.shell())) {
                    findings << name + QStringLiteral(": ") + finding;
                }
                return true;
            }));
            QVERIFY2(findings.isEmpty(), qPrintable(findings.join(QLatin1Char('\n'))));
        }
    }

private:
    static void addColumns()
    {
        QTest::addColumn<QSize>("size");
        QTest::addColumn<int>("percent");
        QTest::addColumn<bool>("longWords");
        QTest::addColumn<bool>("mirrored");
    }

    static void inEachTextSize(const QSize& size)
    {
        addColumns();
        for (const int percent : {100, 130, 160}) {
            QTest::addRow("%d %%", percent) << size << percent << false << false;
        }
    }

    void nothingIsCutOrCovered()
    {
        QFETCH(const QSize, size);
        QFETCH(const int, percent);
        QFETCH(const bool, longWords);
        QFETCH(const bool, mirrored);
        QGuiApplication::setLayoutDirection(mirrored ? Qt::RightToLeft : Qt::LeftToRight);
        support::TestApp test;
        if (longWords) {
            test.useLongWords();
        }
        test.beginWithBarrels(3, 2);
        leaveToSettle(test);
        test.app()->settings()->stepText((percent - test.app()->settings()->textPercent()) / 10);
        support::AppWindow shown(*test.app(), size);
        tests::LayoutAudit audit;
        QStringList findings;
        const bool done = app::Tour(*test.app(), shown.window()).run([&](const QString& name) {
            for (const QString& finding : audit.findings(&shown.shell())) {
                findings << name + QStringLiteral(": ") + finding;
            }
            return true;
        });
        QVERIFY(done);
        QVERIFY2(findings.isEmpty(), qPrintable(findings.join(QLatin1Char('\n'))));
    }
};

}  // namespace spile

QTEST_MAIN(spile::ScreensLayout)
#include "screens_layout_test.moc"
