#include "core/ledger/take_in.hpp"

#include "core/ledger/entry_number.hpp"
#include "core/ledger/mending.hpp"
#include "core/ledger/part_of_job.hpp"
#include "core/ledger/seal.hpp"
#include "core/ledger/slices.hpp"

#include <functional>
#include <map>

namespace spile::ledger {

namespace {

std::uint64_t lengthOf(const BundleHeader& header) { return header.entries + header.photos; }

bool endsGroup(const Entry& core)
{
    return !core.group || core.group->index + 1 == core.group->count;
}

class TakingIn {
public:
    TakingIn(Ledger& ledger, BundleReader& bundle, const Job& job)
        : ledger_(ledger),
          bundle_(bundle),
          length_(lengthOf(bundle.header())),
          verifying_(job, 0, length_ / 2, length_),
          mending_(job, length_ / 2, 0, length_),
          storing_(job, length_ / 2, length_ - length_ / 2, length_),
          slices_(ledger, storing_.job())
    {
        const BundleHeader& header = bundle.header();
        taken_.from = header.from;
        taken_.number = header.number;
        taken_.made = header.made;
        taken_.entries = header.entries;
    }

    Result<TakenIn> run(SignatureCheck check)
    {
        SPILE_ASSIGN(before, ledger_.database().integer(
                                 0, "SELECT 1 FROM taken_in WHERE bundle = ?", bundle_.identity()));
        const bool takenBefore = before == 1;
        SPILE_TRY(bundle_.verify(ledger_.cellar().id, takenBefore ? SignatureCheck::None : check,
                                 verifying_.job(), [&](const VerifiedEntry& entry) {
                                     for (const PhotoRef& photo : entry.core.photos) {
                                         wanted_.emplace(photo.hash, photo.bytes);
                                     }
                                 }));
        SPILE_ASSIGN(damaged, isDamaged(ledger_.database()));
        SPILE_ASSIGN(mended, mend(ledger_, bundle_, mending_.job()));
        taken_.mended = mended;
        SPILE_TRY(expectAll());
        SPILE_TRY(wantMissingPhotos());
        SPILE_TRY(storePhotos());
        if (takenBefore && !damaged) {
            taken_.known = taken_.entries;
            SPILE_TRY(noteReceipt());
        } else {
            SPILE_TRY(storeEntries());
        }
        SPILE_TRY(markPhotos());
        SPILE_TRY(slices_.finish());
        return taken_;
    }

private:
    // Each photo; each entry as it is stored and as it counts; and what may count by them.
    Result<void> expectAll()
    {
        const BundleHeader& header = bundle_.header();
        SPILE_ASSIGN(waiting, ledger_.database().integer(0, "SELECT count(*) FROM waiting"));
        slices_.expect(header.photos + 2 * header.entries + static_cast<std::uint64_t>(waiting));
        return {};
    }

    Result<void> wantMissingPhotos()
    {
        return ledger_.database().each(
            [&](const Row& row) {
                wanted_.emplace(row.id<Sha256>(0), static_cast<std::uint64_t>(row.integer(1)));
                return Result<void>();
            },
            "SELECT sha256, bytes FROM photo WHERE present = 0");
    }

    Result<void> storePhotos()
    {
        for (const PhotoRef& photo : bundle_.photos()) {
            slices_.did(1);
            const auto want = wanted_.find(photo.hash);
            if (want == wanted_.end() || want->second != photo.bytes) {
                continue;
            }
            arrived_.push_back(photo.hash);
            if (ledger_.photos().isWhole(photo.hash)) {
                continue;
            }
            SPILE_TRY(ledger_.photos().addStreamed(
                photo.hash, photo.bytes, [&](std::uint64_t offset, std::span<std::uint8_t> into) {
                    return bundle_.readPhoto(photo.hash, offset, into);
                }));
            ++taken_.photos;
            SPILE_TRY(slices_.rest());
        }
        return {};
    }

    Result<void> storeEntries()
    {
        SPILE_ASSIGN(first, slices_.change());
        for (const PublicKey& key : bundle_.header().keys) {
            SPILE_TRY(first->chains().knowDevice(deviceIdOf(key), key));
        }
        SPILE_TRY(bundle_.eachEntry([&](VerifiedEntry&& entry) { return store(entry); }));
        SPILE_ASSIGN(linked, linkWaiting(slices_));
        // Some may have waited in this very file, for an entry further on in it.
        taken_.waiting -= std::min(taken_.waiting, linked);
        taken_.added += linked;
        return noteReceipt();
    }

