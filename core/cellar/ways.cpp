#include "core/cellar/ways.hpp"

#include "core/cellar/fact_rows.hpp"
#include "core/cellar/query_text.hpp"
#include "core/cellar/row_values.hpp"
#include "core/cellar/way_query_text.hpp"

#include <algorithm>

namespace spile::cellar {

using ledger::Database;
using ledger::Row;

namespace {

WayOrder orderOf(const Row& row, int column)
{
    return {instantFromMs(row.integer(column)), row.id<DeviceId>(column + 1),
            row.integer(column + 2)};
}

template <class Value, class Read, class... Keys>
Result<std::vector<Value>> rowsOf(Database& database, Read read, std::string_view sql,
                                  const Keys&... keys)
{
    std::vector<Value> found;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            found.push_back(read(row));
            return Result<void>();
        },
        sql, keys...));
    return found;
}

Result<std::vector<EntryId>> entriesOf(Database& database, std::string_view sql,
                                       const ledger::Bound& key)
{
    std::vector<EntryId> found;
    SPILE_TRY(database.eachBound(
        [&](const Row& row) {
            found.push_back(row.id<EntryId>(0));
            return Result<void>();
        },
        sql, std::span(&key, 1)));
    return found;
}

WayIn readTransfer(const Row& row)
{
    WayIn in;
    in.entry = row.id<EntryId>(0);
    in.from = row.id<SubjectId>(1);
    in.source = row.idIfAny<EntryId>(2);
    in.volume = volumeFromMl(row.integer(3));
    in.alcoholByVolume = scaledIfAny(row, 4, 1e4);
    in.specificGravity = scaledIfAny(row, 5, 1e4);
    in.person = row.idIfAny<SubjectId>(6);
    in.order = orderOf(row, 7);
    return in;
}

WayIn readFinish(const Row& row)
{
    constexpr double kgPerMg = 1e-6;
    WayIn in;
    in.entry = row.id<EntryId>(0);
    in.finish = true;
    in.substance = row.text(1);
    in.allergen = row.text(2);
    if (!row.isNull(3)) {
        in.mass = kilograms(static_cast<double>(row.integer(3)) * kgPerMg);
    }
    in.volume = volumeIfAny(row, 4);
    in.alcoholByVolume = scaledIfAny(row, 5, 1e4);
    in.person = row.idIfAny<SubjectId>(6);
    in.order = orderOf(row, 7);
    return in;
}

WayOut readOut(const Row& row)
{
    return {row.id<EntryId>(1), static_cast<WayKind>(row.integer(0)), row.id<SubjectId>(2),
            row.id<EntryId>(3), volumeFromMl(row.integer(4)),         volumeFromMl(row.integer(5)),
            orderOf(row, 6)};
}

}  // namespace

Result<std::vector<WayIn>> waysInto(Database& database, const SubjectId& lot)
{
    SPILE_ASSIGN(ins, rowsOf<WayIn>(database, readTransfer, query_text::transfersInto, lot));
    SPILE_ASSIGN(finishes, rowsOf<WayIn>(database, readFinish, query_text::finishesInto, lot));
    std::move(finishes.begin(), finishes.end(), std::back_inserter(ins));
    return std::move(ins);
}

Result<std::vector<WayOut>> waysOutOf(Database& database, const SubjectId& lot)
{
    return rowsOf<WayOut>(database, readOut, query_text::waysOutOfLot, lot);
}

Result<std::vector<WayOut>> takenOf(Database& database, const EntryId& mix)
{
    return rowsOf<WayOut>(database, readOut, query_text::waysOutOfMix, mix);
}

Result<std::vector<MixSource>> mixesOf(Database& database, const SubjectId& lot)
{
    return rowsOf<MixSource>(
        database,
        [](const Row& row) {
            return MixSource{row.id<EntryId>(0), row.id<EntryId>(1)};
        },
        query_text::sourcesOfMixes, lot);
}

Result<std::optional<WayFill>> wayFill(Database& database, const EntryId& entry)
{
    return database.first(
        [](const Row& row) {
            WayFill fill;
            fill.entry = row.id<EntryId>(0);
            fill.barrel = row.id<SubjectId>(1);
            fill.batch = row.idIfAny<SubjectId>(2);
            fill.volume = volumeIfAny(row, 3);
            fill.alcoholByVolume = scaledIfAny(row, 4, 1e4);
            fill.lot = row.idIfAny<SubjectId>(5);
            fill.source = row.idIfAny<EntryId>(6);
            fill.person = row.idIfAny<SubjectId>(7);
            fill.order = orderOf(row, 8);
            return fill;
        },
        query_text::wayFill, entry);
}

