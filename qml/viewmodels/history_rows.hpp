#pragma once

#include "core/cellar/queries.hpp"
#include "qml/viewmodels/context.hpp"
#include "qml/viewmodels/rows.hpp"

#include <QUrl>
#include <QtQml/qqmlregistration.h>
#include <functional>

namespace spile::viewmodels {

/// One thing that happened to a barrel, as a line.
struct HistoryLine {
    QString id;  // of the entry
    qint64 atMs = 0;
    QString when;    // "Tue 14 Oct"
    QString what;    // "Tasted"
    QString detail;  // "vanilla 7, oak 5"; hidden while a sheet is open
    QString who;
    QUrl photo;

    [[nodiscard]] QString key() const { return id; }
    friend bool operator==(const HistoryLine&, const HistoryLine&) = default;
};

/// Return the lines of a history, the newest first. With `hidden`, nothing that a taster judged is
/// in them, nor pictures.
///
/// `photoFile` gives the file of a photo.
[[nodiscard]] std::vector<HistoryLine> linesOf(const cellar::BarrelHistory& history,
                                               const Formats& formats, bool hidden,
                                               const std::function<QUrl(const Sha256&)>& photoFile);

/// "vanilla 7, oak 5, acidity not judged; vinegar 3".
[[nodiscard]] QString scoresText(const cellar::TasteRow& taste, const Formats& formats);

class HistoryRows : public Rows<HistoryLine> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("")

public:
    enum Role { EntryRole = Qt::UserRole, When, What, Detail, Who, Photo };

    using Rows<HistoryLine>::Rows;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
};

}  // namespace spile::viewmodels
