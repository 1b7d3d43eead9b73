#pragma once

#include "core/base/ids.hpp"
#include "core/base/result.hpp"

#include <string>
#include <string_view>

namespace spile::cellar {

/// Return the code by which a device asks to be admitted: its id in 26 characters of the code
/// alphabet and 2 check characters, in groups of 4. Who has the code has no power by it; it only
/// says which device is meant.
[[nodiscard]] std::string joinCode(const DeviceId& device);

/// Read a join code, forgiving as for a barrel's (scan::tidied).
///
/// Errors    Malformed if it is not one, or mistyped.
[[nodiscard]] Result<DeviceId> parseJoinCode(std::string_view typed);

}  // namespace spile::cellar