Result<std::vector<WayTopUp>> topUpsOf(Database& database, const EntryId& transfer)
{
    return rowsOf<WayTopUp>(
        database,
        [](const Row& row) {
            WayTopUp topUp;
            topUp.entry = row.id<EntryId>(0);
            topUp.barrel = row.id<SubjectId>(1);
            topUp.batch = row.idIfAny<SubjectId>(2);
            topUp.substance = row.text(3);
            topUp.volume = volumeFromMl(row.integer(4));
            topUp.lot = row.idIfAny<SubjectId>(5);
            topUp.source = row.idIfAny<EntryId>(6);
            topUp.person = row.idIfAny<SubjectId>(7);
            topUp.order = orderOf(row, 8);
            return topUp;
        },
        query_text::topUpsOfTransfer, transfer);
}

Result<BarrelPast> pastOf(Database& database, const WayFill& fill)
{
    std::optional<std::int64_t> before;
    SPILE_ASSIGN(found, database.first(
                            [&](const Row& row) {
                                before = row.integerIfAny(3);
                                BarrelPast barrel;
                                barrel.code = row.text(0);
                                barrel.mark = row.text(1);
                                barrel.spirit = row.text(2);
                                return barrel;
                            },
                            query_text::barrelOfPast, fill.barrel));
    BarrelPast past = found.value_or(BarrelPast{});
    const std::int64_t atMs = toMs(fill.order.at);
    std::int64_t fills = 1;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            ++fills;
            if (!row.isNull(0)) {
                past.beers.push_back(row.text(0));
            }
            return Result<void>();
        },
        query_text::fillsBefore, fill.barrel, atMs, fill.order.device, fill.order.seq));
    if (before) {
        past.fillNumber = *before + fills;
    }
    SPILE_TRY(database.each(
        [&](const Row& row) {
            past.emptied = instantFromMs(row.integer(0));
            past.emptiedBy = row.idIfAny<SubjectId>(1);
            return Result<void>();
        },
        query_text::emptiedAfter, fill.barrel, atMs, fill.order.device, fill.order.seq));
    return past;
}

Result<std::vector<DoseRow>> dosesFor(Database& database, const WayFill& fill, Instant until)
{
    SPILE_ASSIGN(from, database.integer(std::numeric_limits<std::int64_t>::min(),
                                        query_text::emptiedBefore, fill.barrel, toMs(fill.order.at),
                                        fill.order.device, fill.order.seq));
    SPILE_ASSIGN(doses, dosesOf(database, fill.barrel));
    std::erase_if(doses,
                  [&](const DoseRow& dose) { return toMs(dose.at) < from || dose.at > until; });
    return std::move(doses);
}

Result<std::string> nameOf(Database& database, std::string_view kind, const SubjectId& subject)
{
    const std::string_view sql = kind == "person" ? query_text::nameOfPerson
                                 : kind == "lot"  ? query_text::nameOfLot
                                                  : query_text::nameOfBatch;
    SPILE_ASSIGN(found, database.first([](const Row& row) { return row.text(0); }, sql, subject));
    return found.value_or(std::string());
}

Result<std::vector<EntryId>> fillsOfBatch(Database& database, const SubjectId& batch)
{
    return entriesOf(database, query_text::fillsByBatch, batch);
}

Result<std::vector<EntryId>> topUpsOfBatch(Database& database, const SubjectId& batch)
{
    return entriesOf(database, query_text::topUpsByBatch, batch);
}

Result<std::vector<EntryId>> fillsOfBarrel(Database& database, const SubjectId& barrel)
{
    return entriesOf(database, query_text::fillsByBarrel, barrel);
}

Result<std::vector<EntryId>> finishesOf(Database& database, const std::string& substance)
{
    return entriesOf(database, query_text::finishesBySubstance, substance);
}

Result<std::vector<EntryId>> transfersOf(Database& database, const EntryId& stay)
{
    return entriesOf(database, query_text::transfersOfStay, stay);
}

Result<std::vector<EntryId>> mixesWith(Database& database, const EntryId& source)
{
    return entriesOf(database, query_text::mixesWithSource, source);
}

Result<std::optional<SubjectId>> lotOf(Database& database, const EntryId& entry)
{
    return database.first([](const Row& row) { return row.id<SubjectId>(0); },
                          query_text::lotOfEntry, entry);
}

Result<std::optional<EntryId>> stayOfTopUp(Database& database, const EntryId& topUp)
{
    return database.first([](const Row& row) { return row.id<EntryId>(0); },
                          query_text::stayOfTopUp, topUp);
}

}  // namespace spile::cellar
