#include "tests/gui/app/test_app.hpp"

#include "core/cellar/acts/foreseeing.hpp"
#include "core/cellar/acts/registering.hpp"
#include "core/cellar/acts/tasting.hpp"
#include "core/cellar/acts/windows.hpp"
#include "core/cellar/lots.hpp"
#include "core/ledger/schema.hpp"
#include "core/scan/barrel_code.hpp"
#include "tests/gui/app/must.hpp"
#include "tests/support/command.hpp"
#include "tests/support/counting_vfs.hpp"

#include <QAccessible>
#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QQuickItem>
#include <QQuickWindow>
#include <QtDebug>

namespace spile::support {

namespace {

constexpr const char* today = "2026-11-25T14:00Z";

/// Each text with two fifths more of it, in brackets that show where it ends.
class LongWords final : public QTranslator {
public:
    using QTranslator::QTranslator;
    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char* /*context*/, const char* source,
                                    const char* /*disambiguation*/, int /*n*/) const override
    {
        const QString text = QString::fromUtf8(source);
        QString more;
        // Words of five letters, as a language that says it longer would break its lines.
        for (qsizetype i = 0; i < text.size() * 2 / 5; ++i) {
            more += i % 6 == 0 ? QLatin1Char(' ') : QLatin1Char('o');
        }
        return text + more;
    }
};

void collectTexts(const QQuickItem* item, QStringList& texts)
{
    if (!item->isVisible() || item->opacity() == 0.0) {
        return;
    }
    const QVariant text = item->property("text");
    if (text.isValid() && !text.toString().isEmpty()) {
        texts << text.toString();
    }
    for (const QQuickItem* child : item->childItems()) {
        collectTexts(child, texts);
    }
}

void collectNames(QAccessibleInterface* thing, QStringList& names)
{
    if (thing->state().invisible) {
        return;
    }
    for (const QAccessible::Text text : {QAccessible::Name, QAccessible::Description}) {
        if (const QString said = thing->text(text); !said.isEmpty()) {
            names << said;
        }
    }
    for (int i = 0; i < thing->childCount(); ++i) {
        collectNames(thing->child(i), names);
    }
}

}  // namespace

std::vector<TestPlaces::Place> TestPlaces::targets() { return {{"Stick", folder_}}; }

std::vector<TestPlaces::Found> TestPlaces::dayFiles()
{
    std::vector<Found> found;
    const QDir folder(QString::fromStdString(folder_.string()));
    for (const QFileInfo& file :
         folder.entryInfoList({QStringLiteral("*.spile")}, QDir::Files, QDir::Name)) {
        found.push_back({file.absoluteFilePath().toStdString(), file.fileName(),
                         instantFromMs(file.lastModified().toMSecsSinceEpoch()),
                         static_cast<std::uint64_t>(file.size())});
    }
    return found;
}

// What SQLite writes is refused by a layer that is put under it before any cellar is opened.
TestApp::TestApp(QObject* parent) : QObject(parent)
{
    registerCountingVfs().fillDisk([this] { return isFull(); });
}

TestApp::~TestApp()
{
    end();
    registerCountingVfs().fillDisk({});
}

QString TestApp::stick() const
{
    return QString::fromStdString((device_->folder.path() / "stick").string());
}

// What showed the app goes first, as when the program ends.
void TestApp::end()
{
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    app_.reset();
}

void TestApp::beginEmpty()
{
    static std::uint64_t seed = 0;
    end();
    device_ = std::make_unique<TestDevice>(++seed);
    device_->clock.setWall(*fromIso(today));
    useDisk();
    QDir().mkpath(stick());
    places_ = std::make_unique<TestPlaces>(device_->folder.path() / "stick");
    this->start();
}

