#include "qml/viewmodels/outlook_view_model.hpp"

#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/outlook_text.hpp"
#include "qml/viewmodels/time_axis.hpp"
#include "qml/viewmodels/words.hpp"

#include <algorithm>

namespace spile::viewmodels {

namespace {

constexpr qreal lowestRung = 1;
constexpr qreal rungSpan = 8;
constexpr qreal chanceTenths = 10;
constexpr int axisMonths = 6;  // words of an axis on a phone

}  // namespace

OutlookViewModel::OutlookViewModel(Context& context, BarrelViewModel& barrel,
                                   OutlookService& service, QObject* parent)
    : QObject(parent), context_(context), barrel_(barrel), service_(service)
{
    connect(&barrel_, &BarrelViewModel::changed, this, &OutlookViewModel::barrelChanged);
    connect(&service_, &OutlookService::learned, this, &OutlookViewModel::refresh);
    connect(&context_.workers, &Workers::changed, this, &OutlookViewModel::refresh);
}

void OutlookViewModel::setShown(bool shown)
{
    if (std::exchange(shown_, shown) != shown) {
        clear();
        shownBarrel_ = barrel_.row().barrel;
        refresh();
    }
}

// Another barrel, or scores that must not be seen any more: what is there goes at once.
void OutlookViewModel::barrelChanged()
{
    if (shownBarrel_ != barrel_.row().barrel || mayNotBeSeen()) {
        clear();
        shownBarrel_ = barrel_.row().barrel;
    }
    if (!outlook_) {
        refresh();
    }
    emit changed();
}

void OutlookViewModel::clear()
{
    outlook_.reset();
    attributes_.replace({});
    calls_.replace({});
    inside_.clear();
    past_.clear();
    problem_.clear();
    chanceRead_.clear();
    attributesRead_.clear();
    emit changed();
    emit readerMoved();
}

void OutlookViewModel::refresh()
{
    if (!shown_ || shownBarrel_.isZero() || mayNotBeSeen()) {
        return;
    }
    struct Found {
        outlook::BarrelOutlook outlook;
        cellar::BarrelHistory history;
    };
    context_.workers.look(
        this,
        [barrel = shownBarrel_, model = service_.model(),
         now = context_.formats.now()](ledger::Database& database) -> Result<Found> {
            SPILE_ASSIGN(outlook, outlook::outlookOf(database, model, barrel, now));
            SPILE_ASSIGN(history, cellar::historyOf(database, barrel));
            return Found{std::move(outlook), std::move(history)};
        },
        [this, barrel = shownBarrel_](Result<Found> found) {
            if (!shown_ || barrel != shownBarrel_ || mayNotBeSeen()) {
                return;
            }
            if (!found) {
                clear();
                problem_ = barrel_.isFilled()
                               ? textOf(found.error())
                               : tr("The barrel is empty: there is nothing to come.");
            } else {
                problem_.clear();
                take(std::move(found->outlook), found->history);
            }
            emit changed();
        });
}

qreal OutlookViewModel::days(Instant at) const { return daysSince(outlook_->filled, at); }

void OutlookViewModel::take(outlook::BarrelOutlook outlook, const cellar::BarrelHistory& history)
{
    const bool first = !outlook_.has_value();
    outlook_ = std::move(outlook);
    const Formats& formats = context_.formats;
    TimeAxis axis = monthsBetween(outlook_->filled, outlook_->horizon, axisMonths, formats);
    months_ = std::move(axis.words);
    monthPlaces_ = std::move(axis.places);
    std::vector<AttributeLine> lines;
    for (const outlook::AttributeOutlook& attribute : outlook_->attributes) {
        lines.push_back(lineOf(attribute, *outlook_, formats));
    }
    attributes_.replace(std::move(lines));
    inside_.clear();
    past_.clear();
    for (const outlook::ChancePoint& point : outlook_->chances) {
        inside_ << QPointF(days(point.at), chanceTenths * point.within);
        past_ << QPointF(days(point.at), chanceTenths * point.past);
    }
    takeCalls(history);
    readAt(first ? days(outlook_->now) : reader_);
}

// What the brewer decided in this fill, beside what the outlook said on that day.
void OutlookViewModel::takeCalls(const cellar::BarrelHistory& history)
{
    const Formats& formats = context_.formats;
    std::vector<SaidLine> lines;
    for (const cellar::OtherRow& fact : history.others) {
        if (fact.kind != "verdict" || fact.at < outlook_->filled) {
            continue;
        }
        lines.push_back(
            {textOf(fact.entry),
             tr("%1: %2 on %3", "a person, a verdict, a date")
                 .arg(fact.person.empty() ? tr("Somebody") : QString::fromStdString(fact.person),
                      word(fact.text), formats.day(fact.at)),
             !fact.chance ? tr("No outlook was known that day.")
             : fact.best  ? tr("Outlook that day: %1 that all was inside, best on %2.")
                               .arg(formats.chance(*fact.chance), formats.day(*fact.best))
                         : tr("Outlook that day: %1 that all was inside.")
                               .arg(formats.chance(*fact.chance))});
    }
    std::reverse(lines.begin(), lines.end());
    calls_.replace(std::move(lines));
}

void OutlookViewModel::readAt(qreal day)
{
    if (!outlook_) {
        return;
    }
    reader_ = std::clamp(day, 0.0, days(outlook_->horizon));
    const Instant at = daysAfter(outlook_->filled, reader_);
    const auto about = std::chrono::duration_cast<Milliseconds>(
        (outlook_->horizon - outlook_->filled) / 40);  // as near as a finger can be
    attributesRead_.clear();
    for (const outlook::AttributeOutlook& attribute : outlook_->attributes) {
        attributesRead_ << readingAt(attribute, at, about, context_.formats);
    }
    chanceRead_.clear();
    const auto& chances = outlook_->chances;
    if (!chances.empty()) {
        const auto next =
            std::find_if(chances.begin(), chances.end() - 1,
                         [at](const outlook::ChancePoint& point) { return point.at >= at; });
        chanceRead_ =
            at < chances.front().at
                ? tr("%1: that is past.", "a date").arg(context_.formats.day(at))
                : tr("%1: %2 that all is inside, %3 that something has gone too far",
                     "a date, two chances")
                      .arg(context_.formats.day(at), context_.formats.chance(next->within),
                           context_.formats.chance(next->past));
    }
    emit readerMoved();
}

QString OutlookViewModel::advice() const
{
    return outlook_ ? OutlookText::advice(shortOf(*outlook_), context_.formats) : QString();
}

bool OutlookViewModel::hasWindows() const
{
    return outlook_ && outlook_->advice != outlook::Advice::NoWindows;
}

QString OutlookViewModel::nextDate() const
{
    return outlook_ ? context_.formats.date(outlook_->next.at) : QString();
}

QString OutlookViewModel::nextReason() const
{
    return outlook_ ? OutlookText::reason(outlook_->next, context_.formats) : QString();
}

QRectF OutlookViewModel::scoreRange() const
{
    return outlook_ ? QRectF(0, lowestRung, days(outlook_->horizon), rungSpan) : QRectF();
}

QRectF OutlookViewModel::chanceRange() const
{
    if (!outlook_) {
        return {};
    }
    return {0, 0, days(outlook_->horizon), chanceTenths};
}

QList<QString> OutlookViewModel::rungs()
{
    return {tr("none"), tr("slight"), tr("clear"), tr("strong"), tr("dominant")};
}

QList<qreal> OutlookViewModel::rungPlaces() { return {1, 3, 5, 7, 9}; }

QList<QString> OutlookViewModel::chanceWords() const
{
    return {tr("%1 in 10", "a place of an axis").arg(0),
            tr("%1 in 10", "a place of an axis").arg(5),
            tr("%1 in 10", "a place of an axis").arg(10)};
}

QList<qreal> OutlookViewModel::chancePlaces() { return {0, 5, 10}; }

QList<QPointF> OutlookViewModel::bestLower() const
{
    return hasWindows() ? QList<QPointF>{{days(outlook_->bestFrom), 0}, {days(outlook_->bestTo), 0}}
                        : QList<QPointF>();
}

QList<QPointF> OutlookViewModel::bestUpper() const
{
    return hasWindows() ? QList<QPointF>{{days(outlook_->bestFrom), chanceTenths},
                                         {days(outlook_->bestTo), chanceTenths}}
                        : QList<QPointF>();
}

QList<QPointF> OutlookViewModel::nowInScores() const
{
    if (!outlook_) {
        return {};
    }
    const qreal now = days(outlook_->now);
    return {{now, lowestRung}, {now, lowestRung + rungSpan}};
}

QString OutlookViewModel::chanceSpoken() const
{
    return tr("The chance over time that all is inside. %1").arg(advice());
}

}  // namespace spile::viewmodels
