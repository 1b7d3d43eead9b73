#pragma once

#include "core/cellar/flights.hpp"
#include "core/cellar/queries.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/drawing_view_model.hpp"
#include "qml/viewmodels/people_view_model.hpp"
#include "qml/viewmodels/rows.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>
#include <map>

namespace spile::viewmodels {

/// One who may taste the flight.
struct FlightTasterLine {
    QString id;
    QString name;
    QString tasted;  // "2 of 4 tasted"; empty: nothing yet
    bool done = false;

    [[nodiscard]] QString key() const { return id; }
    friend bool operator==(const FlightTasterLine&, const FlightTasterLine&) = default;
};

class FlightTasterRows : public Rows<FlightTasterLine> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")

public:
    enum Role { Name = Qt::UserRole, Tasted, Finished };

    using Rows<FlightTasterLine>::Rows;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
};

/// A glass after its taster has tasted all: what was in it.
struct RevealedLine {
    QString glass;   // "Glass 417"
    QString barrel;  // "Rum 3"

    [[nodiscard]] QString key() const { return glass; }
    friend bool operator==(const RevealedLine&, const RevealedLine&) = default;
};

class RevealedRows : public Rows<RevealedLine> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")

public:
    enum Role { Glass = Qt::UserRole, Barrel };

    using Rows<RevealedLine>::Rows;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
};

/// A flight: drawn glass by glass, then tasted by one taster after the other, blind. Where it
/// stands is always what the records hold, so that it goes on where it stopped.
class FlightViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(Stage stage READ stage NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString progress READ progress NOTIFY changed FINAL)
    /// While it is drawn.
    Q_PROPERTY(spile::viewmodels::DrawingViewModel* pouring READ pouring CONSTANT FINAL)
    Q_PROPERTY(QString barrelName READ barrelName NOTIFY changed FINAL)
    Q_PROPERTY(QString barrelCode READ barrelCode NOTIFY changed FINAL)
    Q_PROPERTY(QString glass READ glass NOTIFY changed FINAL)
    Q_PROPERTY(bool suspect READ isSuspect NOTIFY changed FINAL)
    /// Whether this barrel fills a second glass.
    Q_PROPERTY(bool again READ isAgain NOTIFY changed FINAL)
    Q_PROPERTY(bool canLeaveOut READ canLeaveOut NOTIFY changed FINAL)
    /// While it is tasted.
    Q_PROPERTY(spile::viewmodels::FlightTasterRows* tasters READ tasters CONSTANT FINAL)
    Q_PROPERTY(QString taster READ taster NOTIFY changed FINAL)
    Q_PROPERTY(spile::viewmodels::RevealedRows* revealed READ revealed CONSTANT FINAL)

public:
    enum Stage {
        Reading,    ///< not known yet
        Drawing,    ///< a glass is to be drawn
        Tasters,    ///< who tastes?
        NextGlass,  ///< the taster takes the next glass
        Tasted      ///< this taster has tasted all: what was in each glass
    };
    Q_ENUM(Stage)

    FlightViewModel(Context& context, PeopleViewModel& people, QObject* parent = nullptr);

    /// Show the flight; with a taster, what comes next for them.
    void open(const SubjectId& flight, const std::optional<SubjectId>& taster = {});

    [[nodiscard]] SubjectId flight() const { return flight_.flight; }
    [[nodiscard]] Stage stage() const { return stage_; }
    /// Whether barrels and scores must not be seen now.
    [[nodiscard]] bool isBlind() const { return stage_ != Drawing && stage_ != Tasted; }
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString progress() const;
    [[nodiscard]] DrawingViewModel* pouring() { return &pouring_; }
    [[nodiscard]] QString barrelName() const;
    [[nodiscard]] QString barrelCode() const;
    [[nodiscard]] QString glass() const;
    [[nodiscard]] bool isSuspect() const;
    [[nodiscard]] bool isAgain() const;
    [[nodiscard]] bool canLeaveOut() const;
    [[nodiscard]] FlightTasterRows* tasters() { return &tasters_; }
    [[nodiscard]] QString taster() const;
    [[nodiscard]] RevealedRows* revealed() { return &revealed_; }

    /// Go on without the glass that cannot be drawn.
    Q_INVOKABLE void leaveOut();
    Q_INVOKABLE void chooseTaster(int index);
    /// Open the sheet of the next glass; `tasteWanted` asks for it.
    Q_INVOKABLE void taste();
    Q_INVOKABLE void nextTaster();
    /// How this taster's sheet of a glass compares; `compareWanted` asks for it.
    Q_INVOKABLE void compare(int index);
    /// Nobody tastes it any more: barrels and scores may be seen.
    Q_INVOKABLE void end();

signals:
    void changed();
    void tasteWanted(const spile::SubjectId& flight, int glass, const spile::SubjectId& barrel);
    void compareWanted(const spile::SubjectId& barrel, const spile::EntryId& taste);
    void ended();

private:
    struct Found {
        cellar::FlightRow flight;
        std::map<SubjectId, cellar::BarrelRow> barrels;
    };
    void refresh();
    void take(Found found);
    void arrange();
    void beginGlass();
    void fail(const Error& error);
    void joinAs(const SubjectId& taster);
    [[nodiscard]] const cellar::FlightGlass* next() const;

    Context& context_;
    PeopleViewModel& people_;
    DrawingViewModel pouring_;
    FlightTasterRows tasters_;
    RevealedRows revealed_;
    cellar::FlightRow flight_;
    std::map<SubjectId, cellar::BarrelRow> barrels_;
    std::optional<SubjectId> taster_;
    int place_ = 0;
    int pouredGlass_ = 0;  // for which the form of drawing was begun
    Stage stage_ = Reading;
};

}  // namespace spile::viewmodels
