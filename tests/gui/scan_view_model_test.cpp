#include "core/cellar/acts/exchanging.hpp"
#include "core/cellar/join_code.hpp"
#include "tests/gui/scan_world.hpp"

#include <QSignalSpy>

using namespace spile;
using viewmodels::ScanViewModel;

class ScanViewModelTest : public QObject {
    Q_OBJECT

private slots:
    void init();
    void cleanup() { world_.reset(); }
    void findsABarrelByItsLabel();
    void showsAHitBeforeItCounts();
    void canSayNotThisOne();
    void believesAnotherCodeAtTheSecondRead();
    void refusesALabelOfAnotherCellar();
    void offersToRegisterAnUnknownCode();
    void guardsAgainstTheWrongBarrel();
    void offersOtherWaysAfterAWhile();
    void offersNoOtherWaysAfterAHit();
    void leavesWhatIsOfferedWhereItIs();
    void asksWhichOfTwoWithOneCode();
    void offersOthersInView();
    void takesAnotherInView();
    void takesALabelRatherThanAnotherCode();

private:
    std::unique_ptr<support::ScanWorld> world_;
};

void ScanViewModelTest::init()
{
    world_ = std::make_unique<support::ScanWorld>();
    QVERIFY(world_->waitUntilOpen());
    world_->scan.begin();
}

void ScanViewModelTest::findsABarrelByItsLabel()
{
    ScanViewModel& scan = world_->scan;
    QSignalSpy found(&scan, &ScanViewModel::found);
    world_->see(world_->ourLabel());
    QTRY_COMPARE(scan.state(), ScanViewModel::Found);
    QCOMPARE(scan.name(), "Rum 3");
    QCOMPARE(scan.code().toStdString(), scan::shown(world_->small.code));
    QTRY_COMPARE(found.size(), 1);
    QCOMPARE(found.at(0).at(0).toString().toStdString(), world_->small.barrel.hex());
}

void ScanViewModelTest::showsAHitBeforeItCounts()
{
    ScanViewModel slow(world_->context,
                       viewmodels::ScanPace{Milliseconds(60), std::chrono::hours(1)});
    QSignalSpy found(&slow, &ScanViewModel::found);
    slow.begin();
    slow.offer({world_->ourLabel()}, {"qr"});
    QTRY_COMPARE(slow.state(), ScanViewModel::Found);
    slow.offer({world_->label(world_->freeCode())},
               {"qr"});  // a hit is not replaced while it shows
    QTRY_VERIFY(!world_->workers.isBusy());
    QCOMPARE(slow.state(), ScanViewModel::Found);
    QCOMPARE(found.size(), 0);
}

void ScanViewModelTest::canSayNotThisOne()
{
    ScanViewModel& scan = world_->scan;
    QSignalSpy found(&scan, &ScanViewModel::found);
    world_->see(world_->ourLabel());
    QTRY_COMPARE(scan.state(), ScanViewModel::Found);
    scan.again();
    QCOMPARE(scan.state(), ScanViewModel::Looking);
    QTest::qWait(120);  // three times as long as a hit is shown
    QCOMPARE(found.size(), 0);
    world_->see(world_->ourLabel());
    QTRY_COMPARE(found.size(), 1);
}

void ScanViewModelTest::believesAnotherCodeAtTheSecondRead()
{
    ScanViewModel& scan = world_->scan;
    world_->see("keg 12", "code 128");
    QTRY_VERIFY(!world_->workers.isBusy());
    QCOMPARE(scan.state(), ScanViewModel::Looking);
    world_->see("keg 12", "code 128");
    QTRY_COMPARE(scan.state(), ScanViewModel::NotALabel);
    QVERIFY(scan.message().contains("keg 12"));
    world_->see(world_->ourLabel());
    QTRY_COMPARE(scan.state(), ScanViewModel::Found);
}

void ScanViewModelTest::refusesALabelOfAnotherCellar()
{
    ScanViewModel& scan = world_->scan;
    SeededRandom random(99);
    const std::string mark = scan::randomMark(random);
    QVERIFY(mark != world_->mark);
    QSignalSpy found(&scan, &ScanViewModel::found);
    world_->see(support::ScanWorld::label(mark, scan::randomCode(mark, random)));
    QTRY_COMPARE(scan.state(), ScanViewModel::Foreign);
    QVERIFY(scan.message().contains(QString::fromStdString(mark)));
    QCOMPARE(found.size(), 0);
}

