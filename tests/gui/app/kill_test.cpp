// The program is killed right after each tap of a tasting is shown as kept: when it is started
// again the tap is on the sheet, and the screen says where the taster was. It is also killed in the
// middle of a timer: then it comes back at the same step with the right time left. And in a flight,
// while it is drawn and while it is tasted: then it goes on at the same glass.
//
// The same program plays both parts: with a folder and a number it is the one that is killed.
#include "core/cellar/acts/registering.hpp"
#include "platform/system/disk_file_system.hpp"
#include "platform/system/file_key_store.hpp"
#include "platform/system/system_clock.hpp"
#include "platform/system/system_random.hpp"
#include "tests/gui/app/app_window.hpp"
#include "tests/support/temp_folder.hpp"

#include <QProcess>
#include <QTest>
#include <csignal>

namespace spile {

namespace {

class NoPlaces final : public viewmodels::FilePlaces {
public:
    [[nodiscard]] std::vector<Place> targets() override { return {}; }
    [[nodiscard]] std::vector<Found> dayFiles() override { return {}; }
    [[nodiscard]] std::uint64_t freeBytes() override { return std::uint64_t{1} << 40U; }
};

// A real device on a real disk, and the app on it.
struct Device {
    explicit Device(const QString& folder)
        : cellar((folder + QStringLiteral("/cellar")).toStdString()),
          keys(disk, cellar),
          app({clock, disk, random, ids, keys}, places,
              {cellar, folder + QStringLiteral("/settings.ini"), QStringLiteral("Phone")})
    {
    }

