#pragma once

#include "core/base/result.hpp"
#include "core/liquor/mixing.hpp"
#include "core/units/units.hpp"
#include "core/wood/spread.hpp"

#include <span>

/// What evaporates through a barrel's wood: water and ethanol, each driven by its own vapour
/// pressure.
///
/// water: k S (aw - RH) pw(T); ethanol: kappa (Methanol / Mwater) k S pe(T), the air free of
/// ethanol. S is the whole inner surface, since wood loses alike to liquid and to vapour. In dry
/// air beer grows stronger, in humid air weaker; at about 73 % it keeps its strength.
///
/// Accuracy  barrels of one row differ by a factor of 2 to 3: that outweighs all physics here. The
///           priors are calibrated to trade-grade loss figures, not measured constants.
/// Limits    joints that weep are not in it. Weak for spirit in cold humid air.
namespace spile::wood {

/// The thickness of stave to which permeances are stated: that of a 53 gallon barrel.
inline constexpr Length standardStave = millimetres(26.0);

/// The prior of a sound used barrel, in kg/(m2 s Pa) for a stave of 26 mm. A leaking one has 1e-9
/// or more.
///
/// Source    common practice: calibrated to losses of 2 to 5 % a year from 200 L.
inline constexpr Spread permeancePrior{1.0e-10, 2.0e-10, 3.5e-10};

/// What wood lets through of ethanol beside water, at the same driving pressure and by molecules.
///
/// Source    common practice: calibrated so that 65 to 75 % relative humidity keeps the strength.
inline constexpr Spread ethanolSharePrior{0.02, 0.03, 0.05};

/// A barrel as evaporation meets it.
struct Wood {
    Area inner;  ///< heads and staves, whole
    Length stave = standardStave;
    double permeance = permeancePrior.median;  ///< kg/(m2 s Pa), of a stave of 26 mm
    double ethanolShare = ethanolSharePrior.median;
};

/// The air around a barrel.
struct Climate {
    Temperature temperature = celsius(15.0);
    double relativeHumidity = 0.70;

    friend constexpr bool operator==(const Climate&, const Climate&) = default;
};

/// Errors    NotFinite; OutOfRange unless -15 to 45 °C and relativeHumidity 0 to 1.
[[nodiscard]] Result<void> checkClimate(const Climate& climate);

/// What leaves; water comes in where it is below 0.
struct Rates {
    MassFlow water;
    MassFlow ethanol;
};

/// Errors    NotFinite; OutOfRange unless inner 0.01 to 100 m2, stave 3 to 100 mm, permeance 0 to
///           1e-8, ethanolShare 0 to 1.
[[nodiscard]] Result<void> checkWood(const Wood& wood);

/// Return what leaves a barrel in a second.
///
/// Range     climate -15 to 45 °C, relativeHumidity 0 to 1; wood as checkWood().
/// Errors    NotFinite; OutOfRange; those of liquor::describe().
/// Limits    the extract's own lowering of water's activity (0.2 to 0.4 % at 7 °P, from memory) is
///           left out.
[[nodiscard]] Result<Rates> lossRates(const liquor::Liquor& liquor, const Wood& wood,
                                      const Climate& climate);

/// A barrel at the end of a day. Volume at 20 °C, realExtract in °P.
struct CourseDay {
    Volume volume;
    double alcoholByVolume{};
    double specificGravity{};
    double realExtract{};
};

/// Write the course of a barrel left alone: `out[i]` is the end of the day with climate `days[i]`.
///
/// Shape     out.size() == days.size(). Nothing is allocated; equal days in a row cost less.
/// Range     as lossRates().
/// Errors    NotFinite; OutOfRange, also where sizes differ ("rows") or the barrel runs dry or its
///           extract goes beyond 44 °P ("liquor"): then the days before it are written.
/// Accuracy  the day's rate is that of its morning: within 0.1 % of the loss.
[[nodiscard]] Result<void> lossCourse(const liquor::Liquor& start, const Wood& wood,
                                      std::span<const Climate> days, std::span<CourseDay> out);

/// Return what evaporates from a barrel in one climate over a time, as the fall of its volume.
///
/// Range     time 0 to 100 years; else as lossRates(). Below 0 where humid air gives more than it
///           takes.
/// Errors    as lossCourse(), with "time_d".
[[nodiscard]] Result<Volume> evaporated(const liquor::Liquor& start, const Wood& wood,
                                        const Climate& climate, Duration time);

}  // namespace spile::wood
