#include "core/ledger/hand_out.hpp"

#include "core/ledger/bundle_reader.hpp"
#include "core/ledger/bundle_writer.hpp"
#include "core/ledger/entry_check.hpp"
#include "core/ledger/mending.hpp"
#include "core/ledger/ranges.hpp"
#include "core/ledger/seal.hpp"

#include <algorithm>
#include <array>
#include <cstdio>
#include <iterator>
#include <set>

namespace spile::ledger {

namespace {

template <class... Values>
Result<std::vector<Head>> headsIn(Database& database, std::string_view sql, const Values&... values)
{
    std::vector<Head> heads;
    SPILE_TRY(database.each(
        [&](const Row& row) {
            heads.push_back({row.id<DeviceId>(0), static_cast<std::uint64_t>(row.integer(1)),
                             row.id<EntryId>(2)});
            return Result<void>();
        },
        sql, values...));
    return heads;
}

// What was found to be damaged and is not in a file.
struct LeftOut {
    std::uint64_t entries = 0;
    std::optional<Error> wrong;  // the first
    std::vector<Sha256> photos;
};

// Reads the parts of a bundle out of one frozen view of the ledger.
class Gathering {
public:
    Gathering(Database& database, const PhotoStore& photos, const DayFileRoom& room)
        : database_(database), photos_(photos), room_(room)
    {
    }

    /// With `around` what is damaged is looked for and left out; else it is an error later on.
    Result<void> gather(BundleHeader& header, const std::optional<DeviceId>& to, bool around,
                        const Job& job)
    {
        std::vector<Head> known;
        if (to) {
            SPILE_ASSIGN(
                heads,
                headsIn(database_, "SELECT device, seq, id FROM peer_head WHERE peer = ?", *to));
            known = std::move(heads);
        }
        SPILE_TRY(around ? takeSound(header, known, job) : takeAll(header, known));
        for (const OutgoingRange& out : ranges_) {
            header.ranges.push_back(out.range);
            header.entries +=
                out.rows.empty() ? out.range.last - out.range.first + 1 : out.rows.size();
            SPILE_TRY(addKey(header, out.range.device));
            SPILE_TRY(addPhotosOf(out));
        }
        if (to) {
            SPILE_TRY(
                addPhotos("SELECT sha256, bytes FROM peer_missing_photo JOIN photo USING(sha256) "
                          "WHERE peer = ? ORDER BY sha256",
                          *to));
        }
        SPILE_TRY(addMissing(header));
        if (around) {
            SPILE_TRY(leaveOutPhotos(header, job));
        }
        askForSome(header.missing, room_.asked, header.number);
        while (photoRefs_.size() > room_.photos) {
            photoRefs_.erase(std::prev(photoRefs_.end()));
            ++photosLeft_;
        }
        header.photos = photoRefs_.size();
        return {};
    }

    [[nodiscard]] const LeftOut& leftOut() const { return leftOut_; }
    /// How many photos the file has no room for.
    [[nodiscard]] std::uint64_t photosLeft() const { return photosLeft_; }

    Result<void> eachEntry(const std::function<Result<void>(const SignedEntry&)>& use)
    {
        const auto give = [&](const Row& row) {
            const ByteView core = row.blob(0);
            const ByteView body = row.blob(1);
            return use({Bytes(core.begin(), core.end()), row.id<Signature>(2),
                        Bytes(body.begin(), body.end())});
        };
        for (const OutgoingRange& out : ranges_) {
            for (const std::int64_t n : out.rows) {
                SPILE_TRY(
                    database_.each(give, "SELECT core, body, signature FROM entry WHERE n = ?", n));
            }
            if (out.rows.empty()) {
                SPILE_TRY(database_.each(
                    give,
                    "SELECT core, body, signature FROM entry JOIN device_chain USING(d) "
                    "WHERE device = ? AND seq BETWEEN ? AND ? ORDER BY seq",
                    out.range.device, static_cast<std::int64_t>(out.range.first),
                    static_cast<std::int64_t>(out.range.last)));
            }
        }
        return {};
    }

    [[nodiscard]] std::vector<PhotoRef> photos() const
    {
        std::vector<PhotoRef> refs;
        for (const auto& [hash, bytes] : photoRefs_) {
            refs.push_back({hash, bytes});
        }
        return refs;
    }

private:
    Result<void> takeAll(BundleHeader& header, const std::vector<Head>& known)
    {
        SPILE_ASSIGN(ranges, rangesBeyond(database_, header.cellar, known));
        ranges_ = std::move(ranges);
        SPILE_ASSIGN(have, headsIn(database_,
                                   "SELECT device, seq, id FROM head JOIN device_chain USING(d) "
                                   "ORDER BY device, seq, id"));
        header.have = std::move(have);
        return {};
    }

