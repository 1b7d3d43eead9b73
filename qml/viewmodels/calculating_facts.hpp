#pragma once

#include "core/plan/calculators/calculator.hpp"
#include "core/plan/numbers.hpp"
#include "qml/viewmodels/settings.hpp"

namespace spile::viewmodels {

/// Put what is known of a barrel into `given`, wherever an input of `calculator` means that very
/// thing and the value is within its range.
void giveFacts(plan::Given& given, const plan::Calculator& calculator,
               const plan::WorkFacts& facts);

/// Put the gas line and the room, as they were filled in last on this device, into `given`.
void giveRemembered(plan::Given& given, const plan::Calculator& calculator,
                    const Settings& settings);

}  // namespace spile::viewmodels
