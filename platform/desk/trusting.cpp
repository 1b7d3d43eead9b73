// cut-off, adopt, reinstate: a device that is lost, and what it recorded.
#include "core/cellar/acts/trusting.hpp"

#include "core/cellar/acts/settling.hpp"
#include "core/cellar/set_aside.hpp"
#include "platform/desk/commands.hpp"
#include "platform/desk/finding.hpp"
#include "platform/desk/owner_key.hpp"
#include "platform/desk/rows.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace spile::desk {

using cellar::Cellar;
using nlohmann::json;

namespace {

// What an act comes to: the answer in both forms.
struct Told {
    json values;
    std::string text;
};

std::string counting(std::uint64_t records, const char* when)
{
    return counted(records, "record") + (records == 1 ? " counts" : " count") + when + ".\n";
}

// Open the cellar, find the device and answer with what `act(cellar, device)` comes to. What is
// wrong with a device is said of the one that was named.
template <class Act>
int withDevice(Session& session, const std::string& name, Act act)
{
    const auto answer = [&]() -> Result<Told> {
        SPILE_ASSIGN(cellar, session.open());
        SPILE_ASSIGN(device, findDevice(*cellar, name));
        return act(*cellar, device);
    }();
    if (!answer) {
        Error error = answer.error();
        error.value = error.subject == "device" ? name : error.value;
        return session.refuse(error);
    }
    session.answer(answer->values, answer->text);
    return Done;
}

Result<Told> listSetAside(Cellar& cellar, const DeviceId& device)
{
    SPILE_ASSIGN(count, cellar::countSetAside(cellar.database(), device));
    constexpr int most = 200;
    SPILE_ASSIGN(records, cellar::setAsideOf(cellar.database(), device, most));
    json list = json::array();
    std::vector<std::vector<std::string>> lines = {{"id", "kind", "when"}};
    for (const cellar::SetAsideRow& record : records) {
        const std::string at = record.at ? toIsoTime(*record.at) : "damaged here";
        list.push_back({{"id", record.entry.hex()}, {"kind", record.kind}, {"at", at}});
        lines.push_back({record.entry.hex().substr(0, 16), record.kind, at});
    }
    if (records.empty()) {
        return Told{{{"set_aside", count}, {"records", list}}, "Nothing of it is set aside.\n"};
    }
    return Told{{{"set_aside", count}, {"records", list}},
                counted(count, "record") +
                    " set aside. --all lets them count, --record ID "
                    "some.\n" +
                    table(lines)};
}

Result<Told> adoptSome(const Session& session, Cellar& cellar, const DeviceId& device,
                       const std::vector<std::string>& ids)
{
    SPILE_ASSIGN(all, cellar::setAsideOf(cellar.database(), device, -1));
    std::vector<EntryId> records;
    for (const std::string& id : ids) {
        const auto begins = [&](const cellar::SetAsideRow& row) {
            return row.entry.hex().starts_with(id);
        };
        const auto found = std::find_if(all.begin(), all.end(), begins);
        if (found == all.end() || std::count_if(found, all.end(), begins) > 1) {
            return fail(ErrorCode::NotFound, "record", id,
                        found == all.end() ? "adopt DEVICE lists those that are set aside"
                                           : "more than one begins so");
        }
        records.push_back(found->entry);
    }
    session.doubtClock(cellar);
    SPILE_TRY(cellar::adopt(cellar, records));
    return Told{{{"adopted", records.size()}}, counting(records.size(), " now")};
}

Result<Told> adoptThem(const Session& session, Cellar& cellar, const DeviceId& device)
{
    SPILE_ASSIGN(count, cellar::countSetAside(cellar.database(), device));
    Session::remark(counted(count, "record") + " set aside.");
    session.doubtClock(cellar);
    SPILE_ASSIGN(adopted, cellar::adoptAll(cellar, device, {}, session.job("adopt")));
    return Told{{{"adopted", adopted}}, counting(adopted, " now")};
}

}  // namespace

int cutOff(Session& session, const CutOptions& options)
{
    return withDevice(
        session, options.device, [&](Cellar& cellar, const DeviceId& device) -> Result<Told> {
            if (device == cellar.ledger().device()) {
                return fail(ErrorCode::Conflict, "device", options.device,
                            "it is this one: do it at another desk");
            }
            session.doubtClock(cellar);
            SPILE_TRY(cellar::cutOff(
                cellar, {.device = device, .lastSeq = options.lastSeq, .reason = options.reason}));
            return Told{{{"device", device.hex()}, {"cut_off", true}},
                        "Cut off. What it records after this is set aside on every device that "
                        "takes in a day file from here: hand one out. settle shows what comes "
                        "of it, adopt lets that count. The owner's key lets the device in again "
                        "(reinstate).\n"};
        });
}

int adopt(Session& session, const AdoptOptions& options)
{
    return withDevice(session, options.device, [&](Cellar& cellar, const DeviceId& device) {
        if (options.all) {
            return adoptThem(session, cellar, device);
        }
        return options.records.empty() ? listSetAside(cellar, device)
                                       : adoptSome(session, cellar, device, options.records);
    });
}

int reinstate(Session& session, const CutOptions& options)
{
    return withDevice(
        session, options.device, [&](Cellar& cellar, const DeviceId& device) -> Result<Told> {
            SPILE_ASSIGN(owner, ownerKey(session.files(), options.ownerKey));
            if (!owner) {
                return fail(ErrorCode::Malformed, "owner key", "nothing",
                            "the file owner.key, or what stands on the owner's sheet");
            }
            session.doubtClock(cellar);
            SPILE_TRY(cellar::reinstate(cellar, *owner, device, options.reason));
            return Told{{{"device", device.hex()}, {"cut_off", false}},
                        "It belongs again, with all its records.\n"};
        });
}

}  // namespace spile::desk
