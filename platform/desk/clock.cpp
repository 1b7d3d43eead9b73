// clock: what is known of the devices' clocks, and saying what one showed at a moment.
#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/acts/observing.hpp"
#include "core/cellar/queries.hpp"
#include "platform/desk/clock_doubt.hpp"
#include "platform/desk/commands.hpp"
#include "platform/desk/finding.hpp"
#include "platform/desk/rows.hpp"

#include <ctime>

namespace spile::desk {

using nlohmann::json;

namespace {

std::time_t secondsOf(Instant at)
{
    return std::chrono::floor<std::chrono::seconds>(at.time_since_epoch()).count();
}

// "2026-03-14 14:02" in this machine's time zone; none for anything else, or a moment that its
// calendar does not have.
std::optional<Instant> fromLocal(const std::string& typed)
{
    constexpr std::size_t length = 16;
    constexpr std::size_t blank = 10;
    if (typed.size() != length || typed[blank] != ' ') {
        return std::nullopt;
    }
    const auto asUtc = fromIso(typed.substr(0, blank) + "T" + typed.substr(blank + 1) + "Z");
    if (!asUtc) {
        return std::nullopt;
    }
    const std::time_t utc = secondsOf(*asUtc);
    std::tm wanted{};
    gmtime_r(&utc, &wanted);
    std::tm local = wanted;
    local.tm_isdst = -1;
    const std::time_t at = std::mktime(&local);
    const bool there = local.tm_hour == wanted.tm_hour && local.tm_min == wanted.tm_min;
    return there ? std::optional(Instant(std::chrono::seconds(at))) : std::nullopt;
}

Result<Instant> timeTyped(const std::string& option, const std::string& typed)
{
    const auto at = fromLocal(typed);
    return at ? Result<Instant>(*at)
              : fail(ErrorCode::Malformed, option, typed,
                     "a time in this machine's zone, as \"2026-03-14 14:02\"");
}

ledger::EventTime withZone(Instant at)
{
    const std::time_t seconds = secondsOf(at);
    std::tm local{};
    localtime_r(&seconds, &local);
    constexpr long secondsPerMinute = 60;
    return {at, static_cast<int>(local.tm_gmtoff / secondsPerMinute)};
}

double inSeconds(Milliseconds time) { return std::chrono::duration<double>(time).count(); }

std::string doubtText(const cellar::ClockDoubt& doubt)
{
    std::string text;
    for (const SaidDoubt& said : doubtsSaid(doubt)) {
        text += said.says + (said.remedy.empty() ? "" : " " + said.remedy) + "\n";
    }
    return text;
}

json jsonOf(const cellar::ClockDoubt& doubt)
{
    json made = json::object();
    if (doubt.behindOwn) {
        made["behind_own_record_at"] = toIsoTime(*doubt.behindOwn);
    }
    if (doubt.jumped) {
        made["jumped_s"] = inSeconds(*doubt.jumped);
    }
    if (doubt.ahead) {
        made["ahead"] = {{"device", doubt.ahead->name},
                         {"id", doubt.ahead->device.hex()},
                         {"recorded", toIsoTime(doubt.ahead->recorded)}};
    }
    return made;
}

struct Listed {
    json list = json::array();
    std::vector<std::vector<std::string>> lines = {
        {"device", "newest record by its clock", "truly", "its clock was"}};
};

void add(Listed& all, const cellar::NamedRow& row, const cellar::DeviceClock& clock)
{
    json made = {{"device", row.name},
                 {"id", row.subject.hex()},
                 {"newest", toIsoTime(clock.newest)},
                 {"truly", json()},
                 {"off_s", json()}};
    std::vector<std::string> line = {row.name, toIsoTime(clock.newest), "", ""};
    if (clock.truly) {
        const Milliseconds off = clock.newest - *clock.truly;
        made["truly"] = line[2] = toIsoTime(*clock.truly);
        made["off_s"] = inSeconds(off);
        line[3] = span(off) + (off.count() < 0 ? " behind" : " ahead");
    }
    all.list.push_back(std::move(made));
    all.lines.push_back(std::move(line));
}

// Of all devices, or of `only` one.
Result<Listed> listed(cellar::Cellar& cellar, const std::optional<DeviceId>& only)
{
    constexpr int page = 200;
    Listed all;
    SubjectId after;
    for (bool more = true; more;) {
        SPILE_ASSIGN(named, cellar::named(cellar.database(), "device", after, page));
        more = named.size() == page;
        for (const cellar::NamedRow& row : named) {
            after = row.subject;
            const DeviceId device = *DeviceId::fromBytes(row.subject.bytes());
            if (only && *only != device) {
                continue;
            }
            SPILE_ASSIGN(clock, cellar::clockOfDevice(cellar.database(), device));
            if (clock) {
                add(all, row, *clock);
            }
        }
    }
    return all;
}

int list(const Session& session, cellar::Cellar& cellar, const std::string& name)
{
    std::optional<DeviceId> only;
    if (!name.empty()) {
        const auto device = findDevice(cellar, name);
        if (!device) {
            return session.refuse(device.error());
        }
        only = *device;
    }
    const auto all = listed(cellar, only);
    if (!all) {
        return session.refuse(all.error());
    }
    const auto doubt = cellar::clockDoubt(cellar.database(), session.clock());
    if (!doubt) {
        return session.refuse(doubt.error());
    }
    const std::string said = doubtText(*doubt);
    session.answer({{"clocks", all->list}, {"doubts", jsonOf(*doubt)}},
                   (all->list.empty() ? "Nothing was recorded yet.\n" : table(all->lines)) +
                       (said.empty() ? "" : "\n" + said));
    return Done;
}

// Which device is meant: the one that was named, or this one.
Result<DeviceId> meant(cellar::Cellar& cellar, const ClockOptions& options)
{
    return options.device.empty() ? Result<DeviceId>(cellar.ledger().device())
                                  : findDevice(cellar, options.device);
}

Result<EntryId> say(const Session& session, cellar::Cellar& cellar, const ClockOptions& options)
{
    SPILE_ASSIGN(device, meant(cellar, options));
    if (options.takeBack) {
        SPILE_ASSIGN(clock, cellar::clockOfDevice(cellar.database(), device));
        if (!clock || !clock->valid) {
            return fail(ErrorCode::NotFound, "clock", device.hex().substr(0, 8),
                        "one that was said to be wrong since its last start");
        }
        return cellar::voidEntry(cellar, *clock->valid);
    }
    if (!options.right.empty()) {
        if (device != cellar.ledger().device()) {
            return fail(ErrorCode::Malformed, "--right", options.device,
                        "this machine's own clock; another's is said with --shows");
        }
        SPILE_ASSIGN(right, timeTyped("--right", options.right));
        return cellar::observeOwnClock(cellar, withZone(right));
    }
    SPILE_ASSIGN(shown, timeTyped("--shows", options.shows));
    session.doubtClock(cellar);
    return cellar::observeClock(cellar, device, shown, withZone(session.clock().now()));
}

}  // namespace

int clock(Session& session, const ClockOptions& options)
{
    auto cellar = session.open();
    if (!cellar) {
        return session.refuse(cellar.error());
    }
    if (!options.takeBack && options.right.empty() && options.shows.empty()) {
        return list(session, **cellar, options.device);
    }
    const auto said = say(session, **cellar, options);
    if (!said) {
        return session.refuse(said.error());
    }
    session.answer({{"record", said->hex()}, {"taken_back", options.takeBack}},
                   options.takeBack
                       ? "Taken back. Its records have the times of its clock again.\n"
                       : "Recorded. What was recorded since that device's last start has its true "
                         "time now; --take-back undoes it.\n");
    return Done;
}

}  // namespace spile::desk
