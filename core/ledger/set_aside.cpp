#include "core/ledger/set_aside.hpp"

#include <algorithm>
#include <functional>

namespace spile::ledger {

Result<bool> SetAside::limits(std::int64_t d)
{
    if (!limited_) {
        limited_.emplace();
        SPILE_TRY(database_.each(
            [&](const Row& row) {
                limited_->insert(row.integer(0));
                return Result<void>();
            },
            "SELECT d FROM device_chain WHERE limited = 1"));
    }
    return limited_->contains(d);
}

Result<void> SetAside::holdBack(std::int64_t n, std::int64_t d)
{
    changed_ = true;
    return database_.execute("INSERT INTO set_aside(n, d) VALUES(?, ?)", n, d);
}

Result<std::vector<SetAside::Device>> SetAside::devices()
{
    std::vector<Device> all;
    SPILE_TRY(database_.each(
        [&](const Row& row) {
            all.push_back({row.integer(0), row.id<DeviceId>(1), row.integer(2) != 0});
            return Result<void>();
        },
        "SELECT d, device, limited FROM device_chain WHERE trusted = 1 ORDER BY d"));
    return all;
}

Result<void> SetAside::mark(const Device& device, bool limited)
{
    limited_.reset();
    return limited == device.limited
               ? Result<void>()
               : database_.execute("UPDATE device_chain SET limited = ? WHERE d = ?",
                                   limited ? 1 : 0, device.d);
}

Result<void> SetAside::settle()
{
    if (!changed_) {
        return {};
    }
    SPILE_ASSIGN(standing, standingOf(database_));
    SPILE_ASSIGN(all, devices());
    for (const Device& device : all) {
        const bool limited = standing.limits(device.device);
        // All of them: a branch that comes can take away what admitted another device.
        if (limited || device.limited) {
            SPILE_TRY(settleDevice(device, standing));
            SPILE_TRY(mark(device, limited));
        }
    }
    changed_ = false;
    return {};
}

Result<void> SetAside::settleDevice(const Device& device, const Standing& standing)
{
    SPILE_ASSIGN(wanted, rowsSetAside(database_, device.device, standing));
    std::vector<std::int64_t> present;
    SPILE_TRY(database_.each(
        [&](const Row& row) {
            present.push_back(row.integer(0));
            return Result<void>();
        },
        "SELECT n FROM set_aside WHERE d = ? ORDER BY n", device.d));
    std::vector<std::int64_t> fresh;
    std::vector<std::int64_t> freed;
    std::set_difference(wanted.begin(), wanted.end(), present.begin(), present.end(),
                        std::back_inserter(fresh));
    std::set_difference(present.begin(), present.end(), wanted.begin(), wanted.end(),
                        std::back_inserter(freed));
    for (const std::int64_t n : fresh) {
        SPILE_TRY(withdraw(n, device.d));
    }
    for (const std::int64_t n : freed) {
        SPILE_TRY(release(n));
    }
    return {};
}

// Gives `use` the entry in row `n`, unless it is damaged: when it is mended, all is made anew.
static Result<void> withEntry(Database& database, std::int64_t n,
                              const std::function<Result<void>(const CountedEntry&)>& use)
{
    struct Stored {
        EntryId id;
        Bytes core, body;
    };
    SPILE_ASSIGN(found, database.first(
                            [](const Row& row) {
                                const ByteView core = row.blob(1);
                                const ByteView body = row.blob(2);
                                return Stored{row.id<EntryId>(0), Bytes(core.begin(), core.end()),
                                              Bytes(body.begin(), body.end())};
                            },
                            "SELECT id, core, body FROM entry WHERE n = ?", n));
    if (!found) {
        return fail(ErrorCode::Damaged, "ledger.db", "a record that is set aside is missing");
    }
    auto core = decodeCore(found->core);
    return core ? use(CountedEntry{n, found->id, std::move(*core), found->body}) : Result<void>();
}

Result<void> SetAside::withdraw(std::int64_t n, std::int64_t d)
{
    SPILE_TRY(database_.execute("INSERT INTO set_aside(n, d) VALUES(?, ?)", n, d));
    return withEntry(database_, n, [&](const CountedEntry& entry) {
        return projection_.withdraw(database_, entry);
    });
}

Result<void> SetAside::release(std::int64_t n)
{
    SPILE_TRY(database_.execute("DELETE FROM set_aside WHERE n = ?", n));
    return withEntry(database_, n, [&](const CountedEntry& entry) {
        return projection_.apply(database_, entry);
    });
}

Result<void> SetAside::renew()
{
    SPILE_TRY(database_.execute("DELETE FROM set_aside"));
    SPILE_ASSIGN(standing, standingOf(database_));
    SPILE_ASSIGN(all, devices());
    for (const Device& device : all) {
        SPILE_TRY(mark(device, standing.limits(device.device)));
        SPILE_ASSIGN(rows, rowsSetAside(database_, device.device, standing));
        for (const std::int64_t n : rows) {
            SPILE_TRY(database_.execute("INSERT INTO set_aside(n, d) VALUES(?, ?)", n, device.d));
        }
    }
    return {};
}

void SetAside::forget()
{
    limited_.reset();
    changed_ = false;
}

}  // namespace spile::ledger
