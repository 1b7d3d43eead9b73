#pragma once

#include <cstdint>
#include <span>

namespace spile::scan {

/// Correct a word of the Reed-Solomon code of QR symbols in place, some places of which are known
/// to be worthless.
///
/// Shape     `word`: data, then `parity` check bytes; at most 255 together. `erased`: indices into
///           it, each once.
/// Range     e erasures and f further errors are corrected while e + 2 f <= parity <= 64.
/// Errors    false if there is no such word; `word` is unchanged then. One that is beyond the range
///           may come out as another valid word: what it says must be checked by other means.
/// Source    ISO/IEC 18004:2015, 7.5.2: field x^8 + x^4 + x^3 + x^2 + 1, first root 1. Berlekamp
/// and
///           Massey with erasures and Forney: R. E. Blahut, Algebraic Codes for Data Transmission,
///           2003, 7.5 to 7.7.
[[nodiscard]] bool correct(std::span<std::uint8_t> word, int parity,
                           std::span<const std::uint8_t> erased);

/// Compute the check bytes of `data` into `parity`, of at most 64.
void addParity(std::span<const std::uint8_t> data, std::span<std::uint8_t> parity);

}  // namespace spile::scan
