#include "core/cellar/verifying.hpp"

#include "core/ledger/chain_check.hpp"
#include "core/ledger/entry_check.hpp"
#include "core/ledger/mending.hpp"

namespace spile::cellar {

using ledger::Database;
using ledger::Row;

namespace {

constexpr std::string_view lastEntry = "verified entry";
constexpr std::string_view lastPhoto = "verified photo";
constexpr std::string_view ended = "verified whole";

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
            for (const Error& wrong : ledger::wrongWith(row, cellar)) {
                note(round, wrong);
            }
            round.entry = row.integer(ledger::storedRowColumn);
            return job.advance(0, 0) ? Result<void>() : fail(ErrorCode::Cancelled, "verifying");
        },
        ledger::storedEntries, round.entry, entries));
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
                round.spoiltPhotos.push_back(hash);
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
    const auto text = [&](std::string_view key) -> Result<std::string> {
        SPILE_ASSIGN(found, database.first([](const Row& row) { return row.text(0); },
                                           "SELECT value FROM meta WHERE key = ?", key));
        return found.value_or("");
    };
    SPILE_ASSIGN(entry, database.integer(0, "SELECT value FROM meta WHERE key = ?", lastEntry));
    round.entry = entry;
    SPILE_ASSIGN(photo, database.first([](const Row& row) { return row.id<Sha256>(0); },
                                       "SELECT value FROM meta WHERE key = ?", lastPhoto));
    round.photo = photo;
    SPILE_ASSIGN(whole, database.first([](const Row& row) { return row.integer(0); },
                                       "SELECT value FROM meta WHERE key = ?", ended));
    round.wholeAt = whole ? std::optional(instantFromMs(*whole)) : std::nullopt;
    SPILE_ASSIGN(found, text(ledger::damageFound));
    SPILE_ASSIGN(before, text(ledger::damageFoundBefore));
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
    SPILE_ASSIGN(beside, ledger::wrongBesideEntries(database, job));
    for (const Error& wrong : beside) {
        note(round, wrong);
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
    for (const Sha256& hash : round.spoiltPhotos) {
        SPILE_TRY(ledger::missPhoto(cellar.ledger().photos(), database, hash));
    }
    const auto keep = [&](std::string_view key, const ledger::Bound& value,
                          bool there) -> Result<void> {
        SPILE_TRY(database.execute("DELETE FROM meta WHERE key = ?", key));
        return there ? database.execute("INSERT INTO meta(key, value) VALUES(?, ?)", key, value)
                     : Result<void>();
    };
    SPILE_TRY(keep(lastEntry, round.entry, true));
    SPILE_TRY(keep(lastPhoto, round.photo.value_or(Sha256()), round.photo.has_value()));
    SPILE_TRY(keep(ledger::damageFound, round.found, !round.found.empty()));
    SPILE_TRY(keep(ledger::damageFoundBefore, round.foundBefore, !round.foundBefore.empty()));
    SPILE_TRY(keep(ended, round.wholeAt ? toMs(*round.wholeAt) : 0, round.wholeAt.has_value()));
    return change.commit();
}

Result<void> keepRound(Cellar& cellar, const CheckReport& report, Instant now)
{
    Round round;
    round.wholeAt = now;
    round.foundBefore = report.problems.empty() ? "" : worded(report.problems.front());
    round.spoiltPhotos = report.spoiltPhotos;
    return keepRound(cellar, round);
}

}  // namespace spile::cellar
