#pragma once

#include "core/cellar/journal.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/rows.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// One thing that was recorded on this device, as a line.
struct JournalLine {
    QString id;
    QString when;  // "18:20"
    QString what;  // "Drawn, Rum 3"
    QString detail;
    QString state;  // "in a day file", "taken back"
    bool voided = false;
    bool stays = false;  // it cannot be taken back

    [[nodiscard]] QString key() const { return id; }
    friend bool operator==(const JournalLine&, const JournalLine&) = default;
};

class JournalRows : public Rows<JournalLine> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")

public:
    enum Role { When = Qt::UserRole, What, Detail, State, Voided, Stays };

    using Rows<JournalLine>::Rows;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
};

/// What was recorded on this device, the newest first, and taking it back.
class TodayViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(spile::viewmodels::JournalRows* journal READ journal CONSTANT FINAL)
    Q_PROPERTY(bool loaded READ isLoaded NOTIFY changed FINAL)
    Q_PROPERTY(bool empty READ isEmpty NOTIFY changed FINAL)
    Q_PROPERTY(QString day READ day NOTIFY changed FINAL)

public:
    explicit TodayViewModel(Context& context, QObject* parent = nullptr);

    void refresh();
    Q_INVOKABLE void more();
    /// Take a record back, or let it count again.
    Q_INVOKABLE void takeBackAt(int index);

    [[nodiscard]] JournalRows* journal() { return &rows_; }
    [[nodiscard]] bool isLoaded() const { return loaded_; }
    [[nodiscard]] bool isEmpty() const { return loaded_ && rows_.rowCount() == 0; }
    [[nodiscard]] QString day() const;

signals:
    void changed();

private:
    Context& context_;
    JournalRows rows_;
    std::vector<cellar::OwnAct> acts_;
    int wanted_;
    bool loaded_ = false;
};

}  // namespace spile::viewmodels
