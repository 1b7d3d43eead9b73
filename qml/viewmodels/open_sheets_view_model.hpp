#pragma once

#include "core/cellar/acts/sheet.hpp"
#include "core/cellar/queries.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/rows.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// "Glass 417": all that is said of the sheet of a flight.
[[nodiscard]] QString glassName(const cellar::OpenSheet& sheet);

/// A sheet that is still open, as a line: "you were here".
struct OpenSheetLine {
    QString id;
    QString barrel;  // "Rum 3"
    QString taster;
    QString where;  // "Oak, 3 of 9"
    QString when;   // "begun 14:02, now 18:20"

    [[nodiscard]] QString key() const { return id; }
    friend bool operator==(const OpenSheetLine&, const OpenSheetLine&) = default;
};

class OpenSheetRows : public Rows<OpenSheetLine> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")

public:
    enum Role { Barrel = Qt::UserRole, Taster, Where, When };

    using Rows<OpenSheetLine>::Rows;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
};

/// The tasting sheets that are open on this device. Nothing on them is lost, whatever ended the
/// app; what is on them is in no day file before they are closed.
class OpenSheetsViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(spile::viewmodels::OpenSheetRows* sheets READ sheets CONSTANT FINAL)
    Q_PROPERTY(int count READ count NOTIFY changed FINAL)
    Q_PROPERTY(QString interruption READ interruption NOTIFY changed FINAL)

public:
    explicit OpenSheetsViewModel(Context& context, QObject* parent = nullptr);

    [[nodiscard]] OpenSheetRows* sheets() { return &rows_; }
    [[nodiscard]] int count() const { return rows_.rowCount(); }
    /// What happened meanwhile, said on the page; empty: nothing.
    [[nodiscard]] QString interruption() const { return interruption_; }
    void setInterruption(const QString& text);

    void refresh();
    Q_INVOKABLE void goOn(int index);

signals:
    void changed();
    void read();
    void chosen(const spile::cellar::OpenSheet& sheet);

private:
    struct Found {
        cellar::OpenSheet sheet;
        QString barrel, taster;
        int step = 0, steps = 0;
        QString stepName;
    };
    void take(const std::vector<Found>& found);

    Context& context_;
    OpenSheetRows rows_;
    std::vector<cellar::OpenSheet> sheets_;
    QString interruption_;
};

}  // namespace spile::viewmodels
