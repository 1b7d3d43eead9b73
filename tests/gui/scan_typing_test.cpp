#include "tests/gui/scan_world.hpp"

#include <QSignalSpy>
#include <algorithm>

using namespace spile;
using viewmodels::ScanViewModel;

class ScanTypingTest : public QObject {
    Q_OBJECT

private slots:
    void init();
    void cleanup() { world_.reset(); }
    void findsABarrelByItsTypedCode();
    void forgivesLookAlikes();
    void saysThatATypedCodeIsWrongAndWhatWasMeant();
    void takesBackWhatIsTyped();
    void dropsAnAnswerThatComesTooLate();
    void suggestsWhileACodeIsTyped();

private:
    std::unique_ptr<support::ScanWorld> world_;
};

void ScanTypingTest::init()
{
    world_ = std::make_unique<support::ScanWorld>();
    QVERIFY(world_->waitUntilOpen());
    world_->scan.begin();
}

void ScanTypingTest::findsABarrelByItsTypedCode()
{
    ScanViewModel& scan = world_->scan;
    QCOMPARE(scan.keys().size(), 32);
    QSignalSpy found(&scan, &ScanViewModel::found);
    world_->type(world_->small.code.substr(0, 5));
    QCOMPARE(scan.typed().toStdString(), scan::shown(world_->small.code).substr(0, 6));
    QTRY_VERIFY(!world_->workers.isBusy());
    QCOMPARE(scan.state(), ScanViewModel::Looking);
    world_->type(world_->small.code.substr(5));
    QTRY_COMPARE(found.size(), 1);
    QCOMPARE(found.at(0).at(0).toString().toStdString(), world_->small.barrel.hex());
}

void ScanTypingTest::forgivesLookAlikes()
{
    ScanViewModel& scan = world_->scan;
    world_->type("iLou7-");
    QCOMPARE(scan.typed(), "110-V7");
}

void ScanTypingTest::saysThatATypedCodeIsWrongAndWhatWasMeant()
{
    ScanViewModel& scan = world_->scan;
    std::string wrong = world_->small.code;
    wrong[2] = wrong[2] == '4' ? '7' : '4';
    world_->type(wrong);
    QTRY_VERIFY(!scan.typedError().isEmpty());
    QCOMPARE(scan.state(), ScanViewModel::Looking);
    QCOMPARE(scan.suggestions(), QStringList{"Rum 3"});
    QCOMPARE(scan.suggestedCodes(),
             QStringList{QString::fromStdString(scan::shown(world_->small.code))});
    QSignalSpy found(&scan, &ScanViewModel::found);
    scan.chooseSuggestion(1);  // there is none
    scan.chooseSuggestion(0);
    QTRY_COMPARE(found.size(), 1);
    QCOMPARE(found.at(0).at(0).toString().toStdString(), world_->small.barrel.hex());
}

void ScanTypingTest::takesBackWhatIsTyped()
{
    ScanViewModel& scan = world_->scan;
    std::string wrong = world_->small.code;
    wrong[2] = wrong[2] == '4' ? '7' : '4';
    world_->type(wrong);
    QTRY_VERIFY(!scan.typedError().isEmpty());
    scan.type("9");  // no seventh
    QCOMPARE(scan.typed().size(), 7);
    scan.erase();
    QCOMPARE(scan.typed().size(), 6);
    QVERIFY(scan.typedError().isEmpty());
    QVERIFY(scan.suggestions().isEmpty());
    scan.clear();
    QVERIFY(scan.typed().isEmpty());
    scan.erase();
    QVERIFY(scan.typed().isEmpty());
}

void ScanTypingTest::dropsAnAnswerThatComesTooLate()
{
    ScanViewModel& scan = world_->scan;
    QSignalSpy found(&scan, &ScanViewModel::found);
    world_->type(world_->small.code);
    scan.clear();  // before the records have answered
    QTRY_VERIFY(!world_->workers.isBusy());
    QCOMPARE(scan.state(), ScanViewModel::Looking);
    QTest::qWait(120);
    QCOMPARE(found.size(), 0);
}

void ScanTypingTest::suggestsWhileACodeIsTyped()
{
    ScanViewModel& scan = world_->scan;
    // Five codes that begin alike, and one that does not.
    std::vector<std::string> codes;
    std::string apart;
    for (std::uint64_t seed = 1; codes.size() < 5 || apart.empty(); ++seed) {
        SeededRandom random(seed);
        const std::string code = scan::randomCode(world_->mark, random);
        const bool begins = codes.empty() || code.substr(0, 1) == codes.front().substr(0, 1);
        std::string alike = codes.empty() ? code : codes.front().substr(0, 2) + code.substr(2, 3);
        if (begins && codes.size() < 5) {
            const char check = scan::checkCharacter(world_->mark + alike.substr(0, 5));
            alike = alike.substr(0, 5) + check;
            if (scan::isCode(world_->mark, alike)) {
                codes.push_back(alike);
            }
        } else if (code.substr(0, 2) != codes.front().substr(0, 2)) {
            apart = code;
        }
    }
    for (const std::string& code : codes) {
        std::ignore = world_->add({}, code);
    }
    std::ignore = world_->add("Rum 9", apart);
    std::sort(codes.begin(), codes.end());

    QSignalSpy found(&scan, &ScanViewModel::found);
    world_->type(codes.front().substr(0, 1));
    QTRY_VERIFY(!world_->workers.isBusy());
    QVERIFY(scan.suggestions().isEmpty());
    world_->type(codes.front().substr(1, 1));
    QTRY_COMPARE(scan.suggestions().size(), 4);
    for (int i = 0; i < 4; ++i) {
        QCOMPARE(scan.suggestions().at(i).toStdString(),
                 scan::shown(codes[static_cast<std::size_t>(i)]));
    }
    QCOMPARE(scan.suggestedCodes(), QStringList(4));  // their codes are their names
    scan.erase();
    QVERIFY(scan.suggestions().isEmpty());
    world_->type(codes.front().substr(1, 4));
    QTRY_COMPARE(scan.suggestions().size(), 1);  // only one is left, and it is not taken
    QTRY_VERIFY(!world_->workers.isBusy());
    QTest::qWait(120);
    QCOMPARE(scan.state(), ScanViewModel::Looking);
    QCOMPARE(found.size(), 0);
    scan.chooseSuggestion(0);
    QTRY_COMPARE(found.size(), 1);
}

QTEST_GUILESS_MAIN(ScanTypingTest)
#include "scan_typing_test.moc"
