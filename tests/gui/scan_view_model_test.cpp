#include "qml/viewmodels/scan_view_model.hpp"

#include "core/cellar/acts/exchanging.hpp"
#include "core/scan/barrel_code.hpp"
#include "tests/gui/view_model_world.hpp"

#include <QSignalSpy>

using namespace spile;
using viewmodels::ScanViewModel;

class ScanViewModelTest : public QObject {
    Q_OBJECT

private slots:
    void init();
    void cleanup();
    void findsABarrelByItsLabel();
    void showsAHitBeforeItCounts();
    void canSayNotThisOne();
    void believesAnotherCodeAtTheSecondRead();
    void refusesALabelOfAnotherCellar();
    void offersToRegisterAnUnknownCode();
    void guardsAgainstTheWrongBarrel();
    void offersOtherWaysAfterAWhile();
    void offersNoOtherWaysAfterAHit();
    void findsABarrelByItsTypedCode();
    void forgivesLookAlikes();
    void saysThatATypedCodeIsWrongAndWhatWasMeant();
    void takesBackWhatIsTyped();
    void dropsAnAnswerThatComesTooLate();
    void asksWhichOfTwoWithOneCode();

private:
    [[nodiscard]] QString label(const std::string& mark, const std::string& code) const;
    [[nodiscard]] QString ourLabel() const { return label(world_->mark, world_->small.code); }
    [[nodiscard]] std::string otherCode(std::uint64_t seed) const;
    void type(const std::string& text);

    std::unique_ptr<support::ViewModelWorld> world_;
    std::unique_ptr<ScanViewModel> scan_;
};

void ScanViewModelTest::init()
{
    world_ = std::make_unique<support::ViewModelWorld>();
    QVERIFY(world_->waitUntilOpen());
    scan_ = std::make_unique<ScanViewModel>(
        world_->context, viewmodels::ScanPace{Milliseconds(60), Milliseconds(40)});
    scan_->begin();
}

void ScanViewModelTest::cleanup()
{
    scan_.reset();
    world_.reset();
}

QString ScanViewModelTest::label(const std::string& mark, const std::string& code) const
{
    return QString::fromStdString(scan::labelText({mark, code}));
}

std::string ScanViewModelTest::otherCode(std::uint64_t seed) const
{
    SeededRandom random(seed);
    return scan::randomCode(world_->mark, random);
}

void ScanViewModelTest::type(const std::string& text)
{
    for (const char key : text) {
        scan_->type(QString(QLatin1Char(key)));
    }
}

void ScanViewModelTest::findsABarrelByItsLabel()
{
    QSignalSpy found(scan_.get(), &ScanViewModel::found);
    scan_->offer(ourLabel(), "qr");
    QTRY_COMPARE(scan_->state(), ScanViewModel::Found);
    QCOMPARE(scan_->name(), "Rum 3");
    QCOMPARE(scan_->code().toStdString(), scan::shown(world_->small.code));
    QTRY_COMPARE(found.size(), 1);
    QCOMPARE(found.at(0).at(0).toString().toStdString(), world_->small.barrel.hex());
}

void ScanViewModelTest::showsAHitBeforeItCounts()
{
    ScanViewModel slow(world_->context,
                       viewmodels::ScanPace{Milliseconds(60), std::chrono::hours(1)});
    QSignalSpy found(&slow, &ScanViewModel::found);
    slow.begin();
    slow.offer(ourLabel(), "qr");
    QTRY_COMPARE(slow.state(), ScanViewModel::Found);
    slow.offer(label(world_->mark, otherCode(1)), "qr");  // a hit is not replaced while it shows
    QTRY_VERIFY(!world_->workers.isBusy());
    QCOMPARE(slow.state(), ScanViewModel::Found);
    QCOMPARE(found.size(), 0);
}

