#include "qml/viewmodels/work_rows.hpp"

namespace spile::viewmodels {

QVariant AskRows::data(const QModelIndex& index, int role) const
{
    const AskLine* line = rowAt(index.row());
    if (line == nullptr) {
        return {};
    }
    switch (role) {
        case Name:
            return line->name;
        case Label:
            return line->label;
        case KindRole:
            return line->kind;
        case Readout:
            return line->readout;
        case Unit:
            return line->unit;
        case SmallStep:
            return line->smallStep;
        case BigStep:
            return line->bigStep;
        case Empty:
            return line->empty;
        case CanLess:
            return line->canLess;
        case CanMore:
            return line->canMore;
        case Offered:
            return line->words;
        case Choice:
            return line->choice;
        case Entry:
            return line->entry;
        case Text:
            return line->text;
        case Note:
            return line->note;
        default:
            return {};
    }
}

QHash<int, QByteArray> AskRows::roleNames() const
{
    return {{Name, "ask"},        {Label, "label"},     {KindRole, "kind"},
            {Readout, "readout"}, {Unit, "unit"},       {SmallStep, "smallStep"},
            {BigStep, "bigStep"}, {Empty, "isEmpty"},   {CanLess, "canLess"},
            {CanMore, "canMore"}, {Offered, "offered"}, {Choice, "choice"},
            {Entry, "entry"},     {Text, "typed"},      {Note, "note"}};
}

QVariant FactRows::data(const QModelIndex& index, int role) const
{
    const FactLine* line = rowAt(index.row());
    if (line == nullptr) {
        return {};
    }
    switch (role) {
        case Label:
            return line->label;
        case Value:
            return line->value;
        case Loud:
            return line->loud;
        default:
            return {};
    }
}

QHash<int, QByteArray> FactRows::roleNames() const
{
    return {{Label, "label"}, {Value, "value"}, {Loud, "loud"}};
}

}  // namespace spile::viewmodels
