#pragma once

#include "core/scan/reader.hpp"

#include <vector>

namespace spile::scan {

enum class Kind : std::uint8_t { Qr, DataMatrix, QrAndDataMatrix, Code128 };

/// What is looked for in one call of the library.
struct Wanted {
    Kind kind = Kind::Qr;
    std::uint8_t most = 1;         // symbols
    bool alsoSmaller = true;       // at smaller sizes of the picture, too
    bool isBlackAndWhite = false;  // the picture holds only 0 and 255
    bool isPure = false;           // the picture is one upright symbol and nothing else
};

/// Why `view` cannot be read: no pixels, or strides that contradict its size. None if it can.
[[nodiscard]] std::optional<Error> whyUnsound(const picture::LuminanceView& view);

/// Read codes by ZXing alone. Requires a sound view; throws what the library throws.
///
/// Limits    ZXing 1.4 ends the process on an assertion when it merges several linear codes of
///           several sizes of the picture: for Code 128, one symbol and one size are looked for.
[[nodiscard]] std::vector<Code> readByZxing(const picture::LuminanceView& view,
                                            const Wanted& wanted);

}  // namespace spile::scan
