#include "core/cellar/acts/sheet.hpp"

namespace spile::cellar {

using ledger::Change;
using ledger::Database;
using ledger::Row;

namespace {

// What a tap is about: column `subject` of table draft.
constexpr std::string_view scoreTap = "score";
constexpr std::string_view faultTap = "fault";
constexpr std::string_view likingTap = "liking";
constexpr std::string_view tiredTap = "palate_tired";
constexpr std::string_view noteTap = "note";
constexpr std::string_view orderTap = "order";
constexpr char orderSeparator = '\n';

struct Tap {
    std::string_view subject;
    std::string name;
    std::optional<std::int64_t> number;
    std::optional<std::string> text;
};

// A sheet holds no more attributes, or faults, than its entry can.
Result<void> needRoom(Database& database, const SubjectId& sheet, const Tap& tap)
{
    const bool score = tap.subject == scoreTap;
    if (!score && tap.subject != faultTap) {
        return {};
    }
    const std::int64_t most = specOf(score ? Field::Scores : Field::Faults).most;
    SPILE_ASSIGN(others, database.integer(0,
                                          "SELECT count(DISTINCT name) FROM draft WHERE sheet = ? "
                                          "AND subject = ? AND name <> ?",
                                          sheet, tap.subject, tap.name));
    if (others >= most) {
        return fail(ErrorCode::OutOfRange, std::string(tap.subject), tap.name,
                    "at most " + std::to_string(most) + " on one sheet");
    }
    return {};
}

Result<void> keepTap(Cellar& cellar, const SubjectId& sheet, const Tap& tap)
{
    SPILE_ASSIGN(change, cellar.ledger().change());
    Database& database = change.database();
    SPILE_ASSIGN(open, database.integer(0, "SELECT 1 FROM sheet WHERE sheet = ?", sheet));
    if (open == 0) {
        return fail(ErrorCode::NotFound, "sheet", sheet.hex(), "a sheet that is open");
    }
    SPILE_TRY(needRoom(database, sheet, tap));
    SPILE_TRY(database.execute(
        "INSERT INTO draft(sheet, tap, subject, name, number, text, tapped_ms) "
        "SELECT ?, coalesce(max(tap), 0) + 1, ?, ?, ?, ?, ? FROM draft WHERE sheet = ?",
        sheet, tap.subject, tap.name, tap.number, tap.text, toMs(cellar.outside().clock.now()),
        sheet));
    return change.commit();
}

// Checks one row of a list field by the table of fields, so that a tap is refused when it is made.
Result<void> checkItem(Field field, ledger::List row)
{
    return checkValue(specOf(field), ledger::Value(ledger::List{ledger::Value(std::move(row))}));
}

std::vector<std::string> split(const std::string& text)
{
    std::vector<std::string> parts;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find(orderSeparator, at), text.size());
        parts.push_back(text.substr(at, end - at));
        at = end + 1;
    }
    return parts;
}

std::optional<int> intOf(const std::optional<std::int64_t>& number)
{
    return number ? std::optional(static_cast<int>(*number)) : std::nullopt;
}

void applyTap(NewTaste& taste, const Tap& tap)
{
    if (tap.subject == scoreTap) {
        taste.scores[tap.name] = intOf(tap.number);
    } else if (tap.subject == faultTap && tap.number) {
        taste.faults[tap.name] = static_cast<int>(*tap.number);
    } else if (tap.subject == faultTap) {
        taste.faults.erase(tap.name);
    } else if (tap.subject == likingTap) {
        taste.liking = intOf(tap.number);
    } else if (tap.subject == tiredTap) {
        taste.palateTired = tap.number == 1;
    } else if (tap.subject == noteTap) {
        taste.circumstance.note = tap.text.value_or("");
    } else if (tap.subject == orderTap) {
        taste.attributeOrder = split(tap.text.value_or(""));
    }
}

Result<std::vector<OpenSheet>> sheetsIn(Database& database)
{
    std::vector<OpenSheet> sheets;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            sheets.push_back({row.id<SubjectId>(0), row.id<SubjectId>(1), row.id<SubjectId>(2),
                              row.idIfAny<SubjectId>(3), intOf(row.integerIfAny(4)),
                              instantFromMs(row.integer(5)), static_cast<int>(row.integer(6))});
            return Result<void>();
        },
        "SELECT sheet, barrel, person, flight, glass, opened_ms, "
        "(SELECT count(*) FROM draft WHERE draft.sheet = sheet.sheet) FROM sheet ORDER BY "
        "opened_ms, sheet"));
    return sheets;
}

}  // namespace

Result<SubjectId> openSheet(Cellar& cellar, const SubjectId& barrel, const SubjectId& person,
                            const std::optional<SubjectId>& flight, const std::optional<int>& glass)
{
    SPILE_TRY(needSubject(cellar, "barrel", barrel));
    SPILE_TRY(needSubject(cellar, "person", person));
    if (glass) {
        SPILE_TRY(checkValue(specOf(Field::Glass), std::int64_t{*glass}));
    }
    const SubjectId sheet = cellar.outside().ids.next();
    SPILE_ASSIGN(change, cellar.ledger().change());
    SPILE_TRY(change.database().execute(
        "INSERT INTO sheet(sheet, barrel, person, flight, glass, opened_ms) "
        "VALUES(?, ?, ?, ?, ?, ?)",
        sheet, barrel, person, flight, glass ? std::optional(std::int64_t{*glass}) : std::nullopt,
        toMs(cellar.outside().clock.now())));
    SPILE_TRY(change.commit());
    return sheet;
}

