#pragma once

#include "core/cellar/acts/act.hpp"

#include <string>
#include <vector>

/// Acts that tend a barrel: repairs, top-ups, spirit into the wood, its measures; and the air of a
/// place. For most there is also the making of the entry alone, with all its checks.
namespace spile::cellar {

struct NewRepair {
    SubjectId barrel;
    std::string repair;  // "hoop driven", "spile driven", ...
    Circumstance circumstance = {};
};
[[nodiscard]] Result<ledger::NewEntry> repairEntry(Cellar& cellar, const NewRepair& repair);
[[nodiscard]] Result<EntryId> recordRepair(Cellar& cellar, const NewRepair& repair);

struct NewTopUp {
    SubjectId barrel;
    Volume volume;
    std::string substance = {};  // in words: "the same beer"
    std::optional<SubjectId> batch = {};
    std::optional<double> alcoholByVolume = {};  // as a fraction
    Circumstance circumstance = {};
    std::optional<SubjectId> lot = {};  // that it is taken from: acts/lots.hpp
};
[[nodiscard]] Result<ledger::NewEntry> topUpEntry(Cellar& cellar, const NewTopUp& topUp);
[[nodiscard]] Result<EntryId> recordTopUp(Cellar& cellar, const NewTopUp& topUp);

/// Something put into a barrel that is not beer: spirit to wet the wood, water, ...
struct NewDose {
    SubjectId barrel;
    std::string substance;
    std::optional<Volume> volume = {}, drained = {};
    std::optional<Mass> mass = {};
    std::optional<double> alcoholByVolume = {};  // as a fraction
    Circumstance circumstance = {};
};
/// Errors    besides those of every act: OutOfRange if more is drained than was put in.
[[nodiscard]] Result<ledger::NewEntry> doseEntry(Cellar& cellar, const NewDose& dose);
[[nodiscard]] Result<EntryId> recordDose(Cellar& cellar, const NewDose& dose);

/// What was measured of a barrel; what is left out stays as it is known.
struct BarrelMeasures {
    std::optional<Mass> tare = {};
    std::optional<Instant> emptied = {};                       // when; by what was said of it
    std::optional<Volume> full = {};                           // measured to go in
    std::optional<Length> length = {}, bilge = {}, head = {};  // inside; diameters
    std::optional<Length> stave = {};                          // its thickness
};
/// Correct the registration of a barrel with what was measured.
///
/// Errors    besides those of every act: Malformed if nothing was measured.
[[nodiscard]] Result<EntryId> recordMeasures(Cellar& cellar, const SubjectId& barrel,
                                             const BarrelMeasures& measures);

/// The air of a place; it holds until the next record.
struct NewClimate {
    SubjectId place;
    Temperature temperature;
    double relativeHumidity = 0;  // as a fraction
    Circumstance circumstance = {};
};
[[nodiscard]] Result<EntryId> recordClimate(Cellar& cellar, const NewClimate& climate);

}  // namespace spile::cellar
