#include "core/vessel/weighing.hpp"

#include "core/units/checks.hpp"

namespace spile::vessel {

namespace {

constexpr double water = 998.201;  // kg/m3 at 20 °C
constexpr double air = 1.2;
constexpr double weights = 8000;
constexpr double grossMost = 5000;

Result<void> needTareAndGravity(Mass tareWet, double specificGravity)
{
    SPILE_TRY(needBetween("tare_kg", tareWet.si(), 0, grossMost));
    return needBetween("specific_gravity", specificGravity, 0.7, 1.3);
}

// What a cubic metre adds to the reading of a scale in air.
double readingOfCubicMetre(double specificGravity)
{
    return (specificGravity * water - air) / (1 - air / weights);
}

}  // namespace

Result<Volume> volumeByWeight(Mass gross, Mass tareWet, double specificGravity)
{
    SPILE_TRY(needTareAndGravity(tareWet, specificGravity));
    SPILE_TRY(needBetween("gross_kg", gross.si(), tareWet.si(), grossMost));
    return cubicMetres((gross - tareWet).si() / readingOfCubicMetre(specificGravity));
}

Result<Mass> grossWeight(Volume volume, Mass tareWet, double specificGravity)
{
    SPILE_TRY(needTareAndGravity(tareWet, specificGravity));
    SPILE_TRY(needBetween("volume_l", inLitres(volume), 0, inLitres(cubicMetres(5))));
    return tareWet + kilograms(volume.si() * readingOfCubicMetre(specificGravity));
}

}  // namespace spile::vessel
