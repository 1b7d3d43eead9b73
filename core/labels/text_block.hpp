#pragma once

#include "core/labels/geometry.hpp"
#include "core/labels/typeface.hpp"

#include <optional>
#include <string>
#include <vector>

/// The words of a label: its code, large, and below it the brewer's own mark.
namespace spile::labels {

/// One line of text. `size` is that of an em, in mm.
struct TextLine {
    Face face = Face::Words;
    std::string text;
    double left = 0, baseline = 0;
    double size = 0;
    Shaped shaped;

    /// What its ink and its advance lie within.
    [[nodiscard]] Box box() const
    {
        return {left, baseline - shaped.inkTop * size, shaped.width * size,
                (shaped.inkTop - shaped.inkBottom) * size};
    }
};

/// Return a line of text that stands with its left end there.
[[nodiscard]] TextLine lineOf(Face face, std::string text, double left, double baseline,
                              double size);

/// Return the lines into which words are broken to be at most `ems` wide: at spaces, and within a
/// word that is wider than a line. None at all if a single character is.
[[nodiscard]] std::vector<std::string> linesOf(const std::string& words, double ems);

/// A code whose em is smaller is not made: about 3 mm high, to be read at arm's length and more.
inline constexpr double smallestCode = 4;

/// Fit the code, on one line and as large as goes, and the whole mark, on as many lines as serve
/// it, into `box`. None if the code would be smaller than smallestCode. The first line is the code.
///
/// Shape     a mark is broken at spaces, and within a word only if it would otherwise be too small
///           to read; it is never cut.
[[nodiscard]] std::optional<std::vector<TextLine>> fitText(const std::string& code,
                                                           const std::string& mark, const Box& box);

}  // namespace spile::labels
