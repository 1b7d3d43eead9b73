// The threads behind the screens: taps go before long work and between its steps, and nothing that
// was asked for is lost when the app ends.
#include "qml/viewmodels/workers.hpp"

#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/acts/registering.hpp"
#include "core/cellar/checking.hpp"
#include "core/cellar/queries.hpp"
#include "core/ledger/ballast.hpp"
#include "tests/support/counting_vfs.hpp"
#include "tests/support/small_cellar.hpp"
#include "tests/support/test_device.hpp"

#include <QSignalSpy>
#include <QTest>
#include <QThread>

namespace spile::viewmodels {

namespace {

void openCellar(Workers& workers, QObject* receiver, support::TestDevice& at)
{
    workers.open(
        receiver,
        [&at](const Job&) { return cellar::Cellar::open(at.cellarFolder(), at.outside()); },
        [](std::uint64_t, std::uint64_t) {},
        [](const Result<void>& opened) { QVERIFY(opened.has_value()); });
}

}  // namespace

class WorkersTest : public QObject {
    Q_OBJECT

private:
    // A device whose disk is full while the room that was kept is still taken; or for ever.
    struct FullDisk {
        explicit FullDisk(bool forEver)
        {
            made = device.newCellar() != nullptr;
            const Path ballast = device.cellarFolder() / "ballast";
            support::registerCountingVfs().fillDisk([this, ballast, forEver] {
                return full && (forEver || device.files.exists(ballast));
            });
        }
        ~FullDisk() { support::registerCountingVfs().fillDisk({}); }
        FullDisk(const FullDisk&) = delete;
        FullDisk& operator=(const FullDisk&) = delete;
        FullDisk(FullDisk&&) = delete;
        FullDisk& operator=(FullDisk&&) = delete;

        void open(Workers& workers, QObject* receiver)
        {
            openCellar(workers, receiver, device);
            QTRY_VERIFY(!workers.isBusy());
        }

        support::VfsCounter& counter = support::registerCountingVfs();  // before any cellar
        support::TestDevice device{9};
        std::atomic<bool> full{false};
        bool made = false;
    };

private slots:
    // Fault08
    void aRecordOnAFullDiskGetsTheRoomThatWasKept()
    {
        FullDisk disk(false);
        QVERIFY(disk.made);
        QVERIFY(
            ledger::keepBallast(disk.device.files, disk.device.random, disk.device.cellarFolder())
                .has_value());
        Workers workers;
        disk.open(workers, this);
        disk.full = true;
        int saved = 0;
        for (const char* name : {"Ada", "Bo"}) {
            workers.act(
                this,
                [name](cellar::Cellar& cellar) { return cellar::registerPerson(cellar, name); },
                [&](const Result<SubjectId>& person) { saved += person.has_value() ? 1 : 0; });
        }
        QTRY_COMPARE(saved, 2);
        QVERIFY(!disk.device.files.exists(disk.device.cellarFolder() / "ballast"));
        std::size_t people = 0;
        workers.look(
            this,
            [](ledger::Database& database) { return cellar::named(database, "person", {}, 10); },
            [&](const auto& found) { people = found->size(); });
        QTRY_COMPARE(people, std::size_t{2});
    }

    void aRecordWithoutRoomIsToldAndNothingOfItIsThere()
    {
        FullDisk disk(true);
        QVERIFY(disk.made);
        QVERIFY(
            ledger::keepBallast(disk.device.files, disk.device.random, disk.device.cellarFolder())
                .has_value());
        {
            Workers workers;
            disk.open(workers, this);
            disk.full = true;
            std::optional<ErrorCode> code;
            workers.act(
                this, [](cellar::Cellar& cellar) { return cellar::registerPerson(cellar, "Ada"); },
                [&](const Result<SubjectId>& person) {
                    code = person ? std::nullopt : std::optional(person.error().code);
                });
            QTRY_VERIFY(code.has_value());
            QCOMPARE(*code, ErrorCode::StorageFull);
        }
        disk.full = false;
        const auto cellar = disk.device.reopen();
        QVERIFY(cellar != nullptr);
        QVERIFY(cellar::named(cellar->database(), "person", {}, 10)->empty());
        QCOMPARE(QString::fromStdString(support::problemsOf(*cellar)), QString());
    }

