#include "core/cellar/barrel_summary.hpp"

#include "core/cellar/folding.hpp"
#include "core/cellar/settling.hpp"
#include "core/cellar/volume_doubts.hpp"

#include <algorithm>
#include <array>
#include <limits>

namespace spile::cellar {

using ledger::Database;
using ledger::Row;

namespace {

constexpr std::array<Milliseconds, 4> leakLooksAfter = {std::chrono::hours(1), std::chrono::days(1),
                                                        std::chrono::days(3), std::chrono::days(7)};
constexpr auto firstTastingAfter = std::chrono::days(182);
constexpr auto nextTastingAfter = std::chrono::days(30);
constexpr auto atTheFill =
    std::chrono::days(7);  // a tasting until then is of the beer as it went in

constexpr std::int64_t precisionDay = 1;

// `when_ms` is when a fact counts as having happened (state_schema.cpp); the index is in its order.
#define SPILE_LATEST_FIRST " ORDER BY when_ms DESC, device DESC, seq DESC, entry DESC LIMIT 1"
#define SPILE_SINCE "subject = ? AND voided = 0 AND when_ms >= ?"

// When something happened, among all that did. A copied device has two entries of one number.
struct Moment {
    std::int64_t whenMs = 0;
    DeviceId device;
    std::int64_t seq = 0;
    EntryId entry;
    friend auto operator<=>(const Moment&, const Moment&) = default;
};

struct Fill {
    std::optional<SubjectId> batch;
    std::optional<std::int64_t> volumeMl;
    std::int64_t atMs = 0;
    std::optional<std::int64_t> precision;
    Moment moment;
};

struct Registered {
    std::string code;
    std::optional<std::string> mark, spirit;
    std::optional<std::int64_t> sizeMl, fullMl, fillsBefore, emptiedMs;
    std::optional<SubjectId> place;
};

Moment momentOf(const Row& row, int column)
{
    return {row.integer(column), row.id<DeviceId>(column + 1), row.integer(column + 2),
            row.id<EntryId>(column + 3)};
}

Result<std::optional<Registered>> registered(Database& database, const SubjectId& barrel)
{
    return database.first(
        [](const Row& row) {
            return Registered{row.text(0),         row.textIfAny(1),         row.textIfAny(2),
                              row.integerIfAny(3), row.integerIfAny(4),      row.integerIfAny(5),
                              row.integerIfAny(6), row.idIfAny<SubjectId>(7)};
        },
        "SELECT coalesce(code, ''), mark, spirit, size_ml, full_ml, fills_before, emptied_ms, "
        "place "
        "FROM state_barrel "
        "WHERE subject = ? AND voided = 0 ORDER BY when_ms, device, seq, entry LIMIT 1",
        barrel);
}

Result<std::optional<Fill>> latestFill(Database& database, const SubjectId& barrel)
{
    return database.first(
        [](const Row& row) {
            return Fill{row.idIfAny<SubjectId>(0), row.integerIfAny(1), row.integer(2),
                        row.integerIfAny(3), momentOf(row, 4)};
        },
        "SELECT batch, volume_ml, at_ms, date_precision, when_ms, device, seq, entry "
        "FROM state_fill "
        "WHERE subject = ? AND voided = 0" SPILE_LATEST_FIRST,
        barrel);
}

struct Emptied {
    Moment moment;
    std::optional<std::string> nextUse;
    std::optional<std::int64_t> untilMs;
};

Result<std::optional<Emptied>> latestEmpty(Database& database, const SubjectId& barrel)
{
    return database.first(
        [](const Row& row) {
            return Emptied{momentOf(row, 0), row.textIfAny(4), row.integerIfAny(5)};
        },
        "SELECT when_ms, device, seq, entry, next_use, until_ms FROM state_empty "
        "WHERE subject = ? AND voided = 0" SPILE_LATEST_FIRST,
        barrel);
}

// Once sour, always sour: wood is not made clean again.
Result<bool> isSour(Database& database, const SubjectId& barrel)
{
    SPILE_ASSIGN(sour, database.integer(
                           0,
                           "SELECT EXISTS(SELECT 1 FROM state_empty WHERE subject = ?1 AND voided "
                           "= 0 AND (programme = 'sour' OR next_use = 'sour beer')) OR "
                           "EXISTS(SELECT 1 FROM state_fill WHERE subject = ?1 AND voided = 0 AND "
                           "programme = 'sour')",
                           barrel));
    return sour != 0;
}

Result<std::optional<SubjectId>> latestPlace(Database& database, const SubjectId& barrel)
{
    SPILE_ASSIGN(moved, database.first([](const Row& row) { return row.idIfAny<SubjectId>(0); },
                                       "SELECT place FROM state_move WHERE subject = ? AND "
                                       "voided = 0" SPILE_LATEST_FIRST,
                                       barrel));
    return moved.value_or(std::nullopt);
}

// The newest gauge, or the fill where there is none, less what was drawn since and with what was
// added; below 0 if more went out than there was. A gauge that only says "at least" or "at most"
// does not count.
Result<std::optional<std::int64_t>> volumeHeld(Database& database, const SubjectId& barrel,
                                               const Fill& fill)
{
    struct Gauge {
        std::optional<std::int64_t> volumeMl;
        std::int64_t whenMs;
    };
    SPILE_ASSIGN(gauge, database.first(
                            [](const Row& row) {
                                return Gauge{row.integerIfAny(0), row.integer(1)};
                            },
                            "SELECT volume_ml, when_ms"
                            " FROM state_gauge WHERE " SPILE_SINCE
                            " AND coalesce(bound, 0) = 0" SPILE_LATEST_FIRST,
                            barrel, fill.moment.whenMs));
    const Gauge known = gauge.value_or(Gauge{fill.volumeMl, fill.moment.whenMs});
    if (!known.volumeMl) {
        return std::optional<std::int64_t>();
    }
    SPILE_ASSIGN(drawn, database.integer(0,
                                         "SELECT coalesce(sum(volume_ml), 0) FROM state_draw "
                                         "WHERE " SPILE_SINCE,
                                         barrel, known.whenMs));
    SPILE_ASSIGN(added, database.integer(0,
                                         "SELECT coalesce(sum(volume_ml), 0) FROM state_top_up "
                                         "WHERE " SPILE_SINCE,
                                         barrel, known.whenMs));
    return std::optional(*known.volumeMl - drawn + added);
}

struct Latest {
    std::optional<std::int64_t> tasteMs, gaugeMs, drawMs, checkMs;
    std::int64_t tastings = 0;
};

Result<Latest> latestSince(Database& database, const SubjectId& barrel, std::int64_t sinceMs)
{
    const auto ms = [](const Row& row) { return row.integerIfAny(0); };
    SPILE_ASSIGN(
        taste, database.first(ms, "SELECT max(when_ms) FROM state_taste WHERE " SPILE_SINCE, barrel,
                              sinceMs));
    SPILE_ASSIGN(
        gauge, database.first(ms, "SELECT max(when_ms) FROM state_gauge WHERE " SPILE_SINCE, barrel,
                              sinceMs));
    SPILE_ASSIGN(draw, database.first(ms, "SELECT max(when_ms) FROM state_draw WHERE " SPILE_SINCE,
                                      barrel, sinceMs));
    SPILE_ASSIGN(
        check, database.first(ms, "SELECT max(when_ms) FROM state_check WHERE " SPILE_SINCE, barrel,
                              sinceMs));
    SPILE_ASSIGN(tastings,
                 database.integer(0, "SELECT count(*) FROM state_taste WHERE " SPILE_SINCE, barrel,
                                  sinceMs));
    return Latest{*taste, *gauge, *draw, *check, tastings};
}

std::optional<Instant> instant(const std::optional<std::int64_t>& ms)
{
    return ms ? std::optional(instantFromMs(*ms)) : std::nullopt;
}

std::optional<std::int64_t> milliseconds(const std::optional<Instant>& t)
{
    return t ? std::optional(toMs(*t)) : std::nullopt;
}

Result<void> readVerdict(Database& database, const SubjectId& barrel, std::int64_t sinceMs,
                         BarrelFacts& facts)
{
    return database.each(
        [&](const Row& row) {
            facts.verdict = row.textIfAny(0);
            facts.verdictAt = instantFromMs(row.integer(1));
            facts.verdictUntil = instant(row.integerIfAny(2));
            return Result<void>();
        },
        "SELECT verdict, when_ms"
        ", until_ms FROM state_verdict WHERE " SPILE_SINCE SPILE_LATEST_FIRST,
        barrel, sinceMs);
}

Result<std::optional<std::int64_t>> fillNumber(Database& database, const SubjectId& barrel,
                                               const std::optional<std::int64_t>& fillsBefore)
{
    SPILE_ASSIGN(
        fills, database.integer(
                   0, "SELECT count(*) FROM state_fill WHERE subject = ? AND voided = 0", barrel));
    return fillsBefore ? std::optional(*fillsBefore + fills) : std::nullopt;
}

std::optional<Instant> nextLeakLook(const BarrelFacts& facts)
{
    if (!facts.filledToTheDay) {
        return std::nullopt;
    }
    const Instant looked = facts.lastLooked.value_or(*facts.filledAt);
    for (const Milliseconds after : leakLooksAfter) {
        if (*facts.filledAt + after > looked) {
            return *facts.filledAt + after;
        }
    }
    return std::nullopt;
}

// Two devices may have filled one barrel, neither knowing of the other.
Result<void> noteFills(Database& database, const SubjectId& barrel,
                       const std::optional<Emptied>& emptied)
{
    Moment since;
    since.whenMs = std::numeric_limits<std::int64_t>::min();
    if (emptied) {
        since = emptied->moment;
    }
    SPILE_ASSIGN(fills,
                 database.integer(0,
                                  "SELECT count(*) FROM state_fill WHERE subject = ? AND "
                                  "voided = 0 AND (when_ms, device, seq, entry) > (?, ?, ?, ?)",
                                  barrel, since.whenMs, since.device, since.seq, since.entry));
    return noteBarrel(database, Unsettled::FilledTwice, barrel, fills > 1);
}

// Whichever barrels have the code now: each of them, if there are several.
Result<void> noteCode(Database& database, const std::string& code)
{
    std::vector<SubjectId> all;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            all.push_back(row.id<SubjectId>(0));
            return Result<void>();
        },
        "SELECT subject FROM state_barrel_now WHERE code = ?", code));
    for (const SubjectId& barrel : all) {
        SPILE_TRY(noteBarrel(database, Unsettled::SameCode, barrel, all.size() > 1));
    }
    return {};
}

