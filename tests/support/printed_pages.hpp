#pragma once

#include "core/base/bytes.hpp"
#include "core/base/file_system.hpp"
#include "core/labels/geometry.hpp"
#include "core/picture/image.hpp"

#include <string>
#include <vector>

/// What a PDF file looks like when it is printed, by poppler, and what others say of it.
namespace spile::support {

/// Return the pages of the PDF file at `file` as grey pictures. Empty if pdftoppm refuses.
[[nodiscard]] std::vector<picture::Image> printed(const Path& file, int dotsPerInch);

/// Look at the part of a page that is `box`, in mm, cut to the page.
[[nodiscard]] picture::LuminanceView partOf(const picture::Image& page, const labels::Box& box,
                                            int dotsPerInch);

/// Return the words of a PDF file, a line each, as pdftotext finds them.
[[nodiscard]] std::string wordsIn(const Path& file);

/// Return what qpdf finds wrong with a PDF file; empty if nothing.
[[nodiscard]] std::string wrongIn(const Path& file);

}  // namespace spile::support
