#include "qml/viewmodels/part_rows.hpp"

#include <iterator>

namespace spile::viewmodels {

QVariant PartRows::data(const QModelIndex& index, int role) const
{
    const PartLine* line = rowAt(index.row());
    if (line == nullptr) {
        return {};
    }
    switch (role) {
        case Kind:
            return line->kind;
        case Heading:
            return line->heading;
        case Said:
            return line->said;
        case Beside:
            return line->beside;
        case Share:
            return line->share;
        case Act:
            return line->pad;
        case OtherAct:
            return line->otherPad;
        default:
            return {};
    }
}

QHash<int, QByteArray> PartRows::roleNames() const
{
    return {{Kind, "kind"},   {Heading, "heading"}, {Said, "said"},         {Beside, "beside"},
            {Share, "share"}, {Act, "padText"},     {OtherAct, "otherText"}};
}

PartLine partLine(const QString& kind, const QString& id, const QString& said, QStringList beside)
{
    beside.removeAll(QString());
    PartLine line;
    line.kind = kind;
    line.id = id;
    line.said = said;
    line.beside = beside.join(QLatin1Char('\n'));
    return line;
}

void addPart(std::vector<PartLine>& all, std::vector<PartLine> lines, const QString& heading)
{
    if (!lines.empty()) {
        lines.front().heading = heading;
    }
    std::move(lines.begin(), lines.end(), std::back_inserter(all));
}

}  // namespace spile::viewmodels