    void onceThereIsRoomTheNextTapIsKept()
    {
        FullDisk disk(true);
        QVERIFY(disk.made);
        Workers workers;
        disk.open(workers, this);
        int saved = 0;
        int refused = 0;
        const auto tap = [&] {
            workers.act(
                this, [](cellar::Cellar& cellar) { return cellar::registerPerson(cellar, "Ada"); },
                [&](const Result<SubjectId>& person) {
                    saved += person ? 1 : 0;
                    refused += !person && person.error().code == ErrorCode::StorageFull ? 1 : 0;
                });
        };
        disk.full = true;
        tap();
        tap();
        QTRY_COMPARE(refused, 2);
        disk.full = false;
        tap();
        QTRY_COMPARE(saved, 1);
        std::size_t people = 0;
        workers.look(
            this,
            [](ledger::Database& database) { return cellar::named(database, "person", {}, 10); },
            [&](const auto& found) { people = found->size(); });
        QTRY_COMPARE(people, std::size_t{1});
    }

    // The work holds the cellar that the act would open anew.
    void anActWithinLongWorkGetsTheRoomThatWasKeptAndSoDoesTheWork()
    {
        FullDisk disk(false);
        QVERIFY(disk.made);
        QVERIFY(
            ledger::keepBallast(disk.device.files, disk.device.random, disk.device.cellarFolder())
                .has_value());
        Workers workers;
        disk.open(workers, this);
        std::atomic<int> begun{0};
        std::atomic<int> tapped{0};
        int saved = 0;
        bool asked = false;
        bool workDone = false;
        workers.work(
            this,
            [&](cellar::Cellar& cellar, const Job& job) {
                ++begun;
                while (tapped == 0 && job.advance(0, 0)) {
                    QThread::msleep(1);
                }
                return cellar::registerPlace(cellar, "Vault");
            },
            [&](std::uint64_t, std::uint64_t) {
                if (asked) {
                    return;
                }
                asked = true;
                disk.full = true;
                workers.act(
                    this,
                    [&](cellar::Cellar& cellar) {
                        ++tapped;
                        return cellar::registerPerson(cellar, "Ada");
                    },
                    [&](const Result<SubjectId>& person) { saved += person ? 1 : 0; });
            },
            [&](const Result<SubjectId>& place) { workDone = place.has_value(); });
        QTRY_VERIFY(workDone && saved == 1);
        QCOMPARE(begun.load(), 2);
        QCOMPARE(tapped.load(), 2);
        std::size_t known = 0;
        workers.look(
            this,
            [](ledger::Database& database) -> Result<std::size_t> {
                return cellar::named(database, "person", {}, 10)->size() +
                       cellar::named(database, "place", {}, 10)->size();
            },
            [&](const Result<std::size_t>& found) { known = *found; });
        QTRY_COMPARE(known, std::size_t{2});
    }

    void actsRunBetweenTheStepsOfLongWork()
    {
        support::TestDevice device(1);
        QVERIFY(device.newCellar() != nullptr);
        Workers workers;
        openCellar(workers, this, device);
        QTRY_VERIFY(!workers.isBusy());

        std::atomic<bool> tapped{false};
        bool workDone = false;
        int reports = 0;
        workers.work(
            this,
            [&](cellar::Cellar&, const Job& job) -> Result<bool> {
                // Goes on until the act that is asked for meanwhile has run.
                for (std::uint64_t step = 0; !tapped; ++step) {
                    if (!job.advance(step, 0)) {
                        return fail(ErrorCode::Cancelled, "work");
                    }
                    QThread::msleep(1);
                }
                return true;
            },
            [&](std::uint64_t, std::uint64_t) { ++reports; },
            [&](const Result<bool>& done) { workDone = done.has_value(); });
        QTRY_VERIFY(reports > 0);
        workers.act(
            this,
            [&](cellar::Cellar& cellar) {
                tapped = true;
                return cellar::registerPerson(cellar, "Ada");
            },
            [](const Result<SubjectId>& person) { QVERIFY(person.has_value()); });
        QTRY_VERIFY(workDone);
    }