    Result<void> store(const VerifiedEntry& entry)
    {
        SPILE_ASSIGN(change, slices_.change());
        SPILE_ASSIGN(arrival, change->chains().arrive(entry));
        if (entry.core.device == ledger_.device() && arrival != Arrival::Known) {
            SPILE_TRY(askForNewKey(change->database()));
        }
        taken_.added += arrival == Arrival::Counted ? 1 : 0;
        taken_.known += arrival == Arrival::Known ? 1 : 0;
        taken_.waiting += arrival == Arrival::Waiting ? 1 : 0;
        slices_.did(arrival == Arrival::Waiting ? 1 : 2);
        return endsGroup(entry.core) ? slices_.steps(1) : Result<void>();
    }

    // What this device has signed has gone out and is not here: it was set back to an earlier
    // state, or a copy of it goes on elsewhere.
    static Result<void> askForNewKey(Database& database)
    {
        return database.execute(
            "INSERT INTO meta(key, value) VALUES('renew', 1) ON CONFLICT DO NOTHING");
    }

    Result<void> lookForOwnLost(Database& database)
    {
        for (const Head& head : bundle_.header().have) {
            if (head.device != ledger_.device()) {
                continue;
            }
            SPILE_ASSIGN(here, database.integer(0, "SELECT " SPILE_ENTRY_NUMBER("?1"), head.id));
            if (here == 0) {
                SPILE_TRY(askForNewKey(database));
            }
        }
        return {};
    }

    // What the sender holds, so that the next day file for it can be short; and that this file is
    // done.
    Result<void> noteReceipt()
    {
        const BundleHeader& header = bundle_.header();
        SPILE_ASSIGN(change, slices_.change());
        Database& database = change->database();
        SPILE_TRY(lookForOwnLost(database));
        // The last file to arrive counts, whatever its number: a restored device counts anew, and
        // knowing too little of it only sends it more.
        SPILE_TRY(database.execute("DELETE FROM peer_head WHERE peer = ?", header.from));
        SPILE_TRY(database.execute("DELETE FROM peer_missing_photo WHERE peer = ?", header.from));
        for (const Head& head : header.have) {
            SPILE_TRY(database.execute(
                "INSERT INTO peer_head(peer, device, seq, id) VALUES(?, ?, ?, ?) "
                "ON CONFLICT DO NOTHING",
                header.from, head.device, static_cast<std::int64_t>(head.seq), head.id));
        }
        for (const Sha256& hash : header.missing) {
            SPILE_TRY(
                database.execute("INSERT INTO peer_missing_photo(peer, sha256) VALUES(?, ?) "
                                 "ON CONFLICT DO NOTHING",
                                 header.from, hash));
        }
        return database.execute(
            "INSERT INTO taken_in(bundle, from_device, number, taken_ms, added, known, waiting) "
            "VALUES(?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING",
            bundle_.identity(), header.from, static_cast<std::int64_t>(header.number),
            toMs(ledger_.outside().clock.now()), static_cast<std::int64_t>(taken_.added),
            static_cast<std::int64_t>(taken_.known), static_cast<std::int64_t>(taken_.waiting));
    }

    Result<void> markPhotos()
    {
        for (const Sha256& hash : arrived_) {
            SPILE_ASSIGN(change, slices_.change());
            SPILE_TRY(
                change->database().execute("UPDATE photo SET present = 1 WHERE sha256 = ?", hash));
        }
        return {};
    }

