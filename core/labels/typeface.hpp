#pragma once

#include "core/base/bytes.hpp"

#include <cstdint>
#include <set>
#include <string>
#include <string_view>
#include <vector>

/// The fonts of labels, laid out and cut down by HarfBuzz.
namespace spile::labels {

enum class Face : std::uint8_t {
    Code,   ///< B612 Bold: its 0 and D, 8 and B are told apart from afar
    Words,  ///< Inter SemiBold
};

/// One glyph of a laid-out text: where its origin stands, in ems from the text's.
struct Glyph {
    std::uint32_t id = 0;  ///< 0: the font lacks the character, and a box is shown
    double x = 0, y = 0;   ///< to the right and up
    std::string text;      ///< the characters it stands for; empty if an earlier glyph does
};

/// A line of text, laid out; in ems.
struct Shaped {
    std::vector<Glyph> glyphs;
    double width = 0;
    double inkTop = 0, inkBottom = 0;  ///< above and below (negative) the baseline
    bool complete = true;              ///< the font has all its characters
};

/// Lay out `text`, UTF-8; what is not well-formed is shown as U+FFFD.
[[nodiscard]] Shaped shape(Face face, std::string_view text);

/// What a file says of a face; in thousandths of an em.
struct FaceFacts {
    std::string name;  ///< PostScript's
    int ascent = 0, descent = 0, capHeight = 0;
    int left = 0, bottom = 0, right = 0, top = 0;  ///< what all glyphs lie within
};
[[nodiscard]] FaceFacts factsOf(Face face);

/// One step of an outline, named as in SVG: M (begin at), L (line to), C (curve by two controls
/// to), Z (close); its places in ems, to the right and up.
struct OutlineStep {
    char letter = 'Z';
    std::vector<double> places;
};
[[nodiscard]] std::vector<OutlineStep> outlineOf(Face face, std::uint32_t glyph);

/// How far a glyph moves the pen, in thousandths of an em.
[[nodiscard]] double advanceOf(Face face, std::uint32_t glyph);

/// Return the CFF table of the face with these glyphs alone, under their own numbers; the same
/// bytes for the same glyphs and library. Empty if HarfBuzz gives up, which for the built-in fonts
/// means that memory has run out.
[[nodiscard]] Bytes subsetOf(Face face, const std::set<std::uint32_t>& glyphs);

}  // namespace spile::labels
