#include "core/wood/effective_age.hpp"

#include <cmath>

namespace spile::wood {

double paceAt(Temperature temperature, double q10)
{
    constexpr double step = 10;
    return std::pow(q10, (temperature - referenceTemperature).si() / step);
}

void effectiveAges(std::span<const Temperature> dayTemperatures, std::span<double> ages, double q10)
{
    double days = 0;
    for (std::size_t i = 0; i < dayTemperatures.size(); ++i) {
        days += paceAt(dayTemperatures[i], q10);
        ages[i] = days / daysOfMonth;
    }
}

}  // namespace spile::wood
