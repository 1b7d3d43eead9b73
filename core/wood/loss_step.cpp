#include "core/wood/loss_step.hpp"

#include "core/liquor/ethanol_water.hpp"
#include "core/liquor/gravity.hpp"

namespace spile::wood {

namespace {

constexpr double molarMassRatio = 46.0684 / 18.01528;  // ethanol over water
constexpr double extractMost = 0.44;                   // of the mass, as far as liquor goes

}  // namespace

Result<Drying> drying(const Climate& climate)
{
    SPILE_TRY(checkClimate(climate));
    return Drying{vapourBasisUnchecked(climate.temperature), climate.relativeHumidity};
}

Conductance conductance(const Wood& wood) noexcept
{
    const double water = wood.permeance * wood.inner.si() * (standardStave / wood.stave);
    return {water, molarMassRatio * wood.ethanolShare * water};
}

Rates ratesUnchecked(const liquor::Liquor& liquor, const Conductance& wood,
                     const Drying& air) noexcept
{
    const VapourPressures over = vapourPressures(liquor::ethanolMoleFraction(liquor), air.vapour);
    const double waterDriving =
        (over.waterActivity - air.relativeHumidity) * air.vapour.waterSaturation;
    return {kilogramsPerSecond(wood.water * waterDriving),
            kilogramsPerSecond(wood.ethanol * over.ethanol)};
}

bool dry(liquor::Liquor& liquor, const Conductance& wood, const Drying& air,
         double seconds) noexcept
{
    const Rates rates = ratesUnchecked(liquor, wood, air);
    liquor::Liquor left = liquor;
    left.water = left.water - kilograms(rates.water.si() * seconds);
    left.ethanol = left.ethanol - kilograms(rates.ethanol.si() * seconds);
    // Water is asked for above 0, so that the next mole fraction is one.
    const bool isSound = left.water.si() > 0 && left.ethanol.si() >= 0 &&
                         left.extract.si() <= extractMost * left.mass().si();
    if (isSound) {
        liquor = left;
    }
    return isSound;
}

tl::unexpected<Error> failDry()
{
    return fail(ErrorCode::OutOfRange, "liquor", "dried up",
                "a barrel that still holds liquor at the end");
}

Result<void> DryingByDay::turnTo(const Climate& climate)
{
    if (!isSet_ || climate != climate_) {
        SPILE_TRY(checkClimate(climate));
        drying_ = {vapourBasisUnchecked(climate.temperature), climate.relativeHumidity};
        climate_ = climate;
        isSet_ = true;
    }
    return {};
}

CourseDay CourseDescriber::describe(const liquor::Liquor& liquor) noexcept
{
    constexpr double perWater = 1.0 / liquor::waterDensityAt20;
    constexpr double perEthanol = 1.0 / liquor::ethanolDensityAt20;
    const double mass = liquor.mass().si();
    const double perMass = 1.0 / mass;
    const double byMass = liquor.ethanol.si() * perMass;
    const double realExtract = 100.0 * liquor.extract.si() * perMass;
    const double ofAlcohol = alcohol_.at(byMass, liquor::densityAt20);
    const double ofExtract = extract_.at(realExtract, [](double plato) {
        return liquor::specificGravityOfPlatoUnchecked(plato) - 1.0;
    });
    const double density = ofAlcohol + liquor::waterDensityAt20 * ofExtract;
    return {cubicMetres(mass / density), byMass * density * perEthanol, density * perWater,
            realExtract};
}

}  // namespace spile::wood
