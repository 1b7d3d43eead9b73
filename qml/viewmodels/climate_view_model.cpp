#include "qml/viewmodels/climate_view_model.hpp"

#include "qml/viewmodels/error_text.hpp"
#include "qml/viewmodels/notice.hpp"
#include "qml/viewmodels/taking_back.hpp"

#include <algorithm>
#include <cmath>

namespace spile::viewmodels {

namespace {

// A cellar's usual air, where a stepper begins: common practice, no source.
constexpr double usualCelsius = 15;
constexpr int usualPercent = 70;
constexpr double coldest = -10;
constexpr double warmest = 45;
constexpr double percent = 100;

}  // namespace

ClimateViewModel::ClimateViewModel(Context& context, PeopleViewModel& people, QObject* parent)
    : QObject(parent), context_(context), people_(people)
{
    connect(&people_, &PeopleViewModel::changed, this, &ClimateViewModel::changed);
}

void ClimateViewModel::begin(const cellar::BarrelRow& barrel)
{
    place_.clear();
    placeId_.reset();
    last_.reset();
    celsius_.reset();
    humidity_.reset();
    error_.clear();
    busy_ = false;
    emit changed();
    if (!barrel.placeId) {
        return;
    }
    struct Found {
        cellar::NamedRow room;
        std::vector<cellar::ClimateRow> rows;
    };
    context_.workers.look(
        this,
        [place = *barrel.placeId](ledger::Database& database) -> Result<Found> {
            SPILE_ASSIGN(room, cellar::roomOf(database, place));
            SPILE_ASSIGN(rows, cellar::climatesOf(database, place));
            return Found{room, std::move(rows)};
        },
        [this](Result<Found> found) {
            if (!found) {
                error_ = textOf(found.error());
            } else {
                place_ = QString::fromStdString(found->room.name);
                placeId_ = found->room.subject;
                if (!found->rows.empty()) {
                    last_ = found->rows.back();
                }
            }
            emit changed();
        });
}

QString ClimateViewModel::last() const
{
    return last_ ? tr("%1, %2 %, %3", "temperature, humidity, when")
                       .arg(context_.formats.temperature(last_->temperature))
                       .arg(std::lround(last_->relativeHumidity * percent))
                       .arg(context_.formats.fromNow(last_->at))
                 : QString();
}

QString ClimateViewModel::temperature() const
{
    if (!celsius_) {
        return {};
    }
    return us() ? context_.formats.locale.toString(inFahrenheit(celsius(*celsius_)), 'f', 0)
                : context_.formats.locale.toString(*celsius_, 'f', 1);
}

QString ClimateViewModel::temperatureUnit() const
{
    return us() ? QStringLiteral("°F") : QStringLiteral("°C");
}

QString ClimateViewModel::temperatureStep() const
{
    return context_.formats.locale.toString(us() ? 1.0 : 0.5, 'f', us() ? 0 : 1);
}

QString ClimateViewModel::temperatureBigStep() const
{
    return context_.formats.locale.toString(us() ? 10.0 : 5.0, 'f', us() ? 0 : 1);
}

QString ClimateViewModel::humidity() const
{
    return humidity_ ? context_.formats.locale.toString(*humidity_) : QString();
}

QString ClimateViewModel::missing() const
{
    if (!placeId_) {
        return tr("Say first where the barrel lies: Move it.");
    }
    if (!people_.who()) {
        return tr("Say who you are first.");
    }
    return celsius_ && humidity_ ? QString() : tr("Step to both numbers first.");
}

void ClimateViewModel::stepTemperature(int count)
{
    const double from = last_ ? inCelsius(last_->temperature) : usualCelsius;
    if (!celsius_) {
        celsius_ = from;
    } else if (us()) {
        celsius_ = inCelsius(fahrenheit(std::round(inFahrenheit(celsius(*celsius_))) + count));
    } else {
        celsius_ = (std::round(*celsius_ * 2) + count) / 2;
    }
    celsius_ = std::clamp(*celsius_, coldest, warmest);
    emit changed();
}

void ClimateViewModel::stepHumidity(int count)
{
    if (!humidity_) {
        humidity_ =
            last_ ? static_cast<int>(std::lround(last_->relativeHumidity * percent)) : usualPercent;
    } else {
        humidity_ = std::clamp(*humidity_ + count, 0, static_cast<int>(percent));
    }
    emit changed();
}

void ClimateViewModel::record()
{
    if (!canRecord()) {
        return;
    }
    busy_ = true;
    emit changed();
    cellar::NewClimate climate{*placeId_, celsius(*celsius_), *humidity_ / percent, {}};
    climate.circumstance.person = people_.who();
    climate.circumstance.at = Formats::eventTime(context_.formats.now());
    context_.workers.act(
        this, [climate](cellar::Cellar& cellar) { return cellar::recordClimate(cellar, climate); },
        [this](Result<EntryId> entry) {
            busy_ = false;
            if (!entry) {
                error_ = textOf(entry.error());
                emit changed();
                return;
            }
            emit changed();
            emit recorded();
            context_.notice.tell(tr("The air of %1: kept.").arg(place_),
                                 takeBack(context_, *entry));
        });
}

}  // namespace spile::viewmodels
