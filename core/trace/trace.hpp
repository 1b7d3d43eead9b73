#pragma once

#include "core/cellar/lots.hpp"
#include "core/cellar/ways.hpp"

#include <string>
#include <vector>

/// Where beer came from, and where it went.
///
/// Every record of the way of beer names earlier records by their hashes: a transfer its fill, a
/// mix what came in, packages their mix. So beer cannot descend from itself, whatever the clocks
/// say. A lot is taken to be well mixed: what is taken of it is taken of all that its mix names, by
/// mass.
namespace spile::trace {

/// A beer's stay in a barrel that traced beer passed.
struct Stay {
    EntryId fill;
    SubjectId barrel;
    std::string barrelName;  // its mark, or its code
    std::string code, spirit;
    std::optional<std::int64_t> fillNumber;
    std::string beer;                     // of its batch; empty if it was filled from a lot
    std::vector<std::string> heldBefore;  // the beers before, the oldest first
    Instant filled;
    std::optional<Instant> emptied;
    double share = 0;  // of the traced beer that passed it, by mass, 0 to 1
};

/// A batch, or what a barrel was topped up with, that traced beer begins with. Without a name it is
/// not known. By mass, the shares of all beginnings and additions make 1.
struct Beginning {
    std::optional<SubjectId> batch;
    std::string name;
    double share = 0;
};

/// Something that was put in besides beer: a finish of a lot, or a dose into a barrel.
struct Addition {
    EntryId entry;
    std::string substance;
    std::string into;  // the lot's name or the barrel's
    std::string allergen;
    std::optional<Mass> mass;
    std::optional<Volume> volume;
    Instant at;
    double share = 0;         // of the traced beer, by mass: of spirit and the like put into a lot
    bool intoBarrel = false;  // a dose, not a finish
};

struct LotPassed {
    SubjectId lot;
    std::string name;
    double share = 0;
};

/// A person and what they did, in the words of the kinds: "fill", "transfer", "empty", "finish",
/// ...
struct Hand {
    std::optional<SubjectId> person;
    std::string name;
    std::vector<std::string> did;
};

/// What does not add up in the records.
struct Oddity {
    enum class What : std::uint8_t {
        MoreOutThanIn,    // of a lot: by `volume`
        StrengthUnknown,  // of beer that came into a lot: taken as water
        FillUnknown,      // beer that came into a lot out of a fill that is not recorded
        TakenBack,        // a source was voided
    };
    What what{};
    std::string subject;  // the lot's name
    Volume volume{};
};

struct Upward {
    SubjectId lot;
    std::string name;                   // the lot's
    std::string lotCode;                // of the packages; empty for a lot as it stands
    Volume volume;                      // that was traced
    std::vector<Stay> stays;            // the greatest share first
    std::vector<Beginning> beginnings;  // likewise
    std::vector<LotPassed> lots;        // this one first
    std::vector<Addition> additions;    // in order of time
    std::vector<Hand> hands;
    std::vector<Oddity> oddities;
};

/// Trace packages up, by the entry that records them.
///
/// Errors    NotFound; those of ledger::Database.
[[nodiscard]] Result<Upward> upFromPackage(ledger::Database& database, const EntryId& package);
/// Trace a lot up, as it stands now; one from which all has been taken, as it came in.
[[nodiscard]] Result<Upward> upFromLot(ledger::Database& database, const SubjectId& lot);

/// What is traced down.
struct Start {
    enum class What : std::uint8_t { Barrel, Batch, Fill, Lot, Substance };
    What what{};
    SubjectId subject = {};  // of a barrel, batch or lot
    EntryId fill = {};
    std::string substance = {};  // of a finish
};

/// Where beer ended in a barrel.
struct InBarrel {
    SubjectId barrel;
    std::string barrelName;
    bool still = false;  // it lies there yet
};

/// Packages that hold some of it, and where they went.
struct Reached {
    cellar::PackageRow package;
    std::string lotName;
    std::vector<cellar::ReleaseRow> releases;
};

/// All that holds some of it: the recall list.
struct Downward {
    std::vector<LotPassed> lots;  // shares are left 0
    std::vector<Reached> packages;
    std::vector<InBarrel> barrels;
};
[[nodiscard]] Result<Downward> down(ledger::Database& database, const Start& start);

}  // namespace spile::trace
