// A cellar of an older version is brought up to this one off the UI thread, which hears how far it
// is; the end of the app stops it, and then it is of the older version still.
#include "qml/viewmodels/workers.hpp"
#include "tests/support/old_store.hpp"
#include "tests/support/small_cellar.hpp"
#include "tests/support/test_device.hpp"

#include <QTest>
#include <sqlite3.h>

namespace spile::viewmodels {

class Opening : public QObject {
    Q_OBJECT

private:
    support::TestDevice device{11};
    std::int64_t records = 0;

    static Result<std::int64_t> countOf(cellar::Cellar& cellar)
    {
        return cellar.database().integer(-1, "SELECT count(*) FROM entry");
    }

    std::string database() { return (device.cellarFolder() / "ledger.db").string(); }

    int version()
    {
        sqlite3* file = nullptr;
        sqlite3_stmt* ask = nullptr;
        sqlite3_open(database().c_str(), &file);
        sqlite3_prepare_v2(file, "PRAGMA user_version", -1, &ask, nullptr);
        const int found = sqlite3_step(ask) == SQLITE_ROW ? sqlite3_column_int(ask, 0) : -1;
        sqlite3_finalize(ask);
        sqlite3_close(file);
        return found;
    }

    void makeOld()
    {
        {
            auto cellar = device.newCellar();
            QVERIFY(cellar);
            const auto small = support::fillSmallCellar(*cellar);
            auto change = cellar->ledger().change();
            for (int i = 0; i < 600; ++i) {
                QVERIFY(change->record({"of a later version", small.barrel, {}, {}, {}, {}, {}}));
            }
            QVERIFY(change->commit());
            records = *countOf(*cellar);
        }
        sqlite3* file = nullptr;
        QCOMPARE(sqlite3_open(database().c_str(), &file), SQLITE_OK);
        QCOMPARE(sqlite3_exec(file, support::backToVersion3, nullptr, nullptr, nullptr), SQLITE_OK);
        // The state of an older version, too, is made anew.
        QCOMPARE(sqlite3_exec(file, "UPDATE meta SET value = 1 WHERE key = 'projection'", nullptr,
                              nullptr, nullptr),
                 SQLITE_OK);
        QCOMPARE(sqlite3_close(file), SQLITE_OK);
        QCOMPARE(version(), 3);
    }

    template <class Done>
    void open(Workers& workers, std::vector<double>& shares, Done done)
    {
        workers.open(
            this,
            [this](const Job& job) {
                return cellar::Cellar::open(device.cellarFolder(), device.outside(), {}, job);
            },
            [&shares](std::uint64_t now, std::uint64_t all) {
                shares.push_back(shareOf(now, all));
            },
            done);
    }

private slots:
    void isHeardOfAndStoppedByTheEnd()
    {
        makeOld();
        std::vector<double> shares;
        {
            Workers workers;
            bool opened = false;
            open(workers, shares, [&](const Result<void>& there) { opened = there.has_value(); });
            workers.cancelWork();
            QTRY_VERIFY(!workers.isBusy());
            QVERIFY(!opened);
        }
        QCOMPARE(version(), 3);

        shares.clear();
        Workers workers;
        bool opened = false;
        open(workers, shares, [&](const Result<void>& there) { opened = there.has_value(); });
        QTRY_VERIFY(!workers.isBusy());
        QVERIFY(opened);
        QVERIFY(!shares.empty());
        QVERIFY(shares.back() > 0.5);  // the state, too
        QVERIFY(std::is_sorted(shares.begin(), shares.end()));
        QVERIFY(shares.front() >= 0 && shares.back() <= 1);
        std::optional<std::int64_t> count;
        workers.read(
            this, [](cellar::Cellar& cellar) { return countOf(cellar); },
            [&](const Result<std::int64_t>& found) { count = found.value_or(-1); });
        QTRY_VERIFY(count.has_value());
        QCOMPARE(*count, records);
    }
};

}  // namespace spile::viewmodels

QTEST_GUILESS_MAIN(spile::viewmodels::Opening)
#include "opening_test.moc"
