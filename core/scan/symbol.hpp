#pragma once

#include "core/base/result.hpp"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
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

/// The error correction levels of QR symbols that bear damage: a fraction of about 1/7, 1/4, 3/10
/// of their codewords may be wrong.
enum class QrLevel : std::uint8_t { M, Q, H };

/// Make the smallest QR symbol of any text. None if ZXing cannot encode it.
[[nodiscard]] std::optional<ModuleGrid> encodeQr(const std::string& text, QrLevel level);

}  // namespace spile::scan
