#include "core/base/sha256.hpp"
#include "core/ledger/ledger.hpp"

#include <algorithm>

namespace spile::ledger {

namespace {

/// The write-ahead log is moved into the file when it has grown past this many pages (4 MiB).
constexpr int logPagesMax = 1024;

Result<void> checkLimits(const NewEntry& entry, ByteView body)
{
    if (body.size() > bodyBytesMax) {
        return fail(ErrorCode::TooLarge, entry.kind, std::to_string(body.size()),
                    std::to_string(bodyBytesMax));
    }
    if (entry.photos.size() > photosMax || entry.overwrites.size() > overwritesMax) {
        return fail(ErrorCode::OutOfRange, entry.kind, "too many photos or overwritten entries");
    }
    return {};
}

}  // namespace

Change::~Change()
{
    if (transaction_) {
        transaction_.reset();  // rolls back
        ledger_->chains_.forget();
    }
}

Database& Change::database() { return ledger_->database_; }
Chains& Change::chains() { return ledger_->chains_; }

Result<EntryId> Change::append(NewEntry made, std::optional<Group> group)
{
    const Bytes body = encodeFields(made.fields);
    SPILE_TRY(checkLimits(made, body));
    if (made.at && (made.at->time < earliestTime || made.at->time > latestTime)) {
        return fail(ErrorCode::OutOfRange, made.kind, "a time outside the calendar",
                    "before the year 10000");
    }
    const Outside& outside = ledger_->outside_;
    SPILE_ASSIGN(head, chains().headOf(ledger_->device_));
    Entry core;
    core.cellar = ledger_->cellar_.id;
    core.device = ledger_->device_;
    core.seq = head ? head->seq + 1 : 1;
    if (core.seq > seqMax) {
        return fail(ErrorCode::OutOfRange, "seq", std::to_string(core.seq),
                    std::to_string(seqMax) + "; go on with a new device");
    }
    core.previous = head ? head->id : EntryId();
    // A clock beyond all limits must not make a record that nobody reads.
    const Instant wall = std::clamp(outside.clock.now(), earliestTime, latestTime);
    SPILE_ASSIGN(latest, ledger_->recordedAt(core.previous));
    core.recorded = std::max(wall, latest);
    if (core.recorded != wall) {
        core.wall = wall;
    }
    core.boot = outside.clock.bootId();
    core.sinceBoot = std::clamp(outside.clock.sinceBoot(), Milliseconds(0), sinceBootMax);
    core.at = made.at;
    core.group = group;
    core.kind = std::move(made.kind);
    core.subject = made.subject;
    core.overwrites = std::move(made.overwrites);
    core.target = made.target;
    core.photos = std::move(made.photos);
    core.bodyHash = sha256(body);
    core.bodyBytes = static_cast<std::uint32_t>(body.size());

    VerifiedEntry entry{signEntry(core, body, *ledger_->key_), {}, core};
    entry.id = entry.entry.id();
    SPILE_TRY(chains().appendOwn(entry));
    ledger_->latest_ = {entry.id, core.recorded};
    return entry.id;
}

Result<EntryId> Change::record(NewEntry entry) { return append(std::move(entry), std::nullopt); }

Result<std::vector<EntryId>> Change::recordGroup(std::vector<NewEntry> entries)
{
    std::vector<EntryId> ids;
    const auto count = static_cast<std::uint32_t>(entries.size());
    for (NewEntry& entry : entries) {
        const auto index = static_cast<std::uint32_t>(ids.size());
        SPILE_ASSIGN(id, append(std::move(entry),
                                count > 1 ? std::optional(Group{index, count}) : std::nullopt));
        ids.push_back(id);
    }
    return ids;
}

Result<EntryId> Change::recordWithAnswers(NewEntry entry, std::vector<NewEntry> answers)
{
    const auto count = static_cast<std::uint32_t>(answers.size() + 1);
    std::uint32_t index = 0;
    const auto next = [&] {
        return count > 1 ? std::optional(Group{index++, count}) : std::nullopt;
    };
    SPILE_ASSIGN(id, append(std::move(entry), next()));
    for (NewEntry& answer : answers) {
        if (!answer.target) {  // it may answer something else: beer, what it came from
            answer.target = id;
        }
        SPILE_TRY(append(std::move(answer), next()));
    }
    return id;
}

Result<void> Change::commit()
{
    SPILE_TRY(chains().settle());
    SPILE_TRY(transaction_->commit());
    transaction_.reset();
    // All of it is durable by now. A checkpoint that fails loses nothing; the connection is broken
    // by it and says so at the next act.
    std::ignore = ledger_->database_.checkpoint(logPagesMax);
    return {};
}

Result<Change> Ledger::change()
{
    if (readsOnly_) {
        return fail(ErrorCode::Unsupported, "ledger.db", "a newer version wrote it",
                    "update Spile; until then it is for reading and export");
    }
    SPILE_ASSIGN(transaction, Transaction::begin(database_));
    return Change(*this, std::move(transaction));
}

// The clock of this device may have been set back since its last entry; its recorded times are not.
Result<Instant> Ledger::recordedAt(const EntryId& head)
{
    if (head.isZero()) {
        return Instant::min();
    }
    if (!latest_ || latest_->entry != head) {
        SPILE_ASSIGN(core, database_.first([](const Row& row) { return decodeCore(row.blob(0)); },
                                           "SELECT core FROM entry WHERE id = ?", head));
        if (!core) {
            return fail(ErrorCode::Damaged, "ledger.db", "this device's last record is missing");
        }
        // Where it is damaged there is only the clock to go by.
        latest_ = {head, *core ? (**core).recorded : earliestTime};
    }
    return latest_->at;
}

}  // namespace spile::ledger
