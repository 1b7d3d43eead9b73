#pragma once

#include "core/cellar/acts/sheet.hpp"
#include "core/cellar/queries.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/people_view_model.hpp"
#include "qml/viewmodels/sheet_steps.hpp"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// An open tasting sheet: one thing asked at a time, every tap durable before it is shown as kept.
/// What it shows is always what the records hold of the sheet, never what was hoped for.
class TastingViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(bool open READ isOpen NOTIFY changed FINAL)
    Q_PROPERTY(QString sheetId READ sheetId NOTIFY changed FINAL)
    Q_PROPERTY(QString barrelName READ barrelName NOTIFY changed FINAL)
    Q_PROPERTY(QString code READ code NOTIFY changed FINAL)
    Q_PROPERTY(QString taster READ taster NOTIFY changed FINAL)
    /// Of a glass of a flight: which barrel it is must not be seen.
    Q_PROPERTY(bool blind READ isBlind NOTIFY changed FINAL)

    Q_PROPERTY(StepKind step READ step NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString place READ place NOTIFY changed FINAL)  // "3 of 9"
    Q_PROPERTY(bool first READ isFirst NOTIFY changed FINAL)
    Q_PROPERTY(bool last READ isLast NOTIFY changed FINAL)

    /// Of an attribute or the liking: 1 to 9; 0: not scored.
    Q_PROPERTY(int value READ value NOTIFY changed FINAL)
    Q_PROPERTY(bool notJudged READ isNotJudged NOTIFY changed FINAL)
    Q_PROPERTY(QString readout READ readout NOTIFY changed FINAL)
    /// Five words, from 9 to 1.
    Q_PROPERTY(QList<QString> ladderWords READ ladderWords NOTIFY changed FINAL)
    Q_PROPERTY(QString nextText READ nextText NOTIFY changed FINAL)

    Q_PROPERTY(QList<QString> faults READ faults NOTIFY changed FINAL)
    Q_PROPERTY(QList<bool> faultsChosen READ faultsChosen NOTIFY changed FINAL)
    Q_PROPERTY(bool palateTired READ isPalateTired NOTIFY changed FINAL)
    Q_PROPERTY(QString note READ note NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> noteChips READ noteChips NOTIFY changed FINAL)
    Q_PROPERTY(QList<bool> noteChipsChosen READ noteChipsChosen NOTIFY changed FINAL)

    Q_PROPERTY(QString gravity READ gravity NOTIFY changed FINAL)
    Q_PROPERTY(QString ph READ ph NOTIFY changed FINAL)
    Q_PROPERTY(QString temperature READ temperature NOTIFY changed FINAL)
    Q_PROPERTY(QString temperatureUnit READ temperatureUnit NOTIFY changed FINAL)
    Q_PROPERTY(
        QList<QString> steps READ stepTexts NOTIFY changed FINAL)  // small and big, in threes
    Q_PROPERTY(int photos READ photos NOTIFY changed FINAL)
    Q_PROPERTY(QString summary READ summary NOTIFY changed FINAL)

    Q_PROPERTY(bool canUndo READ canUndo NOTIFY changed FINAL)
    Q_PROPERTY(QString undoText READ undoText NOTIFY changed FINAL)
    Q_PROPERTY(QString error READ error NOTIFY changed FINAL)

