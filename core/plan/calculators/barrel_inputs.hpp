#pragma once

#include "core/plan/calculators/parts.hpp"
#include "core/vessel/barrel.hpp"

/// The barrel that a calculator is about; for the files of this folder alone.
namespace spile::plan {

constexpr CalculatorInput insideLengthInput()
{
    return optional(lengthInput("length", "Length inside, between the heads", none, 0.1, 3));
}
constexpr CalculatorInput bilgeInput()
{
    return optional(lengthInput("bilge", "Diameter inside at the bilge", none, 0.1, 3));
}
constexpr CalculatorInput headInput()
{
    return optional(lengthInput("head", "Diameter of the heads", none, 0.05, 3));
}
constexpr CalculatorInput fullInput()
{
    return optional(volumeInput("full", "Full volume, if it was measured", none, 1e-3, 5));
}

/// Return the barrel of the inputs "length", "bilge" and "head" where they are given, calibrated to
/// "full"; else the usual one of the size "full" or "size".
///
/// Errors    Malformed, named "length", if one or two of the three are given; those of
///           vessel::similarTo(), vessel::calibrated() and vessel::checkBarrel().
[[nodiscard]] Result<vessel::Barrel> barrelOf(const Given& given);

/// Return the usual barrel of "size".
[[nodiscard]] Result<Area> innerAreaOf(const Given& given);

/// Return "stave" if it is given, else the usual one for the size.
[[nodiscard]] Result<Length> staveOf(const Given& given);

constexpr CalculatorInput staveInput()
{
    return optional(lengthInput("stave", "Thickness of the staves; else usual for the size", none,
                                0.005, 0.08));
}

}  // namespace spile::plan
