#pragma once

#include "core/base/random.hpp"
#include "core/cellar/acts/flight.hpp"
#include "core/cellar/flights.hpp"
#include "core/panel/flight_order.hpp"
#include "core/plan/alarms.hpp"

/// In which glasses a flight is poured, and in which order it is drawn and tasted.
namespace spile::plan {

inline constexpr std::size_t flightBarrelsLeast = 2;
inline constexpr std::size_t flightBarrelsMost = 12;

/// Return how sound a barrel is to draw from. Sour: vinegar or solvent in its last tasting, or an
/// acidity of 7 and more on the ladder, or an open alarm of souring. Suspect: any other fault then,
/// an unsound look over it, the verdict "destroy", or an open alarm of refermentation or oxidation.
/// A leak, silence and a time gone by say nothing against a barrel's beer.
///
/// Source    common practice, no source.
[[nodiscard]] panel::Soundness soundnessOf(const cellar::Signs& signs,
                                           const std::vector<Alarm>& alarms);

/// What speaks against drawing from a barrel among clean ones.
struct Suspicion {
    cellar::Signs signs;
    std::vector<Alarm> alarms;
    panel::Soundness soundness = panel::Soundness::Clean;
};
/// Errors    those of the queries.
[[nodiscard]] Result<Suspicion> suspicionOf(ledger::Database& database, const SubjectId& barrel,
                                            Instant now);

/// Plan a flight of these barrels: the order of drawing (panel::drawOrder), and a number for each
/// glass, drawn at random from 101 to 999 so that it says nothing of what is in the glass. With
/// `pourOneTwice` one of the clean barrels, chosen at random, gets a second glass right after its
/// first: scores of both show how well a taster repeats.
///
/// Errors    OutOfRange for fewer than 2 or more than 12 barrels; Conflict for one that is named
///           twice, or if one is to be poured twice and none is clean; those of the queries.
/// Source    Three-digit random codes: ISO 13299 (paraphrased).
[[nodiscard]] Result<cellar::NewFlight> planFlight(ledger::Database& database, Random& random,
                                                   const std::vector<SubjectId>& barrels,
                                                   bool pourOneTwice, Instant now);

/// The glass that is drawn next; null if all are drawn.
[[nodiscard]] const cellar::FlightGlass* nextToDraw(const cellar::FlightRow& flight);

/// The glass that this taster, in that place of the flight (cellar::placeInFlight), takes next of
/// those that are drawn; null if there is none. The order is panel::glassOrder.
[[nodiscard]] const cellar::FlightGlass* nextToTaste(const cellar::FlightRow& flight,
                                                     const SubjectId& taster, int place);

}  // namespace spile::plan
