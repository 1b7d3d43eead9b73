#pragma once

#include "core/cellar/acts/act.hpp"
#include "core/units/units.hpp"

#include <string>

/// Acts on the barrel and what it holds as a whole.
namespace spile::cellar {

struct NewFill {
    SubjectId barrel;
    std::optional<SubjectId> batch = {};
    std::optional<Volume> volume = {};
    std::optional<double> alcoholByVolume = {};  // as a fraction
    std::optional<double> specificGravity = {};
    Circumstance circumstance = {};
};
/// Errors    besides those of every act: Conflict if the barrel holds beer already.
[[nodiscard]] Result<EntryId> recordFill(Cellar& cellar, const NewFill& fill);

struct NewEmpty {
    SubjectId barrel;
    std::optional<Volume> volume = {};
    std::string nextUse = {};
    Circumstance circumstance = {};
};
[[nodiscard]] Result<EntryId> recordEmpty(Cellar& cellar, const NewEmpty& emptying);

struct NewGauge {
    SubjectId barrel;
    Volume volume;
    std::string method;  // "dip", "weight", "meter", "filled full"
    std::optional<Length> dip = {};
    std::optional<Mass> mass = {};
    std::optional<Temperature> temperature = {};
    Circumstance circumstance = {};
};
[[nodiscard]] Result<EntryId> recordGauge(Cellar& cellar, const NewGauge& gauge);

struct NewCheck {
    SubjectId barrel;
    std::string finding;  // "dry", "weeping stave", ...
    bool sound = true;
    Circumstance circumstance = {};
};
[[nodiscard]] Result<EntryId> recordCheck(Cellar& cellar, const NewCheck& check);

[[nodiscard]] Result<EntryId> recordMove(Cellar& cellar, const SubjectId& barrel,
                                         const SubjectId& place,
                                         const Circumstance& circumstance = {});

struct NewVerdict {
    SubjectId barrel;
    std::string verdict;  // "hold", "ready", "top up", "move", "blend", "destroy"
    std::optional<Instant> until = {};
    Circumstance circumstance = {};
};
[[nodiscard]] Result<EntryId> recordVerdict(Cellar& cellar, const NewVerdict& verdict);

}  // namespace spile::cellar
