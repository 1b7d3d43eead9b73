#include "core/cellar/acts/windows.hpp"

#include "core/cellar/acts/correcting.hpp"
#include "core/cellar/queries.hpp"
#include "core/cellar/query_text.hpp"

#include <algorithm>
#include <set>

namespace spile::cellar {

using ledger::Row;

namespace {

struct OwnBatch {
    EntryId entry;
    std::string name;
    std::optional<SubjectId> target;
};

Result<OwnBatch> needBatch(Cellar& cellar, const SubjectId& batch)
{
    SPILE_ASSIGN(
        found, cellar.database().first(
                   [](const Row& row) {
                       return OwnBatch{row.id<EntryId>(0), row.text(1), row.idIfAny<SubjectId>(2)};
                   },
                   query_text::targetOfBatch, batch));
    if (!found) {
        return fail(ErrorCode::NotFound, "batch", batch.hex(), "one that is registered");
    }
    return std::move(*found);
}

// The target's own entry; none if the batch has no target, or one that is not known here.
Result<std::optional<EntryId>> entryOf(Cellar& cellar, const std::optional<SubjectId>& target)
{
    return cellar.database().first([](const Row& row) { return row.id<EntryId>(0); },
                                   query_text::entryOfTarget, target);
}

Result<void> needEachOnce(const std::vector<Window>& windows)
{
    std::set<std::string> attributes;
    for (const Window& window : windows) {
        if (!attributes.insert(window.attribute).second) {
            return fail(ErrorCode::Conflict, "window of " + window.attribute, "two",
                        "one for each attribute");
        }
    }
    return {};
}

}  // namespace

Result<void> setWindows(Cellar& cellar, const SubjectId& batch, const std::vector<Window>& windows)
{
    SPILE_ASSIGN(own, needBatch(cellar, batch));
    SPILE_TRY(needEachOnce(windows));
    SPILE_ASSIGN(before, windowsOfBatch(cellar.database(), batch));
    if (before == windows) {
        return {};
    }
    SPILE_ASSIGN(rows, windowRows(windows));
    SPILE_ASSIGN(known, entryOf(cellar, own.target));
    FieldSet fields;
    fields.set(Field::Windows, std::move(rows));
    if (known) {
        SPILE_TRY(amend(cellar, *known, fields.take()));
        return {};
    }
    fields.setText(Field::Name, own.name);
    const SubjectId target = cellar.outside().ids.next();
    SPILE_ASSIGN(made, newEntry("target", target, std::move(fields)));
    FieldSet points;
    points.set(Field::Target, target);
    SPILE_ASSIGN(pointing, amendment(cellar, own.entry, points.take()));
    SPILE_ASSIGN(change, cellar.ledger().change());
    std::vector<ledger::NewEntry> both;
    both.push_back(std::move(made));
    both.push_back(std::move(pointing));
    SPILE_TRY(change.recordGroup(std::move(both)));
    return change.commit();
}

}  // namespace spile::cellar
