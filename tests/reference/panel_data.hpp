#pragma once

#include "core/panel/agreement.hpp"

namespace spile::panel {

// ISO 8586, annex, worked example: six batches of iced fish by four assessors, three replicates
// each. Seen in two public translations that differ in layout; this reading gives every cell mean
// and mean square that they print.
inline const Cells icedFish{
    {{8, 8, 9}, {5, 8, 9}, {6, 7, 5}, {9, 8, 8}}, {{6, 8, 7}, {6, 7, 4}, {5, 4, 7}, {7, 7, 6}},
    {{4, 5, 5}, {5, 2, 3}, {4, 3, 5}, {5, 5, 5}}, {{6, 6, 5}, {6, 4, 6}, {4, 2, 4}, {6, 5, 5}},
    {{4, 5, 3}, {3, 2, 4}, {4, 4, 5}, {4, 5, 4}}, {{5, 6, 6}, {4, 2, 7}, {5, 4, 6}, {7, 5, 7}}};

}  // namespace spile::panel
