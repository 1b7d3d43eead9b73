#pragma once

#include "core/cellar/acts/sheet.hpp"
#include "core/cellar/queries.hpp"
#include "core/plan/watching.hpp"
#include "core/vessel/barrel.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/history_rows.hpp"
#include "qml/viewmodels/outlook_rows.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

class OutlookService;

/// One barrel: what it is, what it holds, what comes next and what happened to it.
class BarrelViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(QString barrelId READ barrelId NOTIFY changed FINAL)
    Q_PROPERTY(bool loaded READ isLoaded NOTIFY changed FINAL)
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(QString code READ code NOTIFY changed FINAL)
    Q_PROPERTY(QString contents READ contents NOTIFY changed FINAL)
    Q_PROPERTY(QString place READ place NOTIFY changed FINAL)
    Q_PROPERTY(int standing READ standing NOTIFY changed FINAL)
    Q_PROPERTY(QString reason READ reason NOTIFY changed FINAL)
    Q_PROPERTY(bool filled READ isFilled NOTIFY changed FINAL)
    /// Whether it was decided that it is ready or goes into a blend.
    Q_PROPERTY(bool forBlend READ isForBlend NOTIFY changed FINAL)
    Q_PROPERTY(QString filledText READ filledText NOTIFY changed FINAL)
    Q_PROPERTY(QString sizeText READ sizeText NOTIFY changed FINAL)
    Q_PROPERTY(QString levelText READ levelText NOTIFY changed FINAL)
    Q_PROPERTY(QString tastedText READ tastedText NOTIFY changed FINAL)
    /// Of the inner height, 0 to 1; -1: not known.
    Q_PROPERTY(qreal level READ level NOTIFY changed FINAL)
    /// What it should hold now by its model, and that level; "" and -1 where that is not known.
    Q_PROPERTY(QString outlookText READ outlookText NOTIFY changed FINAL)
    Q_PROPERTY(qreal outlookLevel READ outlookLevel NOTIFY changed FINAL)
    /// What its gauges say if that is not usual; empty if it is.
    Q_PROPERTY(QString lossText READ lossText NOTIFY changed FINAL)
    Q_PROPERTY(QString nextText READ nextText NOTIFY changed FINAL)
    /// Whether what others and earlier sheets said must not be seen now.
    Q_PROPERTY(bool scoresHidden READ areScoresHidden NOTIFY changed FINAL)
    Q_PROPERTY(bool sheetOpen READ isSheetOpen NOTIFY changed FINAL)
    Q_PROPERTY(QString openSheetText READ openSheetText NOTIFY changed FINAL)
    Q_PROPERTY(spile::viewmodels::HistoryRows* history READ history CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::AlarmRows* alarms READ alarms CONSTANT FINAL)

public:
    explicit BarrelViewModel(Context& context, QObject* parent = nullptr);

    void show(const SubjectId& barrel);
    /// Whether somebody draws or tastes just now: then scores are hidden at once, sheet or not.
    void setTasting(bool tasting);
    void refresh();
    /// Where to ask what the records have taught.
    void setOutlooks(const OutlookService& outlooks) { outlooks_ = &outlooks; }

    [[nodiscard]] const cellar::BarrelRow& row() const { return row_; }
    [[nodiscard]] QString barrelId() const { return textOf(barrel_); }
    [[nodiscard]] bool isLoaded() const { return loaded_; }
    [[nodiscard]] QString name() const;
    [[nodiscard]] QString code() const;
    [[nodiscard]] QString contents() const;
    [[nodiscard]] QString place() const;
    [[nodiscard]] int standing() const;
    [[nodiscard]] QString reason() const;
    [[nodiscard]] bool isFilled() const { return row_.filled; }
    [[nodiscard]] bool isForBlend() const
    {
        return row_.filled && (row_.verdict == "ready" || row_.verdict == "blend");
    }
    [[nodiscard]] QString filledText() const;
    [[nodiscard]] QString sizeText() const;
    [[nodiscard]] QString levelText() const;
    [[nodiscard]] QString tastedText() const;
    [[nodiscard]] qreal level() const;
    [[nodiscard]] QString outlookText() const { return outlook_.text; }
    [[nodiscard]] qreal outlookLevel() const { return outlook_.level; }
    [[nodiscard]] QString lossText() const { return outlook_.loss; }
    [[nodiscard]] QString nextText() const;
    [[nodiscard]] bool areScoresHidden() const
    {
        return tasting_ || inFlight_ || !openSheets_.empty();
    }
    [[nodiscard]] bool isSheetOpen() const { return !openSheets_.empty(); }
    [[nodiscard]] QString openSheetText() const;
    /// The sheet to go on with; none if no sheet is open.
    [[nodiscard]] std::optional<cellar::OpenSheet> openSheet() const
    {
        return openSheets_.empty() ? std::nullopt : std::optional(openSheets_.front());
    }
    [[nodiscard]] HistoryRows* history() { return &history_; }
    [[nodiscard]] AlarmRows* alarms() { return &alarms_; }

signals:
    void changed();

private:
    Context& context_;
    SubjectId barrel_;
    cellar::BarrelRow row_;
    std::vector<cellar::OpenSheet> openSheets_;  // on this barrel, on this device
    HistoryRows history_;
    AlarmRows alarms_;
    const OutlookService* outlooks_ = nullptr;
    void lookForAlarms();
    // The model's course, which is looked for apart so that the page need not wait for it.
    struct Outlook {
        QString text, loss;
        qreal level = -1;
    };
    void refreshOutlook();
    void takeWatch(const plan::Watch& watch);
    [[nodiscard]] qreal levelOf(Volume held) const;

    Outlook outlook_;
    std::optional<vessel::Barrel> shape_;
    bool loaded_ = false;
    bool tasting_ = false;
    bool inFlight_ = false;  // of which who holds the phone has not tasted all
};

}  // namespace spile::viewmodels
