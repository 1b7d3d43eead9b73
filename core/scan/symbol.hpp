#pragma once

#include "core/base/result.hpp"

#include <cstddef>
#include <string_view>
#include <vector>

namespace spile::scan {

/// A square 2-D symbol without its quiet zone; modules row by row from the top, true = dark.
struct ModuleGrid {
    int size = 0;
    std::vector<bool> modules;

    [[nodiscard]] bool dark(int row, int column) const
    {
        return modules[static_cast<std::size_t>(row) * static_cast<std::size_t>(size) +
                       static_cast<std::size_t>(column)];
    }
};

/// Make the QR symbol of `text` at error correction level H.
///
/// Range     1 to 20 characters of `0-9 A-Z space $ % * + - . / :`; 11 to 20 give version 2
///           (25 x 25 modules), which the labels use: see barrel_code.hpp.
/// Errors    OutOfRange for another length; Malformed for another character.
/// Source    ISO/IEC 18004, encoded by ZXing.
[[nodiscard]] Result<ModuleGrid> makeQr(std::string_view text);

}  // namespace spile::scan
