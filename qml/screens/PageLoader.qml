import QtQuick
import Spile.ViewModels

// The page that the navigator names. Each page's file is read when it is first shown, so that a start reads one.
Loader {
    id: loader

    required property AppViewModel app
    required property bool shown
    required property int page
    property url standIn
    // In the order of Navigator.Page.
    readonly property list<string> files: ["DuePage.qml", "ScanPage.qml", "TodayPage.qml", "BarrelsPage.qml",
        "BarrelPage.qml", "RegisterPage.qml", "PeoplePage.qml", "DrawPage.qml", "TastePage.qml", "ComparePage.qml",
        "PhotoPage.qml", "RecordPage.qml", "DayFilePage.qml", "TakeInPage.qml", "SettingsPage.qml",
        "WasHerePage.qml", "HandbookPage.qml", "SheetsPage.qml", "StepsPage.qml", "CalculatePage.qml", "ClimatePage.qml",
        "OutlookPage.qml", "WhatIfPage.qml", "CalendarPage.qml",
        "NewFlightPage.qml", "FlightPage.qml", "WindowsPage.qml", "TastersPage.qml", "ScanPage.qml",
        "LabelsPage.qml", "LotsPage.qml", "LotPage.qml", "LotRecordPage.qml", "LotBarrelsPage.qml", "TracePage.qml",
        "ReportsPage.qml", "BenchPage.qml", "BenchGlassesPage.qml", "ToSettlePage.qml", "SettlePage.qml", "DevicesPage.qml",
        "CutOffPage.qml", "ClockPage.qml", "AdmitPage.qml"]

    onPageChanged: loader.show()
    onShownChanged: loader.show()
    Component.onCompleted: loader.show()

    function show() {
        const withCamera = loader.page === Navigator.Scan || loader.page === Navigator.ScanHead
                           || loader.page === Navigator.Photo || loader.page === Navigator.Admit
        loader.setSource(loader.shown ? loader.files[loader.page] : "",
                         withCamera ? { app: loader.app, standIn: loader.standIn } : { app: loader.app })
    }
}