    Ledger& ledger_;
    BundleReader& bundle_;
    std::uint64_t length_;
    PartOfJob verifying_, mending_, storing_;
    Slices slices_;
    TakenIn taken_;
    std::map<Sha256, std::uint64_t> wanted_;
    std::vector<Sha256> arrived_;
};

Result<std::uint64_t> sizeOf(FileSystem& files, const Path& file)
{
    SPILE_ASSIGN(opened, files.open(file));
    return opened->size();
}

}  // namespace

// Does `work` with a sealed file, opened as `opened` meanwhile.
template <class Done>
static Result<Done> withOpened(FileSystem& files, const Path& file, const Path& opened,
                               const std::string& passphrase, const Job& job,
                               const std::function<Result<Done>(const Path&, const Job&)>& work)
{
    if (passphrase.empty()) {
        return fail(ErrorCode::Conflict, "passphrase", "the file is sealed",
                    "the one that it was sealed with");
    }
    if (files.exists(opened)) {  // left by a process that was killed
        SPILE_TRY(files.remove(opened));
    }
    SPILE_ASSIGN(size, sizeOf(files, file));
    const PartOfJob opening(job, 0, size / 4, size);
    SPILE_TRY(unseal(files, file, opened, passphrase, opening.job()));
    const PartOfJob rest(job, size / 4, size - size / 4, size);
    auto done = work(opened, rest.job());
    auto removed = files.remove(opened);
    return done && !removed ? Result<Done>(passOn(removed)) : std::move(done);
}

Result<TakenIn> takeIn(Ledger& ledger, const Path& file, SignatureCheck check, const Job& job,
                       const std::string& passphrase)
{
    SPILE_ASSIGN(sealed, isSealed(ledger.outside().files, file));
    if (sealed) {
        return withOpened<TakenIn>(ledger.outside().files, file,
                                   ledger.folder().outbox() / ".opened", passphrase, job,
                                   [&](const Path& opened, const Job& rest) {
                                       return takeIn(ledger, opened, check, rest);
                                   });
    }
    SPILE_ASSIGN(bundle, BundleReader::open(ledger.outside().files, file));
    SPILE_ASSIGN(taken, TakingIn(ledger, bundle, job).run(check));
    if (ledger.cellar().mark.empty()) {
        SPILE_TRY(ledger.readIdentity());
    }
    SPILE_ASSIGN(renews, ledger.needsNewKey());
    if (renews) {
        SPILE_ASSIGN(renewed, ledger.renewKey());
        taken.renewed = renewed;
    }
    return taken;
}

Result<std::unique_ptr<Ledger>> join(const Path& folder, const Outside& outside,
                                     Projection& projection, const Path& file, const Job& job,
                                     const std::string& vfs, const std::string& passphrase)
{
    SPILE_ASSIGN(sealed, isSealed(outside.files, file));
    if (sealed) {
        return withOpened<std::unique_ptr<Ledger>>(
            outside.files, file, folder.parent_path() / (".opened-" + folder.filename().string()),
            passphrase, job, [&](const Path& opened, const Job& rest) {
                return join(folder, outside, projection, opened, rest, vfs);
            });
    }
    SPILE_ASSIGN(bundle, BundleReader::open(outside.files, file));
    const BundleHeader& header = bundle.header();
    const std::uint64_t length = lengthOf(header);
    const PartOfJob verifying(job, 0, length / 3, length);
    SPILE_TRY(bundle.verify(header.cellar, SignatureCheck::EveryEntry, verifying.job(),
                            [](const VerifiedEntry&) {}));
    const DeviceId owner = *DeviceId::fromBytes(header.cellar.bytes());
    for (const ChainRange& range : header.ranges) {
        if (range.device == owner && range.first == 1) {
            SPILE_ASSIGN(ledger,
                         Ledger::createReplica(folder, outside, projection, header.cellar, vfs));
            const PartOfJob taking(job, length / 3, length - length / 3, length);
            SPILE_TRY(takeIn(*ledger, file, SignatureCheck::RangeEnds, taking.job()));
            return std::move(ledger);
        }
    }
    return fail(ErrorCode::NotFound, "day file", "it does not hold the cellar from its beginning",
                "hand one out without --for");
}

Result<Admitted> admit(Ledger& ledger, const DeviceId& device, const std::string& name,
                       DeviceRole role, const std::optional<SigningKey>& owner)
{
    Database& database = ledger.database();
    SPILE_ASSIGN(standing, standingOf(database));
    if (!standing.membershipOf(ledger.device()).mayAdmit && !owner) {
        return fail(ErrorCode::Conflict, "admit", "this device may not admit others",
                    "admit it at a desk");
    }
    if (standing.membershipOf(device).admitted) {
        return fail(ErrorCode::Conflict, "device", device.hex().substr(0, 8),
                    "it is admitted already");
    }
    Admitted admitted;
    {
        SPILE_ASSIGN(change, ledger.change());
        NewEntry entry{deviceKind, *SubjectId::fromBytes(device.bytes()), {}, {}, {}, {}, {}};
        entry.fields = {{trust_field::name, name},
                        {trust_field::role, static_cast<std::int64_t>(role)}};
        if (owner) {
            SPILE_ASSIGN(ids, change.recordAsOwner(*owner, {std::move(entry)}));
            admitted.entry = ids.front();
        } else {
            SPILE_ASSIGN(id, change.record(std::move(entry)));
            admitted.entry = id;
        }
        SPILE_TRY(change.commit());
    }
    const Job job;
    Slices slices(ledger, job);
    SPILE_ASSIGN(linked, linkWaiting(slices));
    SPILE_TRY(slices.commit());
    admitted.linked = linked;
    return admitted;
}

}  // namespace spile::ledger
