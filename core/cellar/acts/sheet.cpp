#include "core/cellar/acts/sheet.hpp"

#include "core/cellar/acts/photographing.hpp"
#include "core/cellar/acts/sheet_tap.hpp"

namespace spile::cellar {

using ledger::Database;
using ledger::Row;

namespace {

Result<void> removeSheet(Database& database, const SubjectId& sheet)
{
    SPILE_TRY(database.execute("DELETE FROM draft WHERE sheet = ?", sheet));
    return database.execute("DELETE FROM sheet WHERE sheet = ?", sheet);
}

// The reading and the photos, which answer the tasting.
Result<std::vector<ledger::NewEntry>> answersOf(const SheetContent& content)
{
    std::vector<ledger::NewEntry> answers;
    if (isMeasured(content.reading)) {
        SPILE_ASSIGN(reading, readingEntry(content.reading));
        answers.push_back(std::move(reading));
    }
    for (const SheetPhoto& photo : content.photos) {
        SPILE_ASSIGN(entry, photoEntry(content.taste.barrel, photo.photo, photo.purpose,
                                       {{}, content.taste.circumstance.person, {}}));
        answers.push_back(std::move(entry));
    }
    return answers;
}

}  // namespace

Result<void> needOpen(Database& database, const SubjectId& sheet)
{
    SPILE_ASSIGN(open, database.integer(0, "SELECT 1 FROM sheet WHERE sheet = ?", sheet));
    return open == 1 ? Result<void>()
                     : fail(ErrorCode::NotFound, "sheet", sheet.hex(), "a sheet that is open");
}

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

Result<std::vector<OpenSheet>> openSheets(Cellar& cellar)
{
    std::vector<OpenSheet> sheets;
    SPILE_TRY(cellar.database().each(
        [&](const Row& row) {
            sheets.push_back({row.id<SubjectId>(0), row.id<SubjectId>(1), row.id<SubjectId>(2),
                              row.idIfAny<SubjectId>(3), intOf(row.integerIfAny(4)),
                              instantFromMs(row.integer(5)), static_cast<int>(row.integer(6)),
                              row.text(7)});
            return Result<void>();
        },
        "SELECT sheet, barrel, person, flight, glass, opened_ms, "
        "(SELECT count(*) FROM draft WHERE draft.sheet = sheet.sheet), step FROM sheet "
        "ORDER BY opened_ms, sheet"));
    return sheets;
}

Result<void> keepStep(Cellar& cellar, const SubjectId& sheet, const std::string& step)
{
    if (!step.empty()) {
        // As long as a name may be; the error names the step.
        FieldSpec spec = specOf(Field::Name);
        spec.name = "step";
        SPILE_TRY(checkValue(spec, step));
    }
    SPILE_ASSIGN(change, cellar.ledger().change());
    SPILE_TRY(needOpen(change.database(), sheet));
    SPILE_TRY(change.database().execute("UPDATE sheet SET step = ? WHERE sheet = ?", step, sheet));
    return change.commit();
}

Result<SheetContent> readSheet(Cellar& cellar, const SubjectId& sheet)
{
    Database& database = cellar.database();
    SPILE_TRY(needOpen(database, sheet));
    SheetContent content;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            NewTaste& taste = content.taste;
            taste.barrel = content.reading.barrel = row.id<SubjectId>(0);
            taste.circumstance.person = content.reading.circumstance.person = row.id<SubjectId>(1);
            taste.flight = row.idIfAny<SubjectId>(2);
            taste.glass = intOf(row.integerIfAny(3));
            return Result<void>();
        },
        "SELECT barrel, person, flight, glass FROM sheet WHERE sheet = ?", sheet));
    SPILE_TRY(database.each(
        [&](const Row& row) {
            applyTap(content, {row.text(0), row.text(1), row.integerIfAny(2), row.textIfAny(3)});
            return Result<void>();
        },
        "SELECT subject, name, number, text FROM draft WHERE sheet = ? ORDER BY tap", sheet));
    return content;
}

Result<EntryId> closeSheet(Cellar& cellar, const SubjectId& sheet)
{
    SPILE_ASSIGN(content, readSheet(cellar, sheet));
    SPILE_ASSIGN(taste, tasteEntry(content.taste));
    SPILE_ASSIGN(answers, answersOf(content));
    SPILE_ASSIGN(change, cellar.ledger().change());
    SPILE_ASSIGN(id, change.recordWithAnswers(std::move(taste), std::move(answers)));
    SPILE_TRY(removeSheet(change.database(), sheet));
    SPILE_TRY(change.commit());
    return id;
}

Result<void> discardSheet(Cellar& cellar, const SubjectId& sheet)
{
    SPILE_ASSIGN(change, cellar.ledger().change());
    SPILE_TRY(needOpen(change.database(), sheet));
    SPILE_TRY(removeSheet(change.database(), sheet));
    return change.commit();
}

}  // namespace spile::cellar
