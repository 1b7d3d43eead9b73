#pragma once

#include "core/scan/reader.hpp"

#include <vector>

namespace spile::scan {

/// Order by the distance of their centres from the middle of a picture of that size.
void orderFromMiddle(std::vector<Code>& codes, int width, int height);

/// Bring the corners from a part of a picture, which was taken at (left, top) and then scaled, to
/// the picture.
void placeInWhole(std::vector<Code>& codes, Point topLeft, double scale);

/// Add those of `more` that do not repeat one of `codes`: see withoutRepeats().
void addNew(std::vector<Code> more, std::vector<Code>& codes);

}  // namespace spile::scan
