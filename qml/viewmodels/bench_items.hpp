#pragma once

#include "qml/viewmodels/rows.hpp"

#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// A line of the bench's pages: an answer, what it costs, a level, a step of a recipe, a glass.
struct BenchItem {
    QString id;
    QString title;
    QString value;
    QString note;
    bool chosen = false;
    // A level on a bar, as shares of it: its range, its middle and the edges of its window; -1:
    // none.
    qreal from = -1, to = -1, mark = -1;
    QList<qreal> places = {};

    [[nodiscard]] QString key() const { return id; }
    friend bool operator==(const BenchItem&, const BenchItem&) = default;
};

class BenchItems : public Rows<BenchItem> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")

public:
    enum Role { ItemId = Qt::UserRole, Title, Value, Note, Chosen, From, To, Mark, Places };

    using Rows<BenchItem>::Rows;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
};

}  // namespace spile::viewmodels
