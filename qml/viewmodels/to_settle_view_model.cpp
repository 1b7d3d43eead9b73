#include "qml/viewmodels/to_settle_view_model.hpp"

#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/notice.hpp"
#include "qml/viewmodels/settling_text.hpp"

namespace spile::viewmodels {

namespace {

constexpr int mostListed = 100;

}  // namespace

QVariant ToSettleRows::data(const QModelIndex& index, int role) const
{
    const ToSettleLine* line = rowAt(index.row());
    if (line == nullptr) {
        return {};
    }
    switch (role) {
        case About:
            return line->about;
        case What:
            return line->what;
        case Who:
            return line->who;
        default:
            return {};
    }
}

QHash<int, QByteArray> ToSettleRows::roleNames() const
{
    return {{About, "about"}, {What, "what"}, {Who, "who"}};
}

ToSettleViewModel::ToSettleViewModel(Context& context, QObject* parent)
    : QObject(parent), context_(context)
{
    connect(&context_.workers, &Workers::changed, this, [this] {
        if (loaded_) {
            refresh();
        }
    });
}

void ToSettleViewModel::refresh()
{
    context_.workers.look(
        this, [](ledger::Database& database) { return cellar::toSettle(database, mostListed); },
        [this](Result<std::vector<cellar::UnsettledRow>> found) {
            if (!found) {
                context_.notice.refuse(textOf(found.error()));
                return;
            }
            found_ = std::move(*found);
            std::vector<ToSettleLine> lines;
            lines.reserve(found_.size());
            for (const cellar::UnsettledRow& row : found_) {
                lines.push_back(
                    {QStringLiteral("%1:%2")
                         .arg(static_cast<int>(row.what))
                         .arg(textOf(row.entry) + textOf(row.subject) + textOf(row.device)),
                     SettlingText::about(row), SettlingText::what(row),
                     SettlingText::who(row, context_.formats)});
            }
            loaded_ = true;
            rows_.replace(std::move(lines));
            emit changed();
        });
}

void ToSettleViewModel::choose(int index)
{
    if (index >= 0 && index < static_cast<int>(found_.size())) {
        emit chosen(found_[static_cast<std::size_t>(index)]);
    }
}

}  // namespace spile::viewmodels
