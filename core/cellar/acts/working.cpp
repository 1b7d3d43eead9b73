#include "core/cellar/acts/working.hpp"

#include <algorithm>

namespace spile::cellar {

using ledger::Database;
using ledger::Row;

namespace {

constexpr std::int64_t valuesMost = 60;

Result<void> needWork(Database& database, const SubjectId& run)
{
    SPILE_ASSIGN(open, database.integer(0, "SELECT 1 FROM work WHERE run = ?", run));
    return open == 1 ? Result<void>()
                     : fail(ErrorCode::NotFound, "work", run.hex(), "work that is open");
}

// As long as a word may be; the error names what it is.
Result<void> needWord(const char* name, const std::string& word)
{
    FieldSpec spec = specOf(Field::Step);
    spec.name = name;
    return checkValue(spec, word);
}

OpenWork readRow(const Row& row)
{
    OpenWork work;
    work.run = row.id<SubjectId>(0);
    work.sheet = row.text(1);
    work.barrel = row.id<SubjectId>(2);
    work.person = row.id<SubjectId>(3);
    work.step = row.text(4);
    work.begun = instantFromMs(row.integer(5));
    work.stopped = row.integer(6) != 0;
    if (!row.isNull(7)) {
        work.timer = WorkTimer{instantFromMs(row.integer(7)), instantFromMs(row.integer(8)),
                               Milliseconds(row.integer(9)),  row.id<BootId>(10),
                               Milliseconds(row.integer(11)), {}};
        if (!row.isNull(12)) {
            work.timer->pausedLeft = Milliseconds(row.integer(12));
        }
    }
    return work;
}

#define SPILE_WORK                                                                               \
    "SELECT run, sheet, barrel, person, step, begun_ms, stopped, timer_begun_ms, timer_end_ms, " \
    "timer_boot_ms, timer_boot, timer_planned_ms, timer_left_ms FROM work "

Result<void> readValues(Database& database, OpenWork& work)
{
    return database.each(
        [&](const Row& row) {
            WorkValue& value = work.values[row.text(0)];
            value.number = row.integerIfAny(1);
            value.text = row.text(2);
            return Result<void>();
        },
        "SELECT name, number, text FROM work_value WHERE run = ? ORDER BY name", work.run);
}

Result<void> removeWork(Database& database, const SubjectId& run)
{
    SPILE_TRY(database.execute("DELETE FROM work_value WHERE run = ?", run));
    return database.execute("DELETE FROM work WHERE run = ?", run);
}

Result<void> goToStep(Database& database, const SubjectId& run, const std::string& step)
{
    return step.empty() ? removeWork(database, run)
                        : database.execute(
                              "UPDATE work SET step = ?, stopped = 0, timer_begun_ms = NULL, "
                              "timer_end_ms = NULL, timer_boot_ms = NULL, timer_boot = NULL, "
                              "timer_planned_ms = NULL, timer_left_ms = NULL WHERE run = ?",
                              step, run);
}

// Real time since the timer began, by the clock that no one sets where that is the same still.
Milliseconds elapsed(const WorkTimer& timer, const Clock& clock)
{
    if (timer.pausedLeft) {
        return timer.planned - *timer.pausedLeft;
    }
    return clock.bootId() == timer.bootId ? clock.sinceBoot() - (timer.bootEnd - timer.planned)
                                          : std::max(clock.now() - timer.begun, Milliseconds(0));
}

Result<ledger::NewEntry> stepEntry(const OpenWork& work, const StepEnd& end, const Clock& clock)
{
    if (end.outcome == outcome::skipped && end.reason.empty()) {
        return fail(ErrorCode::Malformed, "reason", "nothing", "why the step is skipped");
    }
    const Circumstance by{{}, end.person.value_or(work.person), {}};
    FieldSet fields(by);
    fields.setText(Field::Sheet, work.sheet);
    fields.setText(Field::Step, work.step);
    fields.set(Field::Run, work.run);
    fields.setText(Field::Outcome, end.outcome);
    fields.setText(Field::Reason, end.reason);
    if (!end.values.empty()) {
        ledger::List rows;
        for (const auto& [name, number] : end.values) {
            rows.emplace_back(ledger::List{name, number});
        }
        fields.set(Field::Values, std::move(rows));
    }
    if (!end.words.empty()) {
        ledger::List rows;
        for (const auto& [name, word] : end.words) {
            rows.emplace_back(ledger::List{name, word});
        }
        fields.set(Field::Words, std::move(rows));
    }
    if (work.timer) {
        using std::chrono::seconds;
        fields.set(Field::PlannedS,
                   std::int64_t{std::chrono::round<seconds>(work.timer->planned).count()});
        fields.set(Field::ElapsedS,
                   std::int64_t{std::chrono::round<seconds>(elapsed(*work.timer, clock)).count()});
    }
    return newEntry("sheet_step", work.barrel, std::move(fields));
}

}  // namespace

Result<SubjectId> beginWork(Cellar& cellar, const std::string& sheet, const std::string& firstStep,
                            const SubjectId& barrel, const SubjectId& person)
{
    SPILE_ASSIGN(lot, cellar.state().has(cellar.database(), "lot", barrel));
    SPILE_TRY(lot ? Result<void>() : needSubject(cellar, "barrel", barrel));
    SPILE_TRY(needSubject(cellar, "person", person));
    SPILE_TRY(needWord("sheet", sheet));
    SPILE_TRY(needWord("step", firstStep));
    const SubjectId run = cellar.outside().ids.next();
    SPILE_ASSIGN(change, cellar.ledger().change());
    SPILE_TRY(change.database().execute(
        "INSERT INTO work(run, sheet, barrel, person, step, begun_ms, stopped) "
        "VALUES(?, ?, ?, ?, ?, ?, 0)",
        run, sheet, barrel, person, firstStep, toMs(cellar.outside().clock.now())));
    SPILE_TRY(change.commit());
    return run;
}

Result<std::vector<OpenWork>> openWork(Cellar& cellar)
{
    std::vector<OpenWork> all;
    SPILE_TRY(cellar.database().each(
        [&](const Row& row) {
            all.push_back(readRow(row));
            return Result<void>();
        },
        SPILE_WORK "ORDER BY begun_ms, run"));
    for (OpenWork& work : all) {
        SPILE_TRY(readValues(cellar.database(), work));
    }
    return all;
}

Result<OpenWork> readWork(Cellar& cellar, const SubjectId& run)
{
    SPILE_ASSIGN(found, cellar.database().first(readRow, SPILE_WORK "WHERE run = ?", run));
    if (!found) {
        return fail(ErrorCode::NotFound, "work", run.hex(), "work that is open");
    }
    SPILE_TRY(readValues(cellar.database(), *found));
    return std::move(*found);
}

#undef SPILE_WORK

Result<void> keepValue(Cellar& cellar, const SubjectId& run, const std::string& name,
                       const std::optional<WorkValue>& value)
{
    SPILE_TRY(needWord("value", name));
    if (value && !value->text.empty()) {
        FieldSpec spec = specOf(Field::Note);
        spec.name = name;
        SPILE_TRY(checkValue(spec, value->text));
    }
    SPILE_ASSIGN(change, cellar.ledger().change());
    Database& database = change.database();
    SPILE_TRY(needWork(database, run));
    SPILE_ASSIGN(others,
                 database.integer(0, "SELECT count(*) FROM work_value WHERE run = ? AND name <> ?",
                                  run, name));
    if (others >= valuesMost) {
        return fail(ErrorCode::OutOfRange, "value", name,
                    "at most " + std::to_string(valuesMost) + " on one work sheet");
    }
    SPILE_TRY(
        value ? database.execute("INSERT OR REPLACE INTO work_value(run, name, number, text) "
                                 "VALUES(?, ?, ?, ?)",
                                 run, name, value->number, value->text)
              : database.execute("DELETE FROM work_value WHERE run = ? AND name = ?", run, name));
    return change.commit();
}

Result<WorkTimer> startTimer(Cellar& cellar, const SubjectId& run, Milliseconds planned)
{
    if (planned < Milliseconds(0)) {
        return fail(ErrorCode::OutOfRange, "timer", std::to_string(planned.count()) + " ms",
                    "0 and more");
    }
    const Clock& clock = cellar.outside().clock;
    const Instant now = clock.now();
    const WorkTimer timer{now, now + planned, clock.sinceBoot() + planned, clock.bootId(), planned,
                          {}};
    SPILE_ASSIGN(change, cellar.ledger().change());
    SPILE_TRY(needWork(change.database(), run));
    SPILE_TRY(change.database().execute(
        "UPDATE work SET timer_begun_ms = ?, timer_end_ms = ?, timer_boot_ms = ?, timer_boot = ?, "
        "timer_planned_ms = ?, timer_left_ms = NULL, stopped = 0 WHERE run = ?",
        toMs(timer.begun), toMs(timer.wallEnd), std::int64_t{timer.bootEnd.count()}, timer.bootId,
        std::int64_t{planned.count()}, run));
    SPILE_TRY(change.commit());
    return timer;
}

Result<void> stopWork(Cellar& cellar, const SubjectId& run, bool pausesTimer)
{
    SPILE_ASSIGN(work, readWork(cellar, run));
    std::optional<std::int64_t> leftMs;
    if (pausesTimer && work.timer) {
        const Milliseconds left =
            work.timer->planned - elapsed(*work.timer, cellar.outside().clock);
        leftMs = std::max(left, Milliseconds(0)).count();
    }
    SPILE_ASSIGN(change, cellar.ledger().change());
    SPILE_TRY(change.database().execute(
        "UPDATE work SET stopped = 1, timer_left_ms = ? WHERE run = ?", leftMs, run));
    return change.commit();
}

Result<void> goOnWithWork(Cellar& cellar, const SubjectId& run)
{
    SPILE_ASSIGN(work, readWork(cellar, run));
    SPILE_ASSIGN(change, cellar.ledger().change());
    Database& database = change.database();
    if (work.timer && work.timer->pausedLeft) {
        const Clock& clock = cellar.outside().clock;
        const Milliseconds left = *work.timer->pausedLeft;
        SPILE_TRY(database.execute(
            "UPDATE work SET timer_end_ms = ?, timer_boot_ms = ?, "
            "timer_boot = ?, timer_left_ms = NULL WHERE run = ?",
            toMs(clock.now() + left), std::int64_t{(clock.sinceBoot() + left).count()},
            clock.bootId(), run));
    }
    SPILE_TRY(database.execute("UPDATE work SET stopped = 0 WHERE run = ?", run));
    return change.commit();
}

Result<EntryId> endStep(Cellar& cellar, const SubjectId& run, const StepEnd& end,
                        std::vector<ledger::NewEntry> facts)
{
    SPILE_ASSIGN(work, readWork(cellar, run));
    SPILE_ASSIGN(entry, stepEntry(work, end, cellar.outside().clock));
    SPILE_ASSIGN(change, cellar.ledger().change());
    SPILE_ASSIGN(id, change.recordWithAnswers(std::move(entry), std::move(facts)));
    SPILE_TRY(goToStep(change.database(), run, end.nextStep));
    SPILE_TRY(change.commit());
    return id;
}

Result<void> giveUpWork(Cellar& cellar, const SubjectId& run)
{
    SPILE_ASSIGN(change, cellar.ledger().change());
    SPILE_TRY(needWork(change.database(), run));
    SPILE_TRY(removeWork(change.database(), run));
    return change.commit();
}

}  // namespace spile::cellar
