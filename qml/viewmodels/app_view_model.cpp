#include "qml/viewmodels/app_view_model.hpp"

#include "qml/viewmodels/error_text.hpp"

namespace spile::viewmodels {

AppViewModel::AppViewModel(const Outside& outside, FilePlaces& places, Start start, QObject* parent)
    : QObject(parent),
      start_(std::move(start)),
      formats_(outside.clock),
      settings_(start_.settingsFile, formats_),
      context_{workers_, outside, formats_, notice_, settings_},
      interruption_(outside.clock),
      people_(context_),
      due_(context_),
      barrels_(context_),
      barrel_(context_),
      registering_(context_),
      drawing_(context_, people_),
      tasting_(context_, people_),
      comparing_(context_),
      record_(context_, people_),
      scan_(context_),
      photo_(context_, places),
      today_(context_),
      openSheets_(context_),
      dayFile_(context_, places),
      takeIn_(context_, places),
      joining_(context_),
      admitting_(context_),
      toSettle_(context_),
      settle_(context_),
      devices_(context_),
      clock_(context_),
      upkeep_(context_),
      openWork_(context_, workSheets_),
      sheets_(context_, barrel_, openWork_, workSheets_),
      work_(context_, people_, workSheets_),
      climate_(context_, people_),
      calculating_(context_),
      newFlight_(context_, people_),
      flight_(context_, people_),
      openFlights_(context_),
      windows_(context_),
      outlooks_(context_),
      outlook_(context_, barrel_, outlooks_),
      whatIf_(context_, barrel_, outlook_, outlooks_),
      calendar_(context_, outlooks_),
      tasters_(context_),
      labels_(context_, places),
      bench_(context_, people_, outlooks_),
      glasses_(context_, people_),
      lots_(context_),
      lot_(context_, people_),
      lotRecord_(context_, people_),
      lotBarrels_(context_),
      trace_(context_, places),
      reports_(context_)
{
    barrel_.setOutlooks(outlooks_);
    connectPages();
    connectWork();
    connectFlights();
    connectBench();
    connectLots();
    connectDevices();
    connectScanning();
}

AppViewModel::~AppViewModel() = default;

void AppViewModel::connectPages()
{
    connect(&navigator_, &Navigator::changed, this, &AppViewModel::pageChanged);
    connect(&people_, &PeopleViewModel::chosen, this, [this] {
        const std::string sheet = std::exchange(wantedSheet_, {});
        if (navigator_.page() == Navigator::People) {
            navigator_.back();
        }
        if (!sheet.empty()) {
            beginWork(sheet);
        }
    });
    connect(&drawing_, &DrawingViewModel::drawn, this, [this] { tasting_.begin(barrel_.row()); });
    connect(&tasting_, &TastingViewModel::opened, this, [this] {
        if (!tasting_.isBlind()) {
            barrel_.show(tasting_.barrel());
        }
        if (navigator_.page() == Navigator::Draw || navigator_.page() == Navigator::WasHere) {
            navigator_.replace(Navigator::Taste);
        } else {
            navigator_.open(Navigator::Taste);
        }
    });
    connect(&tasting_, &TastingViewModel::closed, this,
            [this](const QString& barrel, const QString& taste) {
                if (tasting_.isBlind()) {
                    navigator_.remove(Navigator::Taste);
                    showFlight(*tasting_.flight(), tasting_.person());
                    notice_.tell(tr("The sheet is closed: kept."));
                    return;
                }
                comparing_.show(idOf<SubjectId>(barrel), idOf<EntryId>(taste));
                barrel_.refresh();
                work_.tasted(idOf<SubjectId>(barrel));
                navigator_.replace(Navigator::Compare);
                notice_.tell(tr("The sheet is closed: kept."));
            });
    connect(&tasting_, &TastingViewModel::discarded, this, [this] {
        barrel_.refresh();
        navigator_.back();
    });
    connect(&record_, &RecordViewModel::recorded, this, [this] { navigator_.back(); });
    connect(&photo_, &PhotoViewModel::keptOnSheet, &tasting_, &TastingViewModel::photoKept);
    connect(&openSheets_, &OpenSheetsViewModel::chosen, &tasting_, &TastingViewModel::resume);
}

void AppViewModel::pageChanged()
{
    notice_.clear();
    if (!navigator_.pages().contains(Navigator::People)) {
        wantedSheet_.clear();  // nobody was chosen for it
    }
    barrel_.setTasting(navigator_.pages().contains(Navigator::Draw) ||
                       navigator_.pages().contains(Navigator::Taste) ||
                       (navigator_.pages().contains(Navigator::Steps) && work_.leadsToTasting()));
    outlook_.setShown(navigator_.pages().contains(Navigator::Outlook));
    calendar_.setShown(navigator_.pages().contains(Navigator::Calendar));
    tasters_.setShown(navigator_.pages().contains(Navigator::Tasters));
    switch (navigator_.page()) {
        case Navigator::Due:
            due_.refresh();
            openFlights_.refresh();
            break;
        case Navigator::AllBarrels:
            barrels_.refresh();
            break;
        case Navigator::Today:
            today_.refresh();
            openSheets_.refresh();
            openWork_.refresh();
            openFlights_.refresh();
            dayFile_.refresh();
            break;
        case Navigator::DayFile:
            dayFile_.begin();
            break;
        case Navigator::TakeIn:
            takeIn_.begin();
            break;
        case Navigator::Scan:
            scan_.begin();
            break;
        default:
            break;
    }
}

void AppViewModel::setStage(Stage stage, const QString& problem)
{
    stage_ = stage;
    problem_ = problem;
    emit stageChanged();
}

QString AppViewModel::newCellarName() const
{
    return newCellarName_.isNull() ? tr("Our cellar") : newCellarName_;
}

void AppViewModel::setNewCellarName(const QString& name)
{
    if (name != newCellarName()) {
        newCellarName_ = name;
        emit stageChanged();
    }
}

void AppViewModel::openWith(std::function<Workers::Opened(const Job&)> opener,
                            std::function<void()> then)
{
    const auto report = [this](std::uint64_t now, std::uint64_t all) {
        if (stage_ == FirstRun) {
            takeIn_.report(now, all);
        } else {
            broughtUp_ = shareOf(now, all);
            emit bringsUpChanged();
        }
    };
    const auto done = [this, then = std::move(then)](Result<void> opened) {
        makingCellar_ = false;
        if (!opened) {
            takeIn_.joined(opened);
            setStage(stage_ == FirstRun ? FirstRun : Broken,
                     takeIn_.asksPassphrase() ? takeIn_.error() : textOf(opened.error()));
            return;
        }
        takeIn_.joined(opened);
        takeIn_.setJoins(false);
        ready();
        then();
    };
    workers_.open(this, std::move(opener), report, done);
}

void AppViewModel::start()
{
    const ledger::CellarFolder cellar{start_.cellarFolder};
    if (!context_.outside.files.exists(cellar.database())) {
        takeIn_.setJoins(true);
        setStage(FirstRun);
        return;
    }
    setStage(Opening);
    openWith([folder = start_.cellarFolder, outside = context_.outside](
                 const Job& job) { return cellar::Cellar::open(folder, outside, {}, job); },
             [this] { showWhatIsOpen(); });
}

void AppViewModel::ready()
{
    people_.refresh();
    due_.refresh();
    setStage(Ready);
    outlooks_.begin();
    upkeep_.begin();
}

void AppViewModel::beginWithBarrel()
{
    if (stage_ != FirstRun || std::exchange(makingCellar_, true)) {
        return;
    }
    const QString given = newCellarName().trimmed();
    const QString name = given.isEmpty() ? tr("Our cellar") : given;
    ledger::NewCellar fresh{name.toStdString(), {}, start_.deviceName.toStdString()};
    openWith([folder = start_.cellarFolder, outside = context_.outside,
              fresh](const Job&) { return cellar::Cellar::create(folder, outside, fresh); },
             [this] { registerBarrel(); });
}

void AppViewModel::askWho()
{
    if (!people_.who()) {
        navigator_.open(Navigator::People);
    }
}

void AppViewModel::openBarrel(const QString& barrelId)
{
    barrel_.show(idOf<SubjectId>(barrelId));
    if (navigator_.page() == Navigator::Scan) {
        navigator_.go(Navigator::Due);
    }
    navigator_.open(Navigator::Barrel);
}

void AppViewModel::doNext()
{
    const std::string& step = barrel_.row().nextStep;
    if (const auto sheet = barrel_.openSheet()) {
        tasting_.resume(*sheet);
    } else if (openWork_.runFor(barrel_.row().barrel)) {
        goOnWithWork();
    } else if (step == "taste") {
        draw();
    } else if (step == "empty" && barrel_.row().verdict == "destroy") {
        openRecord(RecordViewModel::Empty);  // it goes into no lot
    } else if (step == "fill" || step == "empty") {
        openSheetsOfBarrel();
    } else if (!sheetForStep(step).empty()) {
        beginWork(sheetForStep(step));
    } else {
        openRecord(RecordViewModel::Check);
    }
}

void AppViewModel::draw()
{
    drawing_.open(barrel_.row());
    navigator_.open(Navigator::Draw);
    askWho();
}

void AppViewModel::taste()
{
    if (people_.who()) {
        tasting_.begin(barrel_.row());
    } else {
        askWho();
    }
}

void AppViewModel::photograph()
{
    photo_.beginForBarrel(barrel_.row(), people_.who());
    navigator_.open(Navigator::Photo);
}

void AppViewModel::photographForSheet()
{
    photo_.beginForSheet(tasting_.row(), tasting_.sheet());
    navigator_.open(Navigator::Photo);
}

void AppViewModel::openRecord(RecordViewModel::Kind kind)
{
    record_.begin(kind, barrel_.row());
    navigator_.open(Navigator::Record);
    askWho();
}

void AppViewModel::registerBarrel(const QString& labelCode)
{
    registering_.begin(labelCode);
    if (navigator_.page() == Navigator::Scan) {
        navigator_.go(Navigator::Due);
    }
    navigator_.open(Navigator::Register);
}

void AppViewModel::openRegistered()
{
    navigator_.back();
    openBarrel(registering_.barrelId());
}

void AppViewModel::allBarrels() { navigator_.open(Navigator::AllBarrels); }

void AppViewModel::putAside()
{
    if (navigator_.pages().contains(Navigator::Taste) ||
        navigator_.pages().contains(Navigator::Steps)) {
        navigator_.go(navigator_.root());
    } else {
        navigator_.back();
    }
}

void AppViewModel::openHandbook()
{
    handbook_.setCurrent(-1);
    navigator_.open(Navigator::Handbook);
}

bool AppViewModel::goBack()
{
    // From a page of the handbook to their list, which is opened from the settings alone.
    if (navigator_.page() == Navigator::Handbook && handbook_.current() >= 0 &&
        navigator_.pages().contains(Navigator::Settings)) {
        handbook_.setCurrent(-1);
        return true;
    }
    if (navigator_.page() == Navigator::Calculate && calculating_.current() >= 0) {
        calculating_.leave();
        return true;
    }
    return navigator_.back();
}

void AppViewModel::applicationStateChanged(Qt::ApplicationState state)
{
    if (state != Qt::ApplicationActive) {
        interruption_.begin();
        return;
    }
    const auto gap = interruption_.end();
    if (!gap || stage_ != Ready) {
        return;
    }
    due_.refresh();
    outlooks_.begin();  // they are of another day by now
    QString said;
    if (gap->clockJump != Milliseconds(0)) {
        const auto minutes = std::chrono::duration_cast<std::chrono::minutes>(gap->clockJump);
        said = tr("The phone's clock was changed by %n minute(s). Every record keeps its order.",
                  "", static_cast<int>(std::abs(minutes.count())));
    }
    if (navigator_.page() == Navigator::Taste || navigator_.page() == Navigator::Steps) {
        openSheets_.setInterruption(said);
        openSheets_.refresh();
        openWork_.refresh();
        navigator_.open(Navigator::WasHere);
    } else if (!said.isEmpty()) {
        notice_.tell(said);
    }
}

}  // namespace spile::viewmodels
