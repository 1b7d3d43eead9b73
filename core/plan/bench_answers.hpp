#pragma once

#include "core/cellar/benches.hpp"
#include "core/plan/benching.hpp"
#include "core/wood/spread.hpp"

/// What the bench's blends cost and how sure they are, their trial glasses, and the accepted one in
/// the tank.
namespace spile::plan {

/// A barrel that is not emptied: it is left with a head of air.
struct Ullaged {
    std::size_t barrel = 0;  // its place on the bench
    Volume taken, left;
};

struct RecipeStep {
    std::size_t part = 0;  // its place among the amounts
    double millilitres = 0;
};
/// A glass of 100 mL.
struct Recipe {
    std::vector<RecipeStep> steps;  // the largest first
    /// How far rounding moves one of them at most, as a fraction of it.
    double rounding = 0;
};

inline constexpr double recipeMillilitres = 100;
/// What a syringe or a measuring cylinder shows.
inline constexpr double recipeStep = 0.5;
/// From here on the rounding of a glass is worth saying.
inline constexpr double roundingTold = 0.01;

/// Return how a glass of 100 mL is measured that has the shares of these amounts.
///
/// How       rounded down to halves of a millilitre, then what is missing to 100 goes to those that
///           lost most, a half each; every one gets a half at least.
/// Requires  1 to 200 amounts above 0.
[[nodiscard]] Recipe recipeOf(const std::vector<double>& amounts);

struct BenchAnswer {
    blend::Blend blend;
    liquor::Mixed mixed;  // by mass
    wood::VolumeSpread volume;
    wood::Spread strength;
    std::vector<double> chances;  // that each wish lies in its window; 1 without one
    std::vector<Ullaged> ullaged;
    std::size_t beers = 0;                    // that are mixed; those nobody named count each
    std::optional<Instant> oldest, youngest;  // when they were filled
    Recipe recipe;                            // by the places of the shares
};

/// Return what a blend comes to, costs and how sure it is.
///
/// How       ranges are 80 %, taken as normal. Of a whole barrel the volume errs by what evaporated
///           and by its gauge (wood::readingDeviation), of a part by half a percent, that of a beer
///           meter (27 CFR 25.42). Its strength errs by what evaporated and by 0.2 % vol of
///           reading, or 1.5 % vol if nobody read it (common practice, no source). Errors of
///           barrels are independent.
/// Errors    those of mixedOf().
[[nodiscard]] Result<BenchAnswer> answerOf(const Bench& bench, const blend::Blend& blend);

inline constexpr std::size_t answersMost = 6;

inline constexpr std::size_t answersLeast = 2;

/// Return the answers to show: the blends with the greatest chance first, of those that are alike
/// the first, at most 6.
///
/// Rule      a blend is another one than those before if of its barrels at least one in two is not
///           in each of them. If only one is left, the one with the next greatest chance is added,
///           so that there is something to pour beside it.
/// Errors    those of answerOf().
[[nodiscard]] Result<std::vector<BenchAnswer>> answersOf(const Bench& bench,
                                                         const blend::Found& found);

/// What is taken of a barrel for the tank.
struct TankPart {
    cellar::BenchPortion portion;
    bool filled = false;         // it still holds beer
    std::optional<Volume> held;  // what it should hold now; none: not known
    /// All it holds: no twentieth would stay behind.
    [[nodiscard]] bool whole() const;
    /// It does not hold as much any more, by more than a twentieth.
    [[nodiscard]] bool tooLittle() const;
};
/// Return the amounts of a glass as they are taken for the tank, the largest first.
///
/// Errors    those of the queries.
[[nodiscard]] Result<std::vector<TankPart>> tankPartsOf(ledger::Database& database,
                                                        const cellar::BenchGlass& glass,
                                                        Instant now);

}  // namespace spile::plan