    Result<void> takeSound(BundleHeader& header, const std::vector<Head>& known, const Job& job)
    {
        SPILE_ASSIGN(sound, soundRangesBeyond(database_, header.cellar, known, job));
        ranges_ = std::move(sound.ranges);
        header.have = std::move(sound.have);
        leftOut_.entries = sound.leftOut;
        leftOut_.wrong = std::move(sound.wrong);
        return {};
    }

    Result<void> leaveOutPhotos(BundleHeader& header, const Job& job)
    {
        for (auto photo = photoRefs_.begin(); photo != photoRefs_.end();) {
            const Sha256 hash = photo->first;
            if (photos_.isWhole(hash)) {
                ++photo;
            } else {
                leftOut_.photos.push_back(hash);
                header.missing.push_back(hash);
                photo = photoRefs_.erase(photo);
            }
            if (!job.advance(header.entries, header.entries)) {
                return fail(ErrorCode::Cancelled, "day file");
            }
        }
        return {};
    }

    Result<void> addKey(BundleHeader& header, const DeviceId& device)
    {
        SPILE_ASSIGN(
            key, database_.first([](const Row& row) { return row.id<PublicKey>(0); },
                                 "SELECT public_key FROM device_chain WHERE device = ?", device));
        if (std::find(header.keys.begin(), header.keys.end(), *key) == header.keys.end()) {
            header.keys.push_back(*key);
        }
        return {};
    }

    template <class... Values>
    Result<void> addPhotos(std::string_view sql, const Values&... values)
    {
        return database_.each(
            [&](const Row& row) {
                const auto hash = row.id<Sha256>(0);
                if (photos_.has(hash)) {
                    photoRefs_.emplace(hash, static_cast<std::uint64_t>(row.integer(1)));
                }
                return Result<void>();
            },
            sql, values...);
    }
    Result<void> addPhotosOf(const OutgoingRange& out)
    {
        return addPhotos(
            "SELECT sha256, bytes FROM entry JOIN device_chain USING(d) "
            "JOIN entry_photo USING(n) JOIN photo USING(sha256) "
            "WHERE device = ? AND seq BETWEEN ? AND ?",
            out.range.device, static_cast<std::int64_t>(out.range.first),
            static_cast<std::int64_t>(out.range.last));
    }

    Result<void> addMissing(BundleHeader& header)
    {
        return database_.each(
            [&](const Row& row) {
                header.missing.push_back(row.id<Sha256>(0));
                return Result<void>();
            },
            "SELECT sha256 FROM photo WHERE present = 0 ORDER BY sha256");
    }

    Database& database_;
    const PhotoStore& photos_;
    const DayFileRoom& room_;
    std::vector<OutgoingRange> ranges_;
    std::map<Sha256, std::uint64_t> photoRefs_;
    LeftOut leftOut_;
    std::uint64_t photosLeft_ = 0;
};

// The bag's one folder: cellar mark, device, number.
std::string topFolder(const CellarIdentity& cellar, const BundleHeader& header)
{
    std::array<char, 24> number{};
    std::snprintf(number.data(), number.size(), "%06llu",
                  static_cast<unsigned long long>(header.number));
    return cellar.mark + "-" + header.from.hex().substr(0, 4) + "-" + number.data();
}

// Up to which of its own entries the receiver has them all, with what it had before.
std::int64_t ownSeq(const BundleHeader& header)
{
    std::uint64_t seq = 0;
    for (const Head& head : header.have) {
        seq = head.device == header.from ? std::max(seq, head.seq) : seq;
    }
    return static_cast<std::int64_t>(seq);
}

Result<void> mayReplace(Ledger& ledger, const Path& file)
{
    if (!ledger.outside().files.exists(file)) {
        return {};
    }
    auto there = BundleReader::open(ledger.outside().files, file);
    if (there && there->header().cellar == ledger.cellar().id &&
        there->header().from == ledger.device()) {
        return {};
    }
    if (!there && (there.error().code == ErrorCode::Storage ||
                   there.error().code == ErrorCode::StorageFull)) {
        return passOn(there);
    }
    return fail(ErrorCode::Conflict, file.string(), "another file is there", "choose another name");
}

Result<void> finishFile(Ledger& ledger, const Path& temporary, const Path& file, const Job& job,
                        const std::string& passphrase)
{
    FileSystem& files = ledger.outside().files;
    // What was written is read back before anybody relies on it, and verified as a receiver will:
    // a signature that a disk has spoilt would make it refuse all of the file.
    SPILE_ASSIGN(written, BundleReader::open(files, temporary));
    SPILE_TRY(written.verify(ledger.cellar().id, SignatureCheck::EveryEntry, job,
                             [](const VerifiedEntry&) {}));
    if (!passphrase.empty()) {
        SPILE_TRY(seal(files, temporary, file, passphrase, ledger.outside().random, job));
        return files.remove(temporary);
    }
    SPILE_TRY(files.rename(temporary, file));
    return files.syncFolder(folderOf(file));
}

// A file that is written and verified, and what it is.
struct Written {
    Sha256 identity;
    BundleHeader header;
    LeftOut leftOut;
    std::uint64_t photosLeft = 0;
};

class HandingOut {
public:
    HandingOut(Ledger& ledger, const Path& file, const std::optional<DeviceId>& to,
               const std::string& program, const Job& job, const std::string& passphrase,
               const DayFileRoom& room)
        : ledger_(ledger),
          file_(file),
          to_(to),
          program_(program),
          job_(job),
          passphrase_(passphrase),
          room_(room),
          // What is to be sealed lies in the cellar's own folder until then.
          temporary_(passphrase.empty() ? file.parent_path() / (".tmp-" + file.filename().string())
                                        : ledger.folder().outbox() / ".to-be-sealed")
    {
    }

