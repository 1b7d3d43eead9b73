#include "tests/support/naive_comparison.hpp"

#include "core/cellar/state_schema.hpp"

#include <algorithm>
#include <sstream>
#include <stdexcept>
#include <vector>

namespace spile::support {

using cellar::FieldType;
using cellar::KindSpec;
using ledger::Database;
using ledger::Row;
using ledger::Value;

namespace {

std::string shown(const Value& value)
{
    std::ostringstream out;
    if (const auto* integer = value.as<std::int64_t>()) {
        out << *integer;
    } else if (const auto* flag = value.as<bool>()) {
        out << static_cast<int>(*flag);
    } else if (const auto* text = value.as<std::string>()) {
        out << '"' << *text << '"';
    } else if (const auto* bytes = value.as<Bytes>()) {
        out << toHex(*bytes);
    } else if (const auto* list = value.as<ledger::List>()) {
        out << '[';
        for (const Value& item : *list) {
            out << shown(item) << ' ';
        }
        out << ']';
    } else {
        out << "nothing";
    }
    return out.str();
}

std::string shown(const Row& row, int column)
{
    switch (row.type(column)) {
        case ledger::Bound::Type::Integer:
            return shown(Value(row.integer(column)));
        case ledger::Bound::Type::Text:
            return shown(Value(row.text(column)));
        case ledger::Bound::Type::Blob:
            return toHex(row.blob(column));
        case ledger::Bound::Type::Null:
            break;
    }
    return "nothing";
}

template <class Id>
std::string shown(const std::optional<Id>& id)
{
    return id ? id->hex() : "nothing";
}
std::string shown(const std::optional<std::string>& text)
{
    return text ? shown(Value(*text)) : "nothing";
}

// What a table holds, a line for each row, in the order of the rows' keys.
using Lines = std::map<std::string, std::string>;

// The connection keeps the statement by its text, which must outlive it.
Lines linesOf(Database& database, std::string_view sql)
{
    Lines lines;
    const auto read = database.each(
        [&](const Row& row) {
            std::string line;
            for (int column = 1; column < row.columns(); ++column) {
                line += ' ' + shown(row, column);
            }
            lines[toHex(row.blob(0))] += line;
            return Result<void>();
        },
        sql);
    if (!read) {
        throw std::runtime_error(read.error().value);
    }
    return lines;
}

std::string difference(const std::string& table, const Lines& is, const Lines& wanted)
{
    for (const auto& [key, line] : wanted) {
        const auto found = is.find(key);
        if (found == is.end() || found->second != line) {
            return table + " " + key + "\n  is    " +
                   (found == is.end() ? "not there" : found->second) + "\n  wanted" + line + "\n";
        }
    }
    for (const auto& [key, line] : is) {
        if (!wanted.contains(key)) {
            return table + " " + key + "\n  is    " + line + "\n  wanted not there\n";
        }
    }
    return {};
}

// The reading of one kind's table; its text must outlive the connections.
struct KindQueries {
    std::string facts;
    std::vector<std::pair<cellar::Field, std::string>> items;  // of the list fields
};
const KindQueries& queriesOf(const KindSpec& kind)
{
    static std::map<std::string_view, KindQueries> all;
    KindQueries& queries = all[kind.kind];
    if (queries.facts.empty()) {
        queries.facts =
            "SELECT entry, subject, device, seq, at_ms, when_ms, clock_ms, answers, voided, "
            "amended, two_values";
        for (const cellar::KindField& field : kind.fields) {
            const cellar::FieldSpec& spec = cellar::specOf(field.field);
            if (spec.type != FieldType::List) {
                queries.facts += ", " + std::string(spec.name);
                continue;
            }
            std::string columns;
            for (const cellar::ItemColumn& column : spec.items) {
                columns += ", " + std::string(column.name);
            }
            const std::string table = cellar::itemTableOf(kind.kind, field.field);
            queries.items.emplace_back(
                field.field, "SELECT entry" + columns + " FROM " + table + " ORDER BY entry, row");
        }
        queries.facts += " FROM " + cellar::tableOf(kind.kind);
    }
    return queries;
}

std::string line(const NaiveFact& fact, const KindSpec& kind)
{
    const auto& [when, device, seq, id] = fact.order;
    std::ostringstream out;
    out << ' ' << fact.subject.hex() << ' ' << device.hex() << ' ' << seq << ' ' << toMs(fact.at)
        << ' ' << toMs(when) << ' ' << (fact.clock ? std::to_string(toMs(*fact.clock)) : "nothing")
        << ' ' << shown(fact.target) << ' ' << fact.voided << ' ' << fact.amended << ' '
        << fact.twoValues;
    for (const cellar::KindField& field : kind.fields) {
        if (cellar::specOf(field.field).type != FieldType::List) {
            const auto value = fact.fields.find(static_cast<std::uint32_t>(field.field));
            out << ' ' << (value == fact.fields.end() ? "nothing" : shown(value->second));
        }
    }
    return out.str();
}

std::string itemLine(const Value& list)
{
    std::string line;
    for (const Value& row : *list.as<ledger::List>()) {
        for (const Value& item : *row.as<ledger::List>()) {
            line += ' ' + shown(item);
        }
    }
    return line;
}

// How many rows the table of each kind has: one look spares one at each that is empty.
std::vector<std::int64_t> rowsOf(Database& database)
{
    static const std::string sql = [] {
        std::string counts;
        for (const KindSpec& kind : cellar::allKinds()) {
            counts +=
                (counts.empty() ? "SELECT (SELECT count(*) FROM " : "), (SELECT count(*) FROM ") +
                cellar::tableOf(kind.kind);
        }
        return counts + ")";
    }();
    std::vector<std::int64_t> rows;
    const auto read = database.each(
        [&](const Row& row) {
            for (int column = 0; column < row.columns(); ++column) {
                rows.push_back(row.integer(column));
            }
            return Result<void>();
        },
        sql);
    if (!read) {
        throw std::runtime_error(read.error().value);
    }
    return rows;
}

std::string factDifference(Database& database, const NaiveCellar& said, const KindSpec& kind)
{
    const KindQueries& queries = queriesOf(kind);
    Lines wanted;
    std::map<cellar::Field, Lines> wantedItems;
    for (const auto& [id, fact] : said.facts) {
        if (fact.kind != kind.kind) {
            continue;
        }
        wanted[id.hex()] = line(fact, kind);
        for (const auto& [field, sql] : queries.items) {
            const auto value = fact.fields.find(static_cast<std::uint32_t>(field));
            if (value != fact.fields.end() && !value->second.as<ledger::List>()->empty()) {
                wantedItems[field][id.hex()] = itemLine(value->second);
            }
        }
    }
    std::string different =
        difference(std::string(kind.kind), linesOf(database, queries.facts), wanted);
    for (const auto& [field, sql] : queries.items) {
        different += difference(std::string(cellar::specOf(field).name), linesOf(database, sql),
                                wantedItems[field]);
    }
    return different;
}

}  // namespace

std::string differenceFrom(cellar::Cellar& cellar, const NaiveCellar& said)
{
    Database& database = cellar.database();
    Lines linked;
    for (const EntryId& id : said.linked) {
        linked[id.hex()];
    }
    Lines corrections;
    for (const auto& [id, voided] : said.corrections) {
        corrections[id.hex()] = ' ' + std::to_string(static_cast<int>(voided));
    }
    Lines unknown;
    for (const EntryId& id : said.unknown) {
        unknown[id.hex()];
    }
    Lines barrels;
    for (const auto& [subject, barrel] : said.barrels) {
        barrels[subject.hex()] = ' ' + shown(barrel.mark) + ' ' + shown(barrel.place) + ' ' +
                                 (barrel.fill ? '1' : '0') + ' ' + shown(barrel.fill) + ' ' +
                                 shown(barrel.batch) + ' ' + shown(barrel.verdict);
    }
    std::string different =
        difference("entry", linesOf(database, "SELECT id FROM entry"), linked) +
        difference("correction",
                   linesOf(database,
                           "SELECT entry, voided FROM state_amend UNION ALL SELECT "
                           "entry, voided FROM state_void"),
                   corrections) +
        difference("unknown", linesOf(database, "SELECT entry FROM state_unknown"), unknown);
    const std::vector<std::int64_t> rows = rowsOf(database);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const KindSpec& kind = cellar::allKinds()[i];
        const bool wanted =
            std::any_of(said.facts.begin(), said.facts.end(),
                        [&](const auto& fact) { return fact.second.kind == kind.kind; });
        if (wanted || rows[i] > 0) {
            different += factDifference(database, said, kind);
        }
    }
    return different + difference("barrel now",
                                  linesOf(database,
                                          "SELECT subject, mark, place, filled, fill, batch, "
                                          "verdict FROM state_barrel_now"),
                                  barrels);
}

}  // namespace spile::support
