#pragma once

#include "core/wood/evaporation.hpp"

#include <cstdint>
#include <span>

/// From what was read of a place's air to a climate for each day.
namespace spile::wood {

/// What is taken where nothing is known: 15 °C and 70 %. Common practice; no source.
inline constexpr Climate usualClimate{};

/// A reading of a place's air.
struct ClimateRecord {
    std::int64_t second = 0;  ///< since 1970, UTC
    Climate climate;
};

/// Write a climate for each day from `firstSecond` on, each of 86 400 s.
///
/// A day with records has their mean; a day without has the last record before it; days before all
/// records have `usual`.
///
/// Shape     `records` in order of time, equal times allowed; any number of either, none too.
/// Range     each climate -15 to 45 °C, relativeHumidity 0 to 1, `usual` too.
/// Errors    NotFinite; OutOfRange; Malformed if the records are not in order. Nothing is written
///           on an error.
[[nodiscard]] Result<void> climateDays(std::span<const ClimateRecord> records,
                                       std::int64_t firstSecond, std::span<Climate> out,
                                       const Climate& usual = usualClimate);

}  // namespace spile::wood
