#include "platform/app/tour.hpp"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QEventLoop>
#include <QTimer>
#include <algorithm>
#include <memory>

namespace spile::app {

using viewmodels::AppViewModel;
using viewmodels::ComparingViewModel;
using viewmodels::FlightViewModel;
using viewmodels::Navigator;
using viewmodels::RecordViewModel;
using viewmodels::TastingViewModel;

bool Tour::waitFor(const std::function<bool()>& done)
{
    constexpr int longestWaitMs = 20'000;
    QElapsedTimer timer;
    timer.start();
    QTimer looksAgain;  // asleep meanwhile, so that the workers have the processors
    looksAgain.start(2);
    while (!done()) {
        if (timer.elapsed() > longestWaitMs) {
            return false;
        }
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    }
    return true;
}

// The writer has answered all, and two frames have been drawn since.
void Tour::settle()
{
    waitFor([this] { return !app_.workers().isBusy(); });
    for (int frame = 0; frame < 2; ++frame) {
        // Shared, since a call that is queued already comes even after the disconnection.
        const auto drawn = std::make_shared<bool>(false);
        const auto connection = QObject::connect(
            &window_, &QQuickWindow::frameSwapped, &window_, [drawn] { *drawn = true; },
            Qt::QueuedConnection);
        window_.update();
        waitFor([&] { return *drawn && !app_.workers().isBusy(); });
        QObject::disconnect(connection);
    }
}

bool Tour::begin(const Visit& visit)
{
    waitFor([this] { return app_.stage() != AppViewModel::Opening; });
    if (app_.stage() == AppViewModel::FirstRun) {
        settle();
        if (!visit(QStringLiteral("first-run"))) {
            return false;
        }
        app_.beginWithBarrel();
        waitFor([this] { return app_.stage() != AppViewModel::FirstRun; });
    }
    settle();
    if (app_.stage() != AppViewModel::Ready) {
        return false;
    }
    if (!app_.people()->who()) {
        app_.people()->setNewName(QStringLiteral("Ada"));
        app_.people()->add();
        settle();
    }
    return true;
}

bool Tour::run(const Visit& visit)
{
    if (!begin(visit)) {
        return false;
    }
    const std::vector<Scene> all = scenes();
    return std::all_of(all.begin(), all.end(), [&](const Scene& scene) {
        scene.go();
        settle();
        return visit(scene.name);
    });
}

void Tour::showBarrel()
{
    app_.navigator()->go(Navigator::Due);
    settle();
    const auto& due = *app_.due()->barrels();
    const auto* row = due.rowAt(due.rowCount() - 1);  // the first ones may be forgotten and bare
    app_.openBarrel(row != nullptr ? row->id : app_.registering()->barrelId());
    settle();
}

void Tour::goOnUntil(TastingViewModel::StepKind kind)
{
    TastingViewModel& sheet = *app_.tasting();
    while (sheet.step() != kind && !sheet.isLast()) {
        sheet.next();
        settle();
    }
}

std::vector<Tour::Scene> Tour::scenes()
{
    std::vector<Scene> all;
    for (auto part :
         {registering(), tasting(), recording(), foreseeing(), working(), emptying(), flying(),
          benching(), tastingBench(), lots(), tracing(), exchanging(), settling()}) {
        std::move(part.begin(), part.end(), std::back_inserter(all));
    }
    return all;
}

std::vector<Tour::Scene> Tour::registering()
{
    auto& form = *app_.registering();
    return {{QStringLiteral("people"), [this] { app_.navigator()->open(Navigator::People); }},
            {QStringLiteral("register"),
             [this] {
                 app_.navigator()->go(Navigator::Due);
                 app_.registerBarrel();
             }},
            {QStringLiteral("register-full"),
             [&form] {
                 form.setMark(QStringLiteral("Rum 99"));
                 form.setSpirit(2);
                 form.setSize(4);
                 form.setFull(true);
                 form.stepSince(-8);
                 form.setNewBeer(QStringLiteral("Night Ferry"));
             }},
            {QStringLiteral("registered"), [&form] { form.record(); }},
            {QStringLiteral("due"), [this] { app_.navigator()->go(Navigator::Due); }},
            {QStringLiteral("barrels"), [this] { app_.allBarrels(); }},
            {QStringLiteral("barrel"), [this] { showBarrel(); }}};
}

std::vector<Tour::Scene> Tour::tasting()
{
    TastingViewModel& sheet = *app_.tasting();
    return {{QStringLiteral("draw"), [this] { app_.draw(); }},
            {QStringLiteral("taste"), [this] { app_.drawing()->record(); }},
            {QStringLiteral("taste-scored"), [&sheet] { sheet.choose(7); }},
            {QStringLiteral("taste-second"), [&sheet] { sheet.next(); }},
            {QStringLiteral("was-here"),
             [this] {
                 app_.openSheets()->refresh();
                 app_.navigator()->open(Navigator::WasHere);
             }},
            {QStringLiteral("barrel-hidden"), [this] { showBarrel(); }},
            {QStringLiteral("taste-liking"),
             [this, &sheet] {
                 app_.doNext();
                 settle();
                 for (int score = 3; sheet.step() == TastingViewModel::Attribute; ++score) {
                     sheet.choose(1 + score % 9);
                     settle();
                     sheet.next();
                     settle();
                 }
                 sheet.choose(6);
             }},
            {QStringLiteral("taste-faults"),
             [this, &sheet] {
                 goOnUntil(TastingViewModel::Faults);
                 sheet.tapFault(1);
             }},
            {QStringLiteral("taste-readings"),
             [this, &sheet] {
                 goOnUntil(TastingViewModel::Readings);
                 sheet.stepReading(TastingViewModel::Gravity, 1);
             }},
            {QStringLiteral("taste-note"),
             [this, &sheet] {
                 goOnUntil(TastingViewModel::Note);
                 sheet.tapNoteChip(0);
             }},
            {QStringLiteral("taste-close"), [this] { goOnUntil(TastingViewModel::Close); }},
            {QStringLiteral("photo"), [this] { app_.photographForSheet(); }},
            {QStringLiteral("compare"),
             [this, &sheet] {
                 app_.goBack();
                 settle();
                 sheet.close();
                 settle();
                 app_.comparing()->say(0, ComparingViewModel::More);
             }},
            {QStringLiteral("barrel-tasted"), [this] { app_.goBack(); }}};
}

std::vector<Tour::Scene> Tour::recording()
{
    const auto record = [this](RecordViewModel::Kind kind) {
        return [this, kind] {
            showBarrel();
            app_.openRecord(kind);
        };
    };
    return {{QStringLiteral("record-gauge"), record(RecordViewModel::Gauge)},
            {QStringLiteral("record-check"), record(RecordViewModel::Check)},
            {QStringLiteral("record-verdict"), record(RecordViewModel::Verdict)},
            {QStringLiteral("record-move"), record(RecordViewModel::Move)},
            {QStringLiteral("record-empty"), record(RecordViewModel::Empty)},
            {QStringLiteral("record-fill"), record(RecordViewModel::Fill)}};
}

std::vector<Tour::Scene> Tour::foreseeing()
{
    auto& outlook = *app_.outlook();
    auto& change = *app_.whatIf();
    return {{QStringLiteral("outlook"),
             [this] {
                 showBarrel();
                 app_.outlooks().learnNow();
                 waitFor([this] { return !app_.outlooks().isRunning(); });
                 settle();
                 app_.openOutlook();
             }},
            {QStringLiteral("outlook-read"),
             [&outlook] { outlook.readAt(outlook.scoreRange().width() * 0.6); }},
            {QStringLiteral("what-if"),
             [this, &change] {
                 app_.openWhatIf();
                 settle();
                 change.stepTemperature(0);
                 change.stepTemperature(10);
                 change.chooseOther(0);
                 waitFor([&change] {
                     return !change.adviceThen().isEmpty() || !change.error().isEmpty();
                 });
             }},
            {QStringLiteral("calendar"), [this] { app_.openCalendar(); }},
            {QStringLiteral("tasters"), [this] {
                 app_.openTasters();
                 waitFor([this] { return app_.tasters()->isLoaded(); });
             }}};
}

// The barrel that was registered full is gone on with as if it were empty: after the fill of a
// sheet it is full again, whatever it was before.
std::vector<Tour::Scene> Tour::working()
{
    auto& work = *app_.work();
    const auto begin = [this, &work](const char* sheet) {
        showBarrel();
        if (work.barrel() == app_.barrel()->row().barrel) {
            work.giveUp();
            settle();
        }
        app_.beginWork(sheet);
        settle();
    };
    const auto goTo = [this, &work](const char* step) {
        for (int guard = 0; guard < 30 && work.stepName() != QLatin1String(step); ++guard) {
            work.skip(0);
            settle();
        }
    };
    return {{QStringLiteral("sheets"),
             [this] {
                 showBarrel();
                 app_.openSheetsOfBarrel();
             }},
            {QStringLiteral("step-caution"), [begin] { begin("fill"); }},
            {QStringLiteral("step-gas"),
             [begin, goTo, &work, this] {
                 begin("purge");
                 goTo("gas");
                 work.stepAsk(QStringLiteral("room_l"), 0);
             }},
            {QStringLiteral("step-hold"),
             [&work, goTo] {
                 Q_UNUSED(work)
                 goTo("purge");
             }},
            {QStringLiteral("step-timer"), [&work] { work.beginStep(); }},
            {QStringLiteral("step-stopped"), [&work] { work.stop(); }},
            {QStringLiteral("was-here-work"),
             [this] {
                 app_.openWork()->refresh();
                 settle();
                 app_.navigator()->go(Navigator::Today);
                 app_.navigator()->open(Navigator::WasHere);
             }},
            {QStringLiteral("step-readings"),
             [begin, goTo, &work] {
                 begin("fill");
                 goTo("readings");
                 work.stepAsk(QStringLiteral("sg_e4"), 0);
             }},
            {QStringLiteral("step-gauge"),
             [begin, goTo, &work, this] {
                 begin("gauge");
                 work.chooseWord(QStringLiteral("gauge_way"), 3);
                 settle();
                 work.finish();
                 settle();
                 work.beginStep();
                 settle();
                 work.stepAsk(QStringLiteral("dip_mm"), 0);
             }},
            {QStringLiteral("climate"),
             [this] {
                 showBarrel();
                 app_.openClimate();
                 app_.climate()->stepTemperature(0);
                 app_.climate()->stepHumidity(0);
             }},
            {QStringLiteral("calculate"),
             [this] {
                 showBarrel();
                 app_.openCalculators();
             }},
            {QStringLiteral("calculate-purge"),
             [this] { app_.calculating()->choose(QStringLiteral("purge")); }}};
}

// With fewer than two full barrels there is no flight, and its scenes show what there is.
std::vector<Tour::Scene> Tour::flying()
{
    auto& fresh = *app_.newFlight();
    auto& flight = *app_.flight();
    constexpr int barrels = 3;
    constexpr int glassesMost = barrels + 1;
    const auto tasteNext = [this, &flight] {
        flight.taste();
        settle();
        goOnUntil(TastingViewModel::Close);
        app_.tasting()->close();
        settle();
    };
    return {
        {QStringLiteral("new-flight"),
         [this, &fresh] {
             app_.navigator()->go(Navigator::Today);
             app_.openFlight();
             settle();
             for (int i = 0; i < barrels; ++i) {
                 fresh.toggle(i);
             }
             fresh.toggleTwice();
         }},
        {QStringLiteral("flight-draw"), [&fresh] { fresh.begin(); }},
        {QStringLiteral("flight-tasters"),
         [this, &flight] {
             for (int i = 0; i < glassesMost && flight.stage() == FlightViewModel::Drawing; ++i) {
                 flight.pouring()->record();
                 settle();
             }
         }},
        {QStringLiteral("flight-glass"), [&flight] { flight.chooseTaster(0); }},
        {QStringLiteral("flight-taste"), [&flight] { flight.taste(); }},
        {QStringLiteral("flight-close"), [this] { goOnUntil(TastingViewModel::Close); }},
        {QStringLiteral("flight-tasted"),
         [this, &flight, tasteNext] {
             app_.tasting()->close();
             settle();
             for (int i = 0; i < glassesMost && flight.stage() == FlightViewModel::NextGlass; ++i) {
                 tasteNext();
             }
         }},
        {QStringLiteral("windows"), [this] {
             showBarrel();
             app_.openWindows();
             settle();
             app_.windows()->toggle(0);
         }}};
}

std::vector<Tour::Scene> Tour::exchanging()
{
    return {{QStringLiteral("today"), [this] { app_.navigator()->go(Navigator::Today); }},
            {QStringLiteral("day-file"), [this] { app_.openDayFile(); }},
            {QStringLiteral("day-file-written"), [this] { app_.dayFile()->write(); }},
            {QStringLiteral("take-in"), [this] { app_.openTakeIn(); }},
            {QStringLiteral("labels"),
             [this] {
                 showBarrel();
                 app_.openLabelsOfBarrel();
             }},
            {QStringLiteral("labels-spare"),
             [this] {
                 app_.labels()->chooseSubject(2);
                 app_.labels()->chooseKind(1);
             }},
            {QStringLiteral("settings"), [this] { app_.navigator()->open(Navigator::Settings); }},
            {QStringLiteral("handbook"), [this] { app_.openHandbook(); }},
            {QStringLiteral("handbook-page"), [this] { app_.handbook()->setCurrent(0); }},
            {QStringLiteral("scan"), [this] { app_.navigator()->go(Navigator::Scan); }},
            {QStringLiteral("scan-head"), [this] {
                 showBarrel();
                 app_.scanToBeSure(app_.barrel()->barrelId(), app_.barrel()->name());
             }}};
}

}  // namespace spile::app
