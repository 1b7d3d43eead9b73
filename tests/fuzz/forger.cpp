#include "tests/fuzz/forger.hpp"

#include "core/base/sha256.hpp"
#include "core/cellar/kind.hpp"
#include "core/ledger/fields.hpp"
#include "tests/support/small_cellar.hpp"

#include <algorithm>

namespace spile::fuzz {

namespace {

using ledger::Entry;
using ledger::SignedEntry;

Instant timeFrom(const Instant& usual, Input& input)
{
    const std::int64_t day = 86'400'000;
    return input.flag()
               ? usual + Milliseconds(numberNear(-400 * day, 400 * day, input) % (1000 * day))
               : instantFromMs(
                     numberNear(toMs(ledger::earliestTime), toMs(ledger::latestTime), input));
}

}  // namespace

Forger::Forger(MemoryCellars& cellars) : cellars_(cellars)
{
    for (const Bytes& dayFile : cellars.dayFiles()) {
        for (const Record& record : recordsOf(dayFile)) {
            known_.subjects.push_back(record.core.subject);
        }
    }
    std::sort(known_.subjects.begin(), known_.subjects.end());
    known_.subjects.erase(std::unique(known_.subjects.begin(), known_.subjects.end()),
                          known_.subjects.end());
}

std::vector<Forger::Record> Forger::recordsOf(const Bytes& dayFile)
{
    std::vector<Record> records;
    for (const SignedEntry& entry : support::DayFile(dayFile).entries()) {
        Record record{*ledger::decodeCore(entry.core), entry.body, {}, {}};
        const EntryId id = entry.id();
        if (std::find(known_.known.begin(), known_.known.end(), id) == known_.known.end()) {
            known_.known.push_back(id);
            auto& chain = chains_[record.core.device];
            chain.resize(std::max<std::size_t>(chain.size(), record.core.seq));
            chain[record.core.seq - 1] = {record.core.seq - 1, record.core.previous};
            chain.push_back({record.core.seq, id});
        }
        records.push_back(std::move(record));
    }
    return records;
}

const ledger::SigningKey* Forger::keyOf(const DeviceId& device) const
{
    const auto found =
        std::find_if(cellars_.keys().begin(), cellars_.keys().end(),
                     [&](const ledger::SigningKey& key) { return key.deviceId() == device; });
    return found == cellars_.keys().end() ? nullptr : &*found;
}

void Forger::editReferences(Record& record, Input& input)
{
    record.overwrites.clear();
    for (std::size_t count = input.below(4); count > 0; --count) {
        record.overwrites.push_back(input.byte());
    }
    record.target = input.below(4) != 0 ? std::optional<std::size_t>(input.byte()) : std::nullopt;
    if (!record.target) {
        record.core.target.reset();
    }
}

Forger::Record Forger::newRecord(Input& input)
{
    const auto kinds = cellar::allKinds();
    const std::size_t which = input.below(kinds.size() + 4);
    Record record;
    record.core.kind = which < kinds.size()        ? std::string(kinds[which].kind)
                       : which == kinds.size()     ? std::string(cellar::voidKind)
                       : which == kinds.size() + 1 ? "unheard"
                                                   : std::string(cellar::amendKind);
    record.core.cellar = cellars_.cellar();
    record.core.device = cellars_.keys()[input.below(cellars_.keys().size())].deviceId();
    record.core.recorded = timeFrom(cellars_.clock().now(), input);
    record.core.subject = known_.subject(input);
    record.body = forgedBody(record.core.kind, known_, input);
    editReferences(record, input);
    return record;
}

// When, by whom and of what sort.
void Forger::editCore(Record& record, Input& input)
{
    Entry& core = record.core;
    switch (input.below(7)) {
        case 0:
            core.recorded = timeFrom(core.recorded, input);
            break;
        case 1:
            core.at = ledger::EventTime{timeFrom(core.recorded, input),
                                        static_cast<int>(numberNear(-1080, 1080, input) % 2000)};
            break;
        case 2:
            core.wall = timeFrom(core.recorded, input);
            break;
        case 3:
            core.kindVersion = static_cast<std::uint32_t>(input.number(1));
            break;
        case 4:
            core.subject = known_.subject(input);
            break;
        case 5:
            core.kind = cellar::allKinds()[input.below(cellar::allKinds().size())].kind;
            break;
        default:
            core.device = cellars_.keys()[input.below(cellars_.keys().size())].deviceId();
            break;
    }
}

// Its place among others: group and photos.
void Forger::editPlace(Record& record, Input& input)
{
    if (input.flag()) {
        record.core.group.reset();
        if (input.flag()) {
            record.core.group = {static_cast<std::uint32_t>(input.below(4)),
                                 static_cast<std::uint32_t>(input.below(4))};
        }
        return;
    }
    record.core.photos.clear();
    for (std::size_t count = input.below(4); count > 0; --count) {
        const Bytes picture = support::smallPicture(static_cast<std::uint8_t>(90 + input.below(3)));
        record.core.photos.push_back(
            {sha256(picture), input.below(8) == 0 ? input.number(8) : picture.size()});
    }
}

void Forger::edit(std::vector<Record>& records, Input& input)
{
    const std::size_t at = input.below(records.size());
    const auto place = records.begin() + static_cast<std::ptrdiff_t>(at);
    const std::size_t how = records.empty() ? 0 : input.below(9);
    switch (how) {
        case 0:
        case 1:
            records.insert(place, newRecord(input));
            break;
        case 2:
            records.erase(place);
            break;
        case 3:
            records.push_back(*place);
            break;
        case 4:
            std::swap(records[at], records[input.below(records.size())]);
            break;
        case 5:
            place->body = forgedBody(place->core.kind, known_, input);
            break;
        case 6:
            editReferences(*place, input);
            break;
        case 7:
            editPlace(*place, input);
            break;
        default:
            editCore(*place, input);
            break;
    }
}

// Each device's records in one range, in their order, chained to where the input says.
void Forger::signAll(std::vector<Record>& records, ledger::BundleHeader& header,
                     std::vector<SignedEntry>& made, Input& input)
{
    std::stable_sort(records.begin(), records.end(), [](const Record& a, const Record& b) {
        return a.core.device < b.core.device;
    });
    const auto before = header.ranges;
    header.ranges.clear();
    header.keys.clear();
    known_.made.clear();
    for (Record& record : records) {
        Entry& core = record.core;
        const ledger::SigningKey* key = keyOf(core.device);
        if (key == nullptr) {
            continue;
        }
        if (header.ranges.empty() || header.ranges.back().device != core.device) {
            const auto usual = std::find_if(before.begin(), before.end(), [&](const auto& range) {
                return range.device == core.device;
            });
            const auto& chain = chains_[core.device];
            const std::size_t which = input.byte();
            Chain start = chain.empty() ? Chain{} : chain[which % chain.size()];
            if (usual != before.end() && which < 192) {
                start = {usual->first - 1, usual->before};
            }
            header.ranges.push_back({core.device, start.seq + 1, start.seq, start.head, {}});
            header.keys.push_back(key->publicKey());
        }
        ledger::ChainRange& range = header.ranges.back();
        core.seq = ++range.last;
        core.previous = core.seq == range.first ? range.before : range.end;
        if (record.target) {
            core.target = known_.entry(*record.target);
        }
        if (!record.overwrites.empty()) {
            core.overwrites.clear();
        }
        for (const std::size_t other : record.overwrites) {
            core.overwrites.push_back(known_.entry(other));
        }
        made.push_back(ledger::signEntry(core, record.body, *key));
        range.end = made.back().id();
        known_.made.push_back(range.end);
    }
    header.entries = made.size();
}

void Forger::editHeader(ledger::BundleHeader& header, Input& input)
{
    switch (input.below(5)) {
        case 0:
            header.number = input.number(8);
            break;
        case 1:
            header.made = timeFrom(header.made, input);
            break;
        case 2:
            header.have.push_back({cellars_.keys()[input.below(cellars_.keys().size())].deviceId(),
                                   input.number(8), known_.entry(input.byte())});
            break;
        case 3:
            header.missing.push_back(
                sha256(support::smallPicture(static_cast<std::uint8_t>(90 + input.below(3)))));
            break;
        default:
            header.entries = input.number(2);
            break;
    }
}

Bytes Forger::forge(Input& input)
{
    const Bytes& base = cellars_.dayFiles()[input.below(cellars_.dayFiles().size())];
    support::DayFile file(base);
    ledger::BundleHeader header = file.header();
    std::vector<Record> records = recordsOf(base);
    const std::size_t edits = input.below(12);
    const std::size_t ofHeader = input.below(32) == 1 ? 1 + input.below(3) : 0;
    const std::size_t photos = input.below(8) == 1 ? 1 + input.below(3) : 0;
    const std::size_t sender = input.below(16);
    for (std::size_t i = 0; i < edits; ++i) {
        edit(records, input);
    }
    std::vector<SignedEntry> made;
    signAll(records, header, made, input);
    file.setEntries(made);
    for (std::size_t i = 0; i < photos; ++i) {
        const Bytes picture = support::smallPicture(static_cast<std::uint8_t>(90 + i));
        const std::string name = ledger::bag::photoFolder + sha256(picture).hex();
        const bool isThere = std::any_of(file.members.begin(), file.members.end(),
                                         [&](const auto& member) { return member.first == name; });
        if (!isThere) {
            file.members.emplace_back(name, asText(picture));
            ++header.photos;
        }
    }
    for (std::size_t i = 0; i < ofHeader; ++i) {
        editHeader(header, input);
    }
    const ledger::SigningKey& key =
        sender < cellars_.keys().size() ? cellars_.keys()[sender] : *keyOf(header.from);
    header.from = key.deviceId();
    file.setHeader(header);
    file.seal(key);
    return file.archive();
}

}  // namespace spile::fuzz
