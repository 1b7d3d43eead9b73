#include "core/outlook/aging.hpp"

#include "core/wood/climate_days.hpp"
#include "core/wood/effective_age.hpp"

#include <algorithm>
#include <cmath>

namespace spile::outlook {

namespace {

constexpr std::int64_t dayMs = 86'400'000;
constexpr std::int64_t daysMost = 20'000;
constexpr std::size_t daysOfYear = 365;
constexpr Temperature coldest = celsius(-15);  // as wood::climateDays takes it
constexpr Temperature warmest = celsius(45);

std::int64_t dayOf(Instant at, Instant filled) { return (toMs(at) - toMs(filled)) / dayMs; }

// The temperatures of a place from the day of the fill on: until `now` as read, then foreseen.
Result<std::vector<Temperature>> daysOf(const std::vector<cellar::ClimateRow>& read, Instant filled,
                                        std::size_t past, std::size_t days)
{
    std::vector<wood::ClimateRecord> records;
    records.reserve(read.size());
    for (const cellar::ClimateRow& row : read) {
        records.push_back({toMs(row.at) / 1000,
                           {std::clamp(row.temperature, coldest, warmest), row.relativeHumidity}});
    }
    std::vector<wood::Climate> climate(past);
    SPILE_TRY(wood::climateDays(records, toMs(filled) / 1000, climate));
    std::vector<Temperature> all;
    all.reserve(days);
    for (const wood::Climate& day : climate) {
        all.push_back(day.temperature);
    }
    const std::size_t known =
        read.empty() ? past
                     : static_cast<std::size_t>(std::clamp<std::int64_t>(
                           dayOf(read.front().at, filled), 0, static_cast<std::int64_t>(past)));
    double sum = 0;
    for (std::size_t day = known; day < past; ++day) {
        sum += all[day].si();
    }
    const Temperature mean = known < past   ? kelvins(sum / static_cast<double>(past - known))
                             : read.empty() ? wood::usualClimate.temperature
                                            : std::clamp(read.back().temperature, coldest, warmest);
    for (std::size_t day = past; day < days; ++day) {
        const bool lastYear = day >= daysOfYear + known;
        all.push_back(lastYear ? all[day - daysOfYear] : mean);
    }
    return all;
}

}  // namespace

Aging::Aging(Instant filled, std::vector<Temperature> dayTemperatures)
    : filled_(filled), ages_(dayTemperatures.size())
{
    wood::effectiveAges(dayTemperatures, ages_);
}

double Aging::ageAt(Instant at) const
{
    const double days = std::chrono::duration<double, std::ratio<86'400>>(at - filled_).count();
    if (days <= 0 || ages_.empty()) {
        return 0;
    }
    const auto whole = static_cast<std::size_t>(days);
    const double last = ages_.size() > 1 ? ages_.back() - ages_[ages_.size() - 2] : ages_.back();
    if (whole >= ages_.size()) {
        return ages_.back() + last * (days - static_cast<double>(ages_.size()));
    }
    const double before = whole == 0 ? 0 : ages_[whole - 1];
    return before + (ages_[whole] - before) * (days - static_cast<double>(whole));
}

Result<const std::vector<cellar::ClimateRow>*> PlaceAir::of(const SubjectId& place)
{
    const auto found = known_.find(place);
    if (found != known_.end()) {
        return &found->second;
    }
    SPILE_ASSIGN(rows, cellar::climatesOf(*database_, place));
    return &known_.emplace(place, std::move(rows)).first->second;
}

Result<Aging> agingOf(PlaceAir& air, const cellar::BarrelStays& barrel, Instant filled, Instant now,
                      Instant horizon, const std::optional<Temperature>& moved)
{
    const auto count = [&](Instant until) {
        return static_cast<std::size_t>(
            std::clamp<std::int64_t>(dayOf(until, filled) + 1, 1, daysMost));
    };
    const std::size_t past = count(now);
    const std::size_t days = std::max(past, count(horizon));
    std::vector<Temperature> all(days, wood::usualClimate.temperature);
    for (const auto& since : barrel.places) {
        if (since.at > now) {
            continue;
        }
        SPILE_ASSIGN(read, air.of(since.place));
        SPILE_ASSIGN(there, daysOf(*read, filled, past, days));
        const std::size_t from = since.at <= filled ? 0 : count(since.at) - 1;
        std::copy(there.begin() + static_cast<std::ptrdiff_t>(from), there.end(),
                  all.begin() + static_cast<std::ptrdiff_t>(from));
    }
    if (moved) {
        std::fill(all.begin() + static_cast<std::ptrdiff_t>(past), all.end(), *moved);
    }
    return Aging(filled, std::move(all));
}

}  // namespace spile::outlook
