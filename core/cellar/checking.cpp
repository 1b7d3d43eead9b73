#include "core/cellar/checking.hpp"

#include "core/base/sha256.hpp"
#include "core/ledger/cbor.hpp"
#include "core/ledger/trust.hpp"

#include <algorithm>

namespace spile::cellar {

using ledger::Database;
using ledger::Row;

namespace {

class Checking {
public:
    Checking(Cellar& cellar, Database& reader, const Job& job)
        : cellar_(cellar), reader_(reader), job_(job)
    {
    }

    Result<CheckReport> run()
    {
        SPILE_TRY(countAll());
        SPILE_TRY(checkDatabase());
        SPILE_TRY(checkEntries());
        SPILE_TRY(checkPhotos());
        SPILE_TRY(checkSetAside());
        SPILE_TRY(checkState());
        return std::move(report_);
    }

private:
    void problem(std::string subject, std::string value, std::string limit = {})
    {
        constexpr std::size_t problemsMax = 1000;
        if (report_.problems.size() < problemsMax) {
            report_.problems.push_back(
                {ErrorCode::Damaged, std::move(subject), std::move(value), std::move(limit)});
        }
    }

    Result<void> count(std::uint64_t& into, std::string_view sql)
    {
        SPILE_ASSIGN(found, reader_.integer(0, sql));
        into = static_cast<std::uint64_t>(found);
        return {};
    }

    Result<void> countAll()
    {
        SPILE_TRY(count(report_.entries, "SELECT count(*) FROM entry"));
        SPILE_TRY(count(report_.waiting, "SELECT count(*) FROM waiting"));
        SPILE_TRY(count(report_.devices,
                        "SELECT count(DISTINCT subject) FROM state_device WHERE voided = 0"));
        SPILE_TRY(count(report_.barrels, "SELECT count(*) FROM state_barrel_now"));
        SPILE_TRY(count(report_.photos, "SELECT count(*) FROM photo WHERE present = 1"));
        SPILE_TRY(count(report_.missingPhotos, "SELECT count(*) FROM photo WHERE present = 0"));
        return count(report_.unknown, "SELECT count(*) FROM state_unknown");
    }

    Result<void> checkDatabase()
    {
        return reader_.each(
            [&](const Row& row) {
                if (row.text(0) != "ok") {
                    problem("ledger.db", row.text(0));
                }
                return Result<void>();
            },
            "PRAGMA integrity_check");
    }

    // SQLite does not notice a flipped bit in a row: every entry is hashed and verified anew, and
    // the columns that were taken from it are compared with it.
    Result<void> checkEntries()
    {
        std::uint64_t done = 0;
        return reader_.each(
            [&](const Row& row) -> Result<void> {
                checkEntry(row);
                constexpr std::uint64_t reportEvery = 256;
                if (++done % reportEvery == 0 && !job_.advance(done, report_.entries)) {
                    return fail(ErrorCode::Cancelled, "check");
                }
                return {};
            },
            "SELECT e.id, e.seq, e.kind, e.subject, e.target, e.at_ms, e.core, e.body, "
            "e.signature, c.device, "
            "c.public_key, c.trusted, "
            "(SELECT p.seq FROM entry AS p WHERE p.id = (SELECT q.id FROM entry AS q WHERE q.d = "
            "e.d AND "
            "q.seq = e.seq - 1 LIMIT 1)) "
            "FROM entry AS e JOIN device_chain AS c USING(d) ORDER BY e.n");
    }

