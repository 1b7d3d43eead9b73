#include "core/ledger/mending.hpp"

#include "core/ledger/entry_check.hpp"
#include "core/ledger/schema.hpp"

#include <map>

namespace spile::ledger {

namespace {

class Mending {
public:
    Mending(Ledger& ledger, BundleReader& bundle, const Job& job)
        : ledger_(ledger), database_(ledger.database()), bundle_(bundle), job_(job)
    {
        for (const PublicKey& key : bundle.header().keys) {
            keys_.emplace(deviceIdOf(key), key);
        }
    }

    Result<std::uint64_t> run()
    {
        SPILE_TRY(makeIndicesAnew());
        SPILE_TRY(findSpoilt());
        return replaceAll();
    }

private:
    struct Spoilt {
        EntryId id;
        DeviceId device;
        std::uint64_t seq = 0;
    };

    // An index may be what is damaged; and with those that are sound, rows can be replaced.
    Result<void> makeIndicesAnew()
    {
        SPILE_ASSIGN(change, ledger_.change());
        SPILE_TRY(database_.run("REINDEX entry;"));
        return change.commit();
    }

    Result<std::uint64_t> replaceAll()
    {
        SPILE_ASSIGN(change, ledger_.change());
        SPILE_TRY(database_.run(entriesMayChange));
        SPILE_TRY(bundle_.eachEntry(
            [&](VerifiedEntry&& entry) { return replaceIfSpoilt(change.chains(), entry); }));
        SPILE_TRY(database_.run(entriesNeverChange));
        if (mended_ == 0 && !spoilt_.empty()) {
            return mended_;  // the file has none of it
        }
        SPILE_TRY(ledger_.makeStateAnew(change));
        if (spoilt_.empty()) {
            for (const std::string_view key : {damageFound, damageFoundBefore}) {
                SPILE_TRY(database_.execute("DELETE FROM meta WHERE key = ?", key));
            }
        }
        SPILE_TRY(change.commit());
        return mended_;
    }

    // Part by part; the last is not full. Between two of them other work runs, which may record, so
    // that no statement and no transaction is open then.
    Result<void> findSpoilt()
    {
        constexpr std::uint64_t atOnce = 256;
        std::uint64_t done = 0;
        std::int64_t last = 0;
        for (std::uint64_t whole = 0; done == whole; whole += atOnce) {
            SPILE_TRY(database_.each(
                [&](const Row& row) {
                    ++done;
                    last = row.integer(storedRowColumn);
                    if (!wrongWith(row, ledger_.cellar().id).empty()) {
                        spoilt_[last] = {row.id<EntryId>(0), row.id<DeviceId>(9),
                                         static_cast<std::uint64_t>(row.integer(1))};
                    }
                    return Result<void>();
                },
                storedEntries, last, std::int64_t{atOnce}));
            if (!job_.advance(done, done)) {
                return fail(ErrorCode::Cancelled, "day file");
            }
        }
        return {};
    }

    // The row that `entry` was; by its place in the chain, unless another row is the entry.
    Result<std::optional<std::int64_t>> rowOf(const VerifiedEntry& entry)
    {
        for (const auto& [n, row] : spoilt_) {
            if (row.id == entry.id) {
                return std::optional(n);
            }
        }
        for (const auto& [n, row] : spoilt_) {
            if (row.device == entry.core.device && row.seq == entry.core.seq) {
                SPILE_ASSIGN(here,
                             database_.integer(0, "SELECT 1 FROM entry WHERE id = ?", entry.id));
                return here == 0 ? std::optional(n) : std::nullopt;
            }
        }
        return std::optional<std::int64_t>();
    }

    // The file may have been verified by its ranges' last signatures alone.
    [[nodiscard]] bool isSigned(const VerifiedEntry& entry) const
    {
        const auto key = keys_.find(entry.core.device);
        return key != keys_.end() && verify(key->second, signedMessage(entry.core.cellar, entry.id),
                                            entry.entry.signature);
    }

    Result<void> replaceIfSpoilt(Chains& chains, const VerifiedEntry& entry)
    {
        if (spoilt_.empty()) {
            return {};
        }
        SPILE_ASSIGN(n, rowOf(entry));
        if (!n || !isSigned(entry)) {
            return {};
        }
        const Entry& core = entry.core;
        SPILE_ASSIGN(d, chains.knowDevice(core.device, std::nullopt));
        SPILE_TRY(database_.execute(
            "UPDATE entry SET id = ?, d = ?, seq = ?, kind = ?, subject = ?, target = ?, at_ms = "
            "?, "
            "core = ?, body = ?, signature = ? WHERE n = ?",
            entry.id, d, static_cast<std::int64_t>(core.seq), core.kind, core.subject, core.target,
            toMs(core.eventTime()), entry.entry.core, entry.entry.body, entry.entry.signature, *n));
        spoilt_.erase(*n);
        ++mended_;
        return {};
    }

    Ledger& ledger_;
    Database& database_;
    BundleReader& bundle_;
    const Job& job_;
    std::map<DeviceId, PublicKey> keys_;
    std::map<std::int64_t, Spoilt> spoilt_;  // by its row
    std::uint64_t mended_ = 0;
};

}  // namespace

Result<bool> isDamaged(Database& database)
{
    SPILE_ASSIGN(noted, database.integer(0, "SELECT EXISTS(SELECT 1 FROM meta WHERE key IN (?, ?))",
                                         damageFound, damageFoundBefore));
    return noted != 0;
}

Result<std::uint64_t> mend(Ledger& ledger, BundleReader& bundle, const Job& job)
{
    SPILE_ASSIGN(damaged, isDamaged(ledger.database()));
    if (!damaged) {
        return std::uint64_t{0};
    }
    auto mended = Mending(ledger, bundle, job).run();
    // No state can be made of what is left: the file's other records are taken in all the same.
    return !mended && isOfContent(mended.error()) && !ledger.database().isBroken()
               ? Result<std::uint64_t>(0)
               : std::move(mended);
}

}  // namespace spile::ledger
