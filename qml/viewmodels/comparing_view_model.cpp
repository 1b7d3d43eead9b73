#include "qml/viewmodels/comparing_view_model.hpp"

#include "core/cellar/acts/correcting.hpp"
#include "qml/viewmodels/barrel_rows.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/notice.hpp"
#include "qml/viewmodels/settings.hpp"
#include "qml/viewmodels/words.hpp"

#include <algorithm>

namespace spile::viewmodels {

namespace {

// More than this reads as a wall of numbers; the barrel's history has the rest.
constexpr qsizetype earlierMost = 3;

}  // namespace

QVariant ComparedRows::data(const QModelIndex& index, int role) const
{
    const ComparedLine* line = rowAt(index.row());
    if (line == nullptr) {
        return {};
    }
    switch (role) {
        case Name:
            return line->name;
        case Now:
            return line->now;
        case Before:
            return line->before;
        case Direction:
            return line->direction;
        default:
            return {};
    }
}

QHash<int, QByteArray> ComparedRows::roleNames() const
{
    return {{Name, "name"}, {Now, "now"}, {Before, "before"}, {Direction, "direction"}};
}

ComparingViewModel::ComparingViewModel(Context& context, QObject* parent)
    : QObject(parent), context_(context)
{
}

void ComparingViewModel::show(const SubjectId& barrel, const EntryId& taste)
{
    barrel_ = barrel;
    taste_ = taste;
    recorded_.reset();
    said_.clear();
    saying_ = loaded_ = false;
    rows_.replace({});
    const auto last = idOf<SubjectId>(context_.settings.lastPerson());
    person_ = last.isZero() ? std::nullopt : std::optional(last);
    readAgain();
    emit changed();
}

void ComparingViewModel::readAgain()
{
    struct Found {
        std::optional<cellar::BarrelRow> row;
        cellar::BarrelHistory history;
    };
    context_.workers.look(
        this,
        [barrel = barrel_](ledger::Database& database) -> Result<Found> {
            SPILE_ASSIGN(row, cellar::barrelById(database, barrel));
            SPILE_ASSIGN(history, cellar::historyOf(database, barrel));
            return Found{std::move(row), std::move(history)};
        },
        [this, taste = taste_](Result<Found> found) {
            if (taste != taste_) {
                return;
            }
            if (!found) {
                context_.notice.refuse(textOf(found.error()));
                return;
            }
            barrelName_ = found->row ? nameOf(*found->row) : QString();
            compare(found->history);
            loaded_ = true;
            emit changed();
        });
}

QString ComparingViewModel::beforeText(const std::vector<cellar::TasteRow>& earlier,
                                       const std::string& attribute) const
{
    QStringList parts;
    for (auto taste = earlier.rbegin(); taste != earlier.rend(); ++taste) {
        const auto score = taste->scores.find(attribute);
        if (score != taste->scores.end() && score->second && parts.size() < earlierMost) {
            parts << tr("%1 %2, %3", "score, taster, date")
                         .arg(context_.formats.locale.toString(
                                  static_cast<qlonglong>(*score->second)),
                              QString::fromStdString(taste->person),
                              context_.formats.date(taste->at));
        }
    }
    return parts.isEmpty() ? tr("not scored before") : parts.join(QLatin1Char('\n'));
}

void ComparingViewModel::compare(const cellar::BarrelHistory& history)
{
    std::vector<cellar::TasteRow> earlier = history.tastings;
    const auto own = std::find_if(earlier.begin(), earlier.end(),
                                  [&](const auto& taste) { return taste.entry == taste_; });
    if (own == earlier.end()) {
        return;
    }
    const cellar::TasteRow now = *own;
    earlier.erase(own);
    // Only those of this fill: what the barrel held before says nothing about this beer.
    if (!history.fills.empty()) {
        const Instant since = history.fills.back().at;
        std::erase_if(earlier, [&](const auto& taste) { return taste.at < since; });
    }
    summary_ = earlier.empty()
                   ? tr("This is the first sheet of this fill. What would you have it become?")
                   : tr("Beside %n earlier sheet(s). What would you have it become?", "",
                        static_cast<int>(earlier.size()));
    std::vector<ComparedLine> lines;
    for (const auto& [attribute, score] : now.scores) {
        if (!score) {
            continue;  // what was not judged has no direction either
        }
        ComparedLine line;
        line.attribute = QString::fromStdString(attribute);
        line.name = capitalised(word(attribute));
        line.now = context_.formats.locale.toString(static_cast<qlonglong>(*score));
        line.before = beforeText(earlier, attribute);
        const auto said = said_.find(attribute);
        line.direction = said == said_.end() ? NotSaid : static_cast<int>(said->second);
        lines.push_back(std::move(line));
    }
    rows_.replace(std::move(lines));
}

void ComparingViewModel::say(int index, Direction direction)
{
    const ComparedLine* line = rows_.rowAt(index);
    if (line == nullptr || saying_ || direction == NotSaid || line->direction == direction) {
        return;
    }
    saying_ = true;
    context_.notice.forgetRefusal();
    auto wanted = said_;
    wanted[line->attribute.toStdString()] = static_cast<cellar::Direction>(direction);
    cellar::Circumstance by;
    by.person = person_;
    by.at = Formats::eventTime(context_.formats.now());
    context_.workers.act(
        this,
        [barrel = barrel_, taste = taste_, wanted, by,
         before = recorded_](cellar::Cellar& cellar) -> Result<EntryId> {
            // The first direction is a record, each later one a correction of it.
            if (!before) {
                return cellar::recordDirections(cellar, barrel, taste, wanted, by);
            }
            SPILE_TRY(cellar::amend(cellar, *before, cellar::directionFields(wanted)));
            return *before;
        },
        [this, wanted](Result<EntryId> entry) {
            saying_ = false;
            if (!entry) {
                context_.notice.refuse(textOf(entry.error()));
                return;
            }
            recorded_ = *entry;
            said_ = wanted;
            readAgain();
        });
}

}  // namespace spile::viewmodels
