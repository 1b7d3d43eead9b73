#pragma once

#include "core/base/time.hpp"
#include "core/cellar/acts/registering.hpp"
#include "core/units/units.hpp"

#include <QCoreApplication>
#include <QLocale>
#include <QString>
#include <optional>

namespace spile::viewmodels {

/// How numbers, dates and spans are written for people: by the locale, each with its unit.
class Formats {
    Q_DECLARE_TR_FUNCTIONS(Formats)

public:
    enum class Units : std::uint8_t { Metric, Us };

    explicit Formats(const Clock& clock) : clock_(clock) {}

    QLocale locale;
    Units units = Units::Metric;

    [[nodiscard]] Instant now() const { return clock_.now(); }

    /// "182 L", or "48.1 gal"; under 10 units with a decimal, under 1 L in millilitres.
    [[nodiscard]] QString volume(Volume volume) const;
    [[nodiscard]] QString gravity(double specificGravity) const;       // "1.028"
    [[nodiscard]] QString ph(double value) const;                      // "4.35"
    [[nodiscard]] QString temperature(Temperature temperature) const;  // "12.5 °C"
    [[nodiscard]] QString strength(double fraction) const;             // "11.6 % vol"
    [[nodiscard]] QString size(std::uint64_t bytes) const;             // "2.4 MB"

    /// "Tue 14 Oct"; with the year if it is not this one's.
    [[nodiscard]] QString date(Instant at) const;
    /// The same, no more exact than it is known: "October 2025", "2025".
    [[nodiscard]] QString date(Instant at, cellar::DatePrecision precision) const;
    [[nodiscard]] QString time(Instant at) const;         // "18:20"
    [[nodiscard]] QString dateAndTime(Instant at) const;  // "Tue 14 Oct, 18:20"
    /// "14 Oct"; with the year if it is not this one's. For axes and spans.
    [[nodiscard]] QString day(Instant at) const;
    [[nodiscard]] QString month(Instant at) const;         // "Oct"
    [[nodiscard]] QString monthAndYear(Instant at) const;  // "Oct 27"
    /// "7 in 10"; below half of one "less than 1 in 10", above nine and a half "more than 9 in 10".
    [[nodiscard]] QString chance(double chance) const;
    /// "9 days ago", "today", "in 3 days".
    [[nodiscard]] QString fromNow(Instant at) const;
    /// "9 days over", "today", "in 3 days".
    [[nodiscard]] QString due(Instant at) const;
    /// "14 days", "7 months".
    [[nodiscard]] QString age(Instant since) const;

    /// Whole days from today to the day of `at`, by the device's own calendar.
    [[nodiscard]] int daysFromToday(Instant at) const;

    /// `text`, which says when, marked if `at` is in the future by this device's clock.
    [[nodiscard]] QString marked(const QString& text, Instant at) const;
    /// "Its clock said Tue 14 Oct, 18:20; set right"; empty if it was not.
    [[nodiscard]] QString setRight(const std::optional<Instant>& clock) const;

    /// The time of `at` for an entry, with the zone that this device is in then.
    [[nodiscard]] static ledger::EventTime eventTime(Instant at);

private:
    const Clock& clock_;
};

}  // namespace spile::viewmodels