    void checkEntry(const Row& row)
    {
        const auto id = row.id<EntryId>(0);
        const std::string name = "record " + id.hex().substr(0, 8);
        const auto core = ledger::decodeCore(row.blob(6));
        if (!core || sha256(row.blob(6)).bytes().size() != id.bytes().size() ||
            sha256(row.blob(6)).hex() != id.hex()) {
            problem(name, "its bytes are not those it was signed as");
            return;
        }
        const ByteView body = row.blob(7);
        if (sha256(body) != core->bodyHash || body.size() != core->bodyBytes) {
            problem(name, "its body is not the one it was signed with");
        }
        const bool columns =
            core->seq == static_cast<std::uint64_t>(row.integer(1)) && core->kind == row.text(2) &&
            core->subject == row.id<SubjectId>(3) && core->target == row.idIfAny<EntryId>(4) &&
            toMs(core->eventTime()) == row.integer(5) && core->device == row.id<DeviceId>(9) &&
            core->cellar == cellar_.identity().id;
        if (!columns) {
            problem(name, "its row does not agree with its bytes");
        }
        if (core->seq > 1 && row.isNull(12)) {
            problem(name, "the entry before it is missing");
        }
        if (row.isNull(10) || row.integer(11) == 0 ||
            !ledger::verify(row.id<ledger::PublicKey>(10), ledger::signedMessage(core->cellar, id),
                            row.id<ledger::Signature>(8))) {
            problem(name, "its signature does not hold");
        }
    }

    Result<void> checkSetAside()
    {
        SPILE_ASSIGN(standing, ledger::standingOf(reader_));
        std::vector<DeviceId> devices;
        SPILE_TRY(reader_.each(
            [&](const Row& row) {
                devices.push_back(row.id<DeviceId>(0));
                return Result<void>();
            },
            "SELECT device FROM device_chain WHERE trusted = 1"));
        std::vector<std::int64_t> wanted;
        for (const DeviceId& device : devices) {
            SPILE_ASSIGN(rows, ledger::rowsSetAside(reader_, device, standing));
            wanted.insert(wanted.end(), rows.begin(), rows.end());
        }
        std::sort(wanted.begin(), wanted.end());
        std::vector<std::int64_t> present;
        SPILE_TRY(reader_.each(
            [&](const Row& row) {
                present.push_back(row.integer(0));
                return Result<void>();
            },
            "SELECT n FROM set_aside ORDER BY n"));
        if (wanted != present) {
            problem("records set aside", std::to_string(present.size()),
                    "by the records it is " + std::to_string(wanted.size()));
        }
        return {};
    }

    Result<void> checkPhotos()
    {
        return reader_.each(
            [&](const Row& row) -> Result<void> {
                const auto hash = row.id<Sha256>(0);
                if (!cellar_.ledger().photos().read(hash)) {
                    problem("photo " + hash.hex().substr(0, 8), "missing or changed",
                            "take in a day file that has it");
                }
                return job_.advance(0, 0) ? Result<void>() : fail(ErrorCode::Cancelled, "check");
            },
            "SELECT sha256 FROM photo WHERE present = 1");
    }

    // Temporary tables of the reader hide the file's own, so that the state is made anew beside it;
    // on the disk, since it may be larger than the memory.
    Result<void> checkState()
    {
        SPILE_ASSIGN(stored, cellar_.state().root(reader_));
        report_.stateRoot = stored;
        State rebuilt;
        SPILE_ASSIGN(scratch, cellar_.ledger().openReader());
        SPILE_TRY(scratch.run("PRAGMA temp_store=FILE; PRAGMA temp.cache_size=-32768;"));
        SPILE_TRY(scratch.run("BEGIN"));  // else each row is a transaction of its own
        SPILE_TRY(rebuilt.create(scratch, true));
        SPILE_TRY(ledger::replay(scratch, rebuilt));
        SPILE_ASSIGN(fresh, rebuilt.root(scratch));
        if (fresh != stored) {
            problem("state", stored.hex().substr(0, 8),
                    "made anew it is " + fresh.hex().substr(0, 8));
        }
        return {};
    }

    Cellar& cellar_;
    Database& reader_;
    const Job& job_;
    CheckReport report_;
};

}  // namespace

Result<CheckReport> check(Cellar& cellar, const Job& job)
{
    SPILE_ASSIGN(reader, cellar.ledger().openReader());
    return Checking(cellar, reader, job).run();
}

Result<Sha256> stateRoot(Cellar& cellar) { return cellar.state().root(cellar.database()); }

}  // namespace spile::cellar
