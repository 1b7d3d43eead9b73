#pragma once

#include "core/cellar/acts/act.hpp"

#include <string>
#include <vector>

/// Acts of a flight: glasses drawn to be tasted together, blind.
namespace spile::cellar {

/// A glass, and from which barrel it is drawn.
struct PouredGlass {
    int number = 0;  // 1 to 999, each once in a flight
    SubjectId barrel;
};

struct NewFlight {
    std::string name = {};
    std::vector<PouredGlass> glasses = {};  // in the order in which they are drawn
    /// How many of them, from the first, are of barrels that nothing speaks against; none: all.
    std::optional<int> cleanGlasses = {};
    Circumstance circumstance = {};
};

/// Begin a flight; the draws and sheets of its glasses name it.
///
/// Errors    besides those of every act: Conflict if two glasses have one number.
[[nodiscard]] Result<SubjectId> beginFlight(Cellar& cellar, const NewFlight& flight);

/// Leave a glass that is not drawn out of the flight.
///
/// Errors    besides those of every act: Conflict if it is drawn or the only one.
[[nodiscard]] Result<EntryId> leaveGlassOut(Cellar& cellar, const SubjectId& flight, int glass);

/// Return in which place, from 0, this person tastes the flight on this device: the next free one
/// at first, and the same for ever.
[[nodiscard]] Result<int> placeInFlight(Cellar& cellar, const SubjectId& flight,
                                        const SubjectId& person);

/// End the flight on this device: nobody is asked to taste it any more.
[[nodiscard]] Result<void> endFlight(Cellar& cellar, const SubjectId& flight);

}  // namespace spile::cellar
