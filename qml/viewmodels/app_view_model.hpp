#pragma once

#include "qml/viewmodels/admitting_view_model.hpp"
#include "qml/viewmodels/barrel_view_model.hpp"
#include "qml/viewmodels/barrels_view_model.hpp"
#include "qml/viewmodels/bench_glasses_view_model.hpp"
#include "qml/viewmodels/bench_view_model.hpp"
#include "qml/viewmodels/calculating_view_model.hpp"
#include "qml/viewmodels/calendar_view_model.hpp"
#include "qml/viewmodels/climate_view_model.hpp"
#include "qml/viewmodels/clock_view_model.hpp"
#include "qml/viewmodels/comparing_view_model.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/day_file_view_model.hpp"
#include "qml/viewmodels/devices_view_model.hpp"
#include "qml/viewmodels/drawing_view_model.hpp"
#include "qml/viewmodels/flight_view_model.hpp"
#include "qml/viewmodels/handbook_view_model.hpp"
#include "qml/viewmodels/interruption.hpp"
#include "qml/viewmodels/joining_view_model.hpp"
#include "qml/viewmodels/labels_view_model.hpp"
#include "qml/viewmodels/lot_record_view_model.hpp"
#include "qml/viewmodels/lot_view_model.hpp"
#include "qml/viewmodels/lots_view_model.hpp"
#include "qml/viewmodels/navigator.hpp"
#include "qml/viewmodels/new_flight_view_model.hpp"
#include "qml/viewmodels/notice.hpp"
#include "qml/viewmodels/open_flights_view_model.hpp"
#include "qml/viewmodels/open_sheets_view_model.hpp"
#include "qml/viewmodels/open_work_view_model.hpp"
#include "qml/viewmodels/outlook_view_model.hpp"
#include "qml/viewmodels/people_view_model.hpp"
#include "qml/viewmodels/photo_view_model.hpp"
#include "qml/viewmodels/record_view_model.hpp"
#include "qml/viewmodels/registering_view_model.hpp"
#include "qml/viewmodels/reports_view_model.hpp"
#include "qml/viewmodels/scan_view_model.hpp"
#include "qml/viewmodels/settings.hpp"
#include "qml/viewmodels/settle_view_model.hpp"
#include "qml/viewmodels/sheets_view_model.hpp"
#include "qml/viewmodels/take_in_view_model.hpp"
#include "qml/viewmodels/tasters_view_model.hpp"
#include "qml/viewmodels/tasting_view_model.hpp"
#include "qml/viewmodels/to_settle_view_model.hpp"
#include "qml/viewmodels/today_view_model.hpp"
#include "qml/viewmodels/trace_view_model.hpp"
#include "qml/viewmodels/upkeep.hpp"
#include "qml/viewmodels/what_if_view_model.hpp"
#include "qml/viewmodels/windows_view_model.hpp"
#include "qml/viewmodels/work_view_model.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// The root: opens the cellar, owns the other view-models and knows which page follows which.
class AppViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(Stage stage READ stage NOTIFY stageChanged FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY stageChanged FINAL)
    /// How much of the records of an older version is brought up to this one; below 0: it is not.
    Q_PROPERTY(qreal broughtUp READ broughtUp NOTIFY bringsUpChanged FINAL)
    Q_PROPERTY(
        QString newCellarName READ newCellarName WRITE setNewCellarName NOTIFY stageChanged FINAL)
    Q_PROPERTY(spile::viewmodels::Navigator* navigator READ navigator CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::Notice* notice READ notice CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::Settings* settings READ settings CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::DueViewModel* due READ due CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::BarrelsViewModel* barrels READ barrels CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::BarrelViewModel* barrel READ barrel CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::PeopleViewModel* people READ people CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::RegisteringViewModel* registering READ registering CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::DrawingViewModel* drawing READ drawing CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::TastingViewModel* tasting READ tasting CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::ComparingViewModel* comparing READ comparing CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::RecordViewModel* record READ record CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::ScanViewModel* scan READ scan CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::PhotoViewModel* photo READ photo CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::TodayViewModel* today READ today CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::OpenSheetsViewModel* openSheets READ openSheets CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::DayFileViewModel* dayFile READ dayFile CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::TakeInViewModel* takeIn READ takeIn CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::JoiningViewModel* joining READ joining CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::AdmittingViewModel* admitting READ admitting CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::ToSettleViewModel* toSettle READ toSettle CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::SettleViewModel* settle READ settle CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::DevicesViewModel* devices READ devices CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::ClockViewModel* clock READ clock CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::Upkeep* upkeep READ upkeep CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::SheetsViewModel* sheets READ sheets CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::WorkViewModel* work READ work CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::OpenWorkViewModel* openWork READ openWork CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::ClimateViewModel* climate READ climate CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::CalculatingViewModel* calculating READ calculating CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::NewFlightViewModel* newFlight READ newFlight CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::FlightViewModel* flight READ flight CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::OpenFlightsViewModel* openFlights READ openFlights CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::WindowsViewModel* windows READ windows CONSTANT FINAL)
    /// Whether a flight is being tasted: then no list and no history beside the page is shown.
    Q_PROPERTY(bool blind READ isBlind NOTIFY blindChanged FINAL)
    Q_PROPERTY(spile::viewmodels::HandbookViewModel* handbook READ handbook CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::OutlookViewModel* outlook READ outlook CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::WhatIfViewModel* whatIf READ whatIf CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::CalendarViewModel* calendar READ calendar CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::TastersViewModel* tasters READ tasters CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::LabelsViewModel* labels READ labels CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::BenchViewModel* bench READ bench CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::BenchGlassesViewModel* glasses READ glasses CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::LotsViewModel* lots READ lots CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::LotViewModel* lot READ lot CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::LotRecordViewModel* lotRecord READ lotRecord CONSTANT FINAL)
    /// The full barrels, one of which is to be emptied into the lot.
    Q_PROPERTY(spile::viewmodels::BarrelsViewModel* lotBarrels READ lotBarrels CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::TraceViewModel* trace READ trace CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::ReportsViewModel* reports READ reports CONSTANT FINAL)

