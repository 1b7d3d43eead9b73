#pragma once

#include <string_view>
#include <vector>

namespace spile::demo {

/// How much ink lies on a sheet: 0 none, 1 full; rows from the top.
struct InkSheet {
    int width = 0;
    int height = 0;
    std::vector<float> ink;

    InkSheet(int w, int h);
    [[nodiscard]] float& at(int column, int row);
    [[nodiscard]] float at(int column, int row) const;
    /// Return the ink between the pixel centres by linear interpolation; 0 off the sheet.
    [[nodiscard]] double sample(double x, double y) const;
};

/// Return how wide letters of this height come out, in the unit of `height`.
[[nodiscard]] double textWidth(std::string_view text, double height);

/// Draw a line of letters: our own round strokes for A-Z (small letters drawn as large), 0-9,
/// hyphen, full stop, slash and space. Other characters leave a gap.
///
/// Units     pixels of the sheet; (x, y) is the left upper corner of the first letter.
void drawText(InkSheet& sheet, std::string_view text, double x, double y, double height);

/// Draw a straight stroke with round ends.
void drawStroke(InkSheet& sheet, double x0, double y0, double x1, double y1, double thickness);

}  // namespace spile::demo
