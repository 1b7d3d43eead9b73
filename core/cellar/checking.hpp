#pragma once

#include "core/base/job.hpp"
#include "core/cellar/cellar.hpp"

#include <string>
#include <vector>

namespace spile::cellar {

/// What a check of the whole cellar found. Sound if `problems` is empty.
struct CheckReport {
    std::uint64_t entries = 0;  // that count
    std::uint64_t waiting = 0;  // for a device to be admitted, or for a gap to close
    std::uint64_t devices = 0;  // admitted, this one included
    std::uint64_t barrels = 0;
    std::uint64_t photos = 0;         // on this device
    std::uint64_t missingPhotos = 0;  // known of, still on another device
    std::uint64_t unknown = 0;        // records that need a newer version
    Sha256 stateRoot;
    std::vector<Error> problems;
    std::vector<Sha256> spoiltPhotos;  // missing or changed
};

/// Check everything: each entry's hash, chain, signature and columns; the state against one made
/// anew; each photo against its hash; the database by SQLite's own check. Changes nothing.
///
/// Errors    Cancelled, and those of Database if it cannot be read at all; what is merely wrong
///           is in the report.
[[nodiscard]] Result<CheckReport> check(Cellar& cellar, const Job& job);

/// Return the root of the state as it stands.
[[nodiscard]] Result<Sha256> stateRoot(Cellar& cellar);

}  // namespace spile::cellar
