#include "core/ledger/schema.hpp"

#include "core/ledger/entry_number.hpp"

#include <string>

namespace spile::ledger {

namespace {

constexpr const char* entryColumns = R"sql((
    n INTEGER PRIMARY KEY,
    id BLOB NOT NULL CHECK(length(id) = 32),
    d INTEGER NOT NULL REFERENCES device_chain(d),
    seq INTEGER NOT NULL CHECK(seq >= 1),
    kind TEXT NOT NULL,
    subject BLOB NOT NULL CHECK(length(subject) = 16),
    target BLOB CHECK(length(target) = 32),
    at_ms INTEGER NOT NULL,
    core BLOB NOT NULL,
    body BLOB NOT NULL,
    signature BLOB NOT NULL CHECK(length(signature) = 64)
) STRICT;
)sql";

// An id says its device and its number there, so entry_chain lets no entry in twice. It grows at
// the ends of chains and entry_id in its newest part: in a larger store, too, a day's entries meet
// in few pages.
std::string entryIndices(const std::string& table)
{
    return "CREATE UNIQUE INDEX entry_chain ON " + table +
           "(d, seq, id);\nCREATE INDEX entry_id ON " + table +
           "(" SPILE_ID_PART("n") ", " SPILE_ID_BEGINNING(
               "id") ");\nCREATE INDEX entry_target ON " +
           table + "(target) WHERE target IS NOT NULL;\nCREATE INDEX entry_device ON " + table +
           "(subject) WHERE kind = 'device';\nCREATE INDEX entry_trust ON " + table +
           "(kind) WHERE kind IN ('adopt', 'cut_off', 'device', 'reinstate');\n";
}

constexpr const char* entriesAreKept = R"sql(
CREATE TRIGGER entry_is_never_deleted BEFORE DELETE ON entry
    BEGIN SELECT RAISE(ABORT, 'entries are append-only'); END;
)sql";

// In tables without row numbers the columns of the key stand first: integrity_check of SQLite 3.40
// reports NULLs in others that come before them, where there are none.
constexpr const char* tables = R"sql(
CREATE TABLE meta(
    key TEXT PRIMARY KEY,
    value ANY NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE device_chain(
    d INTEGER PRIMARY KEY,
    device BLOB NOT NULL UNIQUE CHECK(length(device) = 16),
    public_key BLOB CHECK(length(public_key) = 32),
    trusted INTEGER NOT NULL DEFAULT 0,
    admits INTEGER NOT NULL DEFAULT 0,
    limited INTEGER NOT NULL DEFAULT 0,
    branches INTEGER NOT NULL DEFAULT 0
) STRICT;
CREATE INDEX device_limited ON device_chain(d) WHERE limited = 1;
CREATE INDEX device_branched ON device_chain(d) WHERE branches > 1;

CREATE TABLE head(
    d INTEGER NOT NULL REFERENCES device_chain(d),
    id BLOB NOT NULL,
    seq INTEGER NOT NULL,
    PRIMARY KEY(d, id)
) STRICT, WITHOUT ROWID;

CREATE TABLE set_aside(
    n INTEGER PRIMARY KEY REFERENCES entry(n),
    d INTEGER NOT NULL
) STRICT;
CREATE INDEX set_aside_device ON set_aside(d, n);

CREATE TABLE waiting(
    n INTEGER PRIMARY KEY,
    id BLOB NOT NULL UNIQUE CHECK(length(id) = 32),
    device BLOB NOT NULL,
    seq INTEGER NOT NULL,
    core BLOB NOT NULL,
    body BLOB NOT NULL,
    signature BLOB NOT NULL
) STRICT;
CREATE INDEX waiting_chain ON waiting(device, seq);

CREATE TABLE photo(
    sha256 BLOB PRIMARY KEY CHECK(length(sha256) = 32),
    bytes INTEGER NOT NULL,
    present INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX photo_missing ON photo(sha256) WHERE present = 0;

CREATE TABLE entry_photo(
    n INTEGER NOT NULL REFERENCES entry(n),
    sha256 BLOB NOT NULL,
    PRIMARY KEY(n, sha256)
) STRICT, WITHOUT ROWID;

CREATE TABLE peer_head(
    peer BLOB NOT NULL,
    device BLOB NOT NULL,
    id BLOB NOT NULL,
    seq INTEGER NOT NULL,
    PRIMARY KEY(peer, device, id)
) STRICT, WITHOUT ROWID;
CREATE TABLE peer_missing_photo(
    peer BLOB NOT NULL,
    sha256 BLOB NOT NULL,
    PRIMARY KEY(peer, sha256)
) STRICT, WITHOUT ROWID;

CREATE TABLE taken_in(
    n INTEGER PRIMARY KEY,
    bundle BLOB NOT NULL UNIQUE,
    from_device BLOB NOT NULL,
    number INTEGER NOT NULL,
    taken_ms INTEGER NOT NULL,
    added INTEGER NOT NULL,
    known INTEGER NOT NULL,
    waiting INTEGER NOT NULL
) STRICT;
CREATE TABLE handed_out(
    n INTEGER PRIMARY KEY,
    bundle BLOB NOT NULL,
    to_device BLOB,
    made_ms INTEGER NOT NULL,
    entries INTEGER NOT NULL,
    photos INTEGER NOT NULL,
    own_seq INTEGER NOT NULL DEFAULT 0
) STRICT;
CREATE INDEX taken_in_from ON taken_in(from_device, n);
CREATE INDEX handed_out_own ON handed_out(own_seq);
)sql";

// What version 2 added. A day file that version 1 handed out counts as covering nothing: what it
// covered was not written down.
constexpr const char* fromVersion1 = R"sql(
ALTER TABLE handed_out ADD COLUMN own_seq INTEGER NOT NULL DEFAULT 0;
CREATE INDEX taken_in_from ON taken_in(from_device, n);
CREATE INDEX handed_out_own ON handed_out(own_seq);
PRAGMA user_version=2;
)sql";

