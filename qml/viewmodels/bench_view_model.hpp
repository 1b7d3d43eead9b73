#pragma once

#include "core/plan/bench_answers.hpp"
#include "qml/viewmodels/bench_items.hpp"
#include "qml/viewmodels/outlook_service.hpp"
#include "qml/viewmodels/people_view_model.hpp"
#include "qml/viewmodels/window_set.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>
#include <mutex>

namespace spile::viewmodels {

/// The bench: what is asked for, the search beside the screen, and its answers, of which some are
/// poured.
class BenchViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(Stage stage READ stage NOTIFY changed FINAL)
    Q_PROPERTY(bool loaded READ isLoaded NOTIFY changed FINAL)
    Q_PROPERTY(QString error READ error NOTIFY changed FINAL)
    /// What is asked for.
    Q_PROPERTY(QList<QString> targets READ targets NOTIFY changed FINAL)
    Q_PROPERTY(int target READ target NOTIFY changed FINAL)
    Q_PROPERTY(spile::viewmodels::WindowRows* windows READ windows CONSTANT FINAL)
    Q_PROPERTY(QString barrelsMost READ barrelsMost NOTIFY changed FINAL)
    Q_PROPERTY(bool part READ isPart NOTIFY changed FINAL)
    /// The limits, one after the other: see Limit; empty: none.
    Q_PROPERTY(QList<QString> limits READ limits NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> smallSteps READ smallSteps NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> bigSteps READ bigSteps NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> barrels READ barrels NOTIFY changed FINAL)
    Q_PROPERTY(QList<bool> kept READ kept NOTIFY changed FINAL)
    Q_PROPERTY(bool canSearch READ canSearch NOTIFY changed FINAL)
    Q_PROPERTY(spile::viewmodels::BenchItems* benches READ benches CONSTANT FINAL)
    Q_PROPERTY(bool moreBenches READ isMore NOTIFY changed FINAL)
    /// While it looks.
    Q_PROPERTY(qreal progress READ progress NOTIFY progressChanged FINAL)
    Q_PROPERTY(QString best READ best NOTIFY progressChanged FINAL)
    /// The answers, and the one that is open.
    Q_PROPERTY(spile::viewmodels::BenchItems* answers READ answers CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::BenchItems* inTheWay READ inTheWay CONSTANT FINAL)
    Q_PROPERTY(QString proof READ proof NOTIFY changed FINAL)
    Q_PROPERTY(QString leftOut READ leftOut NOTIFY changed FINAL)
    Q_PROPERTY(int openAnswer READ openAnswer NOTIFY changed FINAL)
    Q_PROPERTY(QString openTitle READ openTitle NOTIFY changed FINAL)
    Q_PROPERTY(QString openChance READ openChance NOTIFY changed FINAL)
    Q_PROPERTY(spile::viewmodels::BenchItems* costs READ costs CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::BenchItems* levels READ levels CONSTANT FINAL)
    Q_PROPERTY(bool openPicked READ isOpenPicked NOTIFY changed FINAL)
    Q_PROPERTY(bool canPick READ canPick NOTIFY changed FINAL)
    Q_PROPERTY(bool canPour READ canPour NOTIFY changed FINAL)
    Q_PROPERTY(QString pickedText READ pickedText NOTIFY changed FINAL)

public:
    enum Stage { Asking, Searching, Answers };
    Q_ENUM(Stage)
    enum Limit { Tank, Least, StrengthLeast, StrengthMost, LimitCount };
    Q_ENUM(Limit)

    BenchViewModel(Context& context, PeopleViewModel& people, OutlookService& service,
                   QObject* parent = nullptr);

    /// Begin to ask; with the windows of what that barrel holds, if one is given.
    void open(const std::optional<SubjectId>& barrel);

    Q_INVOKABLE void chooseTarget(int index);
    Q_INVOKABLE void stepLow(int index, int by);
    Q_INVOKABLE void stepHigh(int index, int by);
    Q_INVOKABLE void toggleWindow(int index);
    Q_INVOKABLE void stepBarrels(int count);
    Q_INVOKABLE void togglePart();
    /// Step a limit; 0 gives it a value to begin from.
    Q_INVOKABLE void stepLimit(int limit, int count);
    Q_INVOKABLE void clearLimits();
    Q_INVOKABLE void toggleKept(int index);
    Q_INVOKABLE void search();
    /// Take what is found so far.
    Q_INVOKABLE void stop();
    Q_INVOKABLE void askAgain();
    Q_INVOKABLE void showAnswer(int index);
    /// Pour the open answer, or leave it.
    Q_INVOKABLE void pick();
    Q_INVOKABLE void pour();
    Q_INVOKABLE void openBench(int index);
    Q_INVOKABLE void showMoreBenches();