void ScanViewModelTest::offersToRegisterAnUnknownCode()
{
    ScanViewModel& scan = world_->scan;
    QSignalSpy unknown(&scan, &ScanViewModel::unknownCode);
    const std::string code = world_->freeCode();
    scan.registerUnknown();  // nothing was read yet
    world_->see(world_->label(code));
    QTRY_COMPARE(scan.state(), ScanViewModel::Unknown);
    QVERIFY(scan.message().contains(QString::fromStdString(scan::shown(code))));
    QCOMPARE(unknown.size(), 0);
    scan.registerUnknown();
    QCOMPARE(unknown.size(), 1);
    QCOMPARE(unknown.at(0).at(0).toString().toStdString(), code);
}

void ScanViewModelTest::guardsAgainstTheWrongBarrel()
{
    ScanViewModel& scan = world_->scan;
    const auto other = world_->add("Rum 5");
    QSignalSpy found(&scan, &ScanViewModel::found);
    QSignalSpy confirmed(&scan, &ScanViewModel::confirmedIt);
    const QString wanted = world_->ourBarrel();
    scan.expectBarrel(wanted, "Rum 3");
    QCOMPARE(scan.expected(), "Rum 3");
    world_->see(world_->label(other.code));
    QTRY_COMPARE(scan.state(), ScanViewModel::WrongBarrel);
    QCOMPARE(scan.message(), "This is Rum 5, not Rum 3.");
    QTest::qWait(120);
    QCOMPARE(confirmed.size(), 0);
    // The right one beside the wrong one is not enough: it has to be aimed at.
    scan.again();
    scan.offer({world_->label(other.code), world_->ourLabel()}, {"qr", "qr"});
    QTRY_COMPARE(scan.state(), ScanViewModel::WrongBarrel);
    QVERIFY(scan.beside().isEmpty());
    QVERIFY(scan.confirmed().isEmpty());
    world_->see(world_->ourLabel());
    QTRY_COMPARE(confirmed.size(), 1);
    QCOMPARE(scan.confirmed(), wanted);
    QCOMPARE(found.size(), 0);  // it leads nowhere else
    scan.begin();               // any barrel again
    QVERIFY(scan.expected().isEmpty());
    world_->see(world_->label(other.code));
    QTRY_COMPARE(found.size(), 1);
    scan.forgetConfirmed();
    QVERIFY(scan.confirmed().isEmpty());
}

void ScanViewModelTest::offersOtherWaysAfterAWhile()
{
    ScanViewModel& scan = world_->scan;
    QVERIFY(!scan.showsOtherWays());
    QTRY_VERIFY(scan.showsOtherWays());
    scan.again();
    QVERIFY(!scan.showsOtherWays());
}

void ScanViewModelTest::offersNoOtherWaysAfterAHit()
{
    ScanViewModel scan(world_->context,
                       viewmodels::ScanPace{Milliseconds(500), std::chrono::hours(1)});
    scan.begin();
    scan.offer({world_->ourLabel()}, {"qr"});
    QTRY_COMPARE(scan.state(), ScanViewModel::Found);
    QVERIFY(!scan.showsOtherWays());
    QTest::qWait(700);
    QVERIFY(!scan.showsOtherWays());
}

// Else the pad for other ways comes to stand where the offer's pad was, under a finger.
void ScanViewModelTest::leavesWhatIsOfferedWhereItIs()
{
    const QString asking = QString::fromStdString(
        cellar::joinSymbolText({world_->mark, DeviceId({0x5e, 0xc0, 0x99})}));
    for (const auto& [text, state] :
         {std::pair{asking, ScanViewModel::AskingDevice},
          std::pair{world_->label(world_->freeCode()), ScanViewModel::Unknown}}) {
        ScanViewModel scan(world_->context,
                           viewmodels::ScanPace{Milliseconds(500), std::chrono::hours(1)});
        scan.begin();
        scan.offer({text}, {"qr"});
        scan.offer({text}, {"qr"});
        QTRY_COMPARE(scan.state(), state);
        QTest::qWait(700);
        QVERIFY(!scan.showsOtherWays());
        scan.again();
        QTRY_VERIFY(scan.showsOtherWays());
    }
}

