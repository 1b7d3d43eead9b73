#include "core/plan/packaging.hpp"

#include <array>
#include <cmath>
#include <gtest/gtest.h>

namespace spile::plan {

namespace {

LabelVerdict verdict(LabelLaw law, double labelled, double measured, double uncertainty)
{
    return checkLabel(law, labelled, measured, uncertainty).value().verdict;
}

}  // namespace

TEST(PackInto, CountsWholePackagesAndKeepsTheRest)
{
    const Packed packed = packInto(litres(200), millilitres(330), 0.03).value();
    EXPECT_EQ(packed.count, 587U);  // by hand: 194 L / 0.33 L = 587.9
    EXPECT_NEAR(inLitres(packed.lost), 6, 1e-12);
    EXPECT_NEAR(inLitres(packed.packed), 193.71, 1e-9);
    EXPECT_NEAR(inLitres(packed.rest), 0.29, 1e-9);
}

TEST(PackInto, FillsTheLastPackageThatLacksOnlyRounding)
{
    EXPECT_EQ(packInto(litres(16.83), millilitres(330), 0)->count, 51U);  // 50.999... in doubles
    EXPECT_EQ(packInto(litres(60), litres(20), 0)->count, 3U);
    EXPECT_EQ(packInto(litres(60), litres(20), 0)->rest, Volume());
    EXPECT_EQ(packInto(usBeerBarrels(1), usBeerBarrels(1.0 / 6), 0)->count, 6U);
    EXPECT_EQ(packInto(litres(0.999 * 20), litres(20), 0)->count, 0U);
}

TEST(PackInto, RefusesWhatIsNoVolumeOrShare)
{
    EXPECT_EQ(packInto(litres(-1), litres(1), 0).error().subject, "volume_m3");
    EXPECT_EQ(packInto(litres(1), litres(0), 0).error().subject, "content_m3");
    EXPECT_EQ(packInto(litres(1), litres(1), 1.1).error().subject, "loss_share");
    EXPECT_EQ(packInto(litres(std::nan("")), litres(1), 0).error().code, ErrorCode::NotFinite);
    EXPECT_EQ(packInto(litres(100), litres(1), 1)->count, 0U);
}

TEST(PackOrders, FillsKegsFirstAndBottlesWithWhatIsLeft)
{
    const std::array orders = {PackageOrder{litres(50), 2}, PackageOrder{litres(20), 3},
                               PackageOrder{millilitres(750), 1000}};
    std::array<std::size_t, 3> counts{};
    const Packed packed = packOrders(litres(200), 0.02, orders, counts).value();
    // By hand: 196 L; 2 kegs of 50 L, 3 of 20 L, 36 L in 48 bottles.
    EXPECT_EQ(counts, (std::array<std::size_t, 3>{2, 3, 48}));
    EXPECT_EQ(packed.count, 53U);
    EXPECT_NEAR(inLitres(packed.rest), 0, 1e-9);
    EXPECT_NEAR(inLitres(packed.packed), 196, 1e-9);
}

TEST(PackOrders, LeavesTheCountsOnFailure)
{
    const std::array orders = {PackageOrder{litres(50), 2}, PackageOrder{litres(0), 3}};
    std::array<std::size_t, 2> counts = {7, 7};
    EXPECT_EQ(packOrders(litres(200), 0, orders, counts).error().subject, "content_m3");
    EXPECT_EQ(counts, (std::array<std::size_t, 2>{7, 7}));
    EXPECT_EQ(packOrders(litres(200), 0, orders, std::span(counts).first(1)).error().subject,
              "counts");
}

TEST(Packages, HaveNamesOfTheirOwnAndContents)
{
    for (const Package& a : packages()) {
        EXPECT_FALSE(a.name.empty());
        EXPECT_GT(a.content, millilitres(300)) << a.name;
        for (const Package& b : packages()) {
            EXPECT_TRUE(&a == &b || a.name != b.name) << a.name;
        }
    }
}

TEST(LabelStrength, IsTheNearestTenth)
{
    EXPECT_DOUBLE_EQ(*labelStrength(0.11349), 0.113);
    EXPECT_DOUBLE_EQ(*labelStrength(0.1135), 0.114);
    EXPECT_EQ(labelStrength(1.1).error().code, ErrorCode::OutOfRange);
}

TEST(CheckLabel, KnowsWhatItCannotKnow)
{
    constexpr auto us = LabelLaw::UnitedStates;
    EXPECT_EQ(verdict(us, 0.113, 0.113, 0.003), LabelVerdict::Within);
    EXPECT_EQ(verdict(us, 0.113, 0.114, 0.003), LabelVerdict::Unsure);
    EXPECT_EQ(verdict(us, 0.113, 0.118, 0.003), LabelVerdict::Unsure);
    EXPECT_EQ(verdict(us, 0.113, 0.1195, 0.003), LabelVerdict::Outside);
    EXPECT_EQ(verdict(us, 0.113, 0.1065, 0.003), LabelVerdict::Outside);
    EXPECT_EQ(verdict(us, 0.100, 0.103, 0), LabelVerdict::Within);
    EXPECT_EQ(verdict(us, 0.100, 0.1031, 0), LabelVerdict::Outside);
    EXPECT_EQ(verdict(LabelLaw::EuropeanUnion, 0.113, 0.118, 0.003), LabelVerdict::Within);
    EXPECT_EQ(verdict(LabelLaw::EuropeanUnion, 0.05, 0.0549, 0), LabelVerdict::Within);
    EXPECT_EQ(verdict(LabelLaw::EuropeanUnion, 0.05, 0.0551, 0), LabelVerdict::Outside);
    EXPECT_NEAR(checkLabel(us, 0.113, 0.118, 0.003)->difference, 0.005, 1e-12);
}

TEST(CheckLabel, HoldsAUsBeerToItsHalfPercent)
{
    EXPECT_EQ(verdict(LabelLaw::UnitedStates, 0.006, 0.0049, 0), LabelVerdict::Outside);
    EXPECT_EQ(verdict(LabelLaw::UnitedStates, 0.004, 0.0049, 0), LabelVerdict::Within);
    EXPECT_EQ(verdict(LabelLaw::EuropeanUnion, 0.006, 0.0049, 0), LabelVerdict::Within);
}

TEST(CheckLabel, RefusesWhatIsNoStrength)
{
    constexpr auto us = LabelLaw::UnitedStates;
    EXPECT_EQ(checkLabel(us, 11.3, 0.113, 0).error().subject, "labelled_by_volume");
    EXPECT_EQ(checkLabel(us, 0.113, 11.3, 0).error().subject, "measured_by_volume");
    EXPECT_EQ(checkLabel(us, 0.113, 0.113, -1).error().subject, "uncertainty_by_volume");
}

}  // namespace spile::plan
