#pragma once

#include "core/cellar/checking.hpp"

#include <optional>
#include <string>
#include <vector>

/// All that is stored is verified again, part by part, round after round: a bit that flips on the
/// disk is noticed while other devices still have what it spoilt. check() does all of it at once.
namespace spile::cellar {

/// How far the present round is, and how the last one ended. Kept with the records.
struct Round {
    std::int64_t entry = 0;                 // the last row of table entry that was verified
    std::optional<Sha256> photo;            // the last photo, once the entries are done
    std::string found;                      // the first thing that is wrong; empty: nothing so far
    std::optional<Instant> wholeAt;         // when the last whole round ended
    std::string foundBefore;                // what that one found first
    std::vector<Sha256> spoiltPhotos = {};  // found by this part

    /// What is known to be wrong: by this round or the last whole one.
    [[nodiscard]] const std::string& wrong() const { return found.empty() ? foundBefore : found; }
};
[[nodiscard]] Result<Round> roundSoFar(ledger::Database& database);

/// Verify what comes next in the round, `entries` records or a hundredth as many photos, and return
/// how far it is then. Reads only; `database` may be any connection of the cellar.
///
/// Errors    Cancelled; those of Database. What is wrong is no error but in the answer.
[[nodiscard]] Result<Round> verifyNext(ledger::Database& database, const ledger::PhotoStore& photos,
                                       const Round& from, int entries, Instant now,
                                       const Job& job = {});

/// Keep it. A part that was verified and not kept is only verified again. A spoilt photo is put out
/// of the way and counts as missing, so that it is asked for again.
[[nodiscard]] Result<void> keepRound(Cellar& cellar, const Round& round);

/// Keep what check() found at `now`, as a whole round.
[[nodiscard]] Result<void> keepRound(Cellar& cellar, const CheckReport& report, Instant now);

}  // namespace spile::cellar