    Result<Written> write(Database& database, bool around)
    {
        BundleContent content;
        SPILE_TRY(begin(content, database));
        Gathering gathering(database, ledger_.photos(), room_);
        SPILE_TRY(gathering.gather(content.header, to_, around, job_));
        content.photos = gathering.photos();
        content.entries = [&](const auto& use) { return gathering.eachEntry(use); };

        FileSystem& files = ledger_.outside().files;
        if (files.exists(temporary_)) {  // left by a process that was killed
            SPILE_TRY(files.remove(temporary_));
        }
        auto identity = writeBundle(files, temporary_, topFolder(ledger_.cellar(), content.header),
                                    content, ledger_.photos(), ledger_.key(), job_);
        auto finished = identity ? finishFile(ledger_, temporary_, file_, job_, passphrase_)
                                 : Result<void>(passOn(identity));
        if (!finished) {
            if (files.exists(temporary_)) {
                std::ignore = files.remove(temporary_);  // the first error is the one to report
            }
            return passOn(finished);
        }
        return Written{*identity, std::move(content.header), gathering.leftOut(),
                       gathering.photosLeft()};
    }

private:
    Result<void> begin(BundleContent& content, Database& database)
    {
        content.header.cellar = ledger_.cellar().id;
        content.header.from = ledger_.device();
        content.header.made = ledger_.outside().clock.now();
        content.header.program = program_;
        content.cellarName = ledger_.cellar().name;
        SPILE_ASSIGN(number, database.integer(0, "SELECT coalesce(max(n), 0) + 1 FROM handed_out"));
        content.header.number = static_cast<std::uint64_t>(number);
        return {};
    }

    Ledger& ledger_;
    const Path& file_;
    const std::optional<DeviceId>& to_;
    const std::string& program_;
    const Job& job_;
    const std::string& passphrase_;
    const DayFileRoom& room_;
    Path temporary_;
};

// So that it is looked for in what comes from others.
Result<void> note(Ledger& ledger, Database& database, const LeftOut& leftOut)
{
    for (const Sha256& photo : leftOut.photos) {
        SPILE_TRY(missPhoto(ledger.photos(), database, photo));
    }
    return leftOut.wrong ? database.execute(
                               "INSERT INTO meta(key, value) VALUES(?, ?) ON CONFLICT DO NOTHING",
                               damageFound, leftOut.wrong->subject + ": " + leftOut.wrong->value)
                         : Result<void>();
}

}  // namespace

Result<HandedOut> handOut(Ledger& ledger, const Path& file, const std::optional<DeviceId>& to,
                          const std::string& program, const Job& job, const std::string& passphrase,
                          const DayFileRoom& room)
{
    SPILE_TRY(mayReplace(ledger, file));
    SPILE_ASSIGN(database, ledger.openReader());
    SPILE_TRY(database.run("BEGIN"));  // freezes what this connection sees
    SPILE_ASSIGN(damaged, isDamaged(database));
    HandingOut handing(ledger, file, to, program, job, passphrase, room);
    auto written = handing.write(database, damaged);
    if (!written && !damaged && isOfContent(written.error())) {
        written = handing.write(database, true);
    }
    if (!written) {
        return passOn(written);
    }
    const BundleHeader& header = written->header;
    const LeftOut& leftOut = written->leftOut;
    SPILE_ASSIGN(change, ledger.change());
    SPILE_TRY(change.database().execute(
        "INSERT INTO handed_out(bundle, to_device, made_ms, entries, photos, own_seq) "
        "VALUES(?, ?, ?, ?, ?, ?)",
        written->identity, to, toMs(header.made), static_cast<std::int64_t>(header.entries),
        static_cast<std::int64_t>(header.photos), ownSeq(header)));
    SPILE_TRY(note(ledger, change.database(), leftOut));
    SPILE_TRY(change.commit());
    return HandedOut{written->identity,     header.number,         header.entries,
                     header.photos,         header.missing.size(), leftOut.entries,
                     leftOut.photos.size(), written->photosLeft};
}

}  // namespace spile::ledger
