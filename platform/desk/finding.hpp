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

/// Return the owner's key: from the file that `words` names, or the 64 digits themselves; none if
/// `words` is empty.
///
/// Errors    Malformed, those of the disk.
[[nodiscard]] Result<std::optional<ledger::SigningKey>> ownerKey(FileSystem& files,
                                                                 const std::string& words);

}  // namespace spile::desk
