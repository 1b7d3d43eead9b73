#include "core/cellar/acts/trusting.hpp"

#include "core/cellar/true_time.hpp"
#include "core/ledger/entry_number.hpp"
#include "core/ledger/trust.hpp"

#include <algorithm>
#include <set>

namespace spile::cellar {

using ledger::Row;

namespace {

Result<void> needMayAdmit(Cellar& cellar, const char* what)
{
    SPILE_ASSIGN(membership, ledger::membershipOf(cellar.database(), cellar.ledger().device()));
    if (!membership.mayAdmit) {
        return fail(ErrorCode::Conflict, what, "this device may not", "do it at a desk");
    }
    return {};
}

SubjectId subjectOf(const DeviceId& device) { return *SubjectId::fromBytes(device.bytes()); }

ledger::Value pointValue(const ledger::ChainPoint& point)
{
    const ByteView id = point.entry.bytes();
    return ledger::List{ledger::Value(static_cast<std::int64_t>(point.seq)),
                        ledger::Value(Bytes(id.begin(), id.end()))};
}

// The last records that count: the heads of all branches, or the one of a number.
Result<std::vector<ledger::ChainPoint>> pointsLeft(Cellar& cellar, const NewCut& cut)
{
    std::vector<ledger::ChainPoint> points;
    const auto add = [&](const Row& row) {
        points.push_back({static_cast<std::uint64_t>(row.integer(0)), row.id<EntryId>(1)});
        return Result<void>();
    };
    if (!cut.lastSeq) {
        SPILE_TRY(cellar.database().each(
            add, "SELECT seq, id FROM head JOIN device_chain USING(d) WHERE device = ?",
            cut.device));
    } else if (*cut.lastSeq > 0) {
        SPILE_TRY(cellar.database().each(
            add,
            "SELECT seq, id FROM entry JOIN device_chain USING(d) WHERE device = ? AND seq = ?",
            cut.device, static_cast<std::int64_t>(*cut.lastSeq)));
        if (points.empty()) {
            return fail(ErrorCode::Conflict, "device",
                        "it has no record " + std::to_string(*cut.lastSeq),
                        "the number of one that is here");
        }
    }
    return points;
}

// When the first of the cuts that act was made: of those that the owner has not lifted.
Result<Instant> cutSince(ledger::Database& database, const DeviceId& owner, const DeviceId& device)
{
    std::vector<ledger::Entry> cuts;
    std::vector<EntryId> ids;
    std::set<EntryId> lifted;
    SPILE_TRY(database.each(
        [&](const Row& row) -> Result<void> {
            SPILE_ASSIGN(core, ledger::decodeCore(row.blob(1)));
            if (core.kind == ledger::cutOffKind) {
                ids.push_back(row.id<EntryId>(0));
                cuts.push_back(std::move(core));
            } else if (core.device == owner) {
                lifted.insert(core.overwrites.begin(), core.overwrites.end());
            }
            return {};
        },
        "SELECT id, core FROM entry INDEXED BY entry_trust WHERE kind IN ('adopt', 'cut_off', "
        "'device', 'reinstate') AND kind IN ('cut_off', 'reinstate') AND subject = ?",
        subjectOf(device)));
    std::optional<Instant> since;
    for (std::size_t i = 0; i < cuts.size(); ++i) {
        if (!lifted.contains(ids[i])) {
            SPILE_ASSIGN(times, countedTimes(database, cuts[i]));
            since = since ? std::min(*since, times.at) : times.at;
        }
    }
    return since.value_or(Instant());
}

std::uint64_t lastOf(const std::vector<ledger::ChainPoint>& points)
{
    std::uint64_t last = 0;
    for (const ledger::ChainPoint& point : points) {
        last = std::max(last, point.seq);
    }
    return last;
}

// Whether a cut that leaves `points` sets more aside than those before it: of what is here, or, by
// the number of its last record, of what may still come.
Result<bool> cutsMore(ledger::Database& database, ledger::Standing standing, const DeviceId& device,
                      const std::vector<ledger::ChainPoint>& points)
{
    auto& cuts = standing.cuts[device];
    const bool earlier = std::all_of(cuts.begin(), cuts.end(), [&](const auto& before) {
        return lastOf(points) < lastOf(before);
    });
    if (earlier) {  // so it is too if there was none
        return true;
    }
    SPILE_ASSIGN(before, ledger::rowsSetAside(database, device, standing));
    cuts.push_back(points);
    SPILE_ASSIGN(after, ledger::rowsSetAside(database, device, standing));
    return after.size() > before.size();
}

Result<void> needCutsMore(Cellar& cellar, const DeviceId& device,
                          const std::vector<ledger::ChainPoint>& points)
{
    ledger::Database& database = cellar.database();
    SPILE_ASSIGN(standing, ledger::standingOf(database));
    SPILE_ASSIGN(more, cutsMore(database, std::move(standing), device, points));
    if (more) {
        return {};
    }
    const DeviceId owner = *DeviceId::fromBytes(cellar.identity().id.bytes());
    SPILE_ASSIGN(since, cutSince(database, owner, device));
    return fail(ErrorCode::Conflict, "device", device.hex().substr(0, 8),
                "it is cut off already, since " + toIsoTime(since) +
                    "; only a cut at an earlier record would set more aside");
}

}  // namespace

Result<EntryId> cutOff(Cellar& cellar, const NewCut& cut)
{
    SPILE_TRY(needMayAdmit(cellar, "cut off"));
    SPILE_ASSIGN(known, cellar.database().integer(0, "SELECT 1 FROM device_chain WHERE device = ?",
                                                  cut.device));
    const std::string name = cut.device.hex().substr(0, 8);
    if (known == 0) {
        return fail(ErrorCode::NotFound, "device", name, "one that is in the cellar");
    }
    if (cut.device == cellar.ledger().device() ||
        cut.device == *DeviceId::fromBytes(cellar.identity().id.bytes())) {
        return fail(ErrorCode::Conflict, "device", name,
                    "another device than this one or the owner's key");
    }
    SPILE_ASSIGN(points, pointsLeft(cellar, cut));
    SPILE_TRY(needCutsMore(cellar, cut.device, points));
    FieldSet fields;
    if (!points.empty()) {
        ledger::List rows;
        std::transform(points.begin(), points.end(), std::back_inserter(rows), pointValue);
        fields.set(Field::ChainPoints, std::move(rows));
    }
    fields.setText(Field::Reason, cut.reason);
    fields.setIfAny(Field::Person, cut.person);
    return recordOne(cellar,
                     newEntry(ledger::cutOffKind, subjectOf(cut.device), std::move(fields)));
}

Result<std::vector<EntryId>> adopt(Cellar& cellar, const std::vector<EntryId>& entries,
                                   const std::optional<SubjectId>& person)
{
    SPILE_TRY(needMayAdmit(cellar, "adopt"));
    std::vector<ledger::NewEntry> made;
    for (const EntryId& id : entries) {
        SPILE_ASSIGN(
            subject,
            cellar.database().first(
                [](const Row& row) { return row.id<SubjectId>(0); },
                "SELECT subject FROM entry JOIN set_aside USING(n) WHERE n = " SPILE_ENTRY_NUMBER(
                    "?1"),
                id));
        if (!subject) {
            return fail(ErrorCode::NotFound, "record", id.hex().substr(0, 8),
                        "one that is set aside");
        }
        FieldSet fields;
        fields.setIfAny(Field::Person, person);
        SPILE_ASSIGN(entry, newEntry(ledger::adoptKind, *subject, std::move(fields)));
        entry.target = id;
        made.push_back(std::move(entry));
    }
    SPILE_ASSIGN(change, cellar.ledger().change());
    std::vector<EntryId> ids;
    for (ledger::NewEntry& entry : made) {
        SPILE_ASSIGN(id, change.record(std::move(entry)));
        ids.push_back(id);
    }
    SPILE_TRY(change.commit());
    return ids;
}

Result<void> reinstate(Cellar& cellar, const ledger::SigningKey& owner, const DeviceId& device,
                       const std::string& reason)
{
    std::vector<EntryId> cuts;
    SPILE_TRY(cellar.database().each(
        [&](const Row& row) {
            cuts.push_back(row.id<EntryId>(0));
            return Result<void>();
        },
        "SELECT id FROM entry INDEXED BY entry_trust WHERE kind IN ('adopt', 'cut_off', 'device', "
        "'reinstate') AND kind = 'cut_off' AND subject = ? ORDER BY id",
        subjectOf(device)));
    SPILE_ASSIGN(standing, ledger::standingOf(cellar.database()));
    if (!standing.cuts.contains(device)) {
        return fail(ErrorCode::Conflict, "device", device.hex().substr(0, 8),
                    "one that is cut off");
    }
    std::vector<ledger::NewEntry> made;
    for (std::size_t at = 0; at < cuts.size(); at += ledger::overwritesMax) {
        FieldSet fields;
        fields.setText(Field::Reason, reason);
        SPILE_ASSIGN(entry, newEntry(ledger::reinstateKind, subjectOf(device), std::move(fields)));
        const std::size_t end = std::min(cuts.size(), at + ledger::overwritesMax);
        entry.overwrites.assign(cuts.begin() + static_cast<std::ptrdiff_t>(at),
                                cuts.begin() + static_cast<std::ptrdiff_t>(end));
        made.push_back(std::move(entry));
    }
    SPILE_ASSIGN(change, cellar.ledger().change());
    SPILE_TRY(change.recordAsOwner(owner, std::move(made)));
    return change.commit();
}

}  // namespace spile::cellar
