#include "core/cellar/acts/packing.hpp"

#include "core/cellar/acts/lots.hpp"
#include "core/cellar/lot_query_text.hpp"
#include "core/cellar/lots.hpp"
#include "core/units/scaled.hpp"

#include <algorithm>

namespace spile::cellar {

namespace {

Result<ledger::List> packageRows(const std::vector<PackageCount>& packages)
{
    ledger::List rows;
    rows.reserve(packages.size());
    for (const PackageCount& package : packages) {
        SPILE_ASSIGN(ml, toMl(package.content));
        rows.emplace_back(ledger::List{ledger::Value(package.package), ledger::Value(ml),
                                       ledger::Value(package.count)});
    }
    return rows;
}

Result<void> needNoHold(Cellar& cellar, const SubjectId& lot)
{
    SPILE_ASSIGN(holds, openHoldsOf(cellar.database(), lot));
    if (!holds.empty()) {
        return fail(ErrorCode::Conflict, "hold", holds.front().reason, "its result first");
    }
    return {};
}

Result<void> needOwnCode(Cellar& cellar, const NewPackage& package)
{
    SPILE_ASSIGN(taken, cellar.database().integer(0, query_text::isLotCodeTaken, package.lotCode));
    if (taken != 0) {
        return fail(ErrorCode::Conflict, "lot_code", package.lotCode,
                    "one that is on no other packages");
    }
    return {};
}

}  // namespace

Volume contentOf(const std::vector<PackageCount>& packages)
{
    Volume sum{};
    for (const PackageCount& package : packages) {
        sum = sum + static_cast<double>(package.count) * package.content;
    }
    return sum;
}

Result<ledger::NewEntry> packageEntry(Cellar& cellar, const NewPackage& package)
{
    SPILE_TRY(needSubject(cellar, "lot", package.lot));
    SPILE_TRY(needPerson(cellar, package.circumstance));
    SPILE_TRY(needNoHold(cellar, package.lot));
    SPILE_TRY(needOwnCode(cellar, package));
    FieldSet fields(package.circumstance);
    fields.setText(Field::LotCode, package.lotCode);
    SPILE_ASSIGN(rows, packageRows(package.packages));
    fields.set(Field::Packages, std::move(rows));
    SPILE_TRY(fields.setVolume(Field::VolumeMl, contentOf(package.packages)));
    SPILE_TRY(fields.setVolume(Field::LostMl, package.lost));
    SPILE_TRY(fields.setScaled(Field::AbvE2, package.alcoholByVolume, 1e4));
    SPILE_TRY(fields.setScaled(Field::LabelAbvE2, package.labelStrength, 1e4));
    fields.setText(Field::Law, package.law);
    SPILE_TRY(fields.setScaled(Field::Co2E2, package.co2Volumes, 1e2));
    if (package.bestBefore) {
        fields.set(Field::BestBeforeMs, toMs(*package.bestBefore));
    }
    SPILE_ASSIGN(entry,
                 newEntry("package", package.lot, std::move(fields), package.circumstance.at));
    SPILE_ASSIGN(mix, mixOf(cellar, package.lot));
    entry.target = mix;
    return std::move(entry);
}

Result<EntryId> recordPackage(Cellar& cellar, const NewPackage& package)
{
    return recordOne(cellar, packageEntry(cellar, package));
}

Result<EntryId> recordHold(Cellar& cellar, const SubjectId& lot, const std::string& reason,
                           const Circumstance& circumstance)
{
    SPILE_TRY(needSubject(cellar, "lot", lot));
    SPILE_TRY(needPerson(cellar, circumstance));
    FieldSet fields(circumstance);
    fields.setText(Field::Reason, reason);
    return recordOne(cellar, newEntry("hold", lot, std::move(fields), circumstance.at));
}

Result<EntryId> recordClear(Cellar& cellar, const EntryId& hold, const std::string& outcome,
                            const Circumstance& circumstance)
{
    SPILE_TRY(needPerson(cellar, circumstance));
    SPILE_ASSIGN(lot, cellar.database().first(
                          [](const ledger::Row& row) { return row.id<SubjectId>(0); },
                          "SELECT subject FROM state_hold WHERE entry = ? AND voided = 0", hold));
    if (!lot) {
        return fail(ErrorCode::NotFound, "hold", hold.hex(), "one that is recorded");
    }
    SPILE_ASSIGN(open, openHoldsOf(cellar.database(), *lot));
    if (std::none_of(open.begin(), open.end(),
                     [&](const HoldRow& row) { return row.entry == hold; })) {
        return fail(ErrorCode::Conflict, "hold", "its result is recorded already", "another");
    }
    FieldSet fields(circumstance);
    fields.setText(Field::Outcome, outcome);
    SPILE_ASSIGN(entry, newEntry("clear", *lot, std::move(fields), circumstance.at));
    entry.target = hold;
    return recordOne(cellar, std::move(entry));
}

Result<EntryId> recordRelease(Cellar& cellar, const NewRelease& release)
{
    SPILE_TRY(needPerson(cellar, release.circumstance));
    SPILE_ASSIGN(package, packagedBy(cellar.database(), release.package));
    if (!package) {
        return fail(ErrorCode::NotFound, "package", release.package.hex(),
                    "packages that are recorded");
    }
    SPILE_TRY(needNoHold(cellar, package->lot));
    for (const PackageCount& wanted : release.packages) {
        const auto left =
            std::find_if(package->left.begin(), package->left.end(), [&](const PackageCount& one) {
                return one.package == wanted.package && one.content == wanted.content;
            });
        if (left == package->left.end() || left->count < wanted.count) {
            return fail(ErrorCode::OutOfRange, wanted.package, std::to_string(wanted.count),
                        "at most " + std::to_string(left == package->left.end() ? 0 : left->count));
        }
    }
    FieldSet fields(release.circumstance);
    fields.setText(Field::Name, release.to);
    SPILE_ASSIGN(rows, packageRows(release.packages));
    fields.set(Field::Packages, std::move(rows));
    SPILE_ASSIGN(entry,
                 newEntry("release", package->lot, std::move(fields), release.circumstance.at));
    entry.target = release.package;
    return recordOne(cellar, std::move(entry));
}

}  // namespace spile::cellar
