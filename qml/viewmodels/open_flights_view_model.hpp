#pragma once

#include "core/cellar/flights.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/rows.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// A flight that can be gone on with, as a line. No barrel is named in it.
struct OpenFlightLine {
    QString id;
    QString title;  // "Flight of 14:02"
    QString where;  // "2 of 4 drawn"

    [[nodiscard]] QString key() const { return id; }
    friend bool operator==(const OpenFlightLine&, const OpenFlightLine&) = default;
};

class OpenFlightRows : public Rows<OpenFlightLine> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")

public:
    enum Role { FlightId = Qt::UserRole, Title, Where };

    using Rows<OpenFlightLine>::Rows;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
};

/// "Flight of 14:02", or of another day.
[[nodiscard]] QString titleOf(const cellar::FlightRow& flight, const Formats& formats);

/// Who holds the phone, by the settings; none: nobody has said.
[[nodiscard]] std::optional<SubjectId> holderOf(const Context& context);

/// The flights that are not drawn yet, or not all tasted by who holds the phone.
class OpenFlightsViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(spile::viewmodels::OpenFlightRows* flights READ flights CONSTANT FINAL)
    Q_PROPERTY(int count READ count NOTIFY changed FINAL)
    Q_PROPERTY(int interrupted READ interrupted NOTIFY changed FINAL)
    /// How the newest one stands; empty if there is none.
    Q_PROPERTY(QString newest READ newest NOTIFY changed FINAL)

public:
    explicit OpenFlightsViewModel(Context& context, QObject* parent = nullptr);

    [[nodiscard]] OpenFlightRows* flights() { return &rows_; }
    [[nodiscard]] int count() const { return rows_.rowCount(); }
    [[nodiscard]] QString newest() const;
    /// How many are not all drawn: their drawing was interrupted.
    [[nodiscard]] int interrupted() const { return interrupted_; }

    void refresh();
    Q_INVOKABLE void goOn(int index);

signals:
    void changed();
    void read();
    void chosen(const spile::SubjectId& flight);

private:
    Context& context_;
    OpenFlightRows rows_;
    std::vector<SubjectId> flights_;
    int interrupted_ = 0;
};

}  // namespace spile::viewmodels
