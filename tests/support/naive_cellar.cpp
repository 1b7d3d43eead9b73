#include "tests/support/naive_cellar.hpp"

#include "core/cellar/kind.hpp"
#include "tests/support/naive_counting.hpp"

#include <algorithm>
#include <functional>

namespace spile::support {

using cellar::Field;
using ledger::Fields;

namespace {

constexpr std::uint32_t bootField = 92, sinceBootField = 93;
constexpr std::int64_t mostMs = std::int64_t{1} << 53U;
constexpr std::int64_t calendarEndMs = 253402300799999;

template <class Id>
std::optional<Id> idOf(const Fields& fields, Field field)
{
    const auto bytes = valueOf<Bytes>(fields, static_cast<std::uint32_t>(field));
    return bytes ? Id::fromBytes(*bytes) : std::nullopt;
}

std::optional<std::string> textOf(const Fields& fields, Field field)
{
    return valueOf<std::string>(fields, static_cast<std::uint32_t>(field));
}

// What the counted entries say.
class Saying {
public:
    Saying(const NaiveEntries& entries, NaiveCellar& said) : entries_(entries), said_(said) {}

    void run()
    {
        for (const EntryId& id : said_.counted) {
            const ledger::Entry& core = at(id).core;
            const auto* kind = cellar::findKind(core.kind);
            if (isCorrection(id)) {
                said_.corrections[id] = isVoided(id);
            } else if (kind == nullptr || core.kindVersion > kind->version) {
                said_.unknown.insert(id);
            } else {
                said_.facts[id] = fact(id, *kind);
            }
        }
        for (const auto& [id, fact] : said_.facts) {
            if (fact.kind == "barrel" && !fact.voided) {
                said_.barrels[fact.subject] = barrel(fact);
            }
        }
    }

private:
    [[nodiscard]] const NaiveEntry& at(const EntryId& id) const { return *entries_.at(id); }
    [[nodiscard]] bool isKind(const EntryId& id, std::string_view kind) const
    {
        return at(id).core.kind == kind && at(id).core.kindVersion <= cellar::correctionVersion;
    }
    [[nodiscard]] bool isCorrection(const EntryId& id) const
    {
        return at(id).core.target && (isKind(id, "amend") || isKind(id, "void"));
    }
    [[nodiscard]] NaiveOrder orderOf(const EntryId& id) const
    {
        const ledger::Entry& core = at(id).core;
        return {std::min(core.eventTime(), core.recorded), core.device, core.seq, id};
    }

    // Whether it says what the time was at a moment of the start in which `record` was made.
    [[nodiscard]] bool isAbout(const EntryId& id, const ledger::Entry& record) const
    {
        if (at(id).core.kind != "clock_observe" || at(id).core.kindVersion != 1 ||
            subjectDevice(at(id)) != record.device || isVoided(id)) {
            return false;
        }
        const Fields fields = fieldsOf(at(id));
        const auto since = valueOf<std::int64_t>(fields, sinceBootField);
        return idOf<BootId>(fields, static_cast<Field>(bootField)) == record.boot && since &&
               *since >= 0 && *since <= mostMs;
    }
    [[nodiscard]] std::optional<EntryId> observationOf(const ledger::Entry& record) const
    {
        std::set<EntryId> all;
        for (const EntryId& id : said_.counted) {
            if (isAbout(id, record)) {
                all.insert(id);
            }
        }
        std::optional<EntryId> latest;
        for (const EntryId& id : all) {
            const bool replaced = std::any_of(all.begin(), all.end(), [&](const EntryId& other) {
                const auto& names = at(other).core.overwrites;
                return std::find(names.begin(), names.end(), id) != names.end();
            });
            if (!replaced && (!latest || orderOf(id) > orderOf(*latest))) {
                latest = id;
            }
        }
        return latest;
    }

    // When it happened and when it was recorded, as far as that is known better than by the clock.
    [[nodiscard]] std::pair<Instant, Instant> timesOf(const EntryId& id) const
    {
        constexpr std::int64_t nearMs = 120'000;
        const ledger::Entry& core = at(id).core;
        const auto observed = core.kind == "clock_observe" ? std::nullopt : observationOf(core);
        if (!observed) {
            return {core.eventTime(), core.recorded};
        }
        const ledger::Entry& by = at(*observed).core;
        const std::int64_t truth =
            std::clamp(toMs(by.eventTime()) + core.sinceBoot.count() -
                           *valueOf<std::int64_t>(fieldsOf(at(*observed)), sinceBootField),
                       -calendarEndMs, calendarEndMs);
        const auto far = [](std::int64_t a, std::int64_t b) {
            return a - b >= nearMs || b - a >= nearMs;
        };
        const auto better = [&](Instant told) {
            return far(toMs(told), truth) ? instantFromMs(truth) : told;
        };
        const Instant clock = core.wall ? *core.wall : core.recorded;
        const bool claimed = core.at && far(toMs(core.at->time), toMs(clock));
        return {claimed ? core.at->time : better(core.eventTime()), better(core.recorded)};
    }

