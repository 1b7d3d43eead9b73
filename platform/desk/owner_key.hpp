#pragma once

#include "core/base/file_system.hpp"
#include "core/ledger/keys.hpp"
#include "platform/desk/commands.hpp"

#include <optional>

namespace spile::desk {

/// Return the owner's key: from the file or the picture that is named, or what was typed from its
/// sheet; none if nothing is given.
///
/// Errors    Malformed, never with what was read or typed; those of symbolIn() and of the disk.
[[nodiscard]] Result<std::optional<ledger::SigningKey>> ownerKey(FileSystem& files,
                                                                 const OwnerKeyOptions& options);

}  // namespace spile::desk
