#include "qml/viewmodels/lots_view_model.hpp"

#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/notice.hpp"

namespace spile::viewmodels {

namespace {

constexpr int pageRows = 50;

}  // namespace

QVariant LotRows::data(const QModelIndex& index, int role) const
{
    const LotLine* line = rowAt(index.row());
    if (line == nullptr) {
        return {};
    }
    switch (role) {
        case LotId:
            return line->id;
        case Title:
            return line->title;
        case Left:
            return line->left;
        case Detail:
            return line->detail;
        case Held:
            return line->held;
        default:
            return {};
    }
}

QHash<int, QByteArray> LotRows::roleNames() const
{
    return {{LotId, "lotId"},
            {Title, "title"},
            {Left, "leftText"},
            {Detail, "detail"},
            {Held, "heldWord"}};
}

LotsViewModel::LotsViewModel(Context& context, QObject* parent)
    : QObject(parent), context_(context), wanted_(pageRows)
{
    connect(&context_.workers, &Workers::changed, this, [this] {
        if (loaded_) {
            look();
        }
    });
}

void LotsViewModel::refresh()
{
    wanted_ = pageRows;
    look();
}

void LotsViewModel::more()
{
    if (!complete_ && rows_.rowCount() >= wanted_) {
        wanted_ += pageRows;
        look();
    }
}

void LotsViewModel::look()
{
    context_.workers.look(
        this,
        [limit = wanted_](ledger::Database& database) { return cellar::lots(database, {}, limit); },
        [this](const Result<std::vector<cellar::LotRow>>& lots) {
            if (!lots) {
                context_.notice.refuse(textOf(lots.error()));
                return;
            }
            std::vector<LotLine> lines;
            lines.reserve(lots->size());
            for (const cellar::LotRow& lot : *lots) {
                LotLine line;
                line.id = textOf(lot.lot);
                line.title = QString::fromStdString(lot.name);
                line.left = lot.in == Volume{}
                                ? tr("Nothing has come in yet")
                                : tr("%1 left of %2")
                                      .arg(context_.formats.volume(std::max(lot.left(), Volume{})),
                                           context_.formats.volume(lot.in));
                line.detail = lot.packagings > 0
                                  ? tr("%1 · packaged", "a day").arg(context_.formats.date(lot.at))
                                  : context_.formats.date(lot.at);
                line.held = lot.held ? tr("held") : QString();
                lines.push_back(std::move(line));
            }
            complete_ = static_cast<int>(lines.size()) < wanted_;
            loaded_ = true;
            rows_.replace(std::move(lines));
            emit changed();
        });
}

}  // namespace spile::viewmodels