void ScanViewModelTest::canSayNotThisOne()
{
    QSignalSpy found(scan_.get(), &ScanViewModel::found);
    scan_->offer(ourLabel(), "qr");
    QTRY_COMPARE(scan_->state(), ScanViewModel::Found);
    scan_->again();
    QCOMPARE(scan_->state(), ScanViewModel::Looking);
    QTest::qWait(120);  // three times as long as a hit is shown
    QCOMPARE(found.size(), 0);
    scan_->offer(ourLabel(), "qr");
    QTRY_COMPARE(found.size(), 1);
}

void ScanViewModelTest::believesAnotherCodeAtTheSecondRead()
{
    scan_->offer("keg 12", "code 128");
    QTRY_VERIFY(!world_->workers.isBusy());
    QCOMPARE(scan_->state(), ScanViewModel::Looking);
    scan_->offer("keg 12", "code 128");
    QTRY_COMPARE(scan_->state(), ScanViewModel::NotALabel);
    QVERIFY(scan_->message().contains("keg 12"));
    scan_->offer(ourLabel(), "qr");
    QTRY_COMPARE(scan_->state(), ScanViewModel::Found);
}

void ScanViewModelTest::refusesALabelOfAnotherCellar()
{
    SeededRandom random(99);
    const std::string mark = scan::randomMark(random);
    QVERIFY(mark != world_->mark);
    QSignalSpy found(scan_.get(), &ScanViewModel::found);
    scan_->offer(label(mark, scan::randomCode(mark, random)), "qr");
    QTRY_COMPARE(scan_->state(), ScanViewModel::Foreign);
    QVERIFY(scan_->message().contains(QString::fromStdString(mark)));
    QCOMPARE(found.size(), 0);
}

void ScanViewModelTest::offersToRegisterAnUnknownCode()
{
    QSignalSpy unknown(scan_.get(), &ScanViewModel::unknownCode);
    const std::string code = otherCode(1);
    scan_->registerUnknown();  // nothing was read yet
    scan_->offer(label(world_->mark, code), "qr");
    QTRY_COMPARE(scan_->state(), ScanViewModel::Unknown);
    QVERIFY(scan_->message().contains(QString::fromStdString(scan::shown(code))));
    QCOMPARE(unknown.size(), 0);
    scan_->registerUnknown();
    QCOMPARE(unknown.size(), 1);
    QCOMPARE(unknown.at(0).at(0).toString().toStdString(), code);
}

void ScanViewModelTest::guardsAgainstTheWrongBarrel()
{
    const auto other = world_->act([](cellar::Cellar& cellar) {
        return cellar::registerBarrel(cellar, {.mark = "Rum 5", .spirit = "rum"});
    });
    QVERIFY(other.has_value());
    QSignalSpy found(scan_.get(), &ScanViewModel::found);
    scan_->expectBarrel(QString::fromStdString(world_->small.barrel.hex()));
    scan_->offer(label(world_->mark, other->code), "qr");
    QTRY_COMPARE(scan_->state(), ScanViewModel::WrongBarrel);
    QCOMPARE(scan_->message(), "This is Rum 5, the sheet is for Rum 3.");
    QTest::qWait(120);
    QCOMPARE(found.size(), 0);
    scan_->offer(ourLabel(), "qr");
    QTRY_COMPARE(found.size(), 1);
    scan_->begin();  // any barrel again
    scan_->offer(label(world_->mark, other->code), "qr");
    QTRY_COMPARE(found.size(), 2);
}

void ScanViewModelTest::offersOtherWaysAfterAWhile()
{
    QVERIFY(!scan_->showsOtherWays());
    QTRY_VERIFY(scan_->showsOtherWays());
    scan_->again();
    QVERIFY(!scan_->showsOtherWays());
}

void ScanViewModelTest::offersNoOtherWaysAfterAHit()
{
    ScanViewModel scan(world_->context,
                       viewmodels::ScanPace{Milliseconds(500), std::chrono::hours(1)});
    scan.begin();
    scan.offer(ourLabel(), "qr");
    QTRY_COMPARE(scan.state(), ScanViewModel::Found);
    QVERIFY(!scan.showsOtherWays());
    QTest::qWait(700);
    QVERIFY(!scan.showsOtherWays());
}

