#pragma once

#include "core/cellar/acts/working.hpp"
#include "core/plan/asks.hpp"
#include "core/plan/working.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/deadline.hpp"
#include "qml/viewmodels/people_view_model.hpp"
#include "qml/viewmodels/work_rows.hpp"
#include "qml/viewmodels/work_sheets.hpp"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// A work sheet that is being worked through, one step at a time. All that is filled in is durable
/// before it is shown; a timer is a deadline. A step with cautions or a timer has to be begun.
class WorkViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    /// The barrel's name, or the lot's.
    Q_PROPERTY(QString barrelName READ barrelName NOTIFY changed FINAL)
    /// Empty if it is a lot that is worked on.
    Q_PROPERTY(QString barrelId READ barrelId NOTIFY changed FINAL)
    /// Whether the first of its steps is shown.
    Q_PROPERTY(bool atFirst READ isAtFirst NOTIFY changed FINAL)
    Q_PROPERTY(QString where READ where NOTIFY changed FINAL)
    Q_PROPERTY(QString stepName READ stepName NOTIFY changed FINAL)
    Q_PROPERTY(QString cautions READ cautions NOTIFY changed FINAL)
    Q_PROPERTY(QString say READ say NOTIFY changed FINAL)
    Q_PROPERTY(QString hint READ hint NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> ticks READ ticks NOTIFY changed FINAL)
    Q_PROPERTY(QList<bool> ticked READ ticked NOTIFY changed FINAL)
    Q_PROPERTY(spile::viewmodels::AskRows* asks READ asks CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::FactRows* facts READ facts CONSTANT FINAL)
    /// Whether the step has been begun, or needs no beginning.
    Q_PROPERTY(bool begun READ isBegun NOTIFY changed FINAL)
    Q_PROPERTY(bool holdToBegin READ holdsToBegin NOTIFY changed FINAL)
    Q_PROPERTY(QString beginText READ beginText NOTIFY changed FINAL)
    /// Why it cannot be begun; empty if it can.
    Q_PROPERTY(QString beginMissing READ beginMissing NOTIFY changed FINAL)
    Q_PROPERTY(bool timed READ isTimed NOTIFY changed FINAL)
    Q_PROPERTY(spile::viewmodels::Deadline* timer READ timer CONSTANT FINAL)
    /// What was left when the timer was paused, "4:05"; empty if it is not.
    Q_PROPERTY(QString pausedText READ pausedText NOTIFY changed FINAL)
    Q_PROPERTY(QString timerCaption READ timerCaption NOTIFY changed FINAL)
    Q_PROPERTY(bool tastes READ isTasting NOTIFY changed FINAL)
    Q_PROPERTY(QString finishText READ finishText NOTIFY changed FINAL)
    Q_PROPERTY(bool canFinish READ canFinish NOTIFY changed FINAL)
    /// What is still to be filled in; empty if nothing.
    Q_PROPERTY(QString missing READ missing NOTIFY changed FINAL)
    /// Whether the step may be ended now without saying that it was early.
    Q_PROPERTY(bool ripe READ isRipe NOTIFY changed FINAL)
    Q_PROPERTY(bool stopped READ isStopped NOTIFY changed FINAL)
    Q_PROPERTY(QString closeText READ closeText NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> skipReasons READ skipReasons CONSTANT FINAL)
    Q_PROPERTY(QString error READ error NOTIFY changed FINAL)

