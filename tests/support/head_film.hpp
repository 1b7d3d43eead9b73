#pragma once

#include "core/base/bytes.hpp"
#include "core/picture/image.hpp"
#include "core/scan/barrel_code.hpp"

#include <string>
#include <vector>

namespace spile::support {

/// How a barrel's head is filmed: easily read, or in poor light with a stain on a corner of each
/// symbol, which ZXing alone does not read.
enum class HeadFilm : std::uint8_t { Clear, Hard };

/// Return what a phone sees that a hand turns away from a head, in 6 frames of 800 x 600.
[[nodiscard]] std::vector<picture::Image> headFrames(const scan::LabelText& label,
                                                     const std::string& mark, HeadFilm film);
/// The same as a film.
[[nodiscard]] Bytes headFilm(const scan::LabelText& label, const std::string& mark, HeadFilm film);

}  // namespace spile::support
