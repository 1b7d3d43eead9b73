#include "core/units/parse.hpp"

#include "core/units/checks.hpp"
#include "core/units/units.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <optional>

namespace spile::inline units {

namespace {

using Of = Measurand;

constexpr double foot = 12 * factor::inch;
constexpr double cubicFoot = foot * foot * foot;
constexpr double fahrenheitStep = 5.0 / 9.0;
constexpr double fahrenheitZero = factor::zeroCelsius - 32 * fahrenheitStep;
constexpr double perMinute = 1 / factor::minute;
constexpr double perHour = 1 / factor::hour;

constexpr UnitSpec unit(std::string_view symbol, Measurand measurand, double factor,
                        double offset = 0)
{
    return {symbol, measurand, factor, offset, true};
}

constexpr UnitSpec alias(std::string_view symbol, Measurand measurand, double factor,
                         double offset = 0)
{
    return {symbol, measurand, factor, offset, false};
}

// In the order of Measurand.
constexpr std::array table = {unit("L", Of::Volume, factor::litre),
                              unit("mL", Of::Volume, 1e-6),
                              unit("cL", Of::Volume, 1e-5),
                              unit("hL", Of::Volume, 0.1),
                              unit("m3", Of::Volume, 1),
                              unit("gal", Of::Volume, factor::usGallon),
                              unit("floz", Of::Volume, factor::usGallon / 128),
                              unit("bbl", Of::Volume, factor::usBeerBarrel),
                              unit("impgal", Of::Volume, factor::imperialGallon),
                              alias("l", Of::Volume, factor::litre),
                              alias("ml", Of::Volume, 1e-6),
                              alias("cl", Of::Volume, 1e-5),
                              alias("hl", Of::Volume, 0.1),
                              unit("kg", Of::Mass, 1),
                              unit("g", Of::Mass, 1e-3),
                              unit("mg", Of::Mass, 1e-6),
                              unit("lb", Of::Mass, factor::pound),
                              unit("oz", Of::Mass, factor::pound / 16),
                              unit("mm", Of::Length, 1e-3),
                              unit("cm", Of::Length, 1e-2),
                              unit("m", Of::Length, 1),
                              unit("in", Of::Length, factor::inch),
                              unit("ft", Of::Length, foot),
                              unit("kPa", Of::Pressure, 1e3),
                              unit("Pa", Of::Pressure, 1),
                              unit("hPa", Of::Pressure, 100),
                              unit("mbar", Of::Pressure, 100),
                              unit("bar", Of::Pressure, factor::bar),
                              unit("psi", Of::Pressure, factor::psi),
                              unit("atm", Of::Pressure, factor::atmosphere),
                              unit("C", Of::Temperature, 1, factor::zeroCelsius),
                              unit("F", Of::Temperature, fahrenheitStep, fahrenheitZero),
                              unit("K", Of::Temperature, 1),
                              alias("\u00b0C", Of::Temperature, 1, factor::zeroCelsius),
                              alias("\u00b0F", Of::Temperature, fahrenheitStep, fahrenheitZero),
                              unit("K", Of::TemperatureDifference, 1),
                              unit("C", Of::TemperatureDifference, 1),
                              unit("F", Of::TemperatureDifference, fahrenheitStep),
                              unit("", Of::SpecificGravity, 1),
                              alias("SG", Of::SpecificGravity, 1),
                              unit("P", Of::DegreesPlato, 1),
                              alias("\u00b0P", Of::DegreesPlato, 1),
                              unit("%", Of::AlcoholByVolume, 0.01),
                              alias("%vol", Of::AlcoholByVolume, 0.01),
                              unit("%", Of::AlcoholByMass, 0.01),
                              alias("%mass", Of::AlcoholByMass, 0.01),
                              unit("proof", Of::UsProof, 1),
                              unit("%", Of::Share, 0.01),
                              unit("ppm", Of::Share, 1e-6),
                              unit("ppb", Of::Share, 1e-9),
                              unit("min", Of::Duration, factor::minute),
                              unit("s", Of::Duration, 1),
                              unit("h", Of::Duration, factor::hour),
                              unit("d", Of::Duration, factor::day),
                              unit("y", Of::Duration, factor::year),
                              unit("kg/m3", Of::Density, 1),
                              unit("g/L", Of::Density, 1),
                              unit("g/mL", Of::Density, 1e3),
                              unit("mg/L", Of::Concentration, 1e-3),
                              unit("g/L", Of::Concentration, 1),
                              unit("g/hL", Of::Concentration, 1e-2),
                              unit("ug/L", Of::Concentration, 1e-6),
                              unit("vol", Of::CarbonDioxideVolumes, 1),
                              unit("/h", Of::AirChanges, perHour),
                              unit("m2", Of::Area, 1),
                              unit("cm2", Of::Area, 1e-4),
                              unit("mm2", Of::Area, 1e-6),
                              unit("ft2", Of::Area, foot* foot),
                              unit("in2", Of::Area, factor::inch* factor::inch),
                              unit("L/min", Of::VolumeFlow, factor::litre* perMinute),
                              unit("mL/min", Of::VolumeFlow, 1e-6 * perMinute),
                              unit("L/h", Of::VolumeFlow, factor::litre* perHour),
                              unit("m3/h", Of::VolumeFlow, perHour),
                              unit("m3/s", Of::VolumeFlow, 1),
                              unit("gal/min", Of::VolumeFlow, factor::usGallon* perMinute),
                              unit("ft3/h", Of::VolumeFlow, cubicFoot* perHour),
                              unit("kg/min", Of::MassFlow, perMinute),
                              unit("g/min", Of::MassFlow, 1e-3 * perMinute),
                              unit("kg/h", Of::MassFlow, perHour),
                              unit("kg/s", Of::MassFlow, 1),
                              unit("lb/min", Of::MassFlow, factor::pound* perMinute),
                              unit("lb/h", Of::MassFlow, factor::pound* perHour),
                              unit("N", Of::Force, 1),
                              unit("kN", Of::Force, 1e3),
                              unit("kgf", Of::Force, factor::standardGravity),
                              unit("lbf", Of::Force, factor::pound* factor::standardGravity),
                              unit("", Of::Count, 1)};

constexpr std::array<std::string_view, 22> names = {"volume",
                                                    "mass",
                                                    "length",
                                                    "pressure",
                                                    "temperature",
                                                    "temperature_difference",
                                                    "specific_gravity",
                                                    "degrees_plato",
                                                    "alcohol_by_volume",
                                                    "alcohol_by_mass",
                                                    "us_proof",
                                                    "share",
                                                    "duration",
                                                    "density",
                                                    "concentration",
                                                    "carbon_dioxide_volumes",
                                                    "air_changes",
                                                    "area",
                                                    "volume_flow",
                                                    "mass_flow",
                                                    "force",
                                                    "count"};

// What would be right, for an error's `limit`.
std::string formOf(Measurand measurand)
{
    if (measurand == Of::Count) {
        return "a whole number";
    }
    if (measurand == Of::SpecificGravity) {
        return "a number such as 1.084";
    }
    return "a number with a unit: " + expectedUnits(measurand);
}

bool isDigit(char c) { return c >= '0' && c <= '9'; }

bool isBlank(char c) { return c == ' ' || c == '\t'; }

// Where the digits that begin at `at` end.
std::size_t pastDigits(std::string_view text, std::size_t at)
{
    while (at < text.size() && isDigit(text[at])) {
        ++at;
    }
    return at;
}

// How many characters of `text` are a number without sign; 0 if it does not begin with one.
std::size_t numberLength(std::string_view text)
{
    std::size_t end = pastDigits(text, 0);
    if (end == 0) {
        return 0;
    }
    if (end + 1 < text.size() && text[end] == '.' && isDigit(text[end + 1])) {
        end = pastDigits(text, end + 1);
    }
    if (end < text.size() && (text[end] == 'e' || text[end] == 'E')) {
        std::size_t exponent = end + 1;
        if (exponent < text.size() && (text[exponent] == '+' || text[exponent] == '-')) {
            ++exponent;
        }
        if (const std::size_t past = pastDigits(text, exponent); past > exponent) {
            end = past;
        }
    }
    return end;
}

std::string_view trimmed(std::string_view text)
{
    while (!text.empty() && isBlank(text.front())) {
        text.remove_prefix(1);
    }
    while (!text.empty() && isBlank(text.back())) {
        text.remove_suffix(1);
    }
    return text;
}

const UnitSpec* findUnit(Measurand measurand, std::string_view symbol)
{
    const auto units = unitsOf(measurand);
    const auto found = std::find_if(units.begin(), units.end(),
                                    [&](const UnitSpec& spec) { return spec.symbol == symbol; });
    return found == units.end() ? nullptr : &*found;
}

// A number and the unit's symbol that stood after it.
struct Typed {
    double number;
    std::string_view symbol;
    bool isInRange;  // false if it is too large or too small for a double
};

std::optional<Typed> splitTyped(std::string_view text)
{
    text = trimmed(text);
    const bool isNegative = text.starts_with('-');
    if (isNegative || text.starts_with('+')) {
        text.remove_prefix(1);
    }
    const std::size_t length = numberLength(text);
    if (length == 0) {
        return std::nullopt;
    }
    double number = 0;
    const auto read = std::from_chars(text.data(), text.data() + length, number);
    return Typed{isNegative ? -number : number, trimmed(text.substr(length)),
                 read.ec == std::errc()};
}

std::string rounded(double value, int significantDigits)
{
    constexpr int leastFixed = -5;  // as powers of ten
    constexpr int mostFixed = 15;
    std::array<char, 64> text{};
    char* const last = text.data() + text.size();
    auto end = std::to_chars(text.data(), last, value, std::chars_format::scientific,
                             significantDigits - 1);
    // The exponent after rounding: 9.96 to two digits is 10.
    std::string scientific(text.data(), end.ptr);
    const std::size_t e = scientific.find('e');
    const char sign = scientific[e + 1];
    int exponent = 0;
    std::from_chars(scientific.data() + e + 2, scientific.data() + scientific.size(), exponent);
    exponent = sign == '-' ? -exponent : exponent;
    if (exponent < leastFixed || exponent >= mostFixed) {
        return scientific;
    }
    double shown = 0;
    std::from_chars(scientific.data(), scientific.data() + scientific.size(), shown);
    end = std::to_chars(text.data(), last, shown, std::chars_format::fixed,
                        std::max(0, significantDigits - 1 - exponent));
    return {text.data(), end.ptr};
}

}  // namespace

std::span<const UnitSpec> unitsOf(Measurand measurand)
{
    static_assert(std::is_sorted(
        table.begin(), table.end(),
        [](const UnitSpec& a, const UnitSpec& b) { return a.measurand < b.measurand; }));
    const auto isOf = [&](const UnitSpec& spec) { return spec.measurand == measurand; };
    const auto* const first = std::find_if(table.begin(), table.end(), isOf);
    return {first, std::find_if_not(first, table.end(), isOf)};
}

std::string_view nameOf(Measurand measurand)
{
    static_assert(names.size() == static_cast<std::size_t>(Of::Count) + 1);
    return names.at(static_cast<std::size_t>(measurand));
}

std::string expectedUnits(Measurand measurand)
{
    std::string text;
    for (const UnitSpec& spec : unitsOf(measurand)) {
        if (spec.isListed && !spec.symbol.empty()) {
            text += (text.empty() ? "" : ", ") + std::string(spec.symbol);
        }
    }
    return text;
}

Result<double> parseQuantity(std::string_view text, Measurand measurand, std::string_view what)
{
    const auto refuse = [&](ErrorCode code) {
        return fail(code, std::string(what.empty() ? nameOf(measurand) : what), std::string(text),
                    formOf(measurand));
    };
    const auto typed = splitTyped(text);
    const UnitSpec* spec = typed ? findUnit(measurand, typed->symbol) : nullptr;
    if (spec == nullptr) {
        return refuse(ErrorCode::Malformed);
    }
    if (measurand == Of::Count &&
        (typed->number < 0 || std::floor(typed->number) != typed->number)) {
        return refuse(ErrorCode::Malformed);
    }
    const double value = typed->number * spec->factor + spec->offset;
    if (!typed->isInRange || !std::isfinite(value)) {
        return refuse(ErrorCode::OutOfRange);
    }
    return value;
}

Result<std::string> formatQuantity(double si, Measurand measurand, std::string_view unit,
                                   int significantDigits)
{
    SPILE_TRY(needFinite(nameOf(measurand), si));
    SPILE_TRY(needBetween("significant_digits", significantDigits, 1, 17));
    const UnitSpec* spec = findUnit(measurand, unit);
    if (spec == nullptr) {
        return fail(ErrorCode::Malformed, std::string(nameOf(measurand)), std::string(unit),
                    expectedUnits(measurand));
    }
    const double number = (si - spec->offset) / spec->factor;
    SPILE_TRY(needFinite(nameOf(measurand), number));
    const std::string text = rounded(number, significantDigits);
    return unit.empty() ? text : text + " " + std::string(unit);
}

}  // namespace spile::inline units
