// Looking for an entry by its id, in a store whose ids lie in several parts of their index.
#include "core/ledger/entry_check.hpp"
#include "core/ledger/entry_number.hpp"
#include "core/ledger/schema.hpp"
#include "tests/support/small_cellar.hpp"
#include "tests/support/temp_folder.hpp"

#include <gmock/gmock.h>

namespace spile::ledger {

namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

constexpr std::int64_t rowsOfPart = std::int64_t{1} << 20;

// 32 bytes that begin with so many equal ones.
EntryId idOf(std::uint8_t beginning, std::uint8_t ending)
{
    Bytes bytes(EntryId::size, ending);
    std::fill_n(bytes.begin(), 8, beginning);
    return *EntryId::fromBytes(bytes);
}

class EntryNumber : public testing::Test {
protected:
    support::TempFolder folder;
    Database database =
        *Database::open((folder.path() / "ledger.db").string(), Database::Mode::Write);

    void SetUp() override
    {
        ASSERT_TRUE(createSchema(database));
        ASSERT_TRUE(database.execute("INSERT INTO device_chain(device) VALUES(zeroblob(16))"));
    }
    // Without `n`: the row after the last.
    Result<void> insert(const std::optional<std::int64_t>& n, const EntryId& id)
    {
        return database.execute(
            "INSERT INTO entry VALUES(?, ?, 1, 1, 'draw', zeroblob(16), NULL, 0, x'', x'', "
            "zeroblob(64))",
            n, id);
    }
    std::int64_t numberOf(const EntryId& id)
    {
        const auto found = database.integer(-1, "SELECT " SPILE_ENTRY_NUMBER("?1"), id);
        EXPECT_TRUE(found) << support::textOf(found.error());
        return found.value_or(-1);
    }
    std::vector<std::string> planOf(const std::string& query)
    {
        std::vector<std::string> lines;
        EXPECT_TRUE(database.eachOnce(
            [&](const Row& row) {
                lines.push_back(row.text(3));
                return Result<void>();
            },
            "EXPLAIN QUERY PLAN " + query));
        return lines;
    }
};

}  // namespace

TEST_F(EntryNumber, IsFoundInEachPartOfTheIndex)
{
    const std::vector<std::int64_t> rows = {1, rowsOfPart - 1, rowsOfPart, rowsOfPart + 5,
                                            3 * rowsOfPart + 7};
    std::uint8_t next = 1;
    for (const std::int64_t n : rows) {
        ASSERT_TRUE(insert(n, idOf(next, next)));
        ++next;
    }
    next = 1;
    for (const std::int64_t n : rows) {
        EXPECT_EQ(numberOf(idOf(next, next)), n);
        ++next;
    }
    ASSERT_TRUE(insert(std::nullopt, idOf(next, next)));
    EXPECT_EQ(numberOf(idOf(next, next)), 3 * rowsOfPart + 8);
}

TEST_F(EntryNumber, IsNoneForAnIdThatIsNotThere)
{
    EXPECT_EQ(numberOf(idOf(9, 9)), 0) << "of no entry at all";
    ASSERT_TRUE(insert(2 * rowsOfPart + 1, idOf(1, 1)));
    EXPECT_EQ(numberOf(idOf(9, 9)), 0);
    EXPECT_EQ(numberOf(idOf(1, 9)), 0) << "with the beginning of another";
}

TEST_F(EntryNumber, TellsIdsWithOneBeginningApart)
{
    ASSERT_TRUE(insert(1, idOf(1, 1)));
    ASSERT_TRUE(insert(2, idOf(1, 2)));
    ASSERT_TRUE(insert(rowsOfPart + 1, idOf(1, 3)));
    EXPECT_EQ(numberOf(idOf(1, 1)), 1);
    EXPECT_EQ(numberOf(idOf(1, 2)), 2);
    EXPECT_EQ(numberOf(idOf(1, 3)), rowsOfPart + 1);
    EXPECT_EQ(numberOf(idOf(1, 4)), 0);
}

TEST_F(EntryNumber, IsReadByTheIndexOfIds)
{
    const auto plan = planOf("SELECT core FROM entry WHERE n = " SPILE_ENTRY_NUMBER("?1"));
    EXPECT_THAT(plan, Contains("SEARCH looked USING INDEX entry_id (<expr>=? AND <expr>=?)"));
    EXPECT_THAT(plan, Contains("SEARCH entry USING INTEGER PRIMARY KEY (rowid=?)"));
    EXPECT_THAT(plan, Not(Contains(HasSubstr("SCAN entry"))));
    EXPECT_THAT(plan, Not(Contains(HasSubstr("SCAN looked"))));
}

TEST_F(EntryNumber, OfTheEntryBeforeIsReadByBothIndices)
{
    const auto plan = planOf(std::string(storedEntries));
    EXPECT_THAT(plan, Contains(StartsWith("SEARCH q USING COVERING INDEX entry_chain")));
    EXPECT_THAT(plan, Contains(StartsWith("SEARCH p USING INDEX entry_id")));
    EXPECT_THAT(plan, Not(Contains(StartsWith("SCAN"))));
}

TEST_F(EntryNumber, NoEntryIsStoredTwiceButTwoMayHaveOneNumber)
{
    ASSERT_TRUE(insert(1, idOf(1, 1)));
    EXPECT_TRUE(insert(2, idOf(2, 2))) << "a copied device";
    EXPECT_FALSE(insert(rowsOfPart + 1, idOf(1, 1)));
}

}  // namespace spile::ledger
