#include "core/cellar/verifying.hpp"

#include "core/cellar/entry_check.hpp"

namespace spile::cellar {

using ledger::Database;
using ledger::Row;

namespace {

constexpr const char* lastEntry = "verified entry";
constexpr const char* lastPhoto = "verified photo";
constexpr const char* foundNow = "verified found";
constexpr const char* ended = "verified whole";
constexpr const char* foundThen = "verified found before";

// Photos are larger than records by so much, or more.
constexpr int entriesToPhoto = 100;

std::string worded(const Error& error) { return error.subject + ": " + error.value; }

void note(Round& round, const Error& wrong)
{
    if (round.found.empty()) {
        round.found = worded(wrong);
    }
}

Result<CellarId> cellarOf(Database& database)
{
    SPILE_ASSIGN(id, database.first([](const Row& row) { return row.id<CellarId>(0); },
                                    "SELECT value FROM meta WHERE key = 'cellar'"));
    return id ? Result<CellarId>(*id) : fail(ErrorCode::Damaged, "ledger.db", "no cellar in it");
}

// Whether there was any left.
Result<bool> verifyEntries(Database& database, Round& round, int entries, const Job& job)
{
    SPILE_ASSIGN(cellar, cellarOf(database));
    bool any = false;
    SPILE_TRY(database.each(
        [&](const Row& row) -> Result<void> {
            any = true;
            for (const Error& wrong : wrongWith(row, cellar)) {
                note(round, wrong);
            }
            round.entry = row.integer(storedRowColumn);
            return job.advance(0, 0) ? Result<void>() : fail(ErrorCode::Cancelled, "verifying");
        },
        storedEntries, round.entry, entries));
    return any;
}

Result<bool> verifyPhotos(Database& database, const ledger::PhotoStore& photos, Round& round,
                          int most, const Job& job)
{
    bool any = false;
    SPILE_TRY(database.each(
        [&](const Row& row) -> Result<void> {
            any = true;
            const auto hash = row.id<Sha256>(0);
            if (!photos.isWhole(hash)) {
                note(round, {ErrorCode::Damaged,
                             "photo " + hash.hex().substr(0, 8),
                             "missing or changed",
                             {}});
            }
            round.photo = hash;
            return job.advance(0, 0) ? Result<void>() : fail(ErrorCode::Cancelled, "verifying");
        },
        "SELECT sha256 FROM photo WHERE sha256 > ? AND present = 1 ORDER BY sha256 LIMIT ?",
        round.photo.value_or(Sha256()), most));
    return any;
}

}  // namespace

Result<Round> roundSoFar(Database& database)
{
    Round round;
    const auto text = [&](const char* key) -> Result<std::string> {
        SPILE_ASSIGN(found,
                     database.first([](const Row& row) { return row.text(0); },
                                    "SELECT value FROM meta WHERE key = ?", std::string_view(key)));
        return found.value_or("");
    };
    SPILE_ASSIGN(entry, database.integer(0, "SELECT value FROM meta WHERE key = ?",
                                         std::string_view(lastEntry)));
    round.entry = entry;
    SPILE_ASSIGN(
        photo, database.first([](const Row& row) { return row.id<Sha256>(0); },
                              "SELECT value FROM meta WHERE key = ?", std::string_view(lastPhoto)));
    round.photo = photo;
    SPILE_ASSIGN(whole,
                 database.first([](const Row& row) { return row.integer(0); },
                                "SELECT value FROM meta WHERE key = ?", std::string_view(ended)));
    round.wholeAt = whole ? std::optional(instantFromMs(*whole)) : std::nullopt;
    SPILE_ASSIGN(found, text(foundNow));
    SPILE_ASSIGN(before, text(foundThen));
    round.found = found;
    round.foundBefore = before;
    return round;
}

Result<Round> verifyNext(Database& database, const ledger::PhotoStore& photos, const Round& from,
                         int entries, Instant now, const Job& job)
{
    Round round = from;
    if (!round.photo) {
        SPILE_ASSIGN(more, verifyEntries(database, round, entries, job));
        if (more) {
            return round;
        }
    }
    SPILE_ASSIGN(more,
                 verifyPhotos(database, photos, round, std::max(1, entries / entriesToPhoto), job));
    if (more) {
        return round;
    }
    Round next;
    next.wholeAt = now;
    next.foundBefore = round.found;
    return next;
}

Result<void> keepRound(Cellar& cellar, const Round& round)
{
    SPILE_ASSIGN(change, cellar.ledger().change());
    Database& database = change.database();
    const auto keep = [&](const char* key, const ledger::Bound& value, bool there) -> Result<void> {
        SPILE_TRY(database.execute("DELETE FROM meta WHERE key = ?", std::string_view(key)));
        return there ? database.execute("INSERT INTO meta(key, value) VALUES(?, ?)",
                                        std::string_view(key), value)
                     : Result<void>();
    };
    SPILE_TRY(keep(lastEntry, round.entry, true));
    SPILE_TRY(keep(lastPhoto, round.photo.value_or(Sha256()), round.photo.has_value()));
    SPILE_TRY(keep(foundNow, round.found, !round.found.empty()));
    SPILE_TRY(keep(foundThen, round.foundBefore, !round.foundBefore.empty()));
    SPILE_TRY(keep(ended, round.wholeAt ? toMs(*round.wholeAt) : 0, round.wholeAt.has_value()));
    return change.commit();
}

}  // namespace spile::cellar
