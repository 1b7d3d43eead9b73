#pragma once

#include "core/scan/reader.hpp"
#include "core/scan/redraw_modules.hpp"
#include "core/scan/redraw_plane.hpp"

#include <optional>
#include <span>

namespace spile::scan::redraw {

/// Read a symbol from its modules by ZXing, true = dark, drawn clean into `drawn`. Its corners stay
/// (0, 0). Throws what ZXing throws.
[[nodiscard]] std::optional<Code> readClean(std::span<const bool> modules, int size, Plane& drawn);

/// Read a symbol of any level and mask from how dark its modules are, the known patterns put in
/// their place. Accepted only if the text, encoded anew at level M, Q or H, gives a symbol of that
/// size that agrees with what was seen; level L corrects too little to trust.
[[nodiscard]] std::optional<Code> readAny(const KnownPatterns& patterns, const Softs& softs,
                                          Plane& drawn);

}  // namespace spile::scan::redraw
