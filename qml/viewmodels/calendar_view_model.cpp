#include "qml/viewmodels/calendar_view_model.hpp"

#include "core/scan/barrel_code.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/notice.hpp"
#include "qml/viewmodels/outlook_text.hpp"
#include "qml/viewmodels/time_axis.hpp"

#include <QDateTime>
#include <algorithm>

namespace spile::viewmodels {

namespace {

constexpr int calendarPage = 50;
constexpr int calendarMonths = 24;
constexpr int calendarWords = 8;

}  // namespace

QVariant CalendarRows::data(const QModelIndex& index, int role) const
{
    const CalendarLine* line = rowAt(index.row());
    if (line == nullptr) {
        return {};
    }
    switch (role) {
        case BarrelId:
            return line->id;
        case Title:
            return line->title;
        case Contents:
            return line->contents;
        case Best:
            return line->best;
        case Next:
            return line->next;
        case From:
            return line->from;
        case To:
            return line->to;
        case Mark:
            return line->mark;
        default:
            return {};
    }
}

QHash<int, QByteArray> CalendarRows::roleNames() const
{
    return {{BarrelId, "barrelId"},
            {Title, "title"},
            {Contents, "contents"},
            {Best, "best"},
            {Next, "next"},
            {From, "from"},
            {To, "to"},
            {Mark, "mark"}};
}

CalendarViewModel::CalendarViewModel(Context& context, OutlookService& service, QObject* parent)
    : QObject(parent), context_(context), service_(service), wanted_(calendarPage)
{
    connect(&context_.workers, &Workers::changed, this, &CalendarViewModel::refresh);
    connect(&service_, &OutlookService::learned, this, &CalendarViewModel::changed);
}

void CalendarViewModel::setShown(bool shown)
{
    if (std::exchange(shown_, shown) != shown) {
        wanted_ = calendarPage;
        refresh();
    }
}

void CalendarViewModel::refresh()
{
    if (!shown_) {
        return;
    }
    context_.workers.look(
        this,
        [limit = wanted_](ledger::Database& database) {
            return cellar::foreseenBarrels(database, {}, limit);
        },
        [this](Result<std::vector<cellar::ForeseenBarrel>> rows) {
            if (rows) {
                take(*rows);
            } else {
                context_.notice.refuse(textOf(rows.error()));
            }
        });
}

void CalendarViewModel::more()
{
    if (!complete_ && rows_.rowCount() == wanted_) {
        wanted_ += calendarPage;
        refresh();
    }
}

void CalendarViewModel::take(const std::vector<cellar::ForeseenBarrel>& rows)
{
    const QDate today = QDateTime::fromMSecsSinceEpoch(toMs(context_.formats.now())).date();
    const QDate first(today.year(), today.month(), 1);
    from_ = instantFromMs(first.startOfDay().toMSecsSinceEpoch());
    to_ = instantFromMs(first.addMonths(calendarMonths).startOfDay().toMSecsSinceEpoch());
    TimeAxis axis = monthsBetween(from_, to_, calendarWords, context_.formats);
    months_ = std::move(axis.words);
    monthPlaces_.clear();
    for (const qreal place : axis.places) {
        monthPlaces_ << place / daysSince(from_, to_);
    }
    std::vector<CalendarLine> lines;
    lines.reserve(rows.size());
    for (const cellar::ForeseenBarrel& row : rows) {
        lines.push_back(lineOf(row));
    }
    complete_ = static_cast<int>(rows.size()) < wanted_;
    loaded_ = true;
    rows_.replace(std::move(lines));
    emit changed();
}

qreal CalendarViewModel::shareOf(Instant at) const
{
    return std::clamp(daysSince(from_, at) / daysSince(from_, to_), 0.0, 1.0);
}

CalendarLine CalendarViewModel::lineOf(const cellar::ForeseenBarrel& row) const
{
    const Formats& formats = context_.formats;
    const cellar::KeptOutlook& outlook = row.outlook;
    CalendarLine line;
    line.id = textOf(outlook.barrel);
    line.title = QString::fromStdString(row.mark.empty() ? scan::shown(row.code) : row.mark);
    line.contents = QString::fromStdString(row.beer);
    line.next = tr("Taste on %1").arg(formats.day(outlook.nextTasting));
    line.mark = outlook.nextTasting <= to_ ? shareOf(outlook.nextTasting) : -1;
    if (!outlook.best) {
        line.best = tr("No windows yet");
        return line;
    }
    const QString span = OutlookText::span(shortOf(outlook), formats);
    if (outlook.advice == cellar::advice::pull) {
        line.best =
            tr("Ready by its scores: %1", "a chance").arg(formats.chance(outlook.best->chanceNow));
    } else if (outlook.advice == cellar::advice::tooFar) {
        line.best = tr("May have gone too far");
    } else {
        line.best =
            tr("%1: %2", "two dates, a chance").arg(span, formats.chance(outlook.best->chance));
    }
    if (outlook.best->from <= to_ && outlook.best->to >= from_) {
        line.from = shareOf(outlook.best->from);
        line.to = shareOf(outlook.best->to);
    }
    return line;
}

qreal CalendarViewModel::now() const { return loaded_ ? shareOf(context_.formats.now()) : 0; }

}  // namespace spile::viewmodels
