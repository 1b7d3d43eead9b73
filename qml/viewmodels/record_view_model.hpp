#pragma once

#include "core/cellar/queries.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/people_view_model.hpp"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// One short record about a barrel: one choice, for some a volume.
class RecordViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString barrelName READ barrelName NOTIFY changed FINAL)
    Q_PROPERTY(QString caution READ caution NOTIFY changed FINAL)
    Q_PROPERTY(QString question READ question NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> choices READ choices NOTIFY changed FINAL)
    Q_PROPERTY(int choice READ choice WRITE setChoice NOTIFY changed FINAL)
    /// What a choice of one's own is called; empty: there is none.
    Q_PROPERTY(QString newChoiceLabel READ newChoiceLabel NOTIFY changed FINAL)
    Q_PROPERTY(QString newChoice READ newChoice WRITE setNewChoice NOTIFY changed FINAL)
    Q_PROPERTY(bool asksVolume READ asksVolume NOTIFY changed FINAL)
    Q_PROPERTY(bool volumeKnown READ isVolumeKnown NOTIFY changed FINAL)
    Q_PROPERTY(QString volume READ volume NOTIFY changed FINAL)
    Q_PROPERTY(QString smallStep READ smallStep NOTIFY changed FINAL)
    Q_PROPERTY(QString bigStep READ bigStep NOTIFY changed FINAL)
    Q_PROPERTY(QString note READ note WRITE setNote NOTIFY changed FINAL)
    Q_PROPERTY(bool canRecord READ canRecord NOTIFY changed FINAL)
    /// Why it cannot be recorded yet; empty if it can.
    Q_PROPERTY(QString missing READ missing NOTIFY changed FINAL)
    Q_PROPERTY(QString error READ error NOTIFY changed FINAL)

public:
    enum Kind { Fill, Check, Gauge, Move, Verdict, Empty };
    Q_ENUM(Kind)

    RecordViewModel(Context& context, PeopleViewModel& people, QObject* parent = nullptr);

    void begin(Kind kind, const cellar::BarrelRow& barrel);

    [[nodiscard]] QString title() const;
    [[nodiscard]] QString barrelName() const;
    [[nodiscard]] QString caution() const;
    [[nodiscard]] QString question() const;
    [[nodiscard]] QStringList choices() const;
    [[nodiscard]] int choice() const { return choice_; }
    void setChoice(int choice);
    [[nodiscard]] QString newChoiceLabel() const;
    [[nodiscard]] QString newChoice() const { return newChoice_; }
    void setNewChoice(const QString& text);
    [[nodiscard]] bool asksVolume() const;
    [[nodiscard]] bool isVolumeKnown() const { return volume_.has_value(); }
    [[nodiscard]] QString volume() const;
    [[nodiscard]] QString smallStep() const;
    [[nodiscard]] QString bigStep() const;
    [[nodiscard]] QString note() const { return note_; }
    void setNote(const QString& note);
    [[nodiscard]] bool canRecord() const { return !busy_ && missing().isEmpty(); }
    [[nodiscard]] QString missing() const;
    [[nodiscard]] QString error() const { return error_; }

    /// The first step shows what is expected.
    Q_INVOKABLE void step(int count);
    Q_INVOKABLE void forgetVolume();
    Q_INVOKABLE void record();

signals:
    void changed();
    void recorded();

private:
    void readNames();
    [[nodiscard]] Volume stepSize() const;
    [[nodiscard]] std::string chosen() const;
    [[nodiscard]] std::function<Result<EntryId>(cellar::Cellar&)> act() const;

    Context& context_;
    PeopleViewModel& people_;
    Kind kind_ = Check;
    cellar::BarrelRow barrel_;
    std::vector<cellar::NamedRow> named_;  // beers or places
    int choice_ = -1;
    QString newChoice_, note_, error_;
    std::optional<Volume> volume_;
    bool busy_ = false;
};

}  // namespace spile::viewmodels
