// Source: NIST SP 811 (2008), Appendix B.8: gallon (US), gallon (imperial), pound-force per square
// inch, pound (avoirdupois), inch, degree Fahrenheit; beer barrel of 31 US gallons: 27 CFR 25.11,
// and the gallon's 231 cubic inches: NIST Handbook 44, Appendix C.
// Tolerance: half a unit in the last digit printed; exact factors to the precision of a double.
#include "core/units/units.hpp"

#include <gtest/gtest.h>

namespace spile {

TEST(Units, MatchTheFactorsOfSp811)
{
    EXPECT_NEAR(inLitres(usGallons(1.0)), 3.785412, 0.5e-6);
    EXPECT_DOUBLE_EQ(inLitres(imperialGallons(1.0)), 4.54609);
    EXPECT_NEAR(psi(1.0).si(), 6894.757, 0.5e-3);
    EXPECT_DOUBLE_EQ(inKilograms(pounds(1.0)), 0.45359237);
    EXPECT_DOUBLE_EQ(inMillimetres(inches(1.0)), 25.4);
    EXPECT_DOUBLE_EQ(bars(1.0).si(), 1e5);
}

TEST(Units, MakeABeerBarrelOf31UsGallons)
{
    EXPECT_NEAR(inLitres(usBeerBarrels(1.0)), 117.347765304, 1e-12);  // 31 x 3.785411784 L
    EXPECT_DOUBLE_EQ(inUsGallons(usBeerBarrels(2.0)), 62.0);
}

TEST(Units, MatchTheFormulaForFahrenheit)
{
    EXPECT_NEAR(inCelsius(fahrenheit(98.6)), 37.0, 1e-12);
    EXPECT_NEAR(inCelsius(fahrenheit(-40.0)), -40.0, 1e-12);
    EXPECT_NEAR(inCelsius(fahrenheit(32.0)), 0.0, 1e-12);
    EXPECT_NEAR(inFahrenheit(celsius(100.0)), 212.0, 1e-12);
    EXPECT_DOUBLE_EQ(celsius(0.0).si(), 273.15);
}

TEST(Units, AreTheSimpleMultiplesOfTheirNames)
{
    EXPECT_DOUBLE_EQ(litres(1.0).si(), 1e-3);
    EXPECT_DOUBLE_EQ(cubicMetres(2.0).si(), 2.0);
    EXPECT_DOUBLE_EQ(inMillilitres(litres(1.5)), 1500.0);
    EXPECT_DOUBLE_EQ(inGrams(kilograms(0.25)), 250.0);
    EXPECT_DOUBLE_EQ(inMillimetres(metres(0.3)), 300.0);
    EXPECT_DOUBLE_EQ(inBars(pascals(25'000.0)), 0.25);
    EXPECT_NEAR(inCelsius(kelvins(300.0)), 26.85, 1e-12);
}

}  // namespace spile
