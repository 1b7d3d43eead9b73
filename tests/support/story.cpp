#include "tests/support/story.hpp"

#include "core/cellar/effective.hpp"
#include "core/cellar/field.hpp"
#include "core/ledger/entry_number.hpp"

#include <algorithm>
#include <stdexcept>

namespace spile::support {

using cellar::Field;
using ledger::Fields;
using ledger::NewEntry;

namespace {

std::uint32_t number(Field field) { return static_cast<std::uint32_t>(field); }

SubjectId subjectOf(const DeviceId& device) { return *SubjectId::fromBytes(device.bytes()); }

}  // namespace

Story::Story(MemoryFleet& fleet, const History& history)
    : fleet_(fleet), history_(history), random_(history.seed + 1), barrels_{fleet.small().barrel}
{
    fleet.putBack(history.seed);
    for (std::size_t i = 0; i < history.devices; ++i) {
        Holder& at = holders_.emplace_back();
        at.member = &fleet.device(i);
        Ids ids;
        valueOrThrow(at.member->database().each(
            [&](const ledger::Row& row) {
                ids.push_back(row.id<EntryId>(0));
                return Result<void>();
            },
            "SELECT id FROM entry ORDER BY n"));
        keepAll(at, ids);
    }
}

Story::~Story()
{
    for (const Path& file : dayFiles_) {
        std::ignore = fleet_.files().remove(file);
    }
}

void Story::play(const Step& step)
{
    Holder& at = holder(step.device);
    switch (step.what) {
        case What::SetClock:
            at.member->clock.setWall(MemoryFleet::start +
                                     std::chrono::days(365) * (static_cast<int>(step.a % 5) - 2));
            break;
        case What::PassTime:
            at.member->clock.pass(std::chrono::hours(1 + step.a % 24));
            break;
        case What::Reboot:
            at.member->clock.reboot(BootId(std::array<std::uint8_t, BootId::size>{++boots_}));
            break;
        case What::Exchange:
            exchange(step);
            break;
        case What::ExchangePart:
            exchangePart(step);
            break;
        case What::BackUp:
            backUp(at);
            break;
        case What::Restore:
            restore(at);
            break;
        case What::Clone:
            clone(at);
            break;
        default:
            record(at, step);
            break;
    }
}

NewEntry Story::entry(const std::string& kind, const SubjectId& subject, Fields fields,
                      const Step& step) const
{
    NewEntry made{kind, subject, std::move(fields), {}, {}, {}, {}};
    if (step.c % 4 == 1) {  // back-dated, and sometimes from the future; few days, so that some tie
        made.at = ledger::EventTime{MemoryFleet::start +
                                    std::chrono::days(static_cast<int>(step.c / 4 % 7) - 4)};
    } else if (step.c % 4 == 2) {  // what the clock shows, as the app says it
        made.at = ledger::EventTime{holders_[step.device % holders_.size()].member->clock.now()};
    }
    return made;
}

void Story::record(Holder& at, const Step& step)
{
    const SubjectId barrel = this->barrel(step.a);
    const auto value = static_cast<std::int64_t>(1 + step.b % 9);
    switch (step.what) {
        case What::Barrel:
            barrels_.push_back(at.member->ids.next());
            recordOne(at, entry("barrel", barrels_.back(),
                                {{number(Field::Code), "ABCDE" + std::to_string(value)},
                                 {number(Field::Mark), "Rum " + std::to_string(value)},
                                 {number(Field::Place), this->barrel(step.c)}},
                                step));
            break;
        case What::Fill:
            recordOne(at, entry("fill", barrel,
                                {{number(Field::Batch), fleet_.small().batch},
                                 {number(Field::VolumeMl), value * 1000}},
                                step));
            break;
        case What::Empty:
            recordOne(at, entry("empty", barrel, {}, step));
            break;
        case What::Move:
            recordOne(at,
                      entry("move", barrel, {{number(Field::Place), this->barrel(step.b)}}, step));
            break;
        case What::Verdict:
            recordOne(
                at,
                entry("verdict", barrel,
                      {{number(Field::Verdict), std::string(value % 2 == 0 ? "hold" : "ready")}},
                      step));
            break;
        case What::Draw:
            recordOne(at, entry("draw", barrel,
                                {{number(Field::VolumeMl), value},
                                 {number(Field::DrawMethod), std::string("valve")}},
                                step));
            break;
        case What::Taste:
            recordTaste(at, step);
            break;
        case What::Amend:
            amend(at, step);
            break;
        case What::Void: {
            NewEntry made = entry("void", barrel, {}, step);
            made.target = someEntry(at, step.a);
            recordOne(at, made);
            break;
        }
        case What::Newer:
            recordNewer(at, step);
            break;
        case What::Admit:  // as it should be; or by anybody, who mostly may not
            admit(step.b % 2 == 0 ? holders_.front() : at, step);
            break;
        case What::CutOff:
            cutOff(at, step);
            break;
        case What::Adopt: {
            NewEntry made = entry("adopt", barrel, {}, step);
            made.target = someEntry(at, step.a);
            recordOne(at, made);
            break;
        }
        case What::Reinstate:
            reinstate(at, step);
            break;
        case What::Observe:
            observe(at, step);
            break;
        default:
            recordOne(at,
                      entry("person", at.member->ids.next(), {{number(Field::Name), "Kim"}}, step));
            break;
    }
}

void Story::keep(Holder& at, const EntryId& id)
{
    at.has.insert(id);
    if (verified_.contains(id)) {
        return;
    }
    valueOrThrow(at.member->database().each(
        [&](const ledger::Row& row) {
            const ByteView core = row.blob(0);
            const ByteView body = row.blob(1);
            const ledger::SignedEntry entry{Bytes(core.begin(), core.end()),
                                            row.id<ledger::Signature>(2),
                                            Bytes(body.begin(), body.end())};
            const ledger::Entry decoded = valueOrThrow(ledger::decodeCore(entry.core));
            verified_[id] = {entry, id, decoded};
            naive_[id] = std::make_shared<NaiveEntry>(NaiveEntry{decoded, entry.body});
            return Result<void>();
        },
        "SELECT core, body, signature FROM entry WHERE n = " SPILE_ENTRY_NUMBER("?1"), id));
    if (!verified_.contains(id)) {
        throw std::runtime_error("what was recorded is not there: " + id.hex());
    }
    all_.push_back(id);
}

void Story::keepAll(Holder& at, const Ids& ids)
{
    for (const EntryId& id : ids) {
        keep(at, id);
    }
}

void Story::recordOne(Holder& at, NewEntry entry)
{
    auto change = valueOrThrow(at.member->ledger().change());
    const EntryId id = valueOrThrow(change.record(std::move(entry)));
    valueOrThrow(change.commit());
    keep(at, id);
}

void Story::recordTaste(Holder& at, const Step& step)
{
    const auto score = static_cast<std::int64_t>(1 + step.b % 9);
    std::vector<NewEntry> group = {
        entry("taste", barrel(step.a),
              {{number(Field::Person), fleet_.small().person},
               {number(Field::Scores),
                ledger::List{ledger::List{std::string("oak"), score},
                             ledger::List{std::string("rum"), ledger::Value()}}}},
              step),
        entry("reading", barrel(step.a), {{number(Field::TempMc), score * 1000}}, step),
        entry("reading", barrel(step.a), {{number(Field::PhE2), score + 300}}, step)};
    group.back().target = someEntry(at, step.b);
    auto change = valueOrThrow(at.member->ledger().change());
    const Ids ids = valueOrThrow(change.recordGroup(std::move(group)));
    valueOrThrow(change.commit());
    keepAll(at, ids);
}

void Story::recordNewer(Holder& at, const Step& step)
{
    constexpr std::uint32_t newerField = 900;
    const Fields fields = {{number(Field::VolumeMl), std::int64_t{1 + step.b}},
                           {newerField, std::string("of tomorrow")}};
    constexpr std::array kinds = {"sniff", "draw", "amend", "void", "fill"};
    NewEntry made = entry(kinds.at(step.a % kinds.size()), barrel(step.b), fields, step);
    made.target = someEntry(at, step.c);
    const bool ofThisVersion = step.a % 2 == 0 && made.kind != "void";
    keep(at, fleet_.recordAs(*at.member, at.member->ledger().key(), made, ofThisVersion ? 1 : 2));
}

void Story::amend(Holder& at, const Step& step)
{
    NewEntry made = entry("amend", barrel(step.a), {}, step);
    // Often one of three that everybody has: batch, barrel and fill of fillSmallCellar().
    constexpr std::size_t firstOfThree = 3;
    made.target = step.a % 3 == 0 ? all_[firstOfThree + step.a / 3 % 3] : someEntry(at, step.a);
    const auto value = static_cast<std::int64_t>(step.b % 4);
    if (step.b % 3 != 0) {
        made.fields[number(Field::VolumeMl)] = 1000 + value;
    }
    if (step.b % 3 != 1) {
        made.fields[number(Field::Note)] =
            value == 0 ? ledger::Value() : ledger::Value("note " + std::to_string(value));
    }
    if (step.b % 5 == 0) {
        made.fields[number(Field::Place)] = barrel(step.b);
        made.fields[number(Field::Verdict)] = "wait " + std::to_string(value);
    }
    Ids earlier;  // of the same entry, as this device knows them
    for (const EntryId& id : all_) {
        const ledger::Entry& core = naive_.at(id)->core;
        if (core.kind == "amend" && core.target == made.target && at.has.contains(id)) {
            earlier.push_back(id);
        }
    }
    if (step.c % 3 == 0) {
        made.overwrites =
            valueOrThrow(cellar::newestAmendments(at.member->database(), *made.target));
    } else if (step.c % 3 == 1 && !earlier.empty()) {
        made.overwrites = {earlier[step.b % earlier.size()]};
    }
    recordOne(at, made);
}

void Story::admit(Holder& at, const Step& step)
{
    const auto& other = holder(step.a).member->ledger();
    recordOne(at, entry("device", subjectOf(other.device()),
                        {{number(Field::Name), "Phone"},
                         {number(Field::PublicKey), other.key().publicKey()},
                         {number(Field::Role), std::int64_t{step.b % 3 == 0 ? 1 : 2}}},
                        step));
    link(at);
}

void Story::cutOff(Holder& at, const Step& step)
{
    const DeviceId device = holder(step.a).member->ledger().device();
    NewEntry made = entry("cut_off", subjectOf(device), {}, step);
    Ids chain;  // of that device: what anybody has seen of it
    for (const EntryId& id : all_) {
        if (naive_.at(id)->core.device == device) {
            chain.push_back(id);
        }
    }
    if (!chain.empty() && step.b % 4 != 0) {
        const EntryId last = chain[step.c % chain.size()];
        const ByteView bytes = last.bytes();
        made.fields = {{number(Field::ChainPoints),
                        ledger::List{ledger::Value(ledger::List{
                            ledger::Value(static_cast<std::int64_t>(naive_.at(last)->core.seq)),
                            ledger::Value(Bytes(bytes.begin(), bytes.end()))})}}};
    }
    recordOne(at, made);
}

void Story::reinstate(Holder& at, const Step& step)
{
    NewEntry made =
        entry("reinstate", subjectOf(holder(step.a).member->ledger().device()), {}, step);
    for (const EntryId& id : all_) {
        const ledger::Entry& core = naive_.at(id)->core;
        if (core.kind == "cut_off" && core.subject == made.subject && at.has.contains(id) &&
            made.overwrites.size() < ledger::overwritesMax) {
            made.overwrites.push_back(id);
        }
    }
    const bool byOwner = step.b % 4 != 0 && at.member == &fleet_.device(0);
    keep(at, fleet_.recordAs(*at.member, byOwner ? fleet_.owner() : at.member->ledger().key(), made,
                             1));
}

// Of the start in which some record was made; the true time is hours or years beside the clock's,
// or nearly the same; it names some, all or none of the earlier ones.
void Story::observe(Holder& at, const Step& step)
{
    const EntryId seen = someEntry(at, step.a);
    const ledger::Entry& core = naive_.at(seen)->core;
    const ByteView boot = core.boot.bytes();
    constexpr std::array offMinutes = {0, 1, 2, -2, 90, 525'600, -525'600};
    const Milliseconds after = std::chrono::minutes(step.b % 3);
    NewEntry made{"clock_observe",
                  subjectOf(core.device),
                  {{number(Field::Boot), Bytes(boot.begin(), boot.end())},
                   {number(Field::SinceBootMs), std::int64_t{(core.sinceBoot + after).count()}},
                   {number(Field::ShownMs), toMs(core.recorded + after)}},
                  {},
                  {},
                  {},
                  {}};
    const int off = offMinutes.at(step.b % offMinutes.size());
    if (step.c % 5 != 0) {  // else it is what this device's own clock says
        made.at = ledger::EventTime{core.recorded + after + std::chrono::minutes(off)};
    }
    for (const EntryId& id : all_) {
        const ledger::Entry& other = naive_.at(id)->core;
        if (step.c % 3 != 0 && other.kind == made.kind && other.subject == made.subject &&
            at.has.contains(id) && made.overwrites.size() < ledger::overwritesMax) {
            made.overwrites.push_back(id);
        }
    }
    if (step.c % 3 == 1 && !made.overwrites.empty()) {
        made.overwrites.resize(1);
    }
    recordOne(at, std::move(made));
}

// Mostly of the newest, so that corrections meet; now and then one that is not here.
EntryId Story::someEntry(const Holder& at, unsigned i) const
{
    constexpr std::size_t newest = 10;
    Ids ids;
    for (auto id = all_.rbegin(); id != all_.rend() && ids.size() < newest; ++id) {
        if (i % 5 == 0 || at.has.contains(*id)) {
            ids.push_back(*id);
        }
    }
    return ids[i / 5 % ids.size()];
}

}  // namespace spile::support
