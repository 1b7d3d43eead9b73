#pragma once

#include "core/cellar/queries.hpp"
#include "core/scan/read_belief.hpp"
#include "qml/viewmodels/context.hpp"

#include <QObject>
#include <QStringList>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// How long is looked before other ways are offered, and how long a hit is shown before it counts.
struct ScanPace {
    Milliseconds patience = std::chrono::seconds(4);
    Milliseconds shown = std::chrono::milliseconds(800);
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
    Q_PROPERTY(bool showOtherWays READ showsOtherWays NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> keys READ keys CONSTANT FINAL)
    /// "7K2-QF", as far as it is typed.
    Q_PROPERTY(QString typed READ typed NOTIFY changed FINAL)
    Q_PROPERTY(QString typedError READ typedError NOTIFY changed FINAL)
    /// Barrels that may have been meant: "Rum 3, 7K2-QFM".
    Q_PROPERTY(QList<QString> suggestions READ suggestions NOTIFY changed FINAL)

public:
    enum State {
        Looking,
        Found,        // a barrel; `found` follows
        Foreign,      // a label of another cellar
        Unknown,      // a code of this cellar that no barrel has yet
        Several,      // a code that two barrels were given: see `suggestions`
        NotALabel,    // some other code
        WrongBarrel,  // not the one that is expected
        Failed,       // the records did not answer
    };
    Q_ENUM(State)

    explicit ScanViewModel(Context& context, ScanPace pace = {}, QObject* parent = nullptr);

    /// Look anew, for any barrel.
    Q_INVOKABLE void begin();
    /// From now on, another barrel than this is the wrong one.
    Q_INVOKABLE void expectBarrel(const QString& barrelId);
    /// Take a code that was read in a frame; see frames::FrameReader.
    Q_INVOKABLE void offer(const QString& text, const QString& format);
    Q_INVOKABLE void type(const QString& key);
    Q_INVOKABLE void erase();
    Q_INVOKABLE void clear();
    Q_INVOKABLE void chooseSuggestion(int index);
    /// Not this one: look again.
    Q_INVOKABLE void again();
    /// Have a barrel registered with the code that was read.
    Q_INVOKABLE void registerUnknown();

    [[nodiscard]] State state() const { return state_; }
    [[nodiscard]] QString name() const;
    [[nodiscard]] QString code() const;
    [[nodiscard]] QString message() const { return message_; }
    [[nodiscard]] bool showsOtherWays() const { return showOtherWays_; }
    [[nodiscard]] QStringList keys() const;
    [[nodiscard]] QString typed() const;
    [[nodiscard]] QString typedError() const { return typedError_; }
    [[nodiscard]] QStringList suggestions() const;

signals:
    void changed();
    /// This barrel is it: it has been shown long enough to say no.
    void found(const QString& barrelId);
    void unknownCode(const QString& code);

private:
    // What the records say of a code.
    struct Sighting {
        std::optional<scan::LabelText> label;  // none: not one of ours
        bool isTypedWrong = false;
        std::string cellarMark;
        std::vector<cellar::BarrelRow> barrels;  // that have the code, or may have been meant
        std::string expectedName;
    };
    static Result<Sighting> lookUp(cellar::Cellar& cellar, std::optional<scan::LabelText> label,
                                   const std::string& typed, const SubjectId& expected);

    void ask(std::optional<scan::LabelText> label, const QString& text, const std::string& typed);
    void take(const Sighting& sighting, const QString& text);
    void show(State state, const QString& message);
    void takeBarrel(const cellar::BarrelRow& barrel, const std::string& expectedName);
    void checkTyped();
    void lookAgain();
    void forgetSighting();

    Context& context_;
    scan::ReadBelief belief_;
    QTimer patience_, shown_;
    State state_ = Looking;
    cellar::BarrelRow barrel_;
    std::string code_;  // of a hit or an unknown label
    std::string typed_;
    QString message_, typedError_;
    std::vector<cellar::BarrelRow> suggested_;
    SubjectId expected_;
    std::string expectedName_;
    bool showOtherWays_ = false;
    int asked_ = 0;  // the last question; answers to earlier ones are dropped
};

}  // namespace spile::viewmodels