Result<std::optional<std::string>> codeBefore(Database& database, const SubjectId& barrel)
{
    return database.first([](const Row& row) { return row.text(0); },
                          "SELECT code FROM state_barrel_now WHERE subject = ?", barrel);
}

// Not registered here yet, or its registration was taken back.
Result<void> removeSummary(Database& database, const SubjectId& barrel,
                           const std::optional<std::string>& code)
{
    SPILE_TRY(database.execute("DELETE FROM state_barrel_now WHERE subject = ?", barrel));
    SPILE_TRY(noteBarrel(database, Unsettled::SameCode, barrel, false));
    SPILE_TRY(noteBarrel(database, Unsettled::FilledTwice, barrel, false));
    SPILE_TRY(forgetVolumeDoubts(database, barrel));
    return code ? noteCode(database, *code) : Result<void>();
}

}  // namespace

NextStep nextStep(const BarrelFacts& facts)
{
    if (!facts.filled) {
        return {facts.nextUse == "re-wet and store" ? "wet the wood" : "fill", facts.wetUntil};
    }
    if (facts.verdict == "ready" || facts.verdict == "blend" || facts.verdict == "destroy") {
        return {"empty", facts.verdictAt};
    }
    const bool waited = facts.lastTasted && facts.verdictUntil <= facts.lastTasted;
    if (facts.verdict == "hold" && facts.verdictUntil && !waited) {
        return {"taste", facts.verdictUntil};
    }
    if (const auto look = nextLeakLook(facts)) {
        return {"check for leaks", look};
    }
    if (facts.lastTasted && *facts.lastTasted - *facts.filledAt > atTheFill) {
        return {"taste", *facts.lastTasted + nextTastingAfter, true};
    }
    return {"taste", *facts.filledAt + firstTastingAfter, true};
}

