#include "tests/support/naive_cellar.hpp"

#include "core/cellar/kind.hpp"

#include <algorithm>
#include <functional>

namespace spile::support {

using cellar::Field;
using ledger::Fields;

namespace {

constexpr std::uint32_t roleField = 4, pointsField = 90;
constexpr std::int64_t deskRole = 1;

template <class T>
std::optional<T> valueOf(const Fields& fields, std::uint32_t number)
{
    const auto found = fields.find(number);
    const T* value = found == fields.end() ? nullptr : found->second.as<T>();
    return value == nullptr ? std::nullopt : std::optional(*value);
}

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

Fields fieldsOf(const NaiveEntry& entry)
{
    return ledger::decodeFields(entry.body).value_or(Fields());
}
DeviceId subjectDevice(const NaiveEntry& entry)
{
    return *DeviceId::fromBytes(entry.core.subject.bytes());
}

// Which entries count: chains, admission, cutting off.
class Counting {
public:
    Counting(const NaiveEntries& entries, const CellarId& cellar, DeviceId self)
        : entries_(entries), owner_(*DeviceId::fromBytes(cellar.bytes())), self_(self)
    {
    }

    std::set<EntryId> linked;  // their chain is whole and their device was ever admitted
    std::set<EntryId> counted;

    void run()
    {
        admits_.insert(owner_);
        admitted_ = {owner_, self_};
        untilQuiet([&] { return link() || admit(); });
        belonging_.insert(owner_);
        if (std::none_of(linked.begin(), linked.end(),
                         [&](const EntryId& id) { return admits(id, self_); })) {
            belonging_.insert(self_);
        }
        untilQuiet([&] { return adopt() || belong(); });
        for (const EntryId& id : linked) {
            if (stands(id)) {
                counted.insert(id);
            }
        }
    }

private:
    static void untilQuiet(const std::function<bool()>& step)
    {
        while (step()) {
        }
    }
    [[nodiscard]] const NaiveEntry& at(const EntryId& id) const { return *entries_.at(id); }
    [[nodiscard]] bool isKind(const EntryId& id, std::string_view kind) const
    {
        return at(id).core.kind == kind && at(id).core.kindVersion == 1;
    }
    // Whether it is a `device` entry about `device` by one that may admit.
    [[nodiscard]] bool admits(const EntryId& id, const DeviceId& device) const
    {
        return isKind(id, "device") && subjectDevice(at(id)) == device &&
               admits_.contains(at(id).core.device);
    }

    bool link()
    {
        bool more = false;
        for (const auto& [id, entry] : entries_) {
            const ledger::Entry& core = entry->core;
            if (admitted_.contains(core.device) &&
                (core.seq == 1 || linked.contains(core.previous))) {
                more = linked.insert(id).second || more;
            }
        }
        return more;
    }
    bool admit()
    {
        bool more = false;
        for (const EntryId& id : linked) {
            const DeviceId device = subjectDevice(at(id));
            if (admits(id, device)) {
                more = admitted_.insert(device).second || more;
                if (valueOf<std::int64_t>(fieldsOf(at(id)), roleField) == deskRole) {
                    more = admits_.insert(device).second || more;
                }
            }
        }
        return more;
    }

    [[nodiscard]] bool isLifted(const EntryId& cut) const
    {
        return std::any_of(linked.begin(), linked.end(), [&](const EntryId& id) {
            const auto& lifted = at(id).core.overwrites;
            return isKind(id, "reinstate") && at(id).core.device == owner_ &&
                   at(id).core.subject == at(cut).core.subject &&
                   std::find(lifted.begin(), lifted.end(), cut) != lifted.end();
        });
    }
    [[nodiscard]] bool isOnChain(const EntryId& id, EntryId last) const
    {
        while (last != id && entries_.contains(last)) {
            last = at(last).core.previous;
        }
        return last == id;
    }
    [[nodiscard]] bool isBeyond(const EntryId& id, const EntryId& cut) const
    {
        const auto points = valueOf<ledger::List>(fieldsOf(at(cut)), pointsField);
        return !points || std::none_of(points->begin(), points->end(), [&](const auto& point) {
            const ledger::List& columns = *point.template as<ledger::List>();
            const auto last = *EntryId::fromBytes(*columns.at(1).template as<Bytes>());
            const auto seq = static_cast<std::uint64_t>(*columns.at(0).template as<std::int64_t>());
            return linked.contains(last) ? isOnChain(id, last) : at(id).core.seq <= seq;
        });
    }
    [[nodiscard]] bool isCutOff(const EntryId& id) const
    {
        const DeviceId device = at(id).core.device;
        return device != owner_ &&
               std::any_of(linked.begin(), linked.end(), [&](const EntryId& cut) {
                   return isKind(cut, "cut_off") && admits_.contains(at(cut).core.device) &&
                          subjectDevice(at(cut)) == device && !isLifted(cut) && isBeyond(id, cut);
               });
    }
    [[nodiscard]] bool stands(const EntryId& id) const
    {
        return adopted_.contains(id) || (belonging_.contains(at(id).core.device) && !isCutOff(id));
    }
    bool adopt()
    {
        bool more = false;
        for (const EntryId& id : linked) {
            if (isKind(id, "adopt") && at(id).core.target && admits_.contains(at(id).core.device) &&
                stands(id)) {
                more = adopted_.insert(*at(id).core.target).second || more;
            }
        }
        return more;
    }
    bool belong()
    {
        bool more = false;
        for (const EntryId& id : linked) {
            const DeviceId device = subjectDevice(at(id));
            if (admits(id, device) && stands(id)) {
                more = belonging_.insert(device).second || more;
            }
        }
        return more;
    }

    const NaiveEntries& entries_;
    DeviceId owner_, self_;
    std::set<DeviceId> admitted_, admits_;  // ever
    std::set<DeviceId> belonging_;          // now
    std::set<EntryId> adopted_;
};

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
        NaiveFact fact{core.kind, core.subject, orderOf(id), core.target, {}, isVoided(id)};
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
    Counting counting(entries, cellar, self);
    counting.run();
    NaiveCellar said;
    said.linked = counting.linked;
    said.counted = counting.counted;
    Saying(entries, said).run();
    return said;
}

}  // namespace spile::support
