#include "qml/viewmodels/barrels_view_model.hpp"

#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/notice.hpp"
#include "qml/viewmodels/words.hpp"

namespace spile::viewmodels {

namespace {

constexpr int pageRows = 50;
constexpr int finishesMost = 10;

std::vector<BarrelLine> linesOf(const std::vector<cellar::BarrelRow>& rows, const Formats& formats)
{
    std::vector<BarrelLine> lines;
    lines.reserve(rows.size());
    for (const cellar::BarrelRow& row : rows) {
        lines.push_back(lineOf(row, formats));
    }
    return lines;
}

}  // namespace

DueViewModel::DueViewModel(Context& context, QObject* parent)
    : QObject(parent), context_(context), wanted_(pageRows)
{
    connect(&context_.workers, &Workers::changed, this, &DueViewModel::refresh);
}

QStringList DueViewModel::takeOuts() const
{
    QStringList all;
    for (const cellar::FinishDue& finish : finishes_) {
        all << tr("Take %1 out of %2", "an addition, a lot")
                   .arg(word(finish.substance), QString::fromStdString(finish.lotName));
    }
    return all;
}

QStringList DueViewModel::takeOutsDue() const
{
    QStringList all;
    for (const cellar::FinishDue& finish : finishes_) {
        all << context_.formats.due(finish.until);
    }
    return all;
}

QString DueViewModel::lotAt(int index) const
{
    const auto at = static_cast<std::size_t>(index);
    return index >= 0 && at < finishes_.size() ? textOf(finishes_[at].lot) : QString();
}

void DueViewModel::refresh()
{
    struct Found {
        std::vector<cellar::BarrelRow> rows;
        bool any = false;
        std::vector<cellar::FinishDue> finishes;
    };
    const Instant until = context_.formats.now();
    context_.workers.look(
        this,
        [until, limit = wanted_](ledger::Database& database) -> Result<Found> {
            SPILE_ASSIGN(rows, cellar::barrelsDue(database, until, {}, limit));
            SPILE_ASSIGN(finishes, cellar::finishesDue(database, until, finishesMost));
            Found found{std::move(rows), true, std::move(finishes)};
            if (found.rows.empty()) {
                SPILE_ASSIGN(any, cellar::barrels(database, {}, 1));
                found.any = !any.empty();
            }
            return found;
        },
        [this](Result<Found> found) {
            if (found) {
                finishes_ = std::move(found->finishes);
                take(found->rows, found->any);
            } else {
                context_.notice.refuse(textOf(found.error()));
            }
        });
}

void DueViewModel::take(const std::vector<cellar::BarrelRow>& rows, bool any)
{
    loaded_ = true;
    noBarrels_ = !any;
    complete_ = static_cast<int>(rows.size()) < wanted_;
    rows_.replace(linesOf(rows, context_.formats));
    emit changed();
}

void DueViewModel::more()
{
    if (!complete_ && rows_.rowCount() == wanted_) {
        wanted_ += pageRows;
        refresh();
    }
}

QString DueViewModel::summary() const
{
    return complete_ ? tr("%n barrel(s) to see to", "", rows_.rowCount())
                     : tr("More than %n barrel(s) to see to", "", rows_.rowCount() - 1);
}

BarrelsViewModel::BarrelsViewModel(Context& context, QObject* parent)
    : QObject(parent), context_(context), wanted_(pageRows)
{
    connect(&context_.workers, &Workers::changed, this, [this] {
        if (loaded_) {
            look();
        }
    });
}

BarrelsViewModel::~BarrelsViewModel()
{
    if (running_) {
        running_->cancel();
    }
}

QStringList BarrelsViewModel::filters() const
{
    return {tr("All"), tr("Full"), tr("Empty"), tr("On hold"), tr("Resting")};
}

void BarrelsViewModel::setSearch(const QString& text)
{
    if (text != search_) {
        search_ = text;
        refresh();
    }
}

void BarrelsViewModel::setFilter(int filter)
{
    if (filter != filter_) {
        filter_ = filter;
        refresh();
    }
}

void BarrelsViewModel::refresh()
{
    wanted_ = pageRows;
    look();
    emit changed();
}

void BarrelsViewModel::more()
{
    if (!complete_ && rows_.rowCount() >= wanted_) {
        wanted_ += pageRows;
        look();
    }
}

void BarrelsViewModel::look()
{
    if (running_) {
        running_->cancel();
    }
    running_ = std::make_shared<CancelToken>();
    const cellar::BarrelSearch wanted{search_.trimmed().toStdString(),
                                      static_cast<cellar::Which>(filter_), context_.formats.now()};
    context_.workers.look(
        this,
        [wanted, limit = wanted_, cancel = running_](ledger::Database& database) {
            return cellar::searchBarrels(database, wanted, {}, limit, Job({}, cancel.get()));
        },
        [this, cancel = running_](Result<cellar::FoundBarrels> found) {
            if (cancel != running_) {
                return;  // a newer search is on its way
            }
            if (!found) {
                context_.notice.refuse(textOf(found.error()));
                return;
            }
            loaded_ = true;
            complete_ = found->complete;
            rows_.replace(linesOf(found->rows, context_.formats));
            emit changed();
        });
}

}  // namespace spile::viewmodels
