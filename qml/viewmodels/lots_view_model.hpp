#pragma once

#include "core/cellar/lots.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/rows.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// A lot as a row of the list.
struct LotLine {
    QString id;
    QString title;
    QString left;    // "142 L left"
    QString detail;  // "Tue 14 Oct · packaged"
    QString held;    // the word for it; empty: nothing is held

    [[nodiscard]] QString key() const { return id; }
    friend bool operator==(const LotLine&, const LotLine&) = default;
};

class LotRows : public Rows<LotLine> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")

public:
    enum Role { LotId = Qt::UserRole, Title, Left, Detail, Held };

    using Rows<LotLine>::Rows;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
};

/// All lots, the newest first, read page by page.
class LotsViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(spile::viewmodels::LotRows* lots READ lots CONSTANT FINAL)
    Q_PROPERTY(bool loaded READ isLoaded NOTIFY changed FINAL)
    Q_PROPERTY(bool empty READ isEmpty NOTIFY changed FINAL)

public:
    explicit LotsViewModel(Context& context, QObject* parent = nullptr);

    /// Read the first page anew.
    void refresh();
    Q_INVOKABLE void more();

    [[nodiscard]] LotRows* lots() { return &rows_; }
    [[nodiscard]] bool isLoaded() const { return loaded_; }
    [[nodiscard]] bool isEmpty() const { return loaded_ && rows_.rowCount() == 0; }

signals:
    void changed();

private:
    void look();

    Context& context_;
    LotRows rows_;
    int wanted_;
    bool loaded_ = false;
    bool complete_ = false;
};

}  // namespace spile::viewmodels