public:
    enum Stage { Opening, FirstRun, Ready, Broken };
    Q_ENUM(Stage)

    /// What the app is started with.
    struct Start {
        Path cellarFolder;
        QString settingsFile;
        QString deviceName;
    };

    AppViewModel(const Outside& outside, FilePlaces& places, Start start,
                 QObject* parent = nullptr);
    ~AppViewModel() override;
    Q_DISABLE_COPY_MOVE(AppViewModel)

    /// Open the cellar, or find that there is none yet.
    Q_INVOKABLE void start();
    /// Make a new cellar on this device and go to the first barrel.
    Q_INVOKABLE void beginWithBarrel();
    /// Go to taking in the day file that makes this device a part of a cellar.
    Q_INVOKABLE void beginWithDayFile();

    Q_INVOKABLE void openBarrel(const QString& barrelId);
    /// Have the head of the barrel scanned that the page shown is for, and come back.
    Q_INVOKABLE void scanToBeSure(const QString& barrelId, const QString& name);
    /// Do what comes next with the barrel that is shown.
    Q_INVOKABLE void doNext();
    Q_INVOKABLE void draw();
    /// Taste what is drawn already.
    Q_INVOKABLE void taste();
    Q_INVOKABLE void photograph();
    Q_INVOKABLE void photographForSheet();
    Q_INVOKABLE void openRecord(spile::viewmodels::RecordViewModel::Kind kind);
    /// The work sheets for the barrel that is shown, or the one that is open for it.
    Q_INVOKABLE void openSheetsOfBarrel();
    /// Go on with the work that is open for the barrel that is shown.
    Q_INVOKABLE void goOnWithWork();
    Q_INVOKABLE void openClimate();
    /// The calculators, with the values of the barrel that is shown, if one is.
    Q_INVOKABLE void openCalculators();
    /// The outlook of the barrel that is shown, and from there what would change it.
    Q_INVOKABLE void openOutlook();
    Q_INVOKABLE void openWhatIf();
    Q_INVOKABLE void openOutlookOf(const QString& barrelId);
    /// When all barrels are ready.
    Q_INVOKABLE void openCalendar();
    /// What the tasters are like.
    Q_INVOKABLE void openTasters();
    /// Labels for all barrels, or first for the one that is shown or was just registered.
    Q_INVOKABLE void openLabels();
    Q_INVOKABLE void openLabelsOfBarrel();
    Q_INVOKABLE void openLabelsOfRegistered();
    /// All lots, and one of them.
    Q_INVOKABLE void openLots();
    Q_INVOKABLE void openLot(const QString& lotId);
    void openLot(const SubjectId& lot);
    /// What is recorded of lots, a page each; those without a name are of the lot that is shown.
    Q_INVOKABLE void newLot();
    Q_INVOKABLE void holdLot();
    Q_INVOKABLE void pourLotAway();
    Q_INVOKABLE void costOfLot();
    /// What the barrel that is shown cost, or its beer.
    Q_INVOKABLE void costOfBarrel();
    /// Begin a work sheet with a lot; first say who works.
    Q_INVOKABLE void beginLotSheet(const QString& sheet, const QString& lot);
    /// Choose a full barrel that comes into a lot, and begin to empty it.
    Q_INVOKABLE void chooseBarrelForLot();
    Q_INVOKABLE void emptyBarrel(const QString& barrelId);
    /// Where beer came from and went: of what is typed, of the lot or the barrel that is shown.
    Q_INVOKABLE void openTrace();
    Q_INVOKABLE void traceLot();
    Q_INVOKABLE void traceBarrel();
    Q_INVOKABLE void openReports();
    /// The bench, asked for any target or for what the barrel that is shown should taste like.
    Q_INVOKABLE void openBench();
    Q_INVOKABLE void openBenchOfBarrel();
    /// Choose barrels for a flight, or go on with one that is open.
    Q_INVOKABLE void openFlight();
    /// The windows of the beer that the barrel shown holds.
    Q_INVOKABLE void openWindows();
    Q_INVOKABLE void registerBarrel(const QString& labelCode = {});
    /// Go to the barrel that has just been registered.
    Q_INVOKABLE void openRegistered();
    Q_INVOKABLE void allBarrels();
    Q_INVOKABLE void openDayFile();
    Q_INVOKABLE void openTakeIn();
    /// What several devices have left to decide; the devices of the cellar.
    Q_INVOKABLE void openToSettle();
    Q_INVOKABLE void openDevices();
    /// Let another device in: one that is to be found yet, or the one with that code.
    Q_INVOKABLE void openAdmit(const QString& code = {});
    /// A day file was opened with the app.
    Q_INVOKABLE void takeInFile(const QString& file);
    /// Leave the open sheets open and go on with something else.
    Q_INVOKABLE void putAside();
    /// The list of the handbook's pages.
    Q_INVOKABLE void openHandbook();
    /// The one way back. False if there is nothing below, so that the system may leave the app.
    Q_INVOKABLE bool goBack();

    /// Begin a work sheet with the barrel that is shown, or go on with it; first say who works.
    void beginWork(const std::string& sheet);
    /// The app was put aside or comes back; see Qt::ApplicationState.
    void applicationStateChanged(Qt::ApplicationState state);

    [[nodiscard]] HandbookViewModel* handbook() { return &handbook_; }
    [[nodiscard]] Stage stage() const { return stage_; }
    [[nodiscard]] QString problem() const { return problem_; }
    [[nodiscard]] qreal broughtUp() const { return broughtUp_; }
    [[nodiscard]] QString newCellarName() const;
    void setNewCellarName(const QString& name);
    [[nodiscard]] Navigator* navigator() { return &navigator_; }
    [[nodiscard]] Notice* notice() { return &notice_; }
    [[nodiscard]] Settings* settings() { return &settings_; }
    [[nodiscard]] DueViewModel* due() { return &due_; }
    [[nodiscard]] BarrelsViewModel* barrels() { return &barrels_; }
    [[nodiscard]] BarrelViewModel* barrel() { return &barrel_; }
    [[nodiscard]] PeopleViewModel* people() { return &people_; }
    [[nodiscard]] RegisteringViewModel* registering() { return &registering_; }
    [[nodiscard]] DrawingViewModel* drawing() { return &drawing_; }
    [[nodiscard]] TastingViewModel* tasting() { return &tasting_; }
    [[nodiscard]] ComparingViewModel* comparing() { return &comparing_; }
    [[nodiscard]] RecordViewModel* record() { return &record_; }
    [[nodiscard]] ScanViewModel* scan() { return &scan_; }
    [[nodiscard]] PhotoViewModel* photo() { return &photo_; }
    [[nodiscard]] TodayViewModel* today() { return &today_; }
    [[nodiscard]] OpenSheetsViewModel* openSheets() { return &openSheets_; }
    [[nodiscard]] DayFileViewModel* dayFile() { return &dayFile_; }
    [[nodiscard]] TakeInViewModel* takeIn() { return &takeIn_; }
    [[nodiscard]] JoiningViewModel* joining() { return &joining_; }
    [[nodiscard]] AdmittingViewModel* admitting() { return &admitting_; }
    [[nodiscard]] ToSettleViewModel* toSettle() { return &toSettle_; }
    [[nodiscard]] SettleViewModel* settle() { return &settle_; }
    [[nodiscard]] DevicesViewModel* devices() { return &devices_; }
    [[nodiscard]] ClockViewModel* clock() { return &clock_; }
    [[nodiscard]] Upkeep* upkeep() { return &upkeep_; }
    [[nodiscard]] SheetsViewModel* sheets() { return &sheets_; }
    [[nodiscard]] WorkViewModel* work() { return &work_; }
    [[nodiscard]] OpenWorkViewModel* openWork() { return &openWork_; }
    [[nodiscard]] ClimateViewModel* climate() { return &climate_; }
    [[nodiscard]] CalculatingViewModel* calculating() { return &calculating_; }
    [[nodiscard]] OutlookService& outlooks() { return outlooks_; }
    [[nodiscard]] OutlookViewModel* outlook() { return &outlook_; }
    [[nodiscard]] WhatIfViewModel* whatIf() { return &whatIf_; }
    [[nodiscard]] CalendarViewModel* calendar() { return &calendar_; }
    [[nodiscard]] TastersViewModel* tasters() { return &tasters_; }
    [[nodiscard]] LabelsViewModel* labels() { return &labels_; }
    [[nodiscard]] BenchViewModel* bench() { return &bench_; }
    [[nodiscard]] BenchGlassesViewModel* glasses() { return &glasses_; }
    [[nodiscard]] LotsViewModel* lots() { return &lots_; }
    [[nodiscard]] LotViewModel* lot() { return &lot_; }
    [[nodiscard]] LotRecordViewModel* lotRecord() { return &lotRecord_; }
    [[nodiscard]] BarrelsViewModel* lotBarrels() { return &lotBarrels_; }
    [[nodiscard]] TraceViewModel* trace() { return &trace_; }
    [[nodiscard]] ReportsViewModel* reports() { return &reports_; }
    [[nodiscard]] NewFlightViewModel* newFlight() { return &newFlight_; }
    [[nodiscard]] FlightViewModel* flight() { return &flight_; }
    [[nodiscard]] OpenFlightsViewModel* openFlights() { return &openFlights_; }
    [[nodiscard]] WindowsViewModel* windows() { return &windows_; }
    [[nodiscard]] bool isBlind() const;
    [[nodiscard]] Workers& workers() { return workers_; }

