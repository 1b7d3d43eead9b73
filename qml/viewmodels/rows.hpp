#pragma once

#include <QAbstractListModel>
#include <QSet>
#include <algorithm>
#include <vector>

namespace spile::viewmodels {

/// A list model over plain rows. replace() changes only the rows that differ: it removes, moves,
/// inserts and changes, and never resets, so that a list keeps its place.
///
/// Requires  Row to be equality comparable and to have `QString key() const`, unique in the list.
template <class Row>
class Rows : public QAbstractListModel {
public:
    using QAbstractListModel::QAbstractListModel;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override
    {
        return parent.isValid() ? 0 : static_cast<int>(rows_.size());
    }
    [[nodiscard]] const std::vector<Row>& rows() const { return rows_; }
    [[nodiscard]] const Row* rowAt(int index) const
    {
        return index >= 0 && index < rowCount() ? &rows_[static_cast<std::size_t>(index)] : nullptr;
    }

    void replace(std::vector<Row> wanted)
    {
        if (rows_.empty()) {
            append(std::move(wanted));
            return;
        }
        QSet<QString> keys;
        for (const Row& row : wanted) {
            keys.insert(row.key());
        }
        for (int i = rowCount() - 1; i >= 0; --i) {
            if (!keys.contains(rowAt(i)->key())) {
                beginRemoveRows({}, i, i);
                rows_.erase(rows_.begin() + i);
                endRemoveRows();
            }
        }
        for (int i = 0; i < static_cast<int>(wanted.size()); ++i) {
            place(std::move(wanted[static_cast<std::size_t>(i)]), i);
        }
    }
    void append(std::vector<Row> more)
    {
        if (more.empty()) {
            return;
        }
        beginInsertRows({}, rowCount(), rowCount() + static_cast<int>(more.size()) - 1);
        std::move(more.begin(), more.end(), std::back_inserter(rows_));
        endInsertRows();
    }

private:
    static int find(const std::vector<Row>& rows, const QString& key, int from)
    {
        const auto found = std::find_if(rows.begin() + from, rows.end(),
                                        [&](const Row& row) { return row.key() == key; });
        return found == rows.end() ? -1 : static_cast<int>(found - rows.begin());
    }

    void place(Row row, int at)
    {
        const int now = at < rowCount() ? find(rows_, row.key(), at) : -1;
        if (now < 0) {
            beginInsertRows({}, at, at);
            rows_.insert(rows_.begin() + at, std::move(row));
            endInsertRows();
            return;
        }
        if (now != at) {
            beginMoveRows({}, now, now, {}, at);
            std::rotate(rows_.begin() + at, rows_.begin() + now, rows_.begin() + now + 1);
            endMoveRows();
        }
        Row& there = rows_[static_cast<std::size_t>(at)];
        if (!(there == row)) {
            there = std::move(row);
            emit this->dataChanged(index(at), index(at));
        }
    }

    std::vector<Row> rows_;
};

}  // namespace spile::viewmodels