    [[nodiscard]] Stage stage() const { return stage_; }
    [[nodiscard]] bool isLoaded() const { return loaded_; }
    [[nodiscard]] QString error() const { return error_; }
    [[nodiscard]] QList<QString> targets() const;
    [[nodiscard]] int target() const { return target_; }
    [[nodiscard]] WindowRows* windows() { return windows_.rows(); }
    [[nodiscard]] QString barrelsMost() const;
    [[nodiscard]] bool isPart() const { return part_; }
    [[nodiscard]] QList<QString> limits() const;
    [[nodiscard]] QList<QString> smallSteps() const;
    [[nodiscard]] QList<QString> bigSteps() const;
    [[nodiscard]] QList<QString> barrels() const;
    [[nodiscard]] QList<bool> kept() const;
    [[nodiscard]] bool canSearch() const { return loaded_ && !windows_.given().empty(); }
    [[nodiscard]] BenchItems* benches() { return &benches_; }
    [[nodiscard]] bool isMore() const { return more_; }
    [[nodiscard]] qreal progress() const { return progress_; }
    [[nodiscard]] QString best() const { return best_; }
    [[nodiscard]] BenchItems* answers() { return &answers_; }
    [[nodiscard]] BenchItems* inTheWay() { return &inTheWay_; }
    [[nodiscard]] QString proof() const { return proof_; }
    [[nodiscard]] QString leftOut() const { return leftOut_; }
    [[nodiscard]] int openAnswer() const { return open_; }
    [[nodiscard]] QString openTitle() const;
    [[nodiscard]] QString openChance() const;
    [[nodiscard]] BenchItems* costs() { return &costs_; }
    [[nodiscard]] BenchItems* levels() { return &levels_; }
    [[nodiscard]] bool isOpenPicked() const;
    [[nodiscard]] bool canPick() const;
    [[nodiscard]] bool canPour() const;
    [[nodiscard]] QString pickedText() const;
    /// The attributes that were asked for, to be scored in the glasses.
    [[nodiscard]] std::vector<std::string> attributes() const;

signals:
    void changed();
    void progressChanged();
    /// A bench was poured, or an earlier one is gone on with.
    void wanted(const spile::SubjectId& bench);

private:
    struct Answered {
        blend::Found found;
        std::vector<plan::BenchAnswer> answers;
    };
    // What the search has found so far, written beside the screen.
    struct Best {
        std::mutex mutex;
        std::optional<blend::Blend> blend;
    };
    void readBenches();
    [[nodiscard]] plan::BenchAsk ask() const;
    [[nodiscard]] double stepOf(int limit) const;
    void searchOn(plan::Bench bench);
    void take(Answered answered);
    void refuse(const Error& error);
    void showAnswers();
    [[nodiscard]] const plan::BenchAnswer* opened() const;
    [[nodiscard]] int pickedCount() const;

    Context& context_;
    PeopleViewModel& people_;
    OutlookService& service_;
    WindowSet windows_;
    BenchItems benches_, answers_, inTheWay_, costs_, levels_;
    std::vector<cellar::NamedRow> targets_;
    std::vector<cellar::BarrelRow> full_;
    std::set<SubjectId> kept_;
    int target_ = -1;
    int most_ = 3;
    bool part_ = false;
    std::array<std::optional<double>, LimitCount> limits_;  // m3 and fractions
    std::shared_ptr<const plan::Bench> bench_;              // that was looked at
    std::vector<plan::BenchAnswer> found_;
    std::vector<bool> picked_;  // of each answer
    std::shared_ptr<CancelToken> search_;
    Stage stage_ = Asking;
    QString error_, best_, proof_, leftOut_;
    qreal progress_ = 0;
    int open_ = -1;
    int benchesWanted_ = 0;
    bool more_ = false;
    bool loaded_ = false;
    int asked_ = 0;  // which question an answer must be to
};

}  // namespace spile::viewmodels