signals:
    void stageChanged();
    void bringsUpChanged();
    void blindChanged();

private:
    void connectPages();
    void connectWork();
    void connectFlights();
    void connectBench();
    void connectLots();
    void connectDevices();
    void openLotRecord();
    void connectScanning();
    void openScanned(const QString& barrelId);
    void goOnWhereScanned();
    void showFlight(const SubjectId& flight, const std::optional<SubjectId>& taster = {});
    void pageChanged();
    void ready();
    void setStage(Stage stage, const QString& problem = {});
    void openWith(std::function<Workers::Opened(const Job&)> opener, std::function<void()> then);
    void join(const QString& file, const QString& passphrase);
    void showWhatIsOpen();
    void askAboutOpen();
    void askWho();

    Start start_;
    Formats formats_;
    Settings settings_;
    Notice notice_;
    Workers workers_;
    Context context_;
    Navigator navigator_;
    Interruption interruption_;
    PeopleViewModel people_;
    DueViewModel due_;
    BarrelsViewModel barrels_;
    BarrelViewModel barrel_;
    RegisteringViewModel registering_;
    DrawingViewModel drawing_;
    TastingViewModel tasting_;
    ComparingViewModel comparing_;
    RecordViewModel record_;
    ScanViewModel scan_;
    PhotoViewModel photo_;
    TodayViewModel today_;
    OpenSheetsViewModel openSheets_;
    DayFileViewModel dayFile_;
    TakeInViewModel takeIn_;
    JoiningViewModel joining_;
    AdmittingViewModel admitting_;
    ToSettleViewModel toSettle_;
    SettleViewModel settle_;
    DevicesViewModel devices_;
    ClockViewModel clock_;
    Upkeep upkeep_;
    WorkSheets workSheets_;
    OpenWorkViewModel openWork_;
    SheetsViewModel sheets_;
    WorkViewModel work_;
    ClimateViewModel climate_;
    CalculatingViewModel calculating_;
    NewFlightViewModel newFlight_;
    FlightViewModel flight_;
    OpenFlightsViewModel openFlights_;
    WindowsViewModel windows_;
    HandbookViewModel handbook_;
    OutlookService outlooks_;
    OutlookViewModel outlook_;
    WhatIfViewModel whatIf_;
    CalendarViewModel calendar_;
    TastersViewModel tasters_;
    LabelsViewModel labels_;
    BenchViewModel bench_;
    BenchGlassesViewModel glasses_;
    LotsViewModel lots_;
    LotViewModel lot_;
    LotRecordViewModel lotRecord_;
    BarrelsViewModel lotBarrels_;
    TraceViewModel trace_;
    ReportsViewModel reports_;
    std::string wantedSheet_;  // once it is known who works
    SubjectId scanned_;        // until it is known what is open on it
    Stage stage_ = Opening;
    QString problem_;
    qreal broughtUp_ = -1;
    QString newCellarName_;
    bool makingCellar_ = false;
    int openListsRead_ = 0;  // after a start; what is open is asked about when both are
};

}  // namespace spile::viewmodels
