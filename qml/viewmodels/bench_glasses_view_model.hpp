#pragma once

#include "core/plan/bench_answers.hpp"
#include "qml/viewmodels/bench_items.hpp"
#include "qml/viewmodels/people_view_model.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// The glasses of a bench: mixed by a recipe, scored blind by one taster after the other, and one
/// of them accepted for the tank. Where it stands is what the records hold.
class BenchGlassesViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(Stage stage READ stage NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    /// While they are mixed: one glass at a time.
    Q_PROPERTY(QString mixing READ mixing NOTIFY changed FINAL)
    Q_PROPERTY(spile::viewmodels::BenchItems* recipe READ recipe CONSTANT FINAL)
    Q_PROPERTY(QString roundingText READ roundingText NOTIFY changed FINAL)
    Q_PROPERTY(bool measured READ isMeasured NOTIFY changed FINAL)
    Q_PROPERTY(bool lastGlass READ isLastGlass NOTIFY changed FINAL)
    /// While they are tasted.
    Q_PROPERTY(spile::viewmodels::BenchItems* tasters READ tasters CONSTANT FINAL)
    Q_PROPERTY(spile::viewmodels::BenchItems* setOut READ setOut CONSTANT FINAL)
    Q_PROPERTY(QString taster READ taster NOTIFY changed FINAL)
    Q_PROPERTY(QString letter READ letter NOTIFY changed FINAL)
    Q_PROPERTY(QString asked READ asked NOTIFY changed FINAL)
    Q_PROPERTY(QString progress READ progress NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> ladderWords READ ladderWords NOTIFY changed FINAL)
    Q_PROPERTY(int value READ value NOTIFY changed FINAL)
    Q_PROPERTY(bool canStepBack READ canStepBack NOTIFY changed FINAL)
    Q_PROPERTY(bool lastAsked READ isLastAsked NOTIFY changed FINAL)
    /// After the last glass of a taster.
    Q_PROPERTY(spile::viewmodels::BenchItems* scores READ scores CONSTANT FINAL)
    Q_PROPERTY(int chosen READ chosen NOTIFY changed FINAL)
    Q_PROPERTY(QString chosenName READ chosenName NOTIFY changed FINAL)
    Q_PROPERTY(bool cold READ isCold NOTIFY changed FINAL)
    Q_PROPERTY(bool carbonated READ isCarbonated NOTIFY changed FINAL)
    Q_PROPERTY(bool canAccept READ canAccept NOTIFY changed FINAL)
    Q_PROPERTY(QString whyNot READ whyNot NOTIFY changed FINAL)
    /// Once one is accepted.
    Q_PROPERTY(spile::viewmodels::BenchItems* tank READ tank CONSTANT FINAL)
    Q_PROPERTY(QString tankText READ tankText NOTIFY changed FINAL)
    Q_PROPERTY(QString lotName READ lotName WRITE setLotName NOTIFY lotNameChanged FINAL)
    Q_PROPERTY(bool made READ isMade NOTIFY changed FINAL)

public:
    enum Stage {
        Reading,     ///< not known yet
        Mixing,      ///< a glass is measured
        Tasters,     ///< who tastes?
        SettingOut,  ///< somebody else sets the glasses out under their letters
        Scoring,     ///< the taster scores a glass, not knowing which
        Scores,      ///< this taster has scored all
        Tank         ///< a glass is accepted: what goes into the tank
    };
    Q_ENUM(Stage)

    BenchGlassesViewModel(Context& context, PeopleViewModel& people, QObject* parent = nullptr);

    /// Go on with a bench; `attributes` are scored if it has no target and no scores yet.
    void open(const SubjectId& bench, std::vector<std::string> attributes);

    Q_INVOKABLE void tick(int index);
    Q_INVOKABLE void nextGlass();
    Q_INVOKABLE void chooseTaster(int index);
    Q_INVOKABLE void beginTasting();
    Q_INVOKABLE void choose(int value);
    Q_INVOKABLE void nudge(int by);
    Q_INVOKABLE void next();
    Q_INVOKABLE void previous();
    Q_INVOKABLE void nextTaster();
    /// The glass that may be accepted.
    Q_INVOKABLE void chooseGlass(int index);
    Q_INVOKABLE void toggleCold();
    Q_INVOKABLE void toggleCarbonated();
    Q_INVOKABLE void accept();
    /// Make the lot that the accepted glass becomes, or go to the one that was made.
    Q_INVOKABLE void makeLot();

    [[nodiscard]] Stage stage() const { return stage_; }
    /// Whether somebody tastes, not knowing which glass it is.
    [[nodiscard]] bool isBlind() const { return stage_ == Scoring; }
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString mixing() const;
    [[nodiscard]] BenchItems* recipe() { return &recipe_; }
    [[nodiscard]] QString roundingText() const;
    [[nodiscard]] bool isMeasured() const;
    [[nodiscard]] bool isLastGlass() const;
    [[nodiscard]] BenchItems* tasters() { return &tasters_; }
    [[nodiscard]] BenchItems* setOut() { return &setOut_; }
    [[nodiscard]] QString taster() const;
    [[nodiscard]] QString letter() const;
    [[nodiscard]] QString asked() const;
    [[nodiscard]] QString progress() const;
    [[nodiscard]] QList<QString> ladderWords() const;
    [[nodiscard]] int value() const;
    [[nodiscard]] bool canStepBack() const { return asking_ > 0; }
    [[nodiscard]] bool isLastAsked() const;
    [[nodiscard]] BenchItems* scores() { return &scores_; }
    [[nodiscard]] int chosen() const { return chosen_; }
    [[nodiscard]] QString chosenName() const;
    [[nodiscard]] bool isCold() const { return cold_; }
    [[nodiscard]] bool isCarbonated() const { return carbonated_; }
    [[nodiscard]] bool canAccept() const { return chosen_ > 0 && cold_ && carbonated_; }
    [[nodiscard]] QString whyNot() const;
    [[nodiscard]] BenchItems* tank() { return &tank_; }
    [[nodiscard]] QString tankText() const;
    [[nodiscard]] QString lotName() const { return lotName_; }
    void setLotName(const QString& name);
    [[nodiscard]] bool isMade() const { return bench_.choice && bench_.choice->lot; }

signals:
    void changed();
    void lotNameChanged();
    /// The lot was made, or is there already.
    void lotWanted(const spile::SubjectId& lot);
    /// The bench is not in the records any more.
    void ended();

private:
    struct Found {
        cellar::BenchWhole bench;
        std::vector<std::string> attributes;
        std::vector<plan::TankPart> tank;
    };
    void refresh();
    void take(Found found);
    void refuse(const Error& error);
    void arrange();
    void showMixing();
    void showTasters();
    void showSetOut();
    void showScores();
    void showTank(const std::vector<plan::TankPart>& parts);
    void record();
    [[nodiscard]] QString glassName(int number) const;
    [[nodiscard]] QString scoresOf(const cellar::BenchGlass& glass) const;
    [[nodiscard]] std::vector<int> order() const;  // of the taster's glasses
    [[nodiscard]] int nextNumber() const;          // that the taster has not scored; 0: none
    [[nodiscard]] static QString letterOf(int place);

    Context& context_;
    PeopleViewModel& people_;
    BenchItems recipe_, tasters_, setOut_, scores_, tank_;
    cellar::BenchWhole bench_;
    std::vector<std::string> wished_, attributes_;
    std::vector<bool> ticked_;  // of the recipe's steps
    std::vector<int> values_;   // of the glass that is scored, the liking last; 0: not judged
    double rounding_ = 0;
    Stage stage_ = Reading;
    std::optional<SubjectId> taster_;
    QString lotName_;
    int mixing_ = 1;  // the glass that is measured
    int asking_ = 0;  // which attribute
    int chosen_ = 0;  // the glass that may be accepted; 0: none
    bool mixed_ = false;
    bool begun_ = false;  // the glasses are set out for the taster
    bool cold_ = false, carbonated_ = false;
    bool busy_ = false;  // recording: a second tap does nothing
};

}  // namespace spile::viewmodels
