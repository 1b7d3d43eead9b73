#pragma once

#include "core/trace/account.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/part_rows.hpp"
#include "qml/viewmodels/people_view_model.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// One lot: what came in, what was done to it, where it went, and what can be done next.
class LotViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")
    Q_PROPERTY(QString lotId READ lotId NOTIFY changed FINAL)
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(QString since READ since NOTIFY changed FINAL)
    Q_PROPERTY(bool loaded READ isLoaded NOTIFY changed FINAL)
    Q_PROPERTY(QString volumeIn READ volumeIn NOTIFY changed FINAL)
    Q_PROPERTY(QString volumeOut READ volumeOut NOTIFY changed FINAL)
    Q_PROPERTY(QString volumeLeft READ volumeLeft NOTIFY changed FINAL)
    /// Of what is left, by mass; and how it is known.
    Q_PROPERTY(QString strength READ strength NOTIFY changed FINAL)
    Q_PROPERTY(QString strengthNote READ strengthNote NOTIFY changed FINAL)
    Q_PROPERTY(QString allergens READ allergens NOTIFY changed FINAL)
    /// Why nothing is packaged or released; empty: nothing is held.
    Q_PROPERTY(QString heldText READ heldText NOTIFY changed FINAL)
    /// More went out than came in, by the records; empty if not.
    Q_PROPERTY(QString oddText READ oddText NOTIFY changed FINAL)
    /// Whether anything has come in, so that something can be done to it.
    Q_PROPERTY(bool begun READ isBegun NOTIFY changed FINAL)
    Q_PROPERTY(spile::viewmodels::PartRows* parts READ parts CONSTANT FINAL)

public:
    LotViewModel(Context& context, PeopleViewModel& people, QObject* parent = nullptr);

    void show(const SubjectId& lot);
    void refresh();
    /// Do what the pad of a part says, or its other pad.
    Q_INVOKABLE void act(int index);
    Q_INVOKABLE void actOther(int index);

    [[nodiscard]] const SubjectId& lot() const { return lot_; }
    [[nodiscard]] const cellar::LotHistory& history() const { return page_.history; }
    [[nodiscard]] Volume left() const { return page_.row.left(); }

    [[nodiscard]] QString lotId() const { return textOf(lot_); }
    [[nodiscard]] QString name() const { return QString::fromStdString(page_.row.name); }
    [[nodiscard]] QString since() const;
    [[nodiscard]] bool isLoaded() const { return loaded_; }
    [[nodiscard]] QString volumeIn() const;
    [[nodiscard]] QString volumeOut() const;
    [[nodiscard]] QString volumeLeft() const;
    [[nodiscard]] QString strength() const;
    [[nodiscard]] QString strengthNote() const;
    [[nodiscard]] QString allergens() const;
    [[nodiscard]] QString heldText() const;
    [[nodiscard]] QString oddText() const;
    [[nodiscard]] bool isBegun() const { return page_.row.in > Volume{}; }
    [[nodiscard]] PartRows* parts() { return &parts_; }

signals:
    void changed();
    /// What is recorded on a page of its own.
    void clearWanted(const spile::cellar::HoldRow& hold);
    void releaseWanted(const spile::cellar::PackageRow& package);
    void traceWanted(const spile::EntryId& package);

private:
    struct Page {
        cellar::LotRow row;
        cellar::LotHistory history;
        trace::LotBalance balance;
    };
    [[nodiscard]] static Result<Page> read(ledger::Database& database, const SubjectId& lot);
    void takeOut(const EntryId& finish);

    Context& context_;
    PeopleViewModel& people_;
    SubjectId lot_;
    Page page_;
    PartRows parts_;
    bool loaded_ = false;
};

}  // namespace spile::viewmodels
