#pragma once

#include "core/cellar/acts/lots.hpp"
#include "core/cellar/lots.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/people_view_model.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>
#include <functional>

namespace spile::viewmodels {

/// So many packages of one kind, to be let go.
struct CountLine {
    QString name;
    QString count;
    bool canLess = false;
    bool canMore = false;

    [[nodiscard]] QString key() const { return name; }
    friend bool operator==(const CountLine&, const CountLine&) = default;
};

class CountRows : public Rows<CountLine> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")

public:
    enum Role { Name = Qt::UserRole, Count, CanLess, CanMore };

    using Rows<CountLine>::Rows;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
};

/// One short record about a lot, or what something cost: filled in on the page, recorded at its
/// end.
class LotRecordViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    /// What it is about: the lot, the packages, the hold.
    Q_PROPERTY(QString about READ about NOTIFY changed FINAL)
    Q_PROPERTY(QString caution READ caution NOTIFY changed FINAL)
    /// Words to choose from; the last word may be one's own.
    Q_PROPERTY(QString question READ question NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> choices READ choices NOTIFY changed FINAL)
    Q_PROPERTY(int choice READ choice NOTIFY changed FINAL)
    Q_PROPERTY(QString ownLabel READ ownLabel NOTIFY changed FINAL)
    Q_PROPERTY(QString own READ own WRITE setOwn NOTIFY changed FINAL)
    Q_PROPERTY(bool asksVolume READ asksVolume NOTIFY changed FINAL)
    Q_PROPERTY(QString volume READ volume NOTIFY changed FINAL)
    Q_PROPERTY(QString smallStep READ smallStep NOTIFY changed FINAL)
    Q_PROPERTY(QString bigStep READ bigStep NOTIFY changed FINAL)
    Q_PROPERTY(bool canLess READ canLess NOTIFY changed FINAL)
    Q_PROPERTY(bool canMore READ canMore NOTIFY changed FINAL)
    Q_PROPERTY(bool asksCost READ asksCost NOTIFY changed FINAL)
    Q_PROPERTY(QString cost READ cost WRITE setCost NOTIFY changed FINAL)
    /// Of a barrel: over how many fills the cost is spread; empty: over those there will have been.
    Q_PROPERTY(bool asksFills READ asksFills NOTIFY changed FINAL)
    Q_PROPERTY(QString fills READ fills NOTIFY changed FINAL)
    /// Of a release.
    Q_PROPERTY(spile::viewmodels::CountRows* counts READ counts CONSTANT FINAL)
    Q_PROPERTY(QString note READ note WRITE setNote NOTIFY changed FINAL)
    Q_PROPERTY(bool canRecord READ canRecord NOTIFY changed FINAL)
    /// Why it cannot be recorded yet; empty if it can.
    Q_PROPERTY(QString missing READ missing NOTIFY changed FINAL)
    Q_PROPERTY(QString error READ error NOTIFY changed FINAL)

public:
    enum class Kind : std::uint8_t { NewLot, Hold, Clear, Release, Discard, Cost };

    LotRecordViewModel(Context& context, PeopleViewModel& people, QObject* parent = nullptr);

    void beginNewLot();
    void beginHold(const SubjectId& lot, const QString& name);
    void beginClear(const cellar::HoldRow& hold, const QString& name);
    void beginRelease(const cellar::PackageRow& package);
    void beginDiscard(const SubjectId& lot, const QString& name, Volume left);
    /// What a lot's finish and packing cost.
    void beginCost(const SubjectId& lot, const QString& name);
    /// What a barrel cost, or the beer that it holds.
    void beginCostOf(const cellar::BarrelRow& barrel);

    [[nodiscard]] QString title() const;
    [[nodiscard]] QString about() const { return about_; }
    [[nodiscard]] QString caution() const;
    [[nodiscard]] QString question() const;
    [[nodiscard]] QStringList choices() const;
    [[nodiscard]] int choice() const { return choice_; }
    Q_INVOKABLE void choose(int choice);
    [[nodiscard]] QString ownLabel() const;
    [[nodiscard]] QString own() const { return own_; }
    void setOwn(const QString& text);
    [[nodiscard]] bool asksVolume() const;
    [[nodiscard]] QString volume() const;
    [[nodiscard]] QString smallStep() const;
    [[nodiscard]] QString bigStep() const;
    [[nodiscard]] bool canLess() const { return volume_ > Volume{}; }
    [[nodiscard]] bool canMore() const { return volume_ < most_; }
    [[nodiscard]] bool asksCost() const { return kind_ == Kind::Cost; }
    [[nodiscard]] QString cost() const { return cost_; }
    void setCost(const QString& text);
    [[nodiscard]] bool asksFills() const;
    [[nodiscard]] QString fills() const;
    [[nodiscard]] CountRows* counts() { return &counts_; }
    [[nodiscard]] QString note() const { return note_; }
    void setNote(const QString& note);
    [[nodiscard]] bool canRecord() const { return !busy_ && missing().isEmpty(); }
    [[nodiscard]] QString missing() const;
    [[nodiscard]] QString error() const { return error_; }

    Q_INVOKABLE void stepVolume(int count);
    Q_INVOKABLE void stepFills(int count);
    Q_INVOKABLE void stepCount(int index, int count);
    Q_INVOKABLE void record();

signals:
    void changed();
    void recorded();
    /// A lot was made: its page comes next.
    void made(const spile::SubjectId& lot);

private:
    using Act = std::function<Result<EntryId>(cellar::Cellar&)>;

    void begin(Kind kind, const SubjectId& subject, const QString& about);
    void makeLot();
    void showCounts();
    [[nodiscard]] Volume stepSize() const;
    [[nodiscard]] std::string wordChosen() const;
    [[nodiscard]] std::optional<double> costTyped() const;
    [[nodiscard]] bool costsBeer() const;
    [[nodiscard]] cellar::Circumstance by() const;
    [[nodiscard]] Act act() const;

    Context& context_;
    PeopleViewModel& people_;
    Kind kind_ = Kind::NewLot;
    SubjectId subject_;  // a lot or a barrel
    EntryId entry_;      // a hold or packages
    bool ofBarrel_ = false;
    QString about_, beer_, own_, cost_, note_, error_;
    int choice_ = -1;
    int fills_ = 0;  // 0: not said
    Volume volume_{}, most_{};
    std::vector<cellar::PackageCount> left_, going_;
    CountRows counts_;
    bool busy_ = false;
};

}  // namespace spile::viewmodels
