#include "core/cellar/checking.hpp"

#include "core/ledger/entry_check.hpp"
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
    void problem(Error error)
    {
        constexpr std::size_t problemsMax = 1000;
        if (report_.problems.size() < problemsMax) {
            report_.problems.push_back(std::move(error));
        }
    }
    void problem(std::string subject, std::string value, std::string limit = {})
    {
        problem({ErrorCode::Damaged, std::move(subject), std::move(value), std::move(limit)});
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

    Result<void> checkEntries()
    {
        std::uint64_t done = 0;
        return reader_.each(
            [&](const Row& row) -> Result<void> {
                for (Error& wrong : ledger::wrongWith(row, cellar_.identity().id)) {
                    problem(std::move(wrong));
                }
                constexpr std::uint64_t reportEvery = 256;
                if (++done % reportEvery == 0 && !job_.advance(done, report_.entries)) {
                    return fail(ErrorCode::Cancelled, "check");
                }
                return {};
            },
            ledger::storedEntries, 0, -1);
    }

    Result<void> checkSetAside()
    {
        auto found = ledger::standingOf(reader_);
        if (!found && ledger::isOfContent(found.error())) {
            problem("records set aside", "it cannot be said which", "mend what is damaged first");
            return {};
        }
        SPILE_ASSIGN(standing, std::move(found));
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
                    report_.spoiltPhotos.push_back(hash);
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
        if (auto made = ledger::replay(scratch, rebuilt); !made) {
            if (!ledger::isOfContent(made.error())) {
                return made;
            }
            problem("state", "it cannot be made anew", "mend what is damaged first");
            return {};
        }
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