Result<void> writeBarrelSummary(Database& database, const SubjectId& barrel)
{
    SPILE_ASSIGN(own, registered(database, barrel));
    SPILE_ASSIGN(before, codeBefore(database, barrel));
    if (!own) {
        return removeSummary(database, barrel, before);
    }
    SPILE_ASSIGN(fill, latestFill(database, barrel));
    SPILE_ASSIGN(emptied, latestEmpty(database, barrel));
    SPILE_ASSIGN(moved, latestPlace(database, barrel));
    SPILE_ASSIGN(sour, isSour(database, barrel));
    BarrelFacts facts;
    facts.filled = fill && (!emptied || fill->moment > emptied->moment);
    if (!facts.filled && emptied) {
        facts.nextUse = emptied->nextUse;
        facts.wetUntil = instant(emptied->untilMs);
    }
    Latest latest;
    std::optional<std::int64_t> volumeMl;
    std::optional<std::int64_t> number;
    if (facts.filled) {
        const std::int64_t sinceMs = fill->moment.whenMs;
        facts.filledAt = instantFromMs(sinceMs);
        facts.filledToTheDay = fill->precision.value_or(precisionDay) == precisionDay;
        SPILE_ASSIGN(since, latestSince(database, barrel, sinceMs));
        SPILE_ASSIGN(held, volumeHeld(database, barrel, *fill));
        SPILE_TRY(noteVolumeDoubts(database, barrel,
                                   {sinceMs, own->fullMl, own->sizeMl, fill->volumeMl, held}));
        SPILE_ASSIGN(fills, fillNumber(database, barrel, own->fillsBefore));
        SPILE_TRY(readVerdict(database, barrel, sinceMs, facts));
        latest = since;
        if (held) {
            volumeMl = std::max<std::int64_t>(0, *held);
        }
        number = fills;
        facts.lastTasted = instant(latest.tasteMs);
        facts.lastLooked =
            instant(std::max({latest.tasteMs, latest.gaugeMs, latest.drawMs, latest.checkMs}));
    } else {
        SPILE_TRY(forgetVolumeDoubts(database, barrel));
    }
    const NextStep next = nextStep(facts);
    const bool full = facts.filled;
    SPILE_TRY(noteFills(database, barrel, emptied));
    SPILE_TRY(database.execute(
        "INSERT OR REPLACE INTO state_barrel_now(subject, code, mark, spirit, size_ml, place, "
        "filled, fill, batch, "
        "fill_number, filled_ms, filled_precision, volume_ml, tastings, last_taste_ms, "
        "last_gauge_ms, last_draw_ms, "
        "verdict, next_step, due_ms, due_by_habit, emptied_ms, order_key, next_use, sour) "
        "VALUES(?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        barrel, own->code, own->mark, own->spirit, own->sizeMl, moved ? moved : own->place,
        full ? 1 : 0, full ? std::optional(fill->moment.entry) : std::nullopt,
        full ? fill->batch : std::nullopt, number, full ? std::optional(fill->atMs) : std::nullopt,
        full ? fill->precision : std::nullopt, volumeMl, latest.tastings, latest.tasteMs,
        latest.gaugeMs, latest.drawMs, facts.verdict, next.step, milliseconds(next.due),
        next.byHabit ? 1 : 0, emptied ? std::optional(emptied->moment.whenMs) : own->emptiedMs,
        naturalKey(own->mark.value_or(""), own->code), facts.nextUse, sour ? 1 : 0));
    if (before == own->code) {
        return {};
    }
    SPILE_TRY(noteCode(database, own->code));
    return before ? noteCode(database, *before) : Result<void>();
}

#undef SPILE_LATEST_FIRST
#undef SPILE_SINCE

}  // namespace spile::cellar
