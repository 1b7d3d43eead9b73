#pragma once

#include "core/cellar/acts/act.hpp"

/// Acts that correct what was recorded. The entry itself stays; what it says changes.
namespace spile::cellar {

/// Let the entry `target` say `fields` instead; a field set to null is taken out. What this device
/// knows of earlier corrections is replaced.
///
/// Errors    besides those of every act: NotFound if there is no such entry; Malformed if its kind
///           cannot be corrected or has no such field.
[[nodiscard]] Result<EntryId> amend(Cellar& cellar, const EntryId& target,
                                    const ledger::Fields& fields);

/// Make the entry of amend(), to record it together with others.
[[nodiscard]] Result<ledger::NewEntry> amendment(Cellar& cellar, const EntryId& target,
                                                 const ledger::Fields& fields);

/// Whether voidEntry() takes back an entry of that kind.
[[nodiscard]] bool mayVoid(std::string_view kind);

/// Let the entry `target` not count; voiding that void entry lets it count again.
///
/// Errors    NotFound if there is no such entry; Conflict if its kind is not taken back.
[[nodiscard]] Result<EntryId> voidEntry(Cellar& cellar, const EntryId& target);

}  // namespace spile::cellar
