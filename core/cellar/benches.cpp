#include "core/cellar/benches.hpp"

#include "core/base/sha256.hpp"
#include "core/cellar/bench_query_text.hpp"
#include "core/cellar/query_text.hpp"
#include "core/units/scaled.hpp"

#include <algorithm>
#include <set>

namespace spile::cellar {

using ledger::Database;
using ledger::Row;

namespace {

void readBench(const Row& row, BenchRow& bench)
{
    bench.bench = row.id<SubjectId>(0);
    bench.entry = row.id<EntryId>(1);
    bench.name = row.text(2);
    bench.at = instantFromMs(row.integer(3));
    bench.counted = instantFromMs(row.integer(4));
    bench.glasses = static_cast<int>(row.integerIfAny(5).value_or(0));
    bench.accepted = row.integer(6) != 0;
    bench.target = row.idIfAny<SubjectId>(7);
}

BenchGlass& glassFor(BenchWhole& bench, int number)
{
    const auto at = std::find_if(bench.poured.begin(), bench.poured.end(),
                                 [&](const BenchGlass& glass) { return glass.number >= number; });
    return at != bench.poured.end() && at->number == number
               ? *at
               : *bench.poured.insert(at, BenchGlass{number, {}, {}});
}

Result<void> readPortions(Database& database, BenchWhole& bench)
{
    return database.each(
        [&](const Row& row) {
            glassFor(bench, static_cast<int>(row.integer(0)))
                .portions.push_back(
                    {row.id<SubjectId>(1), volumeFromMl(row.integer(2)), row.text(3), row.text(4)});
            return Result<void>();
        },
        query_text::portionsOfBench, bench.entry);
}

// Scores of a glass that the bench does not have, or of nobody, are passed over.
Result<void> readTastes(Database& database, BenchWhole& bench)
{
    SPILE_TRY(database.each(
        [&](const Row& row) {
            const auto number = static_cast<int>(row.integerIfAny(1).value_or(0));
            const auto person = row.idIfAny<SubjectId>(2);
            if (person && bench.glassOf(number) != nullptr) {
                glassFor(bench, number)
                    .tastes.push_back({row.id<EntryId>(0),
                                       *person,
                                       row.text(3),
                                       instantFromMs(row.integer(4)),
                                       {},
                                       row.integerIfAny(5)});
            }
            return Result<void>();
        },
        query_text::tastesOfBench, bench.bench));
    for (BenchGlass& glass : bench.poured) {
        for (GlassTaste& taste : glass.tastes) {
            SPILE_TRY(database.each(
                [&](const Row& row) {
                    taste.scores[row.text(0)] = row.integerIfAny(1);
                    return Result<void>();
                },
                query_text::scoresOf, bench.bench, taste.taste));
        }
    }
    return {};
}

}  // namespace

bool BenchGlass::isTastedBy(const SubjectId& person) const
{
    return std::any_of(tastes.begin(), tastes.end(),
                       [&](const GlassTaste& taste) { return taste.person == person; });
}

Volume BenchGlass::volume() const
{
    Volume all;
    for (const BenchPortion& portion : portions) {
        all = all + portion.volume;
    }
    return all;
}

const BenchGlass* BenchWhole::glassOf(int number) const
{
    const auto found = std::find_if(poured.begin(), poured.end(), [&](const BenchGlass& glass) {
        return glass.number == number;
    });
    return found == poured.end() ? nullptr : &*found;
}

int BenchWhole::tastedBy(const SubjectId& person) const
{
    return static_cast<int>(
        std::count_if(poured.begin(), poured.end(),
                      [&](const BenchGlass& glass) { return glass.isTastedBy(person); }));
}

bool BenchWhole::areScoresShownTo(const SubjectId& person) const
{
    return tastedBy(person) == static_cast<int>(poured.size());
}

std::vector<std::string> BenchWhole::scoredAttributes() const
{
    std::set<std::string> attributes;
    for (const BenchGlass& glass : poured) {
        for (const GlassTaste& taste : glass.tastes) {
            for (const auto& [attribute, score] : taste.scores) {
                attributes.insert(attribute);
            }
        }
    }
    return {attributes.begin(), attributes.end()};
}

Result<std::vector<BenchRow>> benches(Database& database, const BeforeBench& before, int limit)
{
    std::vector<BenchRow> rows;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            readBench(row, rows.emplace_back());
            return Result<void>();
        },
        query_text::benchesByTime, toMs(before.counted), before.bench, limit));
    return rows;
}

Result<std::optional<BenchWhole>> benchById(Database& database, const SubjectId& bench)
{
    SPILE_ASSIGN(found, database.first(
                            [](const Row& row) {
                                BenchWhole whole;
                                readBench(row, whole);
                                return whole;
                            },
                            query_text::benchById, bench));
    if (found) {
        SPILE_TRY(readPortions(database, *found));
        SPILE_TRY(readTastes(database, *found));
        SPILE_ASSIGN(choice, database.first(
                                 [](const Row& row) {
                                     return AcceptedGlass{
                                         row.id<EntryId>(0), static_cast<int>(row.integer(1)),
                                         instantFromMs(row.integer(2)), row.idIfAny<SubjectId>(3)};
                                 },
                                 query_text::acceptOfBench, bench));
        found->choice = choice;
    }
    return std::move(found);
}

std::vector<int> glassOrder(const SubjectId& bench, const SubjectId& person, int glasses)
{
    std::vector<std::pair<Sha256, int>> drawn;
    for (int glass = 1; glass <= glasses; ++glass) {
        Sha256Stream hash;
        hash.add(bench.bytes());
        hash.add(person.bytes());
        const auto number = static_cast<std::uint8_t>(glass);
        hash.add(ByteView(&number, 1));
        drawn.emplace_back(hash.finish(), glass);
    }
    std::sort(drawn.begin(), drawn.end());
    std::vector<int> order;
    order.reserve(drawn.size());
    for (const auto& [hash, glass] : drawn) {
        order.push_back(glass);
    }
    return order;
}

}  // namespace spile::cellar
