#pragma once

#include "core/base/bytes.hpp"
#include "core/base/ids.hpp"
#include "core/base/result.hpp"

#include <array>
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <tuple>
#include <unordered_map>
#include <utility>

struct sqlite3;
struct sqlite3_stmt;

/// SQLite with the policy that keeps records: SCHEMA.md, "Connections".
namespace spile::ledger {

/// One value to put into a statement: text, bytes, a 64-bit integer or nothing.
class Bound {
public:
    enum class Type : std::uint8_t { Null, Integer, Text, Blob };

    Bound(std::nullopt_t /*nothing*/) {}  // NOLINT(google-explicit-constructor)
    Bound(std::int64_t v)
        : type(Type::Integer), integer(v) {}                  // NOLINT(google-explicit-constructor)
    Bound(int v) : type(Type::Integer), integer(v) {}         // NOLINT(google-explicit-constructor)
    Bound(std::string_view v) : type(Type::Text), text(v) {}  // NOLINT(google-explicit-constructor)
    Bound(const std::string& v)
        : Bound(std::string_view(v)) {}                       // NOLINT(google-explicit-constructor)
    Bound(const char* v) : Bound(std::string_view(v)) {}      // NOLINT(google-explicit-constructor)
    Bound(ByteView v) : type(Type::Blob), text(asText(v)) {}  // NOLINT(google-explicit-constructor)
    Bound(const Bytes& v) : Bound(ByteView(v)) {}             // NOLINT(google-explicit-constructor)
    template <class Kind, std::size_t N>
    Bound(const ByteId<Kind, N>& id) : Bound(id.bytes())  // NOLINT(google-explicit-constructor)
    {
    }
    template <class T>
    Bound(const std::optional<T>& v)
        : Bound(v ? Bound(*v) : Bound(std::nullopt))  // NOLINT(google-explicit-constructor)
    {
    }

    Type type = Type::Null;
    std::int64_t integer = 0;
    std::string_view text;  // looks at what it was made from; used before the statement returns
};

/// The row a statement stands on; values are valid until the next row.
class Row {
public:
    explicit Row(sqlite3_stmt* statement) : statement_(statement) {}

    [[nodiscard]] bool isNull(int column) const;
    [[nodiscard]] std::int64_t integer(int column) const;
    [[nodiscard]] std::string text(int column) const;
    [[nodiscard]] ByteView blob(int column) const;
    [[nodiscard]] int columns() const;
    [[nodiscard]] Bound::Type type(int column) const;
    [[nodiscard]] std::optional<std::int64_t> integerIfAny(int column) const;
    [[nodiscard]] std::optional<std::string> textIfAny(int column) const;
    /// Requires the column to hold an id of that kind, as the schema's checks ensure.
    template <class Id>
    [[nodiscard]] Id id(int column) const
    {
        return Id::fromBytes(blob(column)).value_or(Id());
    }
    template <class Id>
    [[nodiscard]] std::optional<Id> idIfAny(int column) const
    {
        return isNull(column) ? std::nullopt : Id::fromBytes(blob(column));
    }

private:
    sqlite3_stmt* statement_;
};

/// One connection. Statements are prepared once and kept; their text must be a literal or outlive
/// the connection.
///
/// Errors    StorageFull if the disk is full, Damaged if the file is not a sound database, else
///           Storage. After any of these from a commit or a read, the connection is broken: it
///           answers StorageFull or Storage to everything and is never closed, since closing could
///           write. After Storage the process should end and start anew (SCHEMA.md).
/// Threads   one at a time.
class Database {
public:
    enum class Mode : std::uint8_t {
        Write,  ///< the one connection that writes and checkpoints
        Read,   ///< cannot write the file; temporary tables are its own
    };

    /// Open the file, and make it if `mode` is Write and it does not exist. `vfs` names the
    /// SQLite file layer, empty for the system's.
    [[nodiscard]] static Result<Database> open(const std::string& file, Mode mode,
                                               const std::string& vfs = {});

