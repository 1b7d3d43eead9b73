#include "core/ledger/ledger.hpp"
#include "core/ledger/new_key.hpp"
#include "core/ledger/take_in.hpp"

namespace spile::ledger {

namespace {

// Lets `place` be another value until a block is left, in whichever way.
template <class T>
class Meanwhile {
public:
    Meanwhile(T& place, T value) : place_(place), before_(std::exchange(place, std::move(value))) {}
    Meanwhile(const Meanwhile&) = delete;
    Meanwhile& operator=(const Meanwhile&) = delete;
    ~Meanwhile() { place_ = std::move(before_); }

private:
    T& place_;
    T before_;
};

}  // namespace

Result<SigningKey> loadOrMakeKey(const Outside& outside, KeyName name)
{
    SPILE_ASSIGN(known, outside.keys.load(name));
    if (known) {  // an earlier attempt was interrupted
        return SigningKey(*known);
    }
    std::array<std::uint8_t, KeySeed::size> bytes{};
    outside.random.fill(bytes);
    const KeySeed seed(bytes);
    SPILE_TRY(outside.keys.save(name, seed));
    return SigningKey(seed);
}

Result<std::vector<EntryId>> Change::recordAsOwner(const SigningKey& owner,
                                                   std::vector<NewEntry> entries)
{
    if (owner.deviceId() != *DeviceId::fromBytes(ledger_->cellar_.id.bytes())) {
        return fail(ErrorCode::Conflict, "owner key", owner.deviceId().hex().substr(0, 8),
                    "the key that this cellar began with");
    }
    const Meanwhile key(ledger_->key_, std::optional(owner));
    const Meanwhile device(ledger_->device_, owner.deviceId());
    std::vector<EntryId> ids;
    for (NewEntry& entry : entries) {
        SPILE_ASSIGN(id, append(std::move(entry), std::nullopt));
        ids.push_back(id);
    }
    return ids;
}

Result<bool> Ledger::needsNewKey()
{
    SPILE_ASSIGN(asked, database_.integer(0, "SELECT 1 FROM meta WHERE key = 'renew'"));
    return asked == 1;
}

namespace {

// What the device was admitted as.
struct Admission {
    std::string name;
    std::int64_t role = 0;
};

Result<std::optional<Admission>> admissionOf(Database& database, const DeviceId& device)
{
    SPILE_ASSIGN(fields,
                 database.first([](const Row& row) { return decodeFields(row.blob(0)); },
                                "SELECT entry.body FROM entry INDEXED BY entry_device JOIN "
                                "device_chain AS author ON author.d = entry.d WHERE entry.kind = "
                                "'device' AND entry.subject = ? AND author.admits = 1 "
                                "ORDER BY entry.id LIMIT 1",
                                device));
    if (!fields || !*fields) {
        return std::optional<Admission>();
    }
    const auto name = (**fields).find(trust_field::name);
    const auto role = (**fields).find(trust_field::role);
    const auto* text = name == (**fields).end() ? nullptr : name->second.as<std::string>();
    const auto* number = role == (**fields).end() ? nullptr : role->second.as<std::int64_t>();
    return text == nullptr || number == nullptr ? std::optional<Admission>()
                                                : std::optional(Admission{*text, *number});
}

NewEntry about(const char* kind, const DeviceId& device, Fields fields)
{
    return {kind, *SubjectId::fromBytes(device.bytes()), std::move(fields), {}, {}, {}, {}};
}

Fields renewal(const DeviceId& before, const std::vector<Head>& heads)
{
    List points;
    for (const Head& head : heads) {
        points.emplace_back(List{Value(static_cast<std::int64_t>(head.seq)),
                                 Value(Bytes(head.id.bytes().begin(), head.id.bytes().end()))});
    }
    return {{trust_field::before, Value(Bytes(before.bytes().begin(), before.bytes().end()))},
            {trust_field::chainPoints, Value(std::move(points))}};
}

}  // namespace

// From here on the records say that this device has the new key.
Result<void> Ledger::beginChain(Change& change, const SigningKey& key)
{
    SPILE_ASSIGN(heads, change.chains().headsOf(device_));
    const DeviceId before = device_;
    SPILE_TRY(change.chains().knowDevice(key.deviceId(), key.publicKey()));
    SPILE_TRY(database_.execute("UPDATE meta SET value = ? WHERE key = 'device'", key.deviceId()));
    SPILE_TRY(database_.execute("DELETE FROM meta WHERE key = 'renew'"));
    // They said up to which record of the old chain all had been handed out.
    SPILE_TRY(database_.execute("UPDATE handed_out SET own_seq = 0"));
    SPILE_TRY(change.chains().trust(key.deviceId(), false));
    key_ = key;
    device_ = key.deviceId();
    SPILE_TRY(change.record(about(renewKind, device_, renewal(before, heads))));
    return {};
}

Result<Renewed> Ledger::renewKey()
{
    SPILE_ASSIGN(next, loadOrMakeKey(outside_, KeyName::NextDevice));
    SPILE_ASSIGN(owner, outside_.keys.load(KeyName::Owner));
    SPILE_ASSIGN(membership, membershipOf(database_, device_));
    SPILE_ASSIGN(admission, admissionOf(database_, device_));
    Renewed renewed{device_, next.deviceId(), membership.admitted && owner && admission};
    const std::optional<SigningKey> old = key_;
    const DeviceId before = device_;
    const auto work = [&]() -> Result<void> {
        SPILE_ASSIGN(begun, change());
        SPILE_TRY(beginChain(begun, next));
        if (renewed.admitted) {
            NewEntry entry = about(deviceKind, device_,
                                   {{trust_field::name, Value(admission->name)},
                                    {trust_field::publicKey, next.publicKey()},
                                    {trust_field::role, Value(admission->role)}});
            SPILE_TRY(begun.recordAsOwner(SigningKey(*owner), {std::move(entry)}));
        }
        return begun.commit();
    };
    if (auto done = work(); !done) {
        key_ = old;
        device_ = before;
        return passOn(done);
    }
    SPILE_TRY(outside_.keys.turnToNext());
    return renewed;
}

}  // namespace spile::ledger
