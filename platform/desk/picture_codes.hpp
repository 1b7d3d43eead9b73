#pragma once

#include "core/base/file_system.hpp"
#include "core/scan/reader.hpp"

#include <functional>
#include <string>
#include <vector>

namespace spile::desk {

/// Return the codes in a picture: JPEG or PNG, at full size and at half of it.
///
/// Errors    those of the disk, of picture::decode() and of scan::readPicture().
[[nodiscard]] Result<std::vector<scan::Code>> codesIn(FileSystem& files, const std::string& name);

/// Return the text of the one QR symbol in a picture that `isOne` is about; `what` names it.
///
/// Errors    besides: NotFound if there is none, Conflict if there are several that differ; neither
///           with what was read.
[[nodiscard]] Result<std::string> symbolIn(FileSystem& files, const std::string& name,
                                           const std::string& what,
                                           const std::function<bool(const std::string&)>& isOne);

}  // namespace spile::desk
