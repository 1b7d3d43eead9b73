#include "tests/bench/grown_cellar.hpp"

#include "core/base/sha256.hpp"
#include "core/base/simulated.hpp"
#include "core/cellar/kind.hpp"
#include "core/scan/barrel_code.hpp"
#include "tests/bench/report.hpp"

#include <future>

namespace spile::bench {

namespace {

using cellar::Field;

// Entries are recorded one after the other, this long apart.
constexpr auto begins = instantFromMs(1'740'000'000'000);
constexpr std::chrono::seconds apart{3};

// A number of bytes that follows from a name.
template <class Id>
Id idOf(const std::string& name)
{
    return *Id::fromBytes(sha256(asBytes(name)).bytes().first(Id::size));
}

ledger::NewEntry entryOf(std::string_view kind, const SubjectId& subject)
{
    ledger::NewEntry entry;
    entry.kind = kind;
    entry.subject = subject;
    return entry;
}

void set(ledger::NewEntry& entry, Field field, ledger::Value value)
{
    entry.fields[static_cast<std::uint32_t>(field)] = std::move(value);
}

ledger::NewEntry gauge(const SubjectId& barrel, std::int64_t number)
{
    ledger::NewEntry entry = entryOf("gauge", barrel);
    set(entry, Field::VolumeMl, 190'000 - number % 5000);
    set(entry, Field::GaugeMethod, std::string("dip"));
    return entry;
}

ledger::NewEntry draw(const SubjectId& barrel)
{
    ledger::NewEntry entry = entryOf("draw", barrel);
    set(entry, Field::VolumeMl, std::int64_t{60});
    set(entry, Field::DrawMethod, std::string("sample hole"));
    return entry;
}

ledger::NewEntry taste(const SubjectId& barrel, std::int64_t number)
{
    ledger::NewEntry entry = entryOf("taste", barrel);
    ledger::List scores;
    for (const char* attribute : {"vanilla", "oak", "spirit", "roast", "sourness"}) {
        scores.emplace_back(ledger::List{std::string(attribute), 1 + (number + 3) % 9});
        ++number;
    }
    set(entry, Field::Person, idOf<SubjectId>("person " + std::to_string(number % 20)));
    set(entry, Field::Scores, std::move(scores));
    set(entry, Field::Liking, 1 + number % 9);
    return entry;
}

ledger::NewEntry reading(const SubjectId& barrel, std::int64_t number)
{
    ledger::NewEntry entry = entryOf("reading", barrel);
    set(entry, Field::SgE4, 10'200 + number % 100);
    set(entry, Field::TempMc, std::int64_t{14'000});
    return entry;
}

ledger::NewEntry check(const SubjectId& barrel)
{
    ledger::NewEntry entry = entryOf("check", barrel);
    set(entry, Field::Finding, std::string("dry"));
    set(entry, Field::Sound, true);
    return entry;
}

ledger::NewEntry verdict(const SubjectId& barrel)
{
    ledger::NewEntry entry = entryOf("verdict", barrel);
    set(entry, Field::Verdict, std::string("hold"));
    return entry;
}

}  // namespace

GrownCellar::GrownCellar(const Path& folder) : device_(folder)
{
    auto opened = device_.openOrMake();
    must(opened);
    cellar_ = std::move(*opened);
    for (std::int64_t i = 0; i < phones; ++i) {
        phones_.push_back(
            {ledger::SigningKey(idOf<KeySeed>("phone " + std::to_string(i))), 0, {}, {}});
    }
    admitPhones();
    readHeads();
}

std::int64_t GrownCellar::entries()
{
    return *cellar_->database().integer(0, "SELECT max(n) FROM entry");
}

std::int64_t GrownCellar::barrels()
{
    return *cellar_->database().integer(0, "SELECT count(*) FROM state_barrel");
}

SubjectId GrownCellar::barrel(std::int64_t i)
{
    // In the order in which they came, as UUIDv7 are.
    Bytes bytes;
    for (int shift = 40; shift >= 0; shift -= 8) {
        bytes.push_back(static_cast<std::uint8_t>((1'740'000'000'000 + i * 1000) >> shift));
    }
    const Sha256 rest = sha256(asBytes("barrel " + std::to_string(i)));
    bytes.insert(bytes.end(), rest.bytes().begin(), rest.bytes().begin() + 10);
    return *SubjectId::fromBytes(bytes);
}

void GrownCellar::admitPhones()
{
    const auto last = phones_.back().key.deviceId();
    if (*cellar_->database().integer(0, "SELECT 1 FROM device_chain WHERE device = ?", last) == 1) {
        return;
    }
    auto change = cellar_->ledger().change();
    must(change);
    for (const Phone& phone : phones_) {
        const DeviceId id = phone.key.deviceId();
        ledger::NewEntry admits = entryOf(ledger::deviceKind, *SubjectId::fromBytes(id.bytes()));
        set(admits, Field::Name, std::string("Phone"));
        set(admits, Field::Role, static_cast<std::int64_t>(ledger::DeviceRole::Phone));
        must(change->chains().knowDevice(id, phone.key.publicKey()));
        must(change->record(std::move(admits)));
    }
    must(change->commit());
}

void GrownCellar::readHeads()
{
    auto change = cellar_->ledger().change();
    must(change);
    for (Phone& phone : phones_) {
        const auto head = change->chains().headOf(phone.key.deviceId());
        must(head);
        if (*head) {
            phone.seq = (**head).seq;
            phone.head = (**head).id;
        }
    }
}

ledger::VerifiedEntry GrownCellar::sign(Phone& phone, ledger::NewEntry made, std::int64_t number)
{
    const Bytes body = ledger::encodeFields(made.fields);
    ledger::Entry core;
    core.cellar = cellar_->identity().id;
    core.device = phone.key.deviceId();
    core.seq = ++phone.seq;
    core.previous = phone.head;
    core.recorded = begins + number * apart;
    core.boot = idOf<BootId>("boot");
    core.sinceBoot = number * apart;
    core.kind = std::move(made.kind);
    core.subject = made.subject;
    core.target = made.target;
    core.bodyHash = sha256(body);
    core.bodyBytes = static_cast<std::uint32_t>(body.size());
    ledger::SignedEntry signedEntry = ledger::signEntry(core, body, phone.key);
    phone.head = signedEntry.id();
    if (core.kind == "gauge") {
        phone.gauge = phone.head;
    }
    return {std::move(signedEntry), phone.head, std::move(core)};
}

ledger::NewEntry GrownCellar::fact(Phone& phone, const SubjectId& barrel, std::int64_t number)
{
    // By the phone's own count, so that each phone makes each kind.
    switch (const std::int64_t turn = static_cast<std::int64_t>(phone.seq) % 100; turn % 10) {
        case 0:
        case 1:
            if (turn == 50 && !phone.gauge.isZero()) {
                ledger::NewEntry amend = entryOf(cellar::amendKind, barrel);
                amend.target = phone.gauge;
                set(amend, Field::VolumeMl, std::int64_t{180'000});
                return amend;
            }
            return taste(barrel, number);
        case 2:
        case 3:
            return draw(barrel);
        case 4:
        case 5:
            return gauge(barrel, number);
        case 6:
            return verdict(barrel);
        case 7:
            return check(barrel);
        default:
            return reading(barrel, number);
    }
}

void GrownCellar::growTo(std::int64_t entries)
{
    const std::int64_t from = this->entries();
    const std::int64_t firstBarrel = barrels();
    const std::int64_t newBarrels = entries / entriesOfBarrel - firstBarrel;
    SeededRandom random(static_cast<std::uint64_t>(from));
    const auto made = [&](std::int64_t number) {
        Phone& phone = phones_[static_cast<std::size_t>(number % phones)];
        const std::int64_t i = number - from;
        const SubjectId subject = barrel(firstBarrel + i % newBarrels);
        if (i < newBarrels) {
            ledger::NewEntry registered = entryOf("barrel", subject);
            set(registered, Field::Code, scan::randomCode(cellar_->identity().mark, random));
            set(registered, Field::Mark, "Rum " + std::to_string(firstBarrel + i));
            set(registered, Field::SizeMl, std::int64_t{200'000});
            return sign(phone, std::move(registered), number);
        }
        if (i < 2 * newBarrels) {
            ledger::NewEntry fill = entryOf("fill", subject);
            set(fill, Field::VolumeMl, std::int64_t{195'000});
            return sign(phone, std::move(fill), number);
        }
        return sign(phone, fact(phone, subject, number), number);
    };
    constexpr std::int64_t atOnce = 20'000;
    const auto block = [&](std::int64_t first) {
        std::vector<ledger::VerifiedEntry> signedOnes;
        for (std::int64_t number = first; number < std::min(first + atOnce, entries); ++number) {
            signedOnes.push_back(made(number));
        }
        return signedOnes;
    };
    ledger::Database& database = cellar_->database();
    must(database.run("PRAGMA synchronous=OFF; PRAGMA cache_size=-4000000;"));
    auto change = cellar_->ledger().change();
    must(change);
    auto next = std::async(std::launch::async, block, from);
    for (std::int64_t number = from; number < entries;) {
        const std::vector<ledger::VerifiedEntry> now = next.get();
        number += static_cast<std::int64_t>(now.size());
        next = std::async(std::launch::async, block, number);  // signs while the others are stored
        for (const ledger::VerifiedEntry& entry : now) {
            const auto arrival = change->chains().arrive(entry);
            must(arrival);
            if (*arrival != ledger::Arrival::Counted) {
                throw std::runtime_error("an entry does not count");
            }
        }
    }
    must(change->commit());
    must(database.eachOnce([](const ledger::Row&) { return Result<void>(); },
                           "PRAGMA wal_checkpoint(TRUNCATE)"));
}

void GrownCellar::writeDay(const Path& file)
{
    const std::int64_t from = entries();
    const std::int64_t every = std::max<std::int64_t>(1, barrels() / barrelsOfDay);
    ledger::BundleContent content;
    ledger::BundleHeader& header = content.header;
    header.cellar = cellar_->identity().id;
    header.from = phones_.front().key.deviceId();
    header.number = static_cast<std::uint64_t>(from);
    header.made = device_.clock.now();
    header.entries = static_cast<std::uint64_t>(phones * recordsOfPhone);
    std::vector<ledger::SignedEntry> day;
    for (std::size_t p = 0; p < phones_.size(); ++p) {
        Phone& phone = phones_[p];
        ledger::ChainRange range{phone.key.deviceId(), phone.seq + 1, 0, phone.head, {}};
        for (std::int64_t i = 0; i < recordsOfPhone; ++i) {
            const std::int64_t number = from + i * phones + static_cast<std::int64_t>(p);
            const std::int64_t inDay = static_cast<std::int64_t>(p) * recordsOfPhone + i;
            const SubjectId subject = barrel(inDay % barrelsOfDay * every);
            day.push_back(sign(phone, fact(phone, subject, number), number).entry);
        }
        range.last = phone.seq;
        range.end = phone.head;
        header.ranges.push_back(range);
        header.keys.push_back(phone.key.publicKey());
    }
    content.entries = [&](const auto& use) -> Result<void> {
        for (const ledger::SignedEntry& entry : day) {
            SPILE_TRY(use(entry));
        }
        return {};
    };
    must(ledger::writeBundle(device_.files, file, "day", content, cellar_->ledger().photos(),
                             phones_.front().key, {}));
}

}  // namespace spile::bench
