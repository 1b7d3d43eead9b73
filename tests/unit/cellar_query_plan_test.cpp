// How SQLite runs the list queries: by an index, never by reading a whole table.
#include "core/cellar/queries.hpp"
#include "tests/support/fleet.hpp"

#include <algorithm>
#include <gtest/gtest.h>
#include <set>

namespace spile::cellar {

namespace {

std::vector<std::string> planOf(ledger::Database& database, std::string_view query)
{
    std::vector<std::string> lines;
    const auto read = database.eachOnce(
        [&](const ledger::Row& row) {
            lines.push_back(row.text(3));
            return Result<void>();
        },
        "EXPLAIN QUERY PLAN " + std::string(query));
    EXPECT_TRUE(read) << query;
    return lines;
}

bool hasLine(const std::vector<std::string>& plan, std::string_view part)
{
    return std::any_of(plan.begin(), plan.end(), [&](const std::string& line) {
        return line.find(part) != std::string::npos;
    });
}

// The parts of the index of ids are counted, not read from a table: SPILE_ENTRY_NUMBER.
bool scans(const std::vector<std::string>& plan)
{
    return std::any_of(plan.begin(), plan.end(), [](const std::string& line) {
        return line.starts_with("SCAN") && line != "SCAN id_part";
    });
}

}  // namespace

TEST(QueryPlan, OfEveryListQueryHasNoScan)
{
    support::Fleet fleet(1);
    ledger::Database& database = fleet.cellar(0).database();
    ASSERT_GE(listQueries().size(), 37U);
    for (const std::string_view query : listQueries()) {
        SCOPED_TRACE(query);
        const auto plan = planOf(database, query);
        EXPECT_FALSE(plan.empty());
        EXPECT_FALSE(scans(plan));
    }
}

TEST(QueryPlan, OfEveryPagedQuerySortsNothing)
{
    support::Fleet fleet(1);
    int paged = 0;
    for (const std::string_view query : listQueries()) {
        if (query.find("LIMIT ?") != std::string_view::npos) {
            ++paged;
            EXPECT_FALSE(hasLine(planOf(fleet.cellar(0).database(), query), "TEMP B-TREE"))
                << query;
        }
    }
    EXPECT_EQ(paged, 20);
}

TEST(QueryPlan, OfWhatWasDrawnReadsNoRowOfADraw)
{
    support::Fleet fleet(1);
    for (const char* table : {"state_draw", "state_top_up"}) {
        const auto plan = planOf(fleet.cellar(0).database(),
                                 "SELECT sum(volume_ml) FROM " + std::string(table) +
                                     " WHERE subject = ? AND voided = 0 AND when_ms >= ?");
        EXPECT_TRUE(hasLine(plan, "USING COVERING INDEX")) << table;
    }
}

TEST(QueryPlan, ShowsAScanWhereThereIsOne)
{
    support::Fleet fleet(1);
    ledger::Database& database = fleet.cellar(0).database();
    EXPECT_TRUE(scans(planOf(database, "SELECT code FROM state_barrel_now WHERE mark = ?")));
    EXPECT_TRUE(scans(planOf(database, "SELECT * FROM state_draw")));
    EXPECT_TRUE(hasLine(planOf(database, "SELECT code FROM state_barrel_now ORDER BY mark"),
                        "TEMP B-TREE"));
    EXPECT_FALSE(scans(planOf(database, "SELECT 1 FROM state_fill WHERE entry = ?")));
}

TEST(BarrelLists, GiveTwoThousandBarrelsPageByPageEachOnce)
{
    constexpr std::size_t count = 2000;
    support::Fleet fleet(1);
    Cellar& cellar = fleet.cellar(0);
    const Instant start = *fromIso("2025-01-01");
    std::set<SubjectId> made = {fleet.small().barrel};
    // Thirteen months, so that many are due at one time and pages begin and end among equals.
    for (std::size_t i = 0; i < count; ++i) {
        const auto month = std::chrono::days(30) * static_cast<int>(i % 13);
        const auto barrel =
            registerBarrel(cellar, {.fullSince = FullSince{{start - month}, DatePrecision::Month}});
        ASSERT_TRUE(barrel) << support::textOf(barrel.error());
        made.insert(barrel->barrel);
    }

    std::set<SubjectId> seen;
    AfterDue after;
    const Instant end = start + std::chrono::days(400);
    for (std::size_t pages = 0;; ++pages) {
        const auto page = barrelsDue(cellar.database(), end, after, 73);
        ASSERT_TRUE(page);
        if (page->empty()) {
            EXPECT_EQ(pages, (made.size() + 72) / 73);
            break;
        }
        for (const BarrelRow& row : *page) {
            EXPECT_TRUE(seen.insert(row.barrel).second) << "twice";
            EXPECT_GE(*row.due, after.due);
            after = {*row.due, row.barrel};
        }
    }
    EXPECT_EQ(seen, made);

    const Instant soon = start - std::chrono::days(100);
    const auto few = barrelsDue(cellar.database(), soon, {}, 10'000);
    ASSERT_TRUE(few);
    EXPECT_GT(few->size(), 100U);
    EXPECT_LT(few->size(), 1000U);
    for (const BarrelRow& row : *few) {
        EXPECT_LE(*row.due, soon);
    }

    std::set<SubjectId> inOrder;
    AfterBarrel from;
    for (;;) {
        const auto page = barrels(cellar.database(), from, 64);
        ASSERT_TRUE(page);
        if (page->empty()) {
            break;
        }
        for (const BarrelRow& row : *page) {
            EXPECT_TRUE(inOrder.insert(row.barrel).second) << "twice";
            EXPECT_GE(row.orderKey, from.orderKey);
            from = afterBarrel(row);
        }
    }
    EXPECT_EQ(inOrder, made);
}

}  // namespace spile::cellar
