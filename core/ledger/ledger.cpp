#include "core/ledger/ledger.hpp"

#include "core/ledger/entry_check.hpp"
#include "core/ledger/keeping_copies.hpp"
#include "core/ledger/new_key.hpp"
#include "core/ledger/schema.hpp"
#include "core/ledger/slices.hpp"

namespace spile::ledger {

namespace {

std::string textOf(const Fields& fields, std::uint32_t number)
{
    const auto found = fields.find(number);
    const auto* text = found == fields.end() ? nullptr : found->second.as<std::string>();
    return text == nullptr ? std::string() : *text;
}

}  // namespace

Ledger::Ledger(CellarFolder folder, const Outside& outside, Projection& projection, std::string vfs,
               std::unique_ptr<FileLock> lock, Database database)
    : folder_(std::move(folder)),
      outside_(outside),
      projection_(projection),
      vfs_(std::move(vfs)),
      lock_(std::move(lock)),
      database_(std::move(database)),
      photos_(outside.files, folder_.photos()),
      chains_(database_, projection_, photos_)
{
}

Result<std::unique_ptr<Ledger>> Ledger::openFolder(const Path& path, const Outside& outside,
                                                   Projection& projection, const std::string& vfs)
{
    const CellarFolder folder{path};
    SPILE_ASSIGN(lock, outside.files.lock(folder.lock(), "spile"));
    SPILE_ASSIGN(database, Database::open(folder.database().string(), Database::Mode::Write, vfs));
    return std::unique_ptr<Ledger>(
        new Ledger(folder, outside, projection, vfs, std::move(lock), std::move(database)));
}

Result<std::unique_ptr<Ledger>> Ledger::make(const Path& path, const Outside& outside,
                                             Projection& projection, const std::string& vfs)
{
    const CellarFolder folder{path};
    for (const Path& part : {path, folder.photos(), folder.outbox()}) {
        SPILE_TRY(outside.files.makeFolder(part));
    }
    SPILE_ASSIGN(ledger, openFolder(path, outside, projection, vfs));
    // A file without the schema was left by an attempt that was interrupted: nothing is in it.
    SPILE_ASSIGN(version, ledger->database_.integer(0, "PRAGMA user_version"));
    if (version != 0) {
        return fail(ErrorCode::Conflict, path.string(), "holds a cellar already",
                    "choose another folder");
    }
    SPILE_ASSIGN(key, loadOrMakeKey(outside, KeyName::Device));
    ledger->key_ = key;
    ledger->device_ = key.deviceId();
    return std::move(ledger);
}

Result<void> Ledger::fillNew(Change& change, const CellarId& id)
{
    SPILE_TRY(createSchema(database_));
    SPILE_TRY(projection_.create(database_, false));
    SPILE_TRY(database_.execute(
        "INSERT INTO meta(key, value) VALUES('cellar', ?), ('device', ?), ('projection', ?)", id,
        device_, projection_.version()));
    cellar_.id = id;
    SPILE_TRY(change.chains().knowDevice(device_, key_->publicKey()));
    return change.chains().trust(device_, false);
}

// The owner's chain begins with the cellar itself, then with its first desk.
Result<void> Ledger::recordGenesis(Change& change, const SigningKey& owner, const NewCellar& cellar)
{
    SPILE_TRY(change.chains().knowDevice(owner.deviceId(), owner.publicKey()));
    SPILE_TRY(change.chains().trust(owner.deviceId(), true));
    const std::string deviceName = cellar.deviceName;
    NewEntry genesis{genesisKind, *SubjectId::fromBytes(cellar_.id.bytes()), {}, {}, {}, {}, {}};
    genesis.fields = {{trust_field::name, cellar.name},
                      {trust_field::mark, cellar.mark},
                      {trust_field::publicKey, owner.publicKey()}};
    NewEntry desk{deviceKind, *SubjectId::fromBytes(device_.bytes()), {}, {}, {}, {}, {}};
    desk.fields = {{trust_field::name, deviceName},
                   {trust_field::publicKey, key_->publicKey()},
                   {trust_field::role, static_cast<std::int64_t>(DeviceRole::Desk)}};

    SPILE_TRY(change.recordAsOwner(owner, {std::move(genesis), std::move(desk)}));
    return {};
}

Result<std::unique_ptr<Ledger>> Ledger::create(const Path& folder, const Outside& outside,
                                               Projection& projection, const NewCellar& cellar,
                                               const std::string& vfs)
{
    SPILE_ASSIGN(ledger, make(folder, outside, projection, vfs));
    SPILE_ASSIGN(owner, loadOrMakeKey(outside, KeyName::Owner));
    SPILE_ASSIGN(change, ledger->change());
    SPILE_TRY(ledger->fillNew(change, *CellarId::fromBytes(owner.deviceId().bytes())));
    SPILE_TRY(ledger->recordGenesis(change, owner, cellar));
    SPILE_TRY(change.commit());
    SPILE_TRY(outside.files.syncFolder(folder));
    SPILE_TRY(outside.files.syncFolder(folderOf(folder)));
    SPILE_TRY(ledger->readIdentity());
    return std::move(ledger);
}

Result<std::unique_ptr<Ledger>> Ledger::createReplica(const Path& folder, const Outside& outside,
                                                      Projection& projection, const CellarId& id,
                                                      const std::string& vfs)
{
    SPILE_ASSIGN(ledger, make(folder, outside, projection, vfs));
    SPILE_ASSIGN(change, ledger->change());
    SPILE_TRY(ledger->fillNew(change, id));
    // The owner's device id is the cellar's id, so its entries prove themselves.
    SPILE_TRY(change.chains().trust(*DeviceId::fromBytes(id.bytes()), true));
    SPILE_TRY(change.commit());
    SPILE_TRY(outside.files.syncFolder(folder));
    SPILE_TRY(outside.files.syncFolder(folderOf(folder)));
    return std::move(ledger);
}

Result<std::unique_ptr<Ledger>> Ledger::open(const Path& folder, const Outside& outside,
                                             Projection& projection, const std::string& vfs,
                                             const Job& job)
{
    if (!outside.files.exists(CellarFolder{folder}.database())) {
        return fail(ErrorCode::NotFound, folder.string(), "no cellar here",
                    "new, join or demo makes one");
    }
    SPILE_ASSIGN(ledger, openFolder(folder, outside, projection, vfs));
    SPILE_ASSIGN(version, storedVersion(ledger->database_));
    if (version > schemaVersion) {
        SPILE_TRY(ledger->turnToReading());
        return std::move(ledger);
    }
    const bool isOlder = version < schemaVersion;
    if (isOlder) {
        if (!job.advance(0, 1)) {  // what comes first, the copy, tells nothing
            return fail(ErrorCode::Cancelled, "ledger.db");
        }
        SPILE_TRY(keepCopy(outside, ledger->folder_, ledger->database_, version));
        SPILE_TRY(renewSchema(ledger->database_, job.part(0, 2)));
    }
    SPILE_TRY(removeOldCopies(outside, ledger->folder_));
    SPILE_TRY(ledger->finishOpening(isOlder ? job.part(1, 2) : job));
    return std::move(ledger);
}

Result<void> Ledger::finishOpening(const Job& job)
{
    SPILE_TRY(useDeviceKey());
    SPILE_TRY(renewProjection(job));
    SPILE_TRY(readIdentity());
    SPILE_ASSIGN(renews, needsNewKey());
    if (renews || !key_) {
        SPILE_TRY(renewKey());
    }
    return linkWhatWaits();
}

// The process may have been ended after an admission was saved and before all that had waited for
// it was. Where it cannot count for what is damaged, the rest of the cellar is of use.
Result<void> Ledger::linkWhatWaits()
{
    SPILE_ASSIGN(any, database_.integer(0, "SELECT EXISTS(SELECT 1 FROM waiting)"));
    if (any == 0) {
        return {};
    }
    const Job alone;
    Slices slices(*this, alone);
    auto linked = linkWaiting(slices);
    if (!linked) {
        return isOfContent(linked.error()) && !database_.isBroken() ? Result<void>()
                                                                    : Result<void>(passOn(linked));
    }
    return slices.commit();
}

Result<void> Ledger::turnToReading()
{
    readsOnly_ = true;
    SPILE_ASSIGN(reader, openReader());
    database_ = std::move(reader);
    SPILE_TRY(useDeviceKey());
    return readIdentity();
}

// The newer version's state tables may have any shape: ours hide them on this connection.
Result<void> Ledger::stateBeside(Database& reader)
{
    SPILE_TRY(projection_.create(reader, true));
    return replay(reader, projection_);
}

Result<void> Ledger::useDeviceKey()
{
    const auto id = [](const Row& row) { return CellarId::fromBytes(row.blob(0)); };
    SPILE_ASSIGN(device, database_.first(id, "SELECT value FROM meta WHERE key = 'device'"));
    SPILE_ASSIGN(cellar, database_.first(id, "SELECT value FROM meta WHERE key = 'cellar'"));
    if (!cellar || !*cellar || !device || !*device) {
        return fail(ErrorCode::Damaged, "ledger.db", "it does not say which cellar it is");
    }
    device_ = *DeviceId::fromBytes((**device).bytes());
    cellar_.id = **cellar;
    SPILE_ASSIGN(key, deviceKeyOf(device_));
    key_ = key;
    return {};
}

Result<std::optional<SigningKey>> Ledger::deviceKeyOf(const DeviceId& device)
{
    SPILE_ASSIGN(seed, outside_.keys.load(KeyName::Device));
    if (seed && SigningKey(*seed).deviceId() == device) {
        return std::optional(SigningKey(*seed));
    }
    // The process that renewed the key was killed after the records said so.
    SPILE_ASSIGN(next, outside_.keys.load(KeyName::NextDevice));
    if (next && SigningKey(*next).deviceId() == device) {
        SPILE_TRY(outside_.keys.turnToNext());
        return std::optional(SigningKey(*next));
    }
    if (!seed) {  // lost: nobody can sign for that chain any more, and this device needs another
        return std::optional<SigningKey>();
    }
    return fail(ErrorCode::Conflict, "device.key", "it is not the key of this cellar's folder",
                "put the right key back, or join anew in another folder");
}

Result<void> Ledger::renewProjection(const Job& job)
{
    SPILE_ASSIGN(stored, database_.integer(0, "SELECT value FROM meta WHERE key = 'projection'"));
    if (stored == projection_.version()) {
        return {};
    }
    SPILE_ASSIGN(begun, change());
    SPILE_TRY(makeStateAnew(begun, job));
    SPILE_TRY(database_.execute("UPDATE meta SET value = ? WHERE key = 'projection'",
                                projection_.version()));
    return begun.commit();
}

Result<void> Ledger::makeStateAnew(Change& change, const Job& job)
{
    SPILE_TRY(projection_.drop(database_));
    SPILE_TRY(projection_.create(database_, false));
    SPILE_TRY(change.chains().renewSetAside());
    return replay(database_, projection_, job);
}

Result<void> Ledger::readIdentity()
{
    SPILE_ASSIGN(
        body, database_.first(
                  [](const Row& row) {
                      const ByteView bytes = row.blob(0);
                      return Bytes(bytes.begin(), bytes.end());
                  },
                  "SELECT body FROM entry JOIN device_chain USING(d) WHERE device = ? AND seq = 1 "
                  "AND kind = 'genesis'",
                  cellar_.id));
    if (!body) {
        return {};
    }
    SPILE_ASSIGN(fields, decodeFields(*body));
    cellar_.name = textOf(fields, trust_field::name);
    cellar_.mark = textOf(fields, trust_field::mark);
    return {};
}

Result<Database> Ledger::openReader()
{
    SPILE_ASSIGN(reader, Database::open(folder_.database().string(), Database::Mode::Read, vfs_));
    if (readsOnly_) {
        SPILE_TRY(stateBeside(reader));
    }
    return std::move(reader);
}

Result<void> replay(Database& database, Projection& projection, const Job& job)
{
    SPILE_ASSIGN(all, database.integer(0, "SELECT count(*) FROM entry"));
    std::uint64_t done = 0;
    SPILE_TRY(database.each(
        [&](const Row& row) -> Result<void> {
            constexpr std::uint64_t reportEvery = 256;
            if (++done % reportEvery == 0 && !job.advance(done, static_cast<std::uint64_t>(all))) {
                return fail(ErrorCode::Cancelled, "ledger.db");
            }
            const auto core = decodeCore(row.blob(2));
            return core
                       ? projection.apply(database, CountedEntry{row.integer(0), row.id<EntryId>(1),
                                                                 *core, row.blob(3)})
                       : Result<void>();  // damaged; with the others the cellar is of use
        },
        "SELECT n, id, core, body FROM entry WHERE n NOT IN (SELECT n FROM set_aside) ORDER BY n"));
    return projection.settle(database);
}

}  // namespace spile::ledger
