#pragma once

/// SQL that makes of a cellar's database what an earlier version of the program left behind.
namespace spile::support {

/// Version 4 took the UNIQUE from entry.id; it is put back.
inline constexpr const char* backToVersion3 = R"sql(
PRAGMA foreign_keys=OFF;
PRAGMA legacy_alter_table=ON;
BEGIN;
CREATE TABLE entry_before(
    n INTEGER PRIMARY KEY,
    id BLOB NOT NULL UNIQUE CHECK(length(id) = 32),
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
INSERT INTO entry_before SELECT * FROM entry;
DROP TABLE entry;
ALTER TABLE entry_before RENAME TO entry;
CREATE INDEX entry_chain ON entry(d, seq);
CREATE INDEX entry_target ON entry(target) WHERE target IS NOT NULL;
CREATE INDEX entry_device ON entry(subject) WHERE kind = 'device';
CREATE INDEX entry_trust ON entry(kind) WHERE kind IN ('adopt', 'cut_off', 'device', 'reinstate');
CREATE TRIGGER entry_is_never_deleted BEFORE DELETE ON entry
    BEGIN SELECT RAISE(ABORT, 'entries are append-only'); END;
CREATE TRIGGER entry_is_never_changed BEFORE UPDATE ON entry
    BEGIN SELECT RAISE(ABORT, 'entries are append-only'); END;
PRAGMA user_version=3;
COMMIT;
PRAGMA legacy_alter_table=OFF;
PRAGMA foreign_keys=ON;
)sql";

/// After backToVersion3: takes away what versions 2 and 3 of the ledger brought, and of the state.
inline constexpr const char* backToVersion1 = R"sql(
DROP TABLE set_aside;
DROP INDEX entry_trust;
DROP INDEX device_limited;
DROP INDEX device_branched;
ALTER TABLE device_chain DROP COLUMN limited;
ALTER TABLE device_chain DROP COLUMN branches;
DROP INDEX taken_in_from;
DROP INDEX handed_out_own;
ALTER TABLE handed_out DROP COLUMN own_seq;
ALTER TABLE sheet DROP COLUMN step;
DROP TABLE state_barrel_now;
CREATE TABLE state_barrel_now(subject BLOB PRIMARY KEY, code TEXT NOT NULL) STRICT, WITHOUT ROWID;
UPDATE meta SET value = 1 WHERE key = 'projection';
PRAGMA user_version=1;
)sql";

}  // namespace spile::support
