#pragma once

#include "core/cellar/acts/registering.hpp"
#include "core/ledger/database.hpp"
#include "core/units/scaled.hpp"

#include <optional>

/// Quantities as they stand in the columns of state tables; none where a column is empty.
namespace spile::cellar {

inline std::optional<Volume> volumeIfAny(const ledger::Row& row, int column)
{
    return row.isNull(column) ? std::nullopt : std::optional(volumeFromMl(row.integer(column)));
}

inline std::optional<Mass> massIfAny(const ledger::Row& row, int column)
{
    return row.isNull(column) ? std::nullopt : std::optional(massFromGrams(row.integer(column)));
}

inline std::optional<Length> lengthIfAny(const ledger::Row& row, int column)
{
    return row.isNull(column)
               ? std::nullopt
               : std::optional(millimetres(static_cast<double>(row.integer(column))));
}

inline std::optional<Temperature> temperatureIfAny(const ledger::Row& row, int column)
{
    return row.isNull(column) ? std::nullopt
                              : std::optional(temperatureFromMilliCelsius(row.integer(column)));
}

inline std::optional<Instant> instantIfAny(const ledger::Row& row, int column)
{
    return row.isNull(column) ? std::nullopt : std::optional(instantFromMs(row.integer(column)));
}

inline std::optional<double> scaledIfAny(const ledger::Row& row, int column, double scale)
{
    return row.isNull(column) ? std::nullopt
                              : std::optional(static_cast<double>(row.integer(column)) / scale);
}

inline DatePrecision precisionOf(const ledger::Row& row, int column)
{
    return row.isNull(column) ? DatePrecision::Day
                              : static_cast<DatePrecision>(row.integer(column));
}

}  // namespace spile::cellar
