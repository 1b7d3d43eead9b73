#include "core/gas/isopropanol.hpp"

#include "core/gas/carbon_dioxide.hpp"
#include "core/gas/checks.hpp"

namespace spile::gas {

Result<Volume> airAtLowerLimit(Volume liquid)
{
    SPILE_TRY(needBetween("liquid_l", inLitres(liquid), 0, 1000));
    constexpr double density = 785;
    constexpr double molarMass = 60.096e-3;
    const double molarVolume = gasConstant * celsius(20).si() / atmosphere.si();
    return cubicMetres(liquid.si() * density / molarMass * molarVolume / isopropanolLowerLimit);
}

}  // namespace spile::gas
