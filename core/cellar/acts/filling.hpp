#pragma once

#include "core/cellar/acts/act.hpp"
#include "core/units/units.hpp"

#include <string>

/// Acts on the barrel and what it holds as a whole. For some there is also the making of the entry
/// alone, with all its checks, for acts that record several.
namespace spile::cellar {

struct NewFill {
    SubjectId barrel;
    std::optional<SubjectId> batch = {};
    std::optional<Volume> volume = {};
    std::optional<double> alcoholByVolume = {};  // as a fraction
    std::optional<double> specificGravity = {};
    Circumstance circumstance = {};
    std::optional<SubjectId> lot = {};  // that it is filled from: acts/lots.hpp
    std::string programme = {};         // "clean" or "sour"
};
/// Errors    besides those of every act: Conflict if the barrel holds beer already, or if nothing
///           has come into the lot.
[[nodiscard]] Result<ledger::NewEntry> fillEntry(Cellar& cellar, const NewFill& fill);
[[nodiscard]] Result<EntryId> recordFill(Cellar& cellar, const NewFill& fill);

struct NewEmpty {
    SubjectId barrel;
    std::optional<Volume> volume = {};
    std::string nextUse = {};
    Circumstance circumstance = {};
    std::optional<Volume> heel = {};    // left behind
    std::optional<Instant> until = {};  // by when the next use is due
    std::string programme = {};         // "clean" or "sour": its kit is kept apart
    std::string method = {};            // how the beer came out
};
[[nodiscard]] Result<ledger::NewEntry> emptyEntry(Cellar& cellar, const NewEmpty& emptying);
[[nodiscard]] Result<EntryId> recordEmpty(Cellar& cellar, const NewEmpty& emptying);

/// What a gauge says when it is not the volume itself: a nail hole that runs or does not.
enum class Bound : std::int64_t { AtMost = -1, None = 0, AtLeast = 1 };

struct NewGauge {
    SubjectId barrel;
    Volume volume;
    std::string method;  // "dip", "weight", "meter", "filled full"
    std::optional<Length> dip = {};
    std::optional<Mass> mass = {};
    std::optional<Temperature> temperature = {};
    Circumstance circumstance = {};
    Bound bound = Bound::None;
};
[[nodiscard]] Result<ledger::NewEntry> gaugeEntry(Cellar& cellar, const NewGauge& gauge);
[[nodiscard]] Result<EntryId> recordGauge(Cellar& cellar, const NewGauge& gauge);

struct NewCheck {
    SubjectId barrel;
    std::string finding;  // "dry", "weeping stave", ...
    bool sound = true;
    Circumstance circumstance = {};
};
[[nodiscard]] Result<ledger::NewEntry> checkEntry(Cellar& cellar, const NewCheck& check);
[[nodiscard]] Result<EntryId> recordCheck(Cellar& cellar, const NewCheck& check);

[[nodiscard]] Result<EntryId> recordMove(Cellar& cellar, const SubjectId& barrel,
                                         const SubjectId& place,
                                         const Circumstance& circumstance = {});

struct NewVerdict {
    SubjectId barrel;
    std::string verdict;  // "hold", "ready", "top up", "move", "blend", "destroy"
    std::optional<Instant> until = {};
    Circumstance circumstance = {};
    /// What the outlook said then, to be compared later: the chance that all was inside (0 to 1),
    /// and when it is highest.
    std::optional<double> chance = {};
    std::optional<Instant> best = {};
};
[[nodiscard]] Result<EntryId> recordVerdict(Cellar& cellar, const NewVerdict& verdict);

}  // namespace spile::cellar
