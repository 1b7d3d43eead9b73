// The scenes of lots, traces and reports: a part of tour.cpp.
#include "platform/app/tour.hpp"

namespace spile::app {

using viewmodels::Navigator;
using viewmodels::ReportsViewModel;

// The oldest lot, in which most has happened; none if there is no lot yet.
void Tour::showLot()
{
    app_.navigator()->go(Navigator::Today);
    app_.openLots();
    settle();
    const auto& lots = *app_.lots()->lots();
    if (const auto* row = lots.rowAt(lots.rowCount() - 1)) {
        app_.openLot(row->id);
        settle();
    }
}

std::vector<Tour::Scene> Tour::lots()
{
    auto& form = *app_.lotRecord();
    return {{QStringLiteral("lot-new"),
             [this, &form] {
                 app_.navigator()->go(Navigator::Today);
                 app_.openLots();
                 app_.newLot();
                 form.setOwn(QStringLiteral("Tank 4"));
             }},
            {QStringLiteral("lot-empty"), [&form] { form.record(); }},
            {QStringLiteral("lot-barrels"), [this] { app_.chooseBarrelForLot(); }},
            {QStringLiteral("lots"),
             [this] {
                 app_.navigator()->go(Navigator::Today);
                 app_.openLots();
             }},
            {QStringLiteral("lot"), [this] { showLot(); }},
            {QStringLiteral("lot-release"),
             [this, &form] {
                 showLot();
                 const auto& parts = *app_.lot()->parts();
                 for (int i = 0; i < parts.rowCount(); ++i) {
                     if (parts.rowAt(i)->kind == QLatin1String("package")) {
                         app_.lot()->act(i);
                     }
                 }
                 form.stepCount(0, 10);
             }},
            {QStringLiteral("lot-pour-away"),
             [this, &form] {
                 showLot();
                 app_.pourLotAway();
                 form.stepVolume(2);
             }},
            {QStringLiteral("lot-cost"),
             [this] {
                 showLot();
                 app_.costOfLot();
             }},
            {QStringLiteral("barrel-cost"),
             [this] {
                 showBarrel();
                 app_.costOfBarrel();
             }},
            {QStringLiteral("lot-hold"),
             [this, &form] {
                 showLot();
                 app_.holdLot();
                 form.choose(0);
             }},
            {QStringLiteral("lot-held"), [&form] { form.record(); }},
            {QStringLiteral("lot-clear"), [this] { app_.lot()->act(heldPart()); }}};
}

// The part of the lot that says what it waits for.
int Tour::heldPart()
{
    const auto& parts = *app_.lot()->parts();
    for (int i = 0; i < parts.rowCount(); ++i) {
        if (parts.rowAt(i)->kind == QLatin1String("hold") && !parts.rowAt(i)->pad.isEmpty()) {
            return i;
        }
    }
    return -1;
}

std::vector<Tour::Scene> Tour::tracing()
{
    auto& trace = *app_.trace();
    auto& reports = *app_.reports();
    const auto waitForReport = [this, &reports] {
        waitFor([&reports] { return reports.isLoaded(); });
        settle();
    };
    return {{QStringLiteral("trace"),
             [this] {
                 app_.navigator()->go(Navigator::Today);
                 app_.openTrace();
             }},
            {QStringLiteral("trace-up"),
             [this, &trace] {
                 showLot();
                 app_.traceLot();
                 waitFor([&trace] { return !trace.isRunning(); });
             }},
            {QStringLiteral("trace-down"), [&trace] { trace.chooseWay(1); }},
            {QStringLiteral("recall"),
             [this, &trace] {
                 settle();
                 trace.recall();
             }},
            {QStringLiteral("report-duty"),
             [this, &reports, waitForReport] {
                 app_.navigator()->go(Navigator::Today);
                 app_.openReports();
                 reports.chooseReport(ReportsViewModel::Duty);
                 waitForReport();
             }},
            {QStringLiteral("report-losses"),
             [&reports, waitForReport] {
                 reports.chooseReport(ReportsViewModel::Losses);
                 reports.choosePeriod(2);
                 waitForReport();
             }},
            {QStringLiteral("report-costs"), [&reports, waitForReport] {
                 reports.chooseReport(ReportsViewModel::Costs);
                 waitForReport();
             }}};
}

}  // namespace spile::app
