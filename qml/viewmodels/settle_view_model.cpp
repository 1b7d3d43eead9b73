#include "qml/viewmodels/settle_view_model.hpp"

#include "core/cellar/acts/settling.hpp"
#include "core/cellar/lots.hpp"
#include "core/cellar/queries.hpp"
#include "qml/viewmodels/barrel_rows.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/open_flights_view_model.hpp"

#include <algorithm>
#include <array>

namespace spile::viewmodels {

namespace {

using cellar::Settling;
using cellar::Unsettled;
using ledger::Database;

constexpr int mostLookedAt = 100;
constexpr std::size_t recordsShown = 50;

bool isSame(const cellar::UnsettledRow& one, const cellar::UnsettledRow& other)
{
    return one.what == other.what && one.entry == other.entry && one.subject == other.subject &&
           one.device == other.device;
}

Result<std::string> nameOfKind(Database& database, const char* kind, const SubjectId& subject)
{
    constexpr int page = 200;
    SubjectId after;
    for (bool more = true; more;) {
        SPILE_ASSIGN(rows, cellar::named(database, kind, after, page));
        for (const cellar::NamedRow& row : rows) {
            if (row.subject == subject) {
                return row.name;
            }
            after = row.subject;
        }
        more = rows.size() == page;
    }
    return std::string();
}

Result<std::string> nameOfAny(Database& database, const SubjectId& subject)
{
    SPILE_ASSIGN(barrel, cellar::barrelById(database, subject));
    if (barrel) {
        return nameOf(*barrel).toStdString();
    }
    SPILE_ASSIGN(lot, cellar::lotById(database, subject));
    if (lot) {
        return lot->name;
    }
    for (const char* kind : {"person", "place", "batch", "target", "device"}) {
        SPILE_ASSIGN(name, nameOfKind(database, kind, subject));
        if (!name.empty()) {
            return name;
        }
    }
    return std::string();
}

void addIds(const ledger::Value& value, std::vector<SubjectId>& ids)
{
    if (const auto* bytes = value.as<Bytes>()) {
        if (const auto id = SubjectId::fromBytes(*bytes)) {
            ids.push_back(*id);
        }
    } else if (const auto* list = value.as<ledger::List>()) {
        for (const ledger::Value& item : *list) {
            addIds(item, ids);
        }
    }
}

// What the choices name.
std::vector<SubjectId> idsIn(const std::vector<cellar::Choice>& choices)
{
    std::vector<SubjectId> ids;
    for (const cellar::Choice& choice : choices) {
        if (choice.does == Settling::Adopt) {
            ids.push_back(choice.subject);
        }
        addIds(choice.value, ids);
    }
    return ids;
}

Result<std::map<EntryId, QString>> fillsOf(Database& database, const SubjectId& barrel,
                                           const Formats& formats)
{
    std::map<EntryId, QString> fills;
    SPILE_ASSIGN(history, cellar::historyOf(database, barrel));
    for (const cellar::FillRow& fill : history.fills) {
        QStringList parts;
        if (fill.volume) {
            parts << formats.volume(*fill.volume);
        }
        if (!fill.beer.empty()) {
            parts << QString::fromStdString(fill.beer);
        }
        fills[fill.entry] = parts.join(QStringLiteral(", "));
    }
    return fills;
}

}  // namespace

SettleViewModel::SettleViewModel(Context& context, QObject* parent)
    : QObject(parent), context_(context)
{
    connect(&context_.workers, &Workers::changed, this, &SettleViewModel::refresh);
}

void SettleViewModel::begin(const cellar::UnsettledRow& row)
{
    row_ = row;
    choices_.clear();
    facts_ = {};
    name_.clear();
    error_.clear();
    ++asked_;
    begun_ = true;
    loaded_ = gone_ = busy_ = false;
    progress_ = -1;
    emit changed();
    refresh();
}

Result<SettleViewModel::Read> SettleViewModel::read(cellar::Cellar& cellar,
                                                    const cellar::UnsettledRow& row,
                                                    const Formats& formats)
{
    Read read;
    Database& database = cellar.database();
    SPILE_ASSIGN(membership, ledger::membershipOf(database, cellar.ledger().device()));
    read.mayAdmit = membership.mayAdmit;
    SPILE_ASSIGN(rows, cellar::toSettle(database, mostLookedAt));
    const auto now =
        std::find_if(rows.begin(), rows.end(), [&](const auto& one) { return isSame(one, row); });
    if (now == rows.end()) {
        return read;
    }
    read.row = *now;
    SPILE_ASSIGN(choices, cellar::choicesFor(database, *now));
    choices.resize(std::min(choices.size(), recordsShown));
    read.choices = std::move(choices);
    for (const SubjectId& id : idsIn(read.choices)) {
        if (!read.facts.names.contains(id)) {
            SPILE_ASSIGN(name, nameOfAny(database, id));
            read.facts.names[id] = name;
        }
    }
    if (row.what == Unsettled::FilledTwice) {
        SPILE_ASSIGN(fills, fillsOf(database, row.subject, formats));
        read.facts.fills = std::move(fills);
    }
    return read;
}

void SettleViewModel::refresh()
{
    if (!begun_) {
        return;
    }
    context_.workers.read(
        this,
        [row = row_, formats = context_.formats](cellar::Cellar& cellar) {
            return read(cellar, row, formats);
        },
        [this, asked = asked_](Result<Read> found) {
            if (asked != asked_) {
                return;
            }
            if (found) {
                take(std::move(*found));
            } else {
                error_ = textOf(found.error());
            }
            emit changed();
        });
}

void SettleViewModel::take(Read read)
{
    loaded_ = true;
    gone_ = !read.row;
    row_ = read.row.value_or(row_);
    choices_ = std::move(read.choices);
    facts_ = std::move(read.facts);
    mayAdmit_ = read.mayAdmit;
}

QStringList SettleViewModel::choices() const
{
    QStringList all;
    for (const cellar::Choice& choice : choices_) {
        all << SettlingText::choice(row_, choice, facts_, context_.formats);
    }
    return all;
}

QStringList SettleViewModel::hints() const
{
    QStringList all;
    for (const cellar::Choice& choice : choices_) {
        all << SettlingText::hint(choice, context_.formats);
    }
    return all;
}

QString SettleViewModel::missing() const
{
    return !choices_.empty() && needsDesk(choices_.front().does) && !mayAdmit_
               ? SettlingText::deskOnly()
               : QString();
}

bool SettleViewModel::asksName() const
{
    return !choices_.empty() && choices_.front().does == Settling::Admit && mayAdmit_;
}

QString SettleViewModel::allText() const
{
    return choices_.size() > 1 && choices_.front().does == Settling::Adopt
               ? tr("Let all %n record(s) count", "", static_cast<int>(row_.count))
               : QString();
}

void SettleViewModel::setName(const QString& name)
{
    if (name != name_) {
        name_ = name;
        error_.clear();
        emit changed();
    }
}

void SettleViewModel::ended(const Error& error)
{
    busy_ = false;
    error_ = textOf(error);
    emit changed();
}

void SettleViewModel::choose(int index)
{
    if (busy_ || index < 0 || index >= static_cast<int>(choices_.size()) || !missing().isEmpty()) {
        return;
    }
    const cellar::Choice choice = choices_[static_cast<std::size_t>(index)];
    if (choice.does == Settling::Admit && name_.trimmed().isEmpty()) {
        error_ = tr("Type what the device shall be called.");
        emit changed();
        return;
    }
    busy_ = true;
    error_.clear();
    context_.workers.act(
        this,
        [row = row_, choice, who = holderOf(context_), name = name_.trimmed().toStdString()](
            cellar::Cellar& cellar) { return cellar::settle(cellar, row, choice, who, name); },
        [this, row = row_, choice, name = name_.trimmed()](const Result<void>& done) {
            if (!done) {
                ended(done.error());
                return;
            }
            busy_ = false;
            emit settled(SettlingText::done(row, choice, name));
        });
}

void SettleViewModel::letAllCount()
{
    if (busy_ || !missing().isEmpty()) {
        return;
    }
    busy_ = true;
    progress_ = 0;
    error_.clear();
    emit changed();
    context_.workers.work(
        this,
        [device = row_.device, who = holderOf(context_)](cellar::Cellar& cellar, const Job& job) {
            return cellar::adoptAll(cellar, device, who, job);
        },
        [this](std::uint64_t done, std::uint64_t all) {
            progress_ = all == 0 ? 0.0 : static_cast<qreal>(done) / static_cast<qreal>(all);
            emit changed();
        },
        [this](const Result<std::uint64_t>& done) {
            progress_ = -1;
            if (!done) {
                ended(done.error());
                return;
            }
            busy_ = false;
            emit settled(SettlingText::allCount(*done));
        });
}

void SettleViewModel::stop() { context_.workers.cancelWork(); }

}  // namespace spile::viewmodels
