#pragma once

#include "core/base/job.hpp"
#include "core/blend/bench.hpp"
#include "core/liquor/mixing.hpp"
#include "core/outlook/barrel_outlook.hpp"
#include "core/panel/line.hpp"

#include <set>

/// The bench with the cellar's own barrels: what each of them holds and how it tastes now.
namespace spile::plan {

/// What is wanted of an attribute: to lie from one score to another on the ladder, best in the
/// middle of them.
struct BenchWish {
    std::string attribute;
    int low = panel::lowestScore, high = panel::highestScore;
    double weight = 1;
};

struct BenchAsk {
    std::vector<BenchWish> wishes;
    std::set<SubjectId> keptBack;  // barrels that are not to be used
    std::size_t barrelsMost = 3;
    std::size_t partsMost = 0;
    double leastShare = 0.25;  // of a barrel that is taken in part
    Volume least{};
    std::optional<Volume> most = {};                              // what the tank holds
    std::optional<double> strengthLeast = {}, strengthMost = {};  // by volume, as fractions
};

struct BenchBarrel {
    cellar::BarrelRow row;
    Volume volume;  // that it should hold now
    double alcoholByVolume = 0;
    double realExtract = 0;  // °P
    // How sure that is, one standard deviation each: what evaporated, and errors of reading.
    Volume volumeDeviation = {};
    double strengthDeviation = 0;
    std::vector<outlook::LevelNow> levels;  // of the wishes
};

/// A barrel that was left out although it is full and not kept back.
struct LeftOut {
    enum class Why : std::uint8_t { Suspect, Sour, VolumeUnknown };
    cellar::BarrelRow row;
    Why why{};
};

struct Bench {
    BenchAsk ask;
    std::vector<BenchBarrel> barrels;  // in the order of the problem's
    std::vector<LeftOut> leftOut;
    blend::Problem problem;  // amounts in m3
};

/// Put all full barrels on the bench that are sound, not kept back, and of a known volume.
///
/// Errors    OutOfRange if no barrel is left ("barrels") or a window is no part of the ladder;
///           Cancelled; those of the queries.
[[nodiscard]] Result<Bench> benchOf(ledger::Database& database, const outlook::CellarModel& model,
                                    const BenchAsk& ask, Instant now, const Job& job);

/// Return volume, strength and gravity of a blend, mixed by mass.
///
/// Accuracy  mass, alcohol and extract are kept within 1e-12.
[[nodiscard]] Result<liquor::Mixed> mixedOf(const Bench& bench, const blend::Blend& blend);

/// Find the blends of the bench, the nearest first. Those whose volume or strength, mixed by mass,
/// does not keep its bound by more than reading errors are left out, and if none is left they stand
/// in the way; levels go by volume.
///
/// Errors    those of blend::bestBlends().
[[nodiscard]] Result<blend::Found> blendsOf(const Bench& bench, const Job& job,
                                            const blend::OnBetter& onBetter = {});

}  // namespace spile::plan
