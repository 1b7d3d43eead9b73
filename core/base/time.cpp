#include "core/base/time.hpp"

#include <array>
#include <cstdio>
#include <ctime>

namespace spile::inline base {

using std::chrono::days;
using std::chrono::floor;
using std::chrono::hh_mm_ss;
using std::chrono::year_month_day;

std::string toIsoDate(Instant t)
{
    const year_month_day date(floor<days>(t));
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02u-%02u", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
    return text.data();
}

std::string toIsoTime(Instant t)
{
    const hh_mm_ss<Milliseconds> clock(t - floor<days>(t));
    std::array<char, 32> text{};
    std::snprintf(
        text.data(), text.size(), "T%02d:%02d:%02d", static_cast<int>(clock.hours().count()),
        static_cast<int>(clock.minutes().count()), static_cast<int>(clock.seconds().count()));
    std::string iso = toIsoDate(t) + text.data();
    if (const auto ms = static_cast<int>(clock.subseconds().count()); ms != 0) {
        std::snprintf(text.data(), text.size(), ".%03d", ms);
        iso += text.data();
    }
    return iso + 'Z';
}

// Reads exactly `digits` digits and moves past them.
static std::optional<unsigned> takeNumber(std::string_view& text, std::size_t digits)
{
    if (text.size() < digits) {
        return std::nullopt;
    }
    unsigned number = 0;
    for (const char c : text.substr(0, digits)) {
        if (c < '0' || c > '9') {
            return std::nullopt;
        }
        number = number * 10 + static_cast<unsigned>(c - '0');
    }
    text.remove_prefix(digits);
    return number;
}

static bool takeChar(std::string_view& text, char c)
{
    if (!text.starts_with(c)) {
        return false;
    }
    text.remove_prefix(1);
    return true;
}

static std::optional<Milliseconds> takeTimeOfDay(std::string_view text)
{
    const auto hour = takeNumber(text, 2);
    if (!hour || *hour > 23 || !takeChar(text, ':')) {
        return std::nullopt;
    }
    const auto minute = takeNumber(text, 2);
    if (!minute || *minute > 59) {
        return std::nullopt;
    }
    std::optional<unsigned> second = 0U;
    if (takeChar(text, ':')) {
        second = takeNumber(text, 2);
    }
    if (!second || *second > 59 || text != "Z") {
        return std::nullopt;
    }
    return std::chrono::hours(*hour) + std::chrono::minutes(*minute) +
           std::chrono::seconds(*second);
}

std::optional<Instant> fromIso(std::string_view text)
{
    const auto year = takeNumber(text, 4);
    const bool firstDash = takeChar(text, '-');
    const auto month = takeNumber(text, 2);
    const bool secondDash = takeChar(text, '-');
    const auto day = takeNumber(text, 2);
    if (!year || !month || !day || !firstDash || !secondDash) {
        return std::nullopt;
    }
    const year_month_day date(std::chrono::year(static_cast<int>(*year)),
                              std::chrono::month(*month), std::chrono::day(*day));
    if (!date.ok()) {
        return std::nullopt;
    }
    const Instant midnight = std::chrono::sys_days(date);
    if (text.empty()) {
        return midnight;
    }
    if (!takeChar(text, 'T')) {
        return std::nullopt;
    }
    const auto timeOfDay = takeTimeOfDay(text);
    return timeOfDay ? std::optional(midnight + *timeOfDay) : std::nullopt;
}

}  // namespace spile::inline base
