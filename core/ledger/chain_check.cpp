#include "core/ledger/chain_check.hpp"

#include "core/ledger/entry_check.hpp"
#include "core/ledger/keys.hpp"

namespace spile::ledger {

namespace {

Error wrongDevice(const DeviceId& device, const char* what)
{
    return {ErrorCode::Damaged, "device " + device.hex().substr(0, 8), what,
            "take in a day file for all from another device"};
}

Result<void> checkKeys(Database& database, std::vector<Error>& wrong)
{
    return database.each(
        [&](const Row& row) {
            const auto device = row.id<DeviceId>(0);
            if (deviceIdOf(row.id<PublicKey>(1)) != device) {
                wrong.push_back(wrongDevice(device, "the key that is kept of it is not its own"));
            }
            return Result<void>();
        },
        "SELECT device, public_key FROM device_chain WHERE public_key IS NOT NULL");
}

Result<void> checkHeads(Database& database, std::vector<Error>& wrong)
{
    return database.each(
        [&](const Row& row) {
            wrong.push_back(
                wrongDevice(row.id<DeviceId>(0), "what is kept as its newest record is not that"));
            return Result<void>();
        },
        "SELECT device FROM device_chain WHERE "
        "(SELECT max(seq) FROM entry WHERE entry.d = device_chain.d) IS NOT "
        "(SELECT max(seq) FROM head WHERE head.d = device_chain.d) "
        "OR EXISTS(SELECT 1 FROM head WHERE head.d = device_chain.d AND NOT EXISTS("
        "SELECT 1 FROM entry WHERE entry.d = head.d AND entry.seq = head.seq AND "
        "entry.id = head.id))");
}

Result<void> checkWaiting(Database& database, std::vector<Error>& wrong, const Job& job)
{
    return database.each(
        [&](const Row& row) -> Result<void> {
            const auto entry = waitingEntry(row);
            if (!entry) {
                wrong.push_back(entry.error());
            }
            return job.advance(0, 0) ? Result<void>() : fail(ErrorCode::Cancelled, "check");
        },
        SPILE_WAITING_ENTRIES "ORDER BY waiting.n");
}

}  // namespace

Result<std::vector<Error>> wrongBesideEntries(Database& database, const Job& job)
{
    std::vector<Error> wrong;
    SPILE_TRY(checkKeys(database, wrong));
    SPILE_TRY(checkHeads(database, wrong));
    SPILE_TRY(checkWaiting(database, wrong, job));
    return wrong;
}

}  // namespace spile::ledger
