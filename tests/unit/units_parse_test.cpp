#include "core/units/checks.hpp"
#include "core/units/parse.hpp"
#include "core/units/units.hpp"

#include <clocale>
#include <gtest/gtest.h>
#include <limits>
#include <set>

namespace spile {

using Of = Measurand;

namespace {

void expectParsed(std::string_view text, Measurand measurand, double si)
{
    const auto parsed = parseQuantity(text, measurand);
    ASSERT_TRUE(parsed) << text << ": " << parsed.error().limit;
    EXPECT_NEAR(*parsed, si, 1e-12 * std::abs(si)) << text;
}

void expectRefused(std::string_view text, Measurand measurand,
                   ErrorCode code = ErrorCode::Malformed)
{
    const auto parsed = parseQuantity(text, measurand);
    ASSERT_FALSE(parsed) << text << " was read as " << *parsed;
    EXPECT_EQ(parsed.error().code, code) << text;
    EXPECT_EQ(parsed.error().value, text);
}

}  // namespace

// The factors are those of NIST SP 811 (2008), Appendix B.8, and of definition; from memory.
TEST(ParseQuantity, ReadsWhatBrewersType)
{
    expectParsed("53gal", Of::Volume, 53 * 3.785411784e-3);
    expectParsed("200 L", Of::Volume, 0.2);
    expectParsed("750ml", Of::Volume, 750e-6);
    expectParsed("1bbl", Of::Volume, 31 * 3.785411784e-3);
    expectParsed("12floz", Of::Volume, 354.88235475e-6);
    expectParsed("1impgal", Of::Volume, 4.54609e-3);
    expectParsed("2.5hL", Of::Volume, 0.25);
    expectParsed("110lb", Of::Mass, 49.8951607);
    expectParsed("16oz", Of::Mass, 0.45359237);
    expectParsed("2in", Of::Length, 0.0508);
    expectParsed("6.5ft", Of::Length, 1.9812);
    expectParsed("5 psi", Of::Pressure, 34473.786465841);
    expectParsed("0.4bar", Of::Pressure, 40000);
    expectParsed("1013.25 hPa", Of::Pressure, 101325);
    expectParsed("64F", Of::Temperature, 290.927777777778);
    expectParsed("18C", Of::Temperature, 291.15);
    expectParsed("-5 C", Of::Temperature, 268.15);
    expectParsed("18 \u00b0C", Of::Temperature, 291.15);
    expectParsed("9F", Of::TemperatureDifference, 5);
    expectParsed("1.084", Of::SpecificGravity, 1.084);
    expectParsed("1.084 SG", Of::SpecificGravity, 1.084);
    expectParsed("20P", Of::DegreesPlato, 20);
    expectParsed("12%", Of::AlcoholByVolume, 0.12);
    expectParsed("9.8 %", Of::AlcoholByMass, 0.098);
    expectParsed("125proof", Of::UsProof, 125);
    expectParsed("0.1%", Of::Share, 0.001);
    expectParsed("40ppm", Of::Share, 40e-6);
    expectParsed("25min", Of::Duration, 1500);
    expectParsed("3h", Of::Duration, 10800);
    expectParsed("14d", Of::Duration, 1209600);
    expectParsed("8 mg/L", Of::Concentration, 8e-3);
    expectParsed("1012.7kg/m3", Of::Density, 1012.7);
    expectParsed("2.4vol", Of::CarbonDioxideVolumes, 2.4);
    expectParsed("0.5/h", Of::AirChanges, 0.5 / 3600);
    expectParsed("10mm2", Of::Area, 1e-5);
    expectParsed("20L/min", Of::VolumeFlow, 20e-3 / 60);
    expectParsed("40 ft3/h", Of::VolumeFlow, 40 * 0.028316846592 / 3600);
    expectParsed("2lb/h", Of::MassFlow, 0.90718474 / 3600);
    expectParsed("75kgf", Of::Force, 735.49875);
    expectParsed("12", Of::Count, 12);
    expectParsed("1e3 L", Of::Volume, 1);
    expectParsed("+2.5E-1L", Of::Volume, 0.25e-3);
    expectParsed("  7 L\t", Of::Volume, 0.007);
    expectParsed("0 C", Of::Temperature, 273.15);
}

TEST(ParseQuantity, RefusesNumbersWithoutTheirUnitAndUnitsOfOthers)
{
    for (const std::string_view text :
         {"53", "53 psi", "53 gallons", "53 Gal", "53 g al", "L", "", " ", "five L", "53galgal",
          "53 gal 2", "5 3L", "\u00bd L"}) {
        expectRefused(text, Of::Volume);
    }
    expectRefused("18", Of::Temperature);
    expectRefused("1.084P", Of::SpecificGravity);
    expectRefused("12", Of::AlcoholByVolume);
    expectRefused("0.12", Of::Share);
    expectRefused("5", Of::Pressure);
}

TEST(ParseQuantity, RefusesWhatOtherReadersOfNumbersTake)
{
    for (const std::string_view text :
         {"inf", "nan", "-inf", "INFINITY", "nan(1)", "0x1p3", "0x10",  "1,5",   "1.5.2", "1e",
          "1e+", ".5",  "5.",   "--5",      "+-5",    "- 5",   "1_000", "1'000", "1 000", "1.e3"}) {
        expectRefused(text, Of::SpecificGravity);
        expectRefused(std::string(text) + "L", Of::Volume);
    }
    expectRefused(std::string_view("1.05\0", 5), Of::SpecificGravity);
}

TEST(ParseQuantity, RefusesNumbersBeyondADouble)
{
    expectRefused("1e999L", Of::Volume, ErrorCode::OutOfRange);
    expectRefused("1e-999L", Of::Volume, ErrorCode::OutOfRange);
    expectRefused("-1e308kN", Of::Force, ErrorCode::OutOfRange);
}

TEST(ParseQuantity, CountsInWholeNumbers)
{
    expectRefused("1.5", Of::Count);
    expectRefused("-1", Of::Count);
    expectRefused("12 L", Of::Count);
    EXPECT_EQ(parseQuantity("1.5", Of::Count).error().limit, "a whole number");
}

TEST(ParseQuantity, SaysWhatWouldBeRight)
{
    const auto volume = parseQuantity("53", Of::Volume);
    EXPECT_EQ(volume.error().subject, "volume");
    EXPECT_EQ(volume.error().limit,
              "a number with a unit: L, mL, cL, hL, m3, gal, floz, bbl, impgal");
    EXPECT_EQ(parseQuantity("x", Of::Temperature, "--cellar-temp").error().subject,
              "--cellar-temp");
    EXPECT_EQ(parseQuantity("x", Of::SpecificGravity).error().limit, "a number such as 1.084");
    EXPECT_EQ(expectedUnits(Of::Temperature), "C, F, K");
}

TEST(Units, HaveNamesAndNoSymbolTwice)
{
    for (int i = 0; i <= static_cast<int>(Of::Count); ++i) {
        const auto measurand = static_cast<Measurand>(i);
        EXPECT_FALSE(nameOf(measurand).empty());
        ASSERT_FALSE(unitsOf(measurand).empty()) << nameOf(measurand);
        EXPECT_TRUE(unitsOf(measurand).front().isListed) << nameOf(measurand);
        std::set<std::string_view> symbols;
        for (const UnitSpec& spec : unitsOf(measurand)) {
            EXPECT_EQ(spec.measurand, measurand);
            EXPECT_TRUE(symbols.insert(spec.symbol).second) << spec.symbol;
        }
    }
    EXPECT_EQ(nameOf(Of::Count), "count");
    EXPECT_EQ(nameOf(Of::AirChanges), "air_changes");
}

TEST(FormatQuantity, RoundsToTheDigitsAskedFor)
{
    const auto text = [](double si, Measurand measurand, std::string_view unit, int digits) {
        return formatQuantity(si, measurand, unit, digits).value();
    };
    EXPECT_EQ(text(usGallons(53).si(), Of::Volume, "gal", 3), "53.0 gal");
    EXPECT_EQ(text(0.2006268, Of::Volume, "L", 4), "200.6 L");
    EXPECT_EQ(text(0.2006268, Of::Volume, "mL", 2), "200000 mL");
    EXPECT_EQ(text(0.00996, Of::Share, "%", 2), "1.0 %");
    EXPECT_EQ(text(celsius(18).si(), Of::Temperature, "C", 3), "18.0 C");
    EXPECT_EQ(text(celsius(-5.26).si(), Of::Temperature, "C", 2), "-5.3 C");
    EXPECT_EQ(text(1.084, Of::SpecificGravity, "", 4), "1.084");
    EXPECT_EQ(text(0, Of::Mass, "g", 1), "0 g");
    EXPECT_EQ(text(0.00001, Of::Share, "ppm", 2), "10 ppm");
    EXPECT_EQ(text(1e-7, Of::Mass, "kg", 2), "1.0e-07 kg");
    EXPECT_EQ(text(0.00002, Of::Mass, "kg", 2), "0.000020 kg");
    EXPECT_EQ(text(1e20, Of::Mass, "kg", 1), "1e+20 kg");
}

TEST(FormatQuantity, RefusesWhatItCannotSay)
{
    const auto code = [](double si, std::string_view unit, int digits) {
        return formatQuantity(si, Of::Volume, unit, digits).error().code;
    };
    EXPECT_EQ(code(1, "psi", 3), ErrorCode::Malformed);
    EXPECT_EQ(code(std::numeric_limits<double>::quiet_NaN(), "L", 3), ErrorCode::NotFinite);
    EXPECT_EQ(code(std::numeric_limits<double>::max(), "mL", 3), ErrorCode::NotFinite);
    EXPECT_EQ(code(1, "L", 0), ErrorCode::OutOfRange);
    EXPECT_EQ(code(1, "L", 18), ErrorCode::OutOfRange);
}

TEST(Units, AreReadAndWrittenAlikeInALocaleOfCommas)
{
    const std::string before = std::setlocale(LC_ALL, nullptr);
    for (const char* name : {"de_DE.UTF-8", "fr_FR.UTF-8"}) {
        (void)std::setlocale(LC_ALL, name);  // where it is not installed this tests nothing more
        expectParsed("1.5 L", Of::Volume, 0.0015);
        EXPECT_EQ(formatQuantity(0.0015, Of::Volume, "L", 2).value(), "1.5 L");
    }
    (void)std::setlocale(LC_ALL, before.c_str());
}

TEST(Checks, NameTheNumberAndItsLimits)
{
    constexpr double infinite = std::numeric_limits<double>::infinity();
    EXPECT_TRUE(needBetween("dip_mm", 0, 0, 1));
    EXPECT_TRUE(needBetween("dip_mm", 1, 0, 1));
    const auto error = needBetween("dip_mm", 1.5, 0, 1).error();
    EXPECT_EQ(error, (Error{ErrorCode::OutOfRange, "dip_mm", "1.5", "0 to 1"}));
    EXPECT_EQ(needBetween("x", -1, 0, infinite).error().limit, "at least 0");
    EXPECT_EQ(needBetween("x", 2, -infinite, 1).error().limit, "at most 1");
    EXPECT_EQ(needBetween("x", infinite, 0, infinite).error().code, ErrorCode::NotFinite);
    EXPECT_EQ(needBetween("x", std::nan(""), 0, 1).error().code, ErrorCode::NotFinite);
    EXPECT_EQ(needFinite("x", -infinite).error().code, ErrorCode::NotFinite);
    EXPECT_TRUE(needFinite("x", 1e300));
    EXPECT_EQ(needPositive("x", 0).error().limit, "above 0");
    EXPECT_EQ(needPositive("x", std::nan("")).error().code, ErrorCode::NotFinite);
    EXPECT_TRUE(needPositive("x", 1e-300));
    EXPECT_TRUE(needCelsiusBetween("t", celsius(40), -20, 40));
    EXPECT_TRUE(needCelsiusBetween("t", celsius(-20), -20, 40));
    EXPECT_EQ(needCelsiusBetween("t", celsius(40.5), -20, 40).error().limit, "-20 to 40");
    EXPECT_EQ(needCelsiusBetween("t", kelvins(std::nan("")), -20, 40).error().code,
              ErrorCode::NotFinite);
}

}  // namespace spile
