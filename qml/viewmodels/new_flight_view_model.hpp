#pragma once

#include "core/plan/flights.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/people_view_model.hpp"
#include "qml/viewmodels/rows.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>
#include <set>

namespace spile::viewmodels {

/// A full barrel that can be drawn for a flight.
struct FlightBarrelLine {
    QString id;
    QString title;   // "Rum 3"
    QString detail;  // "Night Ferry, rum"; what speaks against it
    bool suspect = false;
    bool chosen = false;

    [[nodiscard]] QString key() const { return id; }
    friend bool operator==(const FlightBarrelLine&, const FlightBarrelLine&) = default;
};

class FlightBarrelRows : public Rows<FlightBarrelLine> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")

public:
    enum Role { Title = Qt::UserRole, Detail, Suspect, Chosen };

    using Rows<FlightBarrelLine>::Rows;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
};

/// Which barrels are drawn for a flight, and whether one of them is poured twice.
class NewFlightViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(spile::viewmodels::FlightBarrelRows* barrels READ barrels CONSTANT FINAL)
    Q_PROPERTY(bool loaded READ isLoaded NOTIFY changed FINAL)
    Q_PROPERTY(QString search READ search WRITE setSearch NOTIFY changed FINAL)
    /// So many that one looks for them by what is typed.
    Q_PROPERTY(bool many READ areMany NOTIFY changed FINAL)
    Q_PROPERTY(bool twice READ isTwice NOTIFY changed FINAL)
    Q_PROPERTY(bool canTwice READ canTwice NOTIFY changed FINAL)
    Q_PROPERTY(QString beginText READ beginText NOTIFY changed FINAL)
    Q_PROPERTY(bool canBegin READ canBegin NOTIFY changed FINAL)
    Q_PROPERTY(QString error READ error NOTIFY changed FINAL)

public:
    NewFlightViewModel(Context& context, PeopleViewModel& people, QObject* parent = nullptr);

    void open();

    [[nodiscard]] FlightBarrelRows* barrels() { return &rows_; }
    [[nodiscard]] bool isLoaded() const { return loaded_; }
    [[nodiscard]] QString search() const { return search_; }
    void setSearch(const QString& text);
    [[nodiscard]] bool areMany() const;
    [[nodiscard]] bool isTwice() const { return twice_ && canTwice(); }
    /// Whether a clean barrel is among those chosen.
    [[nodiscard]] bool canTwice() const;
    [[nodiscard]] QString beginText() const;
    [[nodiscard]] bool canBegin() const;
    [[nodiscard]] QString error() const { return error_; }

    Q_INVOKABLE void toggle(int index);
    Q_INVOKABLE void toggleTwice();
    /// Record the flight; `begun` follows when it is durable.
    Q_INVOKABLE void begin();

signals:
    void changed();
    void begun(const spile::SubjectId& flight);

private:
    struct Candidate {
        cellar::BarrelRow row;
        plan::Suspicion suspicion;
    };
    void look();
    void show();
    [[nodiscard]] QString against(const Candidate& candidate) const;

    Context& context_;
    PeopleViewModel& people_;
    FlightBarrelRows rows_;
    std::vector<Candidate> candidates_;
    std::set<SubjectId> chosen_;
    QString search_, error_;
    bool twice_ = false;
    bool loaded_ = false;
    bool busy_ = false;
};

}  // namespace spile::viewmodels
