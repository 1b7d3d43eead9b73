#include "core/cellar/acts/benching.hpp"

#include "core/cellar/benches.hpp"
#include "core/units/scaled.hpp"

#include <set>

namespace spile::cellar {

namespace {

// The rows of a glass, checked.
Result<void> addGlass(Cellar& cellar, int number, const std::vector<BenchPart>& parts,
                      ledger::List& rows)
{
    if (parts.empty()) {
        return fail(ErrorCode::OutOfRange, "glass", std::to_string(number) + " is empty",
                    "one barrel or more");
    }
    std::set<SubjectId> barrels;
    for (const BenchPart& part : parts) {
        SPILE_TRY(needFilled(cellar, part.barrel));
        if (!barrels.insert(part.barrel).second) {
            return fail(ErrorCode::Conflict, "barrel", part.barrel.hex() + " twice",
                        "each once in a glass");
        }
        SPILE_ASSIGN(millilitres, toMl(part.volume));
        rows.emplace_back(ledger::List{std::int64_t{number}, part.barrel, millilitres});
    }
    return {};
}

Result<BenchWhole> needGlass(Cellar& cellar, const SubjectId& bench, int glass)
{
    SPILE_ASSIGN(found, benchById(cellar.database(), bench));
    if (!found) {
        return fail(ErrorCode::NotFound, "bench", bench.hex(), "one that is recorded");
    }
    if (found->glassOf(glass) == nullptr) {
        return fail(ErrorCode::NotFound, "glass", std::to_string(glass), "one of the bench");
    }
    return std::move(*found);
}

tl::unexpected<Error> notTasted(const char* how)
{
    return fail(ErrorCode::Conflict, how, "no", "tasted cold and carbonated");
}

}  // namespace

Result<SubjectId> recordBench(Cellar& cellar, const NewBench& bench)
{
    SPILE_TRY(needPerson(cellar, bench.circumstance));
    if (bench.target) {
        SPILE_TRY(needSubject(cellar, "target", *bench.target));
    }
    const auto glasses = static_cast<int>(bench.glasses.size());
    if (glasses < benchGlassesLeast || glasses > benchGlassesMost) {
        return fail(ErrorCode::OutOfRange, "glasses", std::to_string(glasses), "2 to 4");
    }
    ledger::List rows;
    for (int number = 1; number <= glasses; ++number) {
        SPILE_TRY(
            addGlass(cellar, number, bench.glasses[static_cast<std::size_t>(number - 1)], rows));
    }
    const SubjectId subject = cellar.outside().ids.next();
    FieldSet fields(bench.circumstance);
    fields.set(Field::Portions, std::move(rows));
    fields.setText(Field::Name, bench.name);
    fields.setIfAny(Field::Target, bench.target);
    SPILE_TRY(
        recordOne(cellar, newEntry("bench", subject, std::move(fields), bench.circumstance.at)));
    return subject;
}

Result<EntryId> recordGlassTaste(Cellar& cellar, const NewGlassTaste& taste)
{
    if (!taste.circumstance.person) {
        return fail(ErrorCode::Malformed, "person", "nobody", "who tasted it");
    }
    SPILE_TRY(needPerson(cellar, taste.circumstance));
    SPILE_ASSIGN(bench, needGlass(cellar, taste.bench, taste.glass));
    if (bench.glassOf(taste.glass)->isTastedBy(*taste.circumstance.person)) {
        return fail(ErrorCode::Conflict, "glass", std::to_string(taste.glass) + " is scored",
                    "one that this person has not scored");
    }
    NewTaste sheet;
    sheet.barrel = taste.bench;
    sheet.scores = taste.scores;
    sheet.liking = taste.liking;
    sheet.glass = taste.glass;
    sheet.circumstance = taste.circumstance;
    return recordOne(cellar, tasteEntry(sheet));
}

Result<EntryId> acceptGlass(Cellar& cellar, const NewAcceptance& acceptance)
{
    SPILE_TRY(needPerson(cellar, acceptance.circumstance));
    SPILE_ASSIGN(bench, needGlass(cellar, acceptance.bench, acceptance.glass));
    if (bench.choice) {
        return fail(ErrorCode::Conflict, "accept",
                    "glass " + std::to_string(bench.choice->glass) + " is accepted",
                    "take that back first");
    }
    if (bench.glassOf(acceptance.glass)->tastes.empty()) {
        return fail(ErrorCode::Conflict, "glass", "nobody has scored it",
                    "one that somebody has tasted");
    }
    if (!acceptance.tastedCold) {
        return notTasted("tasted_cold");
    }
    if (!acceptance.tastedCarbonated) {
        return notTasted("tasted_carbonated");
    }
    FieldSet fields(acceptance.circumstance);
    fields.set(Field::Glass, std::int64_t{acceptance.glass});
    fields.set(Field::TastedCold, true);
    fields.set(Field::TastedCarbonated, true);
    SPILE_ASSIGN(
        entry, newEntry("accept", acceptance.bench, std::move(fields), acceptance.circumstance.at));
    entry.target = bench.entry;
    return recordOne(cellar, std::move(entry));
}

}  // namespace spile::cellar
