#pragma once

#include "core/cellar/queries.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/rows.hpp"

#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// A barrel as a row of a list.
struct BarrelLine {
    QString id;
    QString title;     // the brewer's mark; the code if it has none
    QString code;      // "7K2-QFM"; empty if it is the title
    QString contents;  // "Night Ferry, rum"
    QString place;     // "Vault / Rack 2"
    int standing = 0;  // as NotchEdge numbers them
    QString reason;    // "Taste, 9 days over"

    [[nodiscard]] QString key() const { return id; }
    friend bool operator==(const BarrelLine&, const BarrelLine&) = default;
};

[[nodiscard]] BarrelLine lineOf(const cellar::BarrelRow& row, const Formats& formats);

/// The brewer's mark, or the code as it is shown.
[[nodiscard]] QString nameOf(const cellar::BarrelRow& row);
/// "Taste, 9 days over"; "Resting"; "Empty".
[[nodiscard]] QString reasonOf(const cellar::BarrelRow& row, const Formats& formats);

class BarrelRows : public Rows<BarrelLine> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")

public:
    enum Role { BarrelId = Qt::UserRole, Title, Code, Contents, Place, Standing, Reason };

    using Rows<BarrelLine>::Rows;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
};

}  // namespace spile::viewmodels
