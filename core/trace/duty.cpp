#include "core/trace/reports.hpp"

#include <algorithm>

namespace spile::trace {

using cellar::EndedStay;
using cellar::Movement;

namespace {

constexpr std::size_t periodsMost = 1200;

using Days = std::chrono::days;
using std::chrono::year_month;

year_month monthOf(Instant at)
{
    const std::chrono::year_month_day day(std::chrono::floor<Days>(at));
    return day.year() / day.month();
}

Instant beginningOf(year_month month) { return std::chrono::sys_days(month / 1); }

unsigned monthsIn(Period period)
{
    return period == Period::Month ? 1U : period == Period::Quarter ? 3U : 12U;
}

// The first month of the period that `month` is in.
year_month firstMonth(year_month month, Period period)
{
    const unsigned length = monthsIn(period);
    const unsigned first = (static_cast<unsigned>(month.month()) - 1) / length * length + 1;
    return month.year() / std::chrono::month(first);
}

void add(DutyRow& row, const Movement& movement)
{
    const auto alcohol = [&](Volume& sum) {
        row.strengthMissing |= !movement.strength;
        sum = sum + movement.strength.value_or(0) * movement.volume;
    };
    const auto count = [&](Volume& sum) { sum = sum + movement.volume; };
    switch (movement.kind) {
        case Movement::Kind::Packaged:
            alcohol(row.packagedAlcohol);
            return count(row.packaged);
        case Movement::Kind::LostPacking:
            return count(row.lostPacking);
        case Movement::Kind::Released:
            alcohol(row.releasedAlcohol);
            return count(row.released);
        case Movement::Kind::Filled:
            return count(row.filled);
        case Movement::Kind::ToppedUp:
            return count(row.toppedUp);
        case Movement::Kind::Drawn:
            return count(row.drawn);
        case Movement::Kind::Transferred:
            return count(row.transferred);
        case Movement::Kind::Discarded:
            return count(row.discarded);
    }
}

DutyRow* rowAt(std::vector<DutyRow>& rows, Instant at)
{
    const auto after = std::upper_bound(rows.begin(), rows.end(), at,
                                        [](Instant t, const DutyRow& row) { return t < row.from; });
    return after == rows.begin() || at >= std::prev(after)->to ? nullptr : &*std::prev(after);
}

}  // namespace

std::optional<Volume> unexplainedLoss(const EndedStay& stay)
{
    if (!stay.in || !stay.out) {
        return std::nullopt;
    }
    return *stay.in + stay.toppedUp - stay.drawn - *stay.out - stay.heel;
}

Result<std::vector<DutyRow>> dutySummary(ledger::Database& database, Instant from, Instant to,
                                         Period period)
{
    if (to <= from) {
        return fail(ErrorCode::OutOfRange, "to", toIsoDate(to), "after " + toIsoDate(from));
    }
    std::vector<DutyRow> rows;
    const std::chrono::months length(static_cast<int>(monthsIn(period)));
    for (year_month month = firstMonth(monthOf(from), period); beginningOf(month) < to;
         month += length) {
        if (rows.size() == periodsMost) {
            return fail(ErrorCode::OutOfRange, "from", toIsoDate(from),
                        "at most " + std::to_string(periodsMost) + " periods");
        }
        DutyRow row;
        row.from = beginningOf(month);
        row.to = beginningOf(month + length);
        rows.push_back(row);
    }
    SPILE_ASSIGN(movements, cellar::movementsIn(database, rows.front().from, rows.back().to));
    for (const Movement& movement : movements) {
        if (DutyRow* row = rowAt(rows, movement.at)) {
            add(*row, movement);
        }
    }
    SPILE_ASSIGN(stays, cellar::staysEnded(database, rows.front().from, rows.back().to));
    for (const EndedStay& stay : stays) {
        DutyRow* row = rowAt(rows, stay.emptied);
        if (const auto lost = unexplainedLoss(stay); lost && row != nullptr) {
            row->evaporated = row->evaporated + *lost;
        }
    }
    return rows;
}

}  // namespace spile::trace
