#pragma once

#include "core/cellar/settling.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/rows.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// One thing that is to be settled, as a line.
struct ToSettleLine {
    QString id;
    QString about;
    QString what;
    QString who;

    [[nodiscard]] QString key() const { return id; }
    friend bool operator==(const ToSettleLine&, const ToSettleLine&) = default;
};

class ToSettleRows : public Rows<ToSettleLine> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")

public:
    enum Role { About = Qt::UserRole, What, Who };
    Q_ENUM(Role)

    using Rows<ToSettleLine>::Rows;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
};

/// What several devices have left for a person to decide.
class ToSettleViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(spile::viewmodels::ToSettleRows* rows READ rows CONSTANT FINAL)
    Q_PROPERTY(int count READ count NOTIFY changed FINAL)
    Q_PROPERTY(bool loaded READ isLoaded NOTIFY changed FINAL)
    Q_PROPERTY(bool empty READ isEmpty NOTIFY changed FINAL)

public:
    explicit ToSettleViewModel(Context& context, QObject* parent = nullptr);

    void refresh();
    Q_INVOKABLE void choose(int index);

    [[nodiscard]] ToSettleRows* rows() { return &rows_; }
    [[nodiscard]] int count() const { return rows_.rowCount(); }
    [[nodiscard]] bool isLoaded() const { return loaded_; }
    [[nodiscard]] bool isEmpty() const { return loaded_ && rows_.rowCount() == 0; }

signals:
    void changed();
    void chosen(const spile::cellar::UnsettledRow& row);

private:
    Context& context_;
    ToSettleRows rows_;
    std::vector<cellar::UnsettledRow> found_;
    bool loaded_ = false;
};

}  // namespace spile::viewmodels
