#pragma once

#include "core/cellar/acts/working.hpp"
#include "core/cellar/queries.hpp"

#include <optional>
#include <span>
#include <string>
#include <string_view>

/// The barrel's own numbers, as the steps of work sheets show them: how long to purge this barrel
/// through this hose, what the spirit adds to this beer, what stands in it at this dip.
namespace spile::plan {

/// What is known of a barrel and of the work when a number is asked for.
struct WorkFacts {
    cellar::BarrelRow barrel;
    cellar::BarrelMeasures measures;
    cellar::BarrelHistory history;
    std::vector<cellar::ClimateRow> climate;  // of its place
    cellar::WorkValues values;                // filled in so far
    Instant now{};
};

/// Read what the records know; `values` stay empty.
///
/// Errors    NotFound if the records do not have the barrel; those of ledger::Database.
[[nodiscard]] Result<WorkFacts> readFacts(ledger::Database& database, const SubjectId& barrel,
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
    Word,    ///< `word`, in the words of the trade
    None,    ///< not known
};

struct SheetNumber {
    Form form = Form::None;
    double value = 0;
    std::optional<double> low = {}, high = {};  // an 80 % range, where it is an estimate
    std::string word = {};  // with Form::Word; with Form::None: the name of what is missing
    bool caution = false;   // beyond a limit: it is said with the sign of a caution
};

/// Return the number; Form::None with the name of what is missing if it cannot be told yet, or what
/// was filled in is out of a formula's range (`word` then names the quantity).
/// Requires a name of numberNames().
[[nodiscard]] SheetNumber numberOf(std::string_view name, const WorkFacts& facts);
[[nodiscard]] std::span<const std::string_view> numberNames();

/// The volume that was filled in or follows from what was, by the way `way` ("weight", "dip",
/// "nail", "meter", "filled full"); none if something is missing.
[[nodiscard]] std::optional<Volume> volumeByWay(std::string_view way, const WorkFacts& facts);

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
