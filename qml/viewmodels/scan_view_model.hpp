#pragma once

#include "core/scan/read_belief.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/scan_sighting.hpp"
#include "qml/viewmodels/steady_advice.hpp"

#include <QObject>
#include <QStringList>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// How long things take on the page: before other ways are offered; that a hit is shown before it
/// counts, alone and with others in view; from one judgement of what would help to the next.
struct ScanPace {
    Milliseconds patience = std::chrono::seconds(4);
    Milliseconds shown = std::chrono::milliseconds(800);
    Milliseconds shownBeside = std::chrono::seconds(4);
    Milliseconds judged = std::chrono::seconds(1);
};

/// Which barrel is this? By the code on its label, read by the camera or typed.
class ScanViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(State state READ state NOTIFY changed FINAL)
    /// Of a hit: the barrel's name, large; and the code as people say it.
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(QString code READ code NOTIFY changed FINAL)
    /// Of anything else that was read: what it is.
    Q_PROPERTY(QString message READ message NOTIFY changed FINAL)
    /// Other barrels in the same frame, likewise.
    Q_PROPERTY(QList<QString> beside READ beside NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> codesBeside READ codesBeside NOTIFY changed FINAL)
    /// What would help while nothing is read.
    Q_PROPERTY(Advice advice READ advice NOTIFY changed FINAL)
    Q_PROPERTY(bool showOtherWays READ showsOtherWays NOTIFY changed FINAL)
    /// The barrel that it should be: its name; empty: any may come.
    Q_PROPERTY(QString expected READ expected NOTIFY changed FINAL)
    /// The id of the barrel that was expected and scanned, as long as that is of use.
    Q_PROPERTY(QString confirmed READ confirmed NOTIFY confirmedChanged FINAL)
    Q_PROPERTY(QList<QString> keys READ keys CONSTANT FINAL)
    /// "7K2-QF", as far as it is typed.
    Q_PROPERTY(QString typed READ typed NOTIFY changed FINAL)
    Q_PROPERTY(QString typedError READ typedError NOTIFY changed FINAL)
    /// Barrels that may have been meant: their names, and their codes where these are not the
    /// names.
    Q_PROPERTY(QList<QString> suggestions READ suggestions NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> suggestedCodes READ suggestedCodes NOTIFY changed FINAL)

public:
    enum State {
        Looking,
        Found,         // a barrel; `found` follows
        Foreign,       // a label of another cellar
        Unknown,       // a code of this cellar that no barrel has yet
        Several,       // a code that two barrels were given: see `suggestions`
        NotALabel,     // some other code, or a device that cannot be let in here
        AskingDevice,  // the symbol of a device that can be let in
        WrongBarrel,   // not the one that is expected
        Failed,        // the records did not answer
    };
    Q_ENUM(State)

    enum Advice { NoAdvice, Light, Closer, Still, Wipe };
    Q_ENUM(Advice)

    explicit ScanViewModel(Context& context, ScanPace pace = {}, QObject* parent = nullptr);

    /// Look anew, for any barrel.
    Q_INVOKABLE void begin();
    /// Look anew; another barrel than this is the wrong one.
    Q_INVOKABLE void expectBarrel(const QString& barrelId, const QString& name);
    /// Take the codes that were read in a frame, or what would help to read one; see
    /// frames::FrameReader. Of several labels the first is meant.
    Q_INVOKABLE void offer(const QList<QString>& texts, const QList<QString>& formats);
    Q_INVOKABLE void miss(const QString& advice);
    Q_INVOKABLE void type(const QString& key);
    Q_INVOKABLE void erase();
    Q_INVOKABLE void clear();
    Q_INVOKABLE void chooseSuggestion(int index);
    /// Take that barrel instead of the one that is shown.
    Q_INVOKABLE void chooseBeside(int index);
    /// The one that is shown is meant: it counts at once.
    Q_INVOKABLE void choose();
    /// Not this one: look again.
    Q_INVOKABLE void again();
    /// Have a barrel registered with the code that was read.
    Q_INVOKABLE void registerUnknown();
    /// Let the device in whose symbol was read.
    Q_INVOKABLE void letDeviceIn();

    [[nodiscard]] State state() const { return state_; }
    [[nodiscard]] QString name() const;
    [[nodiscard]] QString code() const;
    [[nodiscard]] QString message() const { return message_; }
    [[nodiscard]] QStringList beside() const;
    [[nodiscard]] QStringList codesBeside() const;
    [[nodiscard]] Advice advice() const { return advice_; }
    [[nodiscard]] QString expected() const { return expectedName_; }
    [[nodiscard]] QString confirmed() const { return confirmed_; }
    void forgetConfirmed();
    [[nodiscard]] bool showsOtherWays() const { return showOtherWays_; }
    [[nodiscard]] QStringList keys() const;
    [[nodiscard]] QString typed() const;
    [[nodiscard]] QString typedError() const { return typedError_; }
    [[nodiscard]] QStringList suggestions() const;
    [[nodiscard]] QStringList suggestedCodes() const;

signals:
    void changed();
    void confirmedChanged();
    /// This barrel is it: it has been shown long enough to say no.
    void found(const QString& barrelId);
    /// The same, of the one that was expected.
    void confirmedIt();
    void unknownCode(const QString& code);
    void deviceWanted(const QString& code);

private:
    void ask(ScanQuestion question, const QString& text);
    void take(const ScanSighting& sighting, const QString& text);
    void suggest();
    void show(State state, const QString& message);
    void takeDevice(const JoinSighting& sighting);
    void takeBarrel(const cellar::BarrelRow& barrel);
    void count();
    void checkTyped();
    void lookAgain();
    void forgetSighting();

    Context& context_;
    scan::ReadBelief belief_;
    SteadyAdvice steady_;
    ScanPace pace_;
    QTimer patience_, shown_, judged_;
    State state_ = Looking;
    cellar::BarrelRow barrel_;
    std::string code_;  // of a hit or an unknown label
    std::string typed_;
    QString message_, typedError_, asking_;
    std::vector<cellar::BarrelRow> suggested_, beside_;
    SubjectId expected_;
    QString expectedName_, confirmed_;
    Advice advice_ = NoAdvice;
    bool showOtherWays_ = false;
    int asked_ = 0;  // the last question; answers to earlier ones are dropped
};

}  // namespace spile::viewmodels
