#pragma once

#include "core/outlook/barrel_outlook.hpp"
#include "core/plan/numbers.hpp"

#include <string>
#include <vector>

/// What needs a look at a barrel: each alarm with what it saw. It asks; it never decides.
///
/// Limits    thresholds are common practice, no source, where none is named beside them.
namespace spile::plan {

enum class AlarmKind : std::uint8_t {
    PhFalls,       ///< `before` to `now`: souring
    AcidityJumps,  ///< scores: `before` was foreseen, `now` was scored; `chance` of that by itself
    SourFault,     ///< `word`: a fault of souring, `now` its strength
    Referments,    ///< gravities: `before` to `now`, `limit` is what can be explained
    GravityFalls,  ///< early on a first fill: a fall that grows; as Referments
    Oxidised,      ///< `word`: the fault, `now` its strength
    Leaks,         ///< litres: `now` lost, `before` foreseen; ask first
    Unsound,       ///< `word`: what the last look found, and nothing was mended since
    Silent,        ///< `now` days without anything recorded
    TooFar         ///< `now`: the chance that its time has gone by
};

struct Alarm {
    AlarmKind kind{};
    Instant at;  // of what was seen
    double before = 0, now = 0, limit = 0, chance = 0;
    std::string word = {};
};

/// Return the alarms about a barrel, the gravest first; none for an empty one. `outlook` may be
/// null: then nothing is said of what was foreseen.
[[nodiscard]] std::vector<Alarm> alarmsOf(const WorkFacts& facts,
                                          const outlook::BarrelOutlook* outlook);

}  // namespace spile::plan
