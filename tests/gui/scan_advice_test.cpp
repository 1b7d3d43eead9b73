#include "tests/gui/scan_world.hpp"

using namespace spile;
using viewmodels::ScanViewModel;

class ScanAdviceTest : public QObject {
    Q_OBJECT

private slots:
    void init();
    void cleanup() { world_.reset(); }
    void saysWhatWouldHelp();
    void keepsAnAdviceThatAThirdStillWants();

private:
    std::unique_ptr<support::ScanWorld> world_;
};

void ScanAdviceTest::init()
{
    world_ = std::make_unique<support::ScanWorld>();
    QVERIFY(world_->waitUntilOpen());
    world_->scan.begin();
}

void ScanAdviceTest::saysWhatWouldHelp()
{
    ScanViewModel& scan = world_->scan;
    const auto many = [&scan](const char* advice, int times) {
        for (int i = 0; i < times; ++i) {
            scan.miss(advice);
        }
    };
    ScanViewModel slow(world_->context);
    slow.begin();
    slow.miss("light");
    QTRY_VERIFY(!world_->workers.isBusy());
    QCOMPARE(slow.advice(), ScanViewModel::NoAdvice);  // not from a single frame at once

    scan.begin();
    many("light", 3);
    many("closer", 2);
    QCOMPARE(scan.advice(), ScanViewModel::NoAdvice);
    QTRY_COMPARE(scan.advice(), ScanViewModel::Light);
    QTest::qWait(150);  // no frame has come since: it stays
    QCOMPARE(scan.advice(), ScanViewModel::Light);
    many("wipe", 5);
    QTRY_COMPARE(scan.advice(), ScanViewModel::Wipe);
    many("", 5);
    QTRY_COMPARE(scan.advice(), ScanViewModel::NoAdvice);
    many("still", 2);
    many("", 2);  // half is not most
    QTest::qWait(150);
    QCOMPARE(scan.advice(), ScanViewModel::NoAdvice);
    many("still", 1);
    QTRY_COMPARE(scan.advice(), ScanViewModel::Still);
    scan.again();
    QCOMPARE(scan.advice(), ScanViewModel::NoAdvice);
}

void ScanAdviceTest::keepsAnAdviceThatAThirdStillWants()
{
    viewmodels::SteadyAdvice steady;
    const auto note = [&](scan::Advice advice, int times) {
        for (int i = 0; i < times; ++i) {
            steady.note(advice);
        }
    };
    note(scan::Advice::Closer, 2);
    QCOMPARE(steady.judge(), scan::Advice::Closer);
    note(scan::Advice::Closer, 1);
    note(scan::Advice::Still, 2);
    QCOMPARE(steady.judge(), scan::Advice::Closer);
    note(scan::Advice::Closer, 1);
    note(scan::Advice::Still, 3);
    QCOMPARE(steady.judge(), scan::Advice::Still);
    steady.forget();
    QCOMPARE(steady.judge(), scan::Advice::None);
}

QTEST_GUILESS_MAIN(ScanAdviceTest)
#include "scan_advice_test.moc"
