#pragma once

#include "core/outlook/barrel_outlook.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/rows.hpp"

#include <QPointF>
#include <QtQml/qqmlregistration.h>

namespace spile::viewmodels {

/// The course of one attribute, as a chart and sentences. Points are in days since the fill and
/// scores of the ladder.
struct AttributeLine {
    QString attribute;  // as it is stored
    QString name;
    QString now;     // "5.2 (4.1 to 6.4)"
    QString window;  // "inside 4 to 6: 7 in 10"; empty without a window
    QString note;    // what to bear in mind, a line each
    QString spoken;  // the chart in a sentence
    QList<QPointF> lower, upper, middle;
    QList<QPointF> windowBox;
    /// Scores by taster: the first three have a mark of their own, the others share the third's.
    QList<QPointF> first, second, third;
    QList<QPointF> doubtful;
    QString firstName, secondName, thirdName;

    [[nodiscard]] QString key() const { return attribute; }
    friend bool operator==(const AttributeLine&, const AttributeLine&) = default;
};
[[nodiscard]] AttributeLine lineOf(const outlook::AttributeOutlook& attribute,
                                   const outlook::BarrelOutlook& outlook, const Formats& formats);
/// What an attribute's chart says at a time: level, chance and the scores given about then.
[[nodiscard]] QString readingAt(const outlook::AttributeOutlook& attribute, Instant at,
                                Milliseconds about, const Formats& formats);
/// The point of a course at a time, between two points of it too. Requires one point or more.
[[nodiscard]] outlook::LevelPoint pointAt(const std::vector<outlook::LevelPoint>& course,
                                          Instant at);

class AttributeRows : public Rows<AttributeLine> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")

public:
    enum Role {
        Name = Qt::UserRole,
        Now,
        Window,
        Note,
        Spoken,
        Lower,
        Upper,
        Middle,
        WindowBox,
        First,
        Second,
        Third,
        Doubtful,
        FirstName,
        SecondName,
        ThirdName,
    };

    using Rows<AttributeLine>::Rows;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
};

/// Something that was said, and what belongs to it: the brewer's own calls with the outlook of that
/// day; alarms with what to check.
struct SaidLine {
    QString id;
    QString said;
    QString beside;

    [[nodiscard]] QString key() const { return id; }
    friend bool operator==(const SaidLine&, const SaidLine&) = default;
};

class SaidRows : public Rows<SaidLine> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")

public:
    enum Role { Said = Qt::UserRole, Beside };

    using Rows<SaidLine>::Rows;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
};

/// Alarms about a barrel: what was seen, and what to check.
class AlarmRows : public SaidRows {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")

public:
    using SaidRows::SaidRows;
};

}  // namespace spile::viewmodels
