#pragma once

#include "core/cellar/acts/working.hpp"
#include "core/cellar/lots.hpp"
#include "core/cellar/queries.hpp"

#include <optional>
#include <span>
#include <string>
#include <string_view>

/// The barrel's own numbers, as the steps of work sheets show them: how long to purge this barrel
/// through this hose, what the spirit adds to this beer, what stands in it at this dip.
namespace spile::plan {

/// A lot that is worked on, and a code that is on no packages yet.
struct LotFacts {
    cellar::LotRow row;
    cellar::LotHistory history;
    std::string freeCode;
};

/// What is known of a barrel, or a lot, and of the work when a number is asked for.
struct WorkFacts {
    cellar::BarrelRow barrel;
    cellar::BarrelMeasures measures;
    cellar::BarrelHistory history;
    std::vector<cellar::ClimateRow> climate;  // of its place
    cellar::WorkValues values;                // filled in so far
    Instant now{};
    std::optional<LotFacts> lot = {};  // then there is no barrel
};

/// Read what the records know of a barrel or a lot; `values` stay empty.
///
/// Errors    NotFound if the records have neither; those of ledger::Database.
[[nodiscard]] Result<WorkFacts> readFacts(ledger::Database& database, const SubjectId& subject,
                                          Instant now);

/// How a number is to be said. The value is in SI; fractions and volumes per volume are 0 to 1.
enum class Form : std::uint8_t {
    Volume,
    Mass,
    Duration,
    Pressure,
    Length,
    StrengthRise,  ///< in points of % vol
    Gravity,
    Share,   ///< %
    Parts,   ///< ppm
    Oxygen,  ///< kg, said in mg
    Dose,    ///< kg, said in g where it is little
    Force,
    Count,
    Co2,    ///< volumes of carbon dioxide
    Word,   ///< `word`, in the words of the trade
    Words,  ///< several of them in `word`, a line each
    None,   ///< not known
};

struct SheetNumber {
    Form form = Form::None;
    double value = 0;
    std::optional<double> low = {}, high = {};  // an 80 % range, where it is an estimate
    std::string word = {};  // with Form::Word; with Form::None: the name of what is missing
    bool caution = false;   // beyond a limit: it is said with the sign of a caution
    bool refuses = false;   // while it stands so, a step that shows it is neither begun nor done
};

/// Return the number; Form::None with the name of what is missing if it cannot be told yet, or what
/// was filled in is out of a formula's range (`word` then names the quantity).
/// Requires a name of numberNames().
[[nodiscard]] SheetNumber numberOf(std::string_view name, const WorkFacts& facts);
[[nodiscard]] std::span<const std::string_view> numberNames();

/// The volume that was filled in or follows from what was, by the way `way` ("weight", "dip",
/// "nail", "meter", "filled full"); none if something is missing.
[[nodiscard]] std::optional<Volume> volumeByWay(std::string_view way, const WorkFacts& facts);

/// The volume that came out of the barrel, by what was filled in: the meter, the weight before and
/// after, or the dip before and after.
///
/// Errors    NotFound or OutOfRange, naming the ask.
[[nodiscard]] Result<Volume> volumeOut(const WorkFacts& facts);
/// Within which time an empty barrel wants what it is for next; none: there is no haste.
///
/// Source    common practice, no source.
[[nodiscard]] std::optional<std::chrono::days> nextUseWithin(std::string_view nextUse);
/// The carbon dioxide that is in a lot before it is primed, as it was measured or estimated, and
/// the sugar that brings it to what is wanted.
struct Priming {
    double low = 0, there = 0, high = 0;  // volumes
    Mass sugar;
};
/// Errors    NotFound, naming what is missing; OutOfRange if there is more than is wanted.
[[nodiscard]] Result<Priming> primingOf(const WorkFacts& facts);
/// What is to be filled, of each kind that was chosen, with the counts that were filled in, or
/// those that the lot fills.
[[nodiscard]] std::vector<cellar::PackageCount> packagesOf(const WorkFacts& facts);
/// A code for packages filled on that day: year, day of the year and the letter, "26330A".
[[nodiscard]] std::string lotCodeOf(Instant day, char letter);

/// Where the number of an ask begins, in its stored unit, from what is known of this barrel: the
/// registered size, the last gravity. None: nothing better than the usual is known.
[[nodiscard]] std::optional<std::int64_t> expectedOf(std::string_view ask, const WorkFacts& facts);
/// Whether what was filled in is far from what is known of this barrel: a slip, perhaps.
[[nodiscard]] bool isUnusual(std::string_view ask, std::int64_t stored, const WorkFacts& facts);

/// The gravity that a reading says, 20/20 °C: corrected if it was read in a sample of another
/// temperature than its hydrometer is made for. As read, if a correction is not possible.
[[nodiscard]] std::optional<double> gravityAt20(const cellar::ReadingRow& reading);

/// The temperature that the hydrometer is made for, which was chosen; 20 °C if none was.
[[nodiscard]] Temperature hydrometerReference(const cellar::WorkValues& values);

/// The measures inside that follow from those of the tape outside.
///
/// Errors    Malformed if one is missing; OutOfRange if they make no barrel.
[[nodiscard]] Result<cellar::BarrelMeasures> measuresFromTape(const WorkFacts& facts);

}  // namespace spile::plan
