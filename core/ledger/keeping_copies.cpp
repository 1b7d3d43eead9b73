#include "core/ledger/keeping_copies.hpp"

#include <algorithm>
#include <optional>

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

bool isCopy(std::string_view name)
{
    const std::size_t end = name.find(ending);
    return name.starts_with(beginning) && end != std::string_view::npos &&
           end > beginning.size() + dayDigits;
}

// A process that was killed while it wrote one may begin the next on another day.
Result<void> removeUnfinished(FileSystem& files, const CellarFolder& folder)
{
    SPILE_ASSIGN(names, files.list(folder.folder));
    for (const std::string& name : names) {
        if (name.starts_with(std::string(".tmp-") + std::string(beginning))) {
            SPILE_TRY(files.remove(folder.folder / name));
        }
    }
    return {};
}

Result<bool> haveSameBytes(FileSystem& files, const Path& one, const Path& other)
{
    SPILE_ASSIGN(a, files.open(one));
    SPILE_ASSIGN(b, files.open(other));
    if (a->size() != b->size()) {
        return false;
    }
    constexpr std::uint64_t pieceMost = std::uint64_t{1} << 20U;
    Bytes here;
    Bytes there;
    for (std::uint64_t at = 0; at < a->size(); at += here.size()) {
        here.resize(std::min(pieceMost, a->size() - at));
        there.resize(here.size());
        SPILE_TRY(a->readAt(at, here));
        SPILE_TRY(b->readAt(at, there));
        if (here != there) {
            return false;
        }
    }
    return true;
}

// A copy that an attempt left which came to nothing, by a full disk perhaps: another one would take
// the room that was made since.
Result<std::optional<Path>> sameCopy(FileSystem& files, const CellarFolder& folder,
                                     const std::string& ofVersion)
{
    SPILE_ASSIGN(names, files.list(folder.folder));
    for (const std::string& name : names) {
        if (!name.starts_with(ofVersion) || !name.ends_with(ending)) {
            continue;
        }
        const auto same = haveSameBytes(files, folder.folder / name, folder.database());
        if (same && *same) {  // one that cannot be read is none
            return std::optional<Path>(folder.folder / name);
        }
    }
    return std::optional<Path>();
}

}  // namespace

Result<void> keepCopy(const Outside& outside, const CellarFolder& folder, Database& database,
                      std::int64_t version)
{
    FileSystem& files = outside.files;
    SPILE_TRY(removeUnfinished(files, folder));
    // All of it is in the one file then; this process holds the cellar's lock.
    SPILE_TRY(database.checkpoint(-1));
    const std::string ofVersion = std::string(beginning) + std::to_string(version) + '-';
    const Path copy =
        folder.folder / (ofVersion + dayOf(outside.clock.now()) + std::string(ending));
    SPILE_ASSIGN(same, sameCopy(files, folder, ofVersion));
    if (!same) {
        SPILE_TRY(copyWhole(files, folder.database(), copy));
    } else if (*same != copy) {  // it is kept from now on
        SPILE_TRY(files.rename(*same, copy));
        SPILE_TRY(files.syncFolder(folder.folder));
    }
    {
        SPILE_ASSIGN(opened, Database::open(copy.string(), Database::Mode::Read));
        SPILE_TRY(compare(database, opened));
    }
    for (const char* left : {"-shm", "-wal"}) {  // by SQLite, which only read it
        const Path beside = copy.string() + left;
        if (files.exists(beside)) {
            SPILE_TRY(files.remove(beside));
        }
    }
    return {};
}

Result<void> removeOldCopies(const Outside& outside, const CellarFolder& folder)
{
    SPILE_ASSIGN(names, outside.files.list(folder.folder));
    const std::string oldest = dayOf(outside.clock.now() - keptFor);
    for (const std::string& name : names) {
        if (isCopy(name) && name.substr(name.find(ending) - dayDigits, dayDigits) < oldest) {
            SPILE_TRY(outside.files.remove(folder.folder / name));
        }
    }
    return {};
}

}  // namespace spile::ledger
