#pragma once

#include "core/base/job.hpp"
#include "core/base/outside.hpp"
#include "core/ledger/chains.hpp"
#include "core/ledger/database.hpp"
#include "core/ledger/entry.hpp"
#include "core/ledger/fields.hpp"
#include "core/ledger/photo_store.hpp"
#include "core/ledger/projection.hpp"

#include <memory>
#include <optional>
#include <string>
#include <vector>

/// The ledger: all entries of a cellar on this device, and the folder they lie in.
namespace spile::ledger {

/// Which cellar this is, from its genesis entry.
struct CellarIdentity {
    CellarId id;
    std::string name;
    std::string mark;  // the 4 characters in its barrel codes
};

/// An entry to be recorded now, on this device.
struct NewEntry {
    std::string kind;
    SubjectId subject;
    Fields fields;
    std::optional<EventTime> at;
    std::vector<EntryId> overwrites;
    std::optional<EntryId> target;
    std::vector<PhotoRef> photos;
};

/// A device that goes on with a new key, and so with a new id and a chain of its own.
struct Renewed {
    DeviceId before;
    DeviceId now;
    bool admitted = false;  // by the owner's key, which was at hand
};

class Ledger;

/// A running transaction on the ledger. Nothing in it lasts until commit() returns, then all of
/// it does; without commit() nothing remains.
class Change {
public:
    Change(Change&& other) noexcept
        : ledger_(other.ledger_), transaction_(std::exchange(other.transaction_, std::nullopt))
    {
    }
    Change& operator=(Change&&) = delete;
    Change(const Change&) = delete;
    Change& operator=(const Change&) = delete;
    ~Change();

    /// Sign and store an entry of this device and fold it into the state.
    ///
    /// Errors    OutOfRange if body, photos or overwrites are over the limits of entry.hpp; those
    ///           of Database.
    [[nodiscard]] Result<EntryId> record(NewEntry entry);
    /// The same for several that count together or not at all.
    [[nodiscard]] Result<std::vector<EntryId>> recordGroup(std::vector<NewEntry> entries);
    /// The same for an entry and others that answer it: it is made the target of those that have
    /// none. Return its id.
    [[nodiscard]] Result<EntryId> recordWithAnswers(NewEntry entry, std::vector<NewEntry> answers);

    /// Sign and store entries of the owner.
    ///
    /// Errors    Conflict if `owner` is not the key that this cellar began with.
    [[nodiscard]] Result<std::vector<EntryId>> recordAsOwner(const SigningKey& owner,
                                                             std::vector<NewEntry> entries);

    [[nodiscard]] Database& database();
    [[nodiscard]] Chains& chains();
    [[nodiscard]] Result<void> commit();

private:
    friend class Ledger;
    Change(Ledger& ledger, Transaction transaction)
        : ledger_(&ledger), transaction_(std::move(transaction))
    {
    }
    [[nodiscard]] Result<EntryId> append(NewEntry made, std::optional<Group> group);

    Ledger* ledger_;
    std::optional<Transaction> transaction_;
};

/// Where the parts of a cellar lie in its folder.
struct CellarFolder {
    Path folder;

    [[nodiscard]] Path database() const { return folder / "ledger.db"; }
    [[nodiscard]] Path photos() const { return folder / "photos"; }
    [[nodiscard]] Path outbox() const { return folder / "outbox"; }
    [[nodiscard]] Path lock() const { return folder / "lock"; }
};

struct NewCellar {
    std::string name;
    std::string mark;
    std::string deviceName;
};

/// One device's ledger, open for writing. One process at a time may hold it.
///
/// Threads   one at a time; readers on other threads use openReader().
class Ledger {
public:
    /// Make the folder of a new cellar with a new owner key, whose genesis entry begins it, and a
    /// key for this device, which the owner key admits as a desk.
    ///
    /// Errors    Conflict if the folder holds a cellar; Malformed or OutOfRange for a bad name or
    ///           mark; those of the disk. `vfs` is for tests.
    [[nodiscard]] static Result<std::unique_ptr<Ledger>> create(const Path& folder,
                                                                const Outside& outside,
                                                                Projection& projection,
                                                                const NewCellar& cellar,
                                                                const std::string& vfs = {});

    /// Make the folder of an empty replica of the cellar `id`, with a new key for this device.
    /// Its identity is not known before its genesis entry has been taken in.
    [[nodiscard]] static Result<std::unique_ptr<Ledger>> createReplica(const Path& folder,
                                                                       const Outside& outside,
                                                                       Projection& projection,
                                                                       const CellarId& id,
                                                                       const std::string& vfs = {});