    Database(Database&& other) noexcept;
    Database& operator=(Database&& other) noexcept;
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;
    ~Database();

    /// Whether an error has left it so that it answers only errors.
    [[nodiscard]] bool isBroken() const { return broken_; }

    /// Run statements that return nothing and take no values.
    [[nodiscard]] Result<void> run(const std::string& script);

    template <class... Values>
    [[nodiscard]] Result<void> execute(std::string_view sql, const Values&... values)
    {
        return each([](const Row&) { return Result<void>(); }, sql, values...);
    }

    /// Call `use` with each row of the answer, until it fails.
    template <class... Values>
    [[nodiscard]] Result<void> each(const std::function<Result<void>(const Row&)>& use,
                                    std::string_view sql, const Values&... values)
    {
        const std::array<Bound, sizeof...(Values)> bound = {Bound(values)...};
        return eachBound(use, sql, bound);
    }
    [[nodiscard]] Result<void> eachBound(const std::function<Result<void>(const Row&)>& use,
                                         std::string_view sql, std::span<const Bound> values);

    /// The same for a statement that is not worth keeping, whose text need not last.
    [[nodiscard]] Result<void> eachOnce(const std::function<Result<void>(const Row&)>& use,
                                        const std::string& sql);

    /// Return what `read` makes of the first row; none if there is no row.
    template <class Read, class... Values>
    [[nodiscard]] auto first(Read read, std::string_view sql, const Values&... values)
        -> Result<std::optional<std::invoke_result_t<Read, const Row&>>>
    {
        std::optional<std::invoke_result_t<Read, const Row&>> found;
        SPILE_TRY(each(
            [&](const Row& row) {
                if (!found) {
                    found = read(row);
                }
                return Result<void>();
            },
            sql, values...));
        return found;
    }
    /// Return the integer that the first row begins with; `otherwise` if there is none.
    template <class... Values>
    [[nodiscard]] Result<std::int64_t> integer(std::int64_t otherwise, std::string_view sql,
                                               const Values&... values)
    {
        SPILE_ASSIGN(found, first([](const Row& row) { return row.integer(0); }, sql, values...));
        return found.value_or(otherwise);
    }

    /// The row number that the last insert made.
    [[nodiscard]] std::int64_t lastRow() const;
    /// How many rows the last statement changed.
    [[nodiscard]] int changes() const;

    [[nodiscard]] Result<void> begin();  ///< BEGIN IMMEDIATE
    [[nodiscard]] Result<void> commit();
    void rollback();

    /// Move what the write-ahead log holds into the file, checked, if it has grown past `pages`.
    [[nodiscard]] Result<void> checkpoint(int pages);

private:
    explicit Database(sqlite3* handle) : handle_(handle) {}
    [[nodiscard]] Result<sqlite3_stmt*> prepared(std::string_view sql);
    [[nodiscard]] Result<void> stepThrough(sqlite3_stmt* statement,
                                           const std::function<Result<void>(const Row&)>& use);
    [[nodiscard]] Error errorNow(int code);
    void close();

    sqlite3* handle_ = nullptr;
    bool broken_ = false;
    int logPages_ = 0;
    std::unordered_map<std::string_view, sqlite3_stmt*> statements_;
};

/// A transaction that is rolled back unless it is committed.
class Transaction {
public:
    [[nodiscard]] static Result<Transaction> begin(Database& database);
    Transaction(Transaction&& other) noexcept : database_(std::exchange(other.database_, nullptr))
    {
    }
    Transaction& operator=(Transaction&&) = delete;
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;
    ~Transaction();

    /// When this returns without an error, everything in it survives any loss of power.
    [[nodiscard]] Result<void> commit();

private:
    explicit Transaction(Database& database) : database_(&database) {}
    Database* database_;
};

}  // namespace spile::ledger
