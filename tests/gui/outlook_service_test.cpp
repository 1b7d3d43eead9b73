// Outlooks are computed beside everything else, kept, and computed anew only if there is something
// new.
#include "qml/viewmodels/outlook_service.hpp"

#include "core/cellar/acts/tasting.hpp"
#include "tests/gui/view_model_world.hpp"

#include <QSignalSpy>
#include <QTest>

namespace spile::viewmodels {

class OutlookServiceTest : public QObject {
    Q_OBJECT

private slots:
    void keepsTheOutlookOfEachFullBarrel()
    {
        support::ViewModelWorld world;
        QVERIFY(world.waitUntilOpen());
        OutlookService service(world.context);
        QSignalSpy learned(&service, &OutlookService::learned);
        QVERIFY(!service.hasLearned());
        service.learnNow();
        QVERIFY(!world.workers.isBusy());  // nobody waits for it
        QVERIFY(learned.wait(20000));
        QVERIFY(service.hasLearned());
        QTRY_VERIFY(kept(world));
        QCOMPARE(kept(world)->made, world.device.clock.now());

        const SubjectId barrel = world.small.barrel;
        QVERIFY(world
                    .act([&](cellar::Cellar& cellar) {
                        return cellar::recordTaste(
                            cellar, {.barrel = barrel,
                                     .scores = {{"oak", 5}},
                                     .circumstance = {.person = world.small.person}});
                    })
                    .has_value());
        QVERIFY(!kept(world));  // it knows less than the records
        world.device.clock.pass(std::chrono::hours(1));
        service.learnNow();
        QVERIFY(learned.wait(20000));
        QTRY_VERIFY(kept(world));
        QCOMPARE(kept(world)->made, world.device.clock.now());
    }

    void learnsOnlyWhatIsNew()
    {
        support::ViewModelWorld world;
        QVERIFY(world.waitUntilOpen());
        OutlookService service(world.context);
        QSignalSpy learned(&service, &OutlookService::learned);
        service.learnNow();
        QVERIFY(learned.wait(20000));
        QTRY_VERIFY(kept(world));
        service.learnNow();
        QVERIFY(!learned.wait(500));
        world.device.clock.pass(std::chrono::hours(13));  // an outlook is one at a time
        service.learnNow();
        QVERIFY(learned.wait(20000));
    }

    void beginsByItselfAndFollowsChanges()
    {
        support::ViewModelWorld world;
        QVERIFY(world.waitUntilOpen());
        OutlookService service(world.context);
        QSignalSpy learned(&service, &OutlookService::learned);
        QVERIFY(!learned.wait(2000));  // not before the first page is shown
        service.begin();
        QVERIFY(learned.wait(20000));
        QVERIFY(
            world.act([](cellar::Cellar& cellar) { return cellar::registerPerson(cellar, "Kim"); })
                .has_value());
        QVERIFY(learned.wait(20000));
    }

    void endsWithTheApp()
    {
        support::ViewModelWorld world;
        QVERIFY(world.waitUntilOpen());
        OutlookService service(world.context);
        service.learnNow();
    }

private:
    static std::optional<cellar::KeptOutlook> kept(support::ViewModelWorld& world)
    {
        return world
            .act([&world](cellar::Cellar& cellar) {
                return cellar::keptOutlook(cellar.database(), world.small.barrel);
            })
            .value();
    }
};

}  // namespace spile::viewmodels

QTEST_GUILESS_MAIN(spile::viewmodels::OutlookServiceTest)
#include "outlook_service_test.moc"