Result<void> tapScore(Cellar& cellar, const SubjectId& sheet, const std::string& attribute,
                      Score score)
{
    SPILE_TRY(checkItem(Field::Scores, {attribute, valueOf(score)}));
    return keepTap(
        cellar, sheet,
        {scoreTap, attribute, score ? std::optional(std::int64_t{*score}) : std::nullopt, {}});
}

Result<void> tapFault(Cellar& cellar, const SubjectId& sheet, const std::string& fault,
                      std::optional<int> strength)
{
    SPILE_TRY(checkItem(Field::Faults, {fault, std::int64_t{strength.value_or(1)}}));
    return keepTap(
        cellar, sheet,
        {faultTap, fault, strength ? std::optional(std::int64_t{*strength}) : std::nullopt, {}});
}

Result<void> tapLiking(Cellar& cellar, const SubjectId& sheet, int liking)
{
    SPILE_TRY(checkValue(specOf(Field::Liking), std::int64_t{liking}));
    return keepTap(cellar, sheet, {likingTap, {}, std::int64_t{liking}, {}});
}

Result<void> tapPalateTired(Cellar& cellar, const SubjectId& sheet, bool tired)
{
    return keepTap(cellar, sheet, {tiredTap, {}, tired ? 1 : 0, {}});
}

Result<void> writeNote(Cellar& cellar, const SubjectId& sheet, const std::string& note)
{
    if (!note.empty()) {
        SPILE_TRY(checkValue(specOf(Field::Note), note));
    }
    return keepTap(cellar, sheet, {noteTap, {}, {}, note});
}

Result<void> keepOrder(Cellar& cellar, const SubjectId& sheet,
                       const std::vector<std::string>& attributes)
{
    std::string text;
    for (const std::string& attribute : attributes) {
        SPILE_TRY(checkItem(Field::AttributeOrder, {attribute}));
        if (attribute.find(orderSeparator) != std::string::npos) {
            return fail(ErrorCode::Malformed, "attribute", attribute, "a word without line ends");
        }
        text += (text.empty() ? "" : std::string(1, orderSeparator)) + attribute;
    }
    return keepTap(cellar, sheet, {orderTap, {}, {}, text});
}

Result<bool> undoTap(Cellar& cellar, const SubjectId& sheet)
{
    SPILE_ASSIGN(change, cellar.ledger().change());
    SPILE_TRY(
        change.database().execute("DELETE FROM draft WHERE sheet = ? AND tap = "
                                  "(SELECT max(tap) FROM draft WHERE sheet = ?)",
                                  sheet, sheet));
    const bool undone = change.database().changes() > 0;
    SPILE_TRY(change.commit());
    return undone;
}

Result<NewTaste> readSheet(Cellar& cellar, const SubjectId& sheet)
{
    Database& database = cellar.database();
    SPILE_ASSIGN(found,
                 database.first(
                     [](const Row& row) {
                         NewTaste taste;
                         taste.barrel = row.id<SubjectId>(0);
                         taste.circumstance.person = row.id<SubjectId>(1);
                         taste.flight = row.idIfAny<SubjectId>(2);
                         taste.glass = intOf(row.integerIfAny(3));
                         return taste;
                     },
                     "SELECT barrel, person, flight, glass FROM sheet WHERE sheet = ?", sheet));
    if (!found) {
        return fail(ErrorCode::NotFound, "sheet", sheet.hex(), "a sheet that is open");
    }
    SPILE_TRY(database.each(
        [&](const Row& row) {
            const std::string subject = row.text(0);
            applyTap(*found, {subject, row.text(1), row.integerIfAny(2), row.textIfAny(3)});
            return Result<void>();
        },
        "SELECT subject, name, number, text FROM draft WHERE sheet = ? ORDER BY tap", sheet));
    return std::move(*found);
}

Result<std::vector<OpenSheet>> openSheets(Cellar& cellar) { return sheetsIn(cellar.database()); }

Result<EntryId> closeSheet(Cellar& cellar, const SubjectId& sheet)
{
    SPILE_ASSIGN(taste, readSheet(cellar, sheet));
    SPILE_ASSIGN(entry, tasteEntry(taste));
    SPILE_ASSIGN(change, cellar.ledger().change());
    SPILE_ASSIGN(id, change.record(std::move(entry)));
    SPILE_TRY(change.database().execute("DELETE FROM draft WHERE sheet = ?", sheet));
    SPILE_TRY(change.database().execute("DELETE FROM sheet WHERE sheet = ?", sheet));
    SPILE_TRY(change.commit());
    return id;
}

}  // namespace spile::cellar
