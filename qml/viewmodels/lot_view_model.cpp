#include "qml/viewmodels/lot_view_model.hpp"

#include "core/cellar/acts/lots.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/lot_text.hpp"
#include "qml/viewmodels/notice.hpp"
#include "qml/viewmodels/taking_back.hpp"
#include "qml/viewmodels/words.hpp"

#include <algorithm>

namespace spile::viewmodels {

LotViewModel::LotViewModel(Context& context, PeopleViewModel& people, QObject* parent)
    : QObject(parent), context_(context), people_(people)
{
    connect(&context_.workers, &Workers::changed, this, &LotViewModel::refresh);
}

void LotViewModel::show(const SubjectId& lot)
{
    if (lot != lot_) {
        lot_ = lot;
        page_ = {};
        loaded_ = false;
        parts_.replace({});
        emit changed();
    }
    refresh();
}

Result<LotViewModel::Page> LotViewModel::read(ledger::Database& database, const SubjectId& lot)
{
    SPILE_ASSIGN(row, cellar::lotById(database, lot));
    if (!row) {
        return fail(ErrorCode::NotFound, "lot", lot.hex());
    }
    SPILE_ASSIGN(history, cellar::lotHistory(database, lot));
    SPILE_ASSIGN(balance, trace::balanceOf(database, lot));
    return Page{std::move(*row), std::move(history), balance};
}

void LotViewModel::refresh()
{
    if (lot_.isZero()) {
        return;
    }
    context_.workers.look(
        this, [lot = lot_](ledger::Database& database) { return read(database, lot); },
        [this, lot = lot_](Result<Page> page) {
            if (lot != lot_) {
                return;
            }
            if (!page) {
                context_.notice.refuse(textOf(page.error()));
                return;
            }
            page_ = std::move(*page);
            loaded_ = true;
            parts_.replace(LotText::parts(page_.history, context_.formats));
            emit changed();
        });
}

QString LotViewModel::since() const
{
    return loaded_ ? tr("Since %1").arg(context_.formats.date(page_.row.at)) : QString();
}

QString LotViewModel::volumeIn() const { return context_.formats.volume(page_.row.in); }
QString LotViewModel::volumeOut() const { return context_.formats.volume(page_.row.out); }
QString LotViewModel::volumeLeft() const
{
    return context_.formats.volume(std::max(page_.row.left(), Volume{}));
}

QString LotViewModel::strength() const
{
    return page_.balance.now && page_.balance.strengthKnown
               ? context_.formats.strength(page_.balance.now->alcoholByVolume)
               : QString();
}

QString LotViewModel::strengthNote() const
{
    if (!page_.balance.now) {
        return {};
    }
    return page_.balance.strengthKnown
               ? tr("of what is left, mixed by mass")
               : tr("not known: the strength of something that came in was not measured");
}

QString LotViewModel::allergens() const
{
    QStringList words;
    for (const std::string& allergen : page_.history.allergens()) {
        words << word(allergen);
    }
    return words.join(QStringLiteral(", "));
}

QString LotViewModel::heldText() const
{
    QStringList reasons;
    for (const cellar::HoldRow& hold : page_.history.holds) {
        if (!hold.cleared) {
            reasons << word(hold.reason);
        }
    }
    return reasons.isEmpty() ? QString()
                             : tr("Held: %1. Until its result is in, nothing is packaged or "
                                  "released.")
                                   .arg(reasons.join(QStringLiteral(", ")));
}

QString LotViewModel::oddText() const
{
    const Volume missing = page_.balance.missing;
    return missing > Volume{} ? tr("By the records %1 more went out than came in. Look for what "
                                   "was not recorded.")
                                    .arg(context_.formats.volume(missing))
                              : QString();
}

void LotViewModel::act(int index)
{
    const PartLine* line = parts_.rowAt(index);
    if (line == nullptr || line->pad.isEmpty()) {
        return;
    }
    const auto entry = idOf<EntryId>(line->id);
    const auto is = [&entry](const cellar::FactRow& row) { return row.entry == entry; };
    const cellar::LotHistory& all = page_.history;
    if (line->kind == QLatin1String("finish")) {
        takeOut(entry);
    } else if (line->kind == QLatin1String("hold")) {
        const auto hold = std::find_if(all.holds.begin(), all.holds.end(), is);
        if (hold != all.holds.end()) {
            emit clearWanted(*hold);
        }
    } else if (line->kind == QLatin1String("package")) {
        const auto package = std::find_if(all.packages.begin(), all.packages.end(), is);
        if (package != all.packages.end()) {
            emit releaseWanted(*package);
        }
    }
}

void LotViewModel::actOther(int index)
{
    const PartLine* line = parts_.rowAt(index);
    if (line != nullptr && line->kind == QLatin1String("package")) {
        emit traceWanted(idOf<EntryId>(line->id));
    }
}

void LotViewModel::takeOut(const EntryId& finish)
{
    cellar::Circumstance by;
    by.person = people_.who();
    by.at = Formats::eventTime(context_.formats.now());
    context_.workers.act(
        this,
        [finish, by](cellar::Cellar& cellar) { return cellar::recordTakeOut(cellar, finish, by); },
        [this](const Result<EntryId>& taken) {
            if (taken) {
                context_.notice.tell(tr("Taken out: kept."), takeBack(context_, *taken));
            } else {
                context_.notice.refuse(textOf(taken.error()));
            }
        });
}

}  // namespace spile::viewmodels
