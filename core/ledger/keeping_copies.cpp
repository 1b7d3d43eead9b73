#include "core/ledger/keeping_copies.hpp"

namespace spile::ledger {

namespace {

constexpr std::string_view beginning = "ledger-v";
constexpr std::string_view ending = ".db";
constexpr std::size_t dayDigits = 10;  // 2026-11-26
constexpr auto keptFor = std::chrono::days(14);

std::string dayOf(Instant t) { return toIsoTime(t).substr(0, dayDigits); }

// Both are whole and hold as many records.
Result<void> compare(Database& database, Database& copy)
{
    bool sound = false;
    SPILE_TRY(copy.each(
        [&](const Row& row) {
            sound = row.text(0) == "ok";
            return Result<void>();
        },
        "PRAGMA quick_check(1)"));
    constexpr const char* count = "SELECT count(*) FROM entry";
    SPILE_ASSIGN(here, database.integer(-1, count));
    SPILE_ASSIGN(there, copy.integer(-2, count));
    return sound && here == there
               ? Result<void>()
               : fail(ErrorCode::Damaged, "copy of ledger.db", "it is not like the database",
                      "look at the disk, then start again");
}

}  // namespace

Result<void> keepCopy(const Outside& outside, const CellarFolder& folder, Database& database,
                      std::int64_t version)
{
    // All of it is in the one file then; this process holds the cellar's lock.
    SPILE_TRY(database.checkpoint(-1));
    const Path copy = folder.folder / (std::string(beginning) + std::to_string(version) + '-' +
                                       dayOf(outside.clock.now()) + std::string(ending));
    SPILE_TRY(copyWhole(outside.files, folder.database(), copy));
    {
        SPILE_ASSIGN(opened, Database::open(copy.string(), Database::Mode::Read));
        SPILE_TRY(compare(database, opened));
    }
    for (const char* left : {"-shm", "-wal"}) {  // by SQLite, which only read it
        const Path beside = copy.string() + left;
        if (outside.files.exists(beside)) {
            SPILE_TRY(outside.files.remove(beside));
        }
    }
    return {};
}

Result<void> removeOldCopies(const Outside& outside, const CellarFolder& folder)
{
    SPILE_ASSIGN(names, outside.files.list(folder.folder));
    const std::string oldest = dayOf(outside.clock.now() - keptFor);
    for (const std::string& name : names) {
        const std::size_t end = name.find(ending);
        const bool copy = name.starts_with(beginning) && end != std::string::npos &&
                          end > beginning.size() + dayDigits;
        if (copy && name.substr(end - dayDigits, dayDigits) < oldest) {
            SPILE_TRY(outside.files.remove(folder.folder / name));
        }
    }
    return {};
}

}  // namespace spile::ledger
