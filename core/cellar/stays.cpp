#include "core/cellar/stays.hpp"

#include "core/cellar/query_text.hpp"
#include "core/cellar/row_values.hpp"

#include <algorithm>

namespace spile::cellar {

using ledger::Database;
using ledger::Row;

namespace {

// The stay that a moment belongs to; none before the first fill or after an end.
Stay* stayAt(BarrelStays& all, Instant at)
{
    const auto after =
        std::upper_bound(all.stays.begin(), all.stays.end(), at,
                         [](Instant t, const Stay& stay) { return t < stay.filled; });
    if (after == all.stays.begin()) {
        return nullptr;
    }
    Stay& stay = *std::prev(after);
    return stay.ended && at > *stay.ended ? nullptr : &stay;
}

Result<void> readStays(Database& database, BarrelStays& all, std::optional<int> fillsBefore)
{
    SPILE_TRY(database.each(
        [&](const Row& row) {
            if (!all.stays.empty() && !all.stays.back().ended) {
                all.stays.back().ended = instantFromMs(row.integer(1));
            }
            Stay& stay = all.stays.emplace_back();
            stay.fill = row.id<EntryId>(0);
            stay.filled = instantFromMs(row.integer(1));
            stay.beer = row.text(2);
            stay.volume = volumeIfAny(row, 3);
            stay.number = fillsBefore ? *fillsBefore + static_cast<int>(all.stays.size()) : 0;
            return Result<void>();
        },
        query_text::stayFills, all.barrel));
    return database.each(
        [&](const Row& row) {
            const Instant at = instantFromMs(row.integer(0));
            if (Stay* const stay = stayAt(all, at)) {
                stay->ended = at;
            }
            return Result<void>();
        },
        query_text::stayEnds, all.barrel);
}

Result<void> readTaste(Database& database, BarrelStays& all)
{
    SPILE_TRY(database.each(
        [&](const Row& row) {
            const Instant at = instantFromMs(row.integer(1));
            if (Stay* const stay = stayAt(all, at)) {
                stay->scores.push_back({row.id<EntryId>(0), at, row.id<SubjectId>(2), row.text(3),
                                        static_cast<int>(row.integer(4)), row.idIfAny<SubjectId>(5),
                                        static_cast<int>(row.integerIfAny(6).value_or(0))});
            }
            return Result<void>();
        },
        query_text::stayScores, all.barrel));
    SPILE_TRY(database.each(
        [&](const Row& row) {
            const Instant at = instantFromMs(row.integer(0));
            if (Stay* const stay = stayAt(all, at)) {
                stay->directions.push_back(
                    {at, row.text(1), static_cast<Direction>(row.integer(2))});
            }
            return Result<void>();
        },
        query_text::stayDirections, all.barrel));
    SPILE_TRY(database.each(
        [&](const Row& row) {
            const Instant at = instantFromMs(row.integer(0));
            if (Stay* const stay = stayAt(all, at)) {
                stay->draws.push_back({at, volumeFromMl(row.integer(1)), row.text(2)});
            }
            return Result<void>();
        },
        query_text::stayDraws, all.barrel));
    return database.each(
        [&](const Row& row) {
            const Instant at = instantFromMs(row.integer(0));
            if (Stay* const stay = stayAt(all, at)) {
                stay->topUps.push_back({at, volumeFromMl(row.integer(1))});
            }
            return Result<void>();
        },
        query_text::stayTopUps, all.barrel);
}

}  // namespace

Result<BarrelStays> staysOf(Database& database, const SubjectId& barrel)
{
    BarrelStays all;
    all.barrel = barrel;
    std::optional<int> fillsBefore;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            all.spirit = row.text(0);
            if (!row.isNull(1)) {
                all.charLevel = static_cast<int>(row.integer(1));
            }
            all.size = volumeIfAny(row, 2);
            if (!row.isNull(3)) {
                fillsBefore = static_cast<int>(row.integer(3));
            }
            if (const auto place = row.idIfAny<SubjectId>(4)) {
                all.places.push_back({Instant::min(), *place});
            }
            return Result<void>();
        },
        query_text::stayBarrel, barrel));
    SPILE_TRY(database.each(
        [&](const Row& row) {
            all.places.push_back({instantFromMs(row.integer(0)), row.id<SubjectId>(1)});
            return Result<void>();
        },
        query_text::stayPlaces, barrel));
    SPILE_TRY(readStays(database, all, fillsBefore));
    SPILE_TRY(readTaste(database, all));
    return all;
}

}  // namespace spile::cellar
