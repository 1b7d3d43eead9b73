#include "qml/viewmodels/formats.hpp"

#include "core/cellar/true_time.hpp"
#include "core/plan/foreseen.hpp"

#include <QDateTime>
#include <cmath>

namespace spile::viewmodels {

namespace {

QDateTime localTime(Instant at) { return QDateTime::fromMSecsSinceEpoch(toMs(at)); }

constexpr int daysInMonth = 30;

}  // namespace

QString Formats::volume(Volume volume) const
{
    if (units == Units::Us) {
        const double gallons = inUsGallons(volume);
        constexpr double smallest = 0.25;
        if (std::abs(gallons) < smallest) {
            constexpr double ouncesPerGallon = 128.0;
            return tr("%1 fl oz").arg(locale.toString(gallons * ouncesPerGallon, 'f', 1));
        }
        return tr("%1 gal").arg(locale.toString(gallons, 'f', 1));
    }
    const double litres = inLitres(volume);
    if (std::abs(litres) < 1.0) {
        return tr("%1 mL").arg(locale.toString(inMillilitres(volume), 'f', 0));
    }
    return tr("%1 L").arg(locale.toString(litres, 'f', std::abs(litres) < 100.0 ? 1 : 0));
}

QString Formats::gravity(double specificGravity) const
{
    return locale.toString(specificGravity, 'f', 3);
}

QString Formats::ph(double value) const { return locale.toString(value, 'f', 2); }

QString Formats::temperature(Temperature temperature) const
{
    return units == Units::Us ? tr("%1 °F").arg(locale.toString(inFahrenheit(temperature), 'f', 0))
                              : tr("%1 °C").arg(locale.toString(inCelsius(temperature), 'f', 1));
}

QString Formats::strength(double fraction) const
{
    return tr("%1 % vol").arg(locale.toString(fraction * 100.0, 'f', 1));
}

QString Formats::size(std::uint64_t bytes) const
{
    return locale.formattedDataSize(static_cast<qint64>(bytes), 1, QLocale::DataSizeSIFormat);
}

QString Formats::date(Instant at) const
{
    const QDate day = localTime(at).date();
    const bool thisYear = day.year() == localTime(now()).date().year();
    return locale.toString(day, thisYear ? tr("ddd d MMM", "a date of this year")
                                         : tr("d MMM yyyy", "a date of another year"));
}

QString Formats::day(Instant at) const
{
    const QDate day = localTime(at).date();
    const bool thisYear = day.year() == localTime(now()).date().year();
    return locale.toString(day, thisYear ? tr("d MMM", "a day of this year, short")
                                         : tr("d MMM yyyy", "a date of another year"));
}

QString Formats::month(Instant at) const
{
    return locale.toString(localTime(at).date(), tr("MMM", "a month, short"));
}

QString Formats::monthAndYear(Instant at) const
{
    return locale.toString(localTime(at).date(), tr("MMM yy", "a month with its year, short"));
}

QString Formats::chance(double chance) const
{
    const int tenths = plan::inTen(chance);
    constexpr int sure = 10;
    if (tenths == 0) {
        return tr("less than 1 in 10");
    }
    return tenths == sure ? tr("more than 9 in 10")
                          : tr("%1 in 10", "a chance").arg(locale.toString(tenths));
}

QString Formats::date(Instant at, cellar::DatePrecision precision) const
{
    switch (precision) {
        case cellar::DatePrecision::Day:
            return date(at);
        case cellar::DatePrecision::Month:
            return locale.toString(localTime(at).date(), tr("MMMM yyyy", "a month"));
        case cellar::DatePrecision::Year:
            return locale.toString(localTime(at).date(), tr("yyyy", "a year"));
    }
    return {};
}

QString Formats::time(Instant at) const
{
    return locale.toString(localTime(at).time(), tr("HH:mm", "a time of day"));
}

QString Formats::dateAndTime(Instant at) const
{
    return tr("%1, %2", "date, time").arg(date(at), time(at));
}

int Formats::daysFromToday(Instant at) const
{
    return static_cast<int>(localTime(now()).date().daysTo(localTime(at).date()));
}

QString Formats::fromNow(Instant at) const
{
    const int days = daysFromToday(at);
    if (days == 0) {
        return tr("today");
    }
    return days > 0 ? tr("in %n day(s)", "", days) : tr("%n day(s) ago", "", -days);
}

QString Formats::due(Instant at) const
{
    const int days = daysFromToday(at);
    return days < 0 ? tr("%n day(s) over", "", -days) : fromNow(at);
}

QString Formats::age(Instant since) const
{
    const int days = -daysFromToday(since);
    constexpr int monthsFrom = 60;
    return days < monthsFrom ? tr("%n day(s)", "", days)
                             : tr("%n month(s)", "", days / daysInMonth);
}

QString Formats::marked(const QString& text, Instant at) const
{
    return cellar::isInFuture(at, now()) ? tr("%1, in the future", "Tue 14 Oct").arg(text) : text;
}

QString Formats::setRight(const std::optional<Instant>& clock) const
{
    return clock ? tr("Its clock said %1; set right").arg(dateAndTime(*clock)) : QString();
}

ledger::EventTime Formats::eventTime(Instant at)
{
    constexpr int secondsPerMinute = 60;
    return {at, localTime(at).offsetFromUtc() / secondsPerMinute};
}

}  // namespace spile::viewmodels
