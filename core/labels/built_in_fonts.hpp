#pragma once

#include "core/base/bytes.hpp"

// Internal to core/labels: the files of assets/fonts that labels are printed with, written as
// arrays by embed.cmake.
namespace spile::labels {

extern const ByteView codeFont;   // B612 Bold
extern const ByteView wordsFont;  // Inter SemiBold

}  // namespace spile::labels