void ScanViewModelTest::findsABarrelByItsTypedCode()
{
    QCOMPARE(scan_->keys().size(), 32);
    QSignalSpy found(scan_.get(), &ScanViewModel::found);
    type(world_->small.code.substr(0, 5));
    QCOMPARE(scan_->typed().toStdString(), scan::shown(world_->small.code).substr(0, 6));
    QTRY_VERIFY(!world_->workers.isBusy());
    QCOMPARE(scan_->state(), ScanViewModel::Looking);
    type(world_->small.code.substr(5));
    QTRY_COMPARE(found.size(), 1);
    QCOMPARE(found.at(0).at(0).toString().toStdString(), world_->small.barrel.hex());
}

void ScanViewModelTest::forgivesLookAlikes()
{
    type("iLou7-");
    QCOMPARE(scan_->typed(), "110-V7");
}

void ScanViewModelTest::saysThatATypedCodeIsWrongAndWhatWasMeant()
{
    std::string wrong = world_->small.code;
    wrong[2] = wrong[2] == '4' ? '7' : '4';
    type(wrong);
    QTRY_VERIFY(!scan_->typedError().isEmpty());
    QCOMPARE(scan_->state(), ScanViewModel::Looking);
    QCOMPARE(scan_->suggestions(),
             QStringList{"Rum 3, " + QString::fromStdString(scan::shown(world_->small.code))});
    QSignalSpy found(scan_.get(), &ScanViewModel::found);
    scan_->chooseSuggestion(1);  // there is none
    scan_->chooseSuggestion(0);
    QTRY_COMPARE(found.size(), 1);
    QCOMPARE(found.at(0).at(0).toString().toStdString(), world_->small.barrel.hex());
}

void ScanViewModelTest::takesBackWhatIsTyped()
{
    std::string wrong = world_->small.code;
    wrong[2] = wrong[2] == '4' ? '7' : '4';
    type(wrong);
    QTRY_VERIFY(!scan_->typedError().isEmpty());
    scan_->type("9");  // no seventh
    QCOMPARE(scan_->typed().size(), 7);
    scan_->erase();
    QCOMPARE(scan_->typed().size(), 6);
    QVERIFY(scan_->typedError().isEmpty());
    QVERIFY(scan_->suggestions().isEmpty());
    scan_->clear();
    QVERIFY(scan_->typed().isEmpty());
    scan_->erase();
    QVERIFY(scan_->typed().isEmpty());
}

void ScanViewModelTest::dropsAnAnswerThatComesTooLate()
{
    QSignalSpy found(scan_.get(), &ScanViewModel::found);
    type(world_->small.code);
    scan_->clear();  // before the records have answered
    QTRY_VERIFY(!world_->workers.isBusy());
    QCOMPARE(scan_->state(), ScanViewModel::Looking);
    QTest::qWait(120);
    QCOMPARE(found.size(), 0);
}

void ScanViewModelTest::asksWhichOfTwoWithOneCode()
{
    // Two devices that do not know of each other can give one code twice.
    support::TestDevice second(8);
    const Path toSecond = world_->device.folder.path() / "first.spile";
    const Path back = world_->device.folder.path() / "second.spile";
    const std::string code = otherCode(1);
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
    QSignalSpy found(scan_.get(), &ScanViewModel::found);
    scan_->offer(label(world_->mark, code), "qr");
    QTRY_COMPARE(scan_->state(), ScanViewModel::Several);
    QCOMPARE(scan_->suggestions().size(), 2);
    const qsizetype ninth = scan_->suggestions().at(1).startsWith("Rum 9") ? 1 : 0;
    scan_->chooseSuggestion(static_cast<int>(ninth));
    QTRY_COMPARE(scan_->name(), "Rum 9");
    QTRY_COMPARE(found.size(), 1);
}

QTEST_GUILESS_MAIN(ScanViewModelTest)
#include "scan_view_model_test.moc"
