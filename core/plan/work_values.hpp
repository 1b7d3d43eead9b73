#pragma once

#include "core/cellar/acts/working.hpp"
#include "core/units/scaled.hpp"

#include <optional>
#include <string>

/// What was filled in on a work sheet, as quantities; none where nothing was.
namespace spile::plan {

using cellar::WorkValues;

inline std::optional<std::int64_t> numberIn(const WorkValues& values, const std::string& name)
{
    const auto found = values.find(name);
    return found == values.end() ? std::nullopt : found->second.number;
}

inline std::string textIn(const WorkValues& values, const std::string& name)
{
    const auto found = values.find(name);
    return found == values.end() ? std::string() : found->second.text;
}

inline std::optional<double> fractionIn(const WorkValues& values, const std::string& name)
{
    const auto found = numberIn(values, name);
    return found ? std::optional(static_cast<double>(*found) / 1e4) : std::nullopt;
}

inline std::optional<Volume> volumeIn(const WorkValues& values, const std::string& name)
{
    const auto found = numberIn(values, name);
    return found ? std::optional(volumeFromMl(*found)) : std::nullopt;
}

inline std::optional<Mass> massIn(const WorkValues& values, const std::string& name)
{
    const auto found = numberIn(values, name);
    return found ? std::optional(massFromGrams(*found)) : std::nullopt;
}

inline std::optional<Temperature> temperatureIn(const WorkValues& values, const std::string& name)
{
    const auto found = numberIn(values, name);
    return found ? std::optional(temperatureFromMilliCelsius(*found)) : std::nullopt;
}

inline Result<std::int64_t> needDays(const WorkValues& values)
{
    const auto days = numberIn(values, "empty_days");
    return days ? Result<std::int64_t>(*days)
                : Result<std::int64_t>(fail(ErrorCode::Malformed, "empty_days", "nothing", "days"));
}

}  // namespace spile::plan