void TestApp::beginWithBarrels(int barrels, int tastings)
{
    beginEmpty();
    end();
    device_->clock.setWall(*fromIso(today) - std::chrono::days(250));
    auto made = must(cellar::Cellar::create(device_->cellarFolder(), device_->outside(),
                                            {"Test cellar", "TEST", "Phone"}));
    cellar::Cellar& cellar = *made;
    const SubjectId ada = ada_ = must(cellar::registerPerson(cellar, "Ada"));
    const SubjectId rack = must(cellar::registerPlace(cellar, "Rack 1"));
    const SubjectId beer = must(cellar::registerBatch(cellar, {"Night Ferry"}));
    std::vector<SubjectId> made_;
    for (int i = 1; i <= barrels; ++i) {
        cellar::NewBarrel barrel;
        barrel.mark = "Rum " + std::to_string(i);
        barrel.spirit = "rum";
        barrel.size = litres(200);
        barrel.place = rack;
        cellar::FullSince full;
        full.since = {device_->clock.now() + std::chrono::days(49), 0};
        device_->clock.pass(std::chrono::seconds(1));
        full.since.time = device_->clock.now();
        full.precision = cellar::DatePrecision::Month;
        full.batch = beer;
        full.volume = litres(190);
        barrel.fullSince = full;
        const cellar::RegisteredBarrel known = must(cellar::registerBarrel(cellar, barrel));
        barrels_[QString::fromStdString(barrel.mark)] = {known.barrel, known.code};
        made_.push_back(known.barrel);
    }
    for (int round = 0; round < tastings; ++round) {
        device_->clock.pass(std::chrono::days(20));
        for (const SubjectId& barrel : made_) {
            cellar::NewTaste taste;
            taste.barrel = barrel;
            taste.scores = {{"vanilla", 3 + round}, {"oak", 4}, {"acidity", std::nullopt}};
            taste.circumstance.person = ada;
            taste.circumstance.note = "early days";
            must(cellar::recordTaste(cellar, taste));
        }
    }
    device_->clock.setWall(std::max(*fromIso(today), device_->clock.now()));
    made.reset();
    this->start();
}

void TestApp::start()
{
    app_ = std::make_unique<viewmodels::AppViewModel>(
        Outside{device_->clock, *disk_, device_->random, device_->ids, device_->keys}, *places_,
        viewmodels::AppViewModel::Start{
            device_->cellarFolder(),
            QString::fromStdString((device_->folder.path() / "settings.ini").string()),
            QStringLiteral("Phone")});
    emit appChanged();
    app_->start();
}

void TestApp::change(const std::function<void(cellar::Cellar&)>& what)
{
    end();
    auto cellar = must(cellar::Cellar::open(device_->cellarFolder(), device_->outside()));
    what(*cellar);
    cellar.reset();
    start();
}

void TestApp::addBarrelOfUnknownBeer(const QString& mark)
{
    change([&](cellar::Cellar& cellar) {
        cellar::NewBarrel barrel;
        barrel.mark = mark.toStdString();
        barrel.fullSince =
            cellar::FullSince{{device_->clock.now(), 0}, cellar::DatePrecision::Month, {}, {}};
        const cellar::RegisteredBarrel known = must(cellar::registerBarrel(cellar, barrel));
        barrels_[mark] = {known.barrel, known.code};
    });
}

void TestApp::tellFault(const QString& mark, const QString& fault)
{
    change([&](cellar::Cellar& cellar) {
        cellar::NewTaste taste;
        taste.barrel = barrels_.at(mark).barrel;
        taste.faults = {{fault.toStdString(), 5}};
        taste.circumstance.person = ada_;
        must(cellar::recordTaste(cellar, taste));
    });
}

QString TestApp::idOf(const QString& mark)
{
    return QString::fromStdString(barrels_.at(mark).barrel.hex());
}

QString TestApp::codeOf(const QString& mark)
{
    return QString::fromStdString(scan::shown(barrels_.at(mark).code));
}

void TestApp::restart()
{
    end();
    start();
}

bool TestApp::isSettled() const
{
    return app_ && !app_->workers().isBusy() && app_->stage() != viewmodels::AppViewModel::Opening;
}

void TestApp::giveWindow(const QString& attribute, int low, int high)
{
    app_->workers().act(
        this,
        [attribute = attribute.toStdString(), low, high](cellar::Cellar& cellar) -> Result<void> {
            const auto beers = cellar::named(cellar.database(), "batch", {}, 1);
            return cellar::setWindows(cellar, beers->front().subject, {{attribute, low, high}});
        },
        [](const Result<void>& given) {
            if (!given) {
                qFatal("the window is not given");
            }
        });
}

void TestApp::holdLot(const QString& lotId, const QString& reason)
{
    app_->workers().act(
        this,
        [lot = viewmodels::idOf<SubjectId>(lotId),
         reason = reason.toStdString()](cellar::Cellar& cellar) -> Result<void> {
            must(cellar::recordHold(cellar, lot, reason));
            return {};
        },
        [](const Result<void>&) {});
}