public:
    enum StepKind { Attribute, Liking, Faults, Readings, Note, Close };
    Q_ENUM(StepKind)
    enum Measure { Gravity, Ph, Temperature };
    Q_ENUM(Measure)

    TastingViewModel(Context& context, PeopleViewModel& people, QObject* parent = nullptr);

    /// Open a sheet of the person who holds the phone, or go on with the one that is open.
    void begin(const cellar::BarrelRow& barrel);
    /// The same for a glass of a flight.
    void beginGlass(const SubjectId& flight, int glass, const SubjectId& barrel);
    /// Go on with an open sheet where it was left.
    void resume(const cellar::OpenSheet& sheet);

    Q_INVOKABLE void choose(int value);
    Q_INVOKABLE void nudge(int by);
    /// The next step; an attribute without a score is kept as not judged.
    Q_INVOKABLE void next();
    Q_INVOKABLE void previous();
    Q_INVOKABLE void tapFault(int index);
    Q_INVOKABLE void tapPalateTired();
    Q_INVOKABLE void tapNoteChip(int index);
    Q_INVOKABLE void writeNote(const QString& text);
    Q_INVOKABLE void stepReading(Measure measure, int count);
    Q_INVOKABLE void clearReading(Measure measure);
    Q_INVOKABLE void undo();
    Q_INVOKABLE void close();
    Q_INVOKABLE void discard();
    void photoKept() { reload(); }

    [[nodiscard]] bool isOpen() const { return !sheet_.isZero(); }
    [[nodiscard]] SubjectId sheet() const { return sheet_; }
    [[nodiscard]] SubjectId barrel() const { return barrel_.barrel; }
    /// What may be seen of the barrel: of a flight the glass instead of the mark.
    [[nodiscard]] const cellar::BarrelRow& row() const { return barrel_; }
    [[nodiscard]] SubjectId person() const { return taster_; }
    [[nodiscard]] std::optional<SubjectId> flight() const { return flight_; }
    [[nodiscard]] bool isBlind() const { return flight_.has_value(); }
    [[nodiscard]] QString sheetId() const { return textOf(sheet_); }
    [[nodiscard]] QString barrelName() const;
    [[nodiscard]] QString code() const;
    [[nodiscard]] QString taster() const;
    [[nodiscard]] StepKind step() const { return static_cast<StepKind>(steps_.kind()); }
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString place() const;
    [[nodiscard]] bool isFirst() const { return steps_.isFirst(); }
    [[nodiscard]] bool isLast() const { return steps_.isLast(); }
    [[nodiscard]] int value() const;
    [[nodiscard]] bool isNotJudged() const;
    [[nodiscard]] QString readout() const;
    [[nodiscard]] QStringList ladderWords() const;
    [[nodiscard]] QString nextText() const;
    [[nodiscard]] QStringList faults() const;
    [[nodiscard]] QList<bool> faultsChosen() const;
    [[nodiscard]] bool isPalateTired() const;
    [[nodiscard]] QString note() const;
    [[nodiscard]] QStringList noteChips() const;
    [[nodiscard]] QList<bool> noteChipsChosen() const;
    [[nodiscard]] QString gravity() const;
    [[nodiscard]] QString ph() const;
    [[nodiscard]] QString temperature() const;
    [[nodiscard]] QString temperatureUnit() const;
    [[nodiscard]] QStringList stepTexts() const;
    [[nodiscard]] int photos() const;
    [[nodiscard]] QString summary() const;
    [[nodiscard]] bool canUndo() const;
    [[nodiscard]] QString undoText() const;
    [[nodiscard]] QString error() const { return error_; }

signals:
    void changed();
    /// A tap is durable; pads may show it.
    void kept();
    /// A sheet is open and read: its page may be shown.
    void opened();
    /// The sheet is closed: it is the record `taste`.
    void closed(const QString& barrelId, const QString& taste);
    void discarded();

private:
    static inline const QString noteSeparator = QStringLiteral(", ");

    using Content = cellar::SheetContent;
    // What the writer returns after each tap: the sheet as it is now.
    struct SheetNow {
        Content content;
        std::optional<cellar::LastTap> last;
    };
    using Tap = std::function<Result<void>(cellar::Cellar&, const SubjectId&)>;

    void tap(Tap tap);
    void reload();
    void take(SheetNow now);
    void keepStep();
    void fail(const Error& error);
    [[nodiscard]] static Result<SheetNow> readNow(cellar::Cellar& cellar, const SubjectId& sheet);
    void tapValue(int value);
    void move(void (SheetSteps::*how)());
    void goToLastTap();
    [[nodiscard]] static QStringList phrasesOf(const QString& note);
    [[nodiscard]] int faultStrength(std::string_view fault) const;
    [[nodiscard]] std::optional<double> reading(Measure measure) const;
    [[nodiscard]] double expectedReading(Measure measure) const;
    void tapReading(Measure measure, std::optional<double> value);
    void readExpected();
    struct Wanted {
        SubjectId barrel;
        std::optional<SubjectId> flight = {};
        std::optional<int> glass = {};
    };
    void begin(const Wanted& wanted);
    [[nodiscard]] static Result<cellar::OpenSheet> openOrGoOn(cellar::Cellar& cellar,
                                                              const Wanted& wanted,
                                                              const SubjectId& person, int session);

    Context& context_;
    PeopleViewModel& people_;
    SubjectId sheet_;
    SubjectId taster_;
    cellar::BarrelRow barrel_;
    std::optional<SubjectId> flight_;
    SheetSteps steps_;
    Content content_{};
    std::optional<cellar::LastTap> last_;
    // What was asked for and is not durable yet: a second tap builds on it, the screen does not.
    std::optional<int> asked_;
    std::optional<QString> unkeptNote_;  // typed, and not durable yet
    int waiting_ = 0;                    // taps that are not durable yet
    cellar::ReadingRow expected_;        // the barrel's last reading, from which the steppers start
    QString error_;
    bool busy_ = false;
};

}  // namespace spile::viewmodels
