#include "qml/viewmodels/what_if_view_model.hpp"

#include "core/cellar/searching.hpp"
#include "qml/viewmodels/barrel_rows.hpp"
#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/outlook_text.hpp"
#include "qml/viewmodels/time_axis.hpp"

#include <algorithm>
#include <cmath>

namespace spile::viewmodels {

namespace {

constexpr auto tapsSettled = std::chrono::milliseconds(250);  // between two taps of a stepper
constexpr double assumedCelsius = 15;  // a cellar's: common practice, no source
constexpr double coldestPlace = -5;
constexpr double warmestPlace = 40;
constexpr int othersOffered = 100;
constexpr double wholePercent = 100;
const Volume assumedSize = litres(200);

}  // namespace

WhatIfViewModel::WhatIfViewModel(Context& context, BarrelViewModel& barrel,
                                 OutlookViewModel& outlook, OutlookService& service,
                                 QObject* parent)
    : QObject(parent), context_(context), barrel_(barrel), outlook_(outlook), service_(service)
{
    settling_.setSingleShot(true);
    settling_.setInterval(tapsSettled);
    connect(&settling_, &QTimer::timeout, this, &WhatIfViewModel::compute);
    connect(&barrel_, &BarrelViewModel::changed, this, [this] {
        if (isHidden()) {
            reset();
        }
    });
    connect(&outlook_, &OutlookViewModel::changed, this, &WhatIfViewModel::changed);
}

void WhatIfViewModel::begin()
{
    others_.clear();
    climate_.reset();
    reset();
    readAround();
}

void WhatIfViewModel::reset()
{
    celsius_.reset();
    topUp_.reset();
    other_ = -1;
    sharePercent_ = 50;
    then_.reset();
    error_.clear();
    ++asked_;
    settling_.stop();
    emit changed();
}

// The air of its place, and the other full barrels.
void WhatIfViewModel::readAround()
{
    struct Found {
        std::vector<cellar::ClimateRow> climate;
        std::vector<cellar::BarrelRow> full;
    };
    context_.workers.look(
        this,
        [place = barrel_.row().placeId,
         now = context_.formats.now()](ledger::Database& database) -> Result<Found> {
            Found found;
            if (place) {
                SPILE_ASSIGN(climate, cellar::climatesOf(database, *place));
                found.climate = std::move(climate);
            }
            SPILE_ASSIGN(full, cellar::searchBarrels(database, {{}, cellar::Which::Full, now}, {},
                                                     othersOffered));
            found.full = std::move(full.rows);
            return found;
        },
        [this, barrel = barrel_.row().barrel](Result<Found> found) {
            if (!found || barrel != barrel_.row().barrel) {
                return;
            }
            others_ = std::move(found->full);
            std::erase_if(others_, [&](const auto& row) { return row.barrel == barrel; });
            climate_ = found->climate.empty() ? std::nullopt : std::optional(found->climate.back());
            emit changed();
        });
}

void WhatIfViewModel::changeSoon()
{
    error_.clear();
    ++asked_;
    if (isAnything()) {
        settling_.start();
    } else {
        then_.reset();
        settling_.stop();
    }
    emit changed();
}

void WhatIfViewModel::compute()
{
    if (isHidden() || !isAnything()) {
        return;
    }
    context_.workers.look(
        this,
        [barrel = barrel_.row().barrel, model = service_.model(), change = change(),
         now = context_.formats.now()](ledger::Database& database) {
            return outlook::outlookIf(database, model, barrel, now, change);
        },
        [this, asked = asked_](Result<outlook::BarrelOutlook> outlook) {
            if (asked != asked_) {
                return;
            }
            if (outlook) {
                then_ = std::move(*outlook);
            } else {
                then_.reset();
                error_ = textOf(outlook.error());
            }
            emit changed();
        });
}

Volume WhatIfViewModel::held() const
{
    return barrel_.row().volume.value_or(barrel_.row().size.value_or(assumedSize));
}

outlook::WhatIf WhatIfViewModel::change() const
{
    outlook::WhatIf change;
    if (celsius_) {
        change.temperature = celsius(*celsius_);
    }
    if (topUp_) {
        change.replacedFraction = *topUp_ / (held() + *topUp_);
    }
    if (other_ >= 0) {
        change.blendedWith = others_[static_cast<std::size_t>(other_)].barrel;
        change.blendedShare = sharePercent_ / wholePercent;
    }
    return change;
}

void WhatIfViewModel::stepTemperature(int count)
{
    const double placed = climate_ ? inCelsius(climate_->temperature) : assumedCelsius;
    if (!celsius_) {
        celsius_ = placed;
    } else if (us()) {
        celsius_ = inCelsius(fahrenheit(std::round(inFahrenheit(celsius(*celsius_))) + count));
    } else {
        constexpr double stepsPerDegree = 2;
        celsius_ = (std::round(*celsius_ * stepsPerDegree) + count) / stepsPerDegree;
    }
    celsius_ = std::clamp(*celsius_, coldestPlace, warmestPlace);
    changeSoon();
}

Volume WhatIfViewModel::stepSize() const { return us() ? usGallons(0.25) : litres(1); }

void WhatIfViewModel::stepTopUp(int count)
{
    const double steps = topUp_ ? std::round(*topUp_ / stepSize()) + count : 1;
    topUp_ = std::clamp(steps * stepSize(), stepSize(), held());
    changeSoon();
}

void WhatIfViewModel::chooseOther(int index)
{
    if (index >= 0 && index < static_cast<int>(others_.size())) {
        other_ = index == other_ ? -1 : index;
        changeSoon();
    }
}

void WhatIfViewModel::stepShare(int count)
{
    constexpr int least = 1;
    constexpr int most = 99;
    sharePercent_ = std::clamp(sharePercent_ + count, least, most);
    changeSoon();
}

QString WhatIfViewModel::placeNow() const
{
    return climate_ ? tr("%1 now, recorded %2", "a temperature, when")
                          .arg(context_.formats.temperature(climate_->temperature),
                               context_.formats.fromNow(climate_->at))
                    : tr("Never recorded; taken as %1.")
                          .arg(context_.formats.temperature(celsius(assumedCelsius)));
}

QString WhatIfViewModel::temperature() const
{
    if (!celsius_) {
        return {};
    }
    return us() ? context_.formats.locale.toString(inFahrenheit(celsius(*celsius_)), 'f', 0)
                : context_.formats.locale.toString(*celsius_, 'f', 1);
}

QString WhatIfViewModel::temperatureUnit() const
{
    return us() ? QStringLiteral("°F") : QStringLiteral("°C");
}

QString WhatIfViewModel::temperatureStep() const
{
    return context_.formats.locale.toString(us() ? 1.0 : 0.5, 'f', us() ? 0 : 1);
}

QString WhatIfViewModel::temperatureBigStep() const
{
    return context_.formats.locale.toString(us() ? 10.0 : 5.0, 'f', us() ? 0 : 1);
}

QString WhatIfViewModel::topUp() const
{
    return topUp_ ? context_.formats.volume(*topUp_) : QString();
}

QString WhatIfViewModel::volumeStep() const { return context_.formats.volume(stepSize()); }
QString WhatIfViewModel::bigVolumeStep() const
{
    return context_.formats.volume(10.0 * stepSize());
}

QList<QString> WhatIfViewModel::others() const
{
    QList<QString> names;
    for (const cellar::BarrelRow& row : others_) {
        names << (row.beer.empty() ? nameOf(row)
                                   : tr("%1, %2", "a barrel, a beer")
                                         .arg(nameOf(row), QString::fromStdString(row.beer)));
    }
    return names;
}

QString WhatIfViewModel::share() const { return context_.formats.locale.toString(sharePercent_); }

QString WhatIfViewModel::adviceNow() const { return outlook_.advice(); }

QString WhatIfViewModel::adviceThen() const
{
    return then_ ? OutlookText::advice(shortOf(*then_), context_.formats) : QString();
}

QString WhatIfViewModel::bestOf(const std::optional<outlook::BarrelOutlook>& outlook) const
{
    if (!outlook || outlook->advice == outlook::Advice::NoWindows) {
        return {};
    }
    return tr("%1: %2", "two dates, a chance")
        .arg(OutlookText::span(shortOf(*outlook), context_.formats),
             context_.formats.chance(outlook->bestChance));
}

QString WhatIfViewModel::tasteOf(const std::optional<outlook::BarrelOutlook>& outlook) const
{
    return outlook ? context_.formats.date(outlook->next.at) : QString();
}

QString WhatIfViewModel::bestNow() const { return bestOf(outlook_.outlook()); }
QString WhatIfViewModel::bestThen() const { return bestOf(then_); }
QString WhatIfViewModel::tasteNow() const { return tasteOf(outlook_.outlook()); }
QString WhatIfViewModel::tasteThen() const { return tasteOf(then_); }

QList<QPointF> WhatIfViewModel::insideThen() const
{
    QList<QPointF> points;
    if (then_) {
        for (const outlook::ChancePoint& point : then_->chances) {
            constexpr qreal tenths = 10;
            points << QPointF(daysSince(then_->filled, point.at), tenths * point.within);
        }
    }
    return points;
}

}  // namespace spile::viewmodels
