#pragma once

#include "core/cellar/acts/act.hpp"
#include "core/units/units.hpp"

#include <map>
#include <string>
#include <vector>

/// Acts that say how a beer tastes and measures.
namespace spile::cellar {

/// A score on the ladder, 1 to 9; none: looked at, but not judged.
using Score = std::optional<int>;
[[nodiscard]] ledger::Value valueOf(Score score);

struct NewTaste {
    SubjectId barrel;
    std::map<std::string, Score> scores;
    std::map<std::string, int> faults = {};  // with their strength, 1 to 9
    std::optional<int> liking = {};
    std::vector<std::string> attributeOrder = {};  // in which they were asked for
    bool palateTired = false;
    std::optional<SubjectId> flight = {};
    std::optional<int> glass = {};
    Circumstance circumstance = {};  // with the taster as person
};

/// Make the entry of a finished sheet; recordTaste() and closeSheet() record it.
[[nodiscard]] Result<ledger::NewEntry> tasteEntry(const NewTaste& taste);
[[nodiscard]] Result<EntryId> recordTaste(Cellar& cellar, const NewTaste& taste);

struct NewReading {
    SubjectId barrel;
    std::optional<double> specificGravity = {};  // as read
    std::optional<double> ph = {};
    std::optional<Temperature> temperature = {};  // of the beer
    std::optional<double> alcoholByVolume = {};   // as a fraction
    Circumstance circumstance = {};
    /// What the hydrometer is made for, and how warm the sample was in it; none: the gravity is
    /// 20 °C over 20 °C already.
    std::optional<Temperature> hydrometerReference = {}, sampleTemperature = {};
};
/// Whether anything was measured.
[[nodiscard]] bool isMeasured(const NewReading& reading);
/// Make the entry of a reading; recordReading() and closeSheet() record it.
///
/// Errors    Malformed if nothing was measured; OutOfRange.
[[nodiscard]] Result<ledger::NewEntry> readingEntry(const NewReading& reading);
/// Errors    besides those of every act: Malformed if nothing was measured.
[[nodiscard]] Result<EntryId> recordReading(Cellar& cellar, const NewReading& reading);

/// What the brewer would like of an attribute, as it is now.
enum class Direction : std::int64_t { TooMuch = -1, Right = 0, More = 1 };

/// Return the fields that say these directions, to record or to amend them.
[[nodiscard]] ledger::Fields directionFields(const std::map<std::string, Direction>& directions);
/// Record the directions given after the sheet `taste` was closed.
[[nodiscard]] Result<EntryId> recordDirections(Cellar& cellar, const SubjectId& barrel,
                                               const EntryId& taste,
                                               const std::map<std::string, Direction>& directions,
                                               const Circumstance& circumstance = {});

}  // namespace spile::cellar
