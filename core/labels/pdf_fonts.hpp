#pragma once

#include "core/base/result.hpp"
#include "core/labels/pdf_file.hpp"
#include "core/labels/sheets.hpp"

#include <map>
#include <string>

// Internal to core/labels: the fonts of a PDF file, each with the glyphs that are used alone.
namespace spile::labels {

/// The glyphs of one face that a file uses, with the characters they stand for.
using UsedGlyphs = std::map<std::uint32_t, std::string>;
using UsedFaces = std::map<Face, UsedGlyphs>;

[[nodiscard]] UsedFaces usedFaces(const Sheets& sheets);

/// The name of a face within a page: "/F0".
[[nodiscard]] std::string fontName(Face face);

/// Write a face with its used glyphs and return the number of its font. Text in it is glyph numbers
/// of four hexadecimal digits.
///
/// Errors    Storage if memory runs out in HarfBuzz.
[[nodiscard]] Result<int> writeFont(PdfFile& file, Face face, const UsedGlyphs& glyphs);

}  // namespace spile::labels
