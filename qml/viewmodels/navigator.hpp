#pragma once

#include <QList>
#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// Which page is shown and what lies under it. There is one way back, for the pad, the key and the
/// gesture alike; it never loses anything, since every page keeps what is tapped as it is tapped.
class Navigator : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(Page page READ page NOTIFY changed FINAL)
    Q_PROPERTY(Page root READ root NOTIFY changed FINAL)
    Q_PROPERTY(bool canGoBack READ canGoBack NOTIFY changed FINAL)
    /// Where there is room for two: the list on the left, and whether another page stands beside
    /// it.
    Q_PROPERTY(Page listPage READ listPage NOTIFY changed FINAL)
    Q_PROPERTY(bool detailShown READ isDetailShown NOTIFY changed FINAL)
    /// Whether a barrel's history may stand beside the page: it does not beside what is of several.
    Q_PROPERTY(bool besideHistory READ isBesideHistory NOTIFY changed FINAL)

public:
    enum Page {
        Due,
        Scan,
        Today,
        AllBarrels,
        Barrel,
        Register,
        People,
        Draw,
        Taste,
        Compare,
        Photo,
        Record,
        DayFile,
        TakeIn,
        Settings,
        WasHere,
        Handbook,
        Sheets,
        Steps,
        Calculate,
        Climate,
        Outlook,
        WhatIf,
        Calendar,
        NewFlight,
        Flight,
        Windows,
        Tasters,
        ScanHead,
        Labels,
        Lots,
        Lot,
        LotRecord,
        LotBarrels,
        Trace,
        Reports,
        Bench,
        BenchGlasses,
        ToSettle,
        Settle,
        Devices,
        CutOff,
        Clock,
        Admit,
    };
    Q_ENUM(Page)

    using QObject::QObject;

    [[nodiscard]] Page page() const { return pages_.last(); }
    /// The pad of the bottom bar that is lit: Due, Scan or Today.
    [[nodiscard]] Page root() const { return pages_.first(); }
    [[nodiscard]] bool canGoBack() const { return pages_.size() > 1; }
    [[nodiscard]] Page listPage() const;
    [[nodiscard]] bool isBesideHistory() const;
    [[nodiscard]] bool isDetailShown() const { return page() != listPage(); }
    [[nodiscard]] const QList<Page>& pages() const { return pages_; }

    /// Go to one of the three pads of the bottom bar.
    Q_INVOKABLE void go(Page root);
    /// Open a page on top; if it lies below already, go back to it.
    Q_INVOKABLE void open(Page page);
    /// Put a page in the place of the one that is shown.
    Q_INVOKABLE void replace(Page page);
    /// Take a page out, wherever it lies; the one at the bottom stays.
    void remove(Page page);
    /// False if there is nothing below.
    Q_INVOKABLE bool back();

signals:
    void changed();
    /// A page has been left by going back.
    void left(spile::viewmodels::Navigator::Page page);

private:
    void set(QList<Page> pages);

    QList<Page> pages_{Due};
};

}  // namespace spile::viewmodels
