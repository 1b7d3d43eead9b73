#pragma once

#include "core/base/bytes.hpp"
#include "core/base/result.hpp"
#include "core/labels/sheets.hpp"

#include <string>

namespace spile::labels {

/// Write `sheets` as a PDF file: black on white, lengths true to the micrometre, its fonts inside.
///
/// Shape     a symbol is one path of rectangles in whole modules, so that no gaps show; the words
/// can
///           be searched. Viewers are asked not to scale it. `title`, UTF-8, is all that the file
///           says of itself: no dates, no ids, no names; the same bytes for equal sheets and title.
/// Errors    Storage if memory runs out in HarfBuzz.
/// Source    ISO 32000-1:2008 (PDF 1.7), of which version 1.6 is used; from memory, checked by
///           qpdf and poppler in tests/unit/labels_print_test.cpp.
[[nodiscard]] Result<Bytes> pdfOf(const Sheets& sheets, const std::string& title);

}  // namespace spile::labels
