#include "core/cellar/exporting.hpp"

#include "core/cellar/state_schema.hpp"
#include "core/ledger/fields.hpp"

namespace spile::cellar {

using ledger::Database;
using ledger::Row;

namespace {

std::vector<NamedValue> namedFields(const ledger::Fields& fields)
{
    std::vector<NamedValue> named;
    for (const auto& [number, value] : fields) {
        const FieldSpec* spec = findField(number);
        named.push_back({spec == nullptr ? std::to_string(number) : std::string(spec->name), value,
                         spec == nullptr ? std::span<const ItemColumn>() : spec->items});
    }
    return named;
}

Cell cellOf(const Row& row, int column)
{
    switch (row.type(column)) {
        case ledger::Bound::Type::Integer:
            return row.integer(column);
        case ledger::Bound::Type::Text:
            return row.text(column);
        case ledger::Bound::Type::Blob:
            return toHex(row.blob(column));
        case ledger::Bound::Type::Null:
            break;
    }
    return std::monostate();
}

}  // namespace

std::string csvCell(const Cell& cell)
{
    if (const auto* integer = std::get_if<std::int64_t>(&cell)) {
        return std::to_string(*integer);
    }
    const auto* text = std::get_if<std::string>(&cell);
    if (text == nullptr || text->empty()) {
        return {};
    }
    // What a spreadsheet would take for a formula is shown as text.
    constexpr std::string_view formulas = "=+-@\t\r";
    std::string quoted = formulas.find(text->front()) == std::string_view::npos ? "\"" : "\"'";
    for (const char c : *text) {
        quoted += c == '"' ? "\"\"" : std::string(1, c);
    }
    return quoted + "\"";
}

Result<std::uint64_t> eachEntry(Database& database,
                                const std::function<Result<void>(const ExportedEntry&)>& use)
{
    std::uint64_t unreadable = 0;
    SPILE_TRY(database.each(
        [&](const Row& row) -> Result<void> {
            auto core = ledger::decodeCore(row.blob(1));
            if (!core) {
                ++unreadable;
                return {};
            }
            // A body of another shape, from a newer version, is exported without fields.
            const auto fields = ledger::decodeFields(row.blob(2));
            return use({row.id<EntryId>(0), std::move(*core),
                        fields ? namedFields(*fields) : std::vector<NamedValue>()});
        },
        "SELECT id, core, body FROM entry ORDER BY d, seq, id"));
    return unreadable;
}

std::vector<ExportedTable> exportedTables()
{
    std::vector<ExportedTable> tables;
    for (const KindSpec& kind : allKinds()) {
        ExportedTable table{std::string(kind.kind),
                            std::string(kind.kind),
                            {"entry", "subject", "device", "seq", "at_ms", "clock_ms"}};
        for (const KindField& field : kind.fields) {
            const FieldSpec& spec = specOf(field.field);
            if (spec.type != FieldType::List) {
                table.columns.emplace_back(spec.name);
                continue;
            }
            ExportedTable rows{std::string(kind.kind) + "_" + std::string(spec.name),
                               std::string(kind.kind),
                               {"entry", "row"}};
            for (const ItemColumn& column : spec.items) {
                rows.columns.emplace_back(column.name);
            }
            tables.push_back(std::move(rows));
        }
        tables.push_back(std::move(table));
    }
    return tables;
}

Result<void> eachRow(Database& database, const ExportedTable& table,
                     const std::function<Result<void>(std::span<const Cell>)>& use)
{
    std::string sql = "SELECT ";
    for (const std::string& column : table.columns) {
        sql += &column == &table.columns.front() ? "" : ", ";
        sql += column;
    }
    sql += " FROM " + tableOf(table.name);
    sql += table.name == table.kind ? " WHERE voided = 0 ORDER BY at_ms, device, seq"
                                    : " WHERE entry IN (SELECT entry FROM " + tableOf(table.kind) +
                                          " WHERE voided = 0) ORDER BY entry, row";
    std::vector<Cell> cells;
    return database.eachOnce(
        [&](const Row& row) {
            cells.clear();
            for (int i = 0; i < row.columns(); ++i) {
                cells.push_back(cellOf(row, i));
            }
            return use(cells);
        },
        sql);
}

Result<std::vector<Sha256>> photosHere(Database& database)
{
    std::vector<Sha256> photos;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            photos.push_back(row.id<Sha256>(0));
            return Result<void>();
        },
        "SELECT sha256 FROM photo WHERE present = 1 ORDER BY sha256"));
    return photos;
}

}  // namespace spile::cellar
