// Lots, traces and reports, and which page follows which: the fourth part of app_view_model.cpp.
#include "qml/viewmodels/app_view_model.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/lot_text.hpp"

namespace spile::viewmodels {

void AppViewModel::connectLots()
{
    connect(&lot_, &LotViewModel::clearWanted, this, [this](const cellar::HoldRow& hold) {
        lotRecord_.beginClear(hold, lot_.name());
        openLotRecord();
    });
    connect(&lot_, &LotViewModel::releaseWanted, this, [this](const cellar::PackageRow& package) {
        lotRecord_.beginRelease(package);
        openLotRecord();
    });
    connect(&lot_, &LotViewModel::traceWanted, this, [this](const EntryId& package) {
        for (const cellar::PackageRow& row : lot_.history().packages) {
            if (row.entry == package) {
                trace_.beginWithPackage(package, row.lot,
                                        LotText::packaging(row, context_.formats));
            }
        }
        navigator_.open(Navigator::Trace);
    });
    connect(&lotRecord_, &LotRecordViewModel::recorded, this, [this] { navigator_.back(); });
    connect(&lotRecord_, &LotRecordViewModel::made, this, [this](const SubjectId& lot) {
        navigator_.remove(Navigator::LotRecord);
        openLot(lot);
    });
    connect(&trace_, &TraceViewModel::lotWanted, this,
            [this](const SubjectId& lot) { openLot(lot); });
    connect(&navigator_, &Navigator::changed, this,
            [this] { reports_.setShown(navigator_.pages().contains(Navigator::Reports)); });
}

void AppViewModel::openLots()
{
    lots_.refresh();
    navigator_.open(Navigator::Lots);
}

void AppViewModel::openLot(const QString& lotId) { openLot(idOf<SubjectId>(lotId)); }

void AppViewModel::openLot(const SubjectId& lot)
{
    lot_.show(lot);
    navigator_.open(Navigator::Lot);
}

void AppViewModel::openLotRecord()
{
    navigator_.open(Navigator::LotRecord);
    askWho();
}

void AppViewModel::newLot()
{
    lotRecord_.beginNewLot();
    openLotRecord();
}

void AppViewModel::holdLot()
{
    lotRecord_.beginHold(lot_.lot(), lot_.name());
    openLotRecord();
}

void AppViewModel::pourLotAway()
{
    lotRecord_.beginDiscard(lot_.lot(), lot_.name(), lot_.left());
    openLotRecord();
}

void AppViewModel::costOfLot()
{
    lotRecord_.beginCost(lot_.lot(), lot_.name());
    openLotRecord();
}

void AppViewModel::costOfBarrel()
{
    lotRecord_.beginCostOf(barrel_.row());
    openLotRecord();
}

void AppViewModel::chooseBarrelForLot()
{
    lotBarrels_.setFilter(static_cast<int>(cellar::Which::Full));
    lotBarrels_.refresh();
    navigator_.open(Navigator::LotBarrels);
}

void AppViewModel::emptyBarrel(const QString& barrelId)
{
    workers_.look(
        this,
        [barrel = idOf<SubjectId>(barrelId)](ledger::Database& database) {
            return cellar::barrelById(database, barrel);
        },
        [this](const Result<std::optional<cellar::BarrelRow>>& row) {
            if (!row || !*row) {
                notice_.refuse(row ? tr("The barrel is not in the records of this device.")
                                   : textOf(row.error()));
                return;
            }
            navigator_.remove(Navigator::LotBarrels);
            barrel_.show((*row)->barrel);
            if (people_.who()) {
                work_.begin("empty", (*row)->barrel, lot_.name());
            } else {
                wantedSheet_ = "empty";
                askWho();
            }
        });
}

void AppViewModel::beginLotSheet(const QString& sheet, const QString& lot)
{
    if (!people_.who()) {
        askWho();
        return;
    }
    work_.begin(sheet.toStdString(), idOf<SubjectId>(lot));
}

void AppViewModel::openTrace()
{
    trace_.begin();
    navigator_.open(Navigator::Trace);
}

void AppViewModel::traceLot()
{
    trace_.beginWith({trace::Start::What::Lot, lot_.lot(), {}, {}}, lot_.name());
    navigator_.open(Navigator::Trace);
}

void AppViewModel::traceBarrel()
{
    trace_.beginWith({trace::Start::What::Barrel, barrel_.row().barrel, {}, {}}, barrel_.name());
    navigator_.open(Navigator::Trace);
}

void AppViewModel::openReports() { navigator_.open(Navigator::Reports); }

}  // namespace spile::viewmodels