public:
    WorkViewModel(Context& context, PeopleViewModel& people, const WorkSheets& sheets,
                  QObject* parent = nullptr);

    /// Begin the sheet with that barrel or lot, or go on with it if it is open here already.
    /// A barrel that is emptied into a lot has its name filled in.
    void begin(const std::string& sheet, const SubjectId& subject, const QString& intoLot = {});
    void resume(const SubjectId& run);
    /// The tasting sheet of the step that is shown has been closed.
    void tasted(const SubjectId& barrel);
    [[nodiscard]] const SubjectId& barrel() const { return work_.barrel; }
    [[nodiscard]] bool isOnLot() const { return facts_.lot.has_value(); }
    /// Whether scores of before must be hidden while this work is shown.
    [[nodiscard]] bool leadsToTasting() const;

    [[nodiscard]] QString title() const;
    [[nodiscard]] QString barrelName() const;
    [[nodiscard]] QString barrelId() const { return isOnLot() ? QString() : textOf(work_.barrel); }
    [[nodiscard]] bool isAtFirst() const;
    [[nodiscard]] QString where() const;
    [[nodiscard]] QString stepName() const;
    [[nodiscard]] QString cautions() const;
    [[nodiscard]] QString say() const;
    [[nodiscard]] QString hint() const;
    [[nodiscard]] QStringList ticks() const;
    [[nodiscard]] QList<bool> ticked() const;
    [[nodiscard]] AskRows* asks() { return &asks_; }
    [[nodiscard]] FactRows* facts() { return &factRows_; }
    [[nodiscard]] bool isBegun() const;
    [[nodiscard]] bool holdsToBegin() const { return step_ != nullptr && step_->hold; }
    [[nodiscard]] QString beginText() const;
    [[nodiscard]] QString beginMissing() const;
    [[nodiscard]] bool isTimed() const { return step_ != nullptr && step_->timer.has_value(); }
    [[nodiscard]] Deadline* timer() { return &timer_; }
    [[nodiscard]] QString pausedText() const;
    [[nodiscard]] QString timerCaption() const;
    [[nodiscard]] bool isTasting() const { return step_ != nullptr && plan::tastes(*step_); }
    [[nodiscard]] QString finishText() const;
    [[nodiscard]] bool canFinish() const;
    [[nodiscard]] QString missing() const;
    [[nodiscard]] bool isRipe() const;
    [[nodiscard]] bool isStopped() const { return work_.stopped; }
    [[nodiscard]] QString closeText() const;
    [[nodiscard]] static QStringList skipReasons();
    [[nodiscard]] QString error() const { return error_; }

    /// The cautions are read and the step begins; its timer starts.
    Q_INVOKABLE void beginStep();
    Q_INVOKABLE void tick(int index);
    Q_INVOKABLE void stepAsk(const QString& ask, int count);
    Q_INVOKABLE void chooseWord(const QString& ask, int index);
    Q_INVOKABLE void typeWord(const QString& ask, const QString& text);
    /// End the step, early or not; or go to the tasting sheet that it wants.
    Q_INVOKABLE void finish();
    Q_INVOKABLE void skip(int reason);
    Q_INVOKABLE void stop();
    Q_INVOKABLE void goOn();
    Q_INVOKABLE void giveUp();

signals:
    void changed();
    /// A sheet is open and can be shown.
    void opened();
    /// The step wants a tasting sheet for this barrel.
    void tastingWanted();
    /// The last step is over, or the work was given up.
    void ended(bool done);

private:
    struct Seen {
        cellar::OpenWork work;
        plan::WorkFacts facts;
        std::vector<cellar::NamedRow> beers;
        std::vector<cellar::LotRow> lots;
        std::map<std::string, plan::SheetNumber> numbers;  // that the step shows
    };
    // The act, then the sheet as it is after it; on the writer, which owns open work.
    using Act = std::function<Result<void>(cellar::Cellar&, const SubjectId& run)>;
    [[nodiscard]] static Result<Seen> see(cellar::Cellar& cellar, const SubjectId& run,
                                          const WorkSheets& sheets);
    void perform(Act act);
    [[nodiscard]] static Result<void> keepTyped(cellar::Cellar& cellar, const SubjectId& run,
                                                const std::map<std::string, QString>& typed);
    void take(Result<Seen> seen);
    void keep(const std::string& ask, const std::optional<cellar::WorkValue>& value);
    void refresh();
    void endStep(const std::string& outcome, const std::string& reason);
    void offerRemembered();
    void showRows();
    void resumeTimer();
    [[nodiscard]] AskLine lineOf(const std::string& name) const;
    void offerNames(AskLine& line, const plan::AskSpec& ask) const;
    [[nodiscard]] std::vector<std::string> namesFor(const plan::AskSpec& ask) const;
    [[nodiscard]] QString refusal() const;
    [[nodiscard]] QString filled(const std::string& words) const;
    [[nodiscard]] QString said(const plan::SheetNumber& number) const;
    [[nodiscard]] plan::SheetNumber numberOf(const std::string& name) const;
    [[nodiscard]] std::optional<Milliseconds> plannedTime() const;
    [[nodiscard]] bool needsBegin() const;
    [[nodiscard]] bool isBusy() const { return pending_ > 0 || ending_; }

    Context& context_;
    PeopleViewModel& people_;
    const WorkSheets& sheets_;
    const plan::Sheet* sheet_ = nullptr;
    const plan::Step* step_ = nullptr;
    cellar::OpenWork work_;
    plan::WorkFacts facts_;
    std::map<std::string, plan::SheetNumber> numbers_;
    std::vector<cellar::NamedRow> beers_;
    std::vector<cellar::LotRow> lots_;
    AskRows asks_;
    FactRows factRows_;
    Deadline timer_;
    QString error_;
    std::map<std::string, QString> typed_;  // what is being typed, until it is kept
    int pending_ = 0;                       // acts that were not answered yet
    bool ending_ = false;
};

}  // namespace spile::viewmodels