    // A void entry that is voided itself hides nothing.
    [[nodiscard]] bool isVoided(const EntryId& id) const
    {
        return std::any_of(said_.counted.begin(), said_.counted.end(), [&](const EntryId& other) {
            return isKind(other, "void") && at(other).core.target == id && !isVoided(other);
        });
    }

    // What the amendment `id` names as overwritten, itself or through others between.
    [[nodiscard]] std::set<EntryId> replacedBy(const EntryId& id) const
    {
        std::set<EntryId> replaced;
        std::vector<EntryId> open = {id};
        while (!open.empty()) {
            const EntryId later = open.back();
            open.pop_back();
            if (said_.counted.contains(later)) {
                for (const EntryId& earlier : at(later).core.overwrites) {
                    if (replaced.insert(earlier).second) {
                        open.push_back(earlier);
                    }
                }
            }
        }
        return replaced;
    }

    [[nodiscard]] NaiveFact fact(const EntryId& id, const cellar::KindSpec& kind) const
    {
        const ledger::Entry& core = at(id).core;
        const auto [happened, recorded] = timesOf(id);
        const NaiveOrder order(std::min(happened, recorded), core.device, core.seq, id);
        NaiveFact fact{core.kind, core.subject, order, happened, {}, core.target, {}, isVoided(id)};
        if (happened != core.eventTime()) {
            fact.clock = core.at ? core.at->time : core.wall ? *core.wall : core.recorded;
        }
        std::map<EntryId, Fields> amendments;  // that are live
        for (const EntryId& other : said_.counted) {
            if (isKind(other, "amend") && at(other).core.target == id && !isVoided(other)) {
                amendments[other] = fieldsOf(at(other));
            }
        }
        fact.amended = !amendments.empty();
        fact.fields = fieldsOf(at(id));
        std::set<std::uint32_t> corrected;
        for (const auto& [other, fields] : amendments) {
            for (const auto& [number, value] : fields) {
                corrected.insert(number);
            }
        }
        for (const std::uint32_t number : corrected) {
            const cellar::FieldSpec* spec = cellar::findField(number);
            if (spec == nullptr || !spec->fixed) {
                correct(fact, number, amendments);
            }
        }
        std::erase_if(fact.fields, [&](const auto& field) {
            return field.second.isNull() ||
                   std::none_of(kind.fields.begin(), kind.fields.end(), [&](const auto& own) {
                       return static_cast<std::uint32_t>(own.field) == field.first;
                   });
        });
        return fact;
    }

    void correct(NaiveFact& fact, std::uint32_t number,
                 const std::map<EntryId, Fields>& amendments) const
    {
        std::set<EntryId> writes;
        std::set<EntryId> replaced;
        for (const auto& [id, fields] : amendments) {
            if (fields.contains(number)) {
                writes.insert(id);
                replaced.merge(replacedBy(id));
            }
        }
        std::optional<NaiveOrder> latest;
        for (const EntryId& write : writes) {
            if (replaced.contains(write)) {
                continue;
            }
            const ledger::Value& written = amendments.at(write).at(number);
            fact.twoValues = fact.twoValues || (latest && !(written == fact.fields[number]));
            if (!latest || orderOf(write) > *latest) {
                latest = orderOf(write);
                fact.fields[number] = written;
            }
        }
    }

    // The latest fact about `subject` of one of `kinds`.
    [[nodiscard]] const NaiveFact* latestOf(const SubjectId& subject,
                                            const std::set<std::string>& kinds) const
    {
        const NaiveFact* latest = nullptr;
        for (const auto& [id, fact] : said_.facts) {
            if (fact.subject == subject && kinds.contains(fact.kind) && !fact.voided &&
                (latest == nullptr || fact.order > latest->order)) {
                latest = &fact;
            }
        }
        return latest;
    }

    [[nodiscard]] NaiveBarrel barrel(const NaiveFact& made) const
    {
        NaiveBarrel now;
        now.mark = textOf(made.fields, Field::Mark);
        const NaiveFact* move = latestOf(made.subject, {"move"});
        now.place = idOf<SubjectId>(move == nullptr ? made.fields : move->fields, Field::Place);
        const NaiveFact* last = latestOf(made.subject, {"fill", "empty"});
        if (last != nullptr && last->kind == "fill") {
            now.fill = std::get<EntryId>(last->order);
            now.batch = idOf<SubjectId>(last->fields, Field::Batch);
            const NaiveFact* verdict = latestOf(made.subject, {"verdict"});
            if (verdict != nullptr &&
                std::get<Instant>(verdict->order) >= std::get<Instant>(last->order)) {
                now.verdict = textOf(verdict->fields, Field::Verdict);
            }
        }
        return now;
    }

    const NaiveEntries& entries_;
    NaiveCellar& said_;
};

}  // namespace

NaiveCellar naiveCellar(const NaiveEntries& entries, const CellarId& cellar, const DeviceId& self)
{
    NaiveCellar said;
    countNaively(entries, cellar, self, said);
    Saying(entries, said).run();
    return said;
}

}  // namespace spile::support
