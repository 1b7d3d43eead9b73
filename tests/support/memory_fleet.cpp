#include "tests/support/memory_fleet.hpp"

#include "core/base/sha256.hpp"
#include "core/cellar/acts/exchanging.hpp"
#include "core/ledger/entry_number.hpp"

#include <algorithm>
#include <stdexcept>

namespace spile::support {

using cellar::Cellar;

namespace {

std::string databaseIn(const Path& folder) { return (folder / "ledger.db").string(); }

}  // namespace

DatabaseImage MemoryFleet::Member::image() const { return imageOf(databaseIn(folder)); }

void MemoryFleet::Member::putBack(const DatabaseImage& image) const
{
    support::putBack(databaseIn(folder), image);
    std::ignore =
        valueOrThrow(ledger().change());  // rolled back: it forgets what it held in memory
}

MemoryFleet::MemoryFleet()
{
    Member& desk = add("/desk", std::make_shared<MemoryKeyStore>());
    desk.cellar = valueOrThrow(
        Cellar::create(desk.folder, outside(desk), {"Test cellar", "7K2Q", "Desk"}, memoryVfs()));
    small_ = fillSmallCellar(*desk.cellar);
    owner_.emplace(*valueOrThrow(desk.keys->load(KeyName::Owner)));
    const Path dayFile = "/start.spile";
    valueOrThrow(cellar::handOut(*desk.cellar, dayFile, std::nullopt));
    const auto join = [&](const Path& folder) {
        Member& member = add(folder, std::make_shared<MemoryKeyStore>());
        member.cellar =
            valueOrThrow(Cellar::join(member.folder, outside(member), dayFile, {}, memoryVfs()));
    };
    for (std::size_t i = 1; i < devices; ++i) {
        join("/phone" + std::to_string(i));
    }
    for (std::size_t i = 0; i < devices; ++i) {
        const Member& original = device(i);
        Member& copy = add(original.folder.string() + "-copy", original.keys);
        valueOrThrow(files_.makeFolder(copy.folder));
        valueOrThrow(files_.create(copy.folder / "ledger.db"));
        support::putBack(databaseIn(copy.folder), original.image());
        copy.cellar = valueOrThrow(Cellar::open(copy.folder, outside(copy), memoryVfs()));
    }
    join("/replica");
    for (const auto& member : members_) {
        introduceAll(*member);
        valueOrThrow(member->database().run("PRAGMA wal_checkpoint(TRUNCATE)"));
        member->made = member->image();
    }
}

// As the header of a day file does.
void MemoryFleet::introduceAll(Member& member)
{
    auto change = valueOrThrow(member.ledger().change());
    for (const auto& other : members_) {
        valueOrThrow(change.chains().knowDevice(other->ledger().device(),
                                                other->ledger().key().publicKey()));
    }
    valueOrThrow(change.commit());
}

MemoryFleet::Member& MemoryFleet::add(const Path& folder, std::shared_ptr<MemoryKeyStore> keys)
{
    members_.push_back(std::make_unique<Member>());
    Member& member = *members_.back();
    member.random = SeededRandom(members_.size());
    member.folder = folder;
    member.keys = std::move(keys);
    return member;
}

Outside MemoryFleet::outside(Member& member)
{
    return {member.clock, files_, member.random, member.ids, *member.keys};
}

void MemoryFleet::putBack(std::uint64_t seed)
{
    for (std::size_t i = 0; i < members_.size(); ++i) {
        Member& member = *members_[i];
        member.putBack(member.made);
        member.clock = SimulatedClock(start);
        member.random = SeededRandom(seed * members_.size() + i);
    }
}

EntryId MemoryFleet::recordAs(Member& member, const ledger::SigningKey& key,
                              const ledger::NewEntry& entry, std::uint32_t kindVersion)
{
    auto change = valueOrThrow(member.ledger().change());
    const auto head = valueOrThrow(change.chains().headOf(key.deviceId()));
    ledger::Entry core;
    core.cellar = member.ledger().cellar().id;
    core.seq = head ? head->seq + 1 : 1;
    core.previous = head ? head->id : EntryId();
    core.recorded = member.clock.now();
    if (head) {
        const auto before = valueOrThrow(change.database().first(
            [](const ledger::Row& row) { return ledger::decodeCore(row.blob(0))->recorded; },
            "SELECT core FROM entry WHERE n = " SPILE_ENTRY_NUMBER("?1"), head->id));
        core.recorded = std::max(core.recorded, *before);
    }
    core.at = entry.at;
    core.kind = entry.kind;
    core.kindVersion = kindVersion;
    core.subject = entry.subject;
    core.overwrites = entry.overwrites;
    core.target = entry.target;
    const Bytes body = ledger::encodeFields(entry.fields);
    ledger::VerifiedEntry made{ledger::signEntry(core, body, key), {}, {}};
    made.id = made.entry.id();
    made.core = valueOrThrow(ledger::decodeCore(made.entry.core));
    valueOrThrow(change.chains().appendOwn(made));
    valueOrThrow(change.commit());
    return made.id;
}

}  // namespace spile::support
