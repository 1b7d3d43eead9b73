#include "core/cellar/devices.hpp"

#include "core/cellar/folding.hpp"
#include "core/cellar/queries.hpp"

#include <algorithm>

namespace spile::cellar {

const DeviceRow* Devices::find(const DeviceId& device) const
{
    const auto found = std::find_if(rows.begin(), rows.end(),
                                    [&](const DeviceRow& row) { return row.device == device; });
    return found == rows.end() ? nullptr : &*found;
}

std::vector<std::string> Devices::admitters() const
{
    std::vector<std::string> names;
    for (const DeviceRow& row : rows) {
        if (row.membership.mayAdmit) {
            names.push_back(row.name);
        }
    }
    return names;
}

Result<Devices> devicesOf(ledger::Database& database)
{
    Devices devices;
    SPILE_ASSIGN(own, database.first([](const ledger::Row& row) { return row.id<DeviceId>(0); },
                                     "SELECT value FROM meta WHERE key = 'device'"));
    devices.own = own.value_or(DeviceId());
    SPILE_ASSIGN(standing, ledger::standingOf(database));
    devices.ownStands = standing.membershipOf(devices.own);
    constexpr int page = 200;
    SubjectId after;
    for (bool more = true; more;) {
        SPILE_ASSIGN(some, named(database, "device", after, page));
        more = some.size() == page;
        for (NamedRow& row : some) {
            after = row.subject;
            const DeviceId id = *DeviceId::fromBytes(row.subject.bytes());
            devices.rows.push_back(
                {id, std::move(row.name), standing.membershipOf(id), id == devices.own});
        }
    }
    std::stable_sort(devices.rows.begin(), devices.rows.end(),
                     [](const DeviceRow& a, const DeviceRow& b) {
                         return naturalKey(a.name, {}) < naturalKey(b.name, {});
                     });
    return devices;
}

}  // namespace spile::cellar
