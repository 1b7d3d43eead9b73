// Times by a clock that is moved by hand: deadlines, pauses, and how dates are said.
#include "core/base/simulated.hpp"
#include "qml/viewmodels/deadline.hpp"
#include "qml/viewmodels/formats.hpp"
#include "qml/viewmodels/interruption.hpp"

#include <QSignalSpy>
#include <QTest>

namespace spile::viewmodels {

using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;

class TimesTest : public QObject {
    Q_OBJECT

private:
    SimulatedClock clock_{*fromIso("2026-11-25T14:00Z")};

private slots:
    void init() { clock_ = SimulatedClock(*fromIso("2026-11-25T14:00Z")); }

    void alarmComesAtTheDeadlineAndOnce()
    {
        Deadline deadline(clock_);
        const QSignalSpy reached(&deadline, &Deadline::reached);
        deadline.start(minutes(4) + seconds(5));
        QCOMPARE(deadline.text(), QStringLiteral("4:05"));
        clock_.pass(minutes(4) + seconds(4));
        deadline.look();
        QCOMPARE(deadline.text(), QStringLiteral("0:01"));
        QCOMPARE(reached.count(), 0);
        clock_.pass(seconds(1));
        deadline.look();
        deadline.look();
        QVERIFY(deadline.isOver());
        QCOMPARE(deadline.text(), QStringLiteral("0:00"));
        QCOMPARE(reached.count(), 1);
        clock_.pass(seconds(12));
        deadline.look();
        QCOMPARE(deadline.text(), QStringLiteral("+0:12"));
        QCOMPARE(reached.count(), 1);
    }

    void aClockThatIsSetDoesNotBendIt()
    {
        Deadline deadline(clock_);
        deadline.start(minutes(10));
        clock_.setWall(clock_.now() + hours(1));
        QCOMPARE(deadline.text(), QStringLiteral("10:00"));
        clock_.setWall(clock_.now() - hours(3));
        clock_.pass(minutes(4));
        QCOMPARE(deadline.text(), QStringLiteral("6:00"));
    }

    void afterANewStartOfTheMachineTheWallClockCounts()
    {
        const Instant end = clock_.now() + minutes(10);
        const Milliseconds boot = clock_.sinceBoot() + minutes(10);
        const BootId before = clock_.bootId();
        clock_.pass(minutes(3));
        clock_.reboot(*BootId::fromHex("0102030405060708"));
        Deadline deadline(clock_);
        deadline.resume(end, boot, before);
        QCOMPARE(deadline.text(), QStringLiteral("7:00"));
    }

    void aPauseIsToldFromAClockThatWasSet()
    {
        Interruption interruption(clock_);
        QVERIFY(!interruption.end());
        interruption.begin();
        clock_.pass(seconds(1));
        QVERIFY(!interruption.end());
        interruption.begin();
        clock_.pass(minutes(5));
        const auto away = interruption.end();
        QVERIFY(away.has_value());
        QCOMPARE(away->away, Milliseconds(minutes(5)));
        QCOMPARE(away->clockJump, Milliseconds(0));
        interruption.begin();
        clock_.pass(seconds(30));
        clock_.setWall(clock_.now() - hours(1));
        const auto set = interruption.end();
        QVERIFY(set.has_value());
        QCOMPARE(set->away, Milliseconds(seconds(30)));
        QCOMPARE(set->clockJump, Milliseconds(-hours(1)));
    }

    void datesAreSaidByDays()
    {
        Formats formats(clock_);
        formats.locale = QLocale(QStringLiteral("en"));
        const Instant now = clock_.now();
        QCOMPARE(formats.daysFromToday(now + hours(9)), 0);
        QCOMPARE(formats.daysFromToday(now + hours(11)), 1);
        QCOMPARE(formats.daysFromToday(now - hours(15)), -1);
        QCOMPARE(formats.date(now), QStringLiteral("Wed 25 Nov"));
        QCOMPARE(formats.date(*fromIso("2025-03-03")), QStringLiteral("3 Mar 2025"));
        QCOMPARE(formats.date(*fromIso("2025-03-15"), cellar::DatePrecision::Month),
                 QStringLiteral("March 2025"));
        QCOMPARE(formats.time(now), QStringLiteral("14:00"));
    }

    void numbersHaveTheirUnitAndDecimalSign()
    {
        Formats formats(clock_);
        formats.locale = QLocale(QStringLiteral("en"));
        QCOMPARE(formats.volume(litres(182)), QStringLiteral("182 L"));
        QCOMPARE(formats.volume(litres(18.93)), QStringLiteral("18.9 L"));
        QCOMPARE(formats.volume(millilitres(100)), QStringLiteral("100 mL"));
        formats.units = Formats::Units::Us;
        QCOMPARE(formats.volume(usGallons(53)), QStringLiteral("53.0 gal"));
        QCOMPARE(formats.volume(usGallons(4.0 / 128.0)), QStringLiteral("4.0 fl oz"));
        QCOMPARE(formats.temperature(celsius(12)), QStringLiteral("54 °F"));
        formats.units = Formats::Units::Metric;
        formats.locale = QLocale(QStringLiteral("de"));
        QCOMPARE(formats.gravity(1.0214), QStringLiteral("1,021"));
        QCOMPARE(formats.volume(litres(18.93)), QStringLiteral("18,9 L"));
        QCOMPARE(formats.temperature(celsius(12.5)), QStringLiteral("12,5 °C"));
    }
};

}  // namespace spile::viewmodels

QTEST_GUILESS_MAIN(spile::viewmodels::TimesTest)
#include "times_test.moc"
