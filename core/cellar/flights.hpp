#pragma once

#include "core/base/ids.hpp"
#include "core/base/time.hpp"
#include "core/ledger/database.hpp"

#include <map>
#include <optional>
#include <string>
#include <vector>

/// What the state says of flights: glasses drawn to be tasted together, without knowing what is in
/// which.
///
/// Errors    of every query: those of ledger::Database.
namespace spile::cellar {

/// A sheet of a glass that is closed.
struct FlightTaste {
    SubjectId person;
    EntryId taste;
};

struct FlightGlass {
    int number = 0;
    SubjectId barrel;
    bool clean = true;  // nothing spoke against the barrel when the flight was begun
    bool drawn = false;
    std::vector<FlightTaste> tastes;

    [[nodiscard]] bool isTastedBy(const SubjectId& person) const;
};

struct FlightRow {
    SubjectId flight;
    EntryId entry;
    std::string name;  // may be empty
    Instant at;
    Instant counted;                   // `at`, but never later than it was recorded
    std::string person;                // who draws it; empty if nobody said
    bool over = false;                 // ended on this device
    std::vector<FlightGlass> glasses;  // in the order they are drawn

    [[nodiscard]] const FlightGlass* glassOf(int number) const;
    [[nodiscard]] bool isDrawn() const;  // all of it
    /// Whether this taster has closed a sheet of every glass, and all are drawn.
    [[nodiscard]] bool isFinishedBy(const SubjectId& taster) const;
    /// How many glasses this taster has tasted.
    [[nodiscard]] int tastedBy(const SubjectId& taster) const;
};

/// Where a page of flights begins: before the flight with these keys.
struct BeforeFlight {
    Instant counted = Instant::max();
    SubjectId flight;
};
/// The flights begun since then, the newest first.
[[nodiscard]] Result<std::vector<FlightRow>> flights(ledger::Database& database, Instant since,
                                                     const BeforeFlight& before, int limit);
/// None if the records do not have it.
[[nodiscard]] Result<std::optional<FlightRow>> flightById(ledger::Database& database,
                                                          const SubjectId& flight);

/// How long a flight is offered to be gone on with.
inline constexpr auto flightOpenFor = std::chrono::days(2);

/// The flights that are not drawn yet, or of which this person has not tasted every glass; the
/// newest first; none that is over. Without a person: all of the last days.
[[nodiscard]] Result<std::vector<FlightRow>> openFlights(ledger::Database& database, Instant now,
                                                         const std::optional<SubjectId>& person);

/// What is recorded against a barrel in this fill.
struct Signs {
    bool looksUnsound = false;                   // by the latest look over it
    std::map<std::string, std::int64_t> faults;  // of its last tasting, by the strongest
    std::optional<std::int64_t> acidity;         // the highest score of its last tasting
    std::string verdict;
};
[[nodiscard]] Result<Signs> signsOf(ledger::Database& database, const SubjectId& barrel);

/// Return the attributes that every sheet of the flight asks for: those of its barrels, a turn
/// each, at most 12, so that no sheet tells by what it asks for which barrel it is.
[[nodiscard]] Result<std::vector<std::string>> attributesOfFlight(ledger::Database& database,
                                                                  const FlightRow& flight);

}  // namespace spile::cellar