void ScanViewModelTest::asksWhichOfTwoWithOneCode()
{
    ScanViewModel& scan = world_->scan;
    // Two devices that do not know of each other can give one code twice.
    support::TestDevice second(8);
    const Path toSecond = world_->device.folder.path() / "first.spile";
    const Path back = world_->device.folder.path() / "second.spile";
    const std::string code = world_->freeCode();
    const auto merged = world_->act([&](cellar::Cellar& desk) -> Result<std::uint64_t> {
        SPILE_TRY(cellar::handOut(desk, toSecond, std::nullopt));
        const auto phone = second.join(toSecond);
        support::admitDevice(desk, *phone);
        SPILE_ASSIGN(here, cellar::registerBarrel(desk, {.mark = "Rum 8", .code = code}));
        SPILE_ASSIGN(there, cellar::registerBarrel(*phone, {.mark = "Rum 9", .code = code}));
        std::ignore = here;
        std::ignore = there;
        return support::carry(*phone, desk, back).entries;
    });
    QVERIFY(merged.has_value());
    QSignalSpy found(&scan, &ScanViewModel::found);
    world_->see(world_->label(code));
    QTRY_COMPARE(scan.state(), ScanViewModel::Several);
    QCOMPARE(scan.suggestions().size(), 2);
    const qsizetype ninth = scan.suggestions().at(1).startsWith("Rum 9") ? 1 : 0;
    scan.chooseSuggestion(static_cast<int>(ninth));
    QTRY_COMPARE(scan.name(), "Rum 9");
    QTRY_COMPARE(found.size(), 1);
}

void ScanViewModelTest::offersOthersInView()
{
    const auto other = world_->add("Rum 7");
    ScanViewModel slow(world_->context, viewmodels::ScanPace{Milliseconds(60), Milliseconds(1),
                                                             std::chrono::hours(1)});
    QSignalSpy found(&slow, &ScanViewModel::found);
    slow.begin();
    SeededRandom random(99);
    const std::string foreign = scan::randomMark(random);
    slow.offer({world_->ourLabel(), world_->label(other.code), world_->label(world_->freeCode()),
                support::ScanWorld::label(foreign, scan::randomCode(foreign, random)), "keg 12",
                world_->ourLabel()},
               {"qr", "qr", "qr", "qr", "code 128", "qr"});
    QTRY_COMPARE(slow.state(), ScanViewModel::Found);
    QCOMPARE(slow.name(), "Rum 3");  // the nearest
    QCOMPARE(slow.beside(), QStringList{"Rum 7"});
    QCOMPARE(slow.codesBeside(), QStringList{QString::fromStdString(scan::shown(other.code))});
    QTest::qWait(120);  // there is time to choose
    QCOMPARE(found.size(), 0);
    slow.choose();
    QCOMPARE(found.size(), 1);
    QCOMPARE(found.at(0).at(0).toString().toStdString(), world_->small.barrel.hex());
}

void ScanViewModelTest::takesAnotherInView()
{
    ScanViewModel& scan = world_->scan;
    const auto other = world_->add("Rum 7");
    QSignalSpy found(&scan, &ScanViewModel::found);
    scan.offer({world_->ourLabel(), world_->label(other.code)}, {"qr", "qr"});
    QTRY_COMPARE(scan.beside().size(), 1);
    scan.chooseBeside(1);  // there is none
    scan.chooseBeside(0);
    QCOMPARE(found.size(), 1);
    QCOMPARE(found.at(0).at(0).toString().toStdString(), other.barrel.hex());
    QCOMPARE(scan.name(), "Rum 7");
    QTest::qWait(120);
    QCOMPARE(found.size(), 1);  // and the first one does not follow
}

void ScanViewModelTest::takesALabelRatherThanAnotherCode()
{
    ScanViewModel& scan = world_->scan;
    scan.offer({"keg 12", world_->ourLabel()}, {"qr", "qr"});
    QTRY_COMPARE(scan.state(), ScanViewModel::Found);
    QCOMPARE(scan.name(), "Rum 3");
    QVERIFY(scan.beside().isEmpty());
    scan.again();
    scan.offer({}, {});
    QCOMPARE(scan.state(), ScanViewModel::Looking);
}

QTEST_GUILESS_MAIN(ScanViewModelTest)
#include "scan_view_model_test.moc"
