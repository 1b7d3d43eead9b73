#include "core/ledger/database.hpp"

#include <array>
#include <memory>
#include <sqlite3.h>
#include <utility>

namespace spile::ledger {

bool Row::isNull(int column) const
{
    return sqlite3_column_type(statement_, column) == SQLITE_NULL;
}
std::int64_t Row::integer(int column) const { return sqlite3_column_int64(statement_, column); }
Bound::Type Row::type(int column) const
{
    switch (sqlite3_column_type(statement_, column)) {
        case SQLITE_INTEGER:
            return Bound::Type::Integer;
        case SQLITE_TEXT:
            return Bound::Type::Text;
        case SQLITE_BLOB:
            return Bound::Type::Blob;
        default:
            return Bound::Type::Null;
    }
}
int Row::columns() const { return sqlite3_column_count(statement_); }

std::string Row::text(int column) const { return std::string(asText(blob(column))); }

ByteView Row::blob(int column) const
{
    const auto* data = static_cast<const std::uint8_t*>(sqlite3_column_blob(statement_, column));
    return {data, static_cast<std::size_t>(sqlite3_column_bytes(statement_, column))};
}

std::optional<std::int64_t> Row::integerIfAny(int column) const
{
    return isNull(column) ? std::nullopt : std::optional(integer(column));
}

std::optional<std::string> Row::textIfAny(int column) const
{
    return isNull(column) ? std::nullopt : std::optional(text(column));
}

namespace {

// One setting a line; SCHEMA.md says why each.
constexpr const char* settings =
    "PRAGMA foreign_keys=ON;"
    "PRAGMA trusted_schema=OFF;"
    "PRAGMA cell_size_check=ON;"
    "PRAGMA mmap_size=0;"
    "PRAGMA temp_store=MEMORY;"
    "PRAGMA busy_timeout=5000;";
constexpr const char* writeSettings =
    "PRAGMA page_size=4096;"
    "PRAGMA journal_mode=WAL;"
    "PRAGMA synchronous=FULL;"
    "PRAGMA fullfsync=ON;"
    "PRAGMA checkpoint_fullfsync=ON;"
    "PRAGMA wal_autocheckpoint=0;"
    "PRAGMA secure_delete=OFF;"
    "PRAGMA cache_size=-32768;"
    "PRAGMA journal_size_limit=16777216;";
constexpr const char* readSettings = "PRAGMA query_only=OFF;";  // the open mode protects the file

void harden(sqlite3* handle)
{
    int ignored = 0;
    sqlite3_db_config(handle, SQLITE_DBCONFIG_DEFENSIVE, 1, &ignored);
    sqlite3_db_config(handle, SQLITE_DBCONFIG_DQS_DML, 0, &ignored);
    sqlite3_db_config(handle, SQLITE_DBCONFIG_DQS_DDL, 0, &ignored);
    sqlite3_db_config(handle, SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION, 0, &ignored);
    sqlite3_db_config(handle, SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, &ignored);
    sqlite3_extended_result_codes(handle, 1);
}

ErrorCode codeOf(int sqliteCode)
{
    switch (sqliteCode & 0xff) {
        case SQLITE_FULL:
            return ErrorCode::StorageFull;
        case SQLITE_CORRUPT:
        case SQLITE_NOTADB:
            return ErrorCode::Damaged;
        case SQLITE_BUSY:
            return ErrorCode::Locked;
        default:
            return ErrorCode::Storage;
    }
}

bool breaksConnection(int sqliteCode)
{
    const int primary = sqliteCode & 0xff;
    return primary == SQLITE_IOERR || primary == SQLITE_CORRUPT || primary == SQLITE_FULL ||
           primary == SQLITE_NOTADB;
}

// Nothing is asked of SQLite once it is broken, so its last error is the one that broke it.
bool isOfFullDisk(sqlite3* handle) { return (sqlite3_errcode(handle) & 0xff) == SQLITE_FULL; }

tl::unexpected<Error> brokenBefore(sqlite3* handle)
{
    return isOfFullDisk(handle) ? fail(ErrorCode::StorageFull, "ledger.db",
                                       "an earlier write found no room", "make some")
                                : fail(ErrorCode::Storage, "ledger.db", "an earlier write failed",
                                       "start the program again");
}

// A statement that is ended whatever happens, also where a row is used and memory runs out.
using Running = std::unique_ptr<sqlite3_stmt, int (*)(sqlite3_stmt*)>;

int bindOne(sqlite3_stmt* statement, int place, const Bound& value)
{
    switch (value.type) {
        case Bound::Type::Integer:
            return sqlite3_bind_int64(statement, place, value.integer);
        case Bound::Type::Text:
            return sqlite3_bind_text64(statement, place, value.text.data(), value.text.size(),
                                       SQLITE_STATIC, SQLITE_UTF8);
        case Bound::Type::Blob:
            // An empty blob must not be bound as a null pointer, which SQLite reads as NULL.
            return sqlite3_bind_blob64(statement, place,
                                       value.text.empty() ? "" : value.text.data(),
                                       value.text.size(), SQLITE_STATIC);
        case Bound::Type::Null:
            break;
    }
    return sqlite3_bind_null(statement, place);
}

}  // namespace

Result<Database> Database::open(const std::string& file, Mode mode, const std::string& vfs)
{
    // A connection is used by one thread at a time, so it needs no locks of SQLite's own.
    const int flags =
        SQLITE_OPEN_NOMUTEX |
        (mode == Mode::Write ? SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE : SQLITE_OPEN_READONLY);
    sqlite3* handle = nullptr;
    const int opened =
        sqlite3_open_v2(file.c_str(), &handle, flags, vfs.empty() ? nullptr : vfs.c_str());
    Database database(handle);
    if (opened != SQLITE_OK) {
        return fail(codeOf(opened), file, sqlite3_errstr(opened));
    }
    harden(handle);
    SPILE_TRY(database.run(settings));
    SPILE_TRY(database.run(mode == Mode::Write ? writeSettings : readSettings));
    return database;
}

Database::Database(Database&& other) noexcept
    : handle_(std::exchange(other.handle_, nullptr)),
      broken_(other.broken_),
      logPages_(other.logPages_),
      statements_(std::move(other.statements_))
{
    other.statements_.clear();
}

Database& Database::operator=(Database&& other) noexcept
{
    if (this != &other) {
        close();
        handle_ = std::exchange(other.handle_, nullptr);
        broken_ = other.broken_;
        logPages_ = other.logPages_;
        statements_ = std::move(other.statements_);
        other.statements_.clear();
    }
    return *this;
}

Database::~Database() { close(); }

void Database::close()
{
    if (handle_ == nullptr || broken_) {
        return;  // a broken connection is left open on purpose: closing it could write
    }
    for (const auto& [sql, statement] : statements_) {
        sqlite3_finalize(statement);
    }
    sqlite3_close(handle_);
    handle_ = nullptr;
}

Error Database::errorNow(int code)
{
    if (breaksConnection(code)) {
        broken_ = true;
    }
    return Error{codeOf(code), "ledger.db", sqlite3_errmsg(handle_), {}};
}

Result<void> Database::run(const std::string& script)
{
    if (broken_) {
        return brokenBefore(handle_);
    }
    const int code = sqlite3_exec(handle_, script.c_str(), nullptr, nullptr, nullptr);
    if (code != SQLITE_OK) {
        return tl::unexpected(errorNow(code));
    }
    return {};
}

Result<sqlite3_stmt*> Database::prepared(std::string_view sql)
{
    if (broken_) {
        return brokenBefore(handle_);
    }
    const auto [known, isNew] = statements_.try_emplace(sql, nullptr);
    if (!isNew) {
        return known->second;
    }
    const int code = sqlite3_prepare_v3(handle_, sql.data(), static_cast<int>(sql.size()),
                                        SQLITE_PREPARE_PERSISTENT, &known->second, nullptr);
    if (code != SQLITE_OK) {
        statements_.erase(known);
        return tl::unexpected(errorNow(code));
    }
    return known->second;
}

Result<void> Database::stepThrough(sqlite3_stmt* statement,
                                   const std::function<Result<void>(const Row&)>& use)
{
    for (;;) {
        const int code = sqlite3_step(statement);
        if (code == SQLITE_DONE) {
            return {};
        }
        if (code != SQLITE_ROW) {
            return tl::unexpected(errorNow(code));
        }
        SPILE_TRY(use(Row(statement)));
    }
}

Result<void> Database::eachBound(const std::function<Result<void>(const Row&)>& use,
                                 std::string_view sql, std::span<const Bound> values)
{
    SPILE_ASSIGN(statement, prepared(sql));
    if (sqlite3_stmt_busy(statement) != 0) {
        return fail(ErrorCode::Storage, "ledger.db", "a statement is used inside its own rows");
    }
    const Running running(statement, sqlite3_reset);
    int place = 0;
    for (const Bound& value : values) {
        if (const int code = bindOne(statement, ++place, value); code != SQLITE_OK) {
            return tl::unexpected(errorNow(code));
        }
    }
    return stepThrough(statement, use);
}

Result<void> Database::eachOnce(const std::function<Result<void>(const Row&)>& use,
                                const std::string& sql)
{
    SPILE_TRY(run(""));  // refuses if the connection is broken
    sqlite3_stmt* statement = nullptr;
    const int code =
        sqlite3_prepare_v2(handle_, sql.data(), static_cast<int>(sql.size()), &statement, nullptr);
    if (code != SQLITE_OK) {
        return tl::unexpected(errorNow(code));
    }
    const Running running(statement, sqlite3_finalize);
    return stepThrough(statement, use);
}

int Database::changes() const { return sqlite3_changes(handle_); }

std::int64_t Database::lastRow() const { return sqlite3_last_insert_rowid(handle_); }

Result<void> Database::begin() { return execute("BEGIN IMMEDIATE"); }

Result<void> Database::commit()
{
    // Set at each commit, since this object may have moved.
    sqlite3_wal_hook(
        handle_,
        [](void* pages, sqlite3*, const char*, int inLog) {
            *static_cast<int*>(pages) = inLog;
            return SQLITE_OK;
        },
        &logPages_);
    return execute("COMMIT");
}

void Database::rollback()
{
    // What failed is reported already, and may be that there is no memory: it asks for none of
    // ours. After a full disk it writes nothing, and gives the lock to a connection that is opened
    // anew.
    if ((!broken_ || isOfFullDisk(handle_)) && sqlite3_get_autocommit(handle_) == 0) {
        sqlite3_exec(handle_, "ROLLBACK", nullptr, nullptr, nullptr);
    }
}

Result<void> Database::checkpoint(int pages)
{
    if (broken_ || logPages_ <= pages) {
        return {};
    }
    const int code =
        sqlite3_wal_checkpoint_v2(handle_, nullptr, SQLITE_CHECKPOINT_PASSIVE, nullptr, nullptr);
    if (code != SQLITE_OK && code != SQLITE_BUSY) {
        return tl::unexpected(errorNow(code));
    }
    logPages_ = 0;
    return {};
}

Result<Transaction> Transaction::begin(Database& database)
{
    SPILE_TRY(database.begin());
    return Transaction(database);
}

Transaction::~Transaction()
{
    if (database_ != nullptr) {
        database_->rollback();
    }
}

Result<void> Transaction::commit()
{
    SPILE_TRY(database_->commit());
    database_ = nullptr;
    return {};
}

}  // namespace spile::ledger
