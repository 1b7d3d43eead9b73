#pragma once

#include "core/base/job.hpp"
#include "core/ledger/bundle_reader.hpp"
#include "core/ledger/ledger.hpp"

/// Stored entries that have changed on the disk are replaced by the bytes that another device has.
namespace spile::ledger {

/// Rows of `meta` that say that something stored is damaged: found by the round of verifying that
/// runs, and by the last whole one.
inline constexpr std::string_view damageFound = "verified found";
inline constexpr std::string_view damageFoundBefore = "verified found before";

/// Whether damage has been noted, so that it is worth to look for good bytes.
[[nodiscard]] Result<bool> isDamaged(Database& database);

/// If damage has been noted, verify all entries, make the indices anew and replace what is damaged
/// by what `bundle` has of it; then make the state anew and forget the note if nothing is left.
/// Return how many entries were replaced; all of them are in one transaction, and none is open when
/// `job` lets other work run. Requires `bundle` to be verified.
///
/// Errors    Cancelled; those of Database.
[[nodiscard]] Result<std::uint64_t> mend(Ledger& ledger, BundleReader& bundle, const Job& job);

}  // namespace spile::ledger
