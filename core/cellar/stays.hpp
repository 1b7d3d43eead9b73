#pragma once

#include "core/base/ids.hpp"
#include "core/base/time.hpp"
#include "core/cellar/acts/tasting.hpp"
#include "core/ledger/database.hpp"
#include "core/units/units.hpp"

#include <optional>
#include <string>
#include <vector>

/// What a barrel's beers tasted like, stay by stay, for what learns from it.
namespace spile::cellar {

struct StayScore {
    EntryId taste;
    Instant at;
    SubjectId person;
    std::string attribute;
    int score = 0;  // 1 to 9
    std::optional<SubjectId> flight;
    int glass = 0;  // of the flight; 0: none
};

struct StayDirection {
    Instant at;
    std::string attribute;
    Direction direction = Direction::Right;
};

struct StayTopUp {
    Instant at;
    Volume volume;
};

struct StayDraw {
    Instant at;
    Volume volume;
    std::string method;
};

/// One beer's time in one barrel.
struct Stay {
    EntryId fill;
    std::string beer;
    Instant filled;
    std::optional<Instant> ended;   // emptied, or filled anew
    int number = 0;                 // of this fill, from 1; 0: not known
    std::optional<Volume> volume;   // at the fill
    std::vector<StayScore> scores;  // those that were judged, the oldest first
    std::vector<StayDirection> directions;
    std::vector<StayTopUp> topUps;
    std::vector<StayDraw> draws;
};

struct BarrelStays {
    SubjectId barrel;
    std::string spirit;
    std::optional<int> charLevel;
    std::optional<Volume> size;
    struct Since {
        Instant at;
        SubjectId place;
    };
    std::vector<Since> places;  // where it lay from when on; the first is of its registration
    std::vector<Stay> stays;    // the oldest first
};

/// Return a barrel's stays; empty for a barrel that the records do not have.
///
/// Errors    those of ledger::Database.
[[nodiscard]] Result<BarrelStays> staysOf(ledger::Database& database, const SubjectId& barrel);

}  // namespace spile::cellar
