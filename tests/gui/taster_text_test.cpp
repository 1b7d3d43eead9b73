// What the tasters are told: steps of the ladder, not points of the line, and nothing where nothing
// can be told.
#include "qml/viewmodels/taster_text.hpp"

#include "tests/support/test_device.hpp"

#include <QTest>

namespace spile::viewmodels {

using panel::Advice;
using panel::AdviceKind;
using panel::Judgement;

class TasterTextTest : public QObject {
    Q_OBJECT

private slots:
    void tellsEachAdviceWithItsReason_data()
    {
        QTest::addColumn<int>("kind");
        QTest::addColumn<double>("value");
        QTest::addColumn<QString>("told");
        const auto row = [](const char* name, AdviceKind kind, double value, const char* told) {
            QTest::newRow(name) << static_cast<int>(kind) << value << QString::fromUtf8(told);
        };
        row("too few", AdviceKind::TooFew, 0, "Needs 4 more ");
        row("steady", AdviceKind::Steady, 0, "Steady.");
        row("high", AdviceKind::ReadsHigh, 1.625,
            "Reads about 1.3 steps high at oak (sure within 0.4).");
        row("low", AdviceKind::ReadsLow, -1.625,
            "Reads about 1.3 steps low at oak (sure within 0.4).");
        row("wide", AdviceKind::Wide, 1.8, "Scatters about 1.8 times as much ");
        row("narrow", AdviceKind::NarrowRange, 0.5, "Uses only about 50 % of the range ");
        row("wide range", AdviceKind::WideRange, 1.7, "Uses about 1.7 times the range ");
        row("up", AdviceKind::Drifting, 2.5, "Reads about 2.0 steps higher each year at oak ");
        row("down", AdviceKind::Drifting, -2.5, "Reads about 2.0 steps lower each year at oak ");
        row("lately up", AdviceKind::OutOfLineLately, 2.5,
            "Read about 2.0 steps higher than before ");
        row("lately down", AdviceKind::OutOfLineLately, -2.5,
            "Read about 2.0 steps lower than before ");
    }
    void tellsEachAdviceWithItsReason()
    {
        QFETCH(int, kind);
        QFETCH(double, value);
        QFETCH(QString, told);
        const support::TestDevice device{3};
        Formats formats{device.clock};
        formats.locale = QLocale(QLocale::English);
        const Advice advice{static_cast<AdviceKind>(kind), 0, {value, 0.25}, 1, 4};
        const QString text = TasterText::advice(advice, QStringLiteral("oak"), formats);
        QVERIFY2(text.startsWith(told), qUtf8Printable(text));
    }

    void gradesAgreementAtItsThresholds()
    {
        QVERIFY(agreed(0.75, 0.9, 3)
                    .startsWith(QLatin1String("Agreement: good with one taster, good with 3 ")));
        QVERIFY(agreed(0.5, 0.74, 2)
                    .startsWith(QLatin1String("Agreement: fair with one taster, fair with 2 ")));
        QVERIFY(agreed(0.49, 0.75, 4)
                    .startsWith(QLatin1String("Agreement: poor with one taster, good with 4 ")));
        QCOMPARE(agreed(0.6, 0.6, 1), QStringLiteral("Agreement: fair with one taster."));
    }

    void gradesNothingThatCannotBeJudged()
    {
        for (const Judgement judgement :
             {Judgement::TooFew, Judgement::SamplesDoNotDiffer, Judgement::NothingScatters}) {
            panel::PanelOnAttribute attribute;
            attribute.judgement = judgement;
            const QString told = TasterText::agreement(attribute);
            QVERIFY2(told.contains(QLatin1String("nothing can be told")), qUtf8Printable(told));
        }
    }

private:
    static QString agreed(double one, double ofMean, int tasters)
    {
        panel::PanelOnAttribute attribute;
        attribute.judgement = Judgement::Judged;
        attribute.agreement = panel::Agreement{one, ofMean, tasters};
        return TasterText::agreement(attribute);
    }
};

}  // namespace spile::viewmodels

QTEST_GUILESS_MAIN(spile::viewmodels::TasterTextTest)
#include "taster_text_test.moc"