// What version 3 added: which records are set aside. What is in the tables follows from the entries
// and is made with the state, which is made anew with this version.
constexpr const char* fromVersion2 = R"sql(
ALTER TABLE device_chain ADD COLUMN limited INTEGER NOT NULL DEFAULT 0;
ALTER TABLE device_chain ADD COLUMN branches INTEGER NOT NULL DEFAULT 0;
UPDATE device_chain SET branches = (SELECT count(*) FROM head WHERE head.d = device_chain.d);
CREATE INDEX device_limited ON device_chain(d) WHERE limited = 1;
CREATE INDEX device_branched ON device_chain(d) WHERE branches > 1;
CREATE INDEX entry_trust ON entry(kind) WHERE kind IN ('adopt', 'cut_off', 'device', 'reinstate');
CREATE TABLE set_aside(
    n INTEGER PRIMARY KEY REFERENCES entry(n),
    d INTEGER NOT NULL
) STRICT;
CREATE INDEX set_aside_device ON set_aside(d, n);
PRAGMA user_version=3;
)sql";

// What version 4 changed: ids are UNIQUE with their place in a chain, and not in an index of all.
// SQLite takes no UNIQUE from a column, so the table is made anew and takes the name of the old
// one. Its indices grow with it, as they do when entries are taken in: made at the end, they would
// be sorted in memory, all of them.
constexpr const char* dropOldIndices = R"sql(
DROP INDEX IF EXISTS entry_chain;
DROP INDEX IF EXISTS entry_target;
DROP INDEX IF EXISTS entry_device;
DROP INDEX IF EXISTS entry_trust;
)sql";
constexpr const char* entryToItsSuccessor = R"sql(
DROP TABLE entry;
ALTER TABLE entry_anew RENAME TO entry;
)sql";

// Part by part, to tell how far it is.
Result<void> copyEntries(Database& database, const Job& job)
{
    constexpr std::int64_t atOnce = 4096;
    SPILE_ASSIGN(all, database.integer(0, "SELECT count(*) FROM entry"));
    std::int64_t last = 0;
    for (std::int64_t done = 0;;) {
        SPILE_TRY(database.execute(
            "INSERT INTO entry_anew SELECT n, id, d, seq, kind, subject, target, at_ms, core, "
            "body, signature FROM entry WHERE n > ? ORDER BY n LIMIT ?",
            last, atOnce));
        if (database.changes() == 0) {
            return {};
        }
        done += database.changes();
        SPILE_ASSIGN(now, database.integer(0, "SELECT max(n) FROM entry_anew"));
        last = now;
        if (!job.advance(static_cast<std::uint64_t>(done), static_cast<std::uint64_t>(all))) {
            return fail(ErrorCode::Cancelled, "ledger.db");
        }
    }
}

Result<void> renewFromVersion3(Database& database, const Job& job)
{
    SPILE_TRY(database.run(dropOldIndices));
    SPILE_TRY(database.run(std::string("CREATE TABLE entry_anew") + entryColumns));
    SPILE_TRY(database.run(entryIndices("entry_anew")));
    SPILE_TRY(copyEntries(database, job));
    SPILE_TRY(database.run(entryToItsSuccessor));
    SPILE_TRY(database.run(entriesAreKept));
    SPILE_TRY(database.run(entriesNeverChange));
    return database.run("PRAGMA user_version=4;");
}

}  // namespace

Result<void> createSchema(Database& database)
{
    SPILE_TRY(database.run("PRAGMA application_id=" + std::to_string(applicationId) + ";"));
    SPILE_TRY(database.run(tables));
    SPILE_TRY(database.run(std::string("CREATE TABLE entry") + entryColumns +
                           entryIndices("entry") + entriesAreKept));
    SPILE_TRY(database.run(entriesNeverChange));
    // Last, so that a file without it is one that was never finished.
    return database.run("PRAGMA user_version=" + std::to_string(schemaVersion) + ";");
}

Result<std::int64_t> storedVersion(Database& database)
{
    SPILE_ASSIGN(application, database.integer(0, "PRAGMA application_id"));
    SPILE_ASSIGN(version, database.integer(0, "PRAGMA user_version"));
    if (application != applicationId || version < 1) {
        return fail(ErrorCode::Damaged, "ledger.db", "not a Spile ledger");
    }
    return version;
}

namespace {

Result<void> renewFrom(Database& database, std::int64_t version, const Job& job)
{
    SPILE_ASSIGN(transaction, Transaction::begin(database));
    if (version < 2) {
        SPILE_TRY(database.run(fromVersion1));
    }
    if (version < 3) {
        SPILE_TRY(database.run(fromVersion2));
    }
    SPILE_TRY(renewFromVersion3(database, job));
    return transaction.commit();
}

}  // namespace

Result<void> renewSchema(Database& database, const Job& job)
{
    SPILE_ASSIGN(version, database.integer(0, "PRAGMA user_version"));
    if (version >= schemaVersion) {
        return {};
    }
    // While table entry is exchanged, nothing may look at what refers to it: neither foreign keys
    // nor the views of a state that is made anew afterwards. Inside a transaction this is ignored.
    SPILE_TRY(database.run("PRAGMA foreign_keys=OFF; PRAGMA legacy_alter_table=ON;"));
    auto renewed = renewFrom(database, version, job);
    auto back = database.run("PRAGMA legacy_alter_table=OFF; PRAGMA foreign_keys=ON;");
    return renewed ? std::move(back) : std::move(renewed);
}

}  // namespace spile::ledger
