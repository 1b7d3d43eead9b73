#include "core/cellar/state_schema.hpp"

#include "core/cellar/true_time.hpp"

#include <algorithm>
#include <array>

namespace spile::cellar {

namespace {

// The columns that every kind's table begins with. `at_ms` is when it is said to have happened,
// `when_ms` when it counts as having: a date in the future is one of recording, so that it never
// wins by being one. Both are set right by what was observed of the device's clock (true_time.hpp);
// `clock_ms` is then what `at_ms` was by that clock.
constexpr std::string_view commonColumns =
    "entry BLOB NOT NULL, subject BLOB NOT NULL, device BLOB NOT NULL, seq INTEGER NOT NULL, "
    "at_ms INTEGER NOT NULL, when_ms INTEGER NOT NULL, clock_ms INTEGER, answers BLOB, voided "
    "INTEGER NOT NULL, amended INTEGER NOT NULL, two_values INTEGER NOT NULL, flawed INTEGER NOT "
    "NULL";
constexpr std::string_view commonNames =
    "entry, subject, device, seq, at_ms, when_ms, clock_ms, answers, voided, amended, two_values, "
    "flawed";
constexpr std::string_view commonPlaces = "?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?";

std::string_view sqlType(FieldType type)
{
    switch (type) {
        case FieldType::Integer:
        case FieldType::Flag:
            return "INTEGER";
        case FieldType::Text:
            return "TEXT";
        case FieldType::Bytes:
        case FieldType::List:
            break;
    }
    return "BLOB";
}

// What is many to a subject lies together by subject: a barrel's page reads few pages of the file,
// and so do a day's records of a barrel, however many barrels there are.
std::string_view keyOf(const KindSpec& kind) { return kind.bySubject ? "subject, entry" : "entry"; }

KindStatements::ItemTable itemTable(const KindSpec& kind, const FieldSpec& spec)
{
    const std::string table = itemTableOf(kind.kind, spec.field);
    std::string columns;
    std::string names;
    std::string places;
    for (const ItemColumn& column : spec.items) {
        columns += ", " + std::string(column.name) + " " + std::string(sqlType(column.type));
        names += ", " + std::string(column.name);
        places += ", ?";
    }
    return {spec.field,
            "CREATE %TEMP% TABLE " + table +
                "(entry BLOB NOT NULL, subject BLOB NOT NULL, row INTEGER NOT NULL" + columns +
                ", PRIMARY KEY(" + std::string(keyOf(kind)) + ", row)) STRICT, WITHOUT ROWID;\n",
            "DELETE FROM " + table + " WHERE entry = ? AND subject = ?",
            "INSERT INTO " + table + "(entry, subject, row" + names + ") VALUES(?, ?, ?" + places +
                ")"};
}

constexpr const char* tables = R"sql(
CREATE %TEMP% TABLE state_amend(
    entry BLOB PRIMARY KEY,
    target BLOB NOT NULL,
    voided INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX %SCHEMA%state_amend_target ON state_amend(target);

CREATE %TEMP% TABLE state_void(
    entry BLOB PRIMARY KEY,
    target BLOB NOT NULL,
    voided INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX %SCHEMA%state_void_target ON state_void(target);

CREATE %TEMP% TABLE state_attached(
    entry BLOB NOT NULL,
    row INTEGER NOT NULL,
    sha256 BLOB NOT NULL,
    bytes INTEGER NOT NULL,
    PRIMARY KEY(entry, row)
) STRICT, WITHOUT ROWID;

CREATE %TEMP% TABLE state_unknown(
    entry BLOB PRIMARY KEY,
    kind TEXT NOT NULL,
    kind_version INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

CREATE %TEMP% TABLE state_unsettled(
    what INTEGER NOT NULL,
    entry BLOB NOT NULL,
    PRIMARY KEY(what, entry)
) STRICT, WITHOUT ROWID;

CREATE %TEMP% TABLE state_barrel_now(
    subject BLOB PRIMARY KEY,
    code TEXT NOT NULL,
    mark TEXT,
    spirit TEXT,
    size_ml INTEGER,
    place BLOB,
    filled INTEGER NOT NULL,
    fill BLOB,
    batch BLOB,
    fill_number INTEGER,
    filled_ms INTEGER,
    filled_precision INTEGER,
    volume_ml INTEGER,
    tastings INTEGER NOT NULL,
    last_taste_ms INTEGER,
    last_gauge_ms INTEGER,
    last_draw_ms INTEGER,
    verdict TEXT,
    next_step TEXT NOT NULL,
    due_ms INTEGER,
    due_by_habit INTEGER NOT NULL,
    emptied_ms INTEGER,
    order_key TEXT NOT NULL,
    next_use TEXT,
    sour INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX %SCHEMA%state_barrel_now_order ON state_barrel_now(order_key, subject);
CREATE INDEX %SCHEMA%state_barrel_now_code ON state_barrel_now(code, subject);
)sql";

// What was drawn for a flight or tasted in it is found by the flight, and flights by their time.
constexpr std::string_view flightIndex =
    "CREATE INDEX %SCHEMA%TABLE_flight ON TABLE(flight, glass) WHERE voided = 0 AND flight IS NOT "
    "NULL;\n";
constexpr std::string_view timeIndex =
    "CREATE INDEX %SCHEMA%TABLE_when ON TABLE(when_ms, subject) WHERE voided = 0;\n";

// Beer is followed from what it came from to where it went.
constexpr std::string_view answersIndex =
    "CREATE INDEX %SCHEMA%TABLE_answers ON TABLE(answers, when_ms) WHERE voided = 0 AND answers IS "
    "NOT NULL;\n";

// Indices of single tables.
struct OwnIndex {
    std::string_view kind, sql;
};
constexpr std::array ownIndices = {
    OwnIndex{"bench",
             "CREATE INDEX %SCHEMA%state_bench_when ON state_bench(when_ms, subject) WHERE "
             "voided = 0;\n"},
    OwnIndex{"lot",
             "CREATE INDEX %SCHEMA%state_lot_answers ON state_lot(answers) WHERE voided = 0 AND "
             "answers IS NOT NULL;\n"},
    OwnIndex{"lot",
             "CREATE INDEX %SCHEMA%state_lot_when ON state_lot(when_ms, subject) WHERE "
             "voided = 0;\n"},
    OwnIndex{"lot",
             "CREATE INDEX %SCHEMA%state_lot_name ON state_lot(name, when_ms) WHERE voided "
             "= 0;\n"},
    OwnIndex{"package",
             "CREATE INDEX %SCHEMA%state_package_code ON state_package(lot_code) WHERE "
             "voided = 0;\n"},
    OwnIndex{"finish",
             "CREATE INDEX %SCHEMA%state_finish_until ON state_finish(until_ms, entry) "
             "WHERE voided = 0 AND until_ms IS NOT NULL;\n"},
    OwnIndex{"mix",
             "CREATE INDEX %SCHEMA%state_mix_sources_source ON state_mix_sources(source, "
             "entry);\n"},
    OwnIndex{"transfer",
             "CREATE INDEX %SCHEMA%state_transfer_sources_source ON "
             "state_transfer_sources(source, entry);\n"},
    OwnIndex{"fill",
             "CREATE INDEX %SCHEMA%state_fill_batch ON state_fill(batch) WHERE voided = 0 "
             "AND batch IS NOT NULL;\n"},
    OwnIndex{"top_up",
             "CREATE INDEX %SCHEMA%state_top_up_batch ON state_top_up(batch) WHERE "
             "voided = 0 AND batch IS NOT NULL;\n"},
    OwnIndex{observeKind,
             "CREATE INDEX %SCHEMA%state_clock_observe_boot ON state_clock_observe(subject, boot, "
             "when_ms, device, seq) WHERE voided = 0;\n"},
    OwnIndex{"finish",
             "CREATE INDEX %SCHEMA%state_finish_substance ON state_finish(substance) "
             "WHERE voided = 0;\n"},
};

constexpr const char* drafts = R"sql(
CREATE TABLE IF NOT EXISTS sheet(
    sheet BLOB PRIMARY KEY,
    barrel BLOB NOT NULL,
    person BLOB NOT NULL,
    flight BLOB,
    glass INTEGER,
    opened_ms INTEGER NOT NULL,
    step TEXT NOT NULL DEFAULT ''
) STRICT, WITHOUT ROWID;

CREATE TABLE IF NOT EXISTS draft(
    sheet BLOB NOT NULL REFERENCES sheet(sheet),
    tap INTEGER NOT NULL,
    subject TEXT NOT NULL,
    name TEXT NOT NULL,
    number INTEGER,
    text TEXT,
    tapped_ms INTEGER NOT NULL,
    PRIMARY KEY(sheet, tap)
) STRICT, WITHOUT ROWID;

CREATE TABLE IF NOT EXISTS work(
    run BLOB PRIMARY KEY,
    sheet TEXT NOT NULL,
    barrel BLOB NOT NULL,
    person BLOB NOT NULL,
    step TEXT NOT NULL,
    begun_ms INTEGER NOT NULL,
    stopped INTEGER NOT NULL,
    timer_begun_ms INTEGER,
    timer_end_ms INTEGER,
    timer_boot_ms INTEGER,
    timer_boot BLOB,
    timer_planned_ms INTEGER,
    timer_left_ms INTEGER
) STRICT, WITHOUT ROWID;

CREATE TABLE IF NOT EXISTS work_value(
    run BLOB NOT NULL REFERENCES work(run),
    name TEXT NOT NULL,
    number INTEGER,
    text TEXT NOT NULL,
    PRIMARY KEY(run, name)
) STRICT, WITHOUT ROWID;

CREATE TABLE IF NOT EXISTS flight_taster(
    flight BLOB NOT NULL,
    person BLOB NOT NULL,
    place INTEGER NOT NULL,
    PRIMARY KEY(flight, person)
) STRICT, WITHOUT ROWID;

CREATE TABLE IF NOT EXISTS flight_over(flight BLOB PRIMARY KEY) STRICT, WITHOUT ROWID;
)sql";

// What this device computed from the state: an outlook is an estimate at a time, and no fact. When
// a barrel is due follows from its summary and its outlook; whichever is written, a trigger says it
// anew. An outlook counts until the barrel is tasted again, and where no one has said otherwise.
constexpr const char* dueTables = R"sql(
CREATE TABLE IF NOT EXISTS outlook_now(
    barrel BLOB PRIMARY KEY,
    fingerprint TEXT NOT NULL,
    next_ms INTEGER NOT NULL,
    reason TEXT NOT NULL,
    advice TEXT NOT NULL,
    chance_now_e3 INTEGER,
    best_chance_e3 INTEGER,
    best_from_ms INTEGER,
    best_ms INTEGER,
    best_to_ms INTEGER,
    horizon_ms INTEGER NOT NULL,
    made_ms INTEGER NOT NULL,
    order_ms INTEGER AS (coalesce(best_ms, 9223372036854775807))
) STRICT, WITHOUT ROWID;
CREATE INDEX IF NOT EXISTS outlook_now_order ON outlook_now(order_ms, barrel);
CREATE INDEX IF NOT EXISTS outlook_now_made ON outlook_now(made_ms);

CREATE TABLE IF NOT EXISTS due_now(
    subject BLOB PRIMARY KEY,
    due_ms INTEGER NOT NULL,
    reason TEXT
) STRICT, WITHOUT ROWID;
CREATE INDEX IF NOT EXISTS due_now_order ON due_now(due_ms, subject, reason);
DELETE FROM due_now;

DROP VIEW IF EXISTS barrel_fingerprint;
CREATE VIEW barrel_fingerprint AS
    SELECT subject, hex(fill) || ' ' || tastings || ' ' || coalesce(last_taste_ms, 0) AS fingerprint
    FROM state_barrel_now WHERE filled = 1;
DROP VIEW IF EXISTS barrel_due;
CREATE VIEW barrel_due AS
    SELECT b.subject, coalesce(o.next_ms, b.due_ms) AS due_ms, o.reason
    FROM state_barrel_now AS b LEFT JOIN outlook_now AS o
    ON o.barrel = b.subject AND b.due_by_habit = 1 AND o.reason <> 'habit'
    AND o.fingerprint = (SELECT fingerprint FROM barrel_fingerprint AS f WHERE f.subject = b.subject)
    WHERE b.due_ms IS NOT NULL;

CREATE TRIGGER due_by_summary AFTER INSERT ON state_barrel_now BEGIN
    DELETE FROM due_now WHERE subject = NEW.subject;
    INSERT INTO due_now SELECT * FROM barrel_due WHERE subject = NEW.subject;
END;
CREATE TRIGGER not_due_without_summary AFTER DELETE ON state_barrel_now BEGIN
    DELETE FROM due_now WHERE subject = OLD.subject;
END;
DROP TRIGGER IF EXISTS due_by_outlook;
CREATE TRIGGER due_by_outlook AFTER INSERT ON outlook_now BEGIN
    DELETE FROM due_now WHERE subject = NEW.barrel;
    INSERT INTO due_now SELECT * FROM barrel_due WHERE subject = NEW.barrel;
END;
DROP TRIGGER IF EXISTS due_without_outlook;
CREATE TRIGGER due_without_outlook AFTER DELETE ON outlook_now BEGIN
    DELETE FROM due_now WHERE subject = OLD.barrel;
    INSERT INTO due_now SELECT * FROM barrel_due WHERE subject = OLD.barrel;
END;
)sql";

constexpr std::array<std::string_view, 6> tableNames = {"state_amend",      "state_attached",
                                                        "state_barrel_now", "state_unknown",
                                                        "state_unsettled",  "state_void"};

void replaceAll(std::string& text, std::string_view from, std::string_view to)
{
    for (std::size_t at = text.find(from); at != std::string::npos;
         at = text.find(from, at + to.size())) {
        text.replace(at, from.size(), to);
    }
}

}  // namespace

std::string tableOf(std::string_view kind) { return "state_" + std::string(kind); }

std::string itemTableOf(std::string_view kind, Field field)
{
    return tableOf(kind) + "_" + std::string(specOf(field).name);
}

KindStatements statementsOf(const KindSpec& kind)
{
    const std::string table = tableOf(kind.kind);
    KindStatements made;
    std::string columns(commonColumns);
    std::string names(commonNames);
    std::string places(commonPlaces);
    for (const KindField& field : kind.fields) {
        const FieldSpec& spec = specOf(field.field);
        if (spec.type == FieldType::List) {
            made.items.push_back(itemTable(kind, spec));
            continue;
        }
        columns += ", " + std::string(spec.name) + " " + std::string(sqlType(spec.type));
        names += ", " + std::string(spec.name);
        places += ", ?";
    }
    const auto has = [&](Field field) {
        return std::any_of(kind.fields.begin(), kind.fields.end(),
                           [&](const KindField& own) { return own.field == field; });
    };
    // What was drawn is summed from the index alone, for which SQLite 3.40 wants `voided` there,
    // too.
    const std::string summed = has(Field::VolumeMl) ? ", volume_ml, voided" : "";
    made.create = "CREATE %TEMP% TABLE " + table + "(" + columns + ", PRIMARY KEY(" +
                  std::string(keyOf(kind)) + ")) STRICT, WITHOUT ROWID;\nCREATE INDEX %SCHEMA%" +
                  table + "_subject ON " + table + "(subject, when_ms, device, seq" + summed +
                  ") WHERE voided = 0;\n";
    if (has(Field::Flight) || has(Field::Glasses)) {
        std::string index(has(Field::Flight) ? flightIndex : timeIndex);
        replaceAll(index, "TABLE", table);
        made.create += index;
    }
    if (kind.followed) {
        std::string index(answersIndex);
        replaceAll(index, "TABLE", table);
        made.create += index;
    }
    for (const auto& item : made.items) {
        made.create += item.create;
    }
    for (const OwnIndex& index : ownIndices) {
        if (index.kind == kind.kind) {
            made.create += index.sql;
        }
    }
    made.upsert = "INSERT OR REPLACE INTO " + table + "(" + names + ") VALUES(" + places + ")";
    made.remove = "DELETE FROM " + table + " WHERE entry = ? AND subject = ?";
    made.exists = "SELECT 1 FROM " + table + " WHERE subject = ? AND voided = 0 LIMIT 1";
    return made;
}

const char* commonTables() { return tables; }

Result<void> makeDraftTables(ledger::Database& database)
{
    SPILE_TRY(database.run(drafts));
    SPILE_ASSIGN(hasStep, database.integer(
                              0, "SELECT 1 FROM pragma_table_info('sheet') WHERE name = 'step'"));
    return hasStep == 1
               ? Result<void>()
               : database.run("ALTER TABLE sheet ADD COLUMN step TEXT NOT NULL DEFAULT '';");
}

Result<void> makeDueTables(ledger::Database& database) { return database.run(dueTables); }

std::span<const std::string_view> commonTableNames() { return tableNames; }

std::string placed(std::string script, bool temporary)
{
    replaceAll(script, "%TEMP%", temporary ? "TEMP" : "");
    replaceAll(script, "%SCHEMA%", temporary ? "temp." : "");
    return script;
}

}  // namespace spile::cellar