    void recordsWhileADayFileIsTakenInAreSound()
    {
        support::TestDevice desk(2);
        support::TestDevice phone(3);
        {
            auto cellar = desk.newCellar();
            for (int i = 0; i < 400; ++i) {
                QVERIFY(cellar::registerBarrel(*cellar, {}).has_value());
            }
        }
        const Path start = desk.folder.path() / "start.spile";
        const Path full = desk.folder.path() / "full.spile";
        {
            auto cellar = desk.reopen();
            QVERIFY(cellar::handOut(*cellar, start, std::nullopt).has_value());
            QVERIFY(phone.join(start) != nullptr);
            for (int i = 0; i < 2000; ++i) {
                QVERIFY(cellar::registerPerson(*cellar, "P" + std::to_string(i)).has_value());
            }
            QVERIFY(cellar::handOut(*cellar, full, std::nullopt).has_value());
        }
        Workers workers;
        openCellar(workers, this, phone);
        bool taken = false;
        int recorded = 0;
        const auto tap = [&](const auto& again) -> void {
            workers.act(
                this, [](cellar::Cellar& cellar) { return cellar::registerPerson(cellar, "Kim"); },
                [&, again](const Result<SubjectId>& person) {
                    QVERIFY(person.has_value());
                    ++recorded;
                    if (!taken) {
                        again(again);
                    }
                });
        };
        workers.work(
            this,
            [&](cellar::Cellar& cellar, const Job& job) {
                return cellar::takeIn(cellar, full, job);
            },
            [](std::uint64_t, std::uint64_t) {},
            [&](const Result<ledger::TakenIn>& done) {
                QVERIFY(done.has_value());
                taken = true;
            });
        QTRY_VERIFY(!workers.isBusy());  // opened before the work begins; then the taps
        QVERIFY(taken);
        taken = false;
        workers.work(
            this,
            [&](cellar::Cellar& cellar, const Job& job) {
                return cellar::takeIn(cellar, full, job);
            },
            [](std::uint64_t, std::uint64_t) {},
            [&](const Result<ledger::TakenIn>&) { taken = true; });
        tap(tap);
        QTRY_VERIFY_WITH_TIMEOUT(taken && !workers.isBusy(), 20000);
        QVERIFY(recorded > 0);
        bool checked = false;
        workers.read(
            this, [](cellar::Cellar& cellar) { return cellar::check(cellar, {}); },
            [&](const Result<cellar::CheckReport>& report) {
                QVERIFY(report.has_value());
                QVERIFY(report->problems.empty());
                checked = true;
            });
        QTRY_VERIFY(checked);
    }

    void whatWasAskedForIsDoneBeforeTheEnd()
    {
        support::TestDevice device(4);
        QVERIFY(device.newCellar() != nullptr);
        {
            Workers workers;
            openCellar(workers, this, device);
            QTRY_VERIFY(!workers.isBusy());
            for (int i = 0; i < 50; ++i) {
                workers.act(
                    this,
                    [i](cellar::Cellar& cellar) {
                        return cellar::registerPerson(cellar, "P" + std::to_string(i));
                    },
                    [](const Result<SubjectId>&) {});
            }
        }
        auto cellar = device.reopen();
        const auto people = cellar::named(cellar->database(), "person", {}, 100);
        QVERIFY(people.has_value());
        QCOMPARE(people->size(), std::size_t{50});
    }

    void whatIsStudiedKeepsNobodyWaitingAndEndsWithTheApp()
    {
        support::TestDevice device(6);
        QVERIFY(device.newCellar() != nullptr);
        std::atomic<bool> begun{false};
        std::atomic<bool> cancelled{false};
        {
            Workers workers;
            openCellar(workers, this, device);
            QTRY_VERIFY(!workers.isBusy());
            workers.study(
                this,
                [&](ledger::Database&, const Job& job) -> Result<int> {
                    begun = true;
                    while (job.advance(0, 0)) {
                        QThread::msleep(1);
                    }
                    cancelled = true;
                    return fail(ErrorCode::Cancelled, "study");
                },
                [](const Result<int>&) {});
            QTRY_VERIFY(begun);
            QVERIFY(!workers.isBusy());
            bool written = false;
            bool read = false;
            workers.act(
                this, [](cellar::Cellar& cellar) { return cellar::registerPerson(cellar, "Ada"); },
                [&](const Result<SubjectId>& person) { written = person.has_value(); });
            workers.look(
                this,
                [](ledger::Database& database) {
                    return cellar::named(database, "person", {}, 10);
                },
                [&](const Result<std::vector<cellar::NamedRow>>& people) {
                    read = people.has_value();
                });
            QTRY_VERIFY(written && read);
            workers.cancelWork();  // of what people wait for
            QTest::qWait(20);
            QVERIFY(!cancelled);
        }
        QVERIFY(cancelled);
    }

    void answersAreDroppedWhenNobodyWaitsForThem()
    {
        support::TestDevice device(5);
        QVERIFY(device.newCellar() != nullptr);
        Workers workers;
        openCellar(workers, this, device);
        bool answered = false;
        {
            QObject receiver;
            workers.read(
                &receiver, [](cellar::Cellar&) -> Result<int> { return 1; },
                [&](const Result<int>&) { answered = true; });
        }
        QTRY_VERIFY(!workers.isBusy());
        QVERIFY(!answered);
    }
};

}  // namespace spile::viewmodels

QTEST_GUILESS_MAIN(spile::viewmodels::WorkersTest)
#include "workers_test.moc"
