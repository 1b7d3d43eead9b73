#include "qml/viewmodels/barrel_rows.hpp"

#include "core/cellar/standing.hpp"
#include "core/scan/barrel_code.hpp"
#include "qml/viewmodels/outlook_text.hpp"
#include "qml/viewmodels/words.hpp"

namespace spile::viewmodels {

QString nameOf(const cellar::BarrelRow& row)
{
    return QString::fromStdString(row.mark.empty() ? scan::shown(row.code) : row.mark);
}

QString reasonOf(const cellar::BarrelRow& row, const Formats& formats)
{
    const cellar::Standing standing = cellar::standingOf(row, formats.now());
    if (standing == cellar::Standing::Held && row.due) {
        return BarrelRows::tr("On hold, taste %1").arg(formats.fromNow(*row.due));
    }
    if (standing == cellar::Standing::Held) {
        return BarrelRows::tr("On hold");
    }
    if (row.due) {
        const bool waits = standing == cellar::Standing::Resting;
        const QString why = OutlookText::reason(row.dueReason);
        if (!waits && !why.isEmpty()) {
            return BarrelRows::tr("%1, %2: %3", "Taste, 9 days over: may decide")
                .arg(capitalised(word(row.nextStep)), formats.due(*row.due), why);
        }
        return waits ? BarrelRows::tr("Resting, %1 %2", "taste, in 90 days")
                           .arg(word(row.nextStep), formats.fromNow(*row.due))
                     : BarrelRows::tr("%1, %2", "Taste, 9 days over")
                           .arg(capitalised(word(row.nextStep)), formats.due(*row.due));
    }
    return row.filled ? BarrelRows::tr("Resting") : BarrelRows::tr("Empty");
}

BarrelLine lineOf(const cellar::BarrelRow& row, const Formats& formats)
{
    BarrelLine line;
    line.id = textOf(row.barrel);
    line.title = nameOf(row);
    line.code = row.mark.empty() ? QString() : QString::fromStdString(scan::shown(row.code));
    QStringList contents;
    if (!row.beer.empty()) {
        contents << QString::fromStdString(row.beer);
    } else {
        contents << (row.filled ? BarrelRows::tr("beer not known") : BarrelRows::tr("empty"));
    }
    if (!row.spirit.empty()) {
        contents << BarrelRows::tr("ex-%1", "the spirit it held before").arg(word(row.spirit));
    }
    line.contents = contents.join(QStringLiteral(" · "));
    line.place = QString::fromStdString(row.place);
    line.standing = static_cast<int>(cellar::standingOf(row, formats.now()));
    line.reason = reasonOf(row, formats);
    return line;
}

QVariant BarrelRows::data(const QModelIndex& index, int role) const
{
    const BarrelLine* line = rowAt(index.row());
    if (line == nullptr) {
        return {};
    }
    switch (role) {
        case BarrelId:
            return line->id;
        case Title:
            return line->title;
        case Code:
            return line->code;
        case Contents:
            return line->contents;
        case Place:
            return line->place;
        case Standing:
            return line->standing;
        case Reason:
            return line->reason;
        default:
            return {};
    }
}

QHash<int, QByteArray> BarrelRows::roleNames() const
{
    return {{BarrelId, "barrelId"}, {Title, "title"}, {Code, "code"},
            {Contents, "contents"}, {Place, "place"}, {Standing, "standing"},
            {Reason, "reason"}};
}

}  // namespace spile::viewmodels
