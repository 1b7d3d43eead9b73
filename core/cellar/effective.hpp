#pragma once

#include "core/ledger/database.hpp"
#include "core/ledger/entry.hpp"
#include "core/ledger/fields.hpp"

/// What an entry says now, its corrections applied.
namespace spile::cellar {

struct Effective {
    ledger::Fields fields;
    bool amended = false;
    /// Two corrections that did not know of each other disagree; the later one is shown.
    bool twoValues = false;
};

/// Apply the amendments of the entry `id` to its own `fields`.
///
/// For each field the newest writes count: those that no other live amendment of the field has
/// replaced, as its `overwrites` say, directly or through others. Where several are left, the one
/// with the latest (event time, device, seq) is shown. A time later than its own recording counts
/// as the time of recording, so that a date in the future never wins by being one.
[[nodiscard]] Result<Effective> applyAmendments(ledger::Database& database, const EntryId& id,
                                                ledger::Fields fields);

/// Return the amendments that a new one has to name as overwritten: those nobody has replaced yet.
[[nodiscard]] Result<std::vector<EntryId>> newestAmendments(ledger::Database& database,
                                                            const EntryId& id);

/// A value that a field of an entry was corrected to, where others disagree.
struct Rival {
    EntryId amendment;
    std::uint32_t field = 0;
    ledger::Value value;
    DeviceId device;
};
/// The values between which a person has to choose, the one that is shown first before the others.
[[nodiscard]] Result<std::vector<Rival>> rivalsOf(ledger::Database& database, const EntryId& id);

/// Whether a voided entry has a live correction that none of those who voided it knew of.
[[nodiscard]] Result<bool> isCorrectedUnseen(ledger::Database& database, const EntryId& id);

/// Whether a live void entry names `id`.
[[nodiscard]] Result<bool> isVoided(ledger::Database& database, const EntryId& id);

}  // namespace spile::cellar
