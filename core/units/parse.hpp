#pragma once

#include "core/base/result.hpp"

#include <cstdint>
#include <span>
#include <string>
#include <string_view>

/// Quantities as people type them: "53gal", "5 psi", "64F", "1.084", "12%".
namespace spile::inline units {

#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wshadow"  // gcc 12 takes scoped names for bare ones
/// What a number measures. Its value is in SI: m3, kg, m, Pa, K, m2, s, kg/m3, m3/s, kg/s, N, 1/s;
/// the strengths by volume and mass and the share are fractions (12 % is 0.12); specific gravity,
/// degrees Plato, US proof, volumes of carbon dioxide and a count are the number itself.
enum class Measurand : std::uint8_t {
    Volume,
    Mass,
    Length,
    Pressure,  ///< as it stands: whether it is gauge or absolute is the caller's to say
    Temperature,
    TemperatureDifference,
    SpecificGravity,
    DegreesPlato,
    AlcoholByVolume,
    AlcoholByMass,
    UsProof,
    Share,
    Duration,
    Density,
    Concentration,
    CarbonDioxideVolumes,
    AirChanges,
    Area,
    VolumeFlow,
    MassFlow,
    Force,
    Count,  ///< a whole number, 0 or more
};
#pragma GCC diagnostic pop

/// One unit: SI value = number * factor + offset.
struct UnitSpec {
    std::string_view symbol;  ///< empty where a bare number is meant
    Measurand measurand;
    double factor;
    double offset;
    bool isListed;  ///< false for another way to write a unit
};

/// Return the units of a measurand, the usual one first.
[[nodiscard]] std::span<const UnitSpec> unitsOf(Measurand measurand);

/// Return its name as an error's subject: "volume", "air_changes".
[[nodiscard]] std::string_view nameOf(Measurand measurand);

/// Return its units for a message: "L, mL, hL, m3, gal, bbl".
[[nodiscard]] std::string expectedUnits(Measurand measurand);

/// Return the SI value of a typed quantity, whatever the locale: an optional sign, digits, an
/// optional '.' and digits, an optional exponent, optional blanks, the unit. Blanks around it are
/// passed over. `what` names it in errors; nameOf() if empty.
///
/// Units     by the symbols of unitsOf(), as they are written there. "gal" is the US gallon, "bbl"
///           the US beer barrel.
/// Errors    Malformed for anything else, such as a missing or foreign unit, "inf", "nan", "0x1p3"
///           and "1,5"; OutOfRange for a number too large or too small for a double. `value` is the
///           text, `limit` what would be right.
[[nodiscard]] Result<double> parseQuantity(std::string_view text, Measurand measurand,
                                           std::string_view what = {});

/// Return the SI value as a number in `unit`, rounded to `significantDigits`, with a blank before
/// the unit: "53.0 gal". Exponents only from 1e15 on and below 1e-5. parseQuantity() reads it back.
///
/// Range     1 to 17 digits.
/// Errors    NotFinite; OutOfRange ("significant_digits"); Malformed for a unit of another
///           measurand.
[[nodiscard]] Result<std::string> formatQuantity(double si, Measurand measurand,
                                                 std::string_view unit, int significantDigits);

}  // namespace spile::inline units