    Path cellar;
    system::SystemClock clock;
    system::DiskFileSystem disk;
    system::SystemRandom random;
    Uuid7Source ids{clock, random};
    system::FileKeyStore keys;
    NoPlaces places;
    viewmodels::AppViewModel app;
};

// A cellar with one person and those barrels.
void makeCellar(const QString& folder, const std::vector<cellar::NewBarrel>& barrels)
{
    Device device(folder);
    auto made = cellar::Cellar::create(
        device.cellar, {device.clock, device.disk, device.random, device.ids, device.keys},
        {"Test", "TEST", "Phone"});
    QVERIFY(made.has_value());
    QVERIFY(cellar::registerPerson(**made, "Ada").has_value());
    for (const cellar::NewBarrel& barrel : barrels) {
        QVERIFY(cellar::registerBarrel(**made, barrel).has_value());
    }
}

Instant daysAgo(int days) { return system::SystemClock().now() - std::chrono::days(days); }

cellar::NewBarrel fullBarrel()
{
    cellar::NewBarrel barrel;
    barrel.mark = "Rum 3";
    cellar::FullSince full;
    full.since = {daysAgo(300), 0};
    barrel.fullSince = full;
    return barrel;
}

// Its heads are wetted for half an hour each.
cellar::NewBarrel emptyBarrel()
{
    cellar::NewBarrel barrel;
    barrel.mark = "Rum 4";
    barrel.size = litres(200);
    barrel.emptied = daysAgo(40);
    return barrel;
}

// The pads of the tasting; "!" marks those that are taps of the sheet, after which it may be
// killed.
const QStringList script{
    QStringLiteral("row0"),  QStringLiteral("taste"),  QStringLiteral("!rung7"),
    QStringLiteral("!more"), QStringLiteral("next"),   QStringLiteral("!rung3"),
    QStringLiteral("next"),  QStringLiteral("!next"),  QStringLiteral("!rung9"),
    QStringLiteral("!undo"), QStringLiteral("!rung1"), QStringLiteral("!less")};

int beKilled(const QString& folder, int after)
{
    Device device(folder);
    support::AppWindow shown(device.app);
    device.app.start();
    if (!shown.settle()) {
        return 3;
    }
    device.app.people()->choose(0);
    int taps = 0;
    QObject::connect(device.app.tasting(), &viewmodels::TastingViewModel::kept, [&] {
        if (++taps == after) {
            std::raise(SIGKILL);
        }
    });
    for (QString pad : script) {
        pad.remove(QLatin1Char('!'));
        if (!shown.tap(pad)) {
            std::fprintf(stderr, "%s cannot be tapped\n", qPrintable(pad));
            return 4;
        }
    }
    return 0;
}

// Ends as soon as the timer of the second step is seen to run.
int beKilledInATimer(const QString& folder)
{
    Device device(folder);
    support::AppWindow shown(device.app);
    device.app.start();
    if (!shown.settle()) {
        return 3;
    }
    device.app.people()->choose(0);
    auto& work = *device.app.work();
    QObject::connect(&work, &viewmodels::WorkViewModel::changed, [&] {
        if (work.isTimed() && work.timer()->isRunning()) {
            std::raise(SIGKILL);
        }
    });
    device.app.allBarrels();
    for (const char* pad : {"row0", "work", "sheet1", "tick0", "finish", "begin"}) {
        shown.settle();
        if (!shown.tap(QString::fromLatin1(pad))) {
            std::fprintf(stderr, "%s cannot be tapped\n", pad);
            return 4;
        }
    }
    return 0;
}

// Ends as soon as a glass is recorded as drawn, or a score is kept.
int beKilledInAFlight(const QString& folder, bool tasting)
{
    Device device(folder);
    support::AppWindow shown(device.app);
    device.app.start();
    if (!shown.settle()) {
        return 3;
    }
    device.app.people()->choose(0);
    if (tasting) {
        QObject::connect(device.app.tasting(), &viewmodels::TastingViewModel::kept,
                         [] { std::raise(SIGKILL); });
    } else {
        QObject::connect(device.app.flight()->pouring(), &viewmodels::DrawingViewModel::drawn,
                         [] { std::raise(SIGKILL); });
    }
    for (const char* pad : {"bar2", "flight", "barrel0", "barrel1", "barrel2", "begin", "drawn",
                            "drawn", "drawn", "taster0", "tasteGlass", "rung7"}) {
        if (!shown.tap(QString::fromLatin1(pad))) {
            std::fprintf(stderr, "%s cannot be tapped\n", pad);
            return 4;
        }
    }
    return 0;
}

}  // namespace

class Kill : public QObject {
    Q_OBJECT

private slots:
    void inTheMiddleOfATimer()
    {
        const support::TempFolder temporary;
        const QString folder = QString::fromStdString(temporary.path().string());
        makeCellar(folder, {emptyBarrel()});
        const auto before = std::chrono::steady_clock::now();
        QProcess killed;
        killed.start(QCoreApplication::applicationFilePath(),
                     {QStringLiteral("--be-killed"), folder, QStringLiteral("timer")});
        QVERIFY(killed.waitForFinished(60'000));
        QVERIFY2(killed.exitStatus() == QProcess::CrashExit,
                 killed.readAllStandardError().constData());

        Device device(folder);
        support::AppWindow shown(device.app);
        device.app.start();
        QVERIFY(shown.settle());
        QTRY_COMPARE(device.app.navigator()->page(), viewmodels::Navigator::WasHere);
        QVERIFY(shown.tap(QStringLiteral("goOnWork0")));
        QTRY_COMPARE(device.app.navigator()->page(), viewmodels::Navigator::Steps);
        auto& work = *device.app.work();
        QCOMPARE(work.stepName(), QStringLiteral("upper_head"));
        QVERIFY(work.timer()->isRunning());
        // Half an hour, less the time since, to the second.
        const QStringList parts = work.timer()->text().split(QLatin1Char(':'));
        const int left = parts.value(0).toInt() * 60 + parts.value(1).toInt();
        const auto passed =
            std::chrono::ceil<std::chrono::seconds>(std::chrono::steady_clock::now() - before);
        QVERIFY2(left <= 1800 && left >= 1800 - passed.count(), qPrintable(work.timer()->text()));
    }

    void inAFlight_data()
    {
        QTest::addColumn<bool>("tasting");
        QTest::newRow("drawing") << false;
        QTest::newRow("tasting") << true;
    }

    void inAFlight()
    {
        QFETCH(const bool, tasting);
        const support::TempFolder temporary;
        const QString folder = QString::fromStdString(temporary.path().string());
        makeCellar(folder, {fullBarrel(), fullBarrel(), fullBarrel()});
        QProcess killed;
        killed.start(QCoreApplication::applicationFilePath(),
                     {QStringLiteral("--be-killed"), folder,
                      tasting ? QStringLiteral("tasting") : QStringLiteral("drawing")});
        QVERIFY(killed.waitForFinished(60'000));
        QVERIFY2(killed.exitStatus() == QProcess::CrashExit,
                 killed.readAllStandardError().constData());

        Device device(folder);
        support::AppWindow shown(device.app);
        device.app.start();
        QVERIFY(shown.settle());
        QTRY_COMPARE(device.app.navigator()->page(), viewmodels::Navigator::WasHere);
        auto& flight = *device.app.flight();
        if (!tasting) {
            QVERIFY(shown.tap(QStringLiteral("goOnFlight0")));
            QTRY_COMPARE(flight.stage(), viewmodels::FlightViewModel::Drawing);
            QCOMPARE(flight.progress(), QStringLiteral("Draw glass 2 of 3"));
            return;
        }
        const auto* line = device.app.openSheets()->sheets()->rowAt(0);
        QVERIFY(line != nullptr);
        QVERIFY2(line->barrel.startsWith(QLatin1String("Glass ")), qPrintable(line->barrel));
        const QString glass = line->barrel;
        QVERIFY(shown.tap(QStringLiteral("goOn0")));
        QCOMPARE(device.app.tasting()->barrelName(), glass);
        QCOMPARE(device.app.tasting()->value(), 7);
    }

    void afterEachTap_data()
    {
        QTest::addColumn<int>("after");
        QTest::addColumn<QList<int>>("scores");  // step by step, 0: nothing, -1: not judged
        QTest::addColumn<QString>("where");
        QTest::newRow("first score") << 1 << QList<int>{7} << QStringLiteral("1 of");
        QTest::newRow("a touch more") << 2 << QList<int>{8} << QStringLiteral("1 of");
        QTest::newRow("second attribute") << 3 << QList<int>{8, 3} << QStringLiteral("2 of");
        QTest::newRow("not judged") << 4 << QList<int>{8, 3, -1} << QStringLiteral("of");
        QTest::newRow("fourth attribute") << 5 << QList<int>{8, 3, -1, 9} << QStringLiteral("4 of");
        QTest::newRow("undone") << 6 << QList<int>{8, 3, -1, 0} << QStringLiteral("4 of");
        QTest::newRow("scored anew") << 7 << QList<int>{8, 3, -1, 1} << QStringLiteral("4 of");
    }

    void afterEachTap()
    {
        QFETCH(const int, after);
        QFETCH(const QList<int>, scores);
        QFETCH(const QString, where);
        const support::TempFolder temporary;
        const QString folder = QString::fromStdString(temporary.path().string());
        makeCellar(folder, {fullBarrel()});

        QProcess killed;
        killed.start(QCoreApplication::applicationFilePath(),
                     {QStringLiteral("--be-killed"), folder, QString::number(after)});
        QVERIFY(killed.waitForFinished(60'000));
        QVERIFY2(killed.exitStatus() == QProcess::CrashExit,
                 killed.readAllStandardError().constData());

        Device device(folder);
        support::AppWindow shown(device.app);
        device.app.start();
        QVERIFY(shown.settle());
        QTRY_COMPARE(device.app.navigator()->page(), viewmodels::Navigator::WasHere);
        const auto* line = device.app.openSheets()->sheets()->rowAt(0);
        QVERIFY(line != nullptr);
        QVERIFY2(line->where.contains(where), qPrintable(line->where));
        QCOMPARE(line->barrel, QStringLiteral("Rum 3"));
        QVERIFY(shown.tap(QStringLiteral("goOn0")));
        auto& sheet = *device.app.tasting();
        while (!sheet.isFirst()) {
            sheet.previous();
        }
        for (const int score : scores) {
            QCOMPARE(sheet.isNotJudged() ? -1 : sheet.value(), score);
            sheet.next();
        }
    }
};

}  // namespace spile

int main(int argc, char** argv)
{
    QGuiApplication application(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.value(1) == QLatin1String("--be-killed")) {
        const QString folder = arguments.value(2);
        const QString when = arguments.value(3);
        if (when == QLatin1String("timer")) {
            return spile::beKilledInATimer(folder);
        }
        const bool tasting = when == QLatin1String("tasting");
        return tasting || when == QLatin1String("drawing")
                   ? spile::beKilledInAFlight(folder, tasting)
                   : spile::beKilled(folder, when.toInt());
    }
    spile::Kill test;
    return QTest::qExec(&test, argc, argv);
}
#include "kill_test.moc"
