#pragma once

#include "core/base/ids.hpp"
#include "core/base/time.hpp"
#include "core/ledger/database.hpp"

#include <optional>
#include <string>
#include <vector>

/// What does not fit together in what was recorded of the beer in one barrel.
namespace spile::cellar {

/// What a barrel's summary knows when it is made; volumes in millilitres.
struct VolumeFacts {
    std::int64_t sinceMs = 0;            // its facts since then are of this fill
    std::optional<std::int64_t> fullMl;  // what it holds, as measured
    std::optional<std::int64_t> sizeMl;  // the same as sold
    std::optional<std::int64_t> filledMl;
    std::optional<std::int64_t> leftMl;  // after all that went out; below 0 if that was too much
};

/// Note in `state_unsettled` what a person has to decide about a filled barrel:
///
/// GaugedTwice   two devices gauged it within ten minutes, and nobody has corrected either;
/// Overfull      the fill or a gauge says more than it holds: by a fiftieth where that was
///               measured, else by a tenth of its size as sold (common practice, no source);
/// Overdrawn     more went out than was in it.
[[nodiscard]] Result<void> noteVolumeDoubts(ledger::Database& database, const SubjectId& barrel,
                                            const VolumeFacts& facts);
/// There is nothing of the kind to decide about an empty barrel.
[[nodiscard]] Result<void> forgetVolumeDoubts(ledger::Database& database, const SubjectId& barrel);

/// A record of how much was in a barrel or went out of it.
struct VolumeRecord {
    std::string kind;
    EntryId entry;
    Instant at{};
    DeviceId device;
    std::optional<std::int64_t> volumeMl;
    bool amended = false;
};

/// Those of two devices within ten minutes, in the order of time.
[[nodiscard]] Result<std::vector<VolumeRecord>> gaugesTwice(ledger::Database& database,
                                                            const SubjectId& barrel);
/// The fills and gauges of the barrel's fill, those that say most first.
[[nodiscard]] Result<std::vector<VolumeRecord>> largestVolumes(ledger::Database& database,
                                                               const SubjectId& barrel);
/// The draws of the barrel's fill, the largest first.
[[nodiscard]] Result<std::vector<VolumeRecord>> largestDraws(ledger::Database& database,
                                                             const SubjectId& barrel);

}  // namespace spile::cellar
