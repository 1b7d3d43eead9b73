#include "qml/viewmodels/bench_items.hpp"

namespace spile::viewmodels {

QVariant BenchItems::data(const QModelIndex& index, int role) const
{
    const BenchItem* item = rowAt(index.row());
    if (item == nullptr) {
        return {};
    }
    switch (role) {
        case ItemId:
            return item->id;
        case Title:
            return item->title;
        case Value:
            return item->value;
        case Note:
            return item->note;
        case Chosen:
            return item->chosen;
        case From:
            return item->from;
        case To:
            return item->to;
        case Mark:
            return item->mark;
        case Places:
            return QVariant::fromValue(item->places);
        default:
            return {};
    }
}

QHash<int, QByteArray> BenchItems::roleNames() const
{
    return {{ItemId, "itemId"}, {Title, "title"},   {Value, "value"},
            {Note, "note"},     {Chosen, "picked"}, {From, "from"},
            {To, "to"},         {Mark, "mark"},     {Places, "places"}};
}

}  // namespace spile::viewmodels
