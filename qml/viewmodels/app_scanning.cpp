// What follows a scan: another part of app_view_model.cpp.
#include "qml/viewmodels/app_view_model.hpp"

namespace spile::viewmodels {

void AppViewModel::connectScanning()
{
    connect(&scan_, &ScanViewModel::found, this, &AppViewModel::openScanned);
    connect(&scan_, &ScanViewModel::confirmedIt, this,
            [this] { navigator_.remove(Navigator::ScanHead); });
    connect(&scan_, &ScanViewModel::unknownCode, this, &AppViewModel::registerBarrel);
    connect(&barrel_, &BarrelViewModel::changed, this, &AppViewModel::goOnWhereScanned);
    connect(&navigator_, &Navigator::changed, this, [this] {
        const auto& pages = navigator_.pages();
        if (!pages.contains(Navigator::Draw) && !pages.contains(Navigator::Steps) &&
            !pages.contains(Navigator::Flight)) {
            scan_.forgetConfirmed();
        }
    });
}

void AppViewModel::openScanned(const QString& barrelId)
{
    openBarrel(barrelId);
    scanned_ = idOf<SubjectId>(barrelId);
    goOnWhereScanned();
}

// What is open on this barrel opens at once; else its page names what is due. What was stopped is
// gone on with only by a tap: gas may flow by its timer.
void AppViewModel::goOnWhereScanned()
{
    if (scanned_.isZero() || barrel_.row().barrel != scanned_) {
        return;
    }
    scanned_ = {};
    if (navigator_.page() != Navigator::Barrel) {
        return;  // the person is somewhere else by now
    }
    if (const auto sheet = barrel_.openSheet()) {
        tasting_.resume(*sheet);
    } else if (const auto run = openWork_.runFor(barrel_.row().barrel);
               run && !openWork_.isStopped(*run)) {
        work_.resume(*run);
    }
}

void AppViewModel::scanToBeSure(const QString& barrelId, const QString& name)
{
    navigator_.open(Navigator::ScanHead);
    scan_.expectBarrel(barrelId, name);
}

}  // namespace spile::viewmodels