void TestApp::clearHolds(const QString& lotId)
{
    app_->workers().act(
        this,
        [lot = viewmodels::idOf<SubjectId>(lotId)](cellar::Cellar& cellar) -> Result<void> {
            for (const auto& hold : must(cellar::openHoldsOf(cellar.database(), lot))) {
                must(cellar::recordClear(cellar, hold.entry, "sound"));
            }
            return {};
        },
        [](const Result<void>&) {});
}

void TestApp::learnOutlooks() { app_->outlooks().learnNow(); }
bool TestApp::hasLearned() const { return !app_->outlooks().isRunning(); }
int TestApp::dayOfFirstScore() const { return 20; }

int TestApp::recordCount()
{
    std::optional<std::int64_t> newest;
    app_->workers().read(
        this, [](cellar::Cellar& cellar) { return cellar::newestRecord(cellar.database()); },
        [&](const Result<std::int64_t>& found) {
            newest = found.value_or(-1);
            if (!found) {
                qWarning("no count: %s, %s", found.error().subject.c_str(),
                         found.error().value.c_str());
            }
        });
    while (!newest) {
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    }
    return static_cast<int>(*newest);
}

void TestApp::passSeconds(int seconds) { device_->clock.pass(std::chrono::seconds(seconds)); }

void TestApp::jumpClock(int minutes)
{
    device_->clock.setWall(device_->clock.now() + std::chrono::minutes(minutes));
}

void TestApp::spoilNewestDraw()
{
    app_->workers().act(
        this,
        [](cellar::Cellar& cellar) {
            return cellar.database().run(
                std::string("DROP TRIGGER entry_is_never_changed; UPDATE entry SET body = x'a0' "
                            "WHERE n = (SELECT max(n) FROM entry WHERE kind = 'draw');") +
                ledger::entriesNeverChange);
        },
        [](const Result<void>& spoilt) {
            if (!spoilt) {
                qFatal("nothing spoilt");
            }
        });
}

void TestApp::setApplicationState(int state)
{
    app_->applicationStateChanged(static_cast<Qt::ApplicationState>(state));
}

void TestApp::useLongWords()
{
    longWords_ = std::make_unique<LongWords>();
    QCoreApplication::installTranslator(longWords_.get());
}

void TestApp::usePlainWords() { longWords_.reset(); }

QString TestApp::desk(const QStringList& arguments)
{
    std::vector<std::string> all{"--json", "--cellar", (deskFolder_.path() / "desk").string()};
    for (const QString& argument : arguments) {
        all.push_back(argument.toStdString());
    }
    const Ended ended = run(SPILE_DESK, all);
    if (ended.exit != 0) {
        qWarning("spile-desk: %s", ended.err.c_str());
    }
    return QString::fromStdString(ended.out);
}

QStringList TestApp::stickFiles() const
{
    QStringList files;
    for (const QFileInfo& file : QDir(stick()).entryInfoList(QDir::Files, QDir::Name)) {
        files << file.absoluteFilePath();
    }
    return files;
}

QString TestApp::carried(const QString& file) const
{
    const QString to = QString::fromStdString((deskFolder_.path() / "carried.spile").string());
    QFile::remove(to);
    return QFile::copy(file, to) ? to : QString();
}

int TestApp::mapped(const QString& library) const
{
    QFile maps(QStringLiteral("/proc/self/maps"));
    return maps.open(QIODevice::ReadOnly) ? static_cast<int>(maps.readAll().count(library.toUtf8()))
                                          : -1;
}

QString TestApp::allTexts(QObject* root) const
{
    QStringList texts;
    collectTexts(qobject_cast<const QQuickItem*>(root), texts);
    return texts.join(QLatin1Char('\n'));
}

QString TestApp::allNames(QObject* root) const
{
    QAccessible::setActive(true);
    QStringList names;
    const auto* item = qobject_cast<const QQuickItem*>(root);
    if (item == nullptr || item->window() == nullptr) {
        qFatal("nothing is shown");
    }
    collectNames(QAccessible::queryAccessibleInterface(item->window()), names);
    return names.join(QLatin1Char('\n'));
}

}  // namespace spile::support
