// show devices: who belongs to the cellar.
#include "core/cellar/devices.hpp"

#include "core/cellar/clocks.hpp"
#include "platform/desk/commands.hpp"
#include "platform/desk/rows.hpp"

namespace spile::desk {

using nlohmann::json;

namespace {

const char* standingOf(const ledger::Membership& membership)
{
    if (membership.cutOff) {
        return "cut off";
    }
    if (!membership.admitted) {
        return "not admitted";
    }
    return membership.mayAdmit ? "desk" : "phone";
}

}  // namespace

int showDevices(const Session& session, cellar::Cellar& cellar)
{
    const auto devices = cellar::devicesOf(cellar.database());
    if (!devices) {
        return session.refuse(devices.error());
    }
    json list = json::array();
    std::vector<std::vector<std::string>> lines = {
        {"id", "name", "standing", "newest record by its clock"}};
    for (const cellar::DeviceRow& device : devices->rows) {
        const auto clock = cellar::clockOfDevice(cellar.database(), device.device);
        if (!clock) {
            return session.refuse(clock.error());
        }
        const std::string newest = *clock ? toIsoTime((*clock)->newest) : "";
        const std::string standing = standingOf(device.membership);
        list.push_back({{"id", device.device.hex()},
                        {"name", device.name},
                        {"standing", standing},
                        {"own", device.own},
                        {"newest", newest.empty() ? json() : json(newest)}});
        lines.push_back({device.device.hex(), device.name,
                         standing + (device.own ? ", this one" : ""), newest});
    }
    session.answer(list, table(lines));
    return Done;
}

}  // namespace spile::desk
