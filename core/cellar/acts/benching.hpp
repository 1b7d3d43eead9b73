#pragma once

#include "core/cellar/acts/tasting.hpp"

/// Acts of the bench: trial glasses are mixed, scored blind, and one of them is accepted before any
/// barrel is opened for the tank.
namespace spile::cellar {

inline constexpr int benchGlassesLeast = 2;
inline constexpr int benchGlassesMost = 4;

/// What an alternative takes of one barrel for the tank; the glass has the same shares.
struct BenchPart {
    SubjectId barrel;
    Volume volume;  // above 0
};

struct NewBench {
    std::string name = {};
    std::optional<SubjectId> target = {};
    std::vector<std::vector<BenchPart>> glasses = {};  // glass 1, 2, ...
    Circumstance circumstance = {};
};
/// Errors    besides those of every act: OutOfRange unless there are 2 to 4 glasses, each with
///           something in it; Conflict for an empty barrel, or one that is twice in a glass.
[[nodiscard]] Result<SubjectId> recordBench(Cellar& cellar, const NewBench& bench);

struct NewGlassTaste {
    SubjectId bench;
    int glass = 0;
    std::map<std::string, Score> scores = {};
    std::optional<int> liking = {};  // 1 to 9
    Circumstance circumstance = {};  // with the taster as person
};
/// Record how a glass tasted: a `taste` about the bench.
///
/// Errors    besides those of every act: NotFound for a bench or glass that there is none of;
///           Malformed without a person; Conflict if this person has scored the glass already.
[[nodiscard]] Result<EntryId> recordGlassTaste(Cellar& cellar, const NewGlassTaste& taste);

struct NewAcceptance {
    SubjectId bench;
    int glass = 0;
    bool tastedCold = false;
    bool tastedCarbonated = false;
    Circumstance circumstance = {};
};
/// Accept a glass: only what is accepted is made in the tank.
///
/// Errors    besides those of every act: NotFound for a bench or glass that there is none of;
///           Conflict, with subject "glass", "tasted_cold" or "tasted_carbonated", if nobody has
///           scored it, or it was not tasted like that; with subject "accept" if one is accepted.
[[nodiscard]] Result<EntryId> acceptGlass(Cellar& cellar, const NewAcceptance& acceptance);

}  // namespace spile::cellar
