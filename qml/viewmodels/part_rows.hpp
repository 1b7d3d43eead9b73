#pragma once

#include "qml/viewmodels/rows.hpp"

#include <QStringList>
#include <QtQml/qqmlregistration.h>
#include <string>

namespace spile::viewmodels {

/// A line of a page that tells of many things below one another: a lot, a trace, a report.
struct PartLine {
    QString kind;     // what it tells of: its view-model goes by it when a pad is pressed
    QString id;       // of what it tells of, or its number
    QString heading;  // above it, where a new part begins; else empty
    QString said;
    QString beside;    // lines under it
    qreal share = -1;  // as a bar, 0 to 1; less than 0: none
    QString pad;       // the words of its pads; empty: none
    QString otherPad;

    [[nodiscard]] QString key() const { return kind + QLatin1Char(':') + id; }
    friend bool operator==(const PartLine&, const PartLine&) = default;
};

class PartRows : public Rows<PartLine> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")

public:
    enum Role { Kind = Qt::UserRole, Heading, Said, Beside, Share, Act, OtherAct };

    using Rows<PartLine>::Rows;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
};

/// A line with `beside` below it, without those that are empty.
[[nodiscard]] PartLine partLine(const QString& kind, const QString& id, const QString& said,
                                QStringList beside);
/// What the records hold as a name or word, as it is.
[[nodiscard]] inline QString said(const std::string& text) { return QString::fromStdString(text); }

/// Add `lines` to `all`, the first of them with `heading`.
void addPart(std::vector<PartLine>& all, std::vector<PartLine> lines, const QString& heading);

}  // namespace spile::viewmodels
