#include "core/liquor/weighing.hpp"

#include "core/liquor/ethanol_water.hpp"
#include "core/liquor/limits.hpp"
#include "core/liquor/strength.hpp"
#include "core/units/checks.hpp"

namespace spile::liquor {

namespace {

constexpr double air = 1.2;                   // kg/m3
constexpr double steel = 8000;                // the conventional weight
constexpr double brass = 8400;                // of the older tables
constexpr double gallonsPerPound = 0.120074;  // of water at 60 °F

Result<void> needNet(Mass net) { return needBetween("net_kg", net.si(), 0, amountMost); }

Volume volumeOf(Mass net, double density, double weights)
{
    return cubicMetres(net.si() / density * (1 - air / weights) / (1 - air / density));
}

}  // namespace

Result<Volume> volumeByWeight(Mass netInAir, double specificGravity)
{
    SPILE_TRY(needNet(netInAir));
    SPILE_TRY(needBetween("specific_gravity", specificGravity, 0.7, 1.3));
    return volumeOf(netInAir, specificGravity * waterDensityAt20, steel);
}

Result<Volume> spiritByWeight(Mass netInAir, double proof)
{
    SPILE_TRY(needNet(netInAir));
    SPILE_ASSIGN(byMass, massFractionOfUsProof(proof));
    SPILE_ASSIGN(density, densityByMass(byMass, fahrenheit(60)));
    return volumeOf(netInAir, density.si(), brass);
}

Result<Volume> volumeByWeight60F(Mass netInAir, double gravity60F)
{
    SPILE_TRY(needNet(netInAir));
    SPILE_TRY(needBetween("specific_gravity_60f", gravity60F, 0.7, 1.3));
    return usGallons(inPounds(netInAir) * gallonsPerPound / gravity60F);
}

}  // namespace spile::liquor