    /// A cellar that a newer version wrote is opened for reading: readsOnly(). One of an older
    /// version is brought up to this one, after a verified copy of its database was put beside it
    /// (`ledger-v2-2026-11-26.db`), which is kept for 14 days.
    ///
    /// That can take long, and reports to `job`: first over the entries, then over the state,
    /// which is made anew.
    ///
    /// Errors    NotFound if there is no cellar; Locked if another process holds it; Damaged;
    ///           StorageFull if there is no room for the copy; Cancelled: it is of the older
    ///           version still.
    [[nodiscard]] static Result<std::unique_ptr<Ledger>> open(const Path& folder,
                                                              const Outside& outside,
                                                              Projection& projection,
                                                              const std::string& vfs = {},
                                                              const Job& job = {});

    /// Begin a transaction. Requires none to be open.
    ///
    /// Errors    Unsupported if it readsOnly().
    [[nodiscard]] Result<Change> change();

    /// A newer version wrote it: all is shown that this version understands, and can be exported,
    /// but nothing is written.
    [[nodiscard]] bool readsOnly() const { return readsOnly_; }

    /// A connection of its own that cannot write, for another thread or a check.
    [[nodiscard]] Result<Database> openReader();

    /// Requires the genesis entry to be here, as it is once create() or a first take-in is done.
    [[nodiscard]] const CellarIdentity& cellar() const { return cellar_; }
    [[nodiscard]] const DeviceId& device() const { return device_; }
    [[nodiscard]] const SigningKey& key() const { return *key_; }
    [[nodiscard]] const CellarFolder& folder() const { return folder_; }
    [[nodiscard]] const Outside& outside() const { return outside_; }
    [[nodiscard]] PhotoStore& photos() { return photos_; }
    [[nodiscard]] Database& database() { return database_; }
    [[nodiscard]] Projection& projection() { return projection_; }

    /// Give this device a new key: the old one has signed two records with one number, or records
    /// that are lost here. The chain of the old key ends; the new one begins with a `renew` entry.
    /// The device waits to be admitted anew, unless the owner's key is at hand. Killed anywhere, it
    /// is finished by the next open() if it had begun to count.
    [[nodiscard]] Result<Renewed> renewKey();
    /// Whether a file has shown that the key is to be renewed.
    [[nodiscard]] Result<bool> needsNewKey();

    /// Make the state and what is set aside anew from the entries.
    [[nodiscard]] Result<void> makeStateAnew(Change& change, const Job& job = {});

    /// Read the cellar's name and mark from its genesis entry, if it is here.
    [[nodiscard]] Result<void> readIdentity();

private:
    friend class Change;
    Ledger(CellarFolder folder, const Outside& outside, Projection& projection, std::string vfs,
           std::unique_ptr<FileLock> lock, Database database);
    [[nodiscard]] static Result<std::unique_ptr<Ledger>> openFolder(const Path& path,
                                                                    const Outside& outside,
                                                                    Projection& projection,
                                                                    const std::string& vfs);
    [[nodiscard]] static Result<std::unique_ptr<Ledger>> make(const Path& path,
                                                              const Outside& outside,
                                                              Projection& projection,
                                                              const std::string& vfs);
    [[nodiscard]] Result<void> fillNew(Change& change, const CellarId& id);
    [[nodiscard]] Result<void> recordGenesis(Change& change, const SigningKey& owner,
                                             const NewCellar& cellar);
    [[nodiscard]] Result<void> useDeviceKey();
    [[nodiscard]] Result<std::optional<SigningKey>> deviceKeyOf(const DeviceId& device);
    [[nodiscard]] Result<void> beginChain(Change& change, const SigningKey& key);
    [[nodiscard]] Result<void> renewProjection(const Job& job);
    [[nodiscard]] Result<void> turnToReading();
    [[nodiscard]] Result<void> stateBeside(Database& reader);
    [[nodiscard]] Result<void> finishOpening(const Job& job);
    [[nodiscard]] Result<void> linkWhatWaits();
    [[nodiscard]] Result<Instant> recordedAt(const EntryId& head);

    CellarFolder folder_;
    Outside outside_;
    Projection& projection_;
    std::string vfs_;
    std::unique_ptr<FileLock> lock_;
    Database database_;
    PhotoStore photos_;
    Chains chains_;
    CellarIdentity cellar_;
    DeviceId device_;
    std::optional<SigningKey> key_;
    bool readsOnly_ = false;
    struct Recorded {
        EntryId entry;
        Instant at;
    };
    std::optional<Recorded> latest_;  // the last entry whose recorded time was needed
};

/// Fold every entry that is not set aside of `database` into the empty tables of `projection`.
///
/// Errors    Cancelled; those of both.
[[nodiscard]] Result<void> replay(Database& database, Projection& projection, const Job& job = {});

}  // namespace spile::ledger
