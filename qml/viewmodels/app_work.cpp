// What is open, work sheets, and what belongs to them: the second part of app_view_model.cpp.
#include "core/scan/barrel_code.hpp"
#include "qml/viewmodels/app_view_model.hpp"

namespace spile::viewmodels {

// Work sheets: which page follows which.
void AppViewModel::connectWork()
{
    connect(&sheets_, &SheetsViewModel::chosen, this, &AppViewModel::beginWork);
    connect(&work_, &WorkViewModel::opened, this, [this] {
        if (!work_.isOnLot()) {
            barrel_.show(work_.barrel());
        }
        if (navigator_.page() == Navigator::WasHere || navigator_.page() == Navigator::Sheets) {
            navigator_.replace(Navigator::Steps);
        } else {
            navigator_.open(Navigator::Steps);
        }
    });
    connect(&work_, &WorkViewModel::tastingWanted, this, [this] { tasting_.begin(barrel_.row()); });
    connect(&work_, &WorkViewModel::ended, this, [this](bool done) {
        barrel_.refresh();
        // Where the sheet ends with a tasting, its comparison is shown, and the way back is clear.
        navigator_.remove(Navigator::Steps);
        if (done) {
            notice_.tell(tr("The work sheet is done: all of it is kept."));
        }
    });
    connect(&openWork_, &OpenWorkViewModel::chosen, &work_, &WorkViewModel::resume);
    connect(&openWork_, &OpenWorkViewModel::read, this, &AppViewModel::askAboutOpen);
    connect(&openSheets_, &OpenSheetsViewModel::read, this, &AppViewModel::askAboutOpen);
    connect(&climate_, &ClimateViewModel::recorded, this, [this] { navigator_.back(); });
}

// After a start, what was not finished comes first.
void AppViewModel::showWhatIsOpen()
{
    openListsRead_ = 0;
    openSheets_.refresh();
    openWork_.refresh();
    openFlights_.refresh();
}

void AppViewModel::askAboutOpen()
{
    constexpr int lists = 3;
    if (openListsRead_ >= lists || ++openListsRead_ < lists) {
        return;
    }
    if (openSheets_.count() > 0 || openWork_.count() > 0 || openFlights_.interrupted() > 0) {
        openSheets_.setInterruption(
            tr("The app was ended while a sheet was open. All that "
               "was tapped is on it."));
        navigator_.open(Navigator::WasHere);
    }
}

void AppViewModel::openSheetsOfBarrel() { navigator_.open(Navigator::Sheets); }

void AppViewModel::goOnWithWork()
{
    if (const auto run = openWork_.runFor(barrel_.row().barrel)) {
        work_.resume(*run);
    }
}

void AppViewModel::beginWork(const std::string& sheet)
{
    if (people_.who()) {
        work_.begin(sheet, barrel_.row().barrel);
    } else {
        wantedSheet_ = sheet;
        askWho();
    }
}

void AppViewModel::openCalculators()
{
    const bool ofBarrel = navigator_.pages().contains(Navigator::Barrel);
    calculating_.begin(ofBarrel ? barrel_.row() : cellar::BarrelRow());
    navigator_.open(Navigator::Calculate);
}

void AppViewModel::openOutlook() { navigator_.open(Navigator::Outlook); }

void AppViewModel::openWhatIf()
{
    whatIf_.begin();
    navigator_.open(Navigator::WhatIf);
}

void AppViewModel::openOutlookOf(const QString& barrelId)
{
    barrel_.show(idOf<SubjectId>(barrelId));
    navigator_.open(Navigator::Outlook);
}

void AppViewModel::openCalendar() { navigator_.open(Navigator::Calendar); }
void AppViewModel::openTasters() { navigator_.open(Navigator::Tasters); }

void AppViewModel::openLabels()
{
    labels_.begin({});
    navigator_.open(Navigator::Labels);
}

void AppViewModel::openLabelsOfBarrel()
{
    labels_.begin(labels::LabelWords{barrel_.row().code, barrel_.row().mark});
    navigator_.open(Navigator::Labels);
}

void AppViewModel::openLabelsOfRegistered()
{
    labels_.begin(labels::LabelWords{scan::tidied(registering_.code().toStdString()),
                                     registering_.mark().toStdString()});
    navigator_.open(Navigator::Labels);
}

void AppViewModel::openClimate()
{
    climate_.begin(barrel_.row());
    navigator_.open(Navigator::Climate);
    askWho();
}

}  // namespace spile::viewmodels
