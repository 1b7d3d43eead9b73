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

// Open the cellar, find the device and answer with what `act(cellar, device)` comes to.
template <class Act>
int withDevice(Session& session, const std::string& name, Act act)
{
    const auto answer = [&]() -> Result<Told> {
        SPILE_ASSIGN(cellar, session.open());
        SPILE_ASSIGN(device, findDevice(*cellar, name));
        return act(*cellar, device);
    }();
    if (!answer) {
        return session.refuse(answer.error());
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
        list.push_back(
            {{"id", record.entry.hex()}, {"kind", record.kind}, {"at", toIsoTime(record.at)}});
        lines.push_back({record.entry.hex().substr(0, 16), record.kind, toIsoTime(record.at)});
    }
    return Told{{{"set_aside", count}, {"records", list}},
                counted(count, "record") +
                    " set aside. --all lets them count, --record ID "
                    "some.\n" +
                    (records.empty() ? "" : table(lines))};
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
    return Told{{{"adopted", records.size()}}, counted(records.size(), "record") + " count now.\n"};
}

Result<Told> adoptThem(const Session& session, Cellar& cellar, const DeviceId& device)
{
    SPILE_ASSIGN(count, cellar::countSetAside(cellar.database(), device));
    Session::remark(counted(count, "record") + " set aside.");
    session.doubtClock(cellar);
    SPILE_ASSIGN(adopted, cellar::adoptAll(cellar, device, {}, session.job("adopt")));
    return Told{{{"adopted", adopted}}, counted(adopted, "record") + " count now.\n"};
}

}  // namespace

int cutOff(Session& session, const CutOptions& options)
{
    return withDevice(
        session, options.device, [&](Cellar& cellar, const DeviceId& device) -> Result<Told> {
            session.doubtClock(cellar);
            SPILE_TRY(cellar::cutOff(
                cellar, {.device = device, .lastSeq = options.lastSeq, .reason = options.reason}));
            return Told{{{"device", device.hex()}, {"cut_off", true}},
                        "Cut off. What it records after this is set aside on every device that "
                        "takes in a day file from here; settle shows it. The owner's key lets it "
                        "in again (reinstate).\n"};
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
