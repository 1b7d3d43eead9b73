#pragma once

#include "core/cellar/cellar.hpp"
#include "core/cellar/queries.hpp"

#include <string>
#include <vector>

namespace spile::desk {

/// Return the barrels with the code that was typed: one, unless two devices gave out the same.
///
/// Errors    NotFound, with the codes that it may have meant; those of every query.
[[nodiscard]] Result<std::vector<cellar::BarrelRow>> findBarrel(cellar::Cellar& cellar,
                                                                const std::string& typed);

/// Return the device with that name, or whose id begins so.
///
/// Errors    NotFound for none or several; those of every query.
[[nodiscard]] Result<DeviceId> findDevice(cellar::Cellar& cellar, const std::string& wanted);

/// Errors    Conflict if a file cannot be written there, since its folder is not there.
[[nodiscard]] Result<void> needFolderOf(FileSystem& files, const Path& file);

}  // namespace spile::desk
