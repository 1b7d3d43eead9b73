#pragma once

#include "qml/viewmodels/rows.hpp"

#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// Something to fill in at a step: a number that is stepped, one of some words, or a name.
struct AskLine {
    QString name;
    QString label;
    int kind = 0;  // AskRows::Kind
    QString readout, unit, smallStep, bigStep;
    bool empty = true, canLess = true, canMore = true;
    QStringList words;
    int choice = -1;
    QString entry;  // what the field for another name is called
    QString text;   // a new name
    QString note;   // "looks unusual", or that it may be left out

    [[nodiscard]] QString key() const { return name; }
    friend bool operator==(const AskLine&, const AskLine&) = default;
};

class AskRows : public Rows<AskLine> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")

public:
    enum Kind { Number, Words, Named };
    Q_ENUM(Kind)
    enum Role {
        Name = Qt::UserRole,
        Label,
        KindRole,
        Readout,
        Unit,
        SmallStep,
        BigStep,
        Empty,
        CanLess,
        CanMore,
        Offered,
        Choice,
        Entry,
        Text,
        Note
    };
    Q_ENUM(Role)

    using Rows<AskLine>::Rows;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
};

/// A number of this barrel with its label.
struct FactLine {
    QString name;
    QString label;
    QString value;
    bool loud = false;  // beyond a limit

    [[nodiscard]] QString key() const { return name; }
    friend bool operator==(const FactLine&, const FactLine&) = default;
};

class FactRows : public Rows<FactLine> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")

public:
    enum Role { Label = Qt::UserRole, Value, Loud };
    Q_ENUM(Role)

    using Rows<FactLine>::Rows;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
};

}  // namespace spile::viewmodels
