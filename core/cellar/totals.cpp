#include "core/cellar/totals.hpp"

#include "core/cellar/fact_rows.hpp"
#include "core/cellar/row_values.hpp"
#include "core/cellar/total_query_text.hpp"

namespace spile::cellar {

using ledger::Database;
using ledger::Row;

namespace {

Volume volumeOrNone(const Row& row, int column)
{
    return volumeIfAny(row, column).value_or(Volume{});
}

EndedStay readStay(const Row& row)
{
    EndedStay stay;
    stay.fill = row.id<EntryId>(0);
    stay.barrel = row.id<SubjectId>(1);
    stay.code = row.text(3);
    stay.barrelName = row.isNull(2) ? stay.code : row.text(2);
    stay.beer = row.text(4);
    stay.filled = instantFromMs(row.integer(5));
    stay.emptied = instantFromMs(row.integer(6));
    stay.in = volumeIfAny(row, 7);
    stay.toppedUp = volumeOrNone(row, 8);
    stay.drawn = volumeOrNone(row, 9);
    stay.out = volumeIfAny(row, 10);
    stay.heel = volumeOrNone(row, 11);
    return stay;
}

}  // namespace

Result<std::vector<Movement>> movementsIn(Database& database, Instant from, Instant to)
{
    std::vector<Movement> found;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            found.push_back({static_cast<Movement::Kind>(row.integer(0)),
                             instantFromMs(row.integer(1)), volumeOrNone(row, 2),
                             scaledIfAny(row, 3, 1e4)});
            return Result<void>();
        },
        query_text::movements, toMs(from), toMs(to)));
    return found;
}

Result<std::vector<EndedStay>> staysEnded(Database& database, Instant from, Instant to)
{
    std::vector<EndedStay> found;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            found.push_back(readStay(row));
            return Result<void>();
        },
        query_text::endedStays, toMs(from), toMs(to)));
    return found;
}

Result<std::vector<CostRow>> costsOf(Database& database, const SubjectId& subject)
{
    constexpr int own = factColumns;
    return factsOf<CostRow>(database, query_text::costs, subject,
                            [](const Row& row, CostRow& cost) {
                                cost.what = row.text(own);
                                cost.cost = scaledIfAny(row, own + 1, 1e2).value_or(0);
                                cost.forVolume = volumeIfAny(row, own + 2);
                                cost.fillsExpected = row.integerIfAny(own + 3);
                            });
}

Result<Volume> filledOf(Database& database, const SubjectId& batch)
{
    SPILE_ASSIGN(ml, database.integer(0, query_text::filledOfBatch, batch));
    return volumeFromMl(ml);
}

Result<std::int64_t> fillsIn(Database& database, const SubjectId& barrel)
{
    return database.integer(0, query_text::fillsInBarrel, barrel);
}

Result<std::optional<EndedStay>> stayEnded(Database& database, const EntryId& fill)
{
    return database.first(readStay, query_text::endedStay, fill);
}

Result<Volume> outOf(Database& database, const EntryId& fill)
{
    SPILE_ASSIGN(ml, database.integer(0, query_text::outOfStay, fill));
    return volumeFromMl(ml);
}

}  // namespace spile::cellar
