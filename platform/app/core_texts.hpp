#pragma once

#include "core/base/result.hpp"

#include <string>

namespace spile::app {

/// Return the texts that core and its data have for people, as C++ that lupdate reads: the work
/// sheets' words and those of the calculators. Nothing else would show them to it.
///
/// Errors    Storage if a file of `sheetsFolder` cannot be read; those of plan::parseSheet().
[[nodiscard]] Result<std::string> coreTexts(const std::string& sheetsFolder);

}  // namespace spile::app
